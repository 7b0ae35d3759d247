import { flightDay, type Day } from '#units/day.ts';
import { enduranceOn, type Endurance } from '#assessing/endurance.ts';
import type { CardBout, CardBouts } from '#domain/card.ts';
import type { Exercise, Machine } from '#domain/catalogue.ts';
import { bodyMassOn, settingsFor } from '#domain/known.ts';
import type { BoutsItem } from '#domain/programme.ts';
import type { Raise, RaiseUnit } from '#domain/raise.ts';
import { setBout } from './bout-target.ts';
import { capped, effortCap, restrictedSays } from './effort-cap.ts';
import { harnessOn, type Harnessed } from './harness-load.ts';
import { isInFlight } from './machine-on.ts';
import { massInFlight, restrictionsOn, type PlanContext } from './plan-context.ts';
import type { PlannedItem } from './plan-item.ts';
import { pieceState, type Progress } from './progress.ts';
import type { StandingAdjustment } from './adjustments.ts';

export interface BoutsAt {
  readonly day: Day;
  readonly item: BoutsItem;
  readonly exercise: Exercise;
  readonly machine: Machine;
  readonly adjustments: readonly StandingAdjustment[];
  readonly asWritten: string | null;
}

const leftOut = (says: string, gap = false): PlannedItem => ({ kind: 'left out', says, gap });

/** Bouts of endurance in absolute terms for one person on one day. */
export const planBouts = (context: PlanContext, progress: Progress, at: BoutsAt): PlannedItem => {
  const why = whyLeftOut(context, at);
  if (why !== null) return leftOut(why);
  const needsHarness = at.machine.kind === 'treadmill' && at.machine.gravity === '0 g';
  const harness: Harnessed | null = needsHarness ? harnessOn(context, progress, { ...at, track: at.item.track }) : null;
  return harness?.kind === 'gap'
    ? leftOut(harness.says, true)
    : { kind: 'item', item: cardBouts(context, progress, at, harness) };
};

const whyLeftOut = (context: PlanContext, { exercise, day, adjustments, item }: BoutsAt): string | null => {
  const { known } = context;
  if (restrictionsOn(context, exercise, day).some(({ restriction: { limit } }) => limit.kind === 'forbidden'))
    return 'left out: limited by the physician';
  if (adjustments.some(({ change }) => change.kind === 'leave out')) return 'left out: by agreement';
  const isAllOut = item.bouts.some(({ intensity }) => intensity?.kind === 'all-out');
  if (isAllOut && exercise.pattern !== 'cycling') return 'left out: nothing all-out but on a cycle';
  if (isAllOut && effortCap(context, exercise, day) !== null) return 'left out: limited by the physician';
  if (!isInFlight(known, day) || !known.mission) return null;
  const { firstEnduranceFlightDay, firstAllOutFlightDay } = known.house.policies;
  const on = flightDay(known.mission.launch, day);
  if (on < firstEnduranceFlightDay) return `left out: no endurance before flight day ${firstEnduranceFlightDay}`;
  return isAllOut && on < firstAllOutFlightDay
    ? `left out: nothing all-out before flight day ${firstAllOutFlightDay}`
    : null;
};

type WithHarness = Extract<Harnessed, { readonly kind: 'harness' }> | null;

const cardBouts = (context: PlanContext, progress: Progress, at: BoutsAt, harness: WithHarness): CardBouts => {
  const { item, exercise, machine, day } = at;
  const cap = effortCap(context, exercise, day);
  const shouldFeel = capped(item.shouldFeel, cap);
  const set = item.bouts.map((bout) =>
    setBout(bout, {
      day,
      launch: context.known.mission?.launch ?? null,
      pattern: exercise.pattern,
      machine,
      person: enduranceOf(context, day),
      bodyMass: massOn(context, day),
      harness: harness?.pull ?? null,
      rpe: shouldFeel,
      byEffortOnly: cap !== null && cap < item.shouldFeel[1],
    }),
  );
  const bouts = set.map(({ bout }) => bout);
  const state = pieceState(progress, item.track, machine.id);
  return {
    kind: 'bouts',
    item: item.id,
    track: item.track,
    place: 0,
    exercise: exercise.id,
    exerciseName: exercise.name,
    priority: item.priority,
    asWritten: at.asWritten,
    settings: settingsFor(context.known, machine.id, exercise.id),
    last: state.last,
    cues: exercise.cues,
    shouldFeel,
    says: [...new Set([...restrictedSays(context, exercise, day), ...(harness?.says ?? [])])],
    machine: machine.id,
    machineName: machine.name,
    warmUpSeconds: item.warmUpSeconds,
    bouts,
    coolDownSeconds: item.coolDownSeconds,
    harness: harness?.pull ?? null,
    raises: [
      ...(harness?.raise ? [harness.raise] : []),
      ...settingRaise(
        at,
        'W',
        5,
        state.watts,
        most(bouts, ({ watts }) => watts),
      ),
      ...settingRaise(
        at,
        'km/h',
        0.1,
        state.speed,
        most(bouts, ({ speed }) => speed),
      ),
    ],
    working: [...new Set(set.flatMap(({ working }) => working))],
  };
};

/** Read once a day of a derivation: every item of a day asks. */
const enduranceOf = ({ known }: PlanContext, day: Day): Endurance => enduranceOn(known, day);

const massOn = (context: PlanContext, day: Day): number | null =>
  isInFlight(context.known, day)
    ? (massInFlight(context, day)?.kilograms ?? null)
    : (bodyMassOn(context.known, day)?.kilograms ?? null);

const most = (bouts: readonly CardBout[], of: (bout: CardBout) => number | null): number | null => {
  const set = bouts.flatMap((bout) => of(bout) ?? []);
  return set.length > 0 ? Math.max(...set) : null;
};

/** A setting that goes up against the last one, in whole steps of it: a new test, or the programme. */
const settingRaise = (
  { item, exercise }: BoutsAt,
  unit: RaiseUnit,
  step: number,
  from: number | null,
  to: number | null,
): readonly Raise[] => {
  if (to === null || (from !== null && to <= from)) return [];
  return [
    {
      track: item.track,
      exercise: exercise.id,
      exerciseName: exercise.name,
      from: from === null ? null : Math.round(from / step),
      to: Math.round(to / step),
      unit,
      increment: String(step),
      atTheBar: null,
      trueFraction: null,
      effortStep: null,
      shareStep: null,
      cause: from === null ? 'first load' : 'new test',
      because: [],
      cautions: [],
      needsReason: false,
      proposal: null,
    },
  ];
};
