import { shownTable, type SourcedTable } from '../sourced-table.ts';
import { COMMON_PRACTICE, OUR_OWN_DESIGN } from '../sources.ts';
import { RECONDITIONING_2011 } from './sources.ts';

/** The stages of the return and what each leaves out; and what shuts every gate. */

export interface ReturnStage {
  readonly stage: 1 | 2 | 3;
  readonly work: string;
  readonly leavesOut: readonly string[];
}

export const RETURN_STAGES: readonly ReturnStage[] = [
  {
    stage: 1,
    work: 'from landing: walking, flexibility, light strength',
    leavesOut: [
      'standing balance without a spotter',
      'fast movements of the head under load',
      'the free barbell',
      'jumping',
    ],
  },
  {
    stage: 2,
    work: 'balance and position sense, endurance',
    leavesOut: [
      'single maximal lifts',
      'work overhead without a spotter',
      'running, before agility is over 80 % and the stand test normal',
    ],
  },
  { stage: 3, work: 'the longest: function up to the duties of the role', leavesOut: [] },
];

const stagesTable: SourcedTable<ReturnStage> = {
  record: {
    id: 'return/stages',
    revision: 1,
    title: 'Stages of the return and what each leaves out',
    source: COMMON_PRACTICE,
    restsOn: [RECONDITIONING_2011],
    doesNotKnow:
      'The physician’s ceiling by date, which goes before every stage. What is left out is practice, editable, and no study compared it with anything.',
  },
  columns: [
    { name: 'stage', unit: '' },
    { name: 'work', unit: '' },
    { name: 'leaves out', unit: '' },
  ],
  rows: RETURN_STAGES,
  cells: ({ stage, work, leavesOut }) => [stage, work, leavesOut.join('; ') || 'nothing by rule'],
};

export const returnStages = shownTable(stagesTable);

export const RED_FLAGS: readonly string[] = [
  'near fainting',
  'a fall',
  'pain of 5 or more of 10',
  'a new headache or change of vision',
  'a new neurological sign',
];

const flagsTable: SourcedTable<string> = {
  record: {
    id: 'return/red-flags',
    revision: 1,
    title: 'Red flags of the return, within 48 hours',
    source: COMMON_PRACTICE,
    restsOn: [OUR_OWN_DESIGN],
    doesNotKnow:
      'What the physician would add or take away. A red flag is for the physician first, and for a gate second.',
  },
  columns: [{ name: 'red flag', unit: '' }],
  rows: RED_FLAGS,
  cells: (flag) => [flag],
};

export const redFlags = shownTable(flagsTable);
