import type { Part } from '../chapter.ts';
import { normalCdf, normalDensity, normalQuantile } from '../numeric/normal.ts';
import { normalChecks } from '../numeric/normal.checks.ts';

export const STANDARDS: Part = {
  heading: 'Standard rules',
  says: 'Limits that somebody else set, and how a measured value is held against them.',
  chapters: [
    {
      heading: 'Probabilities of a normal value',
      says: 'What every interval and every probability of this program is read from.',
      formulas: [normalDensity, normalCdf, normalQuantile],
      checks: normalChecks,
    },
  ],
};
