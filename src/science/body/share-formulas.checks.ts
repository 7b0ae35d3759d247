import type { Check } from '../check.ts';
import type { AnyFormula, Source } from '../formula.ts';
import { shareMatchingMoment } from './moments.ts';
import {
  dropAlong,
  dropBetween,
  dropOfLeaning,
  partOfShare,
  riseOfAnkle,
  riseOfFoot,
  shareOfBending,
  shareOfCurl,
  shareOfHeelRaise,
  shareOfPressOrRow,
  shareOfStraightArmRaise,
} from './share-formulas.ts';
import { OUR_OWN_DESIGN } from '../sources.ts';
import { DE_LEVA_1996 } from './sources.ts';

/** One cell at a time, for a man of the printed sample. Lengths and travels are millimetres over his 1741. */

const STATURE = 1741;
const over = (millimetres: number): number => millimetres / STATURE;

type Row = readonly [formula: AnyFormula, given: readonly number[], printed: number];

const rows = (
  within: number,
  because: string,
  list: readonly Row[],
  source: Source = OUR_OWN_DESIGN,
): readonly Check[] =>
  list.map(([formula, given, printed]) => ({ kind: 'formula', formula, given, printed, within, because, source }));

const [SHANK, THIGH, TO_SHOULDER] = [440.3, 422.2, 515.5].map(over) as [number, number, number];
const [UPPER_ARM, FOREARM, GRIP] = [over(281.7), over(268.9), over(268.9 + 0.79 * 86.2)];
const [KNEE, HIP, BAR] = [58.989, 481.189, 601.793].map(over) as [number, number, number];

export const shareFormulaChecks: readonly Check[] = [
  ...rows(over(0.0005), 'a thousandth of a millimetre of travel', [
    [dropOfLeaning, [SHANK, 30], KNEE],
    [dropAlong, [KNEE, THIGH, 90], HIP],
  ]),
  ...rows(over(0.001), 'the sum of a printed travel and another, each to a thousandth of a millimetre', [
    [dropAlong, [HIP, TO_SHOULDER, 40], BAR],
    [dropBetween, [KNEE, 0, 0.4395], over(33.063)],
    [dropBetween, [HIP, KNEE, 0.4095], over(308.298)],
    [dropBetween, [BAR, HIP, 0.431], over(549.813)],
  ]),
  ...rows(0.00005, 'printed to four decimals', [
    [partOfShare, [1, 0.4346, over(549.813), BAR], 0.3971],
    [partOfShare, [2, 0.1416, over(308.298), BAR], 0.1451],
    [shareMatchingMoment, [0.3345, 0.3395 / 2.2175, 1.5], 0.6848],
  ]),
  ...rows(0.00015, 'a sum of five parts printed to four decimals', [
    [shareOfBending, [0.0048, 0.1451, 0, 0.3971, 0.0718, 0.0988], 0.7175],
  ]),
  ...rows(0.000005, 'computed a second time to six decimals', [
    [riseOfAnkle, [0.148248, 0.039, 35], 0.033762],
    [riseOfFoot, [0.4415, 0.148248, 0.039, 35], 0.021005],
  ]),
  ...rows(
    0.00005,
    'printed to four decimals',
    [
      [shareOfHeelRaise, [2, 0.0137, 0.021005, 0.033762], 0.9896],
      [shareOfHeelRaise, [1, 0.0137, 0.021005, 0.033762], 0.9948],
      [shareOfPressOrRow, [0.0271, 0.5772, 0.0162, 0.0061], 0.0759],
      [shareOfCurl, [0.0162, 0.4574, FOREARM, 0.0061, GRIP], 0.024],
      [shareOfStraightArmRaise, [0.0271, 0.5772, UPPER_ARM, 0.0162, 0.4574, FOREARM, 0.0061, GRIP], 0.0476],
    ],
    DE_LEVA_1996,
  ),
];
