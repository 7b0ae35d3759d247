import type { SourcedTable } from '../sourced-table.ts';
import { ISCD_POSITIONS, NELSON_2010 } from './sources.ts';

/** Published precision of DXA, as data. */

export type Region = 'lumbar spine' | 'total hip' | 'femoral neck' | 'trochanter';

export interface WorstAcceptable {
  readonly region: Region;
  /** Coefficient of variation [%]. */
  readonly precision: number;
  /** As printed beside it [%]. */
  readonly leastSignificantChange: number;
}

export const WORST_ACCEPTABLE_PRECISION: SourcedTable<WorstAcceptable> = {
  record: {
    id: 'bone/worst-acceptable-precision',
    revision: 1,
    title: 'Worst precision that is still acceptable of a technologist',
    source: ISCD_POSITIONS,
    equationFromMemory: true,
    doesNotKnow:
      'Whether a precision that is acceptable in a clinic is good enough for one person followed over one mission.',
  },
  columns: [
    { name: 'region', unit: '' },
    { name: 'precision', unit: '%' },
    { name: 'least significant change', unit: '%' },
  ],
  rows: [
    { region: 'lumbar spine', precision: 1.9, leastSignificantChange: 5.3 },
    { region: 'total hip', precision: 1.8, leastSignificantChange: 5.0 },
    { region: 'femoral neck', precision: 2.5, leastSignificantChange: 6.9 },
  ],
  cells: ({ region, precision, leastSignificantChange }) => [region, precision, leastSignificantChange],
};

export interface TechnologistRange {
  readonly region: Region;
  /** Best and worst of eight technologists [g/cm²]. */
  readonly best: number;
  readonly worst: number;
  readonly differed: boolean;
}

export const PRECISION_BETWEEN_TECHNOLOGISTS: SourcedTable<TechnologistRange> = {
  record: {
    id: 'bone/precision-between-technologists',
    revision: 1,
    title: 'Precision of eight technologists, 30 patients each, on one day',
    source: NELSON_2010,
    doesNotKnow: 'Which of these a scan at hand was made by: ask for the figure of the technologist.',
  },
  columns: [
    { name: 'region', unit: '' },
    { name: 'best', unit: 'g/cm²' },
    { name: 'worst', unit: 'g/cm²' },
    { name: 'technologists differed', unit: '' },
  ],
  rows: [
    { region: 'lumbar spine', best: 0.008, worst: 0.011, differed: false },
    { region: 'total hip', best: 0.006, worst: 0.016, differed: true },
    { region: 'trochanter', best: 0.008, worst: 0.013, differed: true },
    { region: 'femoral neck', best: 0.01, worst: 0.02, differed: true },
  ],
  cells: ({ region, best, worst, differed }) => [region, best, worst, differed ? 'yes' : 'no'],
};
