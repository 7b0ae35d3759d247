import { formula } from '../formula.ts';
import { curveOf, type Curve } from '../plot.ts';
import type { SourcedTable } from '../sourced-table.ts';
import { ENGLISH_2020, OUR_OWN_DESIGN } from '../sources.ts';
import { fraction, type DaySpan, type Fraction } from '#units/quantity.ts';

/** What comes back after landing: defaults, until the person’s own tests speak. */

/** Deficit left after days of training, from the deficit at the start and its half-life. */
export const deficitLeft = formula(
  {
    id: 'recovery/deficit-left',
    revision: 1,
    title: 'Deficit left after days of training, from the deficit at the start and its half-life',
    equation: 'd_0 · 2^(−t / h)',
    inputs: [
      { name: 'deficit at the start', symbol: 'd_0', unit: '1', possible: [0, 1], valid: [0, 0.5] },
      { name: 'days since', symbol: 't', unit: 'd', possible: [0, 1000], valid: [0, 90] },
      { name: 'half-life', symbol: 'h', unit: 'd', possible: [1, 500], valid: [7, 60] },
    ],
    output: { name: 'deficit left', symbol: 'd', unit: '1' },
    source: OUR_OWN_DESIGN,
    restsOn: [ENGLISH_2020],
    doesNotKnow:
      'This person, and whether the first loss is strength or water and sleep. Half-lives are our own and editable.',
    plot: {
      says: 'By these defaults an ankle that lost 10 % is within 2.5 % of itself after a month, a knee not before two.',
      x: { name: 'days after landing', unit: 'd' },
      y: { name: 'deficit left', unit: '1' },
      curves: (): readonly Curve[] =>
        RECOVERY_HALF_LIVES.rows.map(({ part, halfLife }) =>
          curveOf(part, deficitLeft, [0, 90], (days) => [PLOTTED_DEFICIT, days, halfLife]),
        ),
    },
  },
  (start: Fraction, days: DaySpan, halfLife: DaySpan): Fraction => fraction(start / 2 ** (days / halfLife)),
);

const PLOTTED_DEFICIT = 0.1;

export interface RecoveryHalfLife {
  readonly part: string;
  /** [d] */
  readonly halfLife: number;
}

export const RECOVERY_HALF_LIVES: SourcedTable<RecoveryHalfLife> = {
  record: {
    id: 'recovery/half-lives',
    revision: 1,
    title: 'Half-lives of what was lost, before the person’s own tests',
    source: OUR_OWN_DESIGN,
    restsOn: [ENGLISH_2020],
    doesNotKnow:
      'This person. Group means after 5, 14 and 30 days hold the ankle and hardly the knee; all are editable.',
  },
  columns: [
    { name: 'part', unit: '' },
    { name: 'half-life', unit: 'd' },
  ],
  rows: [
    { part: 'ankle', halfLife: 14 },
    { part: 'in general', halfLife: 21 },
    { part: 'knee', halfLife: 28 },
    { part: 'trunk', halfLife: 30 },
  ],
  cells: ({ part, halfLife }) => [part, halfLife],
};
