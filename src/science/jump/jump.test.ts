import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { centimetres, kilograms, seconds } from '#units/quantity.ts';
import { STANDARD_GRAVITY } from '#units/gravity.ts';
import { evaluate } from '../evaluate.ts';
import { callWith } from '../formula.ts';
import { heightOfFlightTime, takeOffSpeed } from './flight-time.ts';
import {
  averagePowerHarman,
  averagePowerLewis,
  peakPowerCanavanVescovi,
  peakPowerHarman,
  peakPowerSayersCountermovementJump,
  peakPowerSayersSquatJump,
} from './jump-power.ts';

interface Fixture {
  readonly flights: readonly { readonly seconds: number; readonly height: number; readonly speed: number }[];
  readonly powers: readonly Readonly<Record<string, number>>[];
}

const FILE = join(import.meta.dirname, '../../../test/fixtures/science/jump.json');
// Written by the script that stands beside the file.
const { flights, powers } = JSON.parse(readFileSync(FILE, 'utf8')) as Fixture;

const LINES = {
  sayersSquatJump: peakPowerSayersSquatJump,
  sayersCountermovementJump: peakPowerSayersCountermovementJump,
  harmanPeak: peakPowerHarman,
  harmanAverage: averagePowerHarman,
  canavanVescovi: peakPowerCanavanVescovi,
  lewis: averagePowerLewis,
};

/** Forty digits against doubles. */
const DIGITS = 10;

test('heights and take-off speeds are those of a body that rises and falls', () => {
  expect(flights.length).toBeGreaterThan(50);
  for (const { seconds: time, height, speed } of flights) {
    expect(heightOfFlightTime(seconds(time))).toBeCloseTo(height, DIGITS);
    expect(takeOffSpeed(seconds(time))).toBeCloseTo(speed, DIGITS);
  }
});

test.each(Object.entries(LINES))('%s is the printed line', (name, line) => {
  expect(powers.length).toBeGreaterThan(30);
  for (const row of powers)
    expect(callWith(line, [row['height'] ?? 0, row['mass'] ?? 0])).toBeCloseTo(row[name] ?? 0, 9);
});

test('every start of a line lies below zero: a jump of no height takes no power', () => {
  const still = [centimetres(0), kilograms(0)] as const;
  for (const line of [
    peakPowerSayersSquatJump,
    peakPowerSayersCountermovementJump,
    peakPowerHarman,
    averagePowerHarman,
    peakPowerCanavanVescovi,
  ])
    expect(line(...still)).toBeLessThan(0);
  expect(averagePowerLewis(...still)).toBe(0);
});

test('the peak of Harman starts at minus 1822: with the wrong sign it would miss the printed mean by 3600 W', () => {
  const atTheMeans = peakPowerHarman(centimetres(32.85), kilograms(65.9));
  const PRINTED = 2585;
  expect(Math.abs(atTheMeans - PRINTED)).toBeLessThan(8);
  expect(atTheMeans + 2 * 1822 - PRINTED).toBeGreaterThan(3600);
});

test.each([
  { name: 'harmanAverage', given: [15, 45], says: /no power above zero/ },
  { name: 'harmanPeak', given: [3, 40], says: /no power above zero/ },
  { name: 'canavanVescovi', given: [200, 60], says: /jump height must lie in 0 to 150 cm/ },
] as const)('$name of $given is refused', ({ name, given, says }) => {
  const met = evaluate(LINES[name], given);
  expect(met.kind === 'refused' && met.reasons.join(' ')).toMatch(says);
});

test('a line read outside the people it was made for is flagged', () => {
  expect(evaluate(peakPowerSayersSquatJump, [80, 130])).toMatchObject({
    kind: 'value',
    cautions: ['jump height 80 cm is outside 15 to 70', 'body mass 130 kg is outside 45 to 120'],
  });
});

const anyTime = fc.double({ min: 0, max: 1.5, noNaN: true }).map(seconds);

test('height is the speed at take-off squared over twice gravity', () => {
  fc.assert(
    fc.property(anyTime, (time) => {
      expect(takeOffSpeed(time) ** 2 / (2 * STANDARD_GRAVITY)).toBeCloseTo(heightOfFlightTime(time), 12);
    }),
  );
});

test('twice the time in the air is four times the height', () => {
  fc.assert(
    fc.property(anyTime, (time) => {
      expect(heightOfFlightTime(seconds(2 * time))).toBeCloseTo(4 * heightOfFlightTime(time), 12);
    }),
  );
});

test.each(Object.entries(LINES))('%s: a higher jump or a heavier body never takes less power', (_, line) => {
  const height = fc.double({ min: 0, max: 150, noNaN: true });
  const mass = fc.double({ min: 25, max: 300, noNaN: true });
  fc.assert(
    fc.property(height, mass, fc.double({ min: 0, max: 10, noNaN: true }), (jump, body, more) => {
      const power = callWith(line, [jump, body]);
      expect(callWith(line, [jump + more, body])).toBeGreaterThanOrEqual(power);
      expect(callWith(line, [jump, body + more])).toBeGreaterThanOrEqual(power);
    }),
  );
});
