import { byIdentity, type Part } from '../chapter.ts';
import { shownTable } from '../sourced-table.ts';
import { compareCriticalForces, scoreAllOutTest } from './all-out-test.ts';
import { simulateCompartments } from './compartment-simulation.ts';
import { criticalForceChange, planningCriticalForce } from './critical-force.ts';
import { enduranceBand } from './endurance-band.ts';
import { ENDURANCE_AUTHORS } from './endurance-time.ts';
import { fatigueConstants } from './fatigue-constants.table.ts';
import { gloveFactorByHandSize, gloveFactorByPressure, relativeLoad, suitedMaximum } from './glove-factor.ts';
import { gloveLosses, handSizeLosses, suitedTrainingComplaints } from './glove.table.ts';
import { enduranceChecks, gloveChecks, normChecks } from './grip.checks.ts';
import { gripLandmarks, gripNorms } from './grip-norms.table.ts';
import { gripScore, gripStandardScore } from './grip-score.ts';
import { handTraining, shoulderTraining } from './hand-training.table.ts';
import { greatestHourMean } from './hour-mean.ts';
import { balanceImpulse, impulseAfterEase, impulseAfterWork } from './impulse-balance.ts';
import { marchHand } from './march.ts';
import { allOutChecks, constantChecks } from './personal-constants.checks.ts';
import { constantsFromCurve, constantsFromSummary } from './personal-constants.ts';
import { partOfForce } from './part-of-force.ts';
import { personalFatigueRate, personalRecoveryRate, timeConstantOfTest } from './personal-rates.ts';
import { criticalForceFindings } from './reliability.table.ts';
import { rotationRatio, screenShoulders, sideDifference } from './shoulder.ts';
import { marchChecks, marginChecks, practiceChecks, shoulderChecks } from './space-walk.checks.ts';
import { spaceWalkMargin } from './space-walk-margin.ts';
import { spaceWalkRulesBefore } from './spacewalk-rules-before.ts';
import { spaceWalkRules } from './spacewalk-rules.table.ts';
import { suitedGrip } from './suited-grip.ts';
import { closedFormChecks, fullEquationChecks } from './three-compartments.checks.ts';
import * as compartments from './three-compartments.ts';
import { sustainedEndurance, workPhase } from './work-phases.ts';

export const HAND: Part = {
  heading: 'The hand in a suit',
  says: 'What a pressurised glove leaves, how long it can be used, and what is left at the end. Nothing here was validated on suited crews.',
  chapters: [
    {
      heading: 'What the glove takes',
      says: 'Grip left in a pressurised glove. A maximum measured in the suit replaces all of it.',
      formulas: [gloveFactorByPressure, gloveFactorByHandSize, suitedMaximum, relativeLoad],
      methods: [suitedGrip],
      tables: [shownTable(gloveLosses), shownTable(handSizeLosses), shownTable(suitedTrainingComplaints)],
      checks: gloveChecks,
    },
    {
      heading: 'Grip among other people',
      says: 'Norms of bare hands, with how they were tested.',
      formulas: [gripStandardScore],
      methods: [gripScore],
      tables: [shownTable(gripNorms), shownTable(gripLandmarks)],
      checks: normChecks,
    },
    {
      heading: 'How long a grip is held',
      says: 'Four authors; the spread between them is the uncertainty of any.',
      formulas: ENDURANCE_AUTHORS,
      methods: [enduranceBand],
      checks: enduranceChecks,
    },
    {
      heading: 'Three compartments',
      says: 'Muscle that rests, works or is tired: closed forms for work, its failure and rest.',
      formulas: byIdentity(compartments),
      methods: [sustainedEndurance, workPhase],
      tables: [shownTable(fatigueConstants)],
      checks: closedFormChecks,
    },
    {
      heading: 'Three compartments, the full equations',
      says: 'Step by step, with the controller: what the closed forms are held to.',
      methods: [simulateCompartments],
      checks: fullEquationChecks,
    },
    {
      heading: 'Critical force of a hand',
      says: 'The force that can be repeated, from an all-out test, and how far such a test can be believed.',
      formulas: [planningCriticalForce, criticalForceChange, partOfForce],
      methods: [scoreAllOutTest, compareCriticalForces],
      tables: [shownTable(criticalForceFindings)],
      checks: allOutChecks,
    },
    {
      heading: 'One person’s constants',
      says: 'Rates of fatigue and recovery of one hand, from every contraction of its test or from a summary of it.',
      formulas: [timeConstantOfTest, personalFatigueRate, personalRecoveryRate],
      methods: [constantsFromCurve, constantsFromSummary],
      checks: constantChecks,
    },
    {
      heading: 'A hand through its tasks',
      says: 'Cycle by cycle, in closed form. Not validated on suited crews.',
      methods: [marchHand],
      checks: marchChecks,
    },
    {
      heading: 'What is left, with its band and two doubts',
      says: 'The margin goes to the specialist only. A second model and a limit of an hour say where it may be wrong.',
      formulas: [impulseAfterWork, impulseAfterEase],
      methods: [spaceWalkMargin, balanceImpulse, greatestHourMean],
      checks: marginChecks,
    },
    {
      heading: 'Before and after a space walk',
      says: 'What the trade does; no model stands behind it.',
      methods: [spaceWalkRulesBefore],
      tables: [shownTable(spaceWalkRules), shownTable(handTraining)],
      checks: practiceChecks,
    },
    {
      heading: 'The shoulder in a suit',
      says: 'Screening and training, borrowed from throwing.',
      formulas: [rotationRatio, sideDifference],
      methods: [screenShoulders],
      tables: [shownTable(shoulderTraining)],
      checks: shoulderChecks,
    },
  ],
};
