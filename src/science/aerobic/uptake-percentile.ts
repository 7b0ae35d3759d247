import { method } from '../method.ts';
import type { Curve } from '../plot.ts';
import { SEXES, type Sex } from '../body/segments.ts';
import { refusalOf, refused, type Refused } from './estimate.ts';
import { uptake } from './inputs.ts';
import { KAMINSKY_2015 } from './sources.ts';
import { PERCENTILES, UPTAKE_NORMS, type UptakeNorm } from './uptake-norms.table.ts';

/** Where a maximal uptake stands among people of the same sex and decade. Beyond the outer columns nothing is made up. */

export type UptakeStanding =
  | { readonly kind: 'percentile'; readonly value: number }
  | { readonly kind: 'below'; readonly percentile: number; readonly uptake: number }
  | { readonly kind: 'above'; readonly percentile: number; readonly uptake: number }
  | Refused;

const [LOWEST, HIGHEST] = [PERCENTILES[0], PERCENTILES[PERCENTILES.length - 1] ?? 95] as const;

const ages = { name: 'age', symbol: 'age', unit: 'years', possible: [20, 80], valid: [20, 79] } as const;

const OUT_OF_TABLE = 'The figures end at 79 years.';

/** The row of a sex and an age. */
const normOf = (sex: Sex, years: number): UptakeNorm | undefined =>
  UPTAKE_NORMS.rows.find((row) => row.sex === sex && row.from === 10 * Math.floor(years / 10));

/** y at x on straight lines through points of rising x; x lies within them. */
const between = (points: readonly (readonly [x: number, y: number])[], x: number): number => {
  const above = points.findIndex((point) => point[0] >= x);
  const [x2, y2] = points[above] ?? [Number.NaN, Number.NaN];
  const [x1, y1] = points[above - 1] ?? [x2, y2];
  return x1 === x2 ? y2 : y1 + ((y2 - y1) * (x - x1)) / (x2 - x1);
};

const pointsOf = ({ uptakes }: UptakeNorm): readonly (readonly [uptake: number, percentile: number])[] =>
  uptakes.map((value, place) => [value, PERCENTILES[place] ?? Number.NaN] as const);

const shared = {
  revision: 1,
  source: KAMINSKY_2015,
  refuses: ['An age below 20 or from 80 years.', 'An uptake or a percentile that is not possible.'],
  doesNotKnow: 'That people of one decade differ by up to nine years; a step of several units lies between decades.',
} as const;

/** The percentile of a maximal uptake. */
export const uptakePercentile = method(
  {
    ...shared,
    id: 'norm/percentile',
    title: 'Percentile of a maximal oxygen uptake on a treadmill',
    equations: [
      'decade = 10 · floor(age / 10)',
      'between two columns: p_1 + (p_2 − p_1) · (VO2_max − V_1) / (V_2 − V_1)',
      'below the first or above the last column: said, not extrapolated',
    ],
    inputs: [uptake('maximal oxygen uptake', 'VO2_max', [10, 90]), ages],
    outputs: [{ name: 'percentile', symbol: 'p', unit: '%' }],
    plot: {
      says: 'Medians with the middle half of people: it falls by about a tenth in ten years.',
      x: { name: 'age, middle of the decade', unit: 'years' },
      y: { name: 'maximal oxygen uptake', unit: 'mL/(kg min)' },
      curves: (): readonly Curve[] => SEXES.map(middleHalf),
    },
  },
  (sex: Sex, years: number, value: number): UptakeStanding => {
    const refusal = refusalOf(uptakePercentile.record, [value, years]);
    if (refusal) return refusal;
    const norm = normOf(sex, years);
    if (!norm) return refused(OUT_OF_TABLE);
    const [least, most] = [norm.uptakes[0], norm.uptakes[6]];
    if (value < least) return { kind: 'below', percentile: LOWEST, uptake: least };
    if (value > most) return { kind: 'above', percentile: HIGHEST, uptake: most };
    return { kind: 'percentile', value: between(pointsOf(norm), value) };
  },
);

/** The maximal uptake at a percentile. */
export const uptakeOfPercentile = method(
  {
    ...shared,
    id: 'norm/uptake-of-percentile',
    title: 'Maximal oxygen uptake on a treadmill at a percentile',
    equations: ['between two columns: V_1 + (V_2 − V_1) · (p − p_1) / (p_2 − p_1)'],
    inputs: [
      { name: 'percentile', symbol: 'p', unit: '%', possible: [LOWEST, HIGHEST], valid: [LOWEST, HIGHEST] },
      ages,
    ],
    outputs: [{ name: 'maximal oxygen uptake', symbol: 'VO2_max', unit: 'mL/(kg min)' }],
  },
  (sex: Sex, years: number, percentile: number): { readonly kind: 'uptake'; readonly value: number } | Refused => {
    const refusal = refusalOf(uptakeOfPercentile.record, [percentile, years]);
    if (refusal) return refusal;
    const norm = normOf(sex, years);
    if (!norm) return refused(OUT_OF_TABLE);
    const points = pointsOf(norm).map(([value, at]) => [at, value] as const);
    return { kind: 'uptake', value: between(points, percentile) };
  },
);

const middleHalf = (sex: Sex): Curve => {
  const rows = UPTAKE_NORMS.rows.filter((row) => row.sex === sex);
  return {
    label: sex,
    points: rows.map(({ from, uptakes }) => [from + 5, uptakes[3]] as const),
    band: rows.map(({ uptakes }) => [uptakes[2], uptakes[4]] as const),
  };
};
