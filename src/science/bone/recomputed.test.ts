import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { boneDensity, daySpan, fraction, barLoad, kilograms, newtons } from '#units/quantity.ts';
import { leastSignificantChange, precisionOfScans } from './dxa-precision.ts';
import { footForceLoad, groundFootForce, weightlessFootForce } from './foot-force.ts';
import { dailyLoadStimulus, type OuterExponent } from './load-stimulus.ts';
import { osteogenicWeek } from './osteogenic-index.ts';
import { daysToRecover, remainingDeficit } from './recovery.ts';
import { effectiveCycles, restAndSaturationStimulus } from './rest-and-saturation.ts';
import { fitPlateau, saturatingLoss } from './saturating-loss.ts';
import { standardScore } from './standard-score.ts';

/** Everything of bone against the same equations retyped in Python, and what R and SciPy have themselves. */

type Pair = readonly [number, number];

interface Recomputed {
  readonly precision: readonly {
    readonly people: readonly (readonly number[])[];
    readonly rmsSd: number;
    readonly least: number;
  }[];
  readonly scores: readonly {
    readonly density: number;
    readonly mean: number;
    readonly sd: number;
    readonly score: number;
  }[];
  readonly stimulus: readonly {
    readonly groups: readonly Pair[];
    readonly m: number;
    readonly outer: OuterExponent;
    readonly sum: number;
    readonly value: number;
  }[];
  readonly weeks: readonly {
    readonly sessions: readonly (readonly [hour: number, force: number, cycles: number])[];
    readonly value: number;
  }[];
  readonly bouts: readonly {
    readonly name: string;
    readonly bouts: readonly (readonly [gap: number, groups: readonly Pair[]])[];
    readonly m: number;
    readonly value: number;
  }[];
  readonly effective: readonly (readonly [number, number, number, number])[];
  readonly feet: readonly Readonly<
    Record<'mass' | 'pull' | 'allowance' | 'share' | 'bar' | 'weightless' | 'ground' | 'load', number>
  >[];
  readonly recovery: readonly Readonly<Record<'deficit' | 'halfLife' | 'days' | 'left' | 'twoPercent', number>>[];
  readonly saturating: readonly (readonly [number, number, number])[];
  readonly plateau: {
    readonly groups: readonly (readonly [days: number, loss: number, people: number])[];
    readonly value: number;
    readonly sd: number;
  };
}

const read = (name: string): unknown =>
  JSON.parse(readFileSync(join(import.meta.dirname, '../../../test/fixtures/science', name), 'utf8'));

// Written by the scripts that stand beside the files.
const reference = read('bone.json') as Recomputed;
const byR = read('bone-precision.json') as {
  readonly studies: readonly {
    readonly people: readonly (readonly number[])[];
    readonly residual: number;
    readonly freedom: number;
  }[];
};

/** Both sides use doubles: a few dozen operations leave less than this. */
const RELATIVE = 1e-12;

const far = (ours: number, theirs: number): boolean =>
  !(Math.abs(ours - theirs) <= RELATIVE * Math.max(1, Math.abs(theirs)));

const groupOf = ([cycles, force]: Pair) => ({ cycles, force });

test('precision is the residual standard error of R, people scanned equally often or not', () => {
  expect(byR.studies.length).toBeGreaterThan(4);
  for (const { people, residual, freedom } of byR.studies) {
    const found = precisionOfScans(people.map((scans) => scans.map(boneDensity)));
    expect(found).toMatchObject({ kind: 'estimate', degreesOfFreedom: freedom, people: people.length });
    expect(found.kind === 'estimate' && !far(found.value, residual)).toBe(true);
  }
});

test('where all are scanned equally often it is the root mean square of their standard deviations', () => {
  for (const { people, rmsSd, least } of reference.precision) {
    const found = precisionOfScans(people.map((scans) => scans.map(boneDensity)));
    expect(found.kind === 'estimate' && !far(found.value, rmsSd) && !far(found.leastSignificantChange, least)).toBe(
      true,
    );
    expect(far(leastSignificantChange(boneDensity(rmsSd)), least)).toBe(false);
  }
});

test('scores are those recomputed', () => {
  const off = reference.scores.filter(({ density, mean, sd, score }) =>
    far(standardScore(boneDensity(density), boneDensity(mean), boneDensity(sd)), score),
  );
  expect(off).toEqual([]);
});

test('the daily load stimulus is that recomputed, in both forms', () => {
  expect(reference.stimulus.length).toBeGreaterThan(60);
  const off = reference.stimulus.filter(({ groups, m, outer, sum, value }) => {
    const found = dailyLoadStimulus(groups.map(groupOf), { exponent: m, outer });
    return found.kind === 'refused' || far(found.sum, sum) || far(found.value, value);
  });
  expect(off).toEqual([]);
});

test('osteogenic weeks are those recomputed', () => {
  const off = reference.weeks.filter(({ sessions, value }) => {
    const found = osteogenicWeek(sessions.map(([atHour, force, cycles]) => ({ atHour, force, cycles })));
    return found.kind === 'refused' || far(found.value, value);
  });
  expect(off).toEqual([]);
});

test('the rest-and-saturation stimulus is that recomputed, short gaps and all', () => {
  expect(reference.bouts.length).toBeGreaterThan(20);
  const off = reference.bouts.filter(({ bouts, m, value }) => {
    const day = bouts.map(([gapHours, groups]) => ({ gapHours, groups: groups.map(groupOf) }));
    const found = restAndSaturationStimulus(day, m);
    return found.kind === 'refused' || far(found.value, value);
  });
  expect(off.map(({ name }) => name)).toEqual([]);
  expect(reference.effective.filter(([s, before, n, value]) => far(effectiveCycles(s, before, n), value))).toEqual([]);
});

test('foot forces are those recomputed', () => {
  const off = reference.feet.filter(({ mass, pull, allowance, share, bar, weightless, ground, load }) => {
    const body = kilograms(mass);
    return (
      far(weightlessFootForce(fraction(share), newtons(pull), fraction(allowance), body), weightless) ||
      far(groundFootForce(fraction(share), barLoad(bar), body), ground) ||
      far(footForceLoad(barLoad(bar), body), load)
    );
  });
  expect(off).toEqual([]);
});

test('recovery is that recomputed', () => {
  const off = reference.recovery.filter(
    ({ deficit, halfLife, days, left, twoPercent }) =>
      far(remainingDeficit(deficit, daySpan(days), daySpan(halfLife)), left) ||
      far(daysToRecover(deficit, 2, daySpan(halfLife)), twoPercent),
  );
  expect(off).toEqual([]);
});

test('the bending line is that recomputed, and its plateau is the one that SciPy finds', () => {
  expect(reference.saturating.filter(([top, days, loss]) => far(saturatingLoss(top, daySpan(days)), loss))).toEqual([]);
  const { groups, value, sd } = reference.plateau;
  const found = fitPlateau(groups.map(([days, loss, people]) => ({ days, loss, people })));
  // An iterative search against a quotient: it stops within its own tolerance.
  expect(found.kind === 'estimate' && Math.abs(found.value - value) < 1e-6 && Math.abs(found.sd - sd) < 1e-6).toBe(
    true,
  );
});
