import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fraction, seconds, type Fraction } from '#units/quantity.ts';
import { simulateCompartments } from './compartment-simulation.ts';
import { POOLED_GRIP, SUSTAINED_GRIP, type FatigueConstants } from './fatigue-constants.table.ts';
import { tiredAfterRest } from './three-compartments.ts';
import { contraction, sustainedEndurance } from './work-phases.ts';

interface FromScipy {
  readonly made: Readonly<Record<string, string | number>>;
  readonly sustained: readonly { readonly constants: string; readonly target: number; readonly seconds: number }[];
  readonly intervals: readonly {
    readonly constants: string;
    readonly phases: readonly { readonly target: number; readonly seconds: number }[];
    readonly ends: readonly (readonly [number, number, number])[];
  }[];
}

// Written by the script that stands beside the file.
const { made, sustained, intervals } = JSON.parse(
  readFileSync(join(import.meta.dirname, '../../../test/fixtures/science/hand-scipy.json'), 'utf8'),
) as FromScipy;

const PERSON: FatigueConstants = {
  fatigue: 0.6 / 49,
  recovery: 0.4 / (70 * (0.7 + 12.51 * 0.3)),
  restMultiplier: 12.51,
};
const NAMED: Readonly<Record<string, FatigueConstants>> = {
  'sustained fit': SUSTAINED_GRIP,
  pooled: POOLED_GRIP,
  person: PERSON,
};
const constantsNamed = (name: string): FatigueConstants => NAMED[name] ?? PERSON;

const rates = {
  fatigue: fc.double({ min: 0.004, max: 0.04, noNaN: true }),
  recovery: fc.double({ min: 0.0002, max: 0.006, noNaN: true }),
};
const anyConstants: fc.Arbitrary<FatigueConstants> = fc.record({
  ...rates,
  restMultiplier: fc.double({ min: 5, max: 40, noNaN: true }),
});
const anyShare = fc.double({ min: 0, max: 1, noNaN: true }).map(fraction);

test('the reference says what made it', () => {
  expect(Object.keys(made)).toEqual(['by', 'python', 'numpy', 'scipy', 'seed']);
});

test.each(sustained)(
  '$constants constants hold $target as long as SciPy has it',
  ({ constants, target, seconds: lasts }) => {
    const set = constantsNamed(constants);
    const full = simulateCompartments([{ target: fraction(target), seconds: seconds(lasts + 5) }], set, 0.05);
    if (full.kind === 'refused') throw new Error(full.reason);
    // Both are good to far less than a hundredth of a second.
    expect(Math.abs((full.failedAt ?? 0) - lasts)).toBeLessThan(0.01);
    const closed = sustainedEndurance(fraction(target), set);
    if (closed.kind !== 'estimate') throw new Error('held without end');
    // Active muscle stays below the force by F over 10 per second, and comes up a tenth of a second late.
    const active = (target * 10) / (10 + set.fatigue);
    const expected = 0.1 - Math.log(1 - (set.recovery * (1 - target)) / (set.fatigue * active)) / set.recovery;
    expect(Math.abs(lasts - expected)).toBeLessThan(0.02);
    expect(lasts).toBeGreaterThan(closed.value);
    expect(closed.cautions.length > 0).toBe(target > 0.6);
  },
);

test.each(intervals)(
  'work and rest by $constants constants end where SciPy has them',
  ({ constants, phases: rows, ends }) => {
    const run = simulateCompartments(
      rows.map(({ target, seconds: lasts }) => ({ target: fraction(target), seconds: seconds(lasts) })),
      constantsNamed(constants),
    );
    if (run.kind === 'refused') throw new Error(run.reason);
    for (const [place, end] of run.ends.entries()) {
      const [resting, active, tired] = ends[place] ?? [0, 0, 0];
      expect(end.resting).toBeCloseTo(resting, 6);
      expect(end.active).toBeCloseTo(active, 6);
      expect(end.tired).toBeCloseTo(tired, 6);
    }
  },
);

test('shares stay in 0 to 1 and sum to 1 in the full equations, whatever is done', () => {
  const anyPhases = fc.array(
    fc.record({
      target: fc.oneof(anyShare, fc.constant(0 as Fraction)),
      seconds: fc.double({ min: 0.1, max: 60, noNaN: true }).map(seconds),
    }),
    { minLength: 1, maxLength: 5 },
  );
  fc.assert(
    fc.property(anyPhases, anyConstants, (rows, constants) => {
      const run = simulateCompartments(rows, constants, 0.05);
      if (run.kind === 'refused') throw new Error(run.reason);
      for (const { resting, active, tired } of run.ends) {
        expect(resting + active + tired).toBeCloseTo(1, 12);
        for (const share of [resting, active, tired]) {
          expect(share).toBeGreaterThanOrEqual(-1e-9);
          expect(share).toBeLessThanOrEqual(1 + 1e-9);
        }
      }
    }),
    { numRuns: 40 },
  );
});

test('the closed forms stay within a hundredth of the full equations over work, failure and rest', () => {
  const part = fc.record({
    load: fc.double({ min: 0.05, max: 0.95, noNaN: true }),
    on: fc.double({ min: 5, max: 60, noNaN: true }),
    off: fc.double({ min: 2, max: 60, noNaN: true }),
  });
  fc.assert(
    fc.property(fc.array(part, { minLength: 1, maxLength: 4 }), anyConstants, (parts, constants) => {
      const rows = parts.flatMap(({ load, on, off }) => [
        { target: fraction(load), seconds: seconds(on) },
        { target: fraction(0), seconds: seconds(off) },
      ]);
      const run = simulateCompartments(rows, constants, 0.05);
      if (run.kind === 'refused') throw new Error(run.reason);
      let tired = 0;
      for (const [place, { load, on, off }] of parts.entries()) {
        tired = contraction(tired, load, on, constants).tired;
        expect(Math.abs((run.ends[2 * place]?.tired ?? 2) - tired)).toBeLessThan(0.01);
        tired = tiredAfterRest(tired as Fraction, seconds(off), constants.recovery, constants.restMultiplier);
        expect(Math.abs((run.ends[2 * place + 1]?.tired ?? 2) - tired)).toBeLessThan(0.01);
      }
    }),
    { numRuns: 40 },
  );
});

test('a simulation refuses what it cannot step through', () => {
  const phase = { target: fraction(0.5), seconds: seconds(10) };
  const refusal = (...given: Parameters<typeof simulateCompartments>): string => {
    const run = simulateCompartments(...given);
    return run.kind === 'refused' ? run.reason : '';
  };
  expect(refusal([phase], SUSTAINED_GRIP)).toBe('');
  expect(refusal([], SUSTAINED_GRIP)).toBe('There is no phase to run.');
  expect(refusal([phase, { ...phase, target: 1.2 as Fraction }], SUSTAINED_GRIP)).toMatch(/^Phase 2 /);
  expect(refusal([{ ...phase, target: -0.2 as Fraction }], SUSTAINED_GRIP)).toMatch(/^Phase 1 /);
  expect(refusal([{ ...phase, seconds: seconds(0) }], SUSTAINED_GRIP)).toMatch(/^Phase 1 /);
  expect(refusal([phase], SUSTAINED_GRIP, 0.2)).toMatch(/step must lie in 0.001 to 0.1/);
  expect(refusal([phase], SUSTAINED_GRIP, 0.0001)).toMatch(/step must lie/);
  expect(refusal([phase], SUSTAINED_GRIP, 0.1)).toBe('');
  expect(refusal([{ ...phase, seconds: seconds(10_000) }], SUSTAINED_GRIP, 0.001)).toMatch(/two million|2000000/);
  expect(refusal([phase], { ...SUSTAINED_GRIP, recovery: 1 })).toMatch(/rate of recovery/);
});

test('a simulation tells when the force was first lost, counted from the start of all phases', () => {
  const work = { target: fraction(0.5), seconds: seconds(200) };
  const run = simulateCompartments([{ target: fraction(0), seconds: seconds(50) }, work, work], SUSTAINED_GRIP, 0.05);
  expect(run).toMatchObject({ kind: 'estimate', cautions: ['The force is lost on the way.'] });
  if (run.kind === 'estimate') expect(run.failedAt).toBeCloseTo(155.73, 2);
  const easy = simulateCompartments([{ target: fraction(0.1), seconds: seconds(50) }], SUSTAINED_GRIP);
  expect(easy).toMatchObject({ failedAt: null, cautions: [] });
});

test('a simulation that starts with just the force asked for, and recovers, never loses it', () => {
  const quick: FatigueConstants = { fatigue: 0.004, recovery: 0.006, restMultiplier: 10 };
  const start = { resting: 0.5, active: 0, tired: 0.5 };
  const run = simulateCompartments([{ target: fraction(0.5), seconds: seconds(5) }], quick, 0.02, start);
  expect(run).toMatchObject({ kind: 'estimate', failedAt: null });
});
