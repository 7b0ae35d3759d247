import fc from 'fast-check';
import { expect, test } from 'vitest';
import { callWith } from '../formula.ts';
import { evaluate } from '../evaluate.ts';
import { cyclePower, handbookPowerForFraction } from './cycle-workload.ts';
import { uptakeOfLegCycling } from './cycling.ts';
import type { Estimated } from './estimate.ts';
import { ownHeartRateAtPower, ownPowerForFraction, type UptakeStage } from './personal-lines.ts';
import { sdOf, valueOf } from './read-estimate.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const saysOf = (estimated: Estimated): string =>
  estimated.kind === 'refused' ? estimated.reason : estimated.cautions.join(' ');

/** Scattered about 5 + 0.14 · P. */
const stages: readonly UptakeStage[] = [
  [60, 13.7],
  [100, 18.6],
  [140, 24.8],
  [180, 29.9],
  [220, 36],
].map(([power = 0, uptake = 0]) => ({ power, uptake }));
const rates = stages.map(({ power }, place) => ({ power, heartRate: 80 + 0.4 * power + (place % 2 === 0 ? 1 : -1) }));

test('the power for the uptake of a stage’s own line is that stage’s power', () => {
  fc.assert(
    fc.property(between(60, 110), between(0.08, 0.2), between(0.4, 1), (mass, slope, part) => {
      const exact = [50, 100, 150].map((power) => ({ power, uptake: 4 + (slope * 80 * power) / mass }));
      const maximum = 45;
      const wanted = ownPowerForFraction(exact, part, maximum);
      expect(4 + (slope * 80 * valueOf(wanted)) / mass).toBeCloseTo(part * maximum, 8);
    }),
  );
});

test('a larger fraction asks for more watts, and the spread grows away from what was tested', () => {
  fc.assert(
    fc.property(between(0.35, 0.95), (part) => {
      const [less, more] = [ownPowerForFraction(stages, part, 40), ownPowerForFraction(stages, part + 0.05, 40)];
      expect(valueOf(more)).toBeGreaterThan(valueOf(less));
    }),
  );
  expect(sdOf(ownPowerForFraction(stages, 1, 50))).toBeGreaterThan(sdOf(ownPowerForFraction(stages, 0.5, 50)));
});

test('beyond the tested powers and with few stages the person is warned, and else not', () => {
  expect(saysOf(ownHeartRateAtPower(rates, 60))).toBe('');
  expect(saysOf(ownHeartRateAtPower(rates, 220))).toBe('');
  expect(saysOf(ownHeartRateAtPower(rates, 221))).toBe('221 W lies outside the 60 to 220 W that were tested.');
  expect(saysOf(ownHeartRateAtPower(rates, 59))).toBe('59 W lies outside the 60 to 220 W that were tested.');
  expect(saysOf(ownHeartRateAtPower(rates.slice(0, 4), 100))).toBe(
    'The line rests on 4 stages: its own standard error is a guess.',
  );
  // By hand: mean 140 W and 24.6, slope 2236 / 16000, so 45 lies at 140 + 20.4 / 0.13975 = 285.97 W.
  expect(saysOf(ownPowerForFraction(stages, 1, 45))).toMatch(/286 W lies outside the 60 to 220 W/);
});

test('a line that does not rise is refused in the words of what was measured', () => {
  const flat = stages.map(({ power }) => ({ power, uptake: 20 }));
  expect(saysOf(ownPowerForFraction(flat, 0.7, 45))).toMatch(/^The oxygen uptake does not rise with power/);
  const falling = rates.map(({ power }) => ({ power, heartRate: 200 - 0.3 * power }));
  expect(saysOf(ownHeartRateAtPower(falling, 100))).toMatch(/^The heart rate does not rise with power/);
});

test('fewer than three stages are refused, and every stage that cannot be is named', () => {
  expect(saysOf(ownPowerForFraction(stages.slice(0, 2), 0.7, 45))).toMatch(/at least three points/);
  expect(saysOf(ownHeartRateAtPower(rates.slice(0, 2), 100))).toMatch(/at least three points/);
  const told = saysOf(
    ownPowerForFraction([{ power: -1, uptake: 15 }, ...stages, { power: 100, uptake: 300 }], 0.7, 45),
  );
  expect(told).toMatch(/Stage 1: power of a stage must/);
  expect(told).toMatch(/Stage 7: measured oxygen uptake of a stage must/);
  expect(saysOf(ownHeartRateAtPower([{ power: 100, heartRate: 10 }, ...rates], 100))).toMatch(
    /Stage 1: heart rate of a stage/,
  );
  expect(saysOf(ownPowerForFraction(stages, 2, 45))).toMatch(/fraction of the maximal uptake must/);
  expect(saysOf(ownPowerForFraction(stages, 0.7, 5))).toMatch(/maximal oxygen uptake must/);
  expect(saysOf(ownHeartRateAtPower(rates, -5))).toMatch(/power asked for must/);
});

test('an uptake below the own unloaded pedalling has no power', () => {
  expect(saysOf(ownPowerForFraction(stages, 0.1, 40))).toMatch(/below this person’s unloaded pedalling/);
});

test('the handbook’s power costs the fraction that was asked for', () => {
  fc.assert(
    fc.property(between(0.4, 1), between(20, 80), between(45, 140), (part, maximum, mass) => {
      const power = callWith(handbookPowerForFraction, [part, maximum, mass]);
      expect(callWith(uptakeOfLegCycling, [power, mass])).toBeCloseTo(part * maximum, 8);
    }),
  );
});

test('above 200 W and below 50 W the handbook’s power is flagged, at both edges it is not', () => {
  const at = (power: number) => cyclePower((7 + (10.8 * power) / 80) / 40, 40, 80);
  expect(saysOf(at(200 - 1e-6))).toBe('');
  expect(saysOf(at(200.1))).toMatch(/Above 200 W the equation was not validated: take the person’s own line/);
  expect(saysOf(at(50 + 1e-6))).toBe('');
  expect(saysOf(at(49.9))).toMatch(/Below 50 W/);
});

test('the spread of the handbook’s power is seven percent of the uptake, in watts', () => {
  expect(sdOf(cyclePower(0.75, 42, 80))).toBeCloseTo((0.07 * 31.5 * 80) / 10.8, 10);
});

test('own stages stand before the handbook, and what they refuse is refused', () => {
  expect(cyclePower(0.8, 42, 80, stages)).toEqual(ownPowerForFraction(stages, 0.8, 42));
  expect(saysOf(cyclePower(0.8, 42, 80, stages.slice(0, 2)))).toMatch(/at least three points/);
});

test('below unloaded pedalling there is no power, and what cannot be is refused', () => {
  expect(saysOf(cyclePower(0.1, 42, 80))).toMatch(/below unloaded pedalling/);
  expect(cyclePower(0.175, 40, 80)).toMatchObject({ kind: 'estimate', value: 0 });
  expect(saysOf(cyclePower(0.5, 42, 3))).toMatch(/body mass must/);
  expect(evaluate(handbookPowerForFraction, [0.1, 42, 80])).toMatchObject({
    reasons: ['The uptake asked for lies at or above unloaded pedalling, 7 mL/(kg min).'],
  });
});

test('exactly 200 and exactly 50 W are inside the range', () => {
  expect(cyclePower(0.85, 40, 80)).toMatchObject({ value: 200, cautions: [] });
  expect(cyclePower(0.34375, 40, 80)).toMatchObject({ value: 50, cautions: [] });
});

test('exactly unloaded pedalling has a power of nothing, by formula and by own line', () => {
  expect(evaluate(handbookPowerForFraction, [0.175, 40, 80])).toMatchObject({ kind: 'value', value: 0 });
  expect(evaluate(handbookPowerForFraction, [0.75, 42, 80])).toMatchObject({ kind: 'value', cautions: [] });
  const exact = [0, 100, 200].map((power) => ({ power, uptake: 8 + power / 8 }));
  expect(ownPowerForFraction(exact, 0.2, 40)).toMatchObject({ kind: 'estimate', value: 0 });
});
