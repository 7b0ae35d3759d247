import type { Part } from '../chapter.ts';
import { normalChecks } from '../numeric/normal.checks.ts';
import { normalCdf, normalDensity, normalQuantile } from '../numeric/normal.ts';
import { shownTable } from '../sourced-table.ts';
import { chanceAtLeast, chanceAtLeastOfLog } from './chance.ts';
import { chanceOfMeeting } from './chance-of-meeting.ts';
import { HEEL_RAISE_NORM } from './heel-raise-norm.table.ts';
import { judgeMeasured } from './judge-measured.ts';
import { BASELINE_TABLE, LATER_TABLE } from './profiles.table.ts';
import { chanceChecks, ruleChecks } from './standards.checks.ts';

export const STANDARDS: Part = {
  heading: 'Standard rules',
  says: 'Limits that somebody else set, and how a value is held against them. What follows from it a physician decides.',
  chapters: [
    {
      heading: 'Rules',
      says: 'Two issues of one standard, cited by number. Bone limits of the first were seen in the document; the rest waits for somebody who has it.',
      methods: [judgeMeasured],
      tables: [shownTable(BASELINE_TABLE), shownTable(LATER_TABLE), shownTable(HEEL_RAISE_NORM)],
      checks: ruleChecks,
    },
    {
      heading: 'Probability of meeting a rule',
      says: 'Given only against a rule that somebody has held against its document.',
      formulas: [chanceAtLeast, chanceAtLeastOfLog],
      methods: [chanceOfMeeting],
      checks: chanceChecks,
    },
    {
      heading: 'Probabilities of a normal value',
      says: 'What every interval and every probability of this program is read from.',
      formulas: [normalDensity, normalCdf, normalQuantile],
      checks: normalChecks,
    },
  ],
};
