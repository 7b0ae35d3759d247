import { printedResults, printedRows, type Check } from '../check.ts';
import { R_PROJECT, RECOMPUTED, SCIPY } from '../sources.ts';
import { balanceAlong, type Stretch } from './balance-along.ts';
import {
  balanceAfterRecovery,
  balanceAfterWork,
  deficitAfter,
  recoveredInTwoParts,
  recoveryNeeded,
  recoveryTimeConstant,
  recoveryTimeConstantOfElite,
  timeConstantOfIntegral,
} from './balance-steps.ts';
import { fitTrials, type ThreeFits } from './fit-trials.ts';
import { powerForTime, timeToExhaustion, workUntilExhaustion, type PowerDuration } from './power-duration.ts';
import { sessionFeasibility } from './session-feasibility.ts';
import type { RecoveryModel } from './w-prime-balance.ts';
import type { Trial, TrialFit } from './trial-fits.ts';
import { joules, seconds, watts } from '#units/quantity.ts';

const EXACT = 'whole numbers, exact but for rounding in doubles';

export const powerDurationChecks: readonly Check[] = printedRows(RECOMPUTED, 1e-9, EXACT, [
  [timeToExhaustion, [300, 220, 18_000], 225],
  [timeToExhaustion, [270, 220, 18_000], 360],
  [timeToExhaustion, [250, 220, 18_000], 600],
  [powerForTime, [360, 220, 18_000], 270],
  [workUntilExhaustion, [600, 220, 18_000], 150_000],
]);

const trials = (...pairs: readonly (readonly [power: number, time: number])[]): readonly Trial[] =>
  pairs.map(([power, time]) => ({ power: watts(power), time: seconds(time) }));

const fitsOf = (of: readonly Trial[]): ThreeFits => {
  const fitted = fitTrials(of);
  if (fitted.kind === 'refused') throw new RangeError(fitted.reason);
  return fitted.fits;
};

const NOISY = trials([320, 180], [275, 330], [245, 720]);
const FOUR = trials([390, 131], [330, 246], [300, 470], [285, 690]);
const FIVE = trials([260, 150], [225, 265], [200, 505], [190, 800], [184, 1130]);
const ON_THE_LINE = trials([300, 225], [270, 360], [250, 600]);

const both = (name: string, of: readonly Trial[], which: keyof ThreeFits, critical: number, capacity: number) => {
  const fit = (): TrialFit => fitsOf(of)[which];
  return [
    [`${name}: critical power`, () => fit().criticalPower, critical],
    [`${name}: store`, () => fit().capacity, capacity],
  ] as const;
};

export const fitChecks: readonly Check[] = [
  ...printedResults(fitTrials, RECOMPUTED, 1e-6, 'made from 220 W and 18 kJ; rounding in doubles is some 1e-9 of it', [
    ...both('Exact trials, work on time', ON_THE_LINE, 'workTime', 220, 18_000),
    ...both('Exact trials, power on 1/t', ON_THE_LINE, 'inverseTime', 220, 18_000),
    ...both('Exact trials, hyperbola', ON_THE_LINE, 'hyperbolic', 220, 18_000),
  ]),
  ...printedResults(fitTrials, SCIPY, 5e-6, 'written to five decimals', [
    ...both('Noisy trials, work on time', NOISY, 'workTime', 219.92278, 18_081.66023),
    ...both('Noisy trials, power on 1/t', NOISY, 'inverseTime', 220.20205, 17_984.80097),
    ...both('Noisy trials, hyperbola', NOISY, 'hyperbolic', 219.76367, 18_173.291),
    [
      'Noisy trials, hyperbola: standard error of critical power',
      () => fitsOf(NOISY).hyperbolic.criticalPowerSd,
      0.20778,
    ],
    ['Noisy trials, hyperbola: standard error of the store', () => fitsOf(NOISY).hyperbolic.capacitySd, 135.78226],
  ]),
  ...printedResults(fitTrials, R_PROJECT, 6e-4, 'nls stops at a relative offset of 1e-7; written to three decimals', [
    ...both('Five trials, hyperbola', FIVE, 'hyperbolic', 171.031, 14_763.485),
    ...both('Four trials, hyperbola', FOUR, 'hyperbolic', 258.114, 18_735.336),
  ]),
];

// Along a session

const example: readonly Stretch[] = Array.from({ length: 10 }, (_, place) => ({
  power: watts(place % 2 === 0 ? 350 : 150),
  lasting: seconds(60),
}));
const EXAMPLE_PERSON: PowerDuration = { criticalPower: watts(250), capacity: joules(20_000) };
const TIMES = ['first', 'second', 'third', 'fourth', 'fifth'];

const PRINTED: Readonly<Record<RecoveryModel, readonly number[]>> = {
  'by distance': [14_000, 15_555.1, 9555.1, 12_262.2, 6262.2, 9822.8, 3822.8, 8015.6, 2015.6, 6676.9],
  'by distance, elite cyclists': [
    14_000, 16_783.7, 10_783.7, 15_059.5, 9059.5, 14_135.3, 8135.3, 13_639.8, 7639.8, 13_374.3,
  ],
  integral: [14_335.2, 14_956, 9844, 10_957.1, 6283.4, 7786.7, 3460.5, 5273.2, 1222.4, 3280.5],
};

const exampleRows = (model: RecoveryModel) =>
  PRINTED[model].map((printed, place) => {
    const title = `${model}: after the ${TIMES[place >> 1]} ${place % 2 === 0 ? 'minute at 350 W' : 'minute at 150 W'}`;
    const value = (): number => {
      const along = balanceAlong(example, EXAMPLE_PERSON, model);
      if (along.kind === 'refused') throw new RangeError(along.reason);
      return along.after[place] ?? Number.NaN;
    };
    return [title, value, printed] as const;
  });

const PERSON: PowerDuration = { criticalPower: watts(205), capacity: joules(16_000) };
const BOUTS: readonly Stretch[] = [1, 2, 3, 4, 5, 6, 7].map((place) =>
  place % 2 === 1 ? { power: watts(228.148148), lasting: seconds(240) } : { power: watts(100), lasting: seconds(180) },
);

const leastOf = (bouts: number) => (): number => {
  const found = sessionFeasibility(BOUTS.slice(0, 2 * bouts - 1), PERSON);
  return found.kind === 'feasible' ? found.least : Number.NaN;
};

const ONE_DECIMAL = 'written to one decimal';

export const balanceChecks: readonly Check[] = [
  ...printedResults(balanceAlong, SCIPY, 0.05 + 1e-6, ONE_DECIMAL, [
    ...exampleRows('by distance'),
    ...exampleRows('by distance, elite cyclists'),
    ...exampleRows('integral'),
  ]),
  ...printedResults(sessionFeasibility, SCIPY, 0.05 + 1e-6, ONE_DECIMAL, [
    ['Least balance with one bout of four minutes', leastOf(1), 10_444.4],
    ['with two', leastOf(2), 8739.5],
    ['with three', leastOf(3), 8216.2],
    ['with four', leastOf(4), 8055.6],
  ]),
];

export const stepChecks: readonly Check[] = [
  ...printedRows(RECOMPUTED, 1e-9, EXACT, [
    [balanceAfterWork, [20_000, 350, 250, 60], 14_000],
    [recoveryTimeConstant, [100, 20_000], 200],
  ]),
  ...printedRows(RECOMPUTED, 0.05 + 1e-6, ONE_DECIMAL, [
    [balanceAfterRecovery, [14_000, 20_000, 200, 60], 15_555.1],
    [deficitAfter, [0, 350, 250, 516.8622, 60], 20_000 - 14_335.2],
  ]),
  ...printedRows(RECOMPUTED, 5e-5 + 1e-9, 'written to four decimals', [
    [recoveryTimeConstantOfElite, [100], 96.2286],
    [timeConstantOfIntegral, [100], 516.8622],
    [recoveryNeeded, [8000, 14_000, 20_000, 200], 138.6294],
  ]),
  ...printedRows(RECOMPUTED, 5e-7 + 1e-12, 'written to six decimals', [
    [recoveredInTwoParts, [60], 0.546278],
    [recoveredInTwoParts, [240], 0.734242],
  ]),
];
