import type { Counting, Question } from '#contract/bring-in.ts';
import type { Exercise } from '#domain/catalogue.ts';
import type { MassUnit } from '#units/mass.ts';
import { isHeldInEachHand } from '../layout/exercise-names.ts';
import type { Column, Row } from '../layout/sheet-layout.ts';
import { doubled, halved, increasedBy } from '../values/read-decimal.ts';
import { examplesIn, type Report } from './report.ts';

/** How a typed number becomes what one repetition lifts. */
export interface Counted {
  readonly number: string;
  /** What was done to the typed number, in words; null where it stands as typed. */
  readonly change: string | null;
}

/** A usual bar, where a sheet counts the plates of one side only. */
const BARS: readonly { readonly answer: string; readonly mass: bigint; readonly unit: MassUnit }[] = [
  { answer: 'plates of one side, bar of 20 kg', mass: 20n, unit: 'kg' },
  { answer: 'plates of one side, bar of 15 kg', mass: 15n, unit: 'kg' },
  { answer: 'plates of one side, bar of 45 lb', mass: 45n, unit: 'lb' },
  { answer: 'plates of one side, bar of 35 lb', mass: 35n, unit: 'lb' },
];

const IN_WORDS: Readonly<Record<Counting, string>> = {
  total: 'all that one repetition lifts: taken as it stands',
  'per side': 'what the one side lifts: taken as it stands',
  'per hand': 'the weight in one of two hands: doubled',
  'both sides added': 'left and right added together: halved',
};

const choicesFor = (exercise: Exercise, unit: MassUnit): Question['choices'] => {
  const countings: readonly Counting[] = exercise.perSide
    ? ['per side', 'per hand', 'both sides added']
    : ['total', 'per hand'];
  const bars = exercise.perSide ? [] : BARS.filter((bar) => bar.unit === unit);
  return [
    ...countings.map((counting) => ({ answer: counting, says: IN_WORDS[counting] })),
    ...bars.map(({ answer, mass }) => ({
      answer,
      says: `the plates of one side: doubled, and a bar of ${mass} ${unit} added`,
    })),
  ];
};

const applied = (answer: string, number: string): Counted | null => {
  if (answer === 'total' || answer === 'per side') return { number, change: null };
  if (answer === 'per hand') return { number: doubled(number), change: `${number} per hand, doubled` };
  if (answer === 'both sides added') return { number: halved(number), change: `${number} for both sides, halved` };
  const bar = BARS.find((one) => one.answer === answer);
  return bar
    ? {
        number: increasedBy(doubled(number), bar.mass),
        change: `${number} of plates on one side, doubled, with a bar of ${bar.mass} ${bar.unit}`,
      }
    : null;
};

/** What the header settles: a total for a bar, one side or one hand; a "total" of one side at a time settles nothing. */
const settledBy = (told: Counting | null, exercise: Exercise, text: string): Counting | null => {
  if (exercise.perSide) return told === 'total' ? null : told;
  if (told === 'per side' || told === 'both sides added') return null;
  return told ?? (isHeldInEachHand(text) ? null : 'total');
};

/** A typed load as what one repetition lifts; asked once an exercise and column where nothing says. Null: not settled. */
export const countedLoad = (
  given: { readonly number: string; readonly unit: MassUnit; readonly exercise: Exercise; readonly written: string },
  column: Column,
  rows: readonly Row[],
  report: Report,
): Counted | null => {
  const { exercise, unit, number } = given;
  const told = column.meaning.is === 'lift' || column.meaning.is === 'load' ? column.meaning.counted : null;
  const settled = settledBy(told, exercise, given.written);
  if (settled !== null) return applied(settled, number);
  const answer = report.ask({
    id: `counting, ${exercise.id}, column ${column.place.letter}`,
    about: 'counting',
    asks: exercise.perSide
      ? `What do the loads of ${exercise.name} count?`
      : `Do the loads of ${exercise.name} count one hand or all?`,
    because: exercise.perSide
      ? 'It is done one side at a time, and the file does not say what its number is.'
      : 'The number may be one of two weights, or both.',
    column,
    examples: column.meaning.is === 'lift' ? examplesIn(rows, column) : [],
    choices: choicesFor(exercise, unit),
  });
  return answer === null ? null : applied(answer, number);
};
