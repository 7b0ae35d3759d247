import { boneDensity } from '#units/quantity.ts';
import { standardScore } from '../bone/standard-score.ts';
import { printedResults, printedRows, type Check } from '../check.ts';
import { RECOMPUTED, SCIPY } from '../sources.ts';
import { halfLifeBetween, partLeft } from '../recovery/halving.ts';
import { boneChange, boneChangeSd, densityAfterChange, measuredChangeSd, rateStandardError } from './bone-change.ts';
import { boneRatePosterior, boneRatePrior } from './bone-rate.ts';
import { boneCourse, boneCourseSaturating } from './course.ts';
import { boneRateAtDose, boneRateSdAtDose } from './dose.ts';
import { chanceUnderLine, ownLine } from './line.ts';
import { FEMORAL_NECK } from './quantities.table.ts';

const SIX = 'printed to six decimals';

export const boneCourseChecks: readonly Check[] = printedRows(RECOMPUTED, 5e-7, SIX, [
  [boneCourse, [180], 5.913758],
  [boneCourseSaturating, [180], 5.587268],
  [boneCourseSaturating, [365], 10.699568],
]);

const posterior = () =>
  boneRatePosterior(boneRatePrior(FEMORAL_NECK, 0.8), [{ change: -4, months: 6, scanSd: 1.8 }], 0.2);
const rate = (part: 'mean' | 'sd') => (): number => {
  const result = posterior();
  return result.kind === 'estimate' ? result[part] : Number.NaN;
};
const under = (mean: number, sd: number, at: number) => (): number => {
  const chance = chanceUnderLine([{ weight: 1, mean, sd }], 'percent', ownLine('a line', at));
  return chance.kind === 'estimate' ? chance.value : Number.NaN;
};

/** The worked example: the femoral neck of a person with a density of 0.880, dose 0.8, six months. */
export const boneChecks: readonly Check[] = [
  ...printedRows(RECOMPUTED, 5e-7, SIX, [
    [boneRateAtDose, [0.8, -0.3, -1.15], -0.47],
    [boneRateSdAtDose, [0.8, -0.3, -1.15, 0.35, 0.84, 0.15], 0.350543],
    [boneRateAtDose, [0, -0.3, -1.15], -1.15],
    [boneRateSdAtDose, [1, -0.3, -1.15, 0.35, 0.84, 0.15], 0.3725],
    [rateStandardError, [1.8, 6], 0.424264],
    [boneChange, [-0.47, 6], -2.82],
    [boneChangeSd, [6, 0.35054279339333166, 0.25], 2.433863],
    [measuredChangeSd, [2.4338629788876776, 1.8], 3.521887],
    [densityAfterChange, [0.88, -2.82], 0.855184],
    [boneChange, [-0.540480726628806, 6], -3.242884],
    [boneChangeSd, [6, 0.2807896841718165, 0.25], 2.082869],
    [measuredChangeSd, [2.082868810689503, 1.8], 3.289125],
    [densityAfterChange, [0.88, -3.2428843597728356], 0.851463],
  ]),
  ...printedResults(boneRatePosterior, RECOMPUTED, 5e-7, SIX, [
    ['rate after an earlier mission', rate('mean'), -0.540481],
    ['its spread', rate('sd'), 0.28079],
  ]),
  ...printedResults(chanceUnderLine, SCIPY, 5e-7, SIX, [
    ['change under −4 % from other people', under(-2.82, 2.4338629788876776, -4), 0.3139],
    ['change under −4 % with the earlier mission', under(-3.2428843597728356, 2.082868810689503, -4), 0.358117],
    ['change under −7 % with the earlier mission', under(-3.2428843597728356, 2.082868810689503, -7), 0.03563],
  ]),
];

const scoreAfter = (change: number) => (): number =>
  standardScore(boneDensity(densityAfterChange(0.88, change)), boneDensity(0.934), boneDensity(0.137));

/** A man, against young men: femoral neck 0.934, SD 0.137. */
export const scoreChecks: readonly Check[] = (
  [
    ['T score after six months, from other people', scoreAfter(-2.82), -0.575299],
    ['T score after six months, with the earlier mission', scoreAfter(-3.2428843597728356), -0.602463],
  ] as const
).map(([title, compute, printed]) => ({
  kind: 'series',
  title,
  compute,
  printed,
  within: 5e-7,
  because: SIX,
  source: RECOMPUTED,
}));

export const landingChecks: readonly Check[] = [
  ...printedRows(RECOMPUTED, 5e-7, SIX, [
    [partLeft, [365, 211], 0.301482],
    [partLeft, [9, 6], 0.353553],
    [partLeft, [0, 43], 1],
    [halfLifeBetween, [11.745, 4.027, 9], 5.827999],
  ]),
  {
    kind: 'series',
    title: 'Deficit of the femoral neck 180 days after landing [%]',
    compute: () => -3.2428843597728356 * partLeft(180, FEMORAL_NECK.halfLife),
    printed: -1.795265,
    within: 5e-7,
    because: SIX,
    source: RECOMPUTED,
  },
];
