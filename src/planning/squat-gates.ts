import type { Day } from '#units/day.ts';
import type { Exercise, LooseKind, Machine, MachineKind } from '#domain/catalogue.ts';
import { bodyMassOn, ofKind, type Known } from '#domain/known.ts';
import { GATE_BEFORE_BAR, GATE_BEFORE_STEPS, SQUAT_GATES, type SquatGateName } from '#domain/squat-gate.ts';
import type { Limit } from './limits.ts';

/** Of body mass: what a bar weighs at most until the bar gate is passed; common practice, no source. */
const LIGHT_BAR = 0.5;

/** The gates that are passed on a day: the last judgement of each counts, and after landing only what was seen since. */
const gatesPassed = (known: Known, on: Day): ReadonlySet<SquatGateName> => {
  const since = landedBy(known, on) ?? -Infinity;
  const judged = ofKind(known, 'judged').filter((fact) => fact.day <= on && fact.day >= since);
  const last = new Map(judged.toSorted((a, b) => a.day - b.day).map((fact) => [fact.gate, fact] as const));
  return new Set(
    [...last.values()].filter((fact) => fact.passed && fact.watched !== 'on film, not enough').map(({ gate }) => gate),
  );
};

/** The first gate that is not passed. */
export const nextGate = (known: Known, on: Day): SquatGateName | null => {
  const passed = gatesPassed(known, on);
  return SQUAT_GATES.find((gate) => !passed.has(gate)) ?? null;
};

/** What a card says of a lift that waits for its gate. */
export const leftOutBehind = (gate: SquatGateName | null): string =>
  `left out: the ${gate ?? 'squat gate'} comes first`;

/** Do the gates stand before this exercise for this person on this day? Under a bar in 1 g, squats and hip hinges. */
export const isBehindGates = (
  known: Known,
  { pattern }: Exercise,
  { gravity }: Pick<Machine, 'gravity'>,
  on: Day,
): boolean =>
  gravity === '1 g' &&
  (pattern === 'squat' || pattern === 'hip hinge') &&
  // Somebody who was tested has been seen under a bar, but not since the landing.
  (!wasTested(known, pattern, on) || landedBy(known, on) !== null);

/**
 * A recorded test of the same kind of lift: results of cards alone are no test, nobody need have watched; nor is what is
 * lifted to learn it, such as a goblet squat, of which no maximum is known.
 */
const wasTested = (known: Known, pattern: Exercise['pattern'], on: Day): boolean =>
  ofKind(known, 'lifted').some((fact) => {
    const exercise = known.house.exercises.get(fact.exercise);
    return fact.repetitions > 0 && fact.day <= on && exercise?.pattern === pattern && exercise.capacity.kind !== 'none';
  });

/** Is a squat under a bar still to come for somebody on a day? Who was tested has been seen there, but not since a landing. */
export const isBehindBar = (known: Known, on: Day): boolean =>
  (!wasTested(known, 'squat', on) || landedBy(known, on) !== null) && !mayCarryBar(known, on);

/** Nobody who has not passed the gate before the bar is sent under one. */
export const mayCarryBar = (known: Known, on: Day): boolean => gatesPassed(known, on).has(GATE_BEFORE_BAR);

/** A bar, or what stands for one: there the gates hold whatever sets the load. Light loads in the hands teach the way to it. */
export const isUnderBar = (kind: MachineKind | LooseKind): boolean =>
  kind === 'free bar' || kind === 'resistive machine';

/** A bar of somebody between the gates is a light one. Without a body mass it is the lightest there is. */
export const gateLimit = (known: Known, on: Day, lightest: number): readonly Limit[] => {
  if (gatesPassed(known, on).has(GATE_BEFORE_STEPS)) return [];
  const mass = bodyMassOn(known, on);
  return [
    {
      kind: 'gate',
      kilograms: Math.max(lightest, LIGHT_BAR * (mass?.kilograms ?? 0)),
      says: `the ${GATE_BEFORE_STEPS}: half of body mass at most until it is passed`,
    },
  ];
};

const landedBy = ({ mission }: Known, on: Day): Day | null =>
  mission?.landing && on >= mission.landing.latest ? mission.landing.latest : null;
