import {
  acuteChronic,
  averageWeight,
  couplingCorrelation,
  exponentialAverages,
  loadRatio,
  type AcuteChronic,
} from './acute-chronic.ts';
import { printedResults, printedRows, type Check } from '../check.ts';
import { impulseOfMan, impulseOfWoman, thresholdImpulse, zoneImpulse } from './heart-rate-impulse.ts';
import { questionnaireDeviation, questionnaireSum } from './questionnaire.ts';
import { dayLoad, sessionLoad } from './session-load.ts';
import { RECOMPUTED } from '../sources.ts';
import { LOLLI_2019_COUPLING } from './sources.ts';
import { volumeLoad } from './volume-load.ts';
import { weeklyLoad, type Found, type WeeklyLoad } from './weekly-load.ts';
import { zoneMinutes } from './zone-minutes.ts';

const SIX = 'printed to six decimals';
const HALF_OF_SIX = 0.5e-6;
const WHOLE = 'whole numbers, but for rounding';
const ROUNDING = 1e-9;

const valueOf = (found: Found): number => (found.kind === 'estimate' ? found.value : Number.NaN);

export const sessionChecks: readonly Check[] = [
  ...printedRows(RECOMPUTED, ROUNDING, WHOLE, [
    [sessionLoad, [6, 75], 450],
    [sessionLoad, [4, 40], 160],
  ]),
  ...printedResults(dayLoad, RECOMPUTED, ROUNDING, WHOLE, [
    [
      'a day of 75 min at 6 and 40 min at 4',
      () => {
        const day = dayLoad([
          { rating: 6, minutes: 75 },
          { rating: 4, minutes: 40 },
        ]);
        return day.kind === 'estimate' ? day.value : Number.NaN;
      },
      610,
    ],
  ]),
];

const WEEK = [450, 300, 525, 135, 610, 300, 0];

const ofWeek = (pick: (week: Extract<WeeklyLoad, { kind: 'estimate' }>) => number) => (): number => {
  const week = weeklyLoad(WEEK);
  return week.kind === 'estimate' ? pick(week) : Number.NaN;
};

export const weekChecks: readonly Check[] = printedResults(weeklyLoad, RECOMPUTED, HALF_OF_SIX, SIX, [
  ['weekly load of 450, 300, 525, 135, 610, 300, 0', ofWeek(({ total }) => total), 2320],
  ['its mean', ofWeek(({ mean }) => mean), 331.428571],
  ['its standard deviation of the sample', ofWeek(({ sd }) => sd), 215.845514],
  ['its monotony', ofWeek(({ monotony }) => valueOf(monotony)), 1.53549],
  ['its strain', ofWeek(({ strain }) => valueOf(strain)), 3562.336196],
]);

export const impulseChecks: readonly Check[] = [
  ...printedRows(RECOMPUTED, HALF_OF_SIX, SIX, [
    [impulseOfMan, [45, 150, 55, 185], 85.609371],
    [impulseOfWoman, [45, 150, 55, 185], 95.829125],
  ]),
  ...printedRows(RECOMPUTED, ROUNDING, WHOLE, [
    [zoneImpulse, [10, 15, 12, 6, 2], 110],
    [thresholdImpulse, [20, 15, 10], 80],
  ]),
  ...printedResults(zoneMinutes, RECOMPUTED, ROUNDING, WHOLE, [
    [
      'third zone of 99, 100, 119, 120, 139, 140, 159, 160, 180, 200, one minute each, of 200 maximal',
      () => {
        const found = zoneMinutes({
          heartRates: [99, 100, 119, 120, 139, 140, 159, 160, 180, 200],
          step: 1,
          maximal: 200,
        });
        return found.kind === 'estimate' ? found.zones[2] : Number.NaN;
      },
      2,
    ],
  ]),
];

export const volumeChecks: readonly Check[] = printedResults(volumeLoad, RECOMPUTED, ROUNDING, WHOLE, [
  [
    'four sets of 8 at 80 kg and three of 10 at 60 kg',
    () => {
      const line = { machine: 'barbell', pattern: 'squat' };
      const found = volumeLoad([
        { ...line, sets: 4, repetitions: 8, load: 80 },
        { ...line, sets: 3, repetitions: 10, load: 60 },
      ]);
      return found.kind === 'estimate' ? (found.volumes[0]?.volume ?? Number.NaN) : Number.NaN;
    },
    4360,
  ],
]);

/** Three equal weeks, then one at 1.3 times as much; the last day is a day of rest. */
const MONTH = [...WEEK, ...WEEK, ...WEEK, ...WEEK.map((load) => 1.3 * load)];

const ofMonth = (pick: (found: Extract<AcuteChronic, { kind: 'estimate' }>) => Found) => (): number => {
  const found = acuteChronic(MONTH);
  return found.kind === 'estimate' ? valueOf(pick(found)) : Number.NaN;
};

const average = (span: number, day: number): number => exponentialAverages(MONTH, span)[day - 1] ?? Number.NaN;

const averages = (title: string, compute: () => number, printed: number): Check => ({
  kind: 'series',
  title,
  compute,
  printed,
  within: HALF_OF_SIX,
  because: SIX,
  source: RECOMPUTED,
});

export const ratioChecks: readonly Check[] = [
  ...printedResults(acuteChronic, RECOMPUTED, HALF_OF_SIX, SIX, [
    ['three weeks and one of 1.3 times as much: coupled', ofMonth(({ coupled }) => coupled), 1.209302],
    ['the same: uncoupled', ofMonth(({ uncoupled }) => uncoupled), 1.3],
  ]),
  averages('exponential average of 7 days, day 28', () => average(7, 28), 342.656513),
  averages('exponential average of 28 days, day 28', () => average(28, 28), 373.326744),
  averages('their ratio, day 28', () => loadRatio(average(7, 28), average(28, 28)), 0.917846),
  averages(
    'their ratio the day before, which was no rest day',
    () => loadRatio(average(7, 27), average(28, 27)),
    1.139395,
  ),
  ...printedRows(RECOMPUTED, HALF_OF_SIX, SIX, [
    [loadRatio, [342.656513, 373.326744], 0.917846],
    [averageWeight, [7], 0.25],
    [averageWeight, [28], 0.068966],
  ]),
  ...printedRows(LOLLI_2019_COUPLING, ROUNDING, 'exact', [[couplingCorrelation, [4], 0.5]]),
];

const BEFORE = [9, 10, 9, 11, 10, 10, 9, 12, 10, 11, 9, 10, 10, 11];

const ofQuestions = (what: 'value' | 'mean' | 'sd') => (): number => {
  const found = questionnaireDeviation(14, BEFORE);
  return found.kind === 'estimate' ? found[what] : Number.NaN;
};

export const questionnaireChecks: readonly Check[] = [
  ...printedRows(RECOMPUTED, ROUNDING, WHOLE, [[questionnaireSum, [3, 4, 2, 5], 14]]),
  ...printedResults(questionnaireDeviation, RECOMPUTED, HALF_OF_SIX, SIX, [
    ['mean of the fourteen days before', ofQuestions('mean'), 10.071429],
    ['their standard deviation of the sample, which counts as 1', ofQuestions('sd'), 0.916875],
    ['deviation of 14', ofQuestions('value'), 3.928571],
  ]),
];
