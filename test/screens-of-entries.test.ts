import { format, resolveConfig } from 'prettier';
import { expect, test } from 'vitest';
import { ALL_RECORDS } from '#science/textbook.ts';
import { SCREENS_OF_ENTRIES } from '#web/pages/evidence/entries/screens-of-entries.table.ts';
import { isTest, sourcesIn, type Source } from './architecture/source.ts';
import { scienceOfScreens } from './evidence/screens-of-entries.ts';
import { idsIn, screensById, tableText } from './evidence/table-text.ts';

const TABLE = '../src/web/pages/evidence/entries/screens-of-entries.table.ts';

const sources = sourcesIn(['src'], /\.tsx?$/).filter((source) => !isTest(source));
const reached = scienceOfScreens(sources);

type Exports = Readonly<Record<string, unknown>>;

/** What the reached modules of src/science export when they run. */
const exportsByPath = new Map<string, Exports>();
for (const path of new Set([...reached.values()].flat().map((place) => place.path)))
  exportsByPath.set(path, (await import(new URL(`../${path}`, import.meta.url).href)) as Exports);

const screens = screensById(reached, (path) => exportsByPath.get(path) ?? {});

test('the table of screens is what the sources say; npx vitest run test/screens-of-entries.test.ts --update writes it anew', async () => {
  const config = await resolveConfig(import.meta.filename);
  const text = await format(tableText(screens), { ...config, parser: 'typescript' });
  await expect(text).toMatchFileSnapshot(TABLE);
});

test('only entries of the textbook are in the table', () => {
  const ids = new Set(ALL_RECORDS.map(({ id }) => id));
  expect(Object.keys(SCREENS_OF_ENTRIES).filter((id) => !ids.has(id))).toEqual([]);
});

test('what a card is loaded with is on the card, and what a test gives is in the capacity', () => {
  expect(SCREENS_OF_ENTRIES['crossing/machine-target']).toEqual(expect.arrayContaining(['Sheet', 'Card', 'Crossing']));
  expect(SCREENS_OF_ENTRIES['one-rep-max/wathan']).toEqual(expect.arrayContaining(['Capacity']));
});

const file = (path: string, text: string): Source => ({ path, text });
const SMALL = [
  file('src/science/a.ts', 'export const used = (x: number) => half(x); const half = (x: number) => x / 2;'),
  file('src/science/b.ts', 'export const unused = 1; export const other = { plot: used, x: 1 };'),
  file('src/contract/windows/desk-window.ts', 'export interface DeskWindow { readonly x: number }'),
  file(
    'src/server/windows/desk-window.ts',
    "import type { DeskWindow } from '#contract/windows/desk-window.ts'; import { used as half } from '#science/a.ts';" +
      'export const deskWindow = (): DeskWindow => ({ x: half(1) });',
  ),
  file(
    'src/web/pages/desk/desk-page.tsx',
    "import type { DeskWindow } from '#contract/windows/desk-window.ts';" +
      'export default function DeskPage() { const desk: DeskWindow | null = null; return desk; }',
  ),
];

test('a screen is followed to its window, to what makes that, and to the formula in it', () => {
  const small = scienceOfScreens(SMALL);
  expect(small.get('Desk')).toEqual([
    { path: 'src/science/a.ts', name: 'used' },
    { path: 'src/science/a.ts', name: 'half' },
  ]);
  expect(small.get('Card')).toEqual([]);
});

test('records are found in lists, dictionaries and reckonings', () => {
  const entry = Object.assign(() => 1, { record: { id: 'a/b' } });
  expect(idsIn([entry, { more: entry }, new Map([['x', entry]])])).toEqual(['a/b', 'a/b', 'a/b']);
  expect(idsIn({ formulas: [entry] })).toEqual(['a/b']);
  expect(idsIn('a/b')).toEqual([]);
});
