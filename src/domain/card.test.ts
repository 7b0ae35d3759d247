import { ISSUED_CARD } from '#contract/facts/any-issued-card.setup.ts';
import { expect, test } from 'vitest';
import { liftsOf, totalMinutes, workIncrements, type CardLift, type CardSet } from './card.ts';

const set = (kind: CardSet['kind'], increments: number): CardSet => ({
  kind,
  load: { kind: 'set', increments },
  repetitions: 6,
  side: null,
  rest: 120,
});

const itemWith = (...sets: readonly CardSet[]): CardLift => {
  const [item] = liftsOf(ISSUED_CARD.card);
  if (!item) throw new Error('The invented card has an item.');
  return { ...item, sets };
};

test('the work load of an item is the heaviest of its work sets; warm-up sets do not count', () => {
  expect(workIncrements(itemWith(set('warm-up', 300), set('work', 265), set('work', 270), set('work', 260)))).toBe(270);
  expect(workIncrements(itemWith(set('warm-up', 135)))).toBeNull();
});

test('the minutes of a card are all of its parts, overhead too', () => {
  const minutes = [
    { label: 'set up', minutes: 6, overhead: true },
    { label: 'sets', minutes: 31.5, overhead: false },
    { label: 'stow', minutes: 4, overhead: true },
  ];
  expect(totalMinutes({ ...ISSUED_CARD.card, minutes })).toBe(41.5);
});
