import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { SHIPPED_EXERCISES } from '#shipped/exercises/shipped-exercises.ts';
import { idOf } from './identity.ts';
import type { ProgrammeContent, ProgrammeItem, ProgrammePhase, ProgrammeSession } from './programme.ts';
import { programmeDifference } from './programme-difference.ts';
import { readLine } from './programme-line/read-line.ts';
import { movedAmong } from './session-difference.ts';

const CATALOGUE = new Map(SHIPPED_EXERCISES.map((exercise) => [exercise.id, exercise]));

const itemFrom = (line: string, id: string, before: ProgrammeItem | null = null): ProgrammeItem => {
  const reading = readLine(line, {
    exercises: SHIPPED_EXERCISES,
    before,
    place: {
      newId: () => idOf(id),
      trackFor: ({ name }) => idOf(`${name} track`),
      isLed: () => false,
      machineKinds: ['free bar'],
      lowestPriority: 3,
    },
  });
  if (reading.kind === 'problems') throw new Error(reading.problems.map(({ says }) => says).join(' '));
  return reading.item;
};

const session = (id: string, title: string, weekday: number, items: readonly ProgrammeItem[]): ProgrammeSession => ({
  id: idOf(id),
  title,
  weekday,
  blockMinutes: 90,
  items,
});

const SQUAT = itemFrom('Back squat 4 × 6 @ 78 %, rest 2:30', 'squat');
const DEADLIFT = itemFrom('Deadlift 3 × 6 @ 75 %, rest 2:30', 'deadlift');
const BENCH = itemFrom('Bench press 3 × 10 @ RPE 7', 'bench');
const CURL = itemFrom('Biceps curl 3 × 12', 'curl');
const HEAVY = session('heavy', 'Heavy day', 1, [SQUAT, DEADLIFT, BENCH]);
const LIGHT = session('light', 'Light day', 5, [CURL]);
const MAIN: ProgrammePhase = {
  name: 'main flight',
  span: { first: { from: 'launch', days: 14 }, last: null },
  deload: { everyWeeks: 5, fewerSets: 1, loadBy: 0.9 },
  sessions: [HEAVY, LIGHT],
  source: 'common practice',
};
const FIRST: ProgrammePhase = {
  ...MAIN,
  name: 'first flight weeks',
  span: { first: { from: 'launch', days: 0 }, last: { from: 'launch', days: 13 } },
  deload: null,
  sessions: [
    session('first', 'First day', 4, [itemFrom('A: Back squat 2–3 × 6–8 @ RPE 6, tempo 3-1-1', 'squat-first')]),
  ],
};
const CONTENT: ProgrammeContent = {
  programme: idOf('flight'),
  name: 'Flight',
  number: 1,
  follows: null,
  phases: [FIRST, MAIN],
};

const difference = (is: Partial<ProgrammeContent>, was: ProgrammeContent = CONTENT): readonly string[] =>
  programmeDifference(was, { ...was, ...is }, CATALOGUE).map(({ phase, says }) => (phase ? `${phase}: ${says}` : says));
const withMain = (change: Partial<ProgrammePhase>): readonly string[] =>
  difference({ phases: [FIRST, { ...MAIN, ...change }] });
const withHeavy = (change: Partial<ProgrammeSession>): readonly string[] =>
  withMain({ sessions: [{ ...HEAVY, ...change }, LIGHT] });
const withSquat = (squat: ProgrammeItem): readonly string[] => withHeavy({ items: [squat, DEADLIFT, BENCH] });

describe('an item', () => {
  test('whose line changes is told by both lines, the rest only where it changes', () => {
    expect(withSquat(itemFrom('Back squat 5 × 5 @ 80 %, rest 2:30', 'squat', SQUAT))).toEqual([
      'main flight: Heavy day: back squat 4 × 6 @ 78 % → 5 × 5 @ 80 %.',
    ]);
    expect(withSquat(itemFrom('Back squat 4 × 6 @ 78 %, rest 3:00', 'squat', SQUAT))).toEqual([
      'main flight: Heavy day: back squat 4 × 6 @ 78 %, rest 2:30 → 4 × 6 @ 78 %, rest 3:00.',
    ]);
  });

  test('is told where its sets become a range, where it gets a tempo and where it is done in turn', () => {
    expect(withSquat(itemFrom('A1: Back squat 3–4 × 6–8 @ 78 %, tempo 3-1-1, rest 2:30', 'squat', SQUAT))).toEqual([
      'main flight: Heavy day: back squat 4 × 6 @ 78 % → A1: 3–4 × 6–8 @ 78 %, tempo 3-1-1.',
    ]);
  });

  test('is told where it is new, gone, or moved', () => {
    const raise = itemFrom('Heel raise 3 × 12', 'raise');
    expect(withMain({ sessions: [HEAVY, { ...LIGHT, items: [CURL, raise] }] })).toEqual([
      'main flight: Light day: new, heel raise 3 × 12.',
    ]);
    expect(withHeavy({ items: [SQUAT, BENCH] })).toEqual(['main flight: Heavy day: without deadlift 3 × 6 @ 75 %.']);
    expect(withHeavy({ items: [BENCH, SQUAT, DEADLIFT] })).toEqual([
      'main flight: Heavy day: bench press moved from place 3 to place 1.',
    ]);
    expect(
      withMain({
        sessions: [
          { ...HEAVY, items: [SQUAT, DEADLIFT] },
          { ...LIGHT, items: [CURL, BENCH] },
        ],
      }),
    ).toEqual(['main flight: Light day: bench press 3 × 10 @ RPE 7, moved here from Heavy day, main flight.']);
  });

  test('is told in one sentence what stands beside its line', () => {
    expect(withSquat({ ...SQUAT, priority: 1, shouldFeel: [7, 8], condition: 'space-walk crew' })).toEqual([
      'main flight: Heavy day: back squat: for everyone → for those who walk in space; priority 3 → priority 1; should feel 6 to 8 → should feel 7 to 8.',
    ]);
  });
});

test('a session is told where it is new, gone, renamed, on another day or of another length', () => {
  expect(withMain({ sessions: [HEAVY] })).toEqual([
    'main flight: Light day: taken out, day 5 with biceps curl 3 × 12.',
  ]);
  expect(
    withMain({ sessions: [HEAVY, LIGHT, session('extra', 'Short day', 6, [itemFrom('Pull-down 3 × 10', 'pull')])] }),
  ).toEqual(['main flight: Short day: new, day 6, block of 90 min, with pull-down 3 × 10.']);
  expect(withHeavy({ title: 'Hard day', weekday: 2, blockMinutes: 75 })).toEqual([
    'main flight: Hard day: was called “Heavy day”.',
    'main flight: Hard day: moved from day 1 to day 2.',
    'main flight: Hard day: block of 90 → 75 min.',
  ]);
});

test('a phase is told where its days or its lighter weeks change, where it is new and where it is gone', () => {
  expect(
    withMain({ span: { first: { from: 'launch', days: 20 }, last: { from: 'landing', days: -15 } }, deload: null }),
  ).toEqual([
    'main flight: Span: flight day 15 to the day before landing → flight day 21 to 15 days before landing.',
    'main flight: Lighter weeks: every 5 weeks lighter: 1 fewer set, 10 % less load → no lighter weeks.',
  ]);
  expect(difference({ phases: [FIRST] })).toEqual(['main flight: Taken out, with its 2 sessions.']);
  const taper: ProgrammePhase = {
    ...FIRST,
    name: 'taper',
    span: { first: { from: 'launch', days: -7 }, last: { from: 'launch', days: -1 } },
    sessions: [],
  };
  expect(difference({ name: 'Flight, anew', phases: [taper, FIRST, MAIN] })).toEqual([
    'Called “Flight, anew”, was “Flight”.',
    'taper: New: L−7 to L−1, no lighter weeks.',
  ]);
});

test('the fewest things are said to have moved', () => {
  expect(movedAmong(['a', 'b', 'c', 'd'], ['d', 'a', 'b', 'c'])).toEqual(['d']);
  expect(movedAmong(['a', 'b', 'c'], ['a', 'x', 'c'])).toEqual([]);
});

/** Every number, text and mark of a content but the words that say of what kind a thing is, with a way to change it. */
const leavesOf = (
  value: unknown,
  path: readonly (string | number)[] = [],
): readonly (readonly (string | number)[])[] => {
  if (typeof value !== 'object' || value === null) return path.at(-1) === 'kind' ? [] : [path];
  return Object.entries(value).flatMap(([key, inner]) =>
    leavesOf(inner, [...path, Array.isArray(value) ? Number(key) : key]),
  );
};

const changedAt = (value: unknown, [key, ...path]: readonly (string | number)[]): unknown => {
  if (key === undefined) {
    if (typeof value === 'number') return value + 1;
    if (typeof value === 'boolean') return !value;
    return typeof value === 'string' ? `${value}1` : 1;
  }
  const copy = structuredClone(value) as Record<string | number, unknown>;
  copy[key] = changedAt(copy[key], path);
  return copy;
};

test('no change goes untold, and no change is told of the same content', () => {
  const { name, phases } = CONTENT;
  // No deload, no last day and no tempo are no numbers: what they become is told above.
  const leaves = leavesOf({ name, phases }).filter(
    (path) => !['deload', 'last', 'tempo'].includes(String(path.at(-1))),
  );
  expect(programmeDifference(CONTENT, structuredClone(CONTENT), CATALOGUE)).toEqual([]);
  fc.assert(
    fc.property(fc.constantFrom(...leaves), (path) => {
      const changed = changedAt({ name, phases }, path) as ProgrammeContent;
      expect([path, programmeDifference(CONTENT, changed, CATALOGUE)]).not.toEqual([path, []]);
    }),
    { numRuns: 400 },
  );
});
