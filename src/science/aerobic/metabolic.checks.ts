import { printedResults, printedRows, type Check } from '../check.ts';
import { RECOMPUTED } from '../sources.ts';
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
import { DOUBLES, sdOf, valueOf } from './read-estimate.ts';
import { ACSM_HANDBOOK, BUSHMAN_2020 } from './sources.ts';
import { stepRate, uptakeOfStepping } from './stepping.ts';
import { treadmillSpeed, treadmillUptake } from './treadmill.ts';
import { flowOfUptake, grossUptake, metabolicEquivalents, netUptake, uptakeOfFlow } from './uptake-units.ts';
import { runningSpeed, uptakeOfRunning, uptakeOfWalking, walkingSpeed } from './walking-and-running.ts';

export const costChecks: readonly Check[] = [
  ...printedRows(BUSHMAN_2020, 0.05, 'printed to one decimal', [[uptakeOfStepping, [30, 0.3048], 31.4]]),
  ...printedRows(RECOMPUTED, 1e-9, DOUBLES, [
    [uptakeOfWalking, [93.8, 0.1], 29.764],
    [uptakeOfWalking, [80, 0.05], 18.7],
    [uptakeOfRunning, [160, 0], 35.5],
    [uptakeOfRunning, [160, 0.01], 36.94],
    [walkingSpeed, [18.7, 0.05], 80],
    [runningSpeed, [31.5, 0], 140],
    [uptakeOfLegCycling, [150, 80], 27.25],
    [uptakeOfLegWork, [917.7, 80], 27.64825],
    [legPower, [31.5, 80], 181.48148148148147],
    [uptakeOfArmCycling, [60, 80], 17],
    [uptakeOfArmWork, [360, 80], 17],
    [armPower, [17, 80], 60],
    [uptakeOfStepping, [30, 0.3048], 31.390736],
    [uptakeOfStepping, [24, 0.25], 22.664],
    [stepRate, [22.664, 0.25], 24],
    [peakUptakeOfPeakPower, [250, 80], 36.7775],
  ]),
  ...printedRows(ACSM_HANDBOOK, 0.0005, 'printed to three decimals', [[workRateOfPower, [1], 6.118]]),
  ...printedResults(treadmillUptake, RECOMPUTED, 1e-9, DOUBLES, [
    ['uptake at 160 m/min, undeclared', () => valueOf(treadmillUptake(160, 0)), 35.5],
    ['its standard deviation between people', () => sdOf(treadmillUptake(160, 0)), 2.485],
    ['uptake at 120 m/min, walking declared', () => valueOf(treadmillUptake(120, 0, 'walking')), 15.5],
    ['uptake at 120 m/min, running declared', () => valueOf(treadmillUptake(120, 0, 'running')), 27.5],
  ]),
  ...printedResults(treadmillSpeed, RECOMPUTED, 1e-9, DOUBLES, [
    ['running speed of 31.5 mL/(kg min)', () => valueOf(treadmillSpeed(31.5, 0, 'running')), 140],
    ['its standard deviation', () => sdOf(treadmillSpeed(31.5, 0, 'running')), 11.025],
  ]),
];

export const energyChecks: readonly Check[] = printedRows(RECOMPUTED, 1e-9, DOUBLES, [
  [metabolicEquivalents, [29.764], 8.504],
  [flowOfUptake, [27.25, 80], 2.18],
  [uptakeOfFlow, [2.18, 80], 27.25],
  [netUptake, [35.5], 32],
  [grossUptake, [32], 35.5],
  [energyRate, [2.18], 10.9],
  [energyRateOfEquivalents, [35.5 / 3.5, 80], 14.2],
  [energyOfBout, [35.5, 80, 30], 426],
  [energyOfBout, [32, 80, 30], 384],
  [energyOfGasExchange, [2.84, 2.6], 14.06804],
]);
