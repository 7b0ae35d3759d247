import type { Problem } from '#contract/problem.ts';
import { dayFromIso, type Day } from '#units/day.ts';
import { decimalOf, type Entered } from '#units/entered.ts';
import { asTyped } from '../../parts/parts.ts';

/** What was typed, brought to the log's own form; whatever cannot be is added to the problems. */

const add = (problems: Problem[], field: string, what: string, whatToDo: string): null => {
  problems.push({ field, what, why: 'It is needed, and is not guessed.', whatToDo });
  return null;
};

export const typedDay = (text: string, field: string, problems: Problem[]): Day | null =>
  dayFromIso(text) ?? add(problems, field, text === '' ? 'No day is given.' : `“${text}” is no day.`, 'Give a day.');

/** A day that may be left open. */
export const typedDayOrNone = (text: string, field: string, problems: Problem[]): Day | null =>
  text === '' ? null : typedDay(text, field, problems);

export const typedAmount = <Unit extends string>(
  text: string,
  unit: Unit,
  field: string,
  problems: Problem[],
): Entered<Unit> | null => {
  const typed = asTyped(text);
  if (decimalOf(typed) !== null) return { text: typed, unit };
  return add(
    problems,
    field,
    typed === '' ? 'Nothing is typed.' : `“${text}” is no number.`,
    'Type a number such as 102.5.',
  );
};

export const typedNumber = (text: string, field: string, problems: Problem[]): number | null => {
  const amount = typedAmount(text, '', field, problems);
  return amount === null ? null : Number(amount.text);
};

export const typedWords = (text: string, field: string, problems: Problem[]): string | null =>
  text.trim() === '' ? add(problems, field, 'Nothing is typed.', 'Type it.') : text.trim();

/** The thing chosen from a list, by its id. */
export const chosenFrom = <Thing extends { readonly id: string }>(
  things: readonly Thing[],
  id: string,
  field: string,
  problems: Problem[],
): Thing | null => things.find((thing) => thing.id === id) ?? add(problems, field, 'Nothing is chosen.', 'Choose one.');
