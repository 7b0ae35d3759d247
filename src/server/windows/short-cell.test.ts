import { expect, test } from 'vitest';
import type { CardBout, CardBouts, CardDrill, CardDrillSet, CardLift } from '#domain/card.ts';
import type { PieceResult } from '#domain/fact.ts';
import { idOf } from '#domain/identity.ts';
import { shortPiece, shortPieceResult, shortWorkSets } from './short-cell.ts';

const ANY = {
  item: idOf<'item'>('item'),
  track: idOf<'track'>('track'),
  place: 0,
  exercise: idOf<'exercise'>('exercise'),
  exerciseName: 'Exercise',
  priority: 1,
  asWritten: null,
  settings: [],
  last: null,
  cues: [],
  shouldFeel: [5, 6],
  says: [],
} as const;

const lift = (...sides: readonly ['left' | 'right' | null, number, number][]): CardLift => ({
  ...ANY,
  kind: 'lift',
  leading: true,
  carriedAtShoulders: false,
  machine: idOf('machine'),
  machineName: 'Machine',
  unit: 'lb',
  increment: '1',
  basis: 'from last',
  sets: sides.map(([side, repetitions, increments]) => ({
    kind: 'work',
    repetitions,
    load: { kind: 'set', increments },
    side,
    rest: 60,
  })),
  tempo: null,
  superset: null,
  reserve: null,
  ramp: null,
  rule: null,
  limits: [],
  raise: null,
  row: null,
});

const bout = (more: Partial<CardBout>): CardBout => ({
  seconds: 120,
  easy: 120,
  heartRate: null,
  watts: null,
  speed: null,
  rpe: [6, 7],
  ...more,
});

const bouts = (harness: number | null, ...each: readonly CardBout[]): CardBouts => ({
  ...ANY,
  kind: 'bouts',
  machine: idOf('machine'),
  machineName: 'Machine',
  warmUpSeconds: 300,
  bouts: each,
  coolDownSeconds: 300,
  harness:
    harness === null ? null : { increments: harness, unit: 'lb', increment: '1', ofBodyWeight: 0.7, share: null },
  raises: [],
  row: null,
});

const drill = (...sets: readonly Pick<CardDrillSet, 'work' | 'side' | 'force'>[]): CardDrill => ({
  ...ANY,
  kind: 'drill',
  means: 'body weight',
  sets: sets.map((set) => ({ ...set, rest: 30 })),
  raises: [],
  row: null,
});

test('the sides of a lift share their repetitions where only the loads differ', () => {
  expect(shortWorkSets(lift(['left', 8, 190], ['right', 8, 180], ['left', 8, 190], ['right', 8, 180]))).toBe(
    '2×8 L 190 R 180',
  );
  expect(shortWorkSets(lift(['left', 8, 190], ['right', 8, 190]))).toBe('1×8 190 each side');
  expect(shortWorkSets(lift(['left', 8, 190], ['right', 6, 180]))).toBe('left 1×8 190, right 1×6 180');
  expect(shortWorkSets(lift([null, 6, 270], [null, 6, 270]))).toBe('2×6 270');
});

test('a pyramid of bouts is told by its ends, one bout by itself', () => {
  const steps = [160, 190, 215, 190].map((watts) => bout({ watts, heartRate: [watts - 20, watts - 10] }));
  expect(shortPiece(bouts(null, ...steps))).toBe('4 × 2 min · 160–215 W · 140–205/min');
  expect(shortPiece(bouts(100, bout({ seconds: 1800, speed: 8.6, heartRate: [144, 151] })))).toBe(
    '30 min · 8.6 km/h · 144–151/min · harness 100 lb',
  );
  expect(shortPiece(bouts(null, bout({ seconds: 60 }), bout({})))).toBe('2 × 1 min–2 min · RPE 6–7');
});

test('drills are told by sets, work, sides and forces', () => {
  const twelve = { work: { kind: 'repetitions', count: 12 }, force: null } as const;
  expect(shortPiece(drill({ ...twelve, side: 'left' }, { ...twelve, side: 'right' }))).toBe('1 × 12 each side');
  expect(shortPiece(drill({ ...twelve, side: null }, { ...twelve, side: null }))).toBe('2 × 12');
  const pulses = { kind: 'pulses', count: 8, on: 7, off: 3 } as const;
  expect(
    shortPiece(drill({ work: pulses, side: 'left', force: 150 }, { work: pulses, side: 'right', force: 160 })),
  ).toBe('1 × 8 × 7/3 s · L 150 R 160 N');
  expect(
    shortPiece(drill({ work: pulses, side: 'left', force: 150 }, { work: pulses, side: 'right', force: 150 })),
  ).toBe('1 × 8 × 7/3 s each side · 150 N');
  const walk = { work: { kind: 'hold', seconds: 300 }, side: null, force: null } as const;
  expect(shortPiece(drill(walk))).toBe('1 × 5 min');
});

test('sets that are not all alike are told in full', () => {
  const sets = [12, 10].map((count) => ({ work: { kind: 'repetitions', count }, side: null, force: null }) as const);
  expect(shortPiece(drill(...sets))).toBe('12, 10');
});

test('what was done says how much of it only where it was not all, or where nothing else is known', () => {
  const done: PieceResult = {
    item: ANY.item,
    done: 4,
    minutes: 28,
    watts: 196,
    speed: null,
    harness: null,
    heartRate: 168,
    effort: { kind: 'RPE', value: 7 },
  };
  expect(shortPieceResult(done, 4)).toMatch(/^196 W · 168\/min/);
  expect(shortPieceResult({ ...done, done: 3 }, 4)).toMatch(/^3 of 4 · 196 W · 168\/min/);
  expect(shortPieceResult({ ...done, watts: null, heartRate: null, effort: null }, 4)).toBe('4 of 4 · 28 min');
});
