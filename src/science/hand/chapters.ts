import { byIdentity, type Part } from '../chapter.ts';
import { shownTable } from '../sourced-table.ts';
import { simulateCompartments } from './compartment-simulation.ts';
import { enduranceBand } from './endurance-band.ts';
import { ENDURANCE_AUTHORS } from './endurance-time.ts';
import { fatigueConstants } from './fatigue-constants.table.ts';
import { gloveFactorByHandSize, gloveFactorByPressure, relativeLoad, suitedMaximum } from './glove-factor.ts';
import { gloveLosses, handSizeLosses, suitedTrainingComplaints } from './glove.table.ts';
import { enduranceChecks, gloveChecks, normChecks } from './grip.checks.ts';
import { gripLandmarks, gripNorms } from './grip-norms.table.ts';
import { gripScore, gripStandardScore } from './grip-score.ts';
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
  ],
};
