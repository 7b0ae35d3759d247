import type { Sex } from '../body/segments.ts';
import type { SourcedTable } from '../sourced-table.ts';
import { LOOKER_1998, MICHALSKI_2019 } from './sources.ts';

/** What T scores are counted from. */

export type HipRegion = 'total hip' | 'femoral neck';

export interface YoungAdults {
  readonly sex: Sex;
  readonly region: HipRegion;
  /** [g/cm²] */
  readonly mean: number;
  readonly sd: number;
}

export const YOUNG_ADULT_REFERENCE: SourcedTable<YoungAdults> = {
  record: {
    id: 'bone/young-adult-reference',
    revision: 1,
    title: 'Hip density of white adults of 20 to 29 years (survey of 1988 to 1994)',
    source: LOOKER_1998,
    restsOn: [MICHALSKI_2019],
    doesNotKnow:
      'People of other descent, the spine, and scanners of another maker than the survey’s: a report’s own reference goes before this one.',
  },
  columns: [
    { name: 'sex', unit: '' },
    { name: 'region', unit: '' },
    { name: 'mean', unit: 'g/cm²' },
    { name: 'standard deviation', unit: 'g/cm²' },
  ],
  rows: [
    { sex: 'male', region: 'total hip', mean: 1.041, sd: 0.144 },
    { sex: 'female', region: 'total hip', mean: 0.942, sd: 0.122 },
    { sex: 'male', region: 'femoral neck', mean: 0.934, sd: 0.137 },
    { sex: 'female', region: 'femoral neck', mean: 0.858, sd: 0.12 },
  ],
  cells: ({ sex, region, mean, sd }) => [sex, region, mean, sd],
};
