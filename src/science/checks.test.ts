import { expect, test } from 'vitest';
import { CHECK_GROUPS } from './checks.ts';
import { ALL_FORMULAS } from './formulas.ts';
import { recompute, type Check } from './formula.ts';
import { ALL_SOURCES } from './sources.ts';

const nameOf = (check: Check): string =>
  check.kind === 'series' ? check.title : `${check.formula.record.id}(${check.given.join(', ')})`;

test.each(CHECK_GROUPS)('$title: every printed value is reproduced', ({ checks }) => {
  expect(checks.length).toBeGreaterThan(0);
  const broken = checks
    .map((check) => ({ check, ...recompute(check) }))
    .filter(({ holds }) => !holds)
    .map(({ check, value }) => `${nameOf(check)} is printed ${check.printed} ± ${check.within}, and gives ${value}`);
  expect(broken).toEqual([]);
});

test('every check says why its tolerance is what it is', () => {
  const silent = CHECK_GROUPS.flatMap(({ checks }) => checks).filter(({ because }) => because.length < 5);
  expect(silent.map(nameOf)).toEqual([]);
});

test('a check that is off by more than its tolerance does not hold', () => {
  const off = CHECK_GROUPS.flatMap(({ checks }) => checks).map((check) => ({
    ...check,
    printed: check.printed + 3 * check.within + 1e-6,
  }));
  expect(off.filter((check) => recompute(check).holds).map(nameOf)).toEqual([]);
});

test('every formula has a check', () => {
  const checked = new Set(
    CHECK_GROUPS.flatMap(({ checks }) => checks).flatMap((check) =>
      check.kind === 'formula' ? [check.formula.record.id] : [],
    ),
  );
  const unchecked = ALL_FORMULAS.filter(({ record }) => !checked.has(record.id)).map(({ record }) => record.id);
  expect(unchecked).toEqual([]);
});

test('every source that a formula names is in the list of sources', () => {
  const texts = new Set(ALL_SOURCES.map(({ text }) => text));
  const named = ALL_FORMULAS.flatMap(({ record }) => [record.source, ...(record.restsOn ?? [])]);
  expect(named.filter(({ text }) => !texts.has(text))).toEqual([]);
});
