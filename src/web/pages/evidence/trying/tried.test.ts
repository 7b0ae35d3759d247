import { expect, test } from 'vitest';
import { formula } from '#science/formula.ts';
import { tried } from './tried.ts';

const share = formula(
  {
    id: 'a/share',
    revision: 1,
    title: 'A share',
    equation: 'a / b',
    inputs: [
      { name: 'load', symbol: 'a', unit: 'kg', possible: [0, 500], valid: [10, 200] },
      { name: 'maximum', symbol: 'b', unit: 'kg', possible: [1, 500], valid: [1, 500] },
    ],
    output: { name: 'share', symbol: 's', unit: '1' },
    conditions: [{ says: 'The load is not above the maximum.', holds: (a, b) => Number(a) <= Number(b) }],
    source: { text: 'Our own design.', status: 'our own design' },
    doesNotKnow: 'anything',
  },
  (a: number, b: number) => a / b,
);

test('numbers are read with a comma, spaces and a minus sign', () => {
  expect(tried(share, [' 52,5 ', '105'])).toEqual({ kind: 'value', value: 0.5, cautions: [] });
  expect(tried(share, ['−1', '105'])).toMatchObject({ kind: 'refused' });
});

test('outside the valid range a value is given and flagged in a sentence', () => {
  const met = tried(share, ['5', '100']);
  expect(met).toMatchObject({ kind: 'value', value: 0.05 });
  if (met.kind === 'value') expect(met.cautions.join(' ')).toMatch(/^Load 5 kg is outside 10 to 200: computed/);
});

test('what cannot be is refused in a sentence that says what may be', () => {
  expect(tried(share, ['600', '100'])).toEqual({
    kind: 'refused',
    reasons: ['Load must lie in 0 to 500 kg; it is 600.'],
  });
  expect(tried(share, ['100', '50'])).toEqual({ kind: 'refused', reasons: ['The load is not above the maximum.'] });
});

test('what is no number is said of every input at once', () => {
  const met = tried(share, ['', 'ten']);
  expect(met).toMatchObject({ kind: 'refused' });
  if (met.kind === 'refused') {
    expect(met.reasons).toHaveLength(2);
    expect(met.reasons[0]).toBe('Load is empty: type a number.');
    expect(met.reasons[1]).toContain('“ten”');
  }
});
