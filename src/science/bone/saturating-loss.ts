import { formula, type FormulaInput } from '../formula.ts';
import { method } from '../method.ts';
import { curveOf, type Curve } from '../plot.ts';
import { AXPE_2020, OUR_OWN_DESIGN } from '../sources.ts';
import { impossible, refused, type Refused } from './impossible.ts';
import { PUBLISHED_LOSSES, type GroupLoss } from './published-losses.table.ts';
import type { DaySpan } from '#units/quantity.ts';

/** Loss over very long flights: a line that bends towards a plateau which nobody has seen. */

/** Of the bone that can be lost, the part lost each day; of femoral necks: a half-life of 1088 days [1/d]. */
export const BONE_SATURATION = 6.371e-4;

const FAR_OUTSIDE =
  'Anything beyond the flights behind it, the longest of a few months: a half-life of three years is read from data of half a year, which a straight line fits as well. The plateau is an extrapolation, no forecast for a person.';

const plateau: FormulaInput = {
  name: 'plateau of the loss',
  symbol: 'P',
  unit: '%',
  possible: [0, 100],
  valid: [1, 80],
};
const days: FormulaInput = { name: 'days in flight', symbol: 't', unit: 'd', possible: [0, 20_000], valid: [0, 230] };

/** Loss of the femoral neck that bends towards a plateau [%]. */
export const saturatingLoss = formula(
  {
    id: 'bone/saturating-loss',
    revision: 1,
    title: 'Loss of the femoral neck that bends towards a plateau [%]',
    equation: 'P · (1 − exp(−k t)), k = 6.371·10^(−4) per day',
    inputs: [plateau, days],
    output: { name: 'loss', symbol: 'L', unit: '%' },
    source: AXPE_2020,
    doesNotKnow: `${FAR_OUTSIDE} projection/bone-course-saturating has the same constant, as months of loss at the rate of the first day.`,
    plot: {
      says: 'The published points crowd at half a year; everything to the right of them is the shape that somebody chose.',
      x: { name: 'days in flight', unit: 'd' },
      y: { name: 'loss at the femoral neck', unit: '%' },
      curves: (): readonly Curve[] => {
        const fitted = fitPlateau(PUBLISHED_LOSSES.rows);
        return [
          ...(fitted.kind === 'estimate'
            ? [curveOf('towards the plateau', saturatingLoss, [0, 1100], (at) => [fitted.value, at])]
            : []),
          {
            label: 'published, each for its people',
            scattered: true,
            points: PUBLISHED_LOSSES.rows.map(({ days: at, loss }) => [at, loss] as const),
          },
        ];
      },
    },
  },
  (most: number, at: DaySpan): number => most * -Math.expm1(-BONE_SATURATION * at),
);

export type FittedPlateau =
  | { readonly kind: 'estimate'; readonly value: number; readonly sd: number; readonly cautions: readonly string[] }
  | Refused;

const groupDays: FormulaInput = { ...days, possible: [1, 20_000], valid: [1, 230] };
const groupLoss: FormulaInput = { name: 'mean loss', symbol: 'y', unit: '%', possible: [-50, 100], valid: [0, 30] };
const groupSize: FormulaInput = { name: 'people', symbol: 'w', unit: 'people', possible: [1, 10_000], valid: [1, 200] };

/** Plateau of the bending line through published losses. */
export const fitPlateau = method(
  {
    id: 'bone/fitted-plateau',
    revision: 1,
    title: 'Plateau of the bending line through published losses [%]',
    equations: [
      'g_i = 1 − exp(−k t_i), k as printed',
      'P = sum_i w_i g_i y_i / sum_i w_i g_i²',
      'σ_P = √(sum_i w_i (y_i − P g_i)² / (n − 1) / sum_i w_i g_i²)',
    ],
    inputs: [groupDays, groupLoss, groupSize],
    outputs: [{ name: 'plateau of the loss', symbol: 'P', unit: '%' }],
    refuses: ['Fewer than two groups.', 'Days, a loss or a number of people that cannot be.'],
    source: OUR_OWN_DESIGN,
    restsOn: [AXPE_2020],
    doesNotKnow: `${FAR_OUTSIDE} The plateau that was published with the constant was not seen; this one is weighted by people, and its standard deviation takes the constant as known.`,
  },
  (groups: readonly GroupLoss[]): FittedPlateau => {
    const reasons = impossible(
      groups.flatMap(({ days: at, loss, people }) => [
        [groupDays, at] as const,
        [groupLoss, loss] as const,
        [groupSize, people] as const,
      ]),
    );
    if (groups.length < 2) return refused([`A plateau needs at least two groups; there are ${groups.length}.`]);
    if (reasons.length > 0) return refused(reasons);
    const weighed = groups.map(({ days: at, loss, people }) => ({
      g: -Math.expm1(-BONE_SATURATION * at),
      loss,
      people,
    }));
    const squares = weighed.reduce((sum, { g, people }) => sum + people * g * g, 0);
    const value = weighed.reduce((sum, { g, loss, people }) => sum + people * g * loss, 0) / squares;
    const left = weighed.reduce((sum, { g, loss, people }) => sum + people * (loss - value * g) ** 2, 0);
    const longest = Math.max(...groups.map((group) => group.days));
    return {
      kind: 'estimate',
      value,
      sd: Math.sqrt(left / (groups.length - 1) / squares),
      cautions: [`The longest flight behind it lasted ${longest} days; the line beyond is a guess at a shape.`],
    };
  },
);
