import fc from 'fast-check';
import { expect, test } from 'vitest';
import { degrees } from '#units/quantity.ts';
import { BODY } from './body-model.ts';
import { cosine, figure, sine, STANDING, type Posture } from './planar-model.ts';
import { barPlaceOf } from './postures.ts';

/** Lengths and centres of a man after de Leva, retyped in millimetres of 1741. */
const MM = 1 / 1741;
const [SHANK, THIGH, TRUNK, TO_C7, HEAD] = [440.3 * MM, 422.2 * MM, 515.5 * MM, 603.3 * MM, 242.9 * MM];
const ARM = (281.7 + 268.9 + 86.2) * MM;
const FOOT = 258.1 * MM;
const ANKLE_HEIGHT = 0.039;

/** A point within the rounding of doubles. */
const at = (x: number, y: number) => ({ x: expect.closeTo(x, 12) as number, y: expect.closeTo(y, 12) as number });

test('who stands has every joint above the ankle, and centres between them', () => {
  const { joints, centres } = figure(BODY.male, STANDING);
  expect(joints.ankle).toEqual(at(0, 0));
  expect(joints.knee).toEqual(at(0, SHANK));
  expect(joints.hip).toEqual(at(0, SHANK + THIGH));
  expect(joints.shoulder).toEqual(at(0, SHANK + THIGH + TRUNK));
  expect(joints.c7).toEqual(at(0, SHANK + THIGH + TO_C7));
  expect(joints.headTop).toEqual(at(0, SHANK + THIGH + TO_C7 + HEAD));
  expect(centres.shank).toEqual(at(0, SHANK * (1 - 0.4395)));
  expect(centres.thigh).toEqual(at(0, SHANK + THIGH * (1 - 0.4095)));
  expect(centres.trunk).toEqual(at(0, SHANK + THIGH + TRUNK * (1 - 0.431)));
  expect(centres.head).toEqual(at(0, SHANK + THIGH + TO_C7 + HEAD * (1 - 0.5002)));
});

test('with every lean at a right angle the segments lie level: forward, back, forward', () => {
  const flat: Posture = { shankLean: degrees(90), thighLean: degrees(90), trunkLean: degrees(90) };
  const { joints, centres } = figure(BODY.male, flat);
  expect(joints.knee).toEqual(at(SHANK, 0));
  expect(joints.hip).toEqual(at(SHANK - THIGH, 0));
  expect(joints.shoulder).toEqual(at(SHANK - THIGH + TRUNK, 0));
  expect(joints.c7).toEqual(at(SHANK - THIGH + TO_C7, 0));
  expect(joints.headTop).toEqual(at(SHANK - THIGH + TO_C7, HEAD));
  expect(centres.shank).toEqual(at(SHANK * (1 - 0.4395), 0));
  expect(centres.thigh).toEqual(at(SHANK - THIGH + THIGH * 0.4095, 0));
  expect(centres.trunk).toEqual(at(SHANK - THIGH + TRUNK * (1 - 0.431), 0));
});

test('the foot lies under the ankle, a quarter of it behind, and stays where it is', () => {
  const anyLean = fc.double({ min: 0, max: 90, noNaN: true }).map(degrees);
  fc.assert(
    fc.property(anyLean, anyLean, anyLean, (shankLean, thighLean, trunkLean) => {
      const { joints, centres } = figure(BODY.male, { shankLean, thighLean, trunkLean });
      expect(joints.heel).toEqual(at(-0.25 * FOOT, -ANKLE_HEIGHT));
      expect(joints.toe).toEqual(at(0.75 * FOOT, -ANKLE_HEIGHT));
      expect(centres.foot).toEqual(at((0.4415 - 0.25) * FOOT, -ANKLE_HEIGHT / 2));
    }),
  );
});

test('arms move with the bar: on the shoulders, in hands that hang, or at the shoulder where there is none', () => {
  const of = (place: 'shoulders' | 'hanging hands' | 'none') => figure(BODY.male, STANDING, place);
  const top = SHANK + THIGH + TRUNK;
  for (const place of ['shoulders', 'none'] as const) {
    expect(of(place).joints.bar).toEqual(at(0, top));
    expect(of(place).centres.arms).toEqual(at(0, top));
  }
  expect(of('hanging hands').joints.bar).toEqual(at(0, top - ARM));
  expect(of('hanging hands').centres.arms).toEqual(at(0, top - ARM));
  expect(of('shoulders').joints.hangingHand).toEqual(at(0, top - ARM));
});

test('angles are degrees from the vertical', () => {
  expect(sine(degrees(30))).toBeCloseTo(0.5, 12);
  expect(cosine(degrees(60))).toBeCloseTo(0.5, 12);
  expect(sine(degrees(90))).toBe(1);
});

test('a bar hangs in deadlifts and lies on the shoulders in all else', () => {
  expect(['deadlift', 'Romanian deadlift'].map((lift) => barPlaceOf(lift as 'deadlift'))).toEqual([
    'hanging hands',
    'hanging hands',
  ]);
  expect(barPlaceOf('split squat')).toBe('shoulders');
  expect(barPlaceOf('back squat, deep')).toBe('shoulders');
});
