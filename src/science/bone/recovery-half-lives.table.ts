import type { SourcedTable } from '../sourced-table.ts';
import { SIBONGA_2007 } from '../sources.ts';

/** How fast density comes back after landing, site by site. */

export interface RecoveryHalfLife {
  readonly site: string;
  /** Of density, on landing [%]. */
  readonly deficit: number;
  /** [d] */
  readonly halfLife: number;
}

export const RECOVERY_HALF_LIVES: SourcedTable<RecoveryHalfLife> = {
  record: {
    id: 'bone/recovery-half-lives',
    revision: 1,
    title: 'Deficit at landing and half-life of its recovery',
    source: SIBONGA_2007,
    doesNotKnow:
      'The spread between people, which is wide, and strength, which lags behind density. Fits through 45 people of missions from before today’s machines.',
  },
  columns: [
    { name: 'site', unit: '' },
    { name: 'deficit at landing', unit: '%' },
    { name: 'half-life', unit: 'd' },
  ],
  rows: [
    { site: 'lumbar spine', deficit: 4.9, halfLife: 151 },
    { site: 'femoral neck', deficit: 6.8, halfLife: 211 },
    { site: 'trochanter', deficit: 7.8, halfLife: 255 },
    { site: 'pelvis', deficit: 7.7, halfLife: 97 },
    { site: 'calcaneus', deficit: 2.9, halfLife: 163 },
  ],
  cells: ({ site, deficit, halfLife }) => [site, deficit, halfLife],
};
