import { backSquat, deadlift, heelRaise, romanianDeadlift } from './exercises/lower-body.ts';
import { benchPress, bentOverRow, shoulderPress } from './exercises/upper-body.ts';
import type { ProgrammeLine } from './programme-line.ts';

/*
 * Fractions under what repetitions and reserve allow, by the inverse of Wathan 1994 (from memory):
 *
 *   4 + 4 = 8 → 0.783   8 + 3 = 11 → 0.724   10 + 3 = 13 → 0.691   8 + 7 = 15 → 0.663
 *
 * Where capacity comes by a ratio, the limit is taken at a ratio one standard deviation (15 %) too high.
 */

const GENERAL =
  'Two to three days a week, 8 to 12 repetitions, 1 to 3 sets, the large lifts first: Ratamess 2009, Med Sci Sports Exerc 41(3):687–708 (seen). Fraction just under what repetitions and reserve allow (Wathan 1994, from memory): our own design.';
const BY_RATIO = `${GENERAL} Safe even where the ratio is 15 % too high.`;
const TAPER =
  'About half of the sets, load kept: Travis 2020, Sports 8(9):125 (title seen, numbers from memory). Last heavy squat three to five days before a test: common practice.';
const LIGHT = 'Light and easy, nothing new: common practice, no source.';

const WARM_UP = [{ of: 0.6, repetitions: 6 }];

type Work = ProgrammeLine['work'];
const sets = (count: number, repetitions: number, rest: number): Work => ({ sets: count, repetitions, rest });

/** A lift by a fraction of its capacity, three repetitions in reserve. */
const byFraction = (
  exercise: ProgrammeLine['exercise'],
  name: string,
  priority: number,
  of: number,
  work: Work,
  source: string,
): ProgrammeLine => ({
  name,
  track: name.replaceAll('-', ' '),
  leading: true,
  exercise,
  priority,
  load: { kind: 'fraction, then last', of },
  work,
  warmUps: WARM_UP,
  reserve: 3,
  shouldFeel: [6, 7],
  source,
});

const byEffort = (exercise: ProgrammeLine['exercise'], name: string, priority: number, work: Work): ProgrammeLine => ({
  name,
  track: name.replaceAll('-', ' '),
  leading: true,
  exercise,
  priority,
  load: { kind: 'effort, then last' },
  work,
  warmUps: [],
  reserve: null,
  shouldFeel: [6, 7],
  source: GENERAL,
});

export const GENERAL_FIRST: readonly ProgrammeLine[] = [
  byFraction(backSquat, 'general-squat', 1, 0.7, sets(3, 8, 120), GENERAL),
  byFraction(benchPress, 'general-bench-press', 2, 0.68, sets(3, 10, 90), GENERAL),
  byEffort(bentOverRow, 'general-row', 3, sets(3, 10, 60)),
  byFraction(heelRaise, 'general-heel-raise', 4, 0.93, sets(2, 12, 60), GENERAL),
];

export const GENERAL_SECOND: readonly ProgrammeLine[] = [
  byFraction(deadlift, 'general-deadlift', 1, 0.7, sets(3, 8, 120), GENERAL),
  byFraction(shoulderPress, 'general-shoulder-press', 2, 0.59, sets(3, 10, 90), BY_RATIO),
  {
    ...byFraction(heelRaise, 'general-heel-raise-second', 3, 0.93, sets(2, 12, 60), GENERAL),
    track: 'general heel raise',
  },
];

export const GENERAL_THIRD: readonly ProgrammeLine[] = [
  { ...byFraction(backSquat, 'general-squat-light', 1, 0.66, sets(3, 10, 90), GENERAL), leading: false },
  byFraction(romanianDeadlift, 'general-romanian-deadlift', 2, 0.62, sets(3, 8, 90), BY_RATIO),
  {
    ...byFraction(benchPress, 'general-bench-press-third', 3, 0.68, sets(2, 10, 90), GENERAL),
    track: 'general bench press',
  },
  { ...byEffort(bentOverRow, 'general-row-third', 4, sets(2, 10, 60)), track: 'general row' },
];

/** Loads of the last weeks stand on a fraction: they are the same for everybody of one capacity, whatever came before. */
const inTaper = (exercise: ProgrammeLine['exercise'], name: string, priority: number): ProgrammeLine => ({
  ...byFraction(exercise, name, priority, 0.78, sets(2, 4, 150), TAPER),
  load: { kind: 'fraction', of: 0.78 },
  reserve: 4,
  shouldFeel: [5, 6],
});

export const TAPER_FIRST: readonly ProgrammeLine[] = [
  inTaper(backSquat, 'taper-squat', 1),
  inTaper(benchPress, 'taper-bench-press', 2),
];

export const TAPER_SECOND: readonly ProgrammeLine[] = [
  inTaper(deadlift, 'taper-deadlift', 1),
  { ...inTaper(benchPress, 'taper-bench-press-second', 2), track: 'taper bench press' },
];

const light = (exercise: ProgrammeLine['exercise'], name: string, priority: number): ProgrammeLine => ({
  ...byFraction(exercise, name, priority, 0.55, sets(2, 8, 60), LIGHT),
  load: { kind: 'fraction', of: 0.55 },
  warmUps: [],
  reserve: null,
  shouldFeel: [4, 5],
});

export const QUARANTINE_DAY: readonly ProgrammeLine[] = [
  light(backSquat, 'light-squat', 1),
  light(benchPress, 'light-bench-press', 2),
  { ...byEffort(bentOverRow, 'light-row', 3, sets(2, 10, 60)), load: { kind: 'effort', rpe: [4, 5] }, source: LIGHT },
];
