import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { lastTestsOverLine } from './probability-over-line.ts';
import { RECOVERY_CONSTANTS } from './recovery-constants.table.ts';
import { recoveredLevel, timeConstantOfTwo, timeToLevel } from './recovery-curve.ts';
import { equilibriumScore, standingBalance, type BalanceTrials } from './standing-balance.ts';

/** The closed forms of the return against the same equations typed a second time. */

interface Fixture {
  readonly made: Readonly<Record<string, string | number>>;
  readonly trials: readonly { readonly forward: number; readonly backward: number; readonly score: number }[];
  readonly balances: readonly { readonly trials: BalanceTrials; readonly composite: number }[];
  readonly curves: readonly {
    readonly loss: number;
    readonly tau: number;
    readonly day: number;
    readonly level: number;
    readonly onDay: number;
    readonly time: number;
  }[];
  readonly constants: readonly {
    readonly losses: readonly [number, number];
    readonly days: readonly [number, number];
    readonly tau: number;
  }[];
  readonly gates: readonly {
    readonly scores: readonly number[];
    readonly error: number;
    readonly line: number;
    readonly mean: number;
    readonly sd: number;
    readonly probability: number;
  }[];
  readonly published: Readonly<Record<string, number>>;
}

const FILE = join(import.meta.dirname, '../../../test/fixtures/science/return.json');
// Written by the script that stands beside the file.
const fixture = JSON.parse(readFileSync(FILE, 'utf8')) as Fixture;

/** Both programs use doubles, and these sums are short; logarithms of near-equal losses are divided by. */
const isAs = (ours: number, theirs: number): boolean =>
  Math.abs(ours - theirs) <= 1e-10 * Math.max(1, Math.abs(theirs));

test('the reference says what made it', () => {
  expect(Object.keys(fixture.made)).toEqual(expect.arrayContaining(['by', 'seed', 'numpy', 'scipy']));
});

test('trials of standing balance and their composite are as recomputed', () => {
  const off = fixture.trials.filter((each) => !isAs(equilibriumScore(each.forward, each.backward), each.score));
  expect(off).toEqual([]);
  const apart = fixture.balances.filter(({ trials, composite }) => {
    const reading = standingBalance(trials);
    return reading.kind !== 'estimate' || !isAs(reading.value, composite);
  });
  expect(apart).toEqual([]);
});

test('levels, times and time constants are as recomputed', () => {
  const { curves, constants } = fixture;
  expect(curves.filter((each) => !isAs(recoveredLevel(each.loss, each.tau, each.day), each.onDay))).toEqual([]);
  expect(curves.filter((each) => !isAs(timeToLevel(each.loss, each.tau, each.level), each.time))).toEqual([]);
  expect(constants.filter(({ losses, days, tau }) => !isAs(timeConstantOfTwo(...losses, ...days), tau))).toEqual([]);
});

test('probabilities over a line are those of SciPy’s normal distribution', () => {
  const off = fixture.gates.filter(({ scores, error, line, mean, sd, probability }) => {
    const found = lastTestsOverLine(scores, error, line);
    return (
      found.kind !== 'estimate' ||
      !isAs(found.value, mean) ||
      !isAs(found.sd, sd) ||
      !isAs(found.probability, probability) ||
      found.testsUsed !== scores.length
    );
  });
  expect(fixture.gates.length).toBeGreaterThan(100);
  expect(off).toEqual([]);
});

test('the time constants of the table are those that the published figures give', () => {
  const computed = RECOVERY_CONSTANTS.filter(({ made }) => made === 'computed from the fact');
  const { logTime, oxygen, isokinetic, ankle, kneeFlexion, hip } = fixture.published;
  const off = [logTime, oxygen, isokinetic, ankle, kneeFlexion, hip].filter(
    (theirs, place) => !isAs(computed[place]?.timeConstant ?? Number.NaN, theirs ?? Number.NaN),
  );
  expect(computed).toHaveLength(6);
  expect(off).toEqual([]);
});
