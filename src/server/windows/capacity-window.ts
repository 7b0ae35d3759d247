import { isoOfDay } from '#units/day.ts';
import { capacityReader, type CapacityReader, type CapacityTrace } from '#assessing/capacity.ts';
import { profileOn } from '#assessing/profile.ts';
import { capacityMachine, type Exercise, type Machine } from '#domain/catalogue.ts';
import { intervalOf, type Estimate } from '#domain/estimate.ts';
import type { Known } from '#domain/known.ts';
import { showMissionDay } from '#domain/mission-day.ts';
import { smoothLocalLevel } from '#science/estimation/local-level.ts';
import type { Snapshot } from '#actions/snapshot.ts';
import type {
  CapacityLift,
  CapacityObservation,
  CapacitySeries,
  CapacityWindow,
} from '#contract/windows/capacity-window.ts';
import { personHead } from './person-head.ts';

export const capacityWindow = (snapshot: Snapshot, known: Known): CapacityWindow => {
  const reader = capacityReader(known);
  return {
    person: personHead(snapshot, known),
    today: snapshot.today,
    profile: profileOn(known, snapshot.today).map(({ quality, against, standing, says, source }) => ({
      quality,
      against,
      standing,
      says,
      source,
    })),
    lifts: [...known.house.exercises.values()]
      .map((exercise) => ({ exercise, lift: lift(snapshot, known, reader, exercise) }))
      .filter(({ exercise, lift: { series } }) => exercise.capacity.kind !== 'none' || series.length > 0)
      .map(({ lift: shown }) => shown),
  };
};

const lift = (snapshot: Snapshot, known: Known, reader: CapacityReader, exercise: Exercise): CapacityLift => {
  const machines = machinesOnce(known);
  const series = machines.flatMap((machine) => {
    const trace = reader.trace(exercise, machine);
    const estimate = trace?.at(snapshot.today);
    return trace && estimate ? [seriesOf(known, machine, trace, estimate)] : [];
  });
  return {
    exercise: exercise.id,
    name: exercise.name,
    reading: newestReading(snapshot, reader, exercise, machines),
    series,
  };
};

/** One machine for every key of capacity: free bars are alike. */
const machinesOnce = (known: Known): readonly Machine[] => {
  const lifting = [...known.house.machines.values()].filter(
    ({ kind }) => kind === 'resistive machine' || kind === 'free bar',
  );
  return [...new Map(lifting.map((machine) => [`${machine.gravity} ${capacityMachine(machine)}`, machine])).values()];
};

/** The estimate with the newest evidence of its own; where there is none, why. */
const newestReading = (
  { today }: Snapshot,
  reader: CapacityReader,
  exercise: Exercise,
  machines: readonly Machine[],
): CapacityLift['reading'] => {
  const readings = machines.map((machine) => reader.on(exercise, machine, today));
  const estimates = readings.flatMap((reading) => (reading.kind === 'estimate' ? [reading.estimate] : []));
  const newest = estimates.toSorted((a, b) => b.newest - a.newest)[0];
  if (newest) return { kind: 'estimate', estimate: newest, says: showEstimate(newest), rests: restsOn(newest) };
  const none = readings.flatMap((reading) => (reading.kind === 'none' ? [reading.says] : []))[0];
  return { kind: 'none', says: none ?? 'no machine for it here' };
};

/** "104 kg (97 to 112)": the median with its 95 % interval, in kilograms at the bar. */
export const showEstimate = (estimate: Estimate): string => {
  const [low, high] = intervalOf(estimate);
  const what = estimate.of === 1 ? '' : ` for ${estimate.of} repetitions`;
  return `${Math.round(estimate.median)} kg${what} (${Math.round(low)} to ${Math.round(high)})`;
};

const restsOn = ({ basis, observations, newest }: Estimate): string => {
  const evidence = `${observations} ${observations === 1 ? 'observation' : 'observations'}, the newest of ${isoOfDay(newest)}`;
  switch (basis) {
    case 'known':
      return evidence;
    case 'carried over from 1 g':
      return `carried over from the ground: ${evidence}`;
    case 'from another machine':
      return `from the free bar, by what other lifts on both have shown: ${evidence}`;
    case 'by ratio':
      return `by ratio to a tested lift: ${evidence}`;
  }
};

const seriesOf = (known: Known, machine: Machine, trace: CapacityTrace, estimate: Estimate): CapacitySeries => ({
  label: machine.kind === 'free bar' ? 'Free bar' : machine.name,
  gravity: machine.gravity,
  of: trace.of,
  estimate,
  observations: [...usedObservations(known, trace), ...unusedObservations(known, trace)].toSorted(
    (a, b) => a.day - b.day,
  ),
  smoothed: smoothLocalLevel(trace.filtered).map(({ day, level, variance }) => {
    const spread = 1.96 * Math.sqrt(variance);
    return { day, median: Math.exp(level), low: Math.exp(level - spread), high: Math.exp(level + spread) };
  }),
});

const usedObservations = (known: Known, trace: CapacityTrace): readonly CapacityObservation[] =>
  trace.evidence.observations.flatMap(({ facts, day, says, point, range, kind, lowerBound, confidence, why }) => {
    const fact = facts[0];
    if (!fact) return [];
    const use = lowerBound ? 'lower bound' : confidence === 'low' ? 'low confidence' : 'used';
    return [{ fact, day, missionDay: labelOf(known, day), says, point, range, kind, use, why }];
  });

const unusedObservations = (known: Known, trace: CapacityTrace): readonly CapacityObservation[] =>
  trace.evidence.unused.map(({ fact, day, says, kind, why }) => ({
    fact,
    day,
    missionDay: labelOf(known, day),
    says,
    point: null,
    range: null,
    kind,
    use: 'not used',
    why,
  }));

const labelOf = ({ mission }: Known, day: Snapshot['today']): string =>
  mission ? showMissionDay(mission, day) : isoOfDay(day);
