import { completeWindow, loadFaults, mean, sampleSd, sum, type DailyLoads } from './daily-loads.ts';
import { arbitrary } from './inputs.ts';
import { method } from '../method.ts';
import { FOSTER_1998 } from './sources.ts';

/** A week of loads in three numbers: how much, how much the same, and both together. */

const WEEK = 7;

/** A number, or why there is none. */
export type Found =
  { readonly kind: 'estimate'; readonly value: number } | { readonly kind: 'none'; readonly reason: string };

export type WeeklyLoad =
  | {
      readonly kind: 'estimate';
      /** Sum of the seven days. */
      readonly total: number;
      readonly mean: number;
      /** Of the sample: over n − 1. */
      readonly sd: number;
      readonly monotony: Found;
      readonly strain: Found;
    }
  | { readonly kind: 'none'; readonly reason: string }
  | { readonly kind: 'refused'; readonly reasons: readonly string[] };

/** Weekly load, monotony and strain. */
export const weeklyLoad = method(
  {
    id: 'load/weekly-load',
    revision: 1,
    title: 'Weekly load, monotony and strain',
    equations: ['W = sum_(d=1)^7 L_d', 'M = mean(L_d) / SD(L_d), SD of the sample, over n − 1', 'S = W · M'],
    inputs: [arbitrary('load of each of seven days', 'L_d')],
    outputs: [
      { name: 'weekly load', symbol: 'W', unit: 'arbitrary units' },
      { name: 'monotony', symbol: 'M', unit: '1' },
      { name: 'strain', symbol: 'S', unit: 'arbitrary units' },
    ],
    refuses: [
      'A week with a day that was not reported: then it says how many of seven were.',
      'Monotony and strain of a week without any load, or with the same load every day.',
    ],
    source: FOSTER_1998,
    doesNotKnow:
      'Which standard deviation the paper took: that of the sample is used here; the other gives a monotony 8 % higher. A monotony over 2 is a custom from memory, a reason to look and no alarm: a week that is the same every day may be what was planned. No study of weightless people.',
  },
  (loads: DailyLoads): WeeklyLoad => {
    const reasons = [
      ...(loads.length === WEEK ? [] : [`A week has 7 days; ${loads.length} were given.`]),
      ...loadFaults(loads),
    ];
    if (reasons.length > 0) return { kind: 'refused', reasons };
    const week = completeWindow(loads, WEEK);
    if (week.kind === 'none') return week;
    const [total, middle, sd] = [sum(week.loads), mean(week.loads), sampleSd(week.loads)];
    const monotony = monotonyOf(middle, sd);
    const strain: Found = monotony.kind === 'none' ? monotony : { kind: 'estimate', value: total * monotony.value };
    return { kind: 'estimate', total, mean: middle, sd, monotony, strain };
  },
);

const monotonyOf = (middle: number, sd: number): Found => {
  if (middle === 0) return { kind: 'none', reason: 'No load in this week.' };
  // The same number seven times may leave a rounding error for its standard deviation.
  return sd <= 1e-12 * middle
    ? { kind: 'none', reason: 'No variation: every day had the same load.' }
    : { kind: 'estimate', value: middle / sd };
};
