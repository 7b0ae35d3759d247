import type { Problem } from '#contract/problem.ts';
import type { RecordWindow } from '#contract/windows/record-window.ts';
import type { Setting } from '#domain/catalogue.ts';
import { sideOf } from './test-form.tsx';

/** One line of settings as it is typed. */
export interface TypedSetting {
  readonly key: string;
  readonly field: string;
  readonly value: string;
  /** "left", "right", or empty for both. */
  readonly side: string;
}

/** The settings that stand for a machine and an exercise: the last that were recorded and not taken back. */
export const lastSettings = ({ lines }: RecordWindow, machine: string, exercise: string): readonly Setting[] => {
  for (const { fact, standing } of lines)
    if (fact.kind === 'set up' && standing === 'stands' && fact.machine === machine && fact.exercise === exercise)
      return fact.settings;
  return [];
};

/** A line for each setting that stands, then an empty one for each that the exercise names besides. */
export const rowsFor = (settings: readonly Setting[], named: readonly string[]): readonly TypedSetting[] => [
  ...settings.map(({ field, value, side }, place) => ({ key: `${place} ${field}`, field, value, side: side ?? '' })),
  ...named
    .filter((name) => !settings.some(({ field }) => field.toLowerCase() === name.toLowerCase()))
    .map((field) => ({ key: `named ${field}`, field, value: '', side: '' })),
];

export const emptySetting = (key: string): TypedSetting => ({ key, field: '', value: '', side: '' });

export const settingsWithout = (rows: readonly TypedSetting[], key: string): readonly TypedSetting[] =>
  rows.filter((row) => row.key !== key);

/** The fields of so many lines, as refusals call them. */
export const fieldsOfSettings = (rows: number): readonly string[] =>
  Array.from({ length: rows }, (_, place) => [`settings.${place}.field`, `settings.${place}.value`]).flat();

/** The settings that the lines come to, without those that have no value; null with every problem said. */
export const settingsOf = (rows: readonly TypedSetting[], problems: Problem[]): readonly Setting[] | null => {
  const typed = rows
    .map((row, place) => ({ ...row, place, field: row.field.trim(), value: row.value.trim() }))
    .filter(({ value }) => value !== '');
  const before = problems.length;
  for (const { field, side, place } of typed) {
    if (field === '') problems.push(noName(place));
    const isTwice = typed.some(
      (other) => other.place < place && field !== '' && isSame(other.field, field) && overlaps(other.side, side),
    );
    if (isTwice) problems.push(twice(place, field));
  }
  if (typed.length === 0) problems.push(NOTHING);
  return problems.length > before
    ? null
    : typed.map(({ field, value, side }) => ({ field, value, side: sideOf(side) }));
};

const isSame = (one: string, other: string): boolean => one.toLowerCase() === other.toLowerCase();

/** A setting for both sides says the left one too. */
const overlaps = (one: string, other: string): boolean => one === other || one === '' || other === '';

const noName = (place: number): Problem => ({
  field: `settings.${place}.field`,
  what: 'The value has no name.',
  why: 'On the card it stands beside what it is of.',
  whatToDo: 'Type what is set.',
});

const twice = (place: number, field: string): Problem => ({
  field: `settings.${place}.field`,
  what: `${field} stands above already for this side.`,
  why: 'Only one of the two can be set.',
  whatToDo: 'Correct one, or choose the other side.',
});

const NOTHING: Problem = {
  field: null,
  what: 'No setting has a value.',
  why: 'An entry without one would take away those that stand.',
  whatToDo: 'Type at least one, or leave it.',
};
