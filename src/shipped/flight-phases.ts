import type { ProgrammeItem, ProgrammePhase } from '#domain/programme.ts';
import {
  ANKLES,
  BLADE_ROW,
  HIPS,
  HIP_FLEXORS,
  PULL_APART,
  SHOULDERS_UP,
  SPINE,
  TRUNK_PRESS,
  TURN_OUT,
  UPPER_BACK,
  WRISTS,
  Y_RAISE,
  twice,
} from './drill-lines.ts';
import {
  ALL_OUT_RIDE,
  FOUR_MINUTE_RUN,
  STEADY_RIDE,
  STEADY_RUN,
  TWO_MINUTE_RIDE,
  easyRide,
  easyRun,
  easyWalk,
} from './endurance-lines.ts';
import {
  BELOW_CRITICAL,
  CRITICAL_FORCE,
  FINGER_EXTENSION,
  FOREARM_ROTATION,
  GREATEST_GRIP,
  SUIT_LIKE,
  WRIST_EXTENSION,
} from './hand-lines.ts';
import type { BoutsLine } from './piece-line.ts';
import { pieces, sessionsOf, type ProgrammeDay } from './programme-day.ts';
import { itemForFirstWeeks, itemForLastWeeks, itemForMainFlight, type ProgrammeLine } from './programme-line.ts';
import { HEAVY_DAY, LIGHT_DAY, MEDIUM_DAY } from './programme-lines.ts';

/** Two and a half hours of a day, set-up and stowing included (common practice). */
const WHOLE_DAY = 150;
/** A day of endurance and hands. */
const TWO_HOURS = 120;
const HOUR = 60;
const HALF_HOUR = 30;

interface LiftingDay {
  readonly name: string;
  readonly title: string;
  readonly weekday: number;
  readonly lines: readonly ProgrammeLine[];
}

/**
 * Flight days 4, 11, 18 … are heavy: the first day on which anything resistive is done begins with the leading tracks,
 * still low on both ramps. Two nights at least lie between any two of the three days.
 */
const MEDIUM: LiftingDay = { name: 'medium', title: 'Medium day', weekday: 1, lines: MEDIUM_DAY };
const HEAVY: LiftingDay = { name: 'heavy', title: 'Heavy day', weekday: 4, lines: HEAVY_DAY };
const LIGHT: LiftingDay = { name: 'light', title: 'Light day', weekday: 6, lines: LIGHT_DAY };

/** Lower body first, then intervals, then other lifts, then steady endurance, when time is short (our own design). */
const AFTER_THE_LIFTS = 7;

const liftingDay =
  (itemOf: (line: ProgrammeLine) => ProgrammeItem, blockMinutes: number) =>
  ({ lines, ...day }: LiftingDay, ...endurance: readonly BoutsLine[]): ProgrammeDay => ({
    ...day,
    blockMinutes,
    work: [...lines.map(itemOf), ...pieces(AFTER_THE_LIFTS, ...endurance)],
  });

const firstDay = liftingDay(itemForFirstWeeks, TWO_HOURS);
const FIRST_EASY_RIDE = easyRide({ minutes: 20, feel: [3, 4] });
const FIRST_EASY_RUN = easyRun({ minutes: 15, feel: [4, 5] });

const FIRST_DAYS: readonly ProgrammeDay[] = [
  // Flight days 1 and 8: lifts alone, so that launch day has nothing.
  firstDay(MEDIUM),
  {
    name: 'ride',
    title: 'Easy ride',
    weekday: 2,
    blockMinutes: HOUR,
    work: [...pieces(1, FIRST_EASY_RIDE), ...pieces(3, SPINE, HIPS)],
  },
  {
    name: 'walk',
    title: 'Walk under the harness',
    weekday: 3,
    blockMinutes: HOUR,
    work: [
      ...pieces(1, easyWalk({ minutes: 15, feel: [3, 4] })),
      ...pieces(2, PULL_APART),
      ...pieces(3, SPINE, ANKLES),
    ],
  },
  firstDay(HEAVY, FIRST_EASY_RIDE),
  {
    name: 'run',
    title: 'Easy run under the harness',
    weekday: 5,
    blockMinutes: HOUR,
    work: [...pieces(1, FIRST_EASY_RUN), ...pieces(2, TURN_OUT), ...pieces(3, SPINE, HIP_FLEXORS)],
  },
  firstDay(LIGHT, FIRST_EASY_RIDE),
  {
    name: 'easy',
    title: 'Easy day',
    weekday: 7,
    blockMinutes: HALF_HOUR,
    work: [...pieces(2, BLADE_ROW), ...pieces(3, ...[SPINE, UPPER_BACK, HIPS, ANKLES].map(twice))],
  },
];

const FIRST_FLIGHT_WEEKS: ProgrammePhase = {
  name: 'first flight weeks',
  span: { first: { from: 'launch', days: 0 }, last: { from: 'launch', days: 13 } },
  deload: null,
  sessions: sessionsOf('first', FIRST_DAYS),
  source:
    'Flight days 1 to 14, endurance easy from day 2, nothing resistive before day 4: the body is still finding its place and back pain is common (Kerstman 2012, Aviat Space Environ Med 83:2–7, from memory); the days are common practice and policies.',
};

const THREE_OF_EACH =
  'Lifts on three days, intervals on three and steady endurance on three, alternating: English 2020, npj Microgravity 6:21 (seen). About two and a half hours on six days, one day easy: common practice.';

const EASY_RIDE = easyRide({ minutes: 20, feel: [4, 5] });
const EASY_RUN = easyRun({ minutes: 20, feel: [5, 6] });

/** Days of the flight between the lifting days, the same in main and last weeks. */
const BETWEEN: readonly ProgrammeDay[] = [
  {
    name: 'run-intervals',
    title: 'Run intervals and hands',
    weekday: 2,
    blockMinutes: TWO_HOURS,
    work: [
      ...pieces(1, FOUR_MINUTE_RUN),
      ...pieces(2, GREATEST_GRIP, CRITICAL_FORCE),
      ...pieces(3, EASY_RIDE),
      ...pieces(4, FINGER_EXTENSION, TURN_OUT, TRUNK_PRESS),
      ...pieces(5, ANKLES, UPPER_BACK),
    ],
  },
  {
    name: 'easy',
    title: 'Easy day',
    weekday: 3,
    blockMinutes: HALF_HOUR,
    work: [
      ...pieces(1, BLADE_ROW, Y_RAISE),
      ...pieces(2, ...[SPINE, HIPS, HIP_FLEXORS, SHOULDERS_UP, WRISTS].map(twice)),
    ],
  },
  {
    name: 'ride-intervals',
    title: 'Cycle intervals and hands',
    weekday: 5,
    blockMinutes: TWO_HOURS,
    work: [
      ...pieces(1, TWO_MINUTE_RIDE),
      ...pieces(2, CRITICAL_FORCE),
      ...pieces(3, EASY_RUN),
      ...pieces(4, BELOW_CRITICAL),
      ...pieces(5, WRIST_EXTENSION, PULL_APART, TRUNK_PRESS),
      ...pieces(6, SPINE, HIP_FLEXORS),
    ],
  },
  {
    name: 'short-intervals',
    title: 'Short intervals, run and hands',
    weekday: 7,
    blockMinutes: TWO_HOURS,
    work: [
      ...pieces(1, ALL_OUT_RIDE),
      ...pieces(2, EASY_RUN),
      ...pieces(3, SUIT_LIKE),
      ...pieces(4, FOREARM_ROTATION),
      ...pieces(5, Y_RAISE, TRUNK_PRESS),
      ...pieces(6, ANKLES, WRISTS),
    ],
  },
];

const mainDay = liftingDay(itemForMainFlight, WHOLE_DAY);

const MAIN_FLIGHT: ProgrammePhase = {
  name: 'main flight',
  span: { first: { from: 'launch', days: 14 }, last: { from: 'landing', days: -15 } },
  deload: { everyWeeks: 5, fewerSets: 1, loadBy: 0.9 },
  sessions: sessionsOf('main', [
    mainDay(MEDIUM, STEADY_RIDE),
    mainDay(HEAVY, STEADY_RUN),
    mainDay(LIGHT, STEADY_RUN),
    ...BETWEEN,
  ]),
  source: `${THREE_OF_EACH} An easier week every 4 to 6 with less volume and effort: interviews with specialists, sportRxiv 208 (seen); every fifth, one set less and 10 % off: our own design.`,
};

const lastDay = liftingDay(itemForLastWeeks, WHOLE_DAY);

const LAST_FLIGHT_WEEKS: ProgrammePhase = {
  name: 'last flight weeks',
  span: { first: { from: 'landing', days: -14 }, last: { from: 'landing', days: -1 } },
  deload: null,
  sessions: sessionsOf('last', [
    lastDay(MEDIUM, STEADY_RUN),
    lastDay(HEAVY, STEADY_RUN),
    lastDay(LIGHT, STEADY_RIDE),
    ...BETWEEN,
  ]),
  source: `${THREE_OF_EACH} In the last two weeks a set fewer at the same load, and running kept up, which loads legs and bone most like the ground: common practice, our own figures.`,
};

/** From launch to the day before landing. */
export const FLIGHT_PHASES: readonly ProgrammePhase[] = [FIRST_FLIGHT_WEEKS, MAIN_FLIGHT, LAST_FLIGHT_WEEKS];
