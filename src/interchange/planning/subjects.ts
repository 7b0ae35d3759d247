import type { Day } from '#units/day.ts';
import type { Row, SheetLayout } from '../layout/sheet-layout.ts';
import { passedOver } from '../place.ts';
import type { CellReader } from './cell-reader.ts';
import type { BringInContext } from './context.ts';
import { findPeople, type NamedPerson } from './find-people.ts';
import { nameKey } from './names.ts';
import { differencesFromRecord, personDetails, type PersonDetails } from './person-details.ts';
import type { Report } from './report.ts';
import { rowNames } from './row-names.ts';
import { idOfNewPerson, type Someone, type Subject } from './someone.ts';

/** Somebody new, with all that an introduction needs. */
export interface NewPerson {
  readonly someone: Someone;
  readonly sex: 'female' | 'male';
  readonly birthDate: Day | null;
  readonly trainingAge: string | null;
  readonly rows: readonly number[];
}

export interface Subjects {
  readonly of: (row: Row) => Subject;
  readonly newPeople: readonly NewPerson[];
}

const askSex = (name: string, key: string, row: number, report: Report): 'female' | 'male' | 'leave out' | null => {
  const answer = report.ask({
    id: `sex, ${key}`,
    about: 'sex',
    asks: `Is ${name} female or male?`,
    because: 'The file does not say so of this new person; norms and the model of the body need it.',
    row,
    choices: [
      { answer: 'female', says: 'female' },
      { answer: 'male', says: 'male' },
      { answer: 'leave out', says: 'no person, or not to be brought in: leave these rows out' },
    ],
  });
  return answer === 'female' || answer === 'male' || answer === 'leave out' ? answer : null;
};

type Settled = { readonly subject: Subject; readonly newPerson: NewPerson | null };

const leftOut = (rows: readonly Row[], report: Report): Settled => {
  for (const { number } of rows)
    report.say(
      passedOver(
        {
          what: 'The row is left out.',
          why: 'You chose to leave out the person it names.',
          whatToDo: 'Nothing, or answer otherwise.',
        },
        number,
      ),
    );
  return { subject: { kind: 'left out' }, newPerson: null };
};

const newcomer = (key: string, name: string, rows: readonly Row[], details: PersonDetails, report: Report): Settled => {
  const sex = details.sex?.value ?? askSex(name, key, rows[0]?.number ?? 0, report);
  if (sex === 'leave out') return leftOut(rows, report);
  const someone: Someone = { id: idOfNewPerson(key), name, onRecord: null, sex };
  const known = { birthDate: details.birthDate?.value ?? null, trainingAge: details.trainingAge?.value ?? null };
  const newPerson = sex === null ? null : { someone, sex, ...known, rows: rows.map(({ number }) => number) };
  return { subject: { kind: 'someone', someone }, newPerson };
};

const settle = (
  person: NamedPerson,
  rows: readonly Row[],
  layout: SheetLayout,
  cells: CellReader,
  { today }: BringInContext,
  report: Report,
): Settled => {
  if (person.kind === 'left out') return leftOut(rows, report);
  if (person.kind === 'open') return { subject: { kind: 'open' }, newPerson: null };
  const details = personDetails(rows, layout, cells, today, report);
  if (person.kind === 'new') return newcomer(person.key, person.name, rows, details, report);
  for (const issue of differencesFromRecord(person.person, details)) report.say(issue);
  const { id, name, sex } = person.person;
  return { subject: { kind: 'someone', someone: { id, name, onRecord: person.person, sex } }, newPerson: null };
};

/** Whom each row is about, and who of them is new. */
export const findSubjects = (
  layout: SheetLayout,
  cells: CellReader,
  context: BringInContext,
  report: Report,
): Subjects => {
  const names = rowNames(layout, report);
  const people = findPeople(names, context, report);
  const personOf = (row: Row): NamedPerson | null => {
    const name = names.get(row.number);
    return name === undefined || name === null ? null : (people.get(nameKey(name)) ?? { kind: 'open' });
  };
  const groups = new Map<string, { readonly person: NamedPerson; readonly rows: Row[] }>();
  const keyOf = (person: NamedPerson): string =>
    person.kind === 'on record'
      ? `record ${person.person.id}`
      : person.kind === 'new'
        ? `new ${person.key}`
        : person.kind;
  for (const row of layout.rows) {
    const person = personOf(row);
    if (!person) continue;
    const group = groups.get(keyOf(person)) ?? { person, rows: [] };
    group.rows.push(row);
    groups.set(keyOf(person), group);
  }
  const settled = new Map<string, Settled>();
  for (const [key, { person, rows }] of groups) settled.set(key, settle(person, rows, layout, cells, context, report));
  return {
    of: (row) => {
      const person = personOf(row);
      if (person) return settled.get(keyOf(person))?.subject ?? { kind: 'open' };
      return names.has(row.number) ? { kind: 'nobody' } : { kind: 'open' };
    },
    newPeople: [...settled.values()].flatMap(({ newPerson }) => newPerson ?? []),
  };
};
