import type { Part } from '../chapter.ts';
import { shownTable } from '../sourced-table.ts';
import { gainChecks, lossChecks, pauseChecks, recoveryChecks } from './adaptation.checks.ts';
import { percentChange, sdOfStandardError } from './change.ts';
import { DEFAULT_HALF_LIVES } from './default-half-lives.table.ts';
import {
  EXPECTED_LOSSES,
  FIRST_WEEKS,
  READINESS_THRESHOLDS,
  RESISTIVE_PRESCRIPTIONS,
} from './flight-practice.table.ts';
import { PROGRESSION_RULES, RATES_OF_GAIN } from './gain.table.ts';
import { strengthOfMinimalDose, weeklyGain } from './gain.ts';
import { ISOKINETIC_CHANGES } from './isokinetic-change.table.ts';
import { EASING, LEAST_DOSE, STOPPING } from './keeping.table.ts';
import { BED_REST_LOSSES, FLIGHT_LOSSES, ONE_LEG_LOSSES } from './losses.table.ts';
import {
  kneeExtensorLoss,
  longestPauseCarried,
  longestPauseUnloaded,
  oxygenUptakeLost,
  strengthByRuleOfThumb,
  strengthCarried,
  strengthUnloaded,
} from './pause.ts';
import { remainingStrength } from './remaining-strength.ts';

export const ADAPTATION: Part = {
  heading: 'Gaining, keeping and losing strength',
  says: 'What training brings, what a pause costs, what a flight took from others.',
  chapters: [
    {
      heading: 'Gains',
      says: 'Fast at first, then ever more slowly.',
      formulas: [strengthOfMinimalDose, weeklyGain],
      tables: [shownTable(RATES_OF_GAIN), shownTable(PROGRESSION_RULES)],
      checks: gainChecks,
    },
    {
      heading: 'Pauses',
      says: 'What is left after days without training, with a body to carry and without one.',
      formulas: [
        strengthCarried,
        longestPauseCarried,
        strengthUnloaded,
        longestPauseUnloaded,
        strengthByRuleOfThumb,
        kneeExtensorLoss,
        oxygenUptakeLost,
      ],
      methods: [remainingStrength],
      tables: [shownTable(STOPPING), shownTable(LEAST_DOSE), shownTable(EASING)],
      checks: pauseChecks,
    },
    {
      heading: 'Losses in flight and in bed',
      says: 'Who lost how much of what, after how long.',
      formulas: [percentChange, sdOfStandardError],
      tables: [
        shownTable(FLIGHT_LOSSES),
        shownTable(ISOKINETIC_CHANGES),
        shownTable(BED_REST_LOSSES),
        shownTable(ONE_LEG_LOSSES),
        shownTable(EXPECTED_LOSSES),
      ],
      checks: lossChecks,
    },
    {
      heading: 'Flights, and coming back from them',
      says: 'How long flights are trained for, and defaults for what returns.',
      tables: [
        shownTable(RESISTIVE_PRESCRIPTIONS),
        shownTable(FIRST_WEEKS),
        shownTable(DEFAULT_HALF_LIVES),
        shownTable(READINESS_THRESHOLDS),
      ],
      checks: recoveryChecks,
    },
  ],
};
