import type { Day } from '#units/day.ts';
import { kilogramsOf, numberOf } from '#units/entered.ts';
import { fraction, kilograms, machineLoad } from '#units/quantity.ts';
import type { Exercise } from '#domain/catalogue.ts';
import type { FactId, MachineId } from '#domain/identity.ts';
import { bodyMassOn, ofKind, type Known } from '#domain/known.ts';
import { bodyWeightShare } from '#science/body/work-share.ts';
import { barEquivalent } from '#science/crossing/crossing.ts';

export interface FlightMass {
  readonly kilograms: number;
  readonly fact: FactId;
  readonly says: string;
}

/** Body mass that counts in flight: the last one before launch, unless a signature fixed another. */
export const flightBodyMass = (known: Known, on: Day): FlightMass | null => {
  const fixed = ofKind(known, 'decided').findLast(
    ({ decision }) => decision.kind === 'fix body mass' && decision.from <= on,
  );
  if (fixed?.decision.kind === 'fix body mass')
    return {
      kilograms: kilogramsOf(fixed.decision.mass),
      fact: fixed.id,
      says: `fixed by signature, ${fixed.decision.reason}`,
    };
  const before = known.mission ? bodyMassOn(known, known.mission.launch) : null;
  return before && { kilograms: before.kilograms, fact: before.fact.id, says: 'last body mass before launch' };
};

/** Delivered over commanded load of a machine by the newest calibration on or before a day; 1 where there is none. */
export const calibrationFactor = (known: Known, machine: MachineId, on: Day): number => {
  const calibrations = known.house.calibrations.filter((fact) => fact.machine === machine && fact.day <= on);
  const newest = calibrations.reduce<(typeof calibrations)[number] | null>(
    (last, fact) => (last && last.day > fact.day ? last : fact),
    null,
  );
  return newest ? numberOf({ text: newest.factor, unit: '1' }) : 1;
};

export const deliveredBy = (
  known: Known,
  machine: MachineId,
  on: Day,
  commanded: number,
): { readonly kilograms: number; readonly on: Day } => ({
  kilograms: commanded * calibrationFactor(known, machine, on),
  on,
});

export type BarReading =
  { readonly kind: 'bar'; readonly kilograms: number } | { readonly kind: 'none'; readonly why: string };

/** A load weighed in 1 g, which needs no crossing. */
export const onTheBar = (load: number): BarReading =>
  load > 0 ? { kind: 'bar', kilograms: load } : { kind: 'none', why: 'no load on the bar says nothing of strength' };

/** What a machine load in flight is worth at the bar: less the work-matched share, whatever policy or ramp made it. */
export const barEquivalentOf = (
  known: Known,
  exercise: Exercise,
  delivered: { readonly kilograms: number; readonly on: Day },
): BarReading => {
  const mass = flightBodyMass(known, delivered.on);
  if (!mass) return { kind: 'none', why: 'no body mass before launch is known' };
  const share = bodyWeightShare(exercise.shareModel, known.sex).work;
  const bar = barEquivalent(machineLoad(delivered.kilograms), fraction(share), kilograms(mass.kilograms));
  return bar > known.house.policies.evidenceFloor * mass.kilograms
    ? { kind: 'bar', kilograms: bar }
    : { kind: 'none', why: 'the load hardly exceeds the share of body weight: it says nothing of strength' };
};
