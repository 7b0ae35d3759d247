import type { SourcedTable } from '../sourced-table.ts';
import { SIBONGA_2007 } from '../sources.ts';

/** How fast density comes back after landing, site by site. */

export interface RecoveryHalfLife {
  readonly site: string;
  /** Of density, on landing [%]. */
  readonly deficit: number;
  /** [d] */
  readonly halfLife: number;
  /** What else stands in this book for the same, and why it differs. */
  readonly elsewhere: string;
}

const OF_THE_HIP =
  '270 d for the hip in return/recovery-constants: the same study of 45 people printed that about half was back by nine months, over all; this is what it fitted at one site.';

export const RECOVERY_HALF_LIVES: SourcedTable<RecoveryHalfLife> = {
  record: {
    id: 'bone/recovery-half-lives',
    revision: 2,
    title: 'Deficit at landing and half-life of its recovery',
    source: SIBONGA_2007,
    doesNotKnow:
      'The spread between people, which is wide, and strength, which lags behind density. Fits through 45 people of missions from before today’s machines.',
  },
  columns: [
    { name: 'site', unit: '' },
    { name: 'deficit at landing', unit: '%' },
    { name: 'half-life', unit: 'd' },
    { name: 'elsewhere in this book', unit: '' },
  ],
  rows: [
    { site: 'lumbar spine', deficit: 4.9, halfLife: 151, elsewhere: 'Nothing.' },
    { site: 'femoral neck', deficit: 6.8, halfLife: 211, elsewhere: OF_THE_HIP },
    { site: 'trochanter', deficit: 7.8, halfLife: 255, elsewhere: OF_THE_HIP },
    { site: 'pelvis', deficit: 7.7, halfLife: 97, elsewhere: 'Nothing.' },
    { site: 'calcaneus', deficit: 2.9, halfLife: 163, elsewhere: 'Nothing.' },
  ],
  cells: ({ site, deficit, halfLife, elsewhere }) => [site, deficit, halfLife, elsewhere],
};
