import { printedResults, printedRows, type Check } from '../check.ts';
import { COUNTED_BY_HAND, RECOMPUTED } from '../sources.ts';
import { footForceLoad, groundFootForce, weightlessFootForce } from './foot-force.ts';
import { LOADING_FLOORS, weekAgainstFloors, type Week } from './loading-floors.ts';
import {
  dailyLoadStimulus,
  equalCycles,
  loadStimulusRatio,
  type LoadGroup,
  type OuterExponent,
} from './load-stimulus.ts';
import { osteogenicIndex, osteogenicWeek, sensitivityAfterRest, type LoadSession } from './osteogenic-index.ts';
import { effectiveCycles, restAndSaturationStimulus, type LoadBout } from './rest-and-saturation.ts';

const SIX = 'here to six decimals';
const WITHIN_SIX = 5e-7;

/** One leg: a day on the ground, and one in flight. */
const ON_THE_GROUND: readonly LoadGroup[] = [
  { cycles: 4500, force: 1.1 },
  { cycles: 1600, force: 2.4 },
];
const IN_FLIGHT: readonly LoadGroup[] = [
  { cycles: 2400, force: 1.65 },
  { cycles: 32, force: 0.7 },
];

const stimulus =
  (groups: readonly LoadGroup[], outer: OuterExponent, read: 'value' | 'sum' = 'value') =>
  (): number => {
    const found = dailyLoadStimulus(groups, { exponent: 4, outer });
    return found.kind === 'estimate' ? found[read] : Number.NaN;
  };

const ratio = (outer: OuterExponent) => (): number => {
  const found = loadStimulusRatio(IN_FLIGHT, ON_THE_GROUND, { exponent: 4, outer });
  return found.kind === 'estimate' ? found.value : Number.NaN;
};

export const dailyStimulusChecks: readonly Check[] = [
  ...printedResults(dailyLoadStimulus, RECOMPUTED, 5e-5, 'here to four decimals', [
    ['sum of a day on the ground', stimulus(ON_THE_GROUND, '1/m', 'sum'), 59672.61],
    ['sum of a day in flight', stimulus(IN_FLIGHT, '1/m', 'sum'), 17796.4982],
  ]),
  ...printedResults(dailyLoadStimulus, RECOMPUTED, WITHIN_SIX, SIX, [
    ['day on the ground, 1/m', stimulus(ON_THE_GROUND, '1/m'), 15.629452],
    ['day in flight, 1/m', stimulus(IN_FLIGHT, '1/m'), 11.550044],
    ['day on the ground, 1/(2m)', stimulus(ON_THE_GROUND, '1/(2m)'), 3.95341],
    ['day in flight, 1/(2m)', stimulus(IN_FLIGHT, '1/(2m)'), 3.398536],
  ]),
  ...printedResults(loadStimulusRatio, RECOMPUTED, WITHIN_SIX, SIX, [
    ['flight against ground, 1/m', ratio('1/m'), 0.738992],
    ['flight against ground, 1/(2m)', ratio('1/(2m)'), 0.859647],
  ]),
  ...printedRows(RECOMPUTED, 1e-9, 'a doubled force with m = 4 is worth sixteen cycles', [
    [equalCycles, [1600, 1, 2, 4], 100],
  ]),
];

const week = (sessions: readonly LoadSession[]) => (): number => {
  const found = osteogenicWeek(sessions);
  return found.kind === 'estimate' ? found.value : Number.NaN;
};

export const osteogenicChecks: readonly Check[] = [
  ...printedRows(RECOMPUTED, WITHIN_SIX, SIX, [
    [osteogenicIndex, [3, 120], 14.387372],
    [osteogenicIndex, [3, 60], 12.332622],
    [osteogenicIndex, [1.65, 2400], 12.843007],
    [sensitivityAfterRest, [8], 0.736403],
    [sensitivityAfterRest, [24], 0.981684],
  ]),
  ...printedResults(osteogenicWeek, RECOMPUTED, WITHIN_SIX, SIX, [
    [
      'two sessions of 60 at 3 BW, 8 h apart',
      week([
        { atHour: 0, force: 3, cycles: 60 },
        { atHour: 8, force: 3, cycles: 60 },
      ]),
      21.414399,
    ],
    [
      'two sessions of 1200 at 1.65 BW, 8 h apart',
      week([
        { atHour: 0, force: 1.65, cycles: 1200 },
        { atHour: 8, force: 1.65, cycles: 1200 },
      ]),
      20.315916,
    ],
    [
      'six days of 2400 at 1.65 BW',
      week([0, 24, 48, 72, 96, 120].map((atHour) => ({ atHour, force: 1.65, cycles: 2400 }))),
      75.881903,
    ],
  ]),
];

const RUN = { cycles: 2400, force: 1.65 };
const SQUAT = { cycles: 32, force: 0.765 };
const HALF_RUN = { cycles: 1200, force: 1.65 };

const day = (bouts: readonly LoadBout[]) => (): number => {
  const found = restAndSaturationStimulus(bouts, 4);
  return found.kind === 'estimate' ? found.value : Number.NaN;
};

const apart = (first: LoadGroup, gapHours: number, second: LoadGroup): readonly LoadBout[] => [
  { gapHours: 0, groups: [first] },
  { gapHours, groups: [second] },
];

export const restAndSaturationChecks: readonly Check[] = [
  ...printedRows(RECOMPUTED, WITHIN_SIX, SIX, [
    [effectiveCycles, [1, 0, 1], 1],
    [effectiveCycles, [1, 0, 10], 3.459432],
    [effectiveCycles, [1, 0, 32], 5.044394],
    [effectiveCycles, [1, 0, 100], 6.658211],
    [effectiveCycles, [1, 0, 1200], 10.23002],
    [effectiveCycles, [1, 0, 2400], 11.22942],
  ]),
  ...printedResults(restAndSaturationStimulus, RECOMPUTED, WITHIN_SIX, SIX, [
    [
      'walk, four hours, run, on the ground',
      day(apart({ cycles: 4500, force: 1.1 }, 4, { cycles: 1600, force: 2.4 })),
      3.710799,
    ],
    ['run, six hours, squat', day(apart(RUN, 6, SQUAT)), 3.030321],
    ['squat, six hours, run', day(apart(SQUAT, 6, RUN)), 2.715071],
    ['run and squat in one bout', day([{ gapHours: 0, groups: [RUN, SQUAT] }]), 3.020521],
    ['half a run, eight hours, half a run', day(apart(HALF_RUN, 8, HALF_RUN)), 3.387394],
  ]),
];

export const footForceChecks: readonly Check[] = [
  ...printedRows(RECOMPUTED, WITHIN_SIX, SIX, [
    [weightlessFootForce, [0.5, 600, 0, 80], 0.382394],
    [weightlessFootForce, [0.5, 1200, 0, 80], 0.764787],
    [weightlessFootForce, [0.5, 1200, 0.1, 80], 0.841266],
    [weightlessFootForce, [0.5, 1500, 0, 80], 0.955984],
    [groundFootForce, [0.5, 100, 80], 1.065],
  ]),
  ...printedRows(RECOMPUTED, 1e-9, 'here in full', [[footForceLoad, [100, 80], 1671.05316]]),
];

const shortWeek: Week = {
  'loaded minutes': { kind: 'reported', value: 72, sessionsUnreported: 0 },
  steps: { kind: 'reported', value: 7000, sessionsUnreported: 1 },
  'heavy sets': { kind: 'reported', value: 8, sessionsUnreported: 0 },
};

export const floorChecks: readonly Check[] = printedResults(weekAgainstFloors, COUNTED_BY_HAND, 0, 'whole numbers', [
  [
    'minutes short of ninety, of seventy-two',
    () => {
      const found = weekAgainstFloors(shortWeek, LOADING_FLOORS.rows);
      const first = found.kind === 'compared' ? found.floors[0] : undefined;
      return first?.kind === 'short' ? first.by : Number.NaN;
    },
    18,
  ],
  [
    'steps short of ten thousand at most, with one session unreported',
    () => {
      const found = weekAgainstFloors(shortWeek, LOADING_FLOORS.rows);
      const second = found.kind === 'compared' ? found.floors[1] : undefined;
      return second?.kind === 'not known' ? second.atMostShortBy : Number.NaN;
    },
    3000,
  ],
]);
