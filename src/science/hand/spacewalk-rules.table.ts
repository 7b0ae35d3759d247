import type { SourcedTable } from '../sourced-table.ts';
import { COMMON_PRACTICE } from '../sources.ts';
import { SHOULDER_MEMORANDUM_2003, STRAUSS_2005 } from './sources.ts';

/** What a programme does around a space walk. Data: whoever plans reads it. */
export interface SpaceWalkRule {
  readonly name: string;
  readonly when: 'before' | 'after';
  readonly says: string;
  /** What is left out or put off. */
  readonly spares: readonly (
    'new exercise' | 'heavy pulling' | 'heavy grip' | 'heavy overhead pressing' | 'hard work'
  )[];
  /** Hours before the start from which it must hold, and from which it had better; null after a walk, until it is done. */
  readonly hours: { readonly must: number; readonly better: number } | null;
}

export const spaceWalkRules: SourcedTable<SpaceWalkRule> = {
  record: {
    id: 'space-walk/rules',
    revision: 1,
    title: 'Rules around a space walk and suited training',
    source: COMMON_PRACTICE,
    restsOn: [STRAUSS_2005, SHOULDER_MEMORANDUM_2003],
    doesNotKnow:
      'Whether the hours are right: they are what the trade does, and editable. A physician’s limit and the crew’s timetable always win.',
  },
  columns: [
    { name: 'When', unit: '' },
    { name: 'Rule', unit: '' },
    { name: 'Must hold from', unit: 'h before' },
    { name: 'Better from', unit: 'h before' },
  ],
  rows: [
    {
      name: 'nothing new',
      when: 'before',
      says: 'No exercise that is new to the person.',
      spares: ['new exercise'],
      hours: { must: 48, better: 72 },
    },
    {
      name: 'rested grip',
      when: 'before',
      says: 'No heavy pulling and no heavy grip.',
      spares: ['heavy pulling', 'heavy grip'],
      hours: { must: 48, better: 72 },
    },
    {
      name: 'rested shoulders',
      when: 'before',
      says: 'No heavy pressing overhead, before suited training as well.',
      spares: ['heavy overhead pressing'],
      hours: { must: 72, better: 72 },
    },
    {
      name: 'light day',
      when: 'before',
      says: 'The day before is light.',
      spares: ['hard work'],
      hours: { must: 24, better: 24 },
    },
    {
      name: 'look first',
      when: 'after',
      says: 'Hands, nails, skin and shoulders are looked at before grip or pressing resumes.',
      spares: ['heavy grip', 'heavy overhead pressing'],
      hours: null,
    },
  ],
  cells: ({ when, says, hours }) => [when, says, hours?.must ?? null, hours?.better ?? null],
};
