import { expect, test } from 'vitest';
import type { CardBout, CardBouts, CardDrill } from '#domain/card.ts';
import { idOf } from '#domain/identity.ts';
import { INES } from './people.ts';
import { performPiece } from './perform-piece.ts';
import { randomStream } from './random.ts';

const DAY = { sinceLaunch: 30, weightless: true, pullsBy: 1, form: 0 };

const COMMON = {
  item: idOf<'item'>('item'),
  track: idOf<'track'>('track'),
  place: 1,
  exerciseName: '',
  priority: 1,
  asWritten: null,
  settings: [],
  last: null,
  cues: [],
  shouldFeel: [5, 7],
  says: [],
} as const;

const bouts = (exercise: string, of: readonly Partial<CardBout>[], harness: CardBouts['harness'] = null): CardBouts =>
  ({
    ...COMMON,
    kind: 'bouts',
    exercise: idOf(exercise),
    machine: idOf('machine'),
    machineName: '',
    warmUpSeconds: 300,
    bouts: of.map((one) => ({
      seconds: 240,
      easy: 180,
      heartRate: null,
      watts: null,
      speed: null,
      rpe: [5, 7],
      ...one,
    })),
    coolDownSeconds: 300,
    harness,
    raises: [],
  }) as unknown as CardBouts;

const perform = (item: CardBouts | CardDrill) => performPiece(INES, item, DAY, randomStream(1, 'piece'));

test('what is set is done; more of it is harder and beats faster', () => {
  const [easy, hard] = [90, 180].map((watts) => perform(bouts('cycling', [{ watts, seconds: 1800 }])));
  expect([easy?.watts, hard?.watts]).toEqual([90, 180]);
  expect(easy?.heartRate).toBeLessThan(hard?.heartRate ?? 0);
  expect(easy?.felt).toBeLessThan(hard?.felt ?? 0);
  expect([easy?.speed, easy?.done]).toEqual([null, 1]);
});

test('where effort leads, the setting is found by feel: in fives of watts, in tenths of km/h, never running when walking', () => {
  const ridden = perform(bouts('cycling', [{ rpe: [4, 5] }]));
  expect((ridden.watts ?? 1) % 5).toBe(0);
  expect([4, 5]).toContain(ridden.felt);
  const harness = { increments: 100, unit: 'lb', increment: '1', ofBodyWeight: 0.65 } as CardBouts['harness'];
  expect(perform(bouts('treadmill-walk', [{ rpe: [5, 6] }], harness)).speed).toBeLessThanOrEqual(6.4);
});

test('over what the body takes the second bout is broken off', () => {
  const watts = 330;
  expect(perform(bouts('cycling', [{ watts }, { watts }, { watts }, { watts }])).done).toBe(1);
});

test('all-out is all-out, for half a minute at a power that no uptake pays for', () => {
  const out = perform(bouts('cycling', Array(8).fill({ seconds: 30, easy: 15, rpe: [9, 10] })));
  expect(out.done).toBe(8);
  expect(out.watts).toBeGreaterThan(250);
  expect(out.felt).toBeGreaterThanOrEqual(9);
});

const pulses = (force: number): CardDrill =>
  ({
    ...COMMON,
    kind: 'drill',
    exercise: idOf('grip-pulses'),
    means: 'hand gear',
    sets: Array(8).fill({ work: { kind: 'pulses', count: 8, on: 7, off: 3 }, side: 'left', rest: 40, force }),
    raises: [],
  }) as unknown as CardDrill;

test('hands hold what lasts, and lose sets over it', () => {
  expect(perform(pulses(100)).done).toBe(8);
  expect(perform(pulses(170)).done).toBeLessThan(8);
  expect(perform(pulses(170)).felt).toBeGreaterThan(perform(pulses(100)).felt ?? 10);
});
