import { kilograms, fraction, machineLoad } from '#units/quantity.ts';
import { mostInAll } from '#domain/asked-sets.ts';
import type { LoadLimit, SignedRule } from '#domain/card.ts';
import type { LiftItem } from '#domain/programme.ts';
import { barEquivalent } from '#science/crossing/crossing.ts';
import { massInFlight, sharesOf, type PlanContext } from './plan-context.ts';
import { incrementsNotOver, ruleIncrements, type ItemAt, type Target } from './target.ts';

/** The rule that is signed with a card: what the person may do alone, with its bounds. */
export const signedRule = (
  context: PlanContext,
  at: ItemAt,
  target: Target,
  increments: number,
  limits: readonly LoadLimit[],
): SignedRule | null => {
  if (at.item.basis.kind !== 'from last' || at.adjustments.some((each) => each.change.kind === 'hold')) return null;
  const { policies } = context.known.house;
  const add = ruleIncrements(at, target.steps);
  const neverOver = Math.min(mostByPolicy(context, at, target, increments), ...limits.map((limit) => limit.increments));
  const takeOff = Math.max(
    target.steps.perStep,
    Math.floor((increments * policies.backOff) / target.steps.perStep) * target.steps.perStep,
  );
  const show = (count: number): string => String(Number((count * Number(at.machine.increment)).toFixed(6)));
  const rule = {
    add,
    rpeAtMost: policies.ruleRpeAtMost,
    discomfortBelow: policies.discomfortHolds,
    neverOver,
    takeOff,
  };
  const up =
    neverOver >= increments + add
      ? `add ${show(add)} next time if ${allOf(at.item.sets)} at RPE ${rule.rpeAtMost} or less and no discomfort of ${rule.discomfortBelow} or more, once a week; never over ${show(neverOver)}; `
      : `stay at ${show(increments)}; `;
  return { ...rule, says: `${up}take up to ${show(takeOff)} off if it feels wrong and write why` };
};

/** First repetitions, then load: of a range the most, in every set (double progression, common practice). */
const allOf = (sets: LiftItem['sets']): string => {
  const most = mostInAll(sets);
  return most === null ? 'all repetitions' : `${most} in every set`;
};

/** The load at which the bar-equivalent has gone up by the most that one signature covers. */
const mostByPolicy = (context: PlanContext, at: ItemAt, target: Target, increments: number): number => {
  const most = 1 + context.known.house.policies.raiseAtMost;
  const load = increments * target.steps.increment;
  const mass = at.machine.gravity === '0 g' ? massInFlight(context, at.day) : null;
  if (!mass) return incrementsNotOver(load * most, target.steps);
  const bar = barEquivalent(
    machineLoad(load),
    fraction(sharesOf(context, at.exercise).work),
    kilograms(mass.kilograms),
  );
  return incrementsNotOver(load + Math.max(0, bar) * (most - 1), target.steps);
};
