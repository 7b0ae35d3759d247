import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Draft } from '#domain/fact.ts';
import { type Day, isoOfDay } from '#units/day.ts';
import { anyCharacter } from '#units/any-character.setup.ts';
import { person } from './fixtures/invented-house.ts';
import { draftsIn, planned, refusals } from './fixtures/bring-in.ts';
import { csvText } from './csv-text.ts';
import { readTable } from './reading/read-table.ts';

/** A test as a person would tell it, before anybody wrote it into a file. */
interface Told {
  readonly name: string;
  readonly day: number;
  readonly exercise: string;
  readonly tenths: number;
  readonly repetitions: number;
  readonly rating: number | null;
}

const PEOPLE = ['Maren Holt', 'Iwo Falk', 'Tove Lind'].map((name) => person(name));
const NAMES = PEOPLE.map(({ name }) => name);

const told: fc.Arbitrary<Told> = fc.record({
  name: fc.constantFrom(...NAMES),
  day: fc.integer({ min: 20_500, max: 20_870 }),
  exercise: fc.constantFrom('Back squat', 'Bench press', 'Deadlift'),
  tenths: fc.integer({ min: 300, max: 2500 }),
  repetitions: fc.integer({ min: 1, max: 12 }),
  rating: fc.option(fc.integer({ min: 5, max: 10 })),
});
const someTests = fc.array(told, { minLength: 1, maxLength: 12 });

interface Style {
  readonly delimiter: ',' | ';' | '\t';
  readonly mark: '.' | ',';
  readonly end: '\n' | '\r\n';
  readonly opening: '' | '\uFEFF';
  readonly titles: readonly string[];
  readonly date: (day: Day) => string;
}

const turned =
  (order: readonly number[], joint: string) =>
  (day: Day): string => {
    const parts = isoOfDay(day).split('-');
    return order.map((place) => parts[place]).join(joint);
  };

const style: fc.Arbitrary<Style> = fc.record({
  delimiter: fc.constantFrom<Style['delimiter']>(',', ';', '\t'),
  mark: fc.constantFrom<Style['mark']>('.', ','),
  end: fc.constantFrom<Style['end']>('\n', '\r\n'),
  opening: fc.constantFrom<Style['opening']>('', '\uFEFF'),
  titles: fc.constantFrom<readonly string[]>([], ['Strength tests'], ['Strength tests', '', 'Brae House']),
  date: fc.constantFrom(isoOfDay, turned([2, 1, 0], '.'), turned([2, 1, 0], '/')),
});

const DATE_ORDER = { 'date order, column B': 'day first' };
const ANSWERS = { 'machine of the table': 'bar-brae', ...DATE_ORDER };
const HEADER = ['Name', 'Date', 'Exercise', 'Load (kg)', 'Reps', 'RPE'];

const rowOf = (
  { name, day, exercise, tenths, repetitions, rating }: Told,
  { mark, date }: Style,
): readonly string[] => [
  name,
  date(day as Day),
  exercise,
  `${Math.floor(tenths / 10)}${mark}${tenths % 10}`,
  String(repetitions),
  rating === null ? '' : String(rating),
];

const written = (rows: readonly (readonly string[])[], { delimiter, end, opening, titles }: Style): string => {
  const quotedWhere = (text: string): string => (text.includes(delimiter) ? `"${text}"` : text);
  const line = (row: readonly string[]): string => row.map(quotedWhere).join(delimiter) + end;
  return opening + [...titles.map((title) => [title, '', '', '', '', '']), HEADER, ...rows].map(line).join('');
};

const PLAIN: Style = { delimiter: ',', mark: '.', end: '\n', opening: '', titles: [], date: isoOfDay };

const draftsOfFile = async (file: string): Promise<readonly Omit<Draft, 'reason'>[]> => {
  const plan = await planned(file, { context: { people: PEOPLE }, answers: ANSWERS });
  expect(refusals(plan)).toEqual([]);
  // The reason names the row, which is all that may differ.
  return draftsIn(plan).map(({ id, body, recordedBy, supersedes }) => ({ id, body, recordedBy, supersedes }));
};

test('the same tests give the same drafts, however the file is written', async () => {
  await fc.assert(
    fc.asyncProperty(someTests, style, async (tests, how) => {
      const plain = await draftsOfFile(
        written(
          tests.map((one) => rowOf(one, PLAIN)),
          PLAIN,
        ),
      );
      expect(plain.length).toBeGreaterThan(0);
      expect(
        await draftsOfFile(
          written(
            tests.map((one) => rowOf(one, how)),
            how,
          ),
        ),
      ).toEqual(plain);
    }),
  );
});

test('the order of the rows does not matter', async () => {
  const shuffled = someTests.chain((tests) =>
    fc.tuple(fc.constant(tests), fc.shuffledSubarray(tests, { minLength: tests.length })),
  );
  await fc.assert(
    fc.asyncProperty(shuffled, async ([tests, others]) => {
      const file = (rows: readonly Told[]): string =>
        written(
          rows.map((one) => rowOf(one, PLAIN)),
          PLAIN,
        );
      expect(await draftsOfFile(file(others))).toEqual(await draftsOfFile(file(tests)));
    }),
  );
});

const BAD_ROWS = [
  ['Maren Holt', '31/02/2027', 'Back squat', '90', '5', ''],
  ['Maren Holt', '2027-02-01', 'Back squat', 'NaN', '5', ''],
  ['Maren Holt', '2027-02-01', 'Back squat', '90', '0', ''],
  ['Maren Holt', '2027-02-01', 'Back squat', '90', '5', '11'],
  ['Maren Holt', '', 'Back squat', '90', '5', ''],
  ['Maren Holt', '2028-02-01', 'Back squat', '90', '5', ''],
  ['Maren Holt', '2027-02-01', '', '90', '5', ''],
  ['Maren Holt', '2027-02-01', 'Back squat', '9\u00000', '5', ''],
  ['12', '2027-02-01', 'Back squat', '90', '5', ''],
];

test('one bad row keeps the whole file out, wherever it stands', async () => {
  await fc.assert(
    fc.asyncProperty(someTests, fc.constantFrom(...BAD_ROWS), fc.nat(), async (tests, bad, place) => {
      const rows = tests.map((one) => rowOf(one, PLAIN));
      const at = place % (rows.length + 1);
      const plan = await planned(written([...rows.slice(0, at), bad, ...rows.slice(at)], PLAIN), {
        context: { people: PEOPLE },
        answers: ANSWERS,
      });
      expect(plan.ready).toBe(false);
      expect(draftsIn(plan)).toEqual([]);
      expect(plan.problems.some(({ kind, row }) => kind === 'refused' && row === at + 2)).toBe(true);
    }),
  );
});

test('a file brought in twice gives nothing the second time', async () => {
  await fc.assert(
    fc.asyncProperty(someTests, async (tests) => {
      const file = written(
        tests.map((one) => rowOf(one, PLAIN)),
        PLAIN,
      );
      const first = await draftsOfFile(file);
      const recorded = first.flatMap(({ body }) => (body.kind === 'lifted' ? [body] : []));
      const again = await planned(file, { context: { people: PEOPLE, tests: recorded as never }, answers: ANSWERS });
      expect(again.preview.totals.facts).toBe(0);
      expect(again.preview.passedOver.length).toBeGreaterThanOrEqual(first.length);
    }),
  );
});

test('ten thousand rows are read, every one of them', async () => {
  const rows = Array.from({ length: 10_000 }, (_, index) => [
    NAMES[index % 3] ?? '',
    isoOfDay((20_870 - (Math.floor(index / 3) % 340)) as Day),
    ['Back squat', 'Bench press', 'Deadlift'][Math.floor(index / 1020) % 3] ?? '',
    `${40 + Math.floor(index / 3060)}.5`,
    '5',
    '',
  ]);
  const plan = await planned(written(rows, PLAIN), { context: { people: PEOPLE }, answers: ANSWERS });
  expect(refusals(plan)).toEqual([]);
  expect(plan.preview.totals.tests).toBe(10_000);
  expect(draftsIn(plan)).toHaveLength(10_000);
  const tooMany = await planned(written([...rows, rows[0] ?? []], PLAIN), {
    context: { people: PEOPLE },
    answers: ANSWERS,
  });
  expect(refusals(tooMany)).toEqual([
    'the file: The table has 10,001 rows below its header; at most 10,000 are taken.',
  ]);
});

const anyCell = fc
  .string({ unit: anyCharacter, maxLength: 12 })
  .map((text) => text.replace(/[\p{Cc}\p{Cs}\uFEFF]/gu, '').trim());

test('a table written as CSV reads back as it was, and nothing in it would be run', async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.array(fc.array(anyCell, { minLength: 3, maxLength: 3 }), { minLength: 1, maxLength: 5 }),
      async (rows) => {
        const filled = rows.map(([first = '', ...others]) => [`x${first}`, ...others, 'end']);
        const text = csvText(filled);
        const reading = await readTable(new TextEncoder().encode(text), 'a.csv');
        const back =
          reading.kind === 'read'
            ? (reading.sheets[0]?.rows ?? []).map(({ cells }) => cells.map((cell) => cell.text))
            : [];
        const runs = /^[=+\-@]/;
        for (const cell of back.flat()) if (runs.test(cell)) expect(cell).toMatch(/^[+-]?\d+(\.\d+)?$/);
        expect(back.map((row) => row.map((cell) => cell.replace(/^'(?=[=+\-@])/, '')))).toEqual(filled);
      },
    ),
  );
});
