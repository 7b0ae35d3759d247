import type { Policies } from '#domain/policies.ts';
import type { z } from 'zod';
import { record } from './record.schema.ts';
import { listUpTo } from './lists.schema.ts';
import { numberFrom, wholeFrom } from './numbers.schema.ts';

const rating = numberFrom(0, 10);
const days = wholeFrom(0, 1000);
const share = numberFrom(0, 1);
const climbing = listUpTo(50, numberFrom(0, 2))
  .min(1, { error: 'at least one step' })
  .refine((steps) => steps.every((step, place) => place === 0 || step >= (steps[place - 1] ?? step)), {
    error: 'steps that never go down',
  });

const every = {
  horizonDays: wholeFrom(1, 366),
  effortSteps: climbing,
  shareSteps: climbing,
  sessionsPerStep: wholeFrom(1, 100),
  daysBetweenRaises: days,
  rampRpeAtMost: rating,
  ruleRpeAtMost: rating,
  discomfortHolds: rating,
  discomfortStops: rating,
  discomfortEndsSession: rating,
  shoulderRuleFlightDays: days,
  shoulderEvidenceDaysBeforeLaunch: days,
  firstResistiveFlightDay: wholeFrom(1, 1000),
  raiseAtMost: share,
  estimateBand: share,
  backOff: share,
  cardValidDays: days,
  evidenceFloor: share,
  daysWithoutLiftThatWidens: days,
  firstEnduranceFlightDay: wholeFrom(1, 1000),
  firstAllOutFlightDay: wholeFrom(1, 1000),
  harnessStart: numberFrom(0, 1.2),
  harnessStep: share,
  harnessMost: numberFrom(0, 1.2),
  daysHandsRest: days,
  blackoutDaysFromLanding: days,
} satisfies Record<keyof Policies, z.ZodType>;

/** Policies a team sets for itself: those that are named. A policy is there or absent, never undefined. */
export const somePolicies = record({
  horizonDays: every.horizonDays.exactOptional(),
  effortSteps: every.effortSteps.exactOptional(),
  shareSteps: every.shareSteps.exactOptional(),
  sessionsPerStep: every.sessionsPerStep.exactOptional(),
  daysBetweenRaises: every.daysBetweenRaises.exactOptional(),
  rampRpeAtMost: every.rampRpeAtMost.exactOptional(),
  ruleRpeAtMost: every.ruleRpeAtMost.exactOptional(),
  discomfortHolds: every.discomfortHolds.exactOptional(),
  discomfortStops: every.discomfortStops.exactOptional(),
  discomfortEndsSession: every.discomfortEndsSession.exactOptional(),
  shoulderRuleFlightDays: every.shoulderRuleFlightDays.exactOptional(),
  shoulderEvidenceDaysBeforeLaunch: every.shoulderEvidenceDaysBeforeLaunch.exactOptional(),
  firstResistiveFlightDay: every.firstResistiveFlightDay.exactOptional(),
  raiseAtMost: every.raiseAtMost.exactOptional(),
  estimateBand: every.estimateBand.exactOptional(),
  backOff: every.backOff.exactOptional(),
  cardValidDays: every.cardValidDays.exactOptional(),
  evidenceFloor: every.evidenceFloor.exactOptional(),
  daysWithoutLiftThatWidens: every.daysWithoutLiftThatWidens.exactOptional(),
  firstEnduranceFlightDay: every.firstEnduranceFlightDay.exactOptional(),
  firstAllOutFlightDay: every.firstAllOutFlightDay.exactOptional(),
  harnessStart: every.harnessStart.exactOptional(),
  harnessStep: every.harnessStep.exactOptional(),
  harnessMost: every.harnessMost.exactOptional(),
  daysHandsRest: every.daysHandsRest.exactOptional(),
  blackoutDaysFromLanding: every.blackoutDaysFromLanding.exactOptional(),
}) satisfies z.ZodType<Partial<Policies>>;
