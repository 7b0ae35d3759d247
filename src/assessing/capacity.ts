import type { Day } from '#units/day.ts';
import { capacityMachine, type CapacitySource, type Exercise, type Machine } from '#domain/catalogue.ts';
import type { CapacityKey, Estimate } from '#domain/estimate.ts';
import type { FactId } from '#domain/identity.ts';
import type { Known } from '#domain/known.ts';
import { filterLocalLevel, levelAt, type FilteredLevel } from '#science/estimation/local-level.ts';
import { cardReadings } from './card-evidence.ts';
import { daysWithoutLift } from './days-without.ts';
import { evidenceOf, type Evidence, type Reading } from './observation.ts';
import { testReadings } from './test-evidence.ts';
import { transferredTo } from './transferred.ts';

/** Added to the variance of log capacity at launch and at landing: bodies change faster there (our own design). */
export const CHANGE_OF_GRAVITY_VARIANCE = 0.1 ** 2;
/** Spread of every ratio between lifts, on the log scale (common practice, no source). */
const RATIO_LOG_SD = 0.15;

/** Everything that one key rests on, filtered once. */
export interface CapacityTrace {
  readonly key: CapacityKey;
  readonly of: number;
  readonly evidence: Evidence;
  readonly filtered: FilteredLevel;
  readonly carriedOver: boolean;
  readonly at: (day: Day) => Estimate | null;
}

export type CapacityReading =
  { readonly kind: 'estimate'; readonly estimate: Estimate } | { readonly kind: 'none'; readonly says: string };

/** Repetitions that the capacity of an exercise is the maximum of, where it is measured at all. */
export const repetitionsOf = (source: CapacitySource): number => (source.kind === 'repetition maximum' ? source.of : 1);

/** A reader of capacities: each key is filtered once, however many days ask, and whoever asks of the same facts. */
export const capacityReader = (known: Known): CapacityReader => {
  const kept = readers.get(known) ?? makeReader(known);
  readers.set(known, kept);
  return kept;
};

const readers = new WeakMap<Known, CapacityReader>();

const makeReader = (known: Known) => {
  const traces = new Map<string, CapacityTrace | null>();
  const trace = (exercise: Exercise, machine: Machine): CapacityTrace | null => {
    const name = `${exercise.id} ${machine.gravity} ${capacityMachine(machine)}`;
    const kept = traces.get(name);
    if (kept !== undefined) return kept;
    const made = makeTrace(known, exercise, machine, trace);
    traces.set(name, made);
    return made;
  };
  return {
    trace,
    on: (exercise: Exercise, machine: Machine, day: Day) => readCapacity(known, trace, exercise, machine, day),
  };
};

export type CapacityReader = ReturnType<typeof makeReader>;
export type TraceOf = (exercise: Exercise, machine: Machine) => CapacityTrace | null;

const readCapacity = (
  known: Known,
  trace: TraceOf,
  exercise: Exercise,
  machine: Machine,
  day: Day,
): CapacityReading => {
  const own = trace(exercise, machine)?.at(day);
  if (own) return { kind: 'estimate', estimate: own };
  const transferred = transferredTo(known, trace, exercise, machine, day);
  if (transferred) return { kind: 'estimate', estimate: transferred };
  if (exercise.capacity.kind === 'ratio') return readByRatio(known, trace, exercise.capacity, exercise, machine, day);
  return {
    kind: 'none',
    says: exercise.capacity.kind === 'none' ? 'none: runs on effort' : 'no test yet: runs on effort',
  };
};

const readByRatio = (
  known: Known,
  trace: TraceOf,
  { to, ratio }: Extract<CapacitySource, { readonly kind: 'ratio' }>,
  exercise: Exercise,
  machine: Machine,
  day: Day,
): CapacityReading => {
  const tested = known.house.exercises.get(to);
  const base = tested && trace(tested, machine)?.at(day);
  if (!base) return { kind: 'none', says: `no test of ${tested?.name.toLowerCase() ?? to} yet: runs on effort` };
  return { kind: 'estimate', estimate: byRatio(base, exercise, ratio) };
};

const makeTrace = (known: Known, exercise: Exercise, machine: Machine, trace: TraceOf): CapacityTrace | null => {
  if (exercise.capacity.kind === 'none') return null;
  const key: CapacityKey = { exercise: exercise.id, gravity: machine.gravity, machine: capacityMachine(machine) };
  const of = repetitionsOf(exercise.capacity);
  const readings = [...testReadings(known, exercise, key, of), ...cardReadings(known, exercise, key, of)];
  const inPlace = evidenceOf(machine.gravity === '0 g' ? readings.map((each) => inFlightOnly(known, each)) : readings);
  const before = machine.gravity === '0 g' ? carriedOver(known, exercise, machine, trace) : null;
  const evidence = before ? inPlace : fromFirstEstimate(inPlace);
  if (!before && evidence.observations.length === 0) return null;
  const filtered = filterLocalLevel(evidence.observations, {
    ...(before && known.mission
      ? {
          prior: {
            day: known.mission.launch,
            level: Math.log(before.median),
            // At launch the ground estimate has been widened already for the change of gravity.
            variance: before.logSd ** 2,
          },
        }
      : {}),
    widenings: machine.gravity === '1 g' ? gravityChanges(known) : timesWithout(known, exercise),
  });
  return {
    key,
    of,
    evidence,
    filtered,
    carriedOver: before !== null,
    at: (day) => estimateAt(key, of, evidence, filtered, before, day),
  };
};

/** A reading of a flight machine from before launch cannot be: the launch has slipped, or the date is wrong. */
const inFlightOnly = ({ mission }: Known, reading: Reading): Reading => {
  if (reading.kind === 'unused' || !mission || reading.observation.day >= mission.launch) return reading;
  const { day, facts, kind, says } = reading.observation;
  return {
    kind: 'unused',
    unused: { day, fact: facts[0] as FactId, kind, says, why: 'before launch: correct its day, or the launch' },
  };
};

/** "At least so much" starts no estimate: bounds before the first real observation are not used. */
const fromFirstEstimate = ({ observations, unused }: Evidence): Evidence => {
  const first = observations.findIndex((observation) => !observation.lowerBound);
  const bounds = first < 0 ? observations : observations.slice(0, first);
  return {
    observations: first < 0 ? [] : observations.slice(first),
    unused: [
      ...unused,
      ...bounds.map(({ day, facts, kind, says }) => ({
        day,
        fact: facts[0] as FactId,
        kind,
        says,
        why: 'a lower bound alone starts no estimate',
      })),
    ],
  };
};

/**
 * A flight key starts from the ground unit of the same machine, else from the free bar of the same exercise, else, where
 * the exercise has one, from its ratio to a tested lift.
 */
const carriedOver = (known: Known, exercise: Exercise, machine: Machine, trace: TraceOf): Estimate | null => {
  const launch = known.mission?.launch;
  if (launch === undefined) return null;
  const direct = groundEstimate(known, exercise, machine, trace, launch);
  if (direct || exercise.capacity.kind !== 'ratio') return direct;
  const tested = known.house.exercises.get(exercise.capacity.to);
  const base = tested ? groundEstimate(known, tested, machine, trace, launch) : null;
  return base && byRatio(base, exercise, exercise.capacity.ratio);
};

const groundEstimate = (
  known: Known,
  exercise: Exercise,
  machine: Machine,
  trace: TraceOf,
  on: Day,
): Estimate | null => {
  const grounds = [...known.house.machines.values()].filter((each) => each.gravity === '1 g');
  const ground = [
    ...grounds.filter((each) => each.groundUnitOf === machine.id),
    ...grounds.filter((each) => each.kind === 'free bar'),
  ];
  for (const each of ground) {
    const estimate = trace(exercise, each)?.at(on);
    if (estimate) return estimate;
  }
  return null;
};

const byRatio = (base: Estimate, exercise: Exercise, ratio: number): Estimate => ({
  ...base,
  key: { ...base.key, exercise: exercise.id },
  median: base.median * ratio,
  logSd: Math.hypot(base.logSd, RATIO_LOG_SD),
  basis: 'by ratio',
});

/** Added where a lift is known to have been left out for long. */
const timesWithout = (known: Known, exercise: Exercise): readonly { readonly day: Day; readonly variance: number }[] =>
  daysWithoutLift(known, exercise.id).map((day) => ({ day, variance: CHANGE_OF_GRAVITY_VARIANCE }));

const gravityChanges = ({ mission }: Known): readonly { readonly day: Day; readonly variance: number }[] =>
  mission
    ? [mission.launch, ...(mission.landing ? [mission.landing.latest] : [])].map((day) => ({
        day,
        variance: CHANGE_OF_GRAVITY_VARIANCE,
      }))
    : [];

const estimateAt = (
  key: CapacityKey,
  of: number,
  evidence: Evidence,
  filtered: FilteredLevel,
  before: Estimate | null,
  day: Day,
): Estimate | null => {
  const level = levelAt(filtered, day);
  if (level.kind === 'nothing yet') return null;
  const used = evidence.observations.filter((observation) => observation.day <= day);
  const own = used.at(-1)?.day ?? null;
  return {
    key,
    day,
    median: Math.exp(level.level),
    logSd: Math.sqrt(level.variance),
    of,
    newest: own ?? before?.newest ?? day,
    observations: used.length + (before?.observations ?? 0),
    basis: own !== null || !before ? 'known' : before.basis === 'by ratio' ? 'by ratio' : 'carried over from 1 g',
    facts: [...(before?.facts ?? []), ...used.flatMap((observation) => observation.facts)],
  };
};
