import { expect, test } from 'vitest';
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
