import type { Machine } from '#domain/catalogue.ts';
import type { Side } from '#domain/effort.ts';
import type { ExerciseId } from '#domain/identity.ts';
import { backSquat, deadlift, heelRaise, singleLegSquat } from '#shipped/exercises/lower-body.ts';
import { benchPress } from '#shipped/exercises/upper-body.ts';
import type { InventedPerson } from '../invented-person.ts';
import { ADAEZE, INES, JOON_HO, KERTTU, MIRELA, NOOR, OONA, RAFAEL, TOMAS, WEN_LI, YUSUF } from '../people.ts';
import { BRAE_BAR, CEDAR_BAR, GROUND_UNIT, LINDQVIST_BAR } from '../skerry-station.ts';

/** Exercise, repetitions, repetitions left in reserve; where they are given, the load as typed and the side. */
export type TestSet = readonly [
  exercise: ExerciseId,
  repetitions: number,
  reserve: number,
  load?: string | null,
  side?: Side,
];

export interface TestDay {
  readonly person: InventedPerson;
  /** Days from today. */
  readonly day: number;
  readonly machine: Machine;
  readonly sets: readonly TestSet[];
  /** Was it written down how hard it was? */
  readonly effortKnown: boolean;
}

const [squat, pull, press, heels] = [backSquat.id, deadlift.id, benchPress.id, heelRaise.id];

/** Fives far from launch, threes later, doubles last: nobody is asked for a single. */
const FIVES: readonly TestSet[] = [
  [squat, 5, 1],
  [pull, 5, 1],
  [press, 5, 1],
  [heels, 12, 1],
];
const THREES: readonly TestSet[] = [
  [squat, 3, 1],
  [pull, 3, 1],
  [press, 4, 0],
  [heels, 12, 0],
];
const DOUBLES: readonly TestSet[] = [
  [squat, 2, 1],
  [pull, 2, 1],
  [press, 3, 1],
  [heels, 12, 0],
];
const UPPER_AND_HEELS: readonly TestSet[] = [
  [pull, 3, 1],
  [press, 4, 1],
  [heels, 12, 0, '97.5'],
];
const GROUND_UNIT_SETS: readonly TestSet[] = [
  [squat, 5, 2],
  [pull, 5, 2],
  [heels, 12, 2],
];
const HOME_AGAIN: readonly TestSet[] = [
  [squat, 5, 3],
  [heels, 12, 2],
];
const ONE_LEG: readonly TestSet[] = [
  [singleLegSquat.id, 5, 1, null, 'left'],
  [singleLegSquat.id, 5, 1, null, 'right'],
  [singleLegSquat.id, 5, 0, null, 'left'],
  [singleLegSquat.id, 5, 0, null, 'right'],
];

const tested = (
  person: InventedPerson,
  day: number,
  sets: readonly TestSet[],
  machine: Machine = BRAE_BAR,
  effortKnown = true,
): TestDay => ({ person, day, machine, sets, effortKnown });

export const TEST_DAYS: readonly TestDay[] = [
  tested(INES, -131, [[squat, 6, 1, '88']], LINDQVIST_BAR),
  tested(INES, -82, [[squat, 4, 1, '95'], ...UPPER_AND_HEELS]),
  tested(INES, -40, [[squat, 1, 0, '102.5'], ...UPPER_AND_HEELS]),
  tested(TOMAS, -200, FIVES),
  tested(TOMAS, -110, THREES),
  tested(TOMAS, -50, DOUBLES),
  tested(OONA, -205, FIVES),
  tested(OONA, -108, THREES),
  tested(OONA, -48, DOUBLES),
  tested(KERTTU, -300, FIVES, BRAE_BAR, false),
  tested(KERTTU, -210, THREES),
  tested(KERTTU, -145, DOUBLES),
  tested(RAFAEL, -302, FIVES, BRAE_BAR, false),
  tested(RAFAEL, -212, THREES),
  tested(RAFAEL, -146, DOUBLES),
  tested(MIRELA, -190, FIVES, CEDAR_BAR),
  tested(MIRELA, -110, THREES),
  tested(MIRELA, -55, DOUBLES),
  tested(MIRELA, -51, GROUND_UNIT_SETS, GROUND_UNIT),
  tested(YUSUF, -185, FIVES),
  tested(YUSUF, -95, THREES),
  tested(YUSUF, -20, DOUBLES),
  tested(YUSUF, -13, GROUND_UNIT_SETS, GROUND_UNIT),
  tested(WEN_LI, -200, FIVES),
  tested(WEN_LI, -140, THREES),
  tested(WEN_LI, -68, ONE_LEG, LINDQVIST_BAR),
  tested(ADAEZE, -35, FIVES, CEDAR_BAR),
  tested(ADAEZE, -12, THREES, CEDAR_BAR),
  tested(JOON_HO, -280, FIVES, BRAE_BAR, false),
  tested(JOON_HO, -218, DOUBLES),
  tested(JOON_HO, -4, HOME_AGAIN),
  tested(NOOR, -300, FIVES, BRAE_BAR, false),
  tested(NOOR, -241, DOUBLES),
  tested(NOOR, -24, HOME_AGAIN),
  tested(NOOR, -3, THREES),
];
