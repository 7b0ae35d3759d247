import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fraction, seconds, type Fraction, type Seconds } from '#units/quantity.ts';
import { evaluate } from '../evaluate.ts';
import { simulateCompartments } from './compartment-simulation.ts';
import { fatigueConstants, SUSTAINED_GRIP, type FatigueConstants } from './fatigue-constants.table.ts';
import {
  allOutTimeConstant,
  cycleRecovery,
  handMargin,
  intermittentLimit,
  sustainableForce,
  tiredAfterRest,
  tiredAfterWork,
  tiredAllOut,
  tiredInTheLongRun,
  tiredWhenSpent,
} from './three-compartments.ts';
import { contraction, sustainedEndurance, workPhase } from './work-phases.ts';

interface Recomputed {
  readonly phases: readonly {
    readonly fatigue: number;
    readonly recovery: number;
    readonly tired: number;
    readonly share: number;
    readonly seconds: number;
    readonly end: number;
    readonly fails: number | null;
    readonly sustained: number | null;
    readonly rested: number;
  }[];
  readonly limits: readonly { readonly name: string; readonly duty: number; readonly limit: number }[];
}

// Written by the script that stands beside the file.
const { phases, limits } = JSON.parse(
  readFileSync(join(import.meta.dirname, '../../../test/fixtures/science/hand.json'), 'utf8'),
) as Recomputed;

const rates = {
  fatigue: fc.double({ min: 0.004, max: 0.04, noNaN: true }),
  recovery: fc.double({ min: 0.0002, max: 0.006, noNaN: true }),
};
const anyConstants: fc.Arbitrary<FatigueConstants> = fc.record({
  ...rates,
  restMultiplier: fc.double({ min: 5, max: 40, noNaN: true }),
});
const anyShare = fc.double({ min: 0, max: 1, noNaN: true }).map(fraction);
const anyLoad = fc.double({ min: 0.01, max: 1, noNaN: true }).map(fraction);
const anySeconds = fc.double({ min: 0.1, max: 2000, noNaN: true }).map(seconds);

test('contractions end and fail where a second program has them', () => {
  expect(phases).toHaveLength(72);
  for (const { fatigue, recovery, tired, share, seconds: lasts, end, fails, sustained: held, rested } of phases) {
    const constants = { fatigue, recovery, restMultiplier: 12.51 };
    const phase = workPhase(fraction(tired), fraction(share), seconds(lasts), constants);
    if (phase.kind === 'refused') throw new Error(phase.reason);
    expect(phase.tired).toBeCloseTo(end, 11);
    if (fails === null) expect(phase.failedAfter).toBeNull();
    else expect(phase.failedAfter).toBeCloseTo(fails, 8);
    expect(phase.cautions).toHaveLength(fails === null ? 0 : 1);
    const endurance = sustainedEndurance(fraction(share), constants);
    expect(endurance.kind).toBe(held === null ? 'without end' : 'estimate');
    if (endurance.kind === 'estimate' && held !== null) expect(endurance.value / held).toBeCloseTo(1, 9);
    expect(tiredAfterRest(fraction(tired), seconds(lasts), recovery, 12.51)).toBeCloseTo(rested, 12);
  }
});

test('what can be repeated without end is as a second program has it, for every set of constants', () => {
  const order = ['sustained fit', 'grip group, pooled', 'grip group, men', 'grip group, women', 'hand, all', 'general'];
  for (const { name, duty, limit } of limits) {
    const constants = fatigueConstants.rows[order.indexOf(name)];
    if (!constants) throw new Error(`No constants for ${name}.`);
    const { fatigue, recovery, restMultiplier } = constants;
    expect(intermittentLimit(fraction(duty), fatigue, recovery, restMultiplier)).toBeCloseTo(limit, 12);
  }
});

test('a phase that is broken in two ends where the whole one does', () => {
  fc.assert(
    fc.property(
      anyShare,
      anyLoad,
      anySeconds,
      fc.double({ min: 0.01, max: 0.99, noNaN: true }),
      anyConstants,
      (start, load, lasts, at, constants) => {
        const whole = contraction(start, load, lasts, constants);
        const first = contraction(start, load, at * lasts, constants);
        const second = contraction(first.tired, load, (1 - at) * lasts, constants);
        expect(second.tired).toBeCloseTo(whole.tired, 9);
      },
    ),
  );
});

test('a tired share stays in 0 to 1, and more force or more time from rest never leaves less of it', () => {
  fc.assert(
    fc.property(
      anyShare,
      anyLoad,
      anyLoad,
      anySeconds,
      anySeconds,
      anyConstants,
      (start, one, other, t1, t2, constants) => {
        const [low, high] = one < other ? [one, other] : [other, one];
        const [short, long] = t1 < t2 ? [t1, t2] : [t2, t1];
        const end = contraction(start, low, long, constants).tired;
        expect(end).toBeGreaterThanOrEqual(-1e-12);
        expect(end).toBeLessThanOrEqual(1 + 1e-12);
        expect(contraction(start, high, long, constants).tired).toBeGreaterThanOrEqual(end - 1e-9);
        expect(contraction(0, low, long, constants).tired).toBeGreaterThanOrEqual(
          contraction(0, low, short, constants).tired - 1e-9,
        );
      },
    ),
  );
});

test('rest only takes fatigue away, and without end takes all of it', () => {
  fc.assert(
    fc.property(anyShare, anySeconds, anyConstants, (start, lasts, { recovery, restMultiplier }) => {
      expect(tiredAfterRest(start, lasts, recovery, restMultiplier)).toBeLessThanOrEqual(start);
      expect(tiredAfterRest(start, seconds(36_000), recovery, restMultiplier)).toBeLessThan(1e-9);
    }),
  );
});

test('work that can be held without end tends to F I over R; any other fails, when its endurance time is over', () => {
  fc.assert(
    fc.property(anyLoad, anyConstants, (load, constants) => {
      const { fatigue, recovery } = constants;
      const endurance = sustainedEndurance(load, constants);
      const forever = contraction(0, load, 36_000, constants);
      if (endurance.kind === 'without end') {
        expect(load).toBeLessThanOrEqual(sustainableForce(fatigue, recovery) + 1e-9);
        expect(forever.failedAfter).toBeNull();
        const after = contraction(0, load, 1e6, constants).tired;
        expect(after).toBeCloseTo(tiredInTheLongRun(load, fatigue, recovery), 6);
      } else if (endurance.kind === 'estimate') {
        const failed = contraction(0, load, 1e9, constants);
        expect(Math.abs((failed.failedAfter ?? Number.NaN) - endurance.value)).toBeLessThanOrEqual(
          1e-9 * (1 + endurance.value),
        );
        expect(failed.tired).toBeCloseTo(tiredAllOut(fatigue, recovery), 9);
      }
    }),
  );
});

test('at the moment of failure nothing is left above the force', () => {
  fc.assert(
    fc.property(anyLoad, anyConstants, (load, constants) => {
      const endurance = sustainedEndurance(load, constants);
      const lasts = endurance.kind === 'estimate' ? endurance.value : Number.NaN;
      fc.pre(lasts > 0);
      expect(contraction(0, load, lasts, constants).tired).toBeCloseTo(1 - load, 9);
    }),
  );
});

test('the critical force of the model is the force whose cycles neither tire nor rest a hand that is at its limit', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.2, max: 0.9, noNaN: true }).map(fraction), anyConstants, (duty, constants) => {
      const { fatigue, recovery, restMultiplier } = constants;
      const critical = intermittentLimit(duty, fatigue, recovery, restMultiplier);
      // In a very short cycle fatigue made at the critical force equals what the cycle takes away from 1 − c.
      const made = fatigue * duty * critical;
      const taken = recovery * (duty + restMultiplier * (1 - duty)) * (1 - critical);
      expect(made / taken).toBeCloseTo(1, 9);
      expect(allOutTimeConstant(duty, fatigue, recovery, restMultiplier)).toBeCloseTo(
        (1 - critical) / (fatigue * duty),
        6,
      );
    }),
  );
});

test('without rest the force that can be repeated is the force that can be held', () => {
  fc.assert(
    fc.property(anyConstants, ({ fatigue, recovery, restMultiplier }) => {
      const repeated = intermittentLimit(fraction(1), fatigue, recovery, restMultiplier);
      expect(repeated).toBeCloseTo(sustainableForce(fatigue, recovery), 12);
      expect(repeated).toBeCloseTo(1 - tiredAllOut(fatigue, recovery), 12);
    }),
  );
});

test('more of the cycle under load never leaves more force to repeat', () => {
  const anyDuty = fc.double({ min: 0.05, max: 1, noNaN: true });
  fc.assert(
    fc.property(anyDuty, anyDuty, anyConstants, (one, other, { fatigue, recovery, restMultiplier }) => {
      const [less, more] = (one < other ? [one, other] : [other, one]).map(fraction) as [Fraction, Fraction];
      expect(intermittentLimit(less, fatigue, recovery, restMultiplier)).toBeGreaterThanOrEqual(
        intermittentLimit(more, fatigue, recovery, restMultiplier) - 1e-12,
      );
    }),
  );
});

test('the formulas say what the phases do, on their side of failure', () => {
  const whole = contraction(0.2, 0.5, 200, SUSTAINED_GRIP);
  const lost = whole.failedAfter ?? (0 as Seconds);
  const { fatigue, recovery } = SUSTAINED_GRIP;
  expect(tiredAfterWork(fraction(0.2), fraction(0.5), lost, fatigue, recovery)).toBeCloseTo(0.5, 12);
  expect(tiredWhenSpent(fraction(0.5), seconds(200 - lost), fatigue, recovery)).toBeCloseTo(whole.tired, 12);
});

test('a hand more tired than its work can make it comes back to its force, and goes on from there', () => {
  const start = contraction(0.99, 0.005, 0, SUSTAINED_GRIP);
  expect(start).toEqual({ tired: 0.99, failedAfter: null });
  const phase = contraction(0.999, 0.02, 2000, SUSTAINED_GRIP);
  expect(phase.failedAfter).toBe(0);
  expect(phase.tired).toBeLessThan(0.98);
  const full = simulateCompartments([{ target: fraction(0.02), seconds: seconds(2000) }], SUSTAINED_GRIP, 0.05, {
    resting: 0.001,
    active: 0,
    tired: 0.999,
  });
  if (full.kind === 'refused') throw new Error(full.reason);
  expect(full.failedAt).toBe(0);
  expect(full.ends[0]?.tired).toBeCloseTo(phase.tired, 3);
});

test('a hand that is still too tired has only what is left', () => {
  const { fatigue, recovery } = SUSTAINED_GRIP;
  expect(contraction(0.999, 0.02, 5, SUSTAINED_GRIP)).toEqual({
    tired: tiredWhenSpent(fraction(0.999), seconds(5), fatigue, recovery),
    failedAfter: 0,
  });
});

test('a force exactly at what can be held is held without end', () => {
  const even: FatigueConstants = { fatigue: 0.01, recovery: 0.01, restMultiplier: 10 };
  expect(sustainedEndurance(fraction(0.5), even)).toMatchObject({ kind: 'without end' });
  expect(contraction(0, 0.5, 1e6, even)).toEqual({ tired: 0.5, failedAfter: null });
});

test('the formula of work refuses a force that is lost, and allows it up to that moment', () => {
  const { fatigue, recovery } = SUSTAINED_GRIP;
  const after = (start: number, load: number, lasts: number) =>
    evaluate(tiredAfterWork, [start, load, lasts, fatigue, recovery]).kind;
  expect(after(0.2, 0.5, 64.16)).toBe('value');
  expect(after(0.2, 0.5, 64.17)).toBe('refused');
  expect(after(0.6, 0.5, 1)).toBe('refused');
  // It comes down in this work, but the force was not there when it began.
  expect(after(0.999, 0.002, 36_000)).toBe('refused');
  expect(after(0.5, 0.5, 0)).toBe('value');
});

test('a margin is what is neither tired nor asked for, and recovery over a cycle lies between that of work and of rest', () => {
  expect(handMargin(fraction(0.3), fraction(0.5))).toBeCloseTo(0.2, 12);
  expect(cycleRecovery(fraction(1), 0.001, 12)).toBe(0.001);
  expect(cycleRecovery(fraction(0.25), 0.001, 12)).toBeCloseTo(0.00925, 12);
});

test('a force that is just held has not failed at once', () => {
  expect(contraction(0.5, 0.5, 0, SUSTAINED_GRIP).failedAfter).toBeNull();
  expect(contraction(0.5, 0.5, 1, SUSTAINED_GRIP).failedAfter).toBe(0);
});

test('what cannot be is refused with a sentence that names it', () => {
  const refusal = (given: {
    tired?: number;
    load?: number;
    lasts?: number;
    constants?: Partial<FatigueConstants>;
  }): string => {
    const { tired = 0, load = 0.5, lasts = 10, constants = {} } = given;
    const phase = workPhase(tired as Fraction, load as Fraction, lasts as Seconds, { ...SUSTAINED_GRIP, ...constants });
    return phase.kind === 'refused' ? phase.reason : '';
  };
  expect(refusal({})).toBe('');
  expect(refusal({ tired: -0.1 })).toBe('The tired share must lie in 0 to 1; it is -0.1.');
  expect(refusal({ tired: 1.1 })).toMatch(/tired share/);
  expect(refusal({ load: 0 })).toMatch(/above 0 and at most at 1/);
  expect(refusal({ load: 1 })).toBe('');
  expect(refusal({ load: 1.01 })).toMatch(/above 0 and at most at 1/);
  expect(refusal({ lasts: -1 })).toBe('A contraction must last 0 to 36000 s; it lasts -1.');
  expect(refusal({ lasts: 36_001 })).toMatch(/36000/);
  expect(refusal({ constants: { fatigue: 0 } })).toBe('The rate of fatigue must lie in 0.0005 to 0.2 1/s; it is 0.');
  expect(refusal({ constants: { recovery: Number.NaN } })).toMatch(/rate of recovery/);
  expect(refusal({ constants: { restMultiplier: 0.5 } })).toMatch(
    /recovery at rest over that under load must lie in 1 to 100/,
  );
  expect(sustainedEndurance(1.5 as Fraction, SUSTAINED_GRIP)).toMatchObject({ kind: 'refused' });
  expect(sustainedEndurance(-0.5 as Fraction, SUSTAINED_GRIP)).toMatchObject({ kind: 'refused' });
  expect(sustainedEndurance(fraction(0.5), { ...SUSTAINED_GRIP, fatigue: 1 })).toMatchObject({ kind: 'refused' });
  expect(sustainedEndurance(fraction(0), SUSTAINED_GRIP)).toEqual({
    kind: 'without end',
    reason: 'At or below 0.061 of the maximum this model recovers as fast as it tires.',
  });
  expect(sustainedEndurance(fraction(1), SUSTAINED_GRIP)).toMatchObject({ kind: 'estimate', value: 0 });
});
