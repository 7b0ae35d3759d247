import type { Part } from '../chapter.ts';
import { balanceAlong } from './balance-along.ts';
import {
  balanceAfterRecovery,
  balanceAfterWork,
  deficitAfter,
  recoveredInTwoParts,
  recoveryNeeded,
  recoveryTimeConstant,
  recoveryTimeConstantOfElite,
  timeConstantOfIntegral,
} from './balance-steps.ts';
import { balanceChecks, fitChecks, powerDurationChecks, stepChecks } from './critical-power.checks.ts';
import { fitTrials } from './fit-trials.ts';
import { powerForTime, timeToExhaustion, workUntilExhaustion } from './power-duration.ts';
import { sessionFeasibility } from './session-feasibility.ts';

export const CRITICAL_POWER: Part = {
  heading: 'Critical power',
  says: 'A power that can be kept, and a store of work above it that empties and refills.',
  chapters: [
    {
      heading: 'Power and how long it lasts',
      says: 'Two numbers of a person on a cycle, and how trials give them.',
      formulas: [timeToExhaustion, powerForTime, workUntilExhaustion],
      methods: [fitTrials],
      checks: [...powerDurationChecks, ...fitChecks],
    },
    {
      heading: 'The store along a session',
      says: 'What intervals take out of it and recovery puts back, by three models that disagree.',
      formulas: [
        balanceAfterWork,
        balanceAfterRecovery,
        recoveryNeeded,
        recoveryTimeConstant,
        recoveryTimeConstantOfElite,
        timeConstantOfIntegral,
        deficitAfter,
        recoveredInTwoParts,
      ],
      methods: [balanceAlong, sessionFeasibility],
      checks: [...stepChecks, ...balanceChecks],
    },
  ],
};
