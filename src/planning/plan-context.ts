import { addDays, type Day } from '#units/day.ts';
import { numberOf } from '#units/entered.ts';
import { kilogramsPer } from '#units/mass.ts';
import { calibrationFactor, flightBodyMass, type FlightMass } from '#assessing/bar-equivalent.ts';
import { capacityReader, type CapacityReader } from '#assessing/capacity.ts';
import { enduranceReader, type Endurance, type EnduranceReader } from '#assessing/endurance.ts';
import type { Exercise, Machine } from '#domain/catalogue.ts';
import type { ReplacementPolicy } from '#domain/decision.ts';
import type { Fact } from '#domain/fact.ts';
import type { FactId } from '#domain/identity.ts';
import { ofKind, type Known } from '#domain/known.ts';
import { dayOfAnchor } from '#domain/mission-day.ts';
import type { ProgrammeVersion } from '#domain/programme.ts';
import { isWithinScope, type Restriction } from '#domain/restriction.ts';
import type { FilledRow } from '#domain/working.ts';
import { bodyWeightShare } from '#science/body/work-share.ts';
import { adjustmentsOf, type StandingAdjustment } from './adjustments.ts';
import { Rows } from './rows.ts';
import type { CapacityCause } from './frozen-capacity.ts';
import { calendarOf, type Calendar } from './time/calendar.ts';
import type { LaidWeek } from './time/laid-week.ts';
import { reMadeByDay, type ReMake } from './re-made.ts';
import type { SetBouts } from './set-bouts.ts';
import type { Instead } from './substitutes.ts';

/** What stays the same over all days of one derivation, computed once. */
export interface PlanContext {
  readonly known: Known;
  readonly capacity: CapacityReader;
  readonly rows: Rows;
  readonly endurance: EnduranceReader;
  /** Bouts as they were set, by what was known of the person's endurance. */
  readonly boutsSet: Map<Endurance, Map<string, SetBouts>>;
  /** Day of every test that is no lift. */
  readonly tests: ReadonlyMap<FactId, Day>;
  /** Reckonings of items that are no lifts, one list an item. */
  readonly pieces: (readonly FilledRow[])[];
  /** What can be done instead of an exercise with what is there, found once. */
  readonly instead: Map<string, readonly Instead[]>;
  readonly shares: Map<Exercise['id'], { readonly work: number; readonly static: number }>;
  /** Days on which the capacity of an exercise is read, found once. */
  readonly causes: Map<string, readonly CapacityCause[]>;
  readonly decisions: readonly Fact<'decided'>[];
  readonly adjustments: readonly StandingAdjustment[];
  readonly declined: ReadonlySet<string>;
  readonly restrictions: readonly BindingRestriction[];
  readonly calendar: Calendar;
  /** Weeks with their sessions laid on their days, found once, by every day of theirs. */
  readonly weeks: Map<Day, LaidWeek>;
  /** Last day on which a card can be issued; null where nobody asks for a road. */
  readonly issuableUntil: Day | null;
  /** Sessions that were made anew for what is there. */
  readonly reMade: ReadonlyMap<Day, ReMake>;
}

export interface BindingRestriction {
  readonly fact: Fact<'restricted'>;
  readonly restriction: Restriction;
  /** First day on which it binds no more; null while nobody signed its lifting. */
  readonly liftedOn: Day | null;
}

export const planContext = (known: Known, today: Day | null = null): PlanContext => {
  const decisions = ofKind(known, 'decided');
  return {
    known,
    capacity: capacityReader(known),
    rows: new Rows(),
    endurance: enduranceReader(known),
    tests: new Map(ofKind(known, 'tested').map(({ id, day }) => [id, day] as const)),
    pieces: [],
    boutsSet: new Map(),
    instead: new Map(),
    shares: new Map(),
    causes: new Map(),
    decisions,
    adjustments: adjustmentsOf(decisions),
    declined: new Set(decisions.flatMap(({ decision }) => (decision.kind === 'decline' ? [decision.proposal] : []))),
    restrictions: bindingRestrictions(known),
    calendar: calendarOf(known),
    weeks: new Map(),
    issuableUntil: today === null ? null : addDays(today, known.house.policies.horizonDays - 1),
    reMade: reMadeByDay(decisions),
  };
};

const bindingRestrictions = (known: Known): readonly BindingRestriction[] => {
  const lifted = ofKind(known, 'restriction lifted');
  return ofKind(known, 'restricted').map((fact) => ({
    fact,
    restriction: fact.restriction,
    liftedOn: lifted.find((each) => each.restriction === fact.id)?.on ?? null,
  }));
};

/** Restrictions that bind an exercise on a day. A review date lifts nothing. */
export const restrictionsOn = (context: PlanContext, exercise: Exercise, on: Day): readonly BindingRestriction[] =>
  context.restrictions.filter(
    ({ restriction, liftedOn }) =>
      restriction.from <= on && (liftedOn === null || on < liftedOn) && isWithinScope(restriction.scope, exercise),
  );

/** The programme that a person follows on a day: the one that took hold last, of one day the one signed last; or null. */
export const programmeOn = ({ known, decisions }: PlanContext, on: Day): ProgrammeVersion | null => {
  let following: { readonly from: Day; readonly programme: ProgrammeVersion['id'] } | null = null;
  for (const { decision } of decisions) {
    if (decision.kind !== 'follow') continue;
    const from = dayOfAnchor(decision.from, known.mission);
    if (from !== null && from <= on && (following === null || from >= following.from))
      following = { from, programme: decision.programme };
  }
  return following ? (known.house.programmes.get(following.programme) ?? null) : null;
};

/** The machine of a kind aboard the mission's site, or null where there is none. */
export const machineAboard = (known: Known, kind: Machine['kind']): Machine | null => {
  const aboard = [...known.house.machines.values()].filter(
    (machine) => machine.kind === kind && machine.gravity === '0 g',
  );
  return aboard.find((machine) => machine.site === known.mission?.site) ?? null;
};

export const isMachineOut = ({ outOfService }: Machine, on: Day): boolean =>
  outOfService !== null && outOfService.from <= on && (outOfService.until === null || on <= outOfService.until);

export const sharesOf = (
  context: PlanContext,
  exercise: Exercise,
): { readonly work: number; readonly static: number } => {
  const kept = context.shares.get(exercise.id);
  if (kept) return kept;
  const { work, static: atJoint } = bodyWeightShare(exercise.shareModel, context.known.sex);
  // Where no joint stands for the lift, the work-matched share is all there is.
  const shares = { work, static: atJoint.kind === 'share' ? atJoint.share : work };
  context.shares.set(exercise.id, shares);
  return shares;
};

/** The policy by which body weight is added back, as signed; work-matched where nobody signed another. */
export const replacementPolicy = (context: PlanContext, exercise: Exercise): ReplacementPolicy => {
  const signed = context.decisions.findLast(
    ({ decision }) => decision.kind === 'replace body weight' && decision.exercise === exercise.id,
  );
  return signed?.decision.kind === 'replace body weight' ? signed.decision.policy : 'work-matched';
};

export const shareByPolicy = (
  policy: ReplacementPolicy,
  shares: { readonly work: number; readonly static: number },
): number => {
  if (policy === 'work-matched') return shares.work;
  if (policy === 'joint-matched') return shares.static;
  return policy === 'whole' ? 1 : policy.share;
};

export const massInFlight = (context: PlanContext, on: Day): FlightMass | null => flightBodyMass(context.known, on);

/** A machine's steps for an exercise, with the kilograms that one commanded increment delivers. */
export interface MachineSteps {
  /** Increments in one rounding step. */
  readonly perStep: number;
  /** Delivered kilograms of one increment. */
  readonly increment: number;
  /** Delivered kilograms of one rounding step. */
  readonly step: number;
  /** Least load and ceiling in delivered kilograms. */
  readonly least: number;
  readonly ceiling: number;
}

export const machineSteps = (known: Known, machine: Machine, exercise: Exercise, calibratedOn: Day): MachineSteps => {
  const inUnit = (text: string): number => numberOf({ text, unit: machine.unit });
  const delivered = kilogramsPer(machine.unit) * calibrationFactor(known, machine.id, calibratedOn);
  const perStep = wholeMultiple(inUnit(exercise.roundTo[machine.unit]), inUnit(machine.increment));
  const increment = inUnit(machine.increment) * delivered;
  return {
    perStep,
    increment,
    step: perStep * increment,
    least: inUnit(machine.least) * delivered,
    ceiling: inUnit(machine.ceiling) * delivered,
  };
};

/** Largest whole multiple of the increment that is not above what was asked; at least one. */
export const wholeMultiple = (asked: number, increment: number): number =>
  Math.max(1, Math.floor(asked / increment + 1e-6));
