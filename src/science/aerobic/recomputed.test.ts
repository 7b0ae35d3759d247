import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { callWith } from '../formula.ts';
import { AEROBIC } from './chapters.ts';

/** Every formula of this folder against the printed equation, retyped in another language by a separate program. */

interface Fixture {
  readonly made: Readonly<Record<string, string | number>>;
  /** What goes in and, last, what comes out. */
  readonly equations: Readonly<Record<string, readonly (readonly number[])[]>>;
}

const FILE = join(import.meta.dirname, '../../../test/fixtures/science/aerobic.json');
// Written by the script that stands beside the file.
const { made, equations } = JSON.parse(readFileSync(FILE, 'utf8')) as Fixture;

const formulas = AEROBIC.chapters.flatMap((chapter) => chapter.formulas ?? []);

/** Both programs use doubles; an expression of a few terms leaves less than this, relative to the value or to one. */
const WITHIN = 1e-12;

test('the recomputation says what made it', () => {
  expect(Object.keys(made)).toEqual(expect.arrayContaining(['by', 'seed', 'python', 'numpy']));
});

test('every formula of this folder was recomputed, and nothing else', () => {
  // The recovery is recomputed there too, and is held beside its own law.
  const ofThisFolder = Object.keys(equations).filter((id) => !id.startsWith('recovery/'));
  expect(ofThisFolder.toSorted()).toEqual(formulas.map(({ record }) => record.id).toSorted());
});

test.each(formulas.map((formula) => [formula.record.id, formula] as const))(
  '%s gives what Python gives',
  (id, formula) => {
    const rows = equations[id] ?? [];
    expect(rows.length).toBeGreaterThan(10);
    const off = rows.filter((row) => {
      const [given, value] = [row.slice(0, -1), row.at(-1) ?? Number.NaN];
      return !(Math.abs(callWith(formula, given) - value) <= WITHIN * Math.max(1, Math.abs(value)));
    });
    expect(off).toEqual([]);
  },
);
