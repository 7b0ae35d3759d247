import type { Part } from '../chapter.ts';
import { shownTable } from '../sourced-table.ts';
import { gateAfterPause } from './gate-after-pause.ts';
import { judgeSquatGate } from './judge-squat-gate.ts';
import { gateChecks } from './novice.checks.ts';
import { SQUAT_CRITERIA } from './squat-criteria.table.ts';
import { SQUAT_GATE_TABLE } from './squat-gates.table.ts';

export const NOVICE: Part = {
  heading: 'Who has never squatted',
  says: 'What is shown before a squat is loaded, and after weeks without.',
  chapters: [
    {
      heading: 'Squat gates',
      says: 'Passed by what somebody saw, never by time alone.',
      methods: [judgeSquatGate, gateAfterPause],
      tables: [shownTable(SQUAT_GATE_TABLE), shownTable(SQUAT_CRITERIA)],
      checks: gateChecks,
    },
  ],
};
