import { backSquat, deadlift, heelRaise } from './exercises/lower-body.ts';
import { inclinePress, oneArmRow } from './exercises/presses-and-pulls.ts';
import { benchPress, bentOverRow } from './exercises/upper-body.ts';
import { gobletSquat } from './exercises/squats.ts';
import { seatedHeelRaise } from './exercises/legs.ts';
import { twoHandCarry } from './exercises/carries.ts';
import type { ProgrammeLine } from './programme-line.ts';

/* Lifts whose load is found by feel, lower than in training: to learn a movement, to meet a machine, to come back. */

interface ByFeel {
  readonly name: string;
  readonly track: string;
  readonly exercise: ProgrammeLine['exercise'];
  readonly priority: number;
  readonly work: ProgrammeLine['work'];
  readonly feel: readonly [number, number];
  readonly source: string;
}

const line = ({ name, track, exercise, priority, work, feel, source }: ByFeel): ProgrammeLine => ({
  name,
  track,
  leading: true,
  exercise,
  priority,
  load: { kind: 'effort', rpe: feel },
  work,
  warmUps: [],
  reserve: null,
  shouldFeel: feel,
  source,
});

/** Found by feel once, then the last load and the step rule; so the squat gates stand before it as before any other bar. */
const thenLast = (one: ByFeel): ProgrammeLine => ({ ...line(one), load: { kind: 'effort, then last' } });

/** Something to squat with for who has never been under a bar. */
export const gobletBeforeGates = (priority: number): ProgrammeLine =>
  line({
    name: 'goblet-squat',
    track: 'goblet squat',
    exercise: gobletSquat,
    priority,
    work: { sets: 3, repetitions: 8, rest: 60 },
    feel: [4, 6],
    source:
      'Before the squat gates a light weight in front of the chest, watched: common practice; sets are our own design.',
  });

const MEET =
  'Familiarisation on the ground unit, at most RPE 6 at first: common practice; sets and repetitions are our own design.';

const meet = (
  exercise: ProgrammeLine['exercise'],
  name: string,
  priority: number,
  repetitions: number,
): ProgrammeLine => ({
  ...thenLast({
    name: `ground-unit-${name}`,
    track: `ground unit ${name.replaceAll('-', ' ')}`,
    exercise,
    priority,
    work: { sets: 2, repetitions, rest: 60 },
    feel: [5, 6],
    source: MEET,
  }),
  // The rule is judged under the bar, where the load is that of training.
  leading: false,
});

export const GROUND_UNIT: readonly ProgrammeLine[] = [
  meet(backSquat, 'squat', 2, 6),
  meet(deadlift, 'deadlift', 3, 6),
  meet(heelRaise, 'heel-raise', 4, 10),
];

/* After landing: no free bar in the first stage, none that was not found by feel in the last. */

const FIRST =
  'First stage after landing: light strength, no free bar (our own rule after common practice); sets are our own design.';
const SECOND =
  'Second stage after landing: nothing maximal, nothing unwatched overhead: common practice; sets are our own design.';
const THIRD =
  'Third stage after landing: back to the bar by feel, RPE 6 at most at first, then by the step rule, and only after the squat gates are passed again: common practice; sets are our own design.';

export const FIRST_STAGE_ROW = line({
  name: 'return-row',
  track: 'return row',
  exercise: oneArmRow,
  priority: 4,
  work: { sets: 2, repetitions: 12, rest: 30 },
  feel: [3, 4],
  source: FIRST,
});
export const FIRST_STAGE_HEELS = line({
  name: 'return-seated-heel-raise',
  track: 'return seated heel raise',
  exercise: seatedHeelRaise,
  priority: 5,
  work: { sets: 2, repetitions: 15, rest: 45 },
  feel: [3, 4],
  source: FIRST,
});

const second = (
  exercise: ProgrammeLine['exercise'],
  name: string,
  priority: number,
  sets: number,
  repetitions: number,
): ProgrammeLine =>
  line({
    name: `return-${name}`,
    track: `return ${name.replaceAll('-', ' ')}`,
    exercise,
    priority,
    work: { sets, repetitions, rest: 60 },
    feel: [5, 6],
    source: SECOND,
  });

export const SECOND_STAGE: readonly ProgrammeLine[] = [
  second(gobletSquat, 'goblet-squat', 1, 3, 10),
  second(inclinePress, 'incline-press', 2, 2, 12),
  second(oneArmRow, 'row', 3, 2, 12),
  second(seatedHeelRaise, 'seated-heel-raise', 4, 3, 15),
];

const third = (
  exercise: ProgrammeLine['exercise'],
  name: string,
  priority: number,
  sets: number,
  repetitions: number,
): ProgrammeLine =>
  thenLast({
    name: `return-${name}`,
    track: `return ${name.replaceAll('-', ' ')}`,
    exercise,
    priority,
    work: { sets, repetitions, rest: 90 },
    feel: [5, 6],
    source: THIRD,
  });

export const THIRD_STAGE: readonly ProgrammeLine[] = [
  third(backSquat, 'squat', 1, 3, 8),
  third(deadlift, 'deadlift', 2, 3, 8),
  third(heelRaise, 'heel-raise', 3, 3, 12),
  third(benchPress, 'bench-press', 4, 3, 10),
  third(bentOverRow, 'bent-over-row', 5, 2, 10),
];

export const CARRY = line({
  name: 'return-carry',
  track: 'return carry',
  exercise: twoHandCarry,
  priority: 4,
  work: { sets: 3, repetitions: 40, rest: 60 },
  feel: [5, 6],
  source: THIRD,
});
