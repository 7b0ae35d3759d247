import type { SourcedTable } from '../sourced-table.ts';
import { ASTRAND_1960 } from './sources.ts';

/** What a single stage is multiplied by: for the age, or for a known maximal heart rate. Never for both. */

export type FactorRow = readonly [at: number, factor: number];

export const AGE_FACTORS: readonly FactorRow[] = [
  [15, 1.1],
  [25, 1.0],
  [35, 0.87],
  [40, 0.83],
  [45, 0.78],
  [50, 0.75],
  [55, 0.71],
  [60, 0.68],
  [65, 0.65],
];
export const MAXIMAL_RATE_FACTORS: readonly FactorRow[] = [
  [150, 0.64],
  [160, 0.69],
  [170, 0.75],
  [180, 0.83],
  [190, 0.93],
  [200, 1.0],
  [210, 1.12],
];

const record = {
  revision: 1,
  source: ASTRAND_1960,
  doesNotKnow: 'People outside the printed ages or rates: refused there. Between two rows a straight line is taken.',
} as const;
const factor = { name: 'factor', unit: '1' } as const;

export const AGE_FACTOR_TABLE: SourcedTable<FactorRow> = {
  record: { ...record, id: 'submaximal/age-factors', title: 'Factor of a single stage for the age' },
  columns: [{ name: 'age', unit: 'years' }, factor],
  rows: AGE_FACTORS,
  cells: (row) => row,
};

export const MAXIMAL_RATE_FACTOR_TABLE: SourcedTable<FactorRow> = {
  record: {
    ...record,
    id: 'submaximal/rate-factors',
    title: 'Factor of a single stage for a known maximal heart rate',
  },
  columns: [{ name: 'maximal heart rate', unit: '1/min' }, factor],
  rows: MAXIMAL_RATE_FACTORS,
  cells: (row) => row,
};
