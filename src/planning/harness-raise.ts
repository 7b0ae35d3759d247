import type { Day } from '#units/day.ts';
import type { Sequence } from '#domain/fact.ts';
import type { Machine } from '#domain/catalogue.ts';
import type { Raise } from '#domain/raise.ts';
import { trackOfHarness } from './harness-load.ts';
import type { PlanContext } from './plan-context.ts';
import { harnessState, type HarnessState, type Progress } from './progress.ts';

/** The treadmill whose harness a signed raise concerns, or null where it is no harness. */
export const harnessOf = ({ known }: PlanContext, { track }: Raise): Machine | null =>
  [...known.house.machines.values()].find((machine) => trackOfHarness(machine) === track) ?? null;

/** A signed step of the harness holds only while the sessions that earned it stand. */
export const isHarnessStepEarned = (context: PlanContext, progress: Progress, machine: Machine): boolean => {
  const { earnedBy, painHolds } = harnessState(progress, machine.id);
  return !painHolds && earnedBy.length >= context.known.house.policies.sessionsPerStep;
};

/** A signed step takes hold on its own day, unless a step was taken back since. */
export const takeHarnessRaise = (
  context: PlanContext,
  progress: Progress,
  machine: Machine,
  signed: { readonly raise: Raise; readonly on: Day; readonly sequence: Sequence },
): void => {
  const state = harnessState(progress, machine.id);
  if (signed.sequence < state.signedAfter) return;
  const { harnessStart, harnessStep, harnessMost } = context.known.house.policies;
  state.share = Math.min(harnessMost, (state.share ?? harnessStart) + harnessStep);
  state.inUse = signed.raise.to;
  state.earnedBy = [];
  state.lastStepOn = signed.on;
};

/** Steps back end at this part of the body's weight; who pulled less than that stays there. Our own design. */
const LEAST_SHARE = 0.4;

/** One step back at once: down needs no signature, and what was signed before holds no more. */
export const takeHarnessBack = (context: PlanContext, state: HarnessState, on: Day, sequence: Sequence): void => {
  const { harnessStart, harnessStep } = context.known.house.policies;
  const now = state.share ?? harnessStart;
  state.share = Math.min(now, Math.max(LEAST_SHARE, now - harnessStep));
  state.earnedBy = [];
  state.lastStepOn = on;
  state.signedAfter = sequence;
};
