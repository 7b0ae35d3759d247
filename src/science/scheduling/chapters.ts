import type { Part } from '../chapter.ts';
import { shownTable } from '../sourced-table.ts';
import { CONCURRENT_EFFECTS, SEPARATION_FINDINGS } from './concurrent-effects.table.ts';
import { concurrentShare, costOfGap, interferenceCost } from './interference-cost.ts';
import { interferenceChecks, timingChecks } from './scheduling.checks.ts';
import { SCHEDULING_RULES } from './scheduling-rules.table.ts';
import { timingBreaches } from './timing-breaches.ts';

export const SCHEDULING: Part = {
  heading: 'Where a session stands',
  says: 'In the day and the week, and beside the other sessions of a person.',
  chapters: [
    {
      heading: 'Rules of the day and the week',
      says: 'What must hold and what costs, each with how well it is known.',
      methods: [timingBreaches],
      tables: [shownTable(SCHEDULING_RULES)],
      checks: timingChecks,
    },
    {
      heading: 'Strength and endurance together',
      says: 'What was found, and the costs that a planner adds up from it.',
      formulas: [concurrentShare, costOfGap],
      methods: [interferenceCost],
      tables: [shownTable(CONCURRENT_EFFECTS), shownTable(SEPARATION_FINDINGS)],
      checks: interferenceChecks,
    },
  ],
};
