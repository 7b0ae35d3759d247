import fc from 'fast-check';
import { expect, test } from 'vitest';
import { callWith, type AnyFormula } from '../formula.ts';
import { evaluate } from '../evaluate.ts';
import {
  armPower,
  legPower,
  uptakeOfArmCycling,
  uptakeOfArmWork,
  uptakeOfLegCycling,
  uptakeOfLegWork,
  workRateOfPower,
} from './cycling.ts';
import { energyOfBout, energyRate, energyRateOfEquivalents } from './energy.ts';
import type { Estimated } from './estimate.ts';
import { sdOf, valueOf } from './read-estimate.ts';
import { stepRate, uptakeOfStepping } from './stepping.ts';
import { gaitOfSpeed, treadmillSpeed, treadmillUptake } from './treadmill.ts';
import { flowOfUptake, grossUptake, metabolicEquivalents, netUptake, uptakeOfFlow } from './uptake-units.ts';
import { runningSpeed, uptakeOfRunning, uptakeOfWalking, walkingSpeed } from './walking-and-running.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const saysOf = (estimated: Estimated): string =>
  estimated.kind === 'refused' ? estimated.reason : estimated.cautions.join(' ');

const INVERSES: readonly (readonly [
  string,
  AnyFormula,
  AnyFormula,
  readonly [number, number],
  readonly [number, number],
])[] = [
  ['walking', uptakeOfWalking, walkingSpeed, [20, 150], [0, 0.25]],
  ['running', uptakeOfRunning, runningSpeed, [80, 350], [0, 0.25]],
  ['leg cycling', uptakeOfLegCycling, legPower, [10, 400], [45, 140]],
  ['arm cycling', uptakeOfArmCycling, armPower, [10, 150], [45, 140]],
  ['stepping', uptakeOfStepping, stepRate, [5, 45], [0.05, 0.5]],
];

test.each(INVERSES)('%s: from work to uptake and back is the same work', (_, there, back, work, other) => {
  fc.assert(
    fc.property(between(...work), between(...other), (given, beside) => {
      expect(callWith(back, [callWith(there, [given, beside]), beside])).toBeCloseTo(given, 8);
    }),
  );
});

test.each(INVERSES)('%s: more work takes more oxygen', (_, there, __, [low, high], other) => {
  fc.assert(
    fc.property(between(low, high - 1), between(...other), (given, beside) => {
      expect(callWith(there, [given + 1, beside])).toBeGreaterThan(callWith(there, [given, beside]));
    }),
  );
});

test('a steeper belt takes more oxygen at every speed', () => {
  fc.assert(
    fc.property(between(20, 300), between(0, 0.24), (speed, slope) => {
      for (const gait of [uptakeOfWalking, uptakeOfRunning] as readonly AnyFormula[])
        expect(callWith(gait, [speed, slope + 0.01])).toBeGreaterThan(callWith(gait, [speed, slope]));
    }),
  );
});

test('by the exact factor a watt costs two percent more than by the handbook’s, above unloaded pedalling', () => {
  fc.assert(
    fc.property(between(20, 400), between(45, 140), (load, mass) => {
      const work = callWith(workRateOfPower, [load]);
      const [exact, handbook] = [callWith(uptakeOfLegWork, [work, mass]), callWith(uptakeOfLegCycling, [load, mass])];
      expect((exact - 7) / (handbook - 7)).toBeCloseTo(60 / 9.80665 / 6, 10);
      const [arm, armHandbook] = [callWith(uptakeOfArmWork, [work, mass]), callWith(uptakeOfArmCycling, [load, mass])];
      expect((arm - 3.5) / (armHandbook - 3.5)).toBeCloseTo(60 / 9.80665 / 6, 10);
    }),
  );
});

test('gross is net and 3.5, and there and back is the same', () => {
  fc.assert(
    fc.property(between(3.5, 95), (gross) => {
      expect(callWith(grossUptake, [callWith(netUptake, [gross])])).toBeCloseTo(gross, 12);
      expect(gross - callWith(netUptake, [gross])).toBeCloseTo(3.5, 12);
    }),
  );
});

test('an uptake for each kilogram and for the whole body is the same oxygen', () => {
  fc.assert(
    fc.property(between(3.5, 90), between(40, 110), (uptake, mass) => {
      expect(callWith(uptakeOfFlow, [callWith(flowOfUptake, [uptake, mass]), mass])).toBeCloseTo(uptake, 10);
    }),
  );
});

test('energy by oxygen and by metabolic equivalents agree, and a bout is its minutes', () => {
  fc.assert(
    fc.property(between(3.5, 60), between(40, 140), between(1, 120), (uptake, mass, minutes) => {
      const rate = callWith(energyRate, [callWith(flowOfUptake, [uptake, mass])]);
      const byEquivalents = callWith(energyRateOfEquivalents, [callWith(metabolicEquivalents, [uptake]), mass]);
      expect(byEquivalents).toBeCloseTo(rate, 10);
      expect(callWith(energyOfBout, [uptake, mass, minutes])).toBeCloseTo(rate * minutes, 8);
    }),
  );
});

test('a speed is a walk up to 100 m/min, a run from 134, and neither between', () => {
  expect([50, 100, 100.1, 133.9, 134, 300].map(gaitOfSpeed)).toEqual([
    'walking',
    'walking',
    undefined,
    undefined,
    'running',
    'running',
  ]);
});

test('between the gaits the gait is asked for, and what is declared is taken and flagged', () => {
  expect(treadmillUptake(120, 0)).toEqual({
    kind: 'refused',
    reason:
      'Between 100 to 134 m/min say whether the person walks or runs: on the level a run costs about twice a walk.',
  });
  for (const gait of ['walking', 'running'] as const)
    expect(saysOf(treadmillUptake(120, 0, gait))).toMatch(/neither equation was validated/);
  for (const speed of [100, 134]) expect(saysOf(treadmillUptake(speed, 0))).not.toMatch(/neither/);
});

test('a slow run is taken as a jog and flagged down to 80 m/min, below that as outside the range alone', () => {
  expect(saysOf(treadmillUptake(80, 0, 'running'))).toMatch(/truly is a jog/);
  expect(saysOf(treadmillUptake(79.9, 0, 'running'))).not.toMatch(/truly is a jog/);
  expect(saysOf(treadmillUptake(79.9, 0, 'running'))).toMatch(/belt speed, running 79.9 m\/min is outside 134 to 400/);
  expect(saysOf(treadmillUptake(134, 0, 'running'))).toBe('');
  expect(saysOf(treadmillUptake(140, 0, 'walking'))).toMatch(/belt speed, walking 140 m\/min is outside 50 to 100/);
  expect(saysOf(treadmillUptake(90, 0.1))).toBe('');
});

test('a speed and a grade that cannot be are refused together', () => {
  const refusal = saysOf(treadmillUptake(Number.NaN, -0.05));
  expect(refusal).toMatch(/belt speed must lie/);
  expect(refusal).toMatch(/grade must lie/);
  expect(treadmillSpeed(2, 0, 'walking').kind).toBe('refused');
});

test('a speed of an uptake costs that uptake, with the spread of people carried over', () => {
  fc.assert(
    fc.property(
      between(8, 60),
      between(0, 0.2),
      fc.constantFrom('walking' as const, 'running' as const),
      (wanted, slope, gait) => {
        const speed = treadmillSpeed(wanted, slope, gait);
        const cost = gait === 'walking' ? 0.1 + 1.8 * slope : 0.2 + 0.9 * slope;
        if (valueOf(speed) > 450) return;
        expect(valueOf(treadmillUptake(valueOf(speed), slope, gait))).toBeCloseTo(wanted, 8);
        expect(sdOf(speed)).toBeCloseTo((0.07 * wanted) / cost, 8);
        expect(sdOf(treadmillUptake(valueOf(speed), slope, gait))).toBeCloseTo(0.07 * wanted, 8);
      },
    ),
  );
});

test('standing still is a finite answer, as unsure as its equation says', () => {
  expect(treadmillSpeed(3.5, 0, 'walking')).toMatchObject({ kind: 'estimate', value: 0 });
  expect(sdOf(treadmillSpeed(3.5, 0, 'walking'))).toBeCloseTo((0.07 * 3.5) / 0.1, 8);
  expect(sdOf(treadmillSpeed(3.5, 0.05, 'running'))).toBeCloseTo((0.07 * 3.5) / 0.245, 8);
});

test('a power above the validated range is computed and flagged', () => {
  expect(evaluate(uptakeOfLegCycling, [250, 80])).toMatchObject({
    kind: 'value',
    cautions: ['power 250 W is outside 50 to 200'],
  });
});

test('an uptake below what nothing costs has no power, and just that has none of it', () => {
  expect(evaluate(legPower, [6.99, 80]).kind).toBe('refused');
  expect(evaluate(legPower, [7, 80])).toMatchObject({ kind: 'value', value: 0 });
  expect(evaluate(armPower, [3.49, 80]).kind).toBe('refused');
  expect(evaluate(armPower, [3.5, 80])).toMatchObject({ kind: 'value', value: 0 });
});
