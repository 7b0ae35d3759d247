import type { SourcedTable } from '../sourced-table.ts';
import { AXPE_2020 } from '../sources.ts';

/** Mean loss of some people after some days [%]; a loss is positive here. */
export interface GroupLoss {
  readonly days: number;
  readonly loss: number;
  readonly people: number;
}

export const PUBLISHED_LOSSES: SourcedTable<GroupLoss> = {
  record: {
    id: 'bone/published-losses',
    revision: 1,
    title: 'Losses at the femoral neck by days in flight, as compiled for a bending line',
    source: AXPE_2020,
    doesNotKnow:
      'How single people of the two groups of 16 and 46 differ. The paper’s own table has one row more, an anchor of 0 % after 11 days for all 69 people: nobody measured it, so that it is left out here.',
  },
  columns: [
    { name: 'days in flight', unit: 'd' },
    { name: 'mean loss', unit: '%' },
    { name: 'people', unit: 'people' },
  ],
  rows: [
    { days: 132, loss: 1.3, people: 1 },
    { days: 132, loss: 6, people: 1 },
    { days: 145, loss: 4.5, people: 1 },
    { days: 150, loss: 9.4, people: 16 },
    { days: 169, loss: 3.5, people: 1 },
    { days: 169, loss: 3.1, people: 1 },
    { days: 176, loss: 11.4, people: 1 },
    { days: 176, loss: 5.3, people: 1 },
    { days: 181, loss: 6.8, people: 46 },
  ],
  cells: ({ days, loss, people }) => [days, loss, people],
};
