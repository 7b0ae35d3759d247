import { printedResults, printedRows, type Check } from '../check.ts';
import { RECOMPUTED } from '../sources.ts';
import {
  halfSinePeak,
  loadingCycles,
  runningPeakOnEarth,
  runningPeakUnderHarness,
  walkingPeakUnderHarness,
} from './ground-force.ts';
import {
  fixedPulleyLine,
  rollingTrolleyLine,
  runningCostFactor,
  sameEffortSpeed,
  sdOfRunningCostFactor,
  sdOfWalkingCostFactor,
  uptakeUnderHarness,
  walkingCostFactor,
} from './harness-cost.ts';
import { effectiveLoad, harnessPull, loadForSpeed, loadOfPull, setLoad, timeForSpeed } from './harness-limits.ts';
import { sessionUnderHarness } from './session-under-harness.ts';
import type { UnderHarness } from './harness-session.ts';
import { DOUBLES } from './read-estimate.ts';
import { FARLEY_MCMAHON_1992, GENC_2010, MUNRO_1987, TEUNISSEN_2007 } from './sources.ts';

/** At each load: factor and spread of running, both published lines, factor and spread of walking. */
const LOADS: readonly (readonly number[])[] = [
  [0.6, 0.692, 0.06403124237432849, 0.6998, 0.6796, 0.824, 0.06931089380465383],
  [0.65, 0.7305, 0.06103277807866851, 0.7363, 0.7201, 0.846, 0.06529931086925803],
  [0.7, 0.769, 0.05830951894845301, 0.7728, 0.7606, 0.868, 0.06161168720299746],
  [0.8, 0.846, 0.05385164807134504, 0.8458, 0.8416, 0.912, 0.055461698495448186],
  [0.9, 0.923, 0.05099019513592785, 0.9188, 0.9226, 0.956, 0.05141984052872976],
  [1, 1, 0.05, 0.9918, 1.0036, 1, 0.05],
];
const COLUMNS = [
  runningCostFactor,
  sdOfRunningCostFactor,
  rollingTrolleyLine,
  fixedPulleyLine,
  walkingCostFactor,
  sdOfWalkingCostFactor,
] as const;

export const costFactorChecks: readonly Check[] = [
  ...LOADS.flatMap(([load = Number.NaN, ...values]) =>
    printedRows(
      RECOMPUTED,
      1e-9,
      DOUBLES,
      COLUMNS.map((column, place) => [column, [load], values[place] ?? Number.NaN] as const),
    ),
  ),
  ...printedRows(TEUNISSEN_2007, 0.0001, 'its own lines at the normal weight, printed to a hundredth of a percent', [
    [rollingTrolleyLine, [1], 0.9918],
    [fixedPulleyLine, [1], 1.0036],
  ]),
  ...printedRows(
    TEUNISSEN_2007,
    0.02,
    'the mean slope of two lines, which themselves lie this far from 1 at full weight',
    [[runningCostFactor, [0.5], (0.6268 + 0.5986) / 2]],
  ),
  ...printedRows(FARLEY_MCMAHON_1992, 0.005, 'a saving of about a third at a quarter of the weight', [
    [walkingCostFactor, [0.25], 0.67],
  ]),
  ...printedRows(RECOMPUTED, 1e-9, DOUBLES, [
    [uptakeUnderHarness, [35.5, 0.769], 28.108],
    [uptakeUnderHarness, [11.5, 0.912], 10.796],
    [sameEffortSpeed, [160, 0.769], 208.06241872561768],
    [loadForSpeed, [160, 190, 0.77], 0.7949419002050581],
    [timeForSpeed, [160, 0.769, 190], 1.095065361713777],
    [effectiveLoad, [0.8], 0.72],
    [setLoad, [0.72], 0.8],
    [harnessPull, [0.7, 80], 56],
    [loadOfPull, [56, 80], 0.7],
  ]),
];

const person = { maximalUptake: 45, restingRate: 55, maximalRate: 176.5 };
const session = { gait: 'running', groundSpeed: 160, load: 0.7, flightDay: 30, beltLimit: 190 } as const;
const open = [{ fromFlightDay: 1, factor: 10, says: 'No rule.' }] as const;
const of = (what: (found: UnderHarness) => number | undefined): number => {
  const found = sessionUnderHarness(session, person, open);
  return (found.kind === 'under harness' ? what(found) : undefined) ?? Number.NaN;
};

export const sessionChecks: readonly Check[] = printedResults(sessionUnderHarness, RECOMPUTED, 1e-9, DOUBLES, [
  ['run of 160 m/min at 0.7, same speed: uptake', () => of(({ sameSpeed }) => sameSpeed.uptake), 28.108],
  ['its standard deviation', () => of(({ sameSpeed }) => sameSpeed.sd), 1.8659046063504963],
  ['heart rate on Earth', () => of(({ onEarth }) => onEarth.heartRate), 148.6867469879518],
  ['heart rate under the harness', () => of(({ sameSpeed }) => sameSpeed.heartRate), 127.04510843373494],
  ['speed of the same effort', () => of(({ sameEffortSpeed: speed }) => speed), 208.06241872561768],
  ['belt of 190 m/min: uptake there', () => of(({ start }) => start.uptake), 32.722],
  ['load instead', () => of(({ ways }) => ways?.raiseLoad.load), 0.7949419002050581],
  ['time instead', () => of(({ ways }) => ways?.lengthen.multiple), 1.095065361713777],
  ['shortfall', () => of(({ ways }) => ways?.acceptLess.shortfall), 2.778],
]);

export const groundForceChecks: readonly Check[] = [
  ...printedRows(MUNRO_1987, 1e-9, 'the line joins these two printed values', [
    [runningPeakOnEarth, [3], 2.51],
    [runningPeakOnEarth, [5], 2.83],
  ]),
  ...printedRows(GENC_2010, 0.02, 'the highest peak in flight at a load taken from it, to two decimals', [
    [runningPeakUnderHarness, [0.68, 3.58], 1.77],
  ]),
  ...printedRows(RECOMPUTED, 1e-9, DOUBLES, [
    [runningPeakOnEarth, [160 / 60], 2.4566666666666666],
    [runningPeakOnEarth, [3.58], 2.6028],
    [runningPeakUnderHarness, [0.7, 160 / 60], 1.7196666666666665],
    [walkingPeakUnderHarness, [0.7], 0.77],
    [halfSinePeak, [1, 0.25, 0.72], 2.261946710584651],
    [halfSinePeak, [0.7, 0.33, 1], 1.6659961041764053],
    [loadingCycles, [160, 30], 2400],
  ]),
];
