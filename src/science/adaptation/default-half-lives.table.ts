import type { SourcedTable } from '../sourced-table.ts';
import { ENGLISH_2020, OUR_OWN_DESIGN } from '../sources.ts';

/** How fast strength comes back after landing: defaults, until the person’s own tests speak. */

export interface DefaultHalfLife {
  readonly part: string;
  /** [d] */
  readonly halfLife: number;
  /** What else stands in this book for the same, and why it differs. */
  readonly elsewhere: string;
}

export const DEFAULT_HALF_LIVES: SourcedTable<DefaultHalfLife> = {
  record: {
    id: 'recovery/half-lives',
    revision: 2,
    title: 'Half-lives of what was lost, before the person’s own tests',
    source: OUR_OWN_DESIGN,
    restsOn: [ENGLISH_2020],
    doesNotKnow:
      'This person, and whether the first loss is strength or water and sleep. Group means after 5, 14 and 30 days hold the ankle and hardly the knee; all are round figures of our own and editable. The law is recovery/part-left.',
  },
  columns: [
    { name: 'part', unit: '' },
    { name: 'half-life', unit: 'd' },
    { name: 'elsewhere in this book', unit: '' },
  ],
  rows: [
    {
      part: 'ankle',
      halfLife: 14,
      elsewhere:
        '8.9 d for plantar flexion in return/recovery-constants, from the means of 17 people on days 5 and 30 (English 2020): that takes the means as they are, this one is rounded up.',
    },
    {
      part: 'in general',
      halfLife: 21,
      elsewhere:
        '18.9 d for all isokinetic tests in return/recovery-constants, from middles of ranges of 37 people (English 2015).',
    },
    {
      part: 'knee',
      halfLife: 28,
      elsewhere:
        '43 d for knee extension in projection/quantities, from 26 people of both groups of English 2020, days 5 and 30; 27.7 d in return/recovery-constants, our own, since the 17 of the usual training stayed flat to day 30 (their knee flexion gives 28.6 d).',
    },
    { part: 'trunk', halfLife: 30, elsewhere: 'Nothing.' },
  ],
  cells: ({ part, halfLife, elsewhere }) => [part, halfLife, elsewhere],
};
