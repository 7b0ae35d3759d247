import type { Part } from '../chapter.ts';
import { shownTable } from '../sourced-table.ts';
import { coverage, coverageOfPlan } from './coverage.ts';
import { OLDER_RESUME_RULE } from './older-resume-rule.table.ts';
import { firstLoadBack, resumeAfterMissed } from './resume-after-missed.ts';
import { coverageChecks, resumeChecks } from './resuming.checks.ts';
import { FALLBACKS, SUBSTITUTES, WEEK_PRIORITIES } from './substitutes.table.ts';

export const RESUMING: Part = {
  heading: 'Sessions missed and machines out',
  says: 'How to begin again, and what stands in meanwhile.',
  chapters: [
    {
      heading: 'Beginning again',
      says: 'By why it was missed, along one curve.',
      formulas: [firstLoadBack],
      methods: [resumeAfterMissed],
      tables: [shownTable(OLDER_RESUME_RULE), shownTable(WEEK_PRIORITIES)],
      checks: resumeChecks,
    },
    {
      heading: 'Substitutes',
      says: 'What they cover, quality by quality, and what stays uncovered.',
      formulas: [coverage],
      methods: [coverageOfPlan],
      tables: [shownTable(SUBSTITUTES), shownTable(FALLBACKS)],
      checks: coverageChecks,
    },
  ],
};
