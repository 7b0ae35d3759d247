import { expect, test } from 'vitest';
import type { CardBout, CardBouts, CardDrill, CardDrillSet } from './card.ts';
import { showHarness, showPiece } from './show-piece.ts';

const bout: CardBout = { seconds: 240, easy: 180, heartRate: [168, 176], watts: 230, speed: null, rpe: [7, 8] };
const harness = { increments: 122, unit: 'lb', increment: '1', ofBodyWeight: 0.65, share: 0.65 } as const;
const bouts = (parts: readonly CardBout[], pull: CardBouts['harness'] = null) =>
  ({ kind: 'bouts', bouts: parts, harness: pull }) as CardBouts;
const set = (more: Partial<CardDrillSet> = {}): CardDrillSet => ({
  work: { kind: 'hold', seconds: 40 },
  side: null,
  rest: 30,
  force: null,
  ...more,
});
const drill = (...sets: readonly CardDrillSet[]) => ({ kind: 'drill', sets }) as unknown as CardDrill;

test('bouts that are alike are counted, whatever comes after the last one', () => {
  expect(showPiece(bouts([bout, bout, { ...bout, easy: 0 }]))).toBe('3 × 4 min, 3 min easy · 230 W · 168–176/min');
});

test('bouts that last alike and are held at different loads are told together', () => {
  const harder = { ...bout, watts: 245, heartRate: [173, 178] as const };
  expect(showPiece(bouts([bout, harder, { ...bout, easy: 0 }]))).toBe(
    '3 × 4 min, 3 min easy: 230 W 168–176/min, 245 W 173–178/min, 230 W 168–176/min',
  );
});

test('the load of a harness stands without the share of body weight', () => {
  const text = showPiece(bouts([bout], harness));
  expect(text).toContain('harness 122 lb');
  expect(text).not.toContain('%');
  expect(showHarness(harness)).toBe('122 lb (65 % of body weight)');
});

test('sides that do the same are said once, others each for itself', () => {
  const [left, right] = [set({ side: 'left' }), set({ side: 'right' })];
  expect(showPiece(drill(left, right, left, right))).toBe('2 × 40 s each side');
  expect(showPiece(drill({ ...left, force: 135 }, { ...right, force: 145 }))).toBe(
    '1 × 40 s at 135 N left, 145 N right',
  );
  const longer = { ...right, work: { kind: 'hold', seconds: 50 } as const };
  expect(showPiece(drill(left, longer))).toBe('1 × 40 s left, 1 × 50 s right');
  expect(showPiece(drill(right))).toBe('1 × 40 s right');
  expect(showPiece(drill(set(), set()))).toBe('2 × 40 s');
});
