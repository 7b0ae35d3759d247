import { backSquat, deadlift, heelRaise, singleLegSquat } from './exercises/lower-body.ts';
import { benchPress, bentOverRow, pullDown, shoulderPress } from './exercises/upper-body.ts';
import type { ProgrammeLine } from './programme-line.ts';

/*
 * How the fractions were chosen. A set of n repetitions that leaves r in reserve can be at most the load of n + r
 * repetitions to failure, by the inverse of Wathan 1994 (from memory):
 *
 *   8 → 0.783   10 → 0.742   11 → 0.724   13 → 0.691   15 → 0.663   of the one-repetition maximum
 *  12 → 1.000   14 → 0.957   15 → 0.938                            of the 12-repetition maximum
 *
 * Each fraction stands just under its limit, so that the reserve is real. Where capacity comes by a ratio, the limit is
 * taken at a ratio one standard deviation (15 %) too high: 0.724 → 0.623 and 0.691 → 0.595.
 */

const DAYS_OF_THREE_KINDS =
  'Heavy, medium and light days of about 6, 8 and 12 repetitions, 3 to 4 sets, three days a week: after a high-intensity, low-volume flight trial (English 2020, npj Microgravity 6:21, seen; the repetitions from memory).';
const THREE_LIFTS =
  'Squat, deadlift and heel raise three days a week: Loehr 2011, Med Sci Sports Exerc 43(1):146–156 (seen).';
const INSIDE_THE_RESERVE =
  'Fraction just under what repetitions and reserve allow (Wathan 1994, from memory): our own design.';
const MAIN_LIFT = `${DAYS_OF_THREE_KINDS} ${THREE_LIFTS} ${INSIDE_THE_RESERVE}`;
const HEEL_RAISE = `${MAIN_LIFT} Fraction of the 12-repetition maximum.`;
const ONE_LEG =
  'Single-leg squat once a week for side differences and to spare the shoulders: common practice. Fraction safe even where the ratio is 15 % too high: our own design.';
const UPPER_BODY = 'Upper body 3 × 10: common practice.';
const BY_RATIO = `${UPPER_BODY} Fraction safe even where the ratio to the bench press is 15 % too high: our own design.`;

/** Warm-up fractions of the work load on the machine: common practice. */
const TWO_WARM_UPS = [
  { of: 0.6, repetitions: 6 },
  { of: 0.8, repetitions: 4 },
];
const ONE_WARM_UP = [{ of: 0.6, repetitions: 6 }];

/** Bench press and row are trained on two days along one track each. */
const BENCH: Omit<ProgrammeLine, 'name' | 'priority'> = {
  track: 'bench press',
  leading: true,
  exercise: benchPress,
  load: { kind: 'fraction, then last', of: 0.69 },
  work: { sets: 3, repetitions: 10, rest: 90 },
  warmUps: ONE_WARM_UP,
  reserve: 3,
  shouldFeel: [6, 7],
  source: `${UPPER_BODY} ${INSIDE_THE_RESERVE}`,
};
const ROW: Omit<ProgrammeLine, 'name' | 'priority'> = {
  track: 'bent-over row',
  leading: true,
  exercise: bentOverRow,
  load: { kind: 'effort', rpe: [6, 8] },
  work: { sets: 3, repetitions: 10, rest: 60 },
  warmUps: [],
  reserve: null,
  shouldFeel: [6, 8],
  source: UPPER_BODY,
};

export const HEAVY_DAY: readonly ProgrammeLine[] = [
  {
    name: 'squat-heavy',
    track: 'squat heavy',
    leading: true,
    exercise: backSquat,
    priority: 1,
    load: { kind: 'fraction, then last', of: 0.78 },
    work: { sets: 4, repetitions: 6, rest: 150 },
    warmUps: TWO_WARM_UPS,
    reserve: 2,
    shouldFeel: [7, 8],
    source: MAIN_LIFT,
  },
  {
    name: 'deadlift-heavy',
    track: 'deadlift heavy',
    leading: true,
    exercise: deadlift,
    priority: 2,
    load: { kind: 'fraction, then last', of: 0.78 },
    work: { sets: 4, repetitions: 6, rest: 150 },
    warmUps: TWO_WARM_UPS,
    reserve: 2,
    shouldFeel: [7, 8],
    source: MAIN_LIFT,
  },
  {
    name: 'heel-raise-heavy',
    track: 'heel raise heavy',
    leading: true,
    exercise: heelRaise,
    priority: 3,
    load: { kind: 'fraction, then last', of: 0.99 },
    work: { sets: 4, repetitions: 10, rest: 90 },
    warmUps: ONE_WARM_UP,
    reserve: 2,
    shouldFeel: [7, 8],
    source: HEEL_RAISE,
  },
  { ...BENCH, name: 'bench-press-heavy-day', priority: 4 },
  { ...ROW, name: 'bent-over-row-heavy-day', priority: 5 },
];

export const MEDIUM_DAY: readonly ProgrammeLine[] = [
  {
    name: 'squat-medium',
    track: 'squat medium',
    leading: false,
    exercise: backSquat,
    priority: 1,
    load: { kind: 'fraction, then last', of: 0.74 },
    work: { sets: 4, repetitions: 8, rest: 120 },
    warmUps: TWO_WARM_UPS,
    reserve: 2,
    shouldFeel: [7, 8],
    source: MAIN_LIFT,
  },
  {
    name: 'deadlift-medium',
    track: 'deadlift medium',
    leading: false,
    exercise: deadlift,
    priority: 2,
    load: { kind: 'fraction, then last', of: 0.74 },
    work: { sets: 4, repetitions: 8, rest: 120 },
    warmUps: TWO_WARM_UPS,
    reserve: 2,
    shouldFeel: [7, 8],
    source: MAIN_LIFT,
  },
  {
    name: 'heel-raise-medium',
    track: 'heel raise medium',
    leading: false,
    exercise: heelRaise,
    priority: 3,
    load: { kind: 'fraction, then last', of: 0.95 },
    work: { sets: 4, repetitions: 12, rest: 90 },
    warmUps: ONE_WARM_UP,
    reserve: 2,
    shouldFeel: [7, 8],
    source: HEEL_RAISE,
  },
  {
    name: 'shoulder-press',
    track: 'shoulder press',
    leading: true,
    exercise: shoulderPress,
    priority: 4,
    load: { kind: 'fraction, then last', of: 0.59 },
    work: { sets: 3, repetitions: 10, rest: 90 },
    warmUps: ONE_WARM_UP,
    reserve: 3,
    shouldFeel: [6, 7],
    source: BY_RATIO,
  },
  {
    name: 'pull-down',
    track: 'pull-down',
    leading: true,
    exercise: pullDown,
    priority: 5,
    load: { kind: 'effort, then last' },
    work: { sets: 3, repetitions: 10, rest: 60 },
    warmUps: [],
    reserve: null,
    shouldFeel: [6, 8],
    source: UPPER_BODY,
  },
];

export const LIGHT_DAY: readonly ProgrammeLine[] = [
  {
    name: 'squat-light',
    track: 'squat light',
    leading: false,
    exercise: backSquat,
    priority: 1,
    load: { kind: 'fraction, then last', of: 0.66 },
    work: { sets: 3, repetitions: 12, rest: 90 },
    warmUps: ONE_WARM_UP,
    reserve: 3,
    shouldFeel: [6, 7],
    source: MAIN_LIFT,
  },
  {
    name: 'deadlift-light',
    track: 'deadlift light',
    leading: false,
    exercise: deadlift,
    priority: 2,
    load: { kind: 'fraction, then last', of: 0.66 },
    work: { sets: 3, repetitions: 12, rest: 90 },
    warmUps: ONE_WARM_UP,
    reserve: 3,
    shouldFeel: [6, 7],
    source: MAIN_LIFT,
  },
  {
    name: 'heel-raise-light',
    track: 'heel raise light',
    leading: false,
    exercise: heelRaise,
    priority: 3,
    load: { kind: 'fraction, then last', of: 0.93 },
    work: { sets: 3, repetitions: 12, rest: 90 },
    warmUps: ONE_WARM_UP,
    reserve: 3,
    shouldFeel: [6, 7],
    source: HEEL_RAISE,
  },
  {
    name: 'single-leg-squat',
    track: 'single-leg squat',
    leading: true,
    exercise: singleLegSquat,
    priority: 4,
    load: { kind: 'fraction, then last', of: 0.62 },
    work: { sets: 3, repetitions: 8, rest: 60 },
    warmUps: ONE_WARM_UP,
    reserve: 3,
    shouldFeel: [6, 7],
    source: ONE_LEG,
  },
  { ...BENCH, name: 'bench-press-light-day', priority: 5 },
  { ...ROW, name: 'bent-over-row-light-day', priority: 6 },
];
