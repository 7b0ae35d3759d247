import { printedResults, printedRows, type Check } from '../check.ts';
import { RECOVERY_CONSTANTS } from './recovery-constants.table.ts';
import { INVENTED, recoveryForecast, type RecoveryForecast } from './recovery-forecast.ts';
import {
  recoveredLevel,
  timeConstantOfHalfLife,
  timeConstantOfLogTime,
  timeConstantOfTwo,
  timeToLevel,
} from './recovery-curve.ts';
import { NUMPY, RECOMPUTED } from '../sources.ts';

const SIX = 'printed to six decimals';
const HALF_OF_SIX = 0.5e-6;

const constantOf = (quality: string): number =>
  RECOVERY_CONSTANTS.find((row) => row.quality === quality)?.timeConstant ?? Number.NaN;

const series = (quality: string, printed: number): Check => ({
  kind: 'series',
  title: `Time constant of ${quality.toLowerCase()} in the table [d]`,
  compute: () => constantOf(quality),
  printed,
  within: HALF_OF_SIX,
  because: SIX,
  source: RECOMPUTED,
});

export const curveChecks: readonly Check[] = [
  ...printedRows(RECOMPUTED, HALF_OF_SIX, SIX, [
    [recoveredLevel, [20, 7, 14], 97.293294],
    [timeToLevel, [20, 7, 95], 9.704061],
    [timeToLevel, [4, 7, 95], 0],
    [timeConstantOfTwo, [15, 2, 1, 30], 14.392752],
    [timeConstantOfTwo, [12.5, 5, 5, 30], 27.283917],
    [timeConstantOfLogTime, [15, 1.48, 0.95], 7.375323],
    [timeConstantOfHalfLife, [270], 389.527661],
  ]),
  series('Ankle plantar flexion', 12.847459),
  series('Knee flexion, 60°/s', 41.244883),
];

/** One forecast serves all its checks. */
let kept: RecoveryForecast | null = null;
const forecast = (): RecoveryForecast => (kept ??= recoveryForecast(INVENTED));

const time = (share: 'q10' | 'q50' | 'q90') => (): number => {
  const found = forecast();
  return found.kind === 'forecast' ? found.time[share] : Number.NaN;
};

const on = (place: number, what: 'q10' | 'q50' | 'q90' | 'probability') => (): number => {
  const found = forecast();
  return found.kind === 'forecast' ? (found.levels[place]?.[what] ?? Number.NaN) : Number.NaN;
};

const expected = (what: 'loss' | 'timeConstant') => (): number => {
  const found = forecast();
  return found.kind === 'forecast' ? found[what] : Number.NaN;
};

export const forecastChecks: readonly Check[] = printedResults(recoveryForecast, NUMPY, HALF_OF_SIX, SIX, [
  ['expected loss [%]', expected('loss'), 20.642087],
  ['expected time constant [d]', expected('timeConstant'), 7.117788],
  ['97 % reached: tenth of a hundred [d]', time('q10'), 10.359215],
  ['97 % reached: middle [d]', time('q50'), 13.113729],
  ['97 % reached: ninetieth of a hundred [d]', time('q90'), 17.051652],
  ['level on day 14: tenth of a hundred [%]', on(0, 'q10'), 95.81315],
  ['level on day 14: middle [%]', on(0, 'q50'), 97.360962],
  ['level on day 14: ninetieth of a hundred [%]', on(0, 'q90'), 98.504645],
  ['probability of 97 % on day 14', on(0, 'probability'), 0.627928],
  ['probability of 97 % on day 21', on(1, 'probability'), 0.984976],
]);
