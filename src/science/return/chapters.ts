import type { Part } from '../chapter.ts';
import { gateItems } from './gate-items.table.ts';
import { gateChecks, probabilityChecks } from './gate.checks.ts';
import { latestTestRule } from './latest-test-rule.ts';
import { lastTestsOverLine, probabilityOfMean } from './probability-over-line.ts';
import { recoveryConstants } from './recovery-constants.table.ts';
import {
  recoveredLevel,
  timeConstantOfHalfLife,
  timeConstantOfLogTime,
  timeConstantOfTwo,
  timeToLevel,
} from './recovery-curve.ts';
import { recoveryForecast } from './recovery-forecast.ts';
import { higherBetterScore, lowerBetterScore, sidesAgainstThemselves, symmetryScore } from './recovery-score.ts';
import { curveChecks, forecastChecks } from './recovery.checks.ts';
import { balanceChecks, scoreChecks, standChecks } from './scores.checks.ts';
import { stageGate } from './stage-gate.ts';
import { stageRegression } from './stage-regression.ts';
import { redFlags, returnStages } from './stages.table.ts';
import { standTestLimits } from './stand-test-limits.ts';
import { standTest } from './stand-test.ts';
import { equilibriumScore, standingBalance } from './standing-balance.ts';

export const RETURN: Part = {
  heading: 'Return',
  says: 'From landing to full function: what is measured, what opens the next stage, and when it is likely to.',
  chapters: [
    {
      heading: 'Standing balance, six conditions',
      says: 'Eyes open or closed, a still or moving surround, a firm or moving floor: each trial scored by how far the body swayed.',
      formulas: [equilibriumScore],
      methods: [standingBalance],
      checks: balanceChecks,
    },
    {
      heading: 'Stand test',
      says: 'Five minutes lying, ten standing: normal or not, with the reasons. Yes or no on purpose, never a probability.',
      methods: [standTest],
      tables: [standTestLimits],
      checks: standChecks,
    },
    {
      heading: 'Recovery scores and symmetry',
      says: 'Each test as percent of the same person before flight; each side against itself as well as against the other.',
      formulas: [higherBetterScore, lowerBetterScore, symmetryScore],
      methods: [sidesAgainstThemselves],
      checks: scoreChecks,
    },
    {
      heading: 'How sure a line is passed',
      says: 'A test is noisy. The last two or three together say how probable it is that the true value is over the line.',
      formulas: [probabilityOfMean],
      methods: [lastTestsOverLine],
      checks: probabilityChecks,
    },
    {
      heading: 'Stages and gates',
      says: 'What each stage leaves out, what its gate asks for, and what blocks. All lines are our own practice defaults; the physician’s release is always separate.',
      methods: [stageGate, stageRegression, latestTestRule],
      tables: [returnStages, gateItems, redFlags],
      checks: gateChecks,
    },
    {
      heading: 'Recovery curves and their time constants',
      says: 'A loss that shrinks by the same share each day, and what published figures say of how fast.',
      formulas: [recoveredLevel, timeToLevel, timeConstantOfTwo, timeConstantOfLogTime, timeConstantOfHalfLife],
      tables: [recoveryConstants],
      checks: curveChecks,
    },
    {
      heading: 'Forecast of a recovery',
      says: 'The published constant is where the belief starts; the person’s own tests move it. A range, never a promise.',
      methods: [recoveryForecast],
      checks: forecastChecks,
    },
  ],
};
