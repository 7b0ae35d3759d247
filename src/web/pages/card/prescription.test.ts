import { expect, test } from 'vitest';
import type { CardLift, CardSet } from '#domain/card.ts';
import { idOf } from '#domain/identity.ts';
import { otherSentences, prescription, ruleText } from './prescription.ts';

const set = (repetitions: number, rest: number, side: CardSet['side'] = null): CardSet => ({
  kind: 'work',
  load: { kind: 'set', increments: 270 },
  repetitions,
  side,
  rest,
});

const item = (sets: readonly CardSet[], says: readonly string[] = []): CardLift => ({
  kind: 'lift',
  item: idOf('item'),
  track: idOf('track'),
  leading: true,
  place: 1,
  exercise: idOf('back squat'),
  exerciseName: 'Back squat',
  carriedAtShoulders: true,
  machine: idOf('machine'),
  machineName: 'Resistive machine',
  unit: 'lb',
  increment: '1',
  priority: 1,
  basis: 'from last',
  asWritten: null,
  settings: [],
  last: null,
  cues: [],
  sets,
  tempo: null,
  superset: null,
  reserve: null,
  shouldFeel: [6, 7],
  ramp: null,
  rule: null,
  limits: [],
  raise: null,
  row: null,
  says,
});

test('work sets that are alike are counted, warm-ups are not', () => {
  const sets = [{ ...set(6, 90), kind: 'warm-up' as const }, set(6, 150), set(6, 150), set(6, 150), set(6, 150)];
  expect(prescription(item(sets))).toBe('4 × 6, rest 2:30. Should feel 6 to 7.');
});

test('sets of both sides in turn are told by side', () => {
  const sets = [set(8, 0, 'left'), set(8, 65, 'right'), set(8, 0, 'left'), set(8, 65, 'right')];
  expect(prescription(item(sets))).toBe('2 × 8 each side, rest 1:05. Should feel 6 to 7.');
});

test('sets that differ stand one by one', () => {
  expect(prescription(item([set(8, 60), set(6, 60)]))).toBe('8, 6, rest 1:00. Should feel 6 to 7.');
});

test('ranges, a tempo and a superset are said before how it should feel', () => {
  const ranged = { ...set(6, 150), most: 8 };
  const sets = [ranged, ranged, { ...ranged, optional: true as const }];
  expect(prescription({ ...item(sets), tempo: [3, 1, 1], superset: { letter: 'A1', inTurnWith: [2] } })).toBe(
    '2–3 × 6–8, 3 s down, 1 held, 1 up, rest 2:30 after the round. A1: in turn with 2, a set of each. Should feel 6 to 7.',
  );
  expect(prescription(item([set(6, 60), set(6, 60), { ...set(6, 60), orMore: true }]))).toBe(
    '6, 6, 6+, rest 1:00. Should feel 6 to 7.',
  );
});

const rule = { add: 5, rpeAtMost: 8, discomfortBelow: 3, neverOver: 280, takeOff: 25, says: '' };

test('a rule names its step and its bounds', () => {
  expect(ruleText({ ...item([set(6, 150)]), rule })).toBe(
    '+5 next time if all at RPE ≤ 8, discomfort < 3; never over 280; up to 25 off.',
  );
});

test('a rule that leaves no room for its step says to stay', () => {
  expect(ruleText({ ...item([set(6, 150)]), rule: { ...rule, neverOver: 274 } })).toBe('stay at 270; up to 25 off.');
});

test('an item without a signed rule says nothing of one', () => {
  expect(ruleText(item([set(6, 150)]))).toBeNull();
});

test('what the prescription says already is not said twice', () => {
  expect(otherSentences(item([], ['should feel 6', 'limited by the physician']))).toEqual(['limited by the physician']);
});
