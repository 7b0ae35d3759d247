import type { Chapter } from '../chapter.ts';
import {
  armPower,
  legPower,
  peakUptakeOfPeakPower,
  uptakeOfArmCycling,
  uptakeOfArmWork,
  uptakeOfLegCycling,
  uptakeOfLegWork,
  workRateOfPower,
} from './cycling.ts';
import { energyOfBout, energyOfGasExchange, energyRate, energyRateOfEquivalents } from './energy.ts';
import { costChecks, energyChecks } from './metabolic.checks.ts';
import { stepRate, uptakeOfStepping } from './stepping.ts';
import { treadmillSpeed, treadmillUptake } from './treadmill.ts';
import { flowOfUptake, grossUptake, metabolicEquivalents, netUptake, uptakeOfFlow } from './uptake-units.ts';
import { runningSpeed, uptakeOfRunning, uptakeOfWalking, walkingSpeed } from './walking-and-running.ts';
import { maximalRateChecks, regressionChecks, reserveChecks, zoneChecks } from './effort.checks.ts';
import {
  maximalRateGellish,
  maximalRateGellishCurved,
  maximalRateGellishUnrounded,
  maximalRateTanaka,
} from './maximal-rate-of-age.ts';
import {
  heartRateReserveCycling,
  heartRateReserveCyclingOfReserve,
  heartRateReserveTreadmill,
  heartRateReserveTreadmillOfReserve,
  maximalRateReached,
} from './intensity-lines.ts';
import { boutTargetChecks } from './bout-settings.checks.ts';
import { highestBeat, lowestBeat, rateOfGreatest, uptakeOfGreatest } from './bout-targets.ts';
import { intensityZone } from './intensity-zone.ts';
import { INTENSITY_ZONES } from './intensity-zones.table.ts';
import { personalMaximalRate } from './personal-maximal-rate.ts';
import {
  expectedHeartRate,
  expectedUptake,
  heartRateReserve,
  reserveOfMaximumFraction,
  targetHeartRate,
  targetUptake,
  uptakeReserve,
} from './effort-reserve.ts';
import { shownTable } from '../sourced-table.ts';

/** What work costs in 1 g and how hard that is for a person. */
export const COST_CHAPTERS: readonly Chapter[] = [
  {
    heading: 'What work costs on Earth',
    says: 'The handbook’s equations, gross, in a steady state, and back from an uptake to a speed or a power.',
    formulas: [
      uptakeOfWalking,
      uptakeOfRunning,
      walkingSpeed,
      runningSpeed,
      workRateOfPower,
      uptakeOfLegWork,
      uptakeOfLegCycling,
      legPower,
      uptakeOfArmWork,
      uptakeOfArmCycling,
      armPower,
      uptakeOfStepping,
      stepRate,
      peakUptakeOfPeakPower,
    ],
    methods: [treadmillUptake, treadmillSpeed],
    checks: costChecks,
  },
  {
    heading: 'Units of an uptake, and energy',
    says: 'For each kilogram or the whole body, gross or net, in metabolic equivalents and kilocalories.',
    formulas: [
      metabolicEquivalents,
      flowOfUptake,
      uptakeOfFlow,
      netUptake,
      grossUptake,
      energyRate,
      energyRateOfEquivalents,
      energyOfBout,
      energyOfGasExchange,
    ],
    checks: energyChecks,
  },
  {
    heading: 'Maximal heart rate',
    says: 'What was measured; else the line of the age, which is ten beats unsure.',
    formulas: [maximalRateTanaka, maximalRateGellish, maximalRateGellishUnrounded, maximalRateGellishCurved],
    methods: [personalMaximalRate],
    checks: maximalRateChecks,
  },
  {
    heading: 'How hard for a person',
    says: 'Fractions of the heart-rate reserve and of the uptake reserve, taken for each other.',
    formulas: [
      targetHeartRate,
      heartRateReserve,
      targetUptake,
      uptakeReserve,
      reserveOfMaximumFraction,
      expectedHeartRate,
      expectedUptake,
    ],
    checks: reserveChecks,
  },
  {
    heading: 'Targets of a bout',
    says: 'What a share of a maximum asks for, and the band of heart rate that is held.',
    formulas: [rateOfGreatest, uptakeOfGreatest, lowestBeat, highestBeat],
    checks: boutTargetChecks,
  },
  {
    heading: 'Measured lines between percents of effort',
    says: 'For comparison: no target is made from them.',
    formulas: [
      heartRateReserveCycling,
      heartRateReserveCyclingOfReserve,
      heartRateReserveTreadmill,
      heartRateReserveTreadmillOfReserve,
      maximalRateReached,
    ],
    checks: regressionChecks,
  },
  {
    heading: 'Zones of effort',
    says: 'By one stated measure, each zone up to but not into the next.',
    methods: [intensityZone],
    tables: [shownTable(INTENSITY_ZONES)],
    checks: zoneChecks,
  },
];
