import fc from 'fast-check';
import { expect, test } from 'vitest';
import { limbOutline } from './limb-outline.ts';

const radius = fc.double({ min: 1, max: 30, noNaN: true });
const place = fc.double({ min: -200, max: 200, noNaN: true });

test('no point of an outline lies inside either end', () => {
  fc.assert(
    fc.property(place, place, radius, radius, (x, y, fromRadius, toRadius) => {
      const [from, to] = [
        { x: 0, y: 0 },
        { x, y },
      ];
      for (const spot of limbOutline(from, fromRadius, to, toRadius)) {
        // Binary rounding of sines at lengths of a few hundred.
        expect(Math.hypot(spot.x, spot.y)).toBeGreaterThan(fromRadius - 1e-6);
        expect(Math.hypot(spot.x - x, spot.y - y)).toBeGreaterThan(toRadius - 1e-6);
      }
    }),
  );
});

test('a limb of equal ends is as wide as its ends', () => {
  const ys = limbOutline({ x: 0, y: 0 }, 5, { x: 100, y: 0 }, 5).map(({ y }) => y);
  expect(Math.max(...ys)).toBeCloseTo(5, 6);
  expect(Math.min(...ys)).toBeCloseTo(-5, 6);
});
