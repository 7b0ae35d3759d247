import type { ProgrammeItem, ProgrammePhase } from '#domain/programme.ts';
import {
  CARRY,
  FIRST_STAGE_HEELS,
  FIRST_STAGE_ROW,
  SECOND_STAGE,
  THIRD_STAGE,
  gobletBeforeGates,
} from './by-feel-lines.ts';
import {
  ANKLES,
  BAND_ROW,
  BRIDGE,
  CRAWL,
  DEAD_BUG,
  FIRST_ONE_LEG,
  FLOOR_TRUNK,
  HEEL_TO_TOE,
  HINGE_AGAIN,
  HIPS,
  HIP_FLEXORS,
  LINE_WALK,
  LUNGES,
  ONE_LEG_HEELS,
  ONE_LEG_LONGER,
  PULL_APART,
  RISE,
  SHORT_WALKS,
  SHOULDERS_UP,
  SIDE_HOLD,
  SPINE,
  STEPS,
  TURN_OUT,
  UPPER_BACK,
  WALKS,
  twice,
} from './drill-lines.ts';
import { HALF_MINUTE_RIDE, RUN_AND_WALK, STEADY_RIDE, easyRide, easyWalk } from './endurance-lines.ts';
import { pieces, sessionsOf, type ProgrammeDay } from './programme-day.ts';
import { itemOn, itemOnGround, type ProgrammeLine } from './programme-line.ts';

/*
 * About six weeks after landing, two and a half hours on every day (common practice), in three stages. Days are counted from
 * landing day. What the gates of the return ask stands above all of it, and a physician's limit above that. No stage has a
 * jump: jumps wait until bone and physician clear them, and are then added for one person.
 */
const WHOLE_DAY = 150;
const SHORT_DAY = 75;

const onDumbbells = (lines: readonly ProgrammeLine[], phase: string): readonly ProgrammeItem[] =>
  lines.map((line) => itemOn('dumbbells', line, { phase, condition: 'everyone' }));

type DayAt = Pick<ProgrammeDay, 'name' | 'weekday'>;

const strengthAgain = ({ name, weekday }: DayAt): ProgrammeDay => ({
  name,
  weekday,
  title: 'Walking and light strength',
  blockMinutes: WHOLE_DAY,
  work: [
    ...pieces(1, WALKS),
    ...pieces(2, RISE),
    ...onDumbbells([FIRST_STAGE_ROW, FIRST_STAGE_HEELS], `${name}-return-first`),
    ...pieces(3, BRIDGE, FLOOR_TRUNK),
    ...pieces(5, HEEL_TO_TOE),
    ...pieces(6, ...[ANKLES, HIPS, SHOULDERS_UP, UPPER_BACK, SPINE].map(twice)),
    ...pieces(7, SHORT_WALKS),
  ],
});

const balanceAgain = ({ name, weekday }: DayAt): ProgrammeDay => ({
  name,
  weekday,
  title: 'Walking and balance',
  blockMinutes: WHOLE_DAY,
  work: [
    ...pieces(1, WALKS),
    ...pieces(2, HEEL_TO_TOE, FIRST_ONE_LEG),
    ...pieces(3, CRAWL, BAND_ROW),
    ...pieces(4, PULL_APART, TURN_OUT),
    ...pieces(6, ...[HIP_FLEXORS, UPPER_BACK, ANKLES, SPINE].map(twice)),
    ...pieces(7, SHORT_WALKS),
  ],
});

const FIRST_STAGE: ProgrammePhase = {
  name: 'first return stage',
  span: { first: { from: 'landing', days: 0 }, last: { from: 'landing', days: 9 } },
  deload: null,
  sessions: sessionsOf('return-first', [
    {
      name: 'easiest',
      title: 'Easiest day',
      weekday: 1,
      blockMinutes: SHORT_DAY,
      work: [...pieces(1, SHORT_WALKS), ...pieces(2, BRIDGE), ...pieces(3, ANKLES, HIPS, UPPER_BACK)],
    },
    strengthAgain({ name: 'strength', weekday: 2 }),
    balanceAgain({ name: 'balance', weekday: 3 }),
    strengthAgain({ name: 'second-strength', weekday: 4 }),
    balanceAgain({ name: 'second-balance', weekday: 5 }),
    strengthAgain({ name: 'third-strength', weekday: 6 }),
    balanceAgain({ name: 'third-balance', weekday: 7 }),
  ]),
  source:
    'Landing day to the tenth day: walking, mobility, balance and light strength; no free bar, no jump, effort by feel because heart rates are not yet the old ones (stages: seen in a secondary source; about two hours on every day for 45 days: conference abstract 2011, seen). Days and sets are our own design.',
};

const bodySense = ({ name, weekday }: DayAt): ProgrammeDay => ({
  name,
  weekday,
  title: 'Strength and body sense',
  blockMinutes: WHOLE_DAY,
  work: [
    ...onDumbbells(SECOND_STAGE, `${name}-return-second`),
    ...pieces(3, HINGE_AGAIN, STEPS, ONE_LEG_HEELS),
    ...pieces(2, LINE_WALK, ONE_LEG_LONGER),
    ...pieces(5, easyWalk({ minutes: 20, feel: [4, 5] }), easyRide({ minutes: 15, feel: [4, 5] })),
    ...pieces(6, TURN_OUT),
    ...pieces(7, ...[ANKLES, HIP_FLEXORS, SHOULDERS_UP].map(twice)),
  ],
});

const heart = ({ name, weekday }: DayAt, ride: 'half minutes' | 'easy'): ProgrammeDay => ({
  name,
  weekday,
  title: 'Heart and trunk',
  blockMinutes: WHOLE_DAY,
  work: [
    ...pieces(1, ride === 'half minutes' ? HALF_MINUTE_RIDE : easyRide({ minutes: 30, feel: [4, 5] })),
    ...pieces(3, WALKS),
    ...pieces(2, LINE_WALK, ONE_LEG_LONGER),
    ...pieces(4, DEAD_BUG, SIDE_HOLD, CRAWL),
    ...pieces(6, PULL_APART),
    ...pieces(7, ...[SPINE, UPPER_BACK, HIPS].map(twice)),
  ],
});

const SECOND_STAGE_PHASE: ProgrammePhase = {
  name: 'second return stage',
  span: { first: { from: 'landing', days: 10 }, last: { from: 'landing', days: 23 } },
  deload: null,
  sessions: sessionsOf('return-second', [
    bodySense({ name: 'strength', weekday: 1 }),
    heart({ name: 'heart', weekday: 2 }, 'half minutes'),
    bodySense({ name: 'second-strength', weekday: 3 }),
    heart({ name: 'second-heart', weekday: 4 }, 'easy'),
    bodySense({ name: 'third-strength', weekday: 5 }),
    heart({ name: 'third-heart', weekday: 6 }, 'half minutes'),
    {
      name: 'easy',
      title: 'Easy day',
      weekday: 7,
      blockMinutes: SHORT_DAY,
      work: [...pieces(1, WALKS), ...pieces(2, HEEL_TO_TOE), ...pieces(3, ANKLES, HIPS, UPPER_BACK, SPINE)],
    },
  ]),
  source:
    'Proprioception and work of the heart are added, nothing maximal is lifted and nothing run (stages: seen in a secondary source); heart rates lead again after about ten to fourteen days: common practice. Days and sets are our own design.',
};

const THIRD_LIFTS = (name: string): readonly ProgrammeItem[] => [
  ...THIRD_STAGE.map((line) => itemOnGround(line, `${name}-return-third`)),
  itemOn('dumbbells', gobletBeforeGates(1), {
    phase: `${name}-return-third`,
    condition: 'before the squat gates',
  }),
];

const barAgain = ({ name, weekday }: DayAt): ProgrammeDay => ({
  name,
  weekday,
  title: 'Back to the bar',
  blockMinutes: WHOLE_DAY,
  work: [
    ...THIRD_LIFTS(name),
    ...pieces(6, easyWalk({ minutes: 20, feel: [4, 5] })),
    ...pieces(7, TURN_OUT, SIDE_HOLD),
    ...pieces(8, ...[ANKLES, HIP_FLEXORS, SHOULDERS_UP].map(twice)),
  ],
});

const functional = ({ name, weekday }: DayAt): ProgrammeDay => ({
  name,
  weekday,
  title: 'Run, steps and carries',
  blockMinutes: WHOLE_DAY,
  work: [
    ...pieces(1, RUN_AND_WALK),
    ...onDumbbells([CARRY], `${name}-return-third`),
    ...pieces(2, STEPS, LUNGES, ONE_LEG_HEELS),
    ...pieces(3, LINE_WALK, ONE_LEG_LONGER),
    ...pieces(5, DEAD_BUG, CRAWL),
    ...pieces(6, easyRide({ minutes: 20, feel: [4, 5] })),
    ...pieces(7, PULL_APART),
    ...pieces(8, ...[UPPER_BACK, HIPS, SPINE].map(twice)),
  ],
});

const rideDay = ({ name, weekday }: DayAt, ride: 'half minutes' | 'steady'): ProgrammeDay => ({
  name,
  weekday,
  title: 'Ride and trunk',
  blockMinutes: WHOLE_DAY,
  work: [
    ...pieces(1, ride === 'steady' ? STEADY_RIDE : HALF_MINUTE_RIDE),
    ...pieces(3, WALKS),
    ...pieces(4, DEAD_BUG, SIDE_HOLD, CRAWL),
    ...pieces(5, LINE_WALK, ONE_LEG_LONGER),
    ...pieces(7, SPINE, SHOULDERS_UP, HIPS),
  ],
});

const THIRD_STAGE_PHASE: ProgrammePhase = {
  name: 'third return stage',
  span: { first: { from: 'landing', days: 24 }, last: { from: 'landing', days: 44 } },
  deload: null,
  sessions: sessionsOf('return-third', [
    barAgain({ name: 'bar', weekday: 1 }),
    functional({ name: 'run', weekday: 2 }),
    rideDay({ name: 'ride', weekday: 3 }, 'half minutes'),
    barAgain({ name: 'second-bar', weekday: 4 }),
    functional({ name: 'second-run', weekday: 5 }),
    rideDay({ name: 'second-ride', weekday: 6 }, 'steady'),
    {
      name: 'easy',
      title: 'Easy day',
      weekday: 7,
      blockMinutes: SHORT_DAY,
      work: [...pieces(1, WALKS), ...pieces(3, ANKLES, HIPS, UPPER_BACK, SPINE)],
    },
  ]),
  source:
    'The longest stage: back to what the work asks of the body, the bar only after the squat gates are passed again, running only after agility and standing are cleared (stages: seen in a secondary source). Days and sets are our own design.',
};

/** Landing day and about six weeks after it. */
export const RETURN_PHASES: readonly ProgrammePhase[] = [FIRST_STAGE, SECOND_STAGE_PHASE, THIRD_STAGE_PHASE];
