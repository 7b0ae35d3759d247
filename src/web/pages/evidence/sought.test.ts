import { expect, test } from 'vitest';
import type { Part } from '#science/chapter.ts';
import type { SeriesCheck } from '#science/check.ts';
import { formula, type Source } from '#science/formula.ts';
import { method } from '#science/method.ts';
import { outlineOf, recordOf } from './outline.ts';
import { countOf, foundIn, foundSources, wordsOf } from './sought.ts';

const PAPER: Source = { text: 'Nóvak N. (1999) A paper.', status: 'from memory', doi: '10.1/abc', note: 'Page 3.' };
const OURS: Source = { text: 'Our own design.', status: 'our own design' };
const range = { possible: [0, 9], valid: [0, 9] } as const;

const lifted = formula(
  {
    id: 'lift/first',
    revision: 1,
    title: 'Maximum of a lift',
    equation: 'n_eff + 1',
    inputs: [{ name: 'effective repetitions', symbol: 'n_eff', unit: 'repetitions', ...range }],
    output: { name: 'maximum', symbol: 'R', unit: 'kg' },
    conditions: [{ says: 'The set went to failure.', holds: () => true }],
    source: PAPER,
    doesNotKnow: 'who was tired',
  },
  (n: number) => n + 1,
);
const filtered = method(
  {
    id: 'filter/level',
    revision: 1,
    title: 'Level over time',
    equations: ['x_t = x + w'],
    inputs: [{ name: 'observation', symbol: 'y_t', unit: 'kg', ...range }],
    outputs: [{ name: 'level', symbol: 'x_t', unit: 'kg' }],
    refuses: ['Days out of order.'],
    source: OURS,
    doesNotKnow: 'the future',
  },
  () => 1,
);
const remembered = formula(
  {
    id: 'lift/second',
    revision: 1,
    title: 'Pull of a lift',
    equation: '2 · m',
    inputs: [{ name: 'mass', symbol: 'm', unit: 'kg', ...range }],
    output: { name: 'pull', symbol: 'P', unit: 'kg' },
    source: { text: 'Read R. (2001) Another paper.', status: 'seen' },
    equationFromMemory: true,
    doesNotKnow: 'grip',
  },
  (m: number) => 2 * m,
);
const losses = {
  record: { id: 'loss/flights', revision: 1, title: 'Losses', source: OURS, doesNotKnow: 'sex' },
  columns: [{ name: 'muscle', unit: '' }],
  shown: [['soleus'], [-12.5], [null]],
};
const further: SeriesCheck = {
  kind: 'series',
  title: 'A whole column',
  compute: () => 1,
  printed: 1,
  within: 0,
  because: 'exact',
  source: PAPER,
};

const PARTS: readonly Part[] = [
  {
    heading: 'Strength',
    says: 'Lifts.',
    chapters: [{ heading: 'Sets', says: 'One set.', formulas: [lifted, remembered], checks: [further] }],
  },
  {
    heading: 'Time',
    says: 'Days.',
    chapters: [
      { heading: 'Filters', says: 'Levels.', methods: [filtered], checks: [] },
      { heading: 'Flights', says: 'Losses.', tables: [losses], checks: [] },
    ],
  },
];
const OUTLINE = outlineOf(PARTS);
const found = (sought: string): readonly string[] =>
  foundIn(OUTLINE, wordsOf(sought)).flatMap(({ chapters }) =>
    chapters.flatMap(({ entries }) => entries.map((entry) => recordOf(entry).id)),
  );

test.each([
  ['a title', 'maximum lift', ['lift/first']],
  ['a symbol as it is written', 'n_eff', ['lift/first']],
  ['a symbol as it is read', 'neff', ['lift/first']],
  ['an author without the accent', 'NOVAK', ['lift/first']],
  ['an id', 'filter/level', ['filter/level']],
  ['a doi', '10.1/abc', ['lift/first']],
  ['what it does not know', 'tired', ['lift/first']],
  ['a condition', 'failure', ['lift/first']],
  ['what is refused', 'out of order', ['filter/level']],
  ['a cell of a table', 'soleus', ['loss/flights']],
  ['a number in a table, typed with a hyphen', '-12.5', ['loss/flights']],
  ['how far the source was checked', 'from memory', ['lift/first', 'lift/second']],
  ['an equation that was not seen of a paper that was', 'paper seen, equation from memory', ['lift/second']],
  ['the kind and the part', 'method time', ['filter/level']],
  ['nothing that no entry holds in full', 'soleus failure', []],
])('%s is found', (_, sought, ids) => {
  expect(found(sought)).toEqual(ids);
});

test('without a word everything is there, and the numbers of chapters stay when some are left out', () => {
  expect(countOf(foundIn(OUTLINE, wordsOf('  ')))).toBe(4);
  expect(foundIn(OUTLINE, wordsOf('soleus')).map(({ chapters }) => chapters.map(({ number }) => number))).toEqual([
    ['2.2'],
  ]);
});

test('checks of more than one entry are found by what they are of', () => {
  const [part] = foundIn(OUTLINE, wordsOf('whole column'));
  expect(part?.chapters[0]?.further).toEqual([further]);
  expect(part?.chapters[0]?.entries).toEqual([]);
});

test('sources are found by author, status and note', () => {
  expect(foundSources([PAPER, OURS], wordsOf('novak memory page'))).toEqual([PAPER]);
  expect(foundSources([PAPER, OURS], [])).toEqual([PAPER, OURS]);
});
