import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { INVENTED_PEOPLE } from '#scenario/people.ts';
import { ANOTHER_CREW_PEOPLE } from '#scenario/spreadsheets/another-crew.ts';
import { testsWorkbook } from '#scenario/spreadsheets/column-per-lift.ts';
import readExcelFile from 'read-excel-file/node';
import { expect, test } from 'vitest';
import { EXAMPLES_TODAY, exampleFiles } from '../scripts/examples/example-files.ts';

const files = await exampleFiles();

test.each(files.map(({ path, content }) => [path, content] as const))(
  'examples/%s is as the scenario makes it: else run npx tsx scripts/examples/make-examples.ts',
  async (path, content) => {
    const kept = await readFile(join('examples', path));
    expect(kept.equals(content)).toBe(true);
  },
);

const textOf = (path: string): string => files.find((file) => file.path === path)?.content.toString('utf8') ?? '';

test('one test a row: byte-order mark, semicolons, decimal commas, two units', () => {
  const text = textOf('tests-one-a-row.csv');
  expect(text.startsWith('\uFEFF')).toBe(true);
  const rows = text
    .slice(1)
    .trimEnd()
    .split('\r\n')
    .map((row) => row.split(';'));
  expect(new Set(rows.map((row) => row.length))).toEqual(new Set([8]));
  expect(rows.some((row) => row[3] === '102,5')).toBe(true);
  expect(new Set(rows.slice(1).map((row) => row[4]))).toEqual(new Set(['kg', 'lb']));
});

test('the workbook has titles above, a blank row inside, an average below, and 225 for a woman of 61 kg', async () => {
  const workbook = files.find(({ path }) => path.endsWith('.xlsx'));
  const [sheet] = await readExcelFile(workbook?.content ?? Buffer.alloc(0));
  const rows = sheet?.data ?? [];
  const mirela = rows.find((row) => row[0] === 'Mirela Haug');
  expect(mirela?.slice(2, 4)).toEqual([61.2, 225]);
  expect(rows.filter((row) => row.every((cell) => cell === null)).length).toBe(3);
  expect(rows.at(-1)?.[0]).toBe('Average');
  expect(rows.length).toBe(testsWorkbook(EXAMPLES_TODAY).length);
});

test('another crew shares nobody with the scenario', () => {
  const names = ANOTHER_CREW_PEOPLE.slice(1).map((row) => row[0]);
  expect(names.filter((name) => INVENTED_PEOPLE.some((person) => person.name === name))).toEqual([]);
});
