import { formula, type FormulaInput } from '../formula.ts';
import { curveOf, type Curve } from '../plot.ts';
import { partLeft } from '../recovery/halving.ts';
import { SIBONGA_2007 } from '../sources.ts';
import { RECOVERY_HALF_LIVES } from './recovery-half-lives.table.ts';
import { GABEL_2022, LANG_2006, MICHALSKI_2019 } from './sources.ts';
import { daySpan, type DaySpan } from '#units/quantity.ts';

/** Density after landing: half of the deficit in each half-life. */

const deficit: FormulaInput = {
  name: 'deficit at landing',
  symbol: 'L_0',
  unit: '%',
  possible: [0.01, 60],
  valid: [0.5, 25],
};
const halfLife: FormulaInput = { name: 'half-life', symbol: 'h', unit: 'd', possible: [1, 10_000], valid: [60, 400] };

const DENSITY_ONLY =
  'Strength: it lags behind density, and after long flights part of it has not come back within a year. Nor the spread between people.';

/** Deficit of bone density that remains after landing [%]. */
export const remainingDeficit = formula(
  {
    id: 'bone/remaining-deficit',
    revision: 1,
    title: 'Deficit of bone density that remains after landing [%]',
    equation: 'L_0 · 2^(−t / h)',
    inputs: [
      deficit,
      { name: 'days since landing', symbol: 't', unit: 'd', possible: [0, 20_000], valid: [0, 1500] },
      halfLife,
    ],
    output: { name: 'remaining deficit', symbol: 'L', unit: '%' },
    source: SIBONGA_2007,
    restsOn: [LANG_2006, GABEL_2022],
    doesNotKnow: `${DENSITY_ONLY} The law is recovery/part-left, here times the deficit.`,
    plot: {
      says: 'Each site from its own deficit: the hip takes more than a year to come within 2 %, pelvis and spine about half a year.',
      x: { name: 'days since landing', unit: 'd' },
      y: { name: 'change against before flight', unit: '%' },
      curves: (): readonly Curve[] => [
        ...RECOVERY_HALF_LIVES.rows.map(({ site, deficit: lost, halfLife: half }): Curve => {
          const { label, points } = curveOf(site, remainingDeficit, [0, 1095], (days) => [lost, days, half]);
          return { label, points: points.map(([days, left]) => [days, -left] as const) };
        }),
        {
          label: 'within 2 % of before flight',
          points: [
            [0, -2],
            [1095, -2],
          ],
        },
      ],
    },
  },
  (lost: number, days: DaySpan, half: DaySpan): number => lost * partLeft(days, half),
);

/** Days after landing until a deficit is down to what is taken as recovered. */
export const daysToRecover = formula(
  {
    id: 'bone/days-to-recover',
    revision: 1,
    title: 'Days after landing until a deficit is down to what is taken as recovered',
    equation: 'h · log_2(L_0 / L)',
    inputs: [
      deficit,
      { name: 'deficit taken as recovered', symbol: 'L', unit: '%', possible: [0.01, 60], valid: [0.5, 5] },
      halfLife,
    ],
    conditions: [
      {
        says: 'The deficit taken as recovered lies at or under the deficit at landing; else there is nothing to wait for.',
        holds: (lost = 0, left = 0) => left <= lost,
      },
    ],
    output: { name: 'days', symbol: 't', unit: 'd' },
    source: SIBONGA_2007,
    restsOn: [MICHALSKI_2019],
    doesNotKnow: `${DENSITY_ONLY} Within 2 % of before flight is what a published pathway takes as recovered; its scans come at landing and after a half, one, two and three years.`,
  },
  (lost: number, left: number, half: DaySpan): DaySpan => daySpan(half * Math.log2(lost / left)),
);
