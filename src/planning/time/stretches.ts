import type { Day } from '#units/day.ts';
import { dayOfAnchor } from '#domain/mission-day.ts';
import type { PlanContext } from '../plan-context.ts';

/** Runs of days over which nothing that anybody entered begins, ends or is near. */
export interface Stretches {
  /** The number of the stretch that a day lies in; null near a day on which something may change. */
  numberOf(on: Day): number | null;
}

/** Rules look so many days back and ahead of a thing that was entered, where no policy says more; our own design. */
const AROUND_A_FACT = 7;
/** After launch and landing rules go on for weeks: shoulders, speed under the harness, all-out work, the first days home. Our own design. */
const AFTER_A_CROSSING = 28;

export const stretchesOf = (context: PlanContext): Stretches => {
  const { mission, house } = context.known;
  const { policies } = house;
  const reach = Math.max(AROUND_A_FACT, policies.daysBetweenRaises, policies.daysHandsRest);
  const named = daysNamed(context).toSorted((a, b) => a - b);
  const afterCrossing = Math.max(
    AFTER_A_CROSSING,
    policies.shoulderRuleFlightDays,
    policies.firstResistiveFlightDay,
    policies.firstEnduranceFlightDay,
    policies.firstAllOutFlightDay,
    policies.blackoutDaysFromLanding,
  );
  const crossings = mission ? [mission.launch, ...(mission.landing ? [mission.landing.latest] : [])] : [];
  return {
    numberOf: (on) => {
      const place = firstAfter(named, on);
      const [before, next] = [named[place - 1], named[place]];
      const isNear =
        (before !== undefined && on - before <= reach) ||
        (next !== undefined && next - on <= reach) ||
        crossings.some((crossing) => on >= crossing && on - crossing <= afterCrossing);
      return isNear ? null : place;
    },
  };
};

/** Place of the first day after another one. */
const firstAfter = (days: readonly Day[], on: Day): number => {
  let [from, until] = [0, days.length];
  while (from < until) {
    const middle = (from + until) >> 1;
    if ((days[middle] as Day) <= on) from = middle + 1;
    else until = middle;
  }
  return from;
};

/** Every day that is named in what is known of a person, their mission, its machines and their calibration. */
const daysNamed = ({ known }: PlanContext): readonly Day[] => {
  const { mission, house, facts } = known;
  const days: Day[] = [];
  for (const fact of facts) {
    if (fact.kind !== 'decided') {
      noteDays(fact, days);
      continue;
    }
    const { decision } = fact;
    if (decision.kind === 'issue') days.push(decision.card.card.day);
    else if (decision.kind === 'follow') days.push(...follows(decision.from, mission));
    else noteDays(decision, days);
  }
  noteDays([mission, house.calibrations, [...house.machines.values()].map(({ outOfService }) => outOfService)], days);
  return [...new Set(days)];
};

const follows = (from: Parameters<typeof dayOfAnchor>[0], mission: PlanContext['known']['mission']): readonly Day[] => {
  const day = dayOfAnchor(from, mission);
  return day === null ? [] : [day];
};

/** Days of this century; what is no day and looks like one costs time, never a wrong card. */
const A_DAY_FROM = 10_957;
const PLACES_IN_THE_LOG: ReadonlySet<string> = new Set(['sequence', 'basis']);

/** Whatever its field is called: a new kind of fact need not be told here. */
const noteDays = (value: unknown, days: Day[]): void => {
  if (typeof value === 'number') {
    if (Number.isInteger(value) && value >= A_DAY_FROM) days.push(value as Day);
  } else if (Array.isArray(value)) {
    for (const each of value) noteDays(each, days);
  } else if (typeof value === 'object' && value !== null) {
    for (const [name, each] of Object.entries(value)) if (!PLACES_IN_THE_LOG.has(name)) noteDays(each, days);
  }
};
