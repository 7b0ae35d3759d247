import type { Part } from '../chapter.ts';
import { levelModelChecks, trendModelChecks } from './estimation.checks.ts';

export const ESTIMATION: Part = {
  heading: 'Capacity over time',
  says: 'A level that drifts, seen through noisy readings.',
  chapters: [
    {
      heading: 'A level over time',
      says: 'The filter that loads are made from, and its smoother.',
      checks: levelModelChecks,
    },
    { heading: 'A level with a trend', says: 'For the plot of the history only.', checks: trendModelChecks },
  ],
};
