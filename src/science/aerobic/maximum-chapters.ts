import type { Chapter } from '../chapter.ts';
import { ownSettingChecks } from './bout-settings.checks.ts';
import { SECOND_STAGES } from './cycle-stages.table.ts';
import { cyclePower, handbookPowerForFraction } from './cycle-workload.ts';
import {
  fieldChecks,
  knownMaximumChecks,
  lineChecks,
  personalChecks,
  singleStageChecks,
  stagedChecks,
} from './estimates.checks.ts';
import { ESTIMATOR_SPREAD } from './estimator-spread.table.ts';
import { knownMaximum } from './known-maximum.ts';
import {
  powerAtRate,
  powerAtUptake,
  speedAtRate,
  speedAtUptake,
  speedOfStageReserve,
  speedOfStageUptake,
} from './own-settings.ts';
import { ownHeartRateAtPower, ownPowerForFraction } from './personal-lines.ts';
import {
  mileAndAHalf,
  mileAndAHalfGeorge,
  shuttleRun,
  shuttleRunAdult,
  shuttleSpeed,
  twelveMinuteRun,
} from './run-tests.ts';
import { singleStageEstimate, singleStageFactor } from './single-stage-estimate.ts';
import { AGE_FACTOR_TABLE, MAXIMAL_RATE_FACTOR_TABLE } from './single-stage-factors.table.ts';
import { chartUptake, singleStageMan, singleStageWoman } from './single-stage.ts';
import { stagedEstimate, twoPointEstimate } from './staged-estimate.ts';
import { lineOfLeastSquares } from './line-through-stages.ts';
import { mileWalk, mileWalkFlow } from './mile-walk.ts';
import { shownTable } from '../sourced-table.ts';

/** How much oxygen a person can take up, and the watts that follow from it. */
export const MAXIMUM_CHAPTERS: readonly Chapter[] = [
  {
    heading: 'A straight line through stages',
    says: 'Least squares, how sure the line is, and how sure one more reading on it.',
    methods: [lineOfLeastSquares],
    checks: lineChecks,
  },
  {
    heading: 'Maximal uptake from a cycle test in stages',
    says: 'A line through stages, read at the maximal heart rate.',
    methods: [twoPointEstimate, stagedEstimate],
    tables: [shownTable(SECOND_STAGES)],
    checks: stagedChecks,
  },
  {
    heading: 'Maximal uptake from a single stage',
    says: 'The chart of 1954 in algebra, with one factor: for the age, or for a known maximal heart rate.',
    formulas: [chartUptake, singleStageMan, singleStageWoman],
    methods: [singleStageFactor, singleStageEstimate],
    tables: [shownTable(AGE_FACTOR_TABLE), shownTable(MAXIMAL_RATE_FACTOR_TABLE)],
    checks: singleStageChecks,
  },
  {
    heading: 'Maximal uptake from a walk or a run',
    says: 'Field tests, each with how far it was off in those it was made from.',
    formulas: [
      mileWalk,
      mileWalkFlow,
      mileAndAHalf,
      mileAndAHalfGeorge,
      twelveMinuteRun,
      shuttleSpeed,
      shuttleRun,
      shuttleRunAdult,
    ],
    checks: fieldChecks,
  },
  {
    heading: 'One maximal uptake of several',
    says: 'Measured before computed, and the surest of what was computed.',
    methods: [knownMaximum],
    tables: [shownTable(ESTIMATOR_SPREAD)],
    checks: knownMaximumChecks,
  },
  {
    heading: 'Watts and heart rate of this person',
    says: 'The person’s own lines before the handbook’s, which leaves its range above 200 W.',
    formulas: [handbookPowerForFraction],
    methods: [ownPowerForFraction, ownHeartRateAtPower, cyclePower],
    checks: personalChecks,
  },
  {
    heading: 'Settings of this person',
    says: "Read off the person's own stages: by a line through three or more, in proportion from fewer.",
    formulas: [powerAtUptake, powerAtRate, speedAtUptake, speedAtRate, speedOfStageUptake, speedOfStageReserve],
    checks: ownSettingChecks,
  },
];
