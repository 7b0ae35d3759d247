import type { ExerciseId } from '#domain/identity.ts';
import type { Side } from '#domain/effort.ts';
import { bentOverRow, benchPress, pullDown, shoulderPress } from '#shipped/exercises/upper-body.ts';
import { twoHandCarry } from '#shipped/exercises/carries.ts';
import { seatedHeelRaise } from '#shipped/exercises/legs.ts';
import { backSquat, deadlift, heelRaise, romanianDeadlift, singleLegSquat } from '#shipped/exercises/lower-body.ts';
import { inclinePress, oneArmRow } from '#shipped/exercises/presses-and-pulls.ts';
import { gobletSquat } from '#shipped/exercises/squats.ts';
import type { InventedPerson, Strength } from './invented-person.ts';
import { normal, type Random } from './random.ts';

/*
 * How the invented people's bodies work. It is not the science by which loads are planned: strength falls off along another
 * curve (Epley's line), shares are round numbers and ratios differ, so that plans are never right by construction.
 */

/** A load is a thirtieth lighter for every repetition after the first (Epley's line, through one repetition). */
const EPLEY = 30;
const overOne = (repetitions: number): number => 1 + (repetitions - 1) / EPLEY;

/** One-repetition maximum [kg at the bar] before flight; a row and a pull go with the bench press. */
const maximumOf = (strength: Strength): Readonly<Record<ExerciseId, number>> => ({
  [backSquat.id]: strength.backSquat,
  [deadlift.id]: strength.deadlift,
  [benchPress.id]: strength.benchPress,
  [heelRaise.id]: strength.heelRaiseTwelve * overOne(12),
  [singleLegSquat.id]: strength.backSquat * 0.39,
  [shoulderPress.id]: strength.benchPress * 0.62,
  [bentOverRow.id]: strength.benchPress * 1.02,
  [pullDown.id]: strength.benchPress * 1.1,
  [romanianDeadlift.id]: strength.deadlift * 0.73,
  [gobletSquat.id]: strength.backSquat * 0.42,
  [seatedHeelRaise.id]: strength.heelRaiseTwelve * 0.7,
  // With dumbbells the number is that of one of them.
  [inclinePress.id]: strength.benchPress * 0.4,
  [oneArmRow.id]: strength.benchPress * 0.55,
  [twoHandCarry.id]: strength.deadlift * 0.3,
});

const LEGS: readonly ExerciseId[] = [
  backSquat.id,
  deadlift.id,
  romanianDeadlift.id,
  heelRaise.id,
  seatedHeelRaise.id,
  singleLegSquat.id,
  gobletSquat.id,
];

/** Fraction of body weight that a lift moved on the ground. */
const SHARES: Readonly<Record<ExerciseId, number>> = {
  [backSquat.id]: 0.72,
  [deadlift.id]: 0.6,
  [heelRaise.id]: 0.99,
  [singleLegSquat.id]: 0.79,
};
const SHARE_OF_THE_ARMS = 0.07;

export const trueShare = (exercise: ExerciseId): number => SHARES[exercise] ?? SHARE_OF_THE_ARMS;

/** Half a year of flight takes 5 % off the legs and 2 % off the rest; a year of preparation adds 16 %. */
const PER_DAY_IN_FLIGHT = { legs: -0.05 / 180, rest: -0.02 / 180 };
const PER_DAY_OF_PREPARATION = 0.0004;
const LONGEST_PREPARATION = 400;

/**
 * What a person could lift once on a day [kg at the bar], or null where there is no telling. `sinceLaunch` counts days from
 * launch, negative before it.
 */
export const trueMaximum = (
  person: InventedPerson,
  exercise: ExerciseId,
  sinceLaunch: number,
  side: Side | null,
): number | null => {
  const atLaunch = person.strength && maximumOf(person.strength)[exercise];
  if (!person.strength || atLaunch === undefined || atLaunch === null) return null;
  const perDay = LEGS.includes(exercise) ? PER_DAY_IN_FLIGHT.legs : PER_DAY_IN_FLIGHT.rest;
  const log =
    sinceLaunch >= 0 ? perDay * sinceLaunch : PER_DAY_OF_PREPARATION * Math.max(sinceLaunch, -LONGEST_PREPARATION);
  return atLaunch * Math.exp(log) * sideFactor(person.strength.rightOverLeft, side);
};

const sideFactor = (rightOverLeft: number, side: Side | null): number => {
  if (side === null) return 1;
  return side === 'right' ? 1 + rightOverLeft / 2 : 1 - rightOverLeft / 2;
};

/** More than these nobody counts. */
const MOST_REPETITIONS = 40;

/** Repetitions that each set before takes from the next. */
const TIRED_BY_A_SET = 0.3;

/** Repetitions to failure with a bar, tired by earlier sets; fractions count. */
export const truePossible = (maximum: number, bar: number, setsBefore: number): number => {
  const fresh = bar <= 0 ? MOST_REPETITIONS : 1 + EPLEY * (maximum / bar - 1);
  return Math.max(0, Math.min(MOST_REPETITIONS, fresh - TIRED_BY_A_SET * setsBefore));
};

/** The bar [kg] with which so many repetitions would be the last. */
export const barToFailure = (maximum: number, repetitions: number): number =>
  maximum / overOne(Math.max(1, repetitions));

/** How a reserve feels as a rating of effort: point for point near failure, flatter far from it, and never under 3. */
export const feltEffort = (reserve: number, random: Random): number => {
  const rating = reserve <= 4 ? 10 - reserve : 6 - (reserve - 4) / 2.5;
  return Math.min(10, Math.max(3, Math.round(rating + 0.4 * normal(random))));
};
