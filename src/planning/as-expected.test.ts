import { expect, test } from 'vitest';
import { ISSUED_CARD } from '#contract/facts/any-issued-card.setup.ts';
import { liftsOf, workIncrements, type Card, type CardLift } from '#domain/card.ts';
import { asExpected } from './as-expected.ts';

/** 270 lb under a rule of 5 lb, never over 300. */
const lift: CardLift = {
  ...(liftsOf(ISSUED_CARD.card)[0] as CardLift),
  sets: [
    { kind: 'warm-up', load: { kind: 'set', increments: 135 }, repetitions: 5, side: null, rest: 60 },
    { kind: 'work', load: { kind: 'set', increments: 270 }, repetitions: 6, side: null, rest: 120 },
  ],
};
const cardWith = (...items: readonly CardLift[]): Card => ({ ...ISSUED_CARD.card, deload: false, items });
const loadIn = (daysBeyond: number, of: CardLift = lift): number | null =>
  workIncrements(liftsOf(asExpected(cardWith(of), daysBeyond))[0] as CardLift);

test('a step of the rule every four weeks beyond the horizon, and the card says so', () => {
  expect([0, 27, 28, 56].map((days) => loadIn(days))).toEqual([270, 270, 275, 280]);
  expect(liftsOf(asExpected(cardWith(lift), 28))[0]?.says).toContain(
    "expected 5 lb over today's load: a step every four weeks, if it goes on so",
  );
});

test('never over what one signature covers, whatever the time', () => {
  expect(loadIn(5000)).toBe(300);
  expect(loadIn(5000, { ...lift, rule: { ...(lift.rule as NonNullable<CardLift['rule']>), neverOver: 272 } })).toBe(
    270,
  );
});

test('what has no rule, what somebody wrote, and an easier week stay as they are', () => {
  expect(loadIn(100, { ...lift, rule: null })).toBe(270);
  expect(loadIn(100, { ...lift, asWritten: '4 × 6 @ 270 lb' })).toBe(270);
  const easier = { ...cardWith(lift), deload: true };
  expect(asExpected(easier, 100)).toEqual(easier);
});

test('warm-up sets stay light', () => {
  const [warmUp] = liftsOf(asExpected(cardWith(lift), 100))[0]?.sets ?? [];
  expect(warmUp?.load.increments).toBe(135);
});
