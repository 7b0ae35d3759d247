import fc from 'fast-check';
import { expect, test } from 'vitest';
import { LOADING_FLOORS, weekAgainstFloors, type LoadingFloor, type Week, type WeekFigure } from './loading-floors.ts';

const floors = LOADING_FLOORS.rows;

const reported = (value: number, sessionsUnreported = 0): WeekFigure => ({
  kind: 'reported',
  value,
  sessionsUnreported,
});
const UNREPORTED: WeekFigure = { kind: 'unreported' };

const week = (minutes: WeekFigure, steps: WeekFigure, sets: WeekFigure): Week => ({
  'loaded minutes': minutes,
  steps,
  'heavy sets': sets,
});

const compared = (of: Week, against: readonly LoadingFloor[] = floors) => {
  const found = weekAgainstFloors(of, against);
  if (found.kind === 'refused') throw new Error(found.reason);
  return found.floors;
};

test('a week at its floors has met them', () => {
  expect(compared(week(reported(90), reported(10_000), reported(8)))).toEqual([
    { kind: 'met', loading: 'loaded minutes', says: '90 of at least 90 loaded minutes this week: met.' },
    { kind: 'met', loading: 'steps', says: '10000 of at least 10000 steps this week: met.' },
    { kind: 'met', loading: 'heavy sets', says: '8 of at least 8 heavy sets this week: met.' },
  ]);
});

test('a week under its floors is short by the rest', () => {
  expect(compared(week(reported(71.5), reported(0), reported(7)))).toEqual([
    {
      kind: 'short',
      loading: 'loaded minutes',
      by: 18.5,
      says: '71.5 of at least 90 loaded minutes this week: short by 18.5.',
    },
    { kind: 'short', loading: 'steps', by: 10_000, says: '0 of at least 10000 steps this week: short by 10000.' },
    { kind: 'short', loading: 'heavy sets', by: 1, says: '7 of at least 8 heavy sets this week: short by 1.' },
  ]);
});

test('what was not reported is not nought', () => {
  expect(compared(week(UNREPORTED, reported(4000, 1), reported(3, 2)))).toEqual([
    {
      kind: 'not known',
      loading: 'loaded minutes',
      atMostShortBy: 90,
      says: 'Loaded minutes were not reported this week.',
    },
    {
      kind: 'not known',
      loading: 'steps',
      atMostShortBy: 6000,
      says: '4000 of at least 10000 steps this week are reported, one session is not: short by 6000 at most.',
    },
    {
      kind: 'not known',
      loading: 'heavy sets',
      atMostShortBy: 5,
      says: '3 of at least 8 heavy sets this week are reported, 2 sessions are not: short by 5 at most.',
    },
  ]);
});

test('a floor that what is reported reaches is met, whatever is still to come', () => {
  expect(compared(week(reported(95, 2), UNREPORTED, UNREPORTED))[0]).toMatchObject({ kind: 'met' });
});

test('more loading never turns met into short, and what is short adds up to the floor', () => {
  const value = fc.double({ min: 0, max: 200, noNaN: true });
  fc.assert(
    fc.property(
      value,
      fc.double({ min: 0, max: 50, noNaN: true }),
      fc.integer({ min: 0, max: 3 }),
      (x, more, unreported) => {
        const at = (of: number) => compared(week(reported(of, unreported), UNREPORTED, UNREPORTED))[0];
        const [now, then] = [at(x), at(x + more)];
        expect([now?.kind, then?.kind]).not.toEqual(['met', 'short']);
        expect(now?.kind === 'short' ? x + now.by : 90).toBeCloseTo(90, 9);
      },
    ),
  );
});

test('floors are data: other ones are compared as they stand, in their order', () => {
  const [minutes, , sets] = floors;
  if (!minutes || !sets) throw new Error('three floors');
  const own = [
    { ...sets, least: 12 },
    { ...minutes, least: 60 },
  ];
  expect(
    compared(week(reported(60), UNREPORTED, reported(10)), own).map(({ kind, loading }) => [loading, kind]),
  ).toEqual([
    ['heavy sets', 'short'],
    ['loaded minutes', 'met'],
  ]);
  expect(compared(week(UNREPORTED, UNREPORTED, UNREPORTED), [])).toEqual([]);
});

test('figures and floors that cannot be are refused by name, all at once', () => {
  const [minutes] = floors;
  if (!minutes) throw new Error('three floors');
  const found = weekAgainstFloors(week(reported(-1), reported(Number.NaN), reported(3, -1)), [
    ...floors,
    { ...minutes, least: 0 },
  ]);
  expect(found).toEqual({
    kind: 'refused',
    reason: [
      'loaded minutes must lie in 0 to 500000 a week; it is -1.',
      'steps must lie in 0 to 500000 a week; it is NaN.',
      'sessions without heavy sets must lie in 0 to 100 sessions; it is -1.',
      'floor of loaded minutes must lie in 1 to 500000 a week; it is 0.',
      'loaded minutes must lie in 0 to 500000 a week; it is -1.',
      'There are two floors for loaded minutes: keep one.',
    ].join(' '),
  });
});
