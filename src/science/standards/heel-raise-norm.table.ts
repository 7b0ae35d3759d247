import type { SourcedTable } from '../sourced-table.ts';
import { LUNSFORD_PERRY_1995 } from './sources.ts';

export interface HeelRaiseNorm {
  /** Standing on one leg, through the whole range, until failure. */
  readonly repetitions: number;
  readonly says: string;
}

/** How many single-leg heel raises are usual. */
export const HEEL_RAISE_NORM: SourcedTable<HeelRaiseNorm> = {
  record: {
    id: 'standards/heel-raises',
    revision: 1,
    title: 'Single-leg heel raises that are usual',
    source: LUNSFORD_PERRY_1995,
    doesNotKnow:
      'Age, sex and body mass: later work finds fewer in older people. Pace, height of the raise and what counts as failure move the count.',
  },
  columns: [
    { name: 'repetitions', unit: '1' },
    { name: 'in words', unit: '' },
  ],
  rows: [{ repetitions: 25, says: 'Standing on one leg, full height, until it is reached no more.' }],
  cells: ({ repetitions, says }) => [repetitions, says],
};
