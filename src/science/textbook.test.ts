import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { recompute, type Check } from './check.ts';
import { impossibilities } from './evaluate.ts';
import { checkedAs, type EntryRecord, type FormulaInput, type Source } from './formula.ts';
import {
  ALL_CHAPTERS,
  ALL_CHECKS,
  ALL_FORMULAS,
  ALL_METHODS,
  ALL_RECORDS,
  ALL_SOURCES,
  ALL_TABLES,
} from './textbook.ts';

const nameOf = (check: Check): string =>
  check.kind === 'formula' ? `${check.formula.record.id}(${check.given.join(', ')})` : check.title;

test.each(ALL_CHAPTERS)('$heading: every printed value is reproduced', ({ checks }) => {
  expect(checks.length).toBeGreaterThan(0);
  const broken = checks
    .map((check) => ({ check, ...recompute(check) }))
    .filter(({ holds }) => !holds)
    .map(({ check, value }) => `${nameOf(check)} is printed ${check.printed} ± ${check.within}, and gives ${value}`);
  expect(broken).toEqual([]);
});

test('every check says why its tolerance is what it is', () => {
  expect(ALL_CHECKS.filter(({ because }) => because.length < 5).map(nameOf)).toEqual([]);
});

test('a check that is off by more than its tolerance does not hold', () => {
  const off = ALL_CHECKS.map((check) => ({ ...check, printed: check.printed + 3 * check.within + 1e-6 }));
  expect(off.filter((check) => recompute(check).holds).map(nameOf)).toEqual([]);
});

test('every formula and every method has a check', () => {
  const checked = new Set(
    ALL_CHECKS.map((check) =>
      check.kind === 'formula' ? check.formula.record.id : check.kind === 'method' ? check.method.record.id : '',
    ),
  );
  const unchecked = [...ALL_FORMULAS, ...ALL_METHODS].filter(({ record }) => !checked.has(record.id));
  expect(unchecked.map(({ record }) => record.id)).toEqual([]);
});

test('a formula is checked where it is possible', () => {
  const impossible = ALL_CHECKS.filter(
    (check) => check.kind === 'formula' && impossibilities(check.formula.record, check.given).length > 0,
  );
  expect(impossible.map(nameOf)).toEqual([]);
});

test('whatever is checked stands in the textbook', () => {
  const entries = new Set<unknown>([...ALL_FORMULAS, ...ALL_METHODS]);
  const strays = ALL_CHECKS.filter(
    (check) =>
      (check.kind === 'formula' && !entries.has(check.formula)) ||
      (check.kind === 'method' && !entries.has(check.method)),
  );
  expect(strays.map(nameOf)).toEqual([]);
});

test('no two entries share an id or a title', () => {
  expect(twice(ALL_RECORDS.map(({ id }) => id))).toEqual([]);
  expect(twice(ALL_RECORDS.map(({ title }) => title))).toEqual([]);
});

test.each(ALL_RECORDS)('$id says all that a reader needs', (record: EntryRecord) => {
  expect(record.id).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*\/[a-z0-9]+(-[a-z0-9]+)*$/);
  expect(record.revision).toBeGreaterThanOrEqual(1);
  for (const text of [record.title, record.doesNotKnow, record.source.text]) expect(text.trim()).not.toBe('');
  if (record.plot) expect(record.plot.says.trim()).not.toBe('');
});

test('a formula takes as many numbers as its record lists, and prints its equation and units', () => {
  const crooked = ALL_FORMULAS.filter(
    ({ length, record }) =>
      length !== record.inputs.length || record.equation.trim() === '' || record.output.unit.trim() === '',
  );
  expect(crooked.map(({ record }) => record.id)).toEqual([]);
});

test('a method prints its equations, inputs, outputs and what it refuses', () => {
  const bare = ALL_METHODS.filter(({ record: { equations, inputs, outputs, refuses } }) =>
    [equations, inputs, outputs, refuses].some((list) => list.length === 0),
  );
  expect(bare.map(({ record }) => record.id)).toEqual([]);
});

test('a row of a table has a cell for each column', () => {
  expect(ALL_TABLES.filter(({ shown }) => shown.length === 0).map(({ record }) => record.id)).toEqual([]);
  const ragged = ALL_TABLES.filter(({ columns, shown }) => shown.some((row) => row.length !== columns.length));
  expect(ragged.map(({ record }) => record.id)).toEqual([]);
});

test('a valid range lies inside the possible one', () => {
  const outside = ({ possible, valid }: FormulaInput): boolean =>
    !(possible[0] <= valid[0] && valid[0] <= valid[1] && valid[1] <= possible[1]);
  const entries = [...ALL_FORMULAS, ...ALL_METHODS];
  expect(entries.filter(({ record }) => record.inputs.some(outside)).map(({ record }) => record.id)).toEqual([]);
});

test('every plot has curves of finite points, and no two curves of one name', () => {
  const faults = ALL_RECORDS.flatMap(({ id, plot }) => {
    if (!plot) return [];
    const curves = plot.curves();
    const finite = curves.every(({ points, band = [] }) => [...points, ...band].flat().every(Number.isFinite));
    const complete = curves.length > 0 && curves.every(({ points }) => points.length > 0);
    return finite && complete && twice(curves.map(({ label }) => label)).length === 0 ? [] : [id];
  });
  expect(faults).toEqual([]);
});

/** Of papers whose note has an equation or a constant from memory, what rests on another part of them, which was seen. */
const ON_WHAT_WAS_SEEN = [
  'bone/least-significant-change',
  'bone/osteogenic-index',
  'bone/precision',
  'bone/scan-change',
  'jump-power/sayers-squat-jump',
  'maximal-heart-rate/gellish',
];

test('an equation that was not seen says so, however well its paper was seen', () => {
  const noted = ALL_RECORDS.filter(
    ({ source: { status, note = '' } }) =>
      status === 'seen' &&
      /\b(equations?|form|line|constants?|multipliers|precision)\b(?:[^.;]|\.\d)*from memory/.test(note),
  ).map(({ id }) => id);
  const flagged = ALL_RECORDS.filter(({ equationFromMemory }) => equationFromMemory);
  expect(flagged.map(({ id }) => id).toSorted()).toEqual(
    noted.filter((id) => !ON_WHAT_WAS_SEEN.includes(id)).toSorted(),
  );
  expect(noted).toEqual(expect.arrayContaining(ON_WHAT_WAS_SEEN));
  expect(flagged.length).toBeGreaterThan(10);
});

test('how far an entry was checked names the equation, or the figures of a table, where they were not seen', () => {
  const said = (id: string): string =>
    ALL_RECORDS.filter((record) => record.id === id)
      .map(checkedAs)
      .join();
  expect(said('critical-power/time-constant-integral')).toBe('paper seen, equation from memory');
  expect(said('level/filter')).toBe('paper seen, equation from memory');
  expect(said('bone/worst-acceptable-precision')).toBe('paper seen, figures from memory');
  expect(said('jump-power/sayers-squat-jump')).toBe('seen');
});

test('a paper is cited in one wording only', () => {
  expect(twice(ALL_SOURCES.map(({ text }) => text))).toEqual([]);
  expect(twice(ALL_SOURCES.flatMap(({ doi }) => doi ?? []))).toEqual([]);
});

const isSource = (value: unknown): value is Source =>
  typeof value === 'object' && value !== null && 'text' in value && 'status' in value;

/** Every source that a file of sources gives out, also those that stand in a cell of a table only. */
const givenSources = async (): Promise<readonly Source[]> => {
  const folder = import.meta.dirname;
  const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((file) =>
    file.endsWith('sources.ts'),
  );
  const modules = await Promise.all(
    files.map(async (file) => (await import(join(folder, file))) as Readonly<Record<string, unknown>>),
  );
  return modules.flatMap((module) => Object.values(module)).filter(isSource);
};

/** First author and year; journal, volume and first page where they are told. */
const paperOf = ({ text }: Source): { readonly by: string; readonly place: string } | null => {
  const by = /^(?<surname>[^.(]+?) \p{Lu}[\p{Lu}.-]*[,.( ].*?\((?<year>\d{4})/u.exec(text)?.groups;
  if (!by) return null;
  const place = /(?<journal>[^.]+) (?<volume>\d+)(?:\([^)]*\))?:(?<page>\w+)/.exec(text)?.groups;
  return {
    by: `${by['surname']} ${by['year']}`,
    place: place ? `${place['journal']?.trim()} ${place['volume']}:${place['page']}` : '',
  };
};

const samePaper = (one: Source, other: Source): boolean => {
  const [a, b] = [paperOf(one), paperOf(other)];
  return a !== null && b !== null && a.by === b.by && (a.place === '' || b.place === '' || a.place === b.place);
};

test('a paper stands once: no two sources share first author, year and place', async () => {
  const sources = [
    ...new Map([...ALL_SOURCES, ...(await givenSources())].map((source) => [source.text, source])).values(),
  ];
  expect(sources.filter((source) => paperOf(source) !== null).length).toBeGreaterThan(100);
  const pairs = sources.flatMap((one, place) =>
    sources.slice(place + 1).flatMap((other) => (samePaper(one, other) ? [[one.text, other.text]] : [])),
  );
  expect(pairs).toEqual([]);
});

test('one paper under two titles would be seen', () => {
  const cited = (text: string): Source => ({ text, status: 'seen' });
  const once = cited('de Nóvak N.-P. et al. (1999) One title. Journal of Things 43:21–28.');
  expect(samePaper(once, cited('de Nóvak N.-P., Other O. (1999) Another. Journal of Things 43(2):21–28.'))).toBe(true);
  expect(samePaper(once, cited('de Nóvak N.-P. (1999) Another. Journal of Things.'))).toBe(true);
  expect(samePaper(once, cited('de Nóvak N.-P. (1999) Another. Journal of Things 43:29–31.'))).toBe(false);
  expect(samePaper(once, cited('de Nóvak N.-P. (1998) One title. Journal of Things 43:21–28.'))).toBe(false);
});

test('the line above a formula in the source is its title', () => {
  const folder = import.meta.dirname;
  const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((file) => /^[\w/-]+\.ts$/.test(file));
  const text = files.map((file) => readFileSync(join(folder, file), 'utf8')).join('\n');
  const lines = [...text.matchAll(/\/\*\* (?<line>[^*]+?)\. \*\/\nexport const \w+ = formula[<(]/g)].flatMap(
    ({ groups }) => groups?.['line'] ?? [],
  );
  expect(lines.length).toBeGreaterThan(40);
  const titles = new Set(ALL_FORMULAS.map(({ record }) => record.title));
  expect(lines.filter((line) => !titles.has(line))).toEqual([]);
});

const twice = (names: readonly string[]): readonly string[] =>
  names.filter((name, place) => names.indexOf(name) !== place);
