import type { ProgrammeItem, ProgrammePhase } from '#domain/programme.ts';
import { GROUND_UNIT, gobletBeforeGates } from './by-feel-lines.ts';
import {
  ANKLES,
  BLADE_ROW,
  DEAD_BUG,
  HIPS,
  HIP_FLEXORS,
  JUMPS,
  LEARN_BOX_SQUAT,
  LEARN_HINGE,
  LEARN_SQUAT,
  ONE_LEG_STAND,
  PULL_APART,
  SHOULDERS_UP,
  SIDE_HOLD,
  SPINE,
  TURN_OUT,
  UPPER_BACK,
  WRISTS,
  Y_RAISE,
} from './drill-lines.ts';
import {
  FOUR_MINUTE_RIDE,
  FOUR_MINUTE_RUN,
  STEADY_RUN,
  TWO_MINUTE_RIDE,
  WAKING_RIDE,
  easyRide,
  easyRun,
} from './endurance-lines.ts';
import {
  BELOW_CRITICAL,
  CRITICAL_FORCE,
  FINGER_EXTENSION,
  FINGER_HOLD,
  FOREARM_ROTATION,
  GREATEST_GRIP,
  SUIT_LIKE,
  WRIST_EXTENSION,
} from './hand-lines.ts';
import {
  GENERAL_FIRST,
  GENERAL_SECOND,
  GENERAL_THIRD,
  QUARANTINE_DAY,
  TAPER_FIRST,
  TAPER_SECOND,
} from './preparation-lines.ts';
import { pieces, sessionsOf, type ProgrammeDay } from './programme-day.ts';
import { itemOn, itemOnGround, type ProgrammeLine } from './programme-line.ts';
import { HEAVY_DAY, LIGHT_DAY, MEDIUM_DAY } from './programme-lines.ts';

/**
 * Four to five single hours a week before launch, or two blocks of two (common practice): three of the hours are strength,
 * two endurance, each inside its own block so that a busy week can lay two of them together.
 */
const HOUR = 60;
/** The rehearsal of the flight's own lifts, and hands for who works outside. */
const HOUR_AND_A_QUARTER = 75;
const HOUR_AND_A_HALF = 90;

const [MONDAY, TUESDAY, WEDNESDAY, THURSDAY, FRIDAY] = [1, 2, 3, 4, 5] as const;

const onGround = (lines: readonly ProgrammeLine[], phase: string): readonly ProgrammeItem[] =>
  lines.map((line) => itemOnGround(line, phase));

const goblet = (phase: string): ProgrammeItem =>
  itemOn('dumbbells', gobletBeforeGates(1), { phase, condition: 'before the squat gates' });

/** What a pull-down hangs from is not on a bar. */
const UNDER_A_BAR = ({ exercise }: ProgrammeLine): boolean => exercise.name !== 'Pull-down';

const GENERAL_DAYS: readonly ProgrammeDay[] = [
  {
    name: 'first',
    title: 'First day',
    weekday: MONDAY,
    blockMinutes: HOUR,
    work: [
      ...onGround(GENERAL_FIRST, 'general'),
      goblet('first-general'),
      ...pieces(1, LEARN_SQUAT),
      ...pieces(7, PULL_APART),
      ...pieces(8, ANKLES, HIPS),
    ],
  },
  {
    name: 'run',
    title: 'Run',
    weekday: TUESDAY,
    blockMinutes: HOUR,
    work: [
      ...pieces(3, JUMPS),
      ...pieces(1, STEADY_RUN),
      ...pieces(4, ONE_LEG_STAND),
      ...pieces(5, DEAD_BUG),
      ...pieces(6, UPPER_BACK),
    ],
  },
  {
    name: 'second',
    title: 'Second day',
    weekday: WEDNESDAY,
    blockMinutes: HOUR,
    work: [
      ...onGround(GENERAL_SECOND, 'general'),
      ...pieces(1, LEARN_HINGE),
      ...pieces(7, TURN_OUT),
      ...pieces(8, HIP_FLEXORS, SHOULDERS_UP),
    ],
  },
  {
    name: 'ride',
    title: 'Cycle intervals',
    weekday: THURSDAY,
    blockMinutes: HOUR,
    work: [...pieces(1, FOUR_MINUTE_RIDE), ...pieces(3, SIDE_HOLD), ...pieces(4, Y_RAISE), ...pieces(5, SPINE, WRISTS)],
  },
  {
    name: 'third',
    title: 'Third day',
    weekday: FRIDAY,
    blockMinutes: HOUR,
    work: [
      ...onGround(GENERAL_THIRD, 'general'),
      goblet('third-general'),
      ...pieces(1, LEARN_BOX_SQUAT),
      ...pieces(7, BLADE_ROW),
      ...pieces(8, ANKLES, UPPER_BACK),
    ],
  },
];

const GENERAL: ProgrammePhase = {
  name: 'general preparation',
  span: { first: { from: 'launch', days: -730 }, last: { from: 'launch', days: -181 } },
  deload: { everyWeeks: 5, fewerSets: 1, loadBy: 0.9 },
  sessions: sessionsOf('general', GENERAL_DAYS),
  source:
    'Whole body, two to three days a week, 8 to 12 repetitions: Ratamess 2009, Med Sci Sports Exerc 41(3):687–708 (seen). Two days of endurance beside them, about two years before launch, an easier week every fifth: common practice and our own design.',
};

const SPECIFIC_DAYS: readonly ProgrammeDay[] = [
  {
    name: 'heavy',
    title: 'Heavy day',
    weekday: MONDAY,
    blockMinutes: HOUR_AND_A_HALF,
    work: [
      ...onGround(HEAVY_DAY, 'specific'),
      goblet('heavy-specific'),
      ...pieces(7, TURN_OUT),
      ...pieces(8, ANKLES, HIPS),
    ],
  },
  {
    name: 'run',
    title: 'Run intervals and hands',
    weekday: TUESDAY,
    blockMinutes: HOUR_AND_A_QUARTER,
    work: [
      ...pieces(4, JUMPS),
      ...pieces(1, FOUR_MINUTE_RUN),
      ...pieces(2, CRITICAL_FORCE),
      ...pieces(5, FINGER_EXTENSION, SIDE_HOLD),
      ...pieces(6, UPPER_BACK),
    ],
  },
  {
    name: 'medium',
    title: 'Medium day',
    weekday: WEDNESDAY,
    blockMinutes: HOUR_AND_A_HALF,
    work: [
      ...onGround(MEDIUM_DAY.filter(UNDER_A_BAR), 'specific'),
      ...pieces(1, LEARN_HINGE),
      ...pieces(6, GREATEST_GRIP),
      ...pieces(7, Y_RAISE, SIDE_HOLD),
      ...pieces(8, HIP_FLEXORS, SHOULDERS_UP),
    ],
  },
  {
    name: 'ride',
    title: 'Cycle intervals and the ground unit',
    weekday: THURSDAY,
    blockMinutes: HOUR_AND_A_HALF,
    work: [
      ...GROUND_UNIT.map((line) => itemOn('resistive machine', line, { phase: 'specific', condition: 'everyone' })),
      ...pieces(1, TWO_MINUTE_RIDE),
      ...pieces(5, BELOW_CRITICAL),
      ...pieces(6, WRIST_EXTENSION, DEAD_BUG),
      ...pieces(7, SPINE),
    ],
  },
  {
    name: 'light',
    title: 'Light day and hands',
    weekday: FRIDAY,
    blockMinutes: HOUR_AND_A_HALF,
    work: [
      ...onGround(LIGHT_DAY, 'specific'),
      goblet('light-specific'),
      ...pieces(7, FINGER_HOLD),
      ...pieces(8, FOREARM_ROTATION),
      ...pieces(9, BLADE_ROW),
    ],
  },
];

const FLIGHT_SPECIFIC: ProgrammePhase = {
  name: 'flight-specific preparation',
  span: { first: { from: 'launch', days: -180 }, last: { from: 'launch', days: -15 } },
  deload: { everyWeeks: 5, fewerSets: 1, loadBy: 0.9 },
  sessions: sessionsOf('specific', SPECIFIC_DAYS),
  source:
    'The heavy, medium and light days of the flight, under a bar, in the last half year, with intervals of the flight on treadmill and cycle, the ground unit of the flight machine, and the hands of who works outside: our own design after common practice, general first, then specific.',
};

const TAPER_DAYS: readonly ProgrammeDay[] = [
  {
    name: 'first',
    title: 'First taper day',
    weekday: MONDAY,
    blockMinutes: HOUR,
    work: [...onGround(TAPER_FIRST, 'taper'), ...pieces(7, TURN_OUT), ...pieces(8, ANKLES, HIPS)],
  },
  {
    name: 'ride',
    title: 'Waking ride and hands',
    weekday: TUESDAY,
    blockMinutes: HOUR,
    work: [
      ...pieces(1, WAKING_RIDE),
      ...pieces(2, SUIT_LIKE),
      ...pieces(3, FINGER_EXTENSION),
      ...pieces(4, UPPER_BACK, WRISTS),
    ],
  },
  {
    name: 'second',
    title: 'Second taper day',
    weekday: THURSDAY,
    blockMinutes: HOUR,
    work: [...onGround(TAPER_SECOND, 'taper'), ...pieces(7, BLADE_ROW), ...pieces(8, HIP_FLEXORS, SHOULDERS_UP)],
  },
  {
    name: 'run',
    title: 'Easy run',
    weekday: FRIDAY,
    blockMinutes: HOUR,
    work: [...pieces(1, easyRun({ minutes: 20, feel: [4, 5] })), ...pieces(3, ONE_LEG_STAND), ...pieces(4, SPINE)],
  },
];

const TAPER: ProgrammePhase = {
  name: 'taper',
  span: { first: { from: 'launch', days: -14 }, last: { from: 'launch', days: -8 } },
  deload: null,
  sessions: sessionsOf('taper', TAPER_DAYS),
  source:
    'One to three weeks, 30 to 70 % less volume, load kept: Travis 2020, Sports 8(9):125 (title seen, numbers from memory).',
};

const lightDay = (name: string, weekday: number, lines: readonly ProgrammeLine[]): ProgrammeDay => ({
  name,
  title: 'Light whole body',
  weekday,
  blockMinutes: HOUR,
  work: [...onGround(lines, 'quarantine'), ...pieces(7, PULL_APART), ...pieces(8, SPINE, HIPS)],
});

const easyDay = (name: string, weekday: number): ProgrammeDay => ({
  name,
  title: 'Easy ride',
  weekday,
  blockMinutes: HOUR,
  work: [...pieces(1, easyRide({ minutes: 25, feel: [3, 4] })), ...pieces(3, UPPER_BACK, HIP_FLEXORS)],
});

const QUARANTINE: ProgrammePhase = {
  name: 'quarantine',
  span: { first: { from: 'launch', days: -7 }, last: { from: 'launch', days: -2 } },
  deload: null,
  sessions: sessionsOf('quarantine', [
    lightDay('first', MONDAY, QUARANTINE_DAY),
    easyDay('ride', TUESDAY),
    lightDay(
      'second',
      THURSDAY,
      QUARANTINE_DAY.map((line) => ({ ...line, name: `${line.name}-second` })),
    ),
    easyDay('second-ride', FRIDAY),
  ]),
  source: 'Light and unhurried in the last week, nothing new: common practice, no source.',
};

/** Two years before launch. */
export const PREPARATION_PHASES: readonly ProgrammePhase[] = [GENERAL, FLIGHT_SPECIFIC, TAPER, QUARANTINE];
