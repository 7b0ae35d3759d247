import { expect, test } from 'vitest';
import { showAround, showBasis, showRest } from './item-words.ts';

const set = (repetitions: number, rest: number) => ({ repetitions, rest });

test('each basis says where the load comes from', () => {
  const feel = { reserve: null, shouldFeel: [6, 7] } as const;
  expect(showBasis({ ...feel, basis: { kind: 'fraction', of: 0.745 } })).toBe(
    'fraction: 74.5 % of capacity; should feel 6 to 7',
  );
  expect(
    showBasis({
      ...feel,
      reserve: 2,
      basis: { kind: 'from last', start: 'effort', rule: { add: { lb: '5', kg: '2.5' } } },
    }),
  ).toBe('from last: starts by effort, then +5 lb or +2.5 kg, 2 in reserve; should feel 6 to 7');
  expect(showBasis({ ...feel, basis: { kind: 'effort', rpe: [5, 5] } })).toBe('effort: RPE 5; should feel 6 to 7');
});

test('rest is in minutes and seconds, warm-ups beside it', () => {
  expect(showRest({ sets: [set(6, 150), set(6, 60)], warmUps: [{ of: 0.5, repetitions: 5 }] })).toBe(
    'rest 2 min 30 s or 1 min; warm-up 50 % × 5',
  );
  expect(showRest({ sets: [set(6, 45)], warmUps: [] })).toBe('rest 45 s');
});

test('what stands around bouts is in minutes', () => {
  expect(showAround({ warmUpSeconds: 600, coolDownSeconds: 90 })).toBe('10 min warming up, 1:30 min cooling down');
});
