import type { Part } from '../chapter.ts';
import { levelModelChecks, sessionChecks, transferChecks, trendModelChecks } from './estimation.checks.ts';
import { filterLocalLevel, smoothLocalLevel } from './local-level.ts';
import { filterLocalTrend, smoothLocalTrend } from './local-trend.ts';
import { machineTransfer } from './machine-transfer.ts';
import { sessionObservation } from './session-observation.ts';

export const ESTIMATION: Part = {
  heading: 'Capacity over time',
  says: 'A level that drifts, seen through noisy readings.',
  chapters: [
    {
      heading: 'What one session says',
      says: 'Sets of a day share the error of the day.',
      methods: [sessionObservation],
      checks: sessionChecks,
    },
    {
      heading: 'A level over time',
      says: 'The filter that loads are made from, and its smoother.',
      methods: [filterLocalLevel, smoothLocalLevel],
      checks: levelModelChecks,
    },
    {
      heading: 'A level with a trend',
      says: 'For the plot of the history only.',
      methods: [filterLocalTrend, smoothLocalTrend],
      checks: trendModelChecks,
    },
    {
      heading: 'From one machine to another',
      says: 'What a person’s lifts on both say of the machines.',
      methods: [machineTransfer],
      checks: transferChecks,
    },
  ],
};
