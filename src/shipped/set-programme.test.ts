import { addDays, isoDay } from '#units/day.ts';
import type { Exercise } from '#domain/catalogue.ts';
import { isLiftItem, type LiftItem, type ProgrammePhase, type ProgrammeSession } from '#domain/programme.ts';
import { isDeloadWeek, placeInProgramme, takeUp } from '#domain/programme.ts';
import { expect, test } from 'vitest';
import { SHIPPED_EXERCISES } from './exercises/shipped-exercises.ts';
import { SET_PROGRAMME } from './set-programme.ts';
import { RESISTIVE_MACHINE } from './shipped-house.ts';

const sessions = SET_PROGRAMME.phases.flatMap((phase) => phase.sessions);
const items = sessions.flatMap((session) => session.items.filter(isLiftItem));
const phaseNamed = (name: ProgrammePhase['name']): ProgrammePhase => {
  const found = SET_PROGRAMME.phases.find((phase) => phase.name === name);
  if (!found) throw new Error(`no phase ${name}`);
  return found;
};
const itemNamed = (id: string): LiftItem => {
  const found = items.find((item) => item.id === id);
  if (!found) throw new Error(`no item ${id}`);
  return found;
};
const exerciseOf = (item: LiftItem): Exercise => {
  const found = SHIPPED_EXERCISES.find((exercise) => exercise.id === item.exercise);
  if (!found) throw new Error(`${item.id} names no shipped exercise`);
  return found;
};

test('every session and every item has an identity of its own', () => {
  const ids = [...sessions, ...items].map(({ id }) => id);
  expect(new Set(ids).size).toBe(ids.length);
});

test('the version is the digest of its content', () => {
  const { id, ...content } = SET_PROGRAMME;
  expect(takeUp(content).id).toBe(id);
});

test('every item names a shipped exercise, and neither upright rows nor good mornings', () => {
  const names = items.map((item) => exerciseOf(item).name.toLowerCase());
  expect(names).not.toContain('upright row');
  expect(names).not.toContain('good morning');
});

test.each(SET_PROGRAMME.phases.map((phase) => [phase.name, phase] as const))(
  'in %s each lift has one leading track, and a track one exercise',
  (_, { sessions: ofPhase }) => {
    const inPhase = ofPhase.flatMap((session) => session.items.filter(isLiftItem));
    for (const exercise of new Set(inPhase.map((item) => item.exercise))) {
      const leading = inPhase.filter((item) => item.exercise === exercise && item.leading);
      expect([exercise, new Set(leading.map((item) => item.track)).size]).toEqual([exercise, 1]);
    }
    for (const track of new Set(inPhase.map((item) => item.track))) {
      const exercises = new Set(inPhase.filter((item) => item.track === track).map((item) => item.exercise));
      expect([track, exercises.size]).toEqual([track, 1]);
    }
  },
);

test('tracks run through both phases, with the same fraction', () => {
  const [first, main] = [phaseNamed('first flight weeks'), phaseNamed('main flight')].map((phase) =>
    phase.sessions.flatMap((session) => session.items.filter(isLiftItem).map((item) => [item.track, startOf(item)])),
  );
  expect(first).toEqual(main);
});

test.each([
  ['squat-heavy-main', 4, 6, 0.78, 2],
  ['squat-medium-main', 4, 8, 0.74, 2],
  ['squat-light-main', 3, 12, 0.66, 3],
  ['deadlift-heavy-main', 4, 6, 0.78, 2],
  ['deadlift-medium-main', 4, 8, 0.74, 2],
  ['deadlift-light-main', 3, 12, 0.66, 3],
] as const)('%s is %i × %i at %d with %i in reserve', (id, sets, repetitions, of, reserve) => {
  const item = itemNamed(id);
  expect(item.sets.map((set) => set.repetitions)).toEqual(Array<number>(sets).fill(repetitions));
  expect(startOf(item)).toBe(of);
  expect(item.reserve).toBe(reserve);
});

test('upper body in main flight is 3 × 10', () => {
  const upper = phaseNamed('main flight')
    .sessions.flatMap((session) => session.items.filter(isLiftItem))
    .filter((item) => exerciseOf(item).bodyPart === 'upper body');
  expect(new Set(upper.map((item) => item.track))).toEqual(
    new Set(['bench press', 'bent-over row', 'shoulder press', 'pull-down']),
  );
  for (const item of upper) expect(item.sets.map((set) => set.repetitions)).toEqual([10, 10, 10]);
});

test('an item starts from a fraction only where its exercise has a capacity', () => {
  for (const item of items)
    expect([item.id, startOf(item) !== null]).toEqual([item.id, exerciseOf(item).capacity.kind !== 'none']);
});

/**
 * Wathan 1994 (from memory), retyped: the fraction of the one-repetition maximum that n repetitions to failure allow.
 * A ratio is taken one standard deviation (15 %) too high.
 */
const allowed = (item: LiftItem, reserve: number): number => {
  const wathan = (n: number): number => (48.8 + 53.8 * Math.exp(-0.075 * n)) / 100;
  const { capacity } = exerciseOf(item);
  const toFailure = wathan((item.sets[0]?.repetitions ?? 0) + reserve);
  if (capacity.kind === 'repetition maximum') return toFailure / wathan(capacity.of);
  return capacity.kind === 'ratio' ? toFailure * Math.exp(-0.15) : toFailure;
};

test('every fraction leaves the reserve it promises, and not more than half a repetition besides', () => {
  const started = items.filter((item) => item.reserve !== null && startOf(item) !== null);
  expect(started.length).toBeGreaterThan(0);
  // Half a repetition is the grain of the reserve as it is reported.
  const astray = started.filter((item) => {
    const [start, reserve] = [startOf(item) ?? 0, item.reserve ?? 0];
    return start > allowed(item, reserve) || start <= allowed(item, reserve + 0.5);
  });
  expect(astray.map(({ id }) => id)).toEqual([]);
});

test('first flight weeks: one set fewer, RPE 5 to 6, nothing from last', () => {
  for (const item of phaseNamed('first flight weeks').sessions.flatMap((session) => session.items.filter(isLiftItem))) {
    const later = itemNamed(item.id.replace(/-first$/, '-main'));
    expect(item.sets.length).toBe(later.sets.length - 1);
    expect(item.shouldFeel).toEqual([5, 6]);
    expect(['fraction', 'effort']).toContain(item.basis.kind);
  }
});

test('heavy days are flight days 4, 11, 18; medium 8, 15, 22; light 6, 13, 20', () => {
  const titleOn = (flightDay: number): string | undefined => {
    const at = onFlightDay(flightDay);
    return at?.phase.sessions.find((session) => session.weekday === at.weekday)?.title;
  };
  expect([4, 11, 18].map(titleOn)).toEqual(['Heavy day', 'Heavy day', 'Heavy day']);
  expect([8, 15, 22].map(titleOn)).toEqual(['Medium day', 'Medium day', 'Medium day']);
  expect([6, 13, 20].map(titleOn)).toEqual(['Light day', 'Light day', 'Light day']);
  expect([5, 7, 9, 10].map(titleOn)).toEqual([undefined, undefined, undefined, undefined]);
});

test('main flight begins on flight day 15 and every fifth week of it is easier', () => {
  expect(onFlightDay(14)?.phase.name).toBe('first flight weeks');
  expect(onFlightDay(15)).toMatchObject({ phase: { name: 'main flight' }, week: 1 });
  const main = phaseNamed('main flight');
  expect([1, 2, 3, 4, 5, 6, 10].map((week) => isDeloadWeek(main, week))).toEqual([
    false,
    false,
    false,
    false,
    true,
    false,
    true,
  ]);
  expect(main.deload).toMatchObject({ fewerSets: 1, loadBy: 0.9 });
});

test('in a session every item has its own priority, squat first', () => {
  for (const session of sessions) {
    const priorities = session.items.filter(isLiftItem).map((item) => item.priority);
    expect(new Set(priorities).size).toBe(priorities.length);
    expect(exerciseOf(session.items.find((item) => item.priority === 1) as LiftItem).pattern).toBe('squat');
  }
});

test.each(sessions.map((session) => [session.id, session] as const))(
  '%s fits its block and, in main flight, uses it',
  (id, session) => {
    const minutes = minutesOf(session);
    const atLeast = id.endsWith('-main') ? session.blockMinutes - 15 : 0;
    expect(minutes).toBeLessThanOrEqual(session.blockMinutes);
    expect(minutes).toBeGreaterThan(atLeast);
  },
);

/** The same holds for any day of launch: flight days are counted from it. */
const LAUNCH = isoDay('2027-03-03');
const onFlightDay = (flightDay: number) =>
  placeInProgramme(SET_PROGRAMME, { launch: LAUNCH, landing: null }, addDays(LAUNCH, flightDay - 1));

const startOf = (item: LiftItem): number | null => {
  const { basis } = item;
  if (basis.kind === 'fraction') return basis.of;
  return basis.kind === 'from last' && basis.start !== 'effort' ? basis.start : null;
};

/** By hand: overhead, then for each item the change of exercise, every set with its rest (60 s in a warm-up), load changes. */
const minutesOf = (session: ProgrammeSession): number => {
  const { setUp, stow, changeExercise, changeLoad } = RESISTIVE_MACHINE.minutes;
  const ofItem = (item: LiftItem): number => {
    const { secondsPerRepetition, perSide } = exerciseOf(item);
    const sets = [...item.warmUps.map((set) => ({ ...set, rest: 60 })), ...item.sets];
    const seconds = sets.reduce((sum, set) => sum + set.repetitions * secondsPerRepetition + set.rest, 0);
    return changeExercise + changeLoad * (item.warmUps.length + 1) + (seconds / 60) * (perSide ? 2 : 1);
  };
  return setUp + stow + session.items.filter(isLiftItem).reduce((sum, item) => sum + ofItem(item), 0);
};
