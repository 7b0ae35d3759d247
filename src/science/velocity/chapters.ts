import type { Part } from '../chapter.ts';
import { shownTable } from '../sourced-table.ts';
import {
  loadOfVelocity,
  standardErrorOfLoad,
  standardErrorWithThreshold,
  velocityOfLoad,
} from './load-velocity-line.ts';
import { lineChecks, profileChecks } from './load-velocity.checks.ts';
import { loadVelocityProfile, oneRepMaxOfVelocity } from './load-velocity.ts';
import { MINIMAL_VELOCITIES, PUBLISHED_ACCURACY } from './minimal-velocity.table.ts';

export const VELOCITY: Part = {
  heading: 'Load and velocity',
  says: 'A maximum from lighter sets, lifted in 1 g as fast as possible.',
  chapters: [
    {
      heading: 'The line',
      says: 'Velocity falls in a straight line as the load grows.',
      formulas: [velocityOfLoad, loadOfVelocity, standardErrorOfLoad, standardErrorWithThreshold],
      checks: lineChecks,
    },
    {
      heading: 'The line through somebody’s sets',
      says: 'Fitted by least squares, read at the velocity of a last repetition.',
      methods: [loadVelocityProfile, oneRepMaxOfVelocity],
      tables: [shownTable(MINIMAL_VELOCITIES), shownTable(PUBLISHED_ACCURACY)],
      checks: profileChecks,
    },
  ],
};
