import { flightDay, type Day } from '#units/day.ts';
import type { Exercise, Machine } from '#domain/catalogue.ts';
import type { BoutsItem } from '#domain/programme.ts';
import type { StandingAdjustment } from './adjustments.ts';
import { isFirstDayHome } from './days-home.ts';
import { effortCap } from './effort-cap.ts';
import { isInFlight } from './machine-on.ts';
import { restrictionsOn, type PlanContext } from './plan-context.ts';
import type { PlannedItem } from './plan-item.ts';

interface At {
  readonly day: Day;
  readonly item: BoutsItem;
  readonly exercise: Exercise;
  readonly machine: Machine;
  readonly adjustments: readonly StandingAdjustment[];
}

type LeftOut = Extract<PlannedItem, { readonly kind: 'left out' }>;

const out = (says: string, gap = false): LeftOut => ({ kind: 'left out', says, gap });

/** Why bouts are not done on a day, or null where they are. */
export const whyBoutsLeftOut = (context: PlanContext, at: At): LeftOut | null =>
  byPhysician(context, at) ?? byAgreement(at) ?? byMachine(at) ?? tooEarly(context, at) ?? allOut(context, at);

const byPhysician = (context: PlanContext, { exercise, day }: At): LeftOut | null => {
  const limits = restrictionsOn(context, exercise, day).map(({ restriction: { limit } }) => limit.kind);
  if (limits.includes('forbidden')) return out('left out: limited by the physician');
  return limits.includes('fraction at most')
    ? out('left out: limited by the physician to a part of capacity, and endurance has no load to take it from')
    : null;
};

const byAgreement = ({ adjustments }: At): LeftOut | null =>
  adjustments.some(({ change }) => change.kind === 'leave out') ? out('left out: by agreement') : null;

const byMachine = ({ item, machine }: At): LeftOut | null => {
  const isInWatts = item.bouts.some(({ intensity }) => intensity?.kind === 'watts');
  return isInWatts && machine.kind === 'treadmill'
    ? out('left out: a treadmill is not set in watts; write a heart rate, an uptake or RPE', true)
    : null;
};

const tooEarly = (context: PlanContext, { day }: At): LeftOut | null => {
  const { firstEnduranceFlightDay } = context.known.house.policies;
  const on = flightDayOf(context, day);
  return on !== null && on < firstEnduranceFlightDay
    ? { ...out(`left out: no endurance before flight day ${firstEnduranceFlightDay}`), early: true }
    : null;
};

const flightDayOf = ({ known }: PlanContext, day: Day): number | null =>
  known.mission && isInFlight(known, day) ? flightDay(known.mission.launch, day) : null;

/** Short all-out work only on a cycle, none in the first weeks of flight and of return: common practice. */
const allOut = (context: PlanContext, { item, exercise, machine, day }: At): LeftOut | null => {
  if (!item.bouts.some(({ intensity }) => intensity?.kind === 'all-out')) return null;
  if (machine.kind !== 'cycle' || exercise.pattern !== 'cycling')
    return out('left out: nothing all-out but on a cycle');
  if (effortCap(context, exercise, day) !== null) return out('left out: limited by the physician');
  if (isFirstDayHome(context.known, day)) return out('left out: nothing all-out in the first days home');
  const { firstAllOutFlightDay } = context.known.house.policies;
  const on = flightDayOf(context, day);
  return on !== null && on < firstAllOutFlightDay
    ? out(`left out: nothing all-out before flight day ${firstAllOutFlightDay}`)
    : null;
};
