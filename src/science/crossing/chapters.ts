import type { Part } from '../chapter.ts';
import { axialExcess, axialLoadInFlight, axialLoadOnGround, shoulderExcess } from './axial-load.ts';
import { deliveredLoad, loadToCommand } from './calibration.ts';
import {
  axialChecks,
  calibrationChecks,
  commonPracticeChecks,
  crossingChecks,
  rampChecks,
  readingChecks,
} from './crossing.checks.ts';
import {
  barEquivalent,
  barOfFraction,
  barPart,
  bodyWeightAdded,
  cappedOff,
  evidenceFloor,
  fractionOfBar,
  machineTarget,
  programmeFractionOf,
  trueFraction,
} from './crossing.ts';
import {
  barFractionOfSystemFraction,
  differenceOfReadings,
  machineLoadByBar,
  machineLoadBySystem,
  systemFractionOfBarFraction,
} from './percent-of-system.ts';

export const CROSSING: Part = {
  heading: 'The crossing',
  says: 'Between a bar in 1 g and the pull of a machine weightless.',
  chapters: [
    {
      heading: 'Bar and machine',
      says: 'From a bar in 1 g to the pull of a machine weightless, and back.',
      formulas: [
        barOfFraction,
        fractionOfBar,
        barPart,
        bodyWeightAdded,
        machineTarget,
        cappedOff,
        barEquivalent,
        trueFraction,
        programmeFractionOf,
        evidenceFloor,
      ],
      checks: [...crossingChecks, ...rampChecks, ...commonPracticeChecks],
    },
    {
      heading: 'Two readings of a percent',
      says: 'Of the bar, or of bar and share together.',
      formulas: [
        machineLoadByBar,
        machineLoadBySystem,
        differenceOfReadings,
        barFractionOfSystemFraction,
        systemFractionOfBarFraction,
      ],
      checks: readingChecks,
    },
    {
      heading: 'Where the load is carried',
      says: 'Level by level, in 1 g and weightless.',
      formulas: [axialLoadOnGround, axialLoadInFlight, axialExcess, shoulderExcess],
      checks: axialChecks,
    },
    {
      heading: 'What a machine delivers',
      says: 'From the load that is set to the load that is pulled.',
      formulas: [deliveredLoad, loadToCommand],
      checks: calibrationChecks,
    },
  ],
};
