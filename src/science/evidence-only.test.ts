import { posix } from 'node:path';
import { expect, test } from 'vitest';
import { importsOf } from '../../test/architecture/imports.ts';
import { sourcesIn, type Source } from '../../test/architecture/source.ts';

/** Some of the science may be read about and nothing more: no screen, no rule and no plan may come to rest on it. */

const sources = sourcesIn(['src'], /\.(tsx?|mjs)$/);

const isTest = ({ path }: Source): boolean => /\.test\.tsx?$/.test(path);
const isScience = ({ path }: Source): boolean => path.startsWith('src/science/');

/** Where the science is read about: the page, and the text that is made of the same records. */
const isReading = ({ path }: Source): boolean =>
  path.startsWith('src/web/pages/evidence/') || path === 'src/main/references-text.ts';

/** The files that a file imports or re-exports, from the root. */
const targetsOf = (source: Source): readonly string[] => {
  const targets = targetsBySource.get(source) ?? importsOf(source).map((specifier) => targetOf(source, specifier));
  targetsBySource.set(source, targets);
  return targets;
};

/** Every test asks all files. */
const targetsBySource = new WeakMap<Source, readonly string[]>();

const targetOf = ({ path }: Source, specifier: string): string => {
  if (specifier.startsWith('#')) return `src/${specifier.slice(1)}`;
  return specifier.startsWith('.') ? posix.join(posix.dirname(path), specifier) : specifier;
};

const importersOf = (guarded: RegExp, among: readonly Source[] = sources): readonly string[] =>
  among
    .filter((source) => !guarded.test(source.path) && targetsOf(source).some((target) => guarded.test(target)))
    .map(({ path }) => path)
    .toSorted();

interface EvidenceOnly {
  readonly what: string;
  readonly guarded: RegExp;
  /** Within the science, tests apart, who else may import it. */
  readonly within: readonly string[];
}

const EVIDENCE_ONLY: readonly EvidenceOnly[] = [
  { what: 'training load', guarded: /^src\/science\/load(\/|$)/, within: ['src/science/textbook.ts'] },
  {
    what: 'the stimulus of bone',
    guarded: /^src\/science\/bone\/(osteogenic-index|load-stimulus|rest-and-saturation)\.ts$/,
    within: ['src/science/bone/chapters.ts', 'src/science/bone/loading.checks.ts'],
  },
];

test.each(EVIDENCE_ONLY)('no file outside the science imports $what, Evidence apart', ({ guarded }) => {
  const strays = sources.filter((source) => !isScience(source) && !isReading(source));
  expect(strays.length).toBeGreaterThan(100);
  expect(importersOf(guarded, strays)).toEqual([]);
});

test.each(EVIDENCE_ONLY)('within the science only its chapters and checks import $what', ({ guarded, within }) => {
  expect(
    importersOf(
      guarded,
      sources.filter((source) => isScience(source) && !isTest(source)),
    ),
  ).toEqual(within);
});

test('the posterior of the adherence stays inside the forecasts: what was done is shown as plain counts', () => {
  const posterior = /^src\/science\/projection\/adherence\.ts$/;
  const outside = sources.filter((source) => !source.path.startsWith('src/science/projection/') && !isTest(source));
  expect(importersOf(posterior, outside)).toEqual([]);
  expect(importersOf(posterior)).toContain('src/science/projection/model.ts');
});

test('the whole textbook is opened by Evidence, the references and tests alone', () => {
  const strays = sources.filter((source) => !isReading(source) && !isTest(source));
  expect(importersOf(/^src\/science\/textbook\.ts$/, strays)).toEqual([]);
  expect(importersOf(/^src\/science\/textbook\.ts$/)).toContain('src/web/pages/evidence/evidence-page.tsx');
  const byAnotherDoor = /^src\/science\/([\w-]+\/)*([\w-]*chapters|[\w-]+\.checks)\.ts$/;
  expect(
    importersOf(
      byAnotherDoor,
      strays.filter((source) => !isScience(source)),
    ),
  ).toEqual([]);
  expect(importersOf(byAnotherDoor)).toContain('src/science/textbook.ts');
});

test('a breach would be seen', () => {
  const [load, stimulus] = EVIDENCE_ONLY.map(({ guarded }) => guarded) as [RegExp, RegExp];
  const breaches = (guarded: RegExp, path: string, text: string): boolean =>
    importersOf(guarded, [{ path, text }]).length > 0;
  expect(breaches(load, 'src/planning/a.ts', "import { weeklyLoad } from '#science/load/weekly-load.ts';")).toBe(true);
  expect(breaches(load, 'src/web/pages/desk/a.tsx', "import '../../../science/load/weekly-load.ts';")).toBe(true);
  expect(breaches(load, 'src/science/return/a.ts', "export { weeklyLoad } from '../load/weekly-load.ts';")).toBe(true);
  expect(breaches(load, 'src/planning/a.ts', "import { load } from '#science/inputs.ts';")).toBe(false);
  expect(breaches(stimulus, 'src/web/a.tsx', "import { standing } from '#science/bone/rest-and-saturation.ts';")).toBe(
    true,
  );
  expect(breaches(stimulus, 'src/web/a.tsx', "import { x } from '#science/bone/loading-floors.ts';")).toBe(false);
});

test('a screen is no Evidence because its file is called so', () => {
  expect(isReading({ path: 'src/web/pages/evidence/front.tsx', text: '' })).toBe(true);
  expect(isReading({ path: 'src/web/pages/desk/evidence-line.tsx', text: '' })).toBe(false);
  expect(isReading({ path: 'src/web/pages/evidence.tsx', text: '' })).toBe(false);
});
