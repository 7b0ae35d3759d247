import { expect, test } from 'vitest';
import type { Card, CardBouts, CardDrill } from '#domain/card.ts';
import type { PieceResult } from '#domain/fact.ts';
import { idOf } from '#domain/identity.ts';
import { pieceProblems } from './piece-problems.ts';

const bout = { seconds: 240, easy: 180, heartRate: null, watts: null, speed: 11.2, rpe: [7, 8] } as const;
const run = {
  kind: 'bouts',
  item: idOf('run'),
  exerciseName: 'Treadmill run',
  bouts: [bout, bout, bout, bout],
  harness: { increments: 118, increment: '1', unit: 'lb', ofBodyWeight: 0.7 },
} as unknown as CardBouts;
const hold = {
  kind: 'drill',
  item: idOf('hold'),
  exerciseName: 'Plank',
  sets: [{ work: { kind: 'hold', seconds: 30 }, side: null, rest: 30, force: null }],
} as unknown as CardDrill;
const squat = { kind: 'lift', item: idOf('squat'), exerciseName: 'Back squat' };
const card = { items: [run, hold, squat] } as unknown as Card;

const done = (more: Partial<PieceResult> = {}): PieceResult => ({
  item: run.item,
  done: 4,
  minutes: 35,
  watts: null,
  speed: 11.2,
  harness: { text: '118', unit: 'lb' },
  heartRate: 171,
  effort: { kind: 'RPE', value: 8 },
  ...more,
});

const problems = (...pieces: readonly PieceResult[]) =>
  pieceProblems(
    {
      kind: 'trained',
      person: idOf('person'),
      day: 1 as never,
      card: idOf('card'),
      sets: [],
      pieces,
      sessionRpe: null,
      minutes: null,
    },
    card,
  );

const onDrill: PieceResult = { ...done(), item: hold.item, done: 1, speed: null, harness: null, heartRate: null };

test('what the card asked for, and twice of it, can be', () => {
  expect(problems(done(), onDrill)).toEqual([]);
  expect(problems(done({ done: 8 }))).toEqual([]);
});

test.each([
  { piece: done({ item: idOf('row') }), field: 'item' },
  { piece: done({ item: idOf('squat') }), field: 'item' },
  { piece: done({ done: 9 }), field: 'done' },
  { piece: done({ minutes: 301 }), field: 'minutes' },
  { piece: done({ watts: 601 }), field: 'watts' },
  { piece: done({ speed: 31 }), field: 'speed' },
  { piece: done({ heartRate: 29 }), field: 'heartRate' },
  { piece: { ...onDrill, harness: { text: '118', unit: 'lb' as const } }, field: 'harness.text' },
  { piece: { ...onDrill, watts: 150 }, field: 'done' },
])('what cannot be is refused at $field', ({ piece, field }) => {
  const found = problems(piece);
  expect(found.map((problem) => problem.field)).toEqual([`pieces.0.${field}`]);
  expect(found.every(({ mayStand }) => mayStand === undefined)).toBe(true);
});

test('an item that stands twice is refused where it stands again', () => {
  expect(problems(done(), done()).map(({ field }) => field)).toEqual(['pieces.1.item']);
});

test.each(['53.5', '260', '59', '236', '200'])('a harness of %s lb beside 118 is asked about', (text) => {
  expect(problems(done({ harness: { text, unit: 'lb' } }))).toMatchObject([
    { field: 'pieces.0.harness.text', mayStand: true },
  ]);
});

test('kilograms that weigh what the card asks for are no question', () => {
  expect(problems(done({ harness: { text: '53.5', unit: 'kg' } }))).toEqual([]);
});
