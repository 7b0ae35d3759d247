import { isoOfDay } from '#units/day.ts';
import { quoted, refusal } from '../place.ts';
import type { BringInContext, PersonOnRecord } from './context.ts';
import { mayBeTheSame, nameKey } from './names.ts';
import type { Report } from './report.ts';
import type { RowNames } from './row-names.ts';

/** Which person a name of the file is. */
export type NamedPerson =
  | { readonly kind: 'on record'; readonly person: PersonOnRecord }
  | { readonly kind: 'new'; readonly key: string; readonly name: string }
  | { readonly kind: 'left out' }
  | { readonly kind: 'open' };

const MOST_NAMES = 500;

/** One name of the file: its commonest spelling, and where it stands first. */
interface Written {
  readonly key: string;
  readonly name: string;
  readonly rows: number;
  readonly firstRow: number;
}

const writtenNames = (names: RowNames): readonly Written[] => {
  const spellings = new Map<string, Map<string, number>>();
  const firstRows = new Map<string, number>();
  for (const [row, name] of names) {
    if (name === null) continue;
    const key = nameKey(name);
    const counts = spellings.get(key) ?? new Map<string, number>();
    spellings.set(key, counts.set(name, (counts.get(name) ?? 0) + 1));
    if (!firstRows.has(key)) firstRows.set(key, row);
  }
  return [...spellings].map(([key, counts]) => {
    const [commonest] = [...counts].toSorted(
      ([one, often], [other, seldom]) => seldom - often || (one < other ? -1 : 1),
    );
    const rows = [...counts.values()].reduce((sum, count) => sum + count, 0);
    return { key, name: commonest?.[0] ?? key, rows, firstRow: firstRows.get(key) ?? 0 };
  });
};

const described = ({ name, birthDate }: PersonOnRecord): string =>
  birthDate === null ? name : `${name}, born ${isoOfDay(birthDate)}`;

interface Candidates {
  readonly onRecord: readonly PersonOnRecord[];
  readonly inFile: readonly Written[];
}

const askWho = (written: Written, { onRecord, inFile }: Candidates, report: Report): string | null =>
  report.ask({
    id: `person, ${written.key}`,
    about: 'person',
    asks: `Who is ${quoted(written.name)}?`,
    because:
      onRecord.length + inFile.length > 1 || onRecord.some(({ name }) => nameKey(name) === written.key)
        ? 'Several people have this name or one like it.'
        : 'Somebody has a name much like it.',
    row: written.firstRow,
    examples: [`${written.rows} ${written.rows === 1 ? 'row' : 'rows'}, first in row ${written.firstRow}`],
    choices: [
      ...onRecord.map((person) => ({ answer: `is ${person.id}`, says: `the same as ${described(person)}` })),
      ...inFile.map(({ key, name }) => ({ answer: `same as ${key}`, says: `the same as ${name} in this file` })),
      { answer: 'new', says: `somebody new: ${written.name}` },
      { answer: 'leave out', says: 'leave these rows out' },
    ],
  });

/** People of this file who are new, by key, and whoever was settled before. */
type Settled = Map<string, NamedPerson>;

const settle = (written: Written, found: Candidates, settled: Settled, report: Report): NamedPerson => {
  const { key, name } = written;
  if (found.onRecord.length + found.inFile.length === 0) return { kind: 'new', key, name };
  const answer = askWho(written, found, report);
  if (answer === null) return { kind: 'open' };
  if (answer === 'leave out') return { kind: 'left out' };
  if (answer === 'new') return { kind: 'new', key, name };
  const person = found.onRecord.find(({ id }) => answer === `is ${id}`);
  if (person) return { kind: 'on record', person };
  const twin = found.inFile.find((one) => answer === `same as ${one.key}`);
  return (twin && settled.get(twin.key)) ?? { kind: 'open' };
};

/** Who each name is: on record where exactly one person has it, new where nobody has one like it, else asked. */
export const findPeople = (
  names: RowNames,
  context: BringInContext,
  report: Report,
): ReadonlyMap<string, NamedPerson> => {
  const written = writtenNames(names).toSorted((one, other) => (one.key < other.key ? -1 : 1));
  const settled: Settled = new Map();
  if (written.length > MOST_NAMES) {
    const what = `The file names ${written.length} different people; at most ${MOST_NAMES} are taken at once.`;
    report.say(
      refusal({
        what,
        why: 'So many are seldom people of one team.',
        whatToDo: 'Look which column holds the names, or split the file.',
      }),
    );
    return settled;
  }
  const known = context.people.map((person) => ({ person, key: nameKey(person.name) }));
  const unknown: Written[] = [];
  for (const one of written) {
    const [same, ...more] = known.filter(({ key }) => key === one.key);
    if (same && more.length === 0) settled.set(one.key, { kind: 'on record', person: same.person });
    else unknown.push(one);
  }
  for (const one of unknown) {
    const namesakes = known.filter(({ key }) => key === one.key);
    const onRecord = (namesakes.length > 0 ? namesakes : known.filter(({ key }) => mayBeTheSame(one.key, key))).map(
      ({ person }) => person,
    );
    const before = unknown.slice(0, unknown.indexOf(one)).filter(({ key }) => settled.get(key)?.kind === 'new');
    const inFile = before.filter(({ key }) => mayBeTheSame(one.key, key));
    settled.set(one.key, settle(one, { onRecord, inFile }, settled, report));
  }
  return settled;
};
