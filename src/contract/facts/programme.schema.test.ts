import { expect, test } from 'vitest';
import { isLiftItem, type LiftItem } from '#domain/programme.ts';
import { SET_PROGRAMME } from '#shipped/set-programme.ts';
import { programmeVersion } from './programme.schema.ts';

/** Phases as the first program knew them: flight days and nothing else. */
const flown = {
  ...SET_PROGRAMME,
  phases: SET_PROGRAMME.phases
    .filter(({ name }) => name === 'first flight weeks' || name === 'main flight')
    .map((phase) => (phase.name === 'main flight' ? { ...phase, span: { ...phase.span, last: null } } : phase)),
};

/** A version as the first program wrote it: phases in flight days. */
const asWrittenFirst = {
  ...flown,
  phases: flown.phases.map(({ span: { first, last }, ...phase }) => ({
    ...phase,
    flightDays: [first.days + 1, last === null ? null : last.days + 1],
  })),
};

test('a programme of the first program is read as what it means today', () => {
  expect(programmeVersion.parse(asWrittenFirst)).toEqual(flown);
  expect(asWrittenFirst.phases.map(({ flightDays }) => flightDays)).toEqual([
    [1, 14],
    [15, null],
  ]);
});

test('a phase whose last day lies before its first is refused', () => {
  const [phase] = SET_PROGRAMME.phases;
  const span = { first: { from: 'launch', days: 5 }, last: { from: 'launch', days: 4 } };
  const reading = programmeVersion.safeParse({ ...SET_PROGRAMME, phases: [{ ...phase, span }] });
  expect(reading.success).toBe(false);
});

const lifts = (version: typeof SET_PROGRAMME) =>
  version.phases.flatMap(({ sessions }) => sessions.flatMap(({ items }) => items.filter(isLiftItem)));

/** A version with this change to every lift. */
const withLifts = (change: (lift: LiftItem) => object) => ({
  ...SET_PROGRAMME,
  phases: SET_PROGRAMME.phases.map((phase) => ({
    ...phase,
    sessions: phase.sessions.map((session) => ({
      ...session,
      items: session.items.map((item) => (isLiftItem(item) ? change(item) : item)),
    })),
  })),
});

test('lifts from before tempo and supersets have neither', () => {
  const before = withLifts(({ tempo: _tempo, superset: _superset, ...lift }) => lift);
  expect(programmeVersion.parse(before)).toEqual(SET_PROGRAMME);
  expect(lifts(SET_PROGRAMME).length).toBeGreaterThan(0);
});

test.each([
  [{ most: 8 }, true],
  [{ most: 8, orMore: true, optional: true }, true],
  [{ most: 6 }, false],
  [{ most: 5 }, false],
  [{ orMore: false }, false],
])('a set of six with %o is taken: %s', (more, isTaken) => {
  const version = withLifts((lift) => ({ ...lift, sets: [{ repetitions: 6, rest: 60, ...more }] }));
  expect(programmeVersion.safeParse(version).success).toBe(isTaken);
});
