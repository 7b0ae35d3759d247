import { expect, test } from 'vitest';
import { addDays } from '#units/day.ts';
import { idOf } from '#domain/identity.ts';
import type { LiftPerson, LiftSession, LiftWindow } from '#contract/windows/lift-window.ts';
import { cellOf, TODAY } from '../sheet/invented-sheet.setup.ts';
import { columnsOf, doneOf, liftRows, raiseText, sessionsUnder } from './lift-columns.ts';

const sessionOn = (after: number, more: Partial<LiftSession> = {}): LiftSession => ({
  day: addDays(TODAY, after),
  missionDay: `day ${after}`,
  title: 'Heavy day',
  state: after < 0 ? 'issued' : 'planned',
  past: after < 0,
  delivery: after < 0 ? 'received' : null,
  outcome: after < 0 ? 'done' : null,
  calledOff: null,
  card: null,
  gaps: [],
  cell: cellOf('heavy', 'a', { done: after < 0 ? '6 6 6 6 · 7' : null }),
  ...more,
});

const personOf = (name: string, past: readonly LiftSession[], ahead: readonly LiftSession[]): LiftPerson => ({
  id: idOf(name),
  name,
  group: 'in flight',
  dayLabel: '',
  past,
  ahead,
  estimate: '104 kg ± 6',
  lastHere: null,
  ramp: null,
  raise: null,
  discomfort: null,
  unread: null,
});

const lift: LiftWindow = {
  exercise: idOf('back-squat'),
  name: 'Back squat',
  today: TODAY,
  people: [
    personOf('Birte', [sessionOn(-7), sessionOn(-2)], [sessionOn(0)]),
    {
      ...personOf(
        'Sami',
        [sessionOn(-1, { outcome: 'called off', calledOff: 'machine: belt', cell: cellOf('heavy', 'a') })],
        [],
      ),
      discomfort: { score: 3, side: 'left', site: 'knee', missionDay: 'day −1' },
      unread: { text: 'felt\theavy', missionDay: 'day −1' },
    },
  ],
  without: [],
  lifts: [],
};

test('heads count back from today; the past of each person stands close to it', () => {
  expect(columnsOf(lift)).toEqual({ past: ['one before', 'last'], ahead: ['next'] });
  const [, sami] = lift.people;
  expect(sami && sessionsUnder(lift, sami).past.map((session) => session?.missionDay ?? null)).toEqual([
    null,
    'day -1',
  ]);
  expect(sami && sessionsUnder(lift, sami).ahead).toEqual([null]);
});

test('what was done, or what became of it instead', () => {
  expect(doneOf(sessionOn(-2))).toBe('6 6 6 6 · 7');
  expect(doneOf(sessionOn(-2, { outcome: 'not heard', cell: cellOf('heavy', 'a') }))).toBe('not heard');
  expect(doneOf(sessionOn(-1, { outcome: 'called off', calledOff: 'machine: belt', cell: cellOf('heavy', 'a') }))).toBe(
    'called off, machine: belt',
  );
  expect(doneOf(sessionOn(0))).toBe('');
});

test('a raise is told with what it changes at the bar; a first load has nothing before it', () => {
  const raise = {
    track: idOf<'track'>('heavy'),
    exercise: lift.exercise,
    exerciseName: 'Back squat',
    from: 265,
    to: 270,
    unit: 'lb',
    increment: '1',
    atTheBar: 0.03,
    trueFraction: null,
    effortStep: null,
    shareStep: null,
    cause: 'step rule',
    because: [],
    cautions: [],
    needsReason: false,
    proposal: null,
  } as const;
  const person = personOf('Birte', [], []);
  expect(raiseText({ ...person, raise })).toBe('265 → 270 lb, +3.0\u00a0% at the bar');
  expect(raiseText({ ...person, raise: { ...raise, from: null, atTheBar: null } })).toBe('first load, 270 lb');
  expect(raiseText(person)).toBe('');
});

test('the page is copied out as a table with a line for each person', () => {
  const rows = liftRows(lift);
  expect(new Set(rows.map(({ length }) => length)).size).toBe(1);
  expect(rows[0]?.slice(0, 4)).toEqual(['person', 'one before: day', 'one before: planned', 'one before: done']);
  expect(rows[1]?.slice(0, 4)).toEqual(['Birte', 'day -7', '4×6 100', '6 6 6 6 · 7']);
  expect(rows[2]?.slice(-2)).toEqual(['3 of 10, left knee, day −1', 'felt\theavy']);
});
