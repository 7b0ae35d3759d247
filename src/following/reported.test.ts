import { expect, test } from 'vitest';
import { addDays, isoDay, type Day } from '#units/day.ts';
import type { CardRecord, Delivery, Outcome, RoadCard } from '#domain/road.ts';
import { reportedOf } from './reported.ts';

const TODAY = isoDay('2031-06-01');

/** Only what is counted by is filled in. */
const issued = (ago: number, outcome: Outcome, delivery: Delivery = 'issued'): RoadCard => ({
  state: 'issued',
  day: addDays(TODAY, -ago) satisfies Day,
  record: { outcome, delivery } as CardRecord,
});

test('called off and not heard are counted apart from what was done', () => {
  const cards = [issued(9, 'done'), issued(7, 'called off'), issued(5, 'part done'), issued(3, 'not heard')];
  expect(reportedOf({ cards, today: TODAY })).toEqual({
    of: 4,
    done: 2,
    calledOff: 1,
    notHeard: 1,
    days: ['done', 'called off', 'part done', 'not heard'],
  });
});

test('today, what lies ahead and what is older than two weeks do not count', () => {
  const cards = [issued(15, 'done'), issued(14, 'missed'), issued(0, 'none'), issued(-2, 'none')];
  expect(reportedOf({ cards, today: TODAY })).toMatchObject({ of: 1, done: 0, days: ['missed'] });
});

test('a card that was taken back counts only where something was done on it', () => {
  const cards = [
    issued(3, 'not heard', 'recalled'),
    issued(4, 'not heard', 'superseded'),
    issued(5, 'done', 'recalled'),
  ];
  expect(reportedOf({ cards, today: TODAY })).toMatchObject({ of: 1, done: 1, notHeard: 0 });
});
