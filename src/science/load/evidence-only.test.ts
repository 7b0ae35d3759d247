import { expect, test } from 'vitest';
import { importsOf } from '../../../test/architecture/imports.ts';
import { sourcesIn, type Source } from '../../../test/architecture/source.ts';

/** Training load may be read about and nothing more: no screen, no rule and no plan may come to rest on it. */

const sources = sourcesIn(['src'], /\.(tsx?|mjs)$/);

const EVIDENCE = /^src\/web\/(.*\/)?evidence[^/]*(\/|\.tsx?$)/;

const touchesLoad = (source: Source): boolean =>
  importsOf(source).some((specifier) =>
    source.path.startsWith('src/science/')
      ? /^(\.\/|\.\.\/)load\//.test(specifier) || specifier.startsWith('#science/load')
      : /science\/load(\/|$)/.test(specifier),
  );

const outside = sources.filter(({ path }) => !path.startsWith('src/science/load/'));

test('no file outside Evidence imports training load', () => {
  const strays = outside.filter(({ path }) => !path.startsWith('src/science/') && !EVIDENCE.test(path));
  expect(strays.length).toBeGreaterThan(100);
  expect(strays.filter(touchesLoad).map(({ path }) => path)).toEqual([]);
});

test('within the science only the textbook does', () => {
  const within = outside.filter(({ path }) => path.startsWith('src/science/'));
  expect(within.filter(touchesLoad).map(({ path }) => path)).toEqual(['src/science/textbook.ts']);
});

test('a breach would be seen', () => {
  const breach = (path: string, text: string): boolean => touchesLoad({ path, text });
  expect(breach('src/planning/a.ts', "import { weeklyLoad } from '#science/load/weekly-load.ts';")).toBe(true);
  expect(breach('src/web/pages/desk/a.tsx', "import '../../../science/load/weekly-load.ts';")).toBe(true);
  expect(breach('src/science/return/a.ts', "export { weeklyLoad } from '../load/weekly-load.ts';")).toBe(true);
  expect(breach('src/planning/a.ts', "import { load } from '#science/inputs.ts';")).toBe(false);
});
