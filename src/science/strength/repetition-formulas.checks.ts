import type { Check } from '../check.ts';
import type { AnyFormula, Source } from '../formula.ts';
import {
  fractionBrzycki,
  fractionBrzyckiRounded,
  fractionEpley,
  fractionLander,
  fractionLombardi,
  fractionMayhew,
  fractionOConner,
  fractionWathan,
} from './repetition-fraction.ts';
import {
  multiplierBrzycki,
  multiplierBrzyckiRounded,
  multiplierEpley,
  multiplierLander,
  multiplierLombardi,
  multiplierMayhew,
  multiplierOConner,
  multiplierWathan,
} from './repetition-multiplier.ts';
import {
  oneRepMaxBrzycki,
  oneRepMaxBrzyckiRounded,
  oneRepMaxEpley,
  oneRepMaxLander,
  oneRepMaxLombardi,
  oneRepMaxMayhew,
  oneRepMaxOConner,
  oneRepMaxWathan,
} from './one-rep-max.ts';
import { HAFF_TRIPLETT_2016 } from './sources.ts';

/** A load of 100 at eight numbers of repetitions, by eight authors, as each equation is printed. */

interface Author {
  readonly multiplier: AnyFormula;
  readonly fraction: AnyFormula;
  readonly maximum: AnyFormula;
}

const AUTHORS: readonly Author[] = [
  { multiplier: multiplierEpley, fraction: fractionEpley, maximum: oneRepMaxEpley },
  { multiplier: multiplierBrzycki, fraction: fractionBrzycki, maximum: oneRepMaxBrzycki },
  { multiplier: multiplierBrzyckiRounded, fraction: fractionBrzyckiRounded, maximum: oneRepMaxBrzyckiRounded },
  { multiplier: multiplierLombardi, fraction: fractionLombardi, maximum: oneRepMaxLombardi },
  { multiplier: multiplierMayhew, fraction: fractionMayhew, maximum: oneRepMaxMayhew },
  { multiplier: multiplierOConner, fraction: fractionOConner, maximum: oneRepMaxOConner },
  { multiplier: multiplierWathan, fraction: fractionWathan, maximum: oneRepMaxWathan },
  { multiplier: multiplierLander, fraction: fractionLander, maximum: oneRepMaxLander },
];

const TABLE: readonly (readonly [repetitions: number, ...maxima: readonly number[]])[] = [
  [1, 103.333, 100.0, 100.0, 100.0, 108.864, 102.5, 101.304, 101.39],
  [2, 106.667, 102.857, 102.859, 107.177, 111.439, 105.0, 105.146, 104.213],
  [3, 110.0, 105.882, 105.887, 111.612, 113.99, 107.5, 108.98, 107.197],
  [5, 116.667, 112.5, 112.511, 117.462, 119.011, 112.5, 116.583, 113.709],
  [8, 126.667, 124.138, 124.162, 123.114, 126.286, 120.0, 127.671, 125.109],
  [10, 133.333, 133.333, 133.369, 125.893, 130.934, 125.0, 134.747, 134.07],
  [12, 140.0, 144.0, 144.051, 128.209, 135.398, 130.0, 141.496, 144.414],
  [15, 150.0, 163.636, 163.72, 131.102, 141.719, 137.5, 150.906, 163.315],
];

const sourceOf = ({ multiplier }: Author): Source => multiplier.record.source;
const THREE_DECIMALS = 'printed to three decimals; one in the last of them';

/** Every value of the table, once as a multiple of the load and once read backwards. */
const ofRow = ([repetitions, ...maxima]: (typeof TABLE)[number]): readonly Check[] =>
  AUTHORS.flatMap((author, place): readonly Check[] => {
    const printed = maxima[place] ?? Number.NaN;
    const source = sourceOf(author);
    return [
      {
        kind: 'formula',
        formula: author.multiplier,
        given: [repetitions],
        printed: printed / 100,
        within: 0.00001,
        because: THREE_DECIMALS,
        source,
      },
      {
        kind: 'formula',
        formula: author.fraction,
        given: [repetitions],
        printed: 100 / printed,
        within: 0.00001,
        because: `the table read backwards, ${THREE_DECIMALS}`,
        source,
      },
      {
        kind: 'formula',
        formula: author.maximum,
        given: [100, repetitions],
        printed: repetitions === 1 ? 100 : printed,
        within: repetitions === 1 ? 0 : 0.001,
        because: repetitions === 1 ? 'a single is the maximum, exactly' : THREE_DECIMALS,
        source,
      },
    ];
  });

export const repetitionTableChecks: readonly Check[] = TABLE.flatMap(ofRow);

const percentRow = (formula: AnyFormula, percents: readonly number[], source: Source): readonly Check[] =>
  percents.map((percent, place) => ({
    kind: 'formula',
    formula,
    given: [place + 1],
    printed: percent / 100,
    within: 0.0005,
    because: 'printed in percent to one decimal',
    source,
  }));

/** Percent of the maximum against repetitions 1 to 15. */
export const percentTableChecks: readonly Check[] = [
  ...percentRow(
    fractionEpley,
    [96.8, 93.8, 90.9, 88.2, 85.7, 83.3, 81.1, 78.9, 76.9, 75.0, 73.2, 71.4, 69.8, 68.2, 66.7],
    HAFF_TRIPLETT_2016,
  ),
  ...percentRow(
    fractionWathan,
    [98.7, 95.1, 91.8, 88.7, 85.8, 83.1, 80.6, 78.3, 76.2, 74.2, 72.4, 70.7, 69.1, 67.6, 66.3],
    HAFF_TRIPLETT_2016,
  ),
];

const setOf = (maximum: AnyFormula, effective: number, printed: number): Check => ({
  kind: 'formula',
  formula: maximum,
  given: [100, effective],
  printed,
  within: 0.001,
  because: THREE_DECIMALS,
  source: maximum.record.source,
});

/** 100 × 5 with two in reserve, and 100 × 6 with three. */
export const reserveChecks: readonly Check[] = [
  setOf(oneRepMaxEpley, 7, 123.333),
  setOf(oneRepMaxBrzycki, 7, 120),
  setOf(oneRepMaxLombardi, 7, 121.481),
  setOf(oneRepMaxMayhew, 7, 123.899),
  setOf(oneRepMaxOConner, 7, 117.5),
  setOf(oneRepMaxWathan, 7, 124.03),
  setOf(oneRepMaxLander, 7, 121.063),
  setOf(oneRepMaxWathan, 9, 131.246),
  setOf(oneRepMaxEpley, 9, 130),
];

const SEVEN: readonly AnyFormula[] = AUTHORS.map(({ multiplier }) => multiplier).filter(
  (multiplier) => multiplier !== multiplierBrzyckiRounded,
);

const spreadOfSeven = (repetitions: number): number => {
  const values = SEVEN.map((multiplier) => (multiplier as unknown as (n: number) => number)(repetitions));
  return (Math.max(...values) - Math.min(...values)) / (values.reduce((sum, value) => sum + value, 0) / values.length);
};

/** How far the seven authors part, over their mean. */
export const spreadChecks: readonly Check[] = (
  [
    [2, 8.1],
    [3, 7.4],
    [5, 5.6],
    [6, 5.5],
    [8, 6.2],
    [10, 7.4],
    [12, 11.8],
    [15, 21.9],
  ] as const
).map(([repetitions, percent]) => ({
  kind: 'series',
  title: `Spread of seven formulas over their mean at ${repetitions} repetitions`,
  compute: () => spreadOfSeven(repetitions),
  printed: percent / 100,
  within: 0.0005,
  because: 'printed in percent to one decimal',
  source: { text: 'Our own comparison of the seven printed equations.', status: 'our own design' },
}));
