import type { Part } from '../chapter.ts';
import { heightOfFlightTime, takeOffSpeed } from './flight-time.ts';
import { flightTimeChecks, jumpPowerChecks } from './jump.checks.ts';
import {
  averagePowerHarman,
  averagePowerLewis,
  peakPowerCanavanVescovi,
  peakPowerHarman,
  peakPowerSayersCountermovementJump,
  peakPowerSayersSquatJump,
} from './jump-power.ts';

export const JUMP: Part = {
  heading: 'Jumps',
  says: 'Before a flight and after it, once a physician allows; there is no jump without weight.',
  chapters: [
    {
      heading: 'Height of a jump',
      says: 'From the time in the air.',
      formulas: [heightOfFlightTime, takeOffSpeed],
      checks: flightTimeChecks,
    },
    {
      heading: 'Power of a jump',
      says: 'Straight lines of single studies. Keep to one of them; they differ more than people change.',
      formulas: [
        peakPowerSayersSquatJump,
        peakPowerSayersCountermovementJump,
        peakPowerHarman,
        peakPowerCanavanVescovi,
        averagePowerHarman,
        averagePowerLewis,
      ],
      checks: jumpPowerChecks,
    },
  ],
};
