import { acuteChronic, averageWeight, couplingCorrelation, loadRatio } from './acute-chronic.ts';
import type { Part } from '../chapter.ts';
import { loadCritique } from './critique.table.ts';
import { impulseOfMan, impulseOfWoman, thresholdImpulse, zoneImpulse } from './heart-rate-impulse.ts';
import { holdOut } from './hold-out.ts';
import { daysToBaseline, daysToPeak, impulseResponse } from './impulse-response.ts';
import { impulseResponseFit } from './impulse-response-fit.ts';
import {
  impulseChecks,
  questionnaireChecks,
  ratioChecks,
  sessionChecks,
  volumeChecks,
  weekChecks,
} from './load.checks.ts';
import { courseChecks, doseChecks, fitChecks } from './models.checks.ts';
import { questionnaireDeviation, questionnaireSum } from './questionnaire.ts';
import { dayLoad, sessionLoad } from './session-load.ts';
import { steadyChange, steadyOptimum, variableDose } from './variable-dose.ts';
import { volumeLoad } from './volume-load.ts';
import { weeklyLoad } from './weekly-load.ts';
import { zoneMinutes } from './zone-minutes.ts';

export const LOAD: Part = {
  heading: 'Training load (Evidence only: no working screen uses it)',
  says: 'Scores of load that a specialist will be asked about. They are computed and explained here, each with what is published against it. None proposes, raises, lowers or stops anything in this product.',
  chapters: [
    {
      heading: 'Session and day',
      says: 'How hard times how long. A number of one person, not to be compared with another’s or with a heart-rate score.',
      formulas: [sessionLoad],
      methods: [dayLoad],
      tables: [loadCritique],
      checks: sessionChecks,
    },
    {
      heading: 'Week: load, monotony, strain',
      says: 'How much, how much the same, and both together. High monotony is a reason to look, no alarm, and rests on one standard deviation or another.',
      methods: [weeklyLoad],
      checks: weekChecks,
    },
    {
      heading: 'Training impulse from heart rate',
      says: 'Three authors weigh hard minutes in three ways; the weights of two of them rest on no measurement. Heart rate shifts in weightlessness.',
      formulas: [impulseOfMan, impulseOfWoman, zoneImpulse, thresholdImpulse],
      methods: [zoneMinutes],
      checks: impulseChecks,
    },
    {
      heading: 'Volume load',
      says: 'Sets times repetitions times load, for each machine by itself: kilograms of two machines are not one thing.',
      methods: [volumeLoad],
      checks: volumeChecks,
    },
    {
      heading: 'Acute and chronic load',
      says: 'The ratio does not predict injury: with a constant or random numbers below the line the odds are much the same, and half of its correlation is arithmetic. One rest day moves it from 1.14 to 0.92. Never across a launch or a landing.',
      formulas: [loadRatio, averageWeight, couplingCorrelation],
      methods: [acuteChronic],
      checks: ratioChecks,
    },
    {
      heading: 'Gain and fatigue',
      says: 'A model that every course teaches, and whose constants no series of tests pins down: wrong ones fit better than the true ones below. Published work finds that its fatigue hardly helps to foretell.',
      formulas: [daysToBaseline, daysToPeak],
      methods: [impulseResponse],
      checks: courseChecks,
    },
    {
      heading: 'Gain and fatigue, fitted',
      says: 'Invented tests of a known person: 329 of 867 pairs of time constants fit as well as the best, and the best is wrong. So the region is shown, never a pair.',
      methods: [impulseResponseFit, holdOut],
      checks: fitChecks,
    },
    {
      heading: 'Variable dose',
      says: 'Fatigue that grows with the load turns more into less. Six untrained people; the best load is a property of the model.',
      formulas: [steadyChange, steadyOptimum],
      methods: [variableDose],
      checks: doseChecks,
    },
    {
      heading: 'Daily questions',
      says: 'The product asks no daily form and acts on no such sum; measured sleep on long flights would set it off every second day.',
      formulas: [questionnaireSum],
      methods: [questionnaireDeviation],
      checks: questionnaireChecks,
    },
  ],
};
