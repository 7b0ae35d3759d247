import fc from 'fast-check';
import { expect, test } from 'vitest';
import { INES, INVENTED_PEOPLE } from './people.ts';
import { randomStream } from './random.ts';
import {
  costOfSpeed,
  costOfWatts,
  feltWork,
  partThatFeels,
  speedOfCost,
  trueRate,
  trueUptake,
  wattsOfCost,
} from './stamina-truth.ts';

const somebody = fc.constantFrom(...INVENTED_PEOPLE);

test('watts and speeds cost what they are worth, on the way there and back', () => {
  fc.assert(
    fc.property(
      somebody,
      fc.integer({ min: 20, max: 400 }),
      fc.double({ min: 3, max: 18, noNaN: true }),
      (who, watts, speed) => {
        // Binary fractions only.
        expect(wattsOfCost(who, costOfWatts(who, watts))).toBeCloseTo(watts, 8);
        for (const pull of [null, 0.65, 0.9])
          expect(speedOfCost(who, 'running', costOfSpeed(who, 'running', speed, pull), pull)).toBeCloseTo(speed, 8);
      },
    ),
  );
});

test('a harness that pulls harder makes the same speed dearer, and none makes it dearer than the ground', () => {
  for (const gait of ['walking', 'running'] as const) {
    const [light, heavy, ground] = [0.5, 0.9, null].map((pull) => costOfSpeed(INES, gait, 8, pull));
    expect(Number(light)).toBeLessThan(Number(heavy));
    expect(Number(heavy)).toBeLessThan(Number(ground));
  }
});

test('flight takes a part of the uptake in its first weeks, training brings half of it back, landing day shows it', () => {
  const at = (day: number): number => trueUptake(INES, day) / trueUptake(INES, 0);
  expect(at(0)).toBe(1);
  expect(at(21)).toBeLessThan(0.96);
  expect(at(180)).toBeGreaterThan(at(21));
  expect(at(180)).toBeLessThan(0.97);
  expect(trueUptake(INES, -200)).toBeLessThan(trueUptake(INES, 0));
});

test('the heart beats between rest and its greatest rate, faster for more work', () => {
  fc.assert(
    fc.property(
      somebody,
      fc.double({ min: 0, max: 1.3, noNaN: true }),
      fc.integer({ min: 1, max: 40 }),
      (who, part, minutes) => {
        const rate = trueRate(who, part, minutes, randomStream(1, 'beats'));
        expect(rate).toBeLessThanOrEqual(who.stamina.greatestRate);
        // Two beats of spread, drawn up to four of them low.
        expect(rate).toBeGreaterThan(who.stamina.restingRate - 10);
        expect(trueRate(who, part + 0.2, minutes, randomStream(1, 'beats'))).toBeGreaterThanOrEqual(rate);
      },
    ),
  );
});

test('what is asked to feel like a 5 feels like one, on average', () => {
  const random = randomStream(3, 'felt');
  const many = Array.from({ length: 2000 }, () => feltWork(partThatFeels(5), random));
  // Standard error of a mean of 2,000 ratings that spread by about 0.5: 0.01.
  expect(Math.abs(many.reduce((sum, each) => sum + each, 0) / many.length - 5)).toBeLessThan(0.06);
});
