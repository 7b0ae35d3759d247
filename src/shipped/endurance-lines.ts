import type { BoutIntensity, Span } from '#domain/prescription.ts';
import { only } from '#domain/prescription.ts';
import type { ProgrammeBout } from '#domain/programme.ts';
import { cycling, treadmillRun, treadmillWalk } from './exercises/endurance.ts';
import type { BoutsLine } from './piece-line.ts';

const INTERVALS =
  'Interval pattern of bed-rest and flight studies (Ploutz-Snyder 2018, Med Sci Sports Exerc 50(9):1920–1928, lengths seen, pattern from memory, rests with low confidence), three interval and three steady days in turn (English 2020, npj Microgravity 6:21, seen).';
const STEADY =
  '30 min at 75 % of the greatest uptake on the days between (Hackney 2011, abstract seen; the length from memory).';
const HALF_MINUTES =
  'Five minutes at 40 % of heart-rate reserve, 11 × 30 s at 80 to 90 % with 90 s easy, five easy minutes: older adults in bed rest (Hedge 2022, Front Physiol 13:928313, seen).';
const BY_FEEL = 'Easy and by feel: common practice, our own figures.';

const FIVE_MINUTES = 300;

const ofUptake = (of: number): BoutIntensity => ({ kind: 'of greatest uptake', of: only(of) });
const ofReserve = (of: Span): BoutIntensity => ({ kind: 'of heart-rate reserve', of });
const byFeel = (least: number, most: number): BoutIntensity => ({ kind: 'RPE', rating: { least, most } });

const repeats = (count: number, seconds: number, intensity: BoutIntensity, easy: number): readonly ProgrammeBout[] =>
  Array.from({ length: count }, () => ({ seconds, intensity, easy }));

const AROUND = { warmUpSeconds: FIVE_MINUTES, coolDownSeconds: FIVE_MINUTES } as const;
const RUN = { ...AROUND, exercise: treadmillRun, machineKind: 'treadmill' } as const;
const RIDE = { ...AROUND, exercise: cycling, machineKind: 'cycle' } as const;
const WALK = { exercise: treadmillWalk, machineKind: 'treadmill', warmUpSeconds: 120, coolDownSeconds: 120 } as const;

const FOUR_MINUTES = repeats(4, 240, ofUptake(0.9), 180);
const TWO_MINUTES: readonly ProgrammeBout[] = [0.7, 0.8, 0.9, 1, 0.9, 0.8].map((of) => ({
  seconds: 120,
  intensity: ofUptake(of),
  easy: 120,
}));
const THIRTY_MINUTES = repeats(1, 1800, ofUptake(0.75), 0);

export const FOUR_MINUTE_RUN: BoutsLine = {
  ...RUN,
  name: 'run-four-minutes',
  track: 'four-minute run',
  bouts: FOUR_MINUTES,
  shouldFeel: [7, 9],
  source: INTERVALS,
};

export const FOUR_MINUTE_RIDE: BoutsLine = {
  ...RIDE,
  name: 'ride-four-minutes',
  track: 'four-minute ride',
  bouts: FOUR_MINUTES,
  shouldFeel: [7, 9],
  source: INTERVALS,
};

export const TWO_MINUTE_RIDE: BoutsLine = {
  ...RIDE,
  name: 'ride-two-minutes',
  track: 'two-minute ride',
  bouts: TWO_MINUTES,
  shouldFeel: [7, 9],
  source: INTERVALS,
};

/** On the cycle alone, and never before the fourth week of flight; the planner holds both as well. */
export const ALL_OUT_RIDE: BoutsLine = {
  ...RIDE,
  name: 'ride-all-out',
  track: 'all-out ride',
  bouts: repeats(8, 30, { kind: 'all-out' }, 15),
  shouldFeel: [9, 10],
  source: `${INTERVALS} Short and all-out only on the cycle, none before about the fourth week: common practice.`,
};

export const STEADY_RUN: BoutsLine = {
  ...RUN,
  name: 'run-steady',
  track: 'steady run',
  bouts: THIRTY_MINUTES,
  shouldFeel: [5, 7],
  source: STEADY,
};

export const STEADY_RIDE: BoutsLine = {
  ...RIDE,
  name: 'ride-steady',
  track: 'steady ride',
  bouts: THIRTY_MINUTES,
  shouldFeel: [5, 7],
  source: STEADY,
};

export const HALF_MINUTE_RIDE: BoutsLine = {
  ...RIDE,
  name: 'ride-half-minutes',
  track: 'half-minute ride',
  bouts: repeats(11, 30, ofReserve({ least: 0.8, most: 0.9 }), 90),
  shouldFeel: [5, 7],
  source: HALF_MINUTES,
};

interface Easy {
  readonly minutes: number;
  readonly feel: readonly [number, number];
}

const easyBouts = ({ minutes, feel }: Easy): Pick<BoutsLine, 'bouts' | 'shouldFeel' | 'source'> => ({
  bouts: repeats(1, minutes * 60, byFeel(...feel), 0),
  shouldFeel: feel,
  source: BY_FEEL,
});

export const easyRide = (easy: Easy): BoutsLine => ({
  ...RIDE,
  ...easyBouts(easy),
  name: 'ride-easy',
  track: 'easy ride',
  warmUpSeconds: 120,
  coolDownSeconds: 120,
});

export const easyRun = (easy: Easy): BoutsLine => ({
  ...RUN,
  ...easyBouts(easy),
  name: 'run-easy',
  track: 'easy run',
  warmUpSeconds: 180,
  coolDownSeconds: 120,
});

export const easyWalk = (easy: Easy): BoutsLine => ({
  ...WALK,
  ...easyBouts(easy),
  name: 'walk-easy',
  track: 'easy walk',
});

/** The legs are woken, nothing is trained: the week before the last one. */
export const WAKING_RIDE: BoutsLine = {
  ...RIDE,
  name: 'ride-waking',
  track: 'waking ride',
  bouts: repeats(4, 60, byFeel(6, 7), 120),
  shouldFeel: [6, 7],
  source:
    'Less by half, effort kept: Travis 2020, Sports 8(9):125 (title seen, numbers from memory); the pattern is our own design.',
};

/** Running again after landing: short, with walking between. */
export const RUN_AND_WALK: BoutsLine = {
  ...RUN,
  name: 'run-and-walk',
  track: 'run and walk',
  bouts: repeats(6, 120, byFeel(4, 5), 120),
  shouldFeel: [4, 5],
  source:
    'Running only in the last stage of the return, after agility and standing are cleared, and walked in between: common practice, our own figures.',
};
