import type { Check } from './formula.ts';
import {
  postureChecks,
  squatInsideChecks,
  staticShareChecks,
  workShareChecks,
} from './body/body-weight-share.checks.ts';
import { momentChecks } from './body/moments.checks.ts';
import { segmentChecks } from './body/segments.checks.ts';
import { shareFormulaChecks } from './body/share-formulas.checks.ts';
import {
  axialChecks,
  calibrationChecks,
  commonPracticeChecks,
  crossingChecks,
  rampChecks,
  readingChecks,
} from './crossing/crossing.checks.ts';
import { levelModelChecks, trendModelChecks } from './estimation/estimation.checks.ts';
import {
  effortChecks,
  regressionChecks,
  repetitionMaximumChecks,
  spreadOfEstimateChecks,
} from './strength/estimate-spread.checks.ts';
import {
  percentTableChecks,
  repetitionTableChecks,
  reserveChecks,
  spreadChecks,
} from './strength/repetition-formulas.checks.ts';

/** Printed values and what the program gives for them, as chapters of the textbook. */
export interface CheckGroup {
  readonly title: string;
  readonly checks: readonly Check[];
}

export const CHECK_GROUPS: readonly CheckGroup[] = [
  { title: 'Repetition formulas: a load of 100 at eight numbers of repetitions', checks: repetitionTableChecks },
  { title: 'Percent of the maximum against repetitions', checks: percentTableChecks },
  { title: 'Sets with repetitions in reserve', checks: reserveChecks },
  { title: 'How far the formulas part', checks: spreadChecks },
  { title: 'Effort', checks: effortChecks },
  { title: 'Maxima of several repetitions', checks: repetitionMaximumChecks },
  { title: 'Standard deviation of one estimate', checks: spreadOfEstimateChecks },
  { title: 'Straight lines of single studies', checks: regressionChecks },
  { title: 'Body segments', checks: segmentChecks },
  { title: 'Static shares of body weight', checks: staticShareChecks },
  { title: 'Work-matched and joint-matched shares', checks: workShareChecks },
  { title: 'Cells of a share', checks: shareFormulaChecks },
  { title: 'Inside the parallel squat', checks: squatInsideChecks },
  { title: 'What posture does to the share', checks: postureChecks },
  { title: 'Moments at the bottom of the squat', checks: momentChecks },
  { title: 'The crossing', checks: crossingChecks },
  { title: 'The crossing up both ramps', checks: rampChecks },
  { title: 'Common practice', checks: commonPracticeChecks },
  { title: 'Two readings of a percent', checks: readingChecks },
  { title: 'Where the load is carried', checks: axialChecks },
  { title: 'Calibration', checks: calibrationChecks },
  { title: 'A level over time', checks: levelModelChecks },
  { title: 'A level with a trend', checks: trendModelChecks },
];

export const ALL_CHECKS: readonly Check[] = CHECK_GROUPS.flatMap(({ checks }) => checks);
