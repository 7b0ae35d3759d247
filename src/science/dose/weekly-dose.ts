import { impossibilities } from '../evaluate.ts';
import type { FormulaInput } from '../formula.ts';
import { method } from '../method.ts';
import { OUR_OWN_DESIGN } from '../sources.ts';
import { PELLAND_2024, RALSTON_2017 } from './sources.ts';
import { shareOfStrengthEffect } from './strength-effect.ts';
import { fractionalSets, HEAVY_ENOUGH, mostSetsNextWeek, setsForStrength } from './weekly-sets.ts';
import type { Fraction } from '#units/quantity.ts';

/** What a week of sets amounts to for one muscle or pattern, and whether it is too little, too much or too sudden. */

/** Below and above these a week is worth a look; our own. */
export const FEWEST_SETS = 4;
export const MOST_SETS = 20;

export interface SetsOfWeek {
  readonly role: 'direct' | 'indirect';
  readonly sets: number;
  /** Of the maximum; null where it is not known, as with effort or elastic cords. */
  readonly fraction: number | null;
}

export type WeeklyDose =
  | {
      readonly kind: 'dose';
      /** Direct ones whole, indirect ones half. */
      readonly sets: number;
      /** Of these, as they count for strength. */
      readonly forStrength: number;
      readonly share: Fraction;
      readonly warnings: readonly string[];
    }
  | { readonly kind: 'refused'; readonly reason: string };

const setsInput: FormulaInput = { name: 'sets', symbol: 'n', unit: 'sets/week', possible: [0, 200], valid: [0, 40] };
const fractionInput: FormulaInput = {
  name: 'fraction of the maximum',
  symbol: 'f',
  unit: '1',
  possible: [0.01, 1.5],
  valid: [0.3, 1],
};
const beforeInput: FormulaInput = { ...setsInput, name: 'sets of the week before', symbol: 'n_before' };

const refusalsOf = (week: readonly SetsOfWeek[], before: number | null): readonly string[] => [
  ...week.flatMap(({ sets, fraction }, place) =>
    [
      ...impossibilities({ inputs: [setsInput] }, [sets]),
      ...(fraction === null ? [] : impossibilities({ inputs: [fractionInput] }, [fraction])),
    ].map((reason) => `Line ${place + 1}: ${reason}`),
  ),
  ...(before === null ? [] : impossibilities({ inputs: [beforeInput] }, [before])),
];

const counted = (week: readonly SetsOfWeek[]): number => {
  const of = (role: SetsOfWeek['role']): number =>
    week.reduce((sum, each) => (each.role === role ? sum + each.sets : sum), 0);
  return fractionalSets(of('direct'), of('indirect'));
};

/** A load that is not known counts whole: the effort of the set stands for it. */
const isLight = ({ fraction }: SetsOfWeek): boolean => fraction !== null && fraction < HEAVY_ENOUGH;

const ROUNDING = 1e-9;

const warningsOf = (sets: number, before: number | null): readonly string[] => [
  ...(sets < FEWEST_SETS ? [`Fewer than ${FEWEST_SETS} sets a week.`] : []),
  ...(sets > MOST_SETS ? [`More than ${MOST_SETS} sets a week.`] : []),
  ...(before === 0 && sets > 0
    ? ['There were no sets in the week before: begin as after a pause, not by a percentage.']
    : []),
  ...(before !== null && before !== 0 && sets > mostSetsNextWeek(before) + ROUNDING
    ? [`${shown(sets)} sets after ${shown(before)} are more than a fifth more in one week.`]
    : []),
];

const shown = (value: number): string => String(Number(value.toFixed(1)));

/** Weekly sets of a muscle or pattern, what they amount to, and warnings. */
export const weeklyDose = method(
  {
    id: 'dose/weekly-dose',
    revision: 1,
    title: 'Weekly sets of a muscle or pattern, what they amount to, and warnings',
    equations: [
      'n = n_direct + 0.5 · n_indirect',
      'n_strength: the same, with sets under 60 % of the maximum counted half',
      'share = 1 − exp(−n_strength / 1.8016164)',
      'warning where n < 4, n > 20 or n > 1.2 · n_before',
    ],
    inputs: [setsInput, fractionInput, beforeInput],
    outputs: [
      { name: 'weekly sets', symbol: 'n', unit: 'sets/week' },
      { name: 'share of the modelled effect on strength', symbol: 'share', unit: '1' },
    ],
    refuses: ['sets below 0 or over 200', 'a fraction of the maximum under 0.01 or over 1.5'],
    source: OUR_OWN_DESIGN,
    restsOn: [PELLAND_2024, RALSTON_2017],
    doesNotKnow:
      'How close to failure the sets went: one to three repetitions short of it are meant. The share is a shape, no forecast. All thresholds are our own and editable, and a warning never lowers a plan by itself.',
  },
  (week: readonly SetsOfWeek[], before: number | null): WeeklyDose => {
    const reasons = refusalsOf(week, before);
    if (reasons.length > 0) return { kind: 'refused', reason: reasons.join(' ') };
    const sets = counted(week);
    const forStrength = setsForStrength(counted(week.filter((line) => !isLight(line))), counted(week.filter(isLight)));
    return {
      kind: 'dose',
      sets,
      forStrength,
      share: shareOfStrengthEffect(forStrength),
      warnings: warningsOf(sets, before),
    };
  },
);
