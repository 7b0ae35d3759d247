import type { Part } from '../chapter.ts';
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
import {
  energyOfBout,
  energyOfGasExchange,
  energyRate,
  energyRateOfEquivalents,
  heatGivenOff,
  metabolicPower,
} from './energy.ts';
import { costChecks, energyChecks } from './metabolic.checks.ts';
import { stepRate, uptakeOfStepping } from './stepping.ts';
import { treadmillSpeed, treadmillUptake } from './treadmill.ts';
import { flowOfUptake, grossUptake, metabolicEquivalents, netUptake, uptakeOfFlow } from './uptake-units.ts';
import { runningSpeed, uptakeOfRunning, uptakeOfWalking, walkingSpeed } from './walking-and-running.ts';

export const AEROBIC: Part = {
  heading: 'Aerobic work',
  says: 'What work costs in oxygen, how hard that is for a person, and what changes weightless.',
  chapters: [
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
      heading: 'Units of an uptake, energy and heat',
      says: 'For each kilogram or the whole body, gross or net, in metabolic equivalents, kilocalories and watts.',
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
        metabolicPower,
        heatGivenOff,
      ],
      checks: energyChecks,
    },
  ],
};
