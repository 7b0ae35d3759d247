import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bandFrom, edgeFrom, edgeInWords, numberFrom, warmUpsFrom, warmUpsText, wholeFrom } from './typed-parts.ts';

test.each([
  [
    '60 % × 6, 80 % × 4',
    [
      { of: 0.6, repetitions: 6 },
      { of: 0.8, repetitions: 4 },
    ],
  ],
  ['60%x6', [{ of: 0.6, repetitions: 6 }]],
  ['62,5 % * 3', [{ of: 0.625, repetitions: 3 }]],
  ['', []],
  ['60 %', null],
  ['easy', null],
  ['160 % × 6', null],
])('“%s” as warm-ups is %j', (text, sets) => {
  expect(warmUpsFrom(text)).toEqual(sets);
});

test('warm-ups that are written read back to themselves', () => {
  const set = fc.record({
    of: fc.integer({ min: 1, max: 100 }).map((of) => of / 100),
    repetitions: fc.integer({ min: 1, max: 20 }),
  });
  fc.assert(
    fc.property(fc.array(set, { maxLength: 4 }), (sets) => {
      expect(warmUpsFrom(warmUpsText(sets))).toEqual(sets);
    }),
  );
});

test('a day of a mission said in words is the same day again', () => {
  const edge = fc.record({
    from: fc.constantFrom('launch' as const, 'landing'),
    days: fc.integer({ min: -2000, max: 2000 }),
  });
  fc.assert(
    fc.property(edge, (day) => {
      const { kind, count } = edgeInWords(day);
      expect(edgeFrom(kind, count)).toEqual(day);
      expect(count).toBeGreaterThanOrEqual(0);
    }),
  );
});

test.each([
  ['7', [7, 7]],
  ['7 to 8', [7, 8]],
  ['6.5–7', [6.5, 7]],
  ['8 to 7', null],
  ['11', null],
  ['', null],
])('“%s” as a band is %j', (text, band) => {
  expect(bandFrom(text)).toEqual(band);
});

test('numbers are read with point or comma, whole ones without', () => {
  expect([numberFrom('2,5', 0, 10), numberFrom('2.5', 0, 2), wholeFrom('2.5', 0, 10), wholeFrom('7', 1, 9)]).toEqual([
    2.5,
    null,
    null,
    7,
  ]);
  expect([numberFrom('1e3', 0, 10_000), numberFrom('-1', -5, 5), numberFrom('', 0, 5)]).toEqual([null, null, null]);
});
