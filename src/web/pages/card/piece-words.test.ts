import { expect, test } from 'vitest';
import type { CardBout, CardBouts, CardDrill, CardDrillSet } from '#domain/card.ts';
import { boutTargets, drillRest, pulsesOf, runsOf, setCount, warmAndCool } from './piece-words.ts';

const bout: CardBout = { seconds: 240, easy: 180, heartRate: [161, 175], watts: null, speed: 12.5, rpe: [7, 8] };
const set: CardDrillSet = { work: { kind: 'pulses', count: 24, on: 3, off: 2 }, side: 'left', rest: 120, force: 135 };
const drill = (sets: readonly CardDrillSet[], means = 'hand gear') => ({ sets, means }) as CardDrill;

test('what is known is set and held; where nothing is known effort leads', () => {
  expect(boutTargets(bout).map(({ value, unit }) => `${value} ${unit}`)).toEqual(['161–175 /min', '12.5 km/h']);
  expect(boutTargets({ ...bout, heartRate: null, speed: null })).toEqual([
    { value: '7–8', unit: 'RPE', label: 'effort leads' },
  ]);
});

test('the easy time after the last bout makes no other bout of it', () => {
  expect(runsOf([bout, bout, { ...bout, easy: 0 }])).toEqual([{ part: bout, count: 3 }]);
});

test('bouts that differ stand by themselves, in their order', () => {
  const hard = { ...bout, seconds: 30 };
  expect(runsOf([bout, hard, hard, bout]).map(({ part, count }) => [part.seconds, count])).toEqual([
    [240, 1],
    [30, 2],
    [240, 1],
  ]);
});

test('warming up and cooling down are said where there are any', () => {
  const item = { warmUpSeconds: 300, coolDownSeconds: 0 } as CardBouts;
  expect(warmAndCool(item)).toBe('Warm up 5 min, easy.');
  expect(warmAndCool({ ...item, coolDownSeconds: 90 })).toBe(
    'Warm up 5 min, easy. Cool down 1:30 min; do not stop at once.',
  );
});

test('a set is counted, held or drawn', () => {
  expect(setCount(set)).toBe('× 24');
  expect(setCount({ ...set, work: { kind: 'hold', seconds: 40 } })).toBe('40 s');
});

test('pulses are drawn only where all sets beat alike', () => {
  expect(pulsesOf(drill([set, { ...set, side: 'right' }]))).toEqual(set.work);
  expect(pulsesOf(drill([set, { ...set, work: { kind: 'pulses', count: 12, on: 3, off: 2 } }]))).toBeNull();
  expect(pulsesOf(drill([{ ...set, work: { kind: 'hold', seconds: 30 } }]))).toBeNull();
});

test('what a drill is done with is said where there is anything', () => {
  expect(drillRest(drill([set]))).toBe('With hand gear. Rest 2 min.');
  expect(drillRest(drill([{ ...set, rest: 0 }], 'no gear'))).toBe('');
});
