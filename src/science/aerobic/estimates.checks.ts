import { printedResults, printedRows, type Check } from '../check.ts';
import { RECOMPUTED, R_PROJECT } from '../sources.ts';
import { cyclePower, handbookPowerForFraction } from './cycle-workload.ts';
import { knownMaximum } from './known-maximum.ts';
import { ownHeartRateAtPower, ownPowerForFraction } from './personal-lines.ts';
import { DOUBLES, sdOf, valueOf } from './read-estimate.ts';
import {
  mileAndAHalf,
  mileAndAHalfGeorge,
  shuttleRun,
  shuttleRunAdult,
  shuttleSpeed,
  twelveMinuteRun,
} from './run-tests.ts';
import { singleStageEstimate, singleStageFactor, type SingleStage, type StageFactor } from './single-stage-estimate.ts';
import { chartUptake, singleStageMan, singleStageWoman } from './single-stage.ts';
import { STAGED_CYCLE_PROTOCOL } from './sources.ts';
import { stagedEstimate, twoPointEstimate } from './staged-estimate.ts';
import { lineOfLeastSquares, lineSd, onLine, readingSd, whereOnLine, type Line } from './line-through-stages.ts';
import { mileWalk, mileWalkFlow } from './mile-walk.ts';

/** Three stages of 50, 100 and 150 W at 80 kg, uptake by the handbook. */
const RATES = [102, 123, 146] as const;
const UPTAKES = [13.75, 20.5, 27.25] as const;
const stages = RATES.map((rate, place) => ({ heartRate: rate, uptake: UPTAKES[place] ?? Number.NaN }));
const wattStages = stages.map((stage, place) => ({ ...stage, power: 50 + 50 * place }));
const pairs = stages.map(({ heartRate: x, uptake: y }) => ({ x, y }));

const read = (what: (line: Line) => number): number => {
  const line = lineOfLeastSquares(pairs);
  return line.kind === 'line' ? what(line) : Number.NaN;
};
const COLUMNS = 'two libraries with doubles';

export const lineChecks: readonly Check[] = printedResults(lineOfLeastSquares, R_PROJECT, 1e-9, COLUMNS, [
  ['slope of three stages', () => read(({ slope }) => slope), 0.30660701995870626],
  ['intercept', () => read(({ intercept }) => intercept), -17.417068134893341],
  ['residual standard deviation', () => read(({ residualSd }) => residualSd), 0.25042977511526493],
  ['on the line at 176.5', () => read((line) => onLine(line, 176.5)), 36.699070887818316],
  ['standard error of the line there', () => read((line) => lineSd(line, 176.5)), 0.44903017056788203],
  ['of a further reading there', () => read((line) => readingSd(line, 176.5)), 0.5141431379922371],
  ['where the line has 31.5', () => read((line) => whereOnLine(line, 31.5).x), 159.54320987654319],
  ['its standard error', () => read((line) => whereOnLine(line, 31.5).sd), 1.3326483885263847],
]);

const predicted = { value: 176.5, sd: 10 };
const known = { value: 176.5, sd: 7 };
const [first, second] = [
  { uptake: 17.125, heartRate: 115 },
  { uptake: 23.875, heartRate: 137 },
] as const;

export const stagedChecks: readonly Check[] = [
  ...printedResults(twoPointEstimate, RECOMPUTED, 1e-9, DOUBLES, [
    ['75 and 125 W at 80 kg', () => valueOf(twoPointEstimate(first, second, predicted)), 35.99431818181818],
    ['its standard deviation', () => sdOf(twoPointEstimate(first, second, predicted)), 3.0681818181818183],
  ]),
  ...printedResults(stagedEstimate, R_PROJECT, 1e-9, COLUMNS, [
    ['three stages', () => valueOf(stagedEstimate(stages, known)), 36.699070887818316],
    ['its standard deviation', () => sdOf(stagedEstimate(stages, known)), 2.192718281902668],
  ]),
  ...printedResults(stagedEstimate, RECOMPUTED, 1e-9, DOUBLES, [
    ['with a predicted maximal rate', () => sdOf(stagedEstimate(stages, predicted, 55)), 3.0987763008768567],
  ]),
];

const factorOf = (factor: StageFactor): number => {
  const found = singleStageFactor(factor);
  return found.kind === 'factor' ? found.value : Number.NaN;
};
const man: SingleStage = {
  sex: 'male',
  workRate: 900,
  heartRates: [147, 149],
  bodyMass: 80,
  factor: { by: 'age', years: 45 },
};

export const singleStageChecks: readonly Check[] = [
  ...printedRows(RECOMPUTED, 1e-9, DOUBLES, [
    [chartUptake, [900], 2.1],
    [singleStageMan, [2.1, 148], 3.23448275862069],
    [singleStageWoman, [1.5, 150], 2.423076923076923],
  ]),
  ...printedResults(singleStageFactor, RECOMPUTED, 1e-9, DOUBLES, [
    ['age 42, between two rows', () => factorOf({ by: 'age', years: 42 }), 0.81],
    ['age 45, a row', () => factorOf({ by: 'age', years: 45 }), 0.78],
    ['maximal rate 185', () => factorOf({ by: 'maximal heart rate', rate: 185 }), 0.88],
  ]),
  ...printedResults(singleStageEstimate, RECOMPUTED, 1e-9, DOUBLES, [
    ['man of 45 years', () => valueOf(singleStageEstimate(man)), 31.536206896551725],
    [
      'woman of 35 years, 60 kg',
      () =>
        valueOf(
          singleStageEstimate({
            sex: 'female',
            workRate: 600,
            heartRates: [150, 150],
            bodyMass: 60,
            factor: { by: 'age', years: 35 },
          }),
        ),
      2108.0769230769233 / 60,
    ],
  ]),
];

export const fieldChecks: readonly Check[] = printedRows(RECOMPUTED, 1e-9, DOUBLES, [
  [mileWalk, [80, 45, 1, 14.5, 130], 40.47261163038634],
  [mileWalkFlow, [80, 45, 1, 14.5, 130], 3.266165268705908],
  [mileAndAHalf, [12], 43.75],
  [mileAndAHalfGeorge, [80, 1, 12], 45.284],
  [twelveMinuteRun, [2600], 46.838810641627546],
  [shuttleSpeed, [10], 13],
  [shuttleRun, [13, 18], 50.5974],
  [shuttleRunAdult, [13], 50.5974],
]);

const chosen = (): number => {
  const found = knownMaximum([
    { way: 'stages', measured: false, value: 44, sd: 3.1 },
    { way: 'gas exchange', measured: true, value: 42 },
    { way: 'walk', measured: false, value: 40.5, sd: 5 },
  ]);
  return found.kind === 'estimate' ? found.value : Number.NaN;
};

export const knownMaximumChecks: readonly Check[] = printedResults(
  knownMaximum,
  STAGED_CYCLE_PROTOCOL,
  0,
  'the value itself: a measurement stands before every estimate',
  [['measured beside two estimates', chosen, 42]],
);

export const personalChecks: readonly Check[] = [
  ...printedRows(RECOMPUTED, 1e-9, DOUBLES, [
    [handbookPowerForFraction, [0.7, 42, 80], 165.92592592592592],
    [handbookPowerForFraction, [0.75, 42, 80], 181.48148148148147],
    [handbookPowerForFraction, [0.8, 42, 80], 197.03703703703704],
    [handbookPowerForFraction, [0.9, 42, 80], 228.14814814814815],
    [handbookPowerForFraction, [1, 42, 80], 259.25925925925924],
  ]),
  ...printedResults(ownPowerForFraction, RECOMPUTED, 1e-9, DOUBLES, [
    [
      'stages that lie on the handbook’s line give the handbook’s power',
      () => valueOf(ownPowerForFraction(wattStages, 0.75, 42)),
      181.48148148148147,
    ],
  ]),
  ...printedResults(cyclePower, RECOMPUTED, 1e-9, DOUBLES, [
    ['90 % of 42 at 80 kg', () => valueOf(cyclePower(0.9, 42, 80)), 228.14814814814815],
    ['the same by own stages', () => valueOf(cyclePower(0.9, 42, 80, wattStages)), 228.14814814814815],
  ]),
  ...printedResults(ownHeartRateAtPower, RECOMPUTED, 1e-9, DOUBLES, [
    ['at the middle stage, the mean', () => valueOf(ownHeartRateAtPower(wattStages, 100)), 371 / 3],
  ]),
];
