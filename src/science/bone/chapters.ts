import type { Part } from '../chapter.ts';
import { shownTable } from '../sourced-table.ts';
import { boneScore } from './bone-score.ts';
import { leastSignificantChange, precisionOfScans } from './dxa-precision.ts';
import { footForceLoad, groundFootForce, weightlessFootForce } from './foot-force.ts';
import {
  dailyStimulusChecks,
  floorChecks,
  footForceChecks,
  osteogenicChecks,
  restAndSaturationChecks,
} from './loading.checks.ts';
import { LOADING_FLOORS, weekAgainstFloors } from './loading-floors.ts';
import { dailyLoadStimulus, equalCycles, loadStimulusRatio } from './load-stimulus.ts';
import { recoveryChecks, saturatingChecks } from './loss.checks.ts';
import { BONE_AFTER_LANDING, MEASURED_LOSSES } from './loss-rates.table.ts';
import { precisionChecks, scoreChecks } from './measuring.checks.ts';
import { PUBLISHED_LOSSES } from './published-losses.table.ts';
import { osteogenicIndex, osteogenicWeek, sensitivityAfterRest } from './osteogenic-index.ts';
import { PRECISION_BETWEEN_TECHNOLOGISTS, WORST_ACCEPTABLE_PRECISION } from './precision.table.ts';
import { daysToRecover, remainingDeficit } from './recovery.ts';
import { RECOVERY_HALF_LIVES } from './recovery-half-lives.table.ts';
import { effectiveCycles, restAndSaturationStimulus } from './rest-and-saturation.ts';
import { fitPlateau, saturatingLoss } from './saturating-loss.ts';
import { acceptablePrecision, scanChange } from './scan-change.ts';
import { densityAtScore, scoreSd, standardScore } from './standard-score.ts';
import { YOUNG_ADULT_REFERENCE } from './young-adult-reference.table.ts';

export const BONE: Part = {
  heading: 'Bone',
  says: 'What a scan can show, what a week should load, and what flights took and landing gave back.',
  chapters: [
    {
      heading: 'Precision of scans',
      says: 'A change counts only where it is larger than what the scanner and its technologist make by themselves.',
      formulas: [leastSignificantChange],
      methods: [precisionOfScans, scanChange, acceptablePrecision],
      tables: [shownTable(WORST_ACCEPTABLE_PRECISION), shownTable(PRECISION_BETWEEN_TECHNOLOGISTS)],
      checks: precisionChecks,
    },
    {
      heading: 'T and Z scores',
      says: 'A score is half of a statement; the reference is the other half, and is kept with it.',
      formulas: [standardScore, densityAtScore, scoreSd],
      methods: [boneScore],
      tables: [shownTable(YOUNG_ADULT_REFERENCE)],
      checks: scoreChecks,
    },
    {
      heading: 'Floors of the week',
      says: 'Minutes, steps and heavy sets that a week should at least hold: all that the road looks at.',
      methods: [weekAgainstFloors],
      tables: [shownTable(LOADING_FLOORS)],
      checks: floorChecks,
    },
    {
      heading: 'Daily load stimulus',
      says: 'Force to a power times cycles, as published. Evidence only: no working screen shows it and no load is made from it.',
      formulas: [equalCycles],
      methods: [dailyLoadStimulus, loadStimulusRatio],
      checks: dailyStimulusChecks,
    },
    {
      heading: 'Osteogenic index',
      says: 'Cycles that saturate and rest that restores, from rodents. Evidence only.',
      formulas: [osteogenicIndex, sensitivityAfterRest],
      methods: [osteogenicWeek],
      checks: osteogenicChecks,
    },
    {
      heading: 'Rest-and-saturation load stimulus',
      says: 'Our own: both ideas in one number for a day. Evidence only.',
      formulas: [effectiveCycles],
      methods: [restAndSaturationStimulus],
      checks: restAndSaturationChecks,
    },
    {
      heading: 'Force under a foot',
      says: 'Why the weight that a body has lost must be replaced, seen from the foot.',
      formulas: [weightlessFootForce, groundFootForce, footForceLoad],
      checks: footForceChecks,
    },
    {
      heading: 'Loss in flight',
      says: 'What was measured, and a line through it that nobody should follow far.',
      formulas: [saturatingLoss],
      methods: [fitPlateau],
      tables: [shownTable(MEASURED_LOSSES), shownTable(PUBLISHED_LOSSES)],
      checks: saturatingChecks,
    },
    {
      heading: 'Recovery after landing',
      says: 'Half of the deficit in each half-life, for density; strength takes longer.',
      formulas: [remainingDeficit, daysToRecover],
      tables: [shownTable(RECOVERY_HALF_LIVES), shownTable(BONE_AFTER_LANDING)],
      checks: recoveryChecks,
    },
  ],
};
