import type { Source } from '../formula.ts';
import type { SourcedTable } from '../sourced-table.ts';
import { ENGLISH_2020, MOORE_2010, MOORE_2014, MOORE_2015, PLOUTZ_SNYDER_2018, SCOTT_2023 } from '../sources.ts';

/** What long flight and bed rest did to aerobic capacity, as published. */

export interface CapacityChange {
  readonly people: number | null;
  readonly when: string;
  /** Change of the maximal uptake, or of the index where it says so [%]; null where only words were printed. */
  readonly percent: number | null;
  readonly says: string;
  readonly source: Source;
}

export const CAPACITY_CHANGES: SourcedTable<CapacityChange> = {
  record: {
    id: 'capacity-index/changes',
    revision: 1,
    title: 'Changes of aerobic capacity in and after long flight, as published',
    source: MOORE_2014,
    restsOn: [MOORE_2010, MOORE_2015, ENGLISH_2020, SCOTT_2023, PLOUTZ_SNYDER_2018],
    doesNotKnow:
      'This person: half of fourteen reached their value from before at some time in flight or just after landing, the others never. Day-by-day spreads were not seen.',
  },
  columns: [
    { name: 'people', unit: '' },
    { name: 'when', unit: '' },
    { name: 'change', unit: '%' },
    { name: 'in words', unit: '' },
    { name: 'source', unit: '' },
  ],
  rows: [
    {
      people: 14,
      when: 'flight day 15',
      percent: -17,
      says: 'Then a slow rise that never came back to the value before flight. Peak heart rate did not move.',
      source: MOORE_2014,
    },
    {
      people: 14,
      when: '30 days after landing',
      percent: null,
      says: 'Recovered; low at 1 and 10 days.',
      source: MOORE_2014,
    },
    {
      people: 5,
      when: '1 or 2 days after landing',
      percent: -11.7,
      says: '2.98 to 2.63 L/min; 245 to 210 W.',
      source: MOORE_2010,
    },
    { people: 5, when: '10 days after landing', percent: -4, says: '2.86 L/min; 240 W.', source: MOORE_2010 },
    {
      people: 37,
      when: 'flights of 48 to 219 days',
      percent: null,
      says: 'The index fell, rose with the days, was low at 5 days after landing and above the value before by 30.',
      source: MOORE_2015,
    },
    {
      people: 26,
      when: 'before against after',
      percent: -6.1,
      says: 'Both programmes together.',
      source: ENGLISH_2020,
    },
    {
      people: 46,
      when: 'before against after, 178 days',
      percent: null,
      says: 'Over all systems from −30 to +5 %; up to 17 % of people would be limited in what they can do.',
      source: SCOTT_2023,
    },
    {
      people: null,
      when: 'each day of bed rest without exercise',
      percent: -0.35,
      says: 'A review’s figure; thigh and calf lose about 0.4 % of their area a day.',
      source: PLOUTZ_SNYDER_2018,
    },
  ],
  cells: ({ people, when, percent, says, source }) => [
    people,
    when,
    percent,
    says,
    source.text.split(' (')[0] ?? source.text,
  ],
};
