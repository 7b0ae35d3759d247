import { percentChange } from '../adaptation/change.ts';
import { printedResults, printedRows, type Check } from '../check.ts';
import { RECOMPUTED, R_PROJECT } from '../sources.ts';
import { boneScore, youngReference, type BoneReference } from './bone-score.ts';
import { leastSignificantChange, precisionOfScans } from './dxa-precision.ts';
import { WORST_ACCEPTABLE_PRECISION } from './precision.table.ts';
import { acceptablePrecision, scanChange } from './scan-change.ts';
import { ISCD_POSITIONS } from './sources.ts';
import { densityAtScore, scoreSd, standardScore } from './standard-score.ts';
import { boneDensity, type BoneDensity } from '#units/quantity.ts';

const EXACT = 'exact but for binary fractions';

/** Five people scanned twice [g/cm²]. */
export const FIVE_PAIRS: readonly (readonly BoneDensity[])[] = [
  [0.982, 0.99],
  [1.034, 1.022],
  [0.876, 0.88],
  [0.945, 0.939],
  [1.101, 1.113],
].map((pair) => pair.map(boneDensity));

const ofPairs = (read: (precision: { value: number; leastSignificantChange: number }) => number): number => {
  const found = precisionOfScans(FIVE_PAIRS);
  return found.kind === 'estimate' ? read(found) : Number.NaN;
};

const neck = (): ReturnType<typeof scanChange> =>
  scanChange({
    before: boneDensity(0.934),
    after: boneDensity(0.9),
    precision: boneDensity(0.0063560994),
    machines: 'same',
  });

const scoreOfHip = (reference: BoneReference): number => {
  const found = boneScore(boneDensity(0.98), reference);
  return found.kind === 'estimate' ? found.value : Number.NaN;
};

const HIP_OF_MEN = [1.041, 0.144] as const;
const HIP_OF_WOMEN = [0.942, 0.122] as const;
const NECK_OF_MEN = [0.934, 0.137] as const;
const NECK_OF_WOMEN = [0.858, 0.12] as const;

export const precisionChecks: readonly Check[] = [
  ...printedResults(precisionOfScans, R_PROJECT, 5e-11, 'residual standard error of R, here to ten decimals', [
    ['precision of five pairs', () => ofPairs(({ value }) => value), 0.0063560994],
  ]),
  ...printedResults(precisionOfScans, RECOMPUTED, 5e-10, 'here to nine decimals', [
    ['least significant change of five pairs', () => ofPairs((found) => found.leastSignificantChange), 0.017606395],
  ]),
  ...printedRows(ISCD_POSITIONS, 1e-12, EXACT, [[leastSignificantChange, [0.01], 0.0277]]),
  ...WORST_ACCEPTABLE_PRECISION.rows.map(({ region, precision, leastSignificantChange: printed }): Check => ({
    kind: 'series',
    title: `worst acceptable precision of the ${region}: 2.77 times the printed precision is the printed change [%]`,
    compute: () => leastSignificantChange(boneDensity(precision)),
    printed,
    within: 0.05,
    because: 'printed to one decimal',
    source: ISCD_POSITIONS,
  })),
  ...printedResults(acceptablePrecision, ISCD_POSITIONS, 1e-9, EXACT, [
    [
      'a precision of 0.019 g/cm² on spines of 1 g/cm², in percent',
      () => {
        const found = acceptablePrecision('lumbar spine', boneDensity(0.019), boneDensity(1));
        return found.kind === 'acceptable' ? found.percent : Number.NaN;
      },
      1.9,
    ],
  ]),
  ...printedRows(RECOMPUTED, 5e-7, 'here to six decimals', [[percentChange, [0.934, 0.9], -3.640257]]),
  ...printedResults(scanChange, RECOMPUTED, 1e-9, 'densities are printed to three decimals', [
    [
      'a change that counts: 0.934 to 0.900 g/cm²',
      () => {
        const found = neck();
        return found.kind === 'counts' ? found.change : Number.NaN;
      },
      -0.034,
    ],
  ]),
];

export const scoreChecks: readonly Check[] = [
  ...printedRows(RECOMPUTED, 5e-7, 'here to six decimals', [
    [standardScore, [0.98, ...HIP_OF_MEN], -0.423611],
    [standardScore, [0.98, ...HIP_OF_WOMEN], 0.311475],
    [standardScore, [0.88, ...NECK_OF_MEN], -0.394161],
    [scoreSd, [0.01, 0.137], 0.072993],
  ]),
  ...printedRows(RECOMPUTED, 1e-12, EXACT, [
    [densityAtScore, [-1, ...HIP_OF_MEN], 0.897],
    [densityAtScore, [-1, ...HIP_OF_WOMEN], 0.82],
    [densityAtScore, [-2, ...HIP_OF_MEN], 0.753],
    [densityAtScore, [-2, ...HIP_OF_WOMEN], 0.698],
    [densityAtScore, [-2.5, ...HIP_OF_MEN], 0.681],
    [densityAtScore, [-2.5, ...HIP_OF_WOMEN], 0.637],
    [densityAtScore, [-1, ...NECK_OF_MEN], 0.797],
    [densityAtScore, [-1, ...NECK_OF_WOMEN], 0.738],
    [densityAtScore, [-2, ...NECK_OF_MEN], 0.66],
    [densityAtScore, [-2, ...NECK_OF_WOMEN], 0.618],
    [densityAtScore, [-2.5, ...NECK_OF_MEN], 0.5915],
    [densityAtScore, [-2.5, ...NECK_OF_WOMEN], 0.558],
  ]),
  ...printedResults(boneScore, RECOMPUTED, 5e-7, 'here to six decimals', [
    [
      'hip of a man, 0.980 g/cm², against young men',
      () => scoreOfHip(youngReference('total hip', 'male', 'sex-matched')),
      -0.423611,
    ],
    [
      'the same hip against young women',
      () => scoreOfHip(youngReference('total hip', 'male', 'young female')),
      0.311475,
    ],
  ]),
];
