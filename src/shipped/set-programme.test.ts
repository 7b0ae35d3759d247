import { addDays, isoDay } from '#units/day.ts';
import { programmeVersion } from '#contract/facts/programme.schema.ts';
import type { Exercise } from '#domain/catalogue.ts';
import {
  PHASE_NAMES,
  daysOfPhase,
  isDeloadWeek,
  isLiftItem,
  placeInProgramme,
  takeUp,
  type LiftItem,
  type PhaseName,
  type ProgrammeItem,
  type ProgrammePhase,
} from '#domain/programme.ts';
import { programmeProblems } from '#domain/programme-check.ts';
import { expect, test } from 'vitest';
import { SHIPPED_EXERCISES } from './exercises/shipped-exercises.ts';
import { SET_PROGRAMME } from './set-programme.ts';

const { phases } = SET_PROGRAMME;
const sessions = phases.flatMap((phase) => phase.sessions);
const items = sessions.flatMap((session) => session.items);
const phaseNamed = (name: PhaseName): ProgrammePhase => {
  const found = phases.find((phase) => phase.name === name);
  if (!found) throw new Error(`no phase ${name}`);
  return found;
};
const itemsOf = (name: PhaseName): readonly ProgrammeItem[] =>
  phaseNamed(name).sessions.flatMap((session) => session.items);
const liftsOf = (name: PhaseName): readonly LiftItem[] => itemsOf(name).filter(isLiftItem);
const liftNamed = (id: string): LiftItem => {
  const found = items.find((item) => item.id === id);
  if (!found || !isLiftItem(found)) throw new Error(`no lift ${id}`);
  return found;
};
const exerciseOf = (item: ProgrammeItem): Exercise => {
  const found = SHIPPED_EXERCISES.find((exercise) => exercise.id === item.exercise);
  if (!found) throw new Error(`${item.id} names no shipped exercise`);
  return found;
};

const LAUNCH = isoDay('2027-03-03');
const LANDING = { earliest: addDays(LAUNCH, 180), latest: addDays(LAUNCH, 180) };
const DATES = { launch: LAUNCH, landing: LANDING };

test('one programme is the whole road: every phase, from two years before launch to six weeks after landing, no gap', () => {
  expect(phases.map(({ name }) => name)).toEqual([...PHASE_NAMES]);
  const days = phases.map((phase) => daysOfPhase(phase, DATES));
  expect(days[0]?.first).toBe(addDays(LAUNCH, -730));
  // The day before launch belongs to nobody.
  expect(days[3]?.last).toBe(addDays(LAUNCH, -2));
  expect(days[4]?.first).toBe(LAUNCH);
  expect(days[6]?.last).toBe(addDays(LANDING.latest, -1));
  expect(days[7]?.first).toBe(LANDING.latest);
  expect(days.at(-1)?.last).toBe(addDays(LANDING.latest, 44));
  for (const [place, next] of days.slice(1).entries())
    if (place !== 3) expect(next?.first).toBe((days[place]?.last ?? 0) + 1);
});

test('nothing stands against taking it up: no item on a machine that it cannot be done on, no day twice', () => {
  expect(programmeProblems(SET_PROGRAMME, new Map(SHIPPED_EXERCISES.map((each) => [each.id, each])))).toEqual([]);
});

test('it is one that the log takes, and the version is the digest of its content', () => {
  expect(programmeVersion.parse(SET_PROGRAMME)).toEqual(SET_PROGRAMME);
  const { id, ...content } = SET_PROGRAMME;
  expect(takeUp(content).id).toBe(id);
});

test('every line says what it rests on: a source, common practice or our own design', () => {
  const silent = items.filter(({ source }) => !/seen|from memory|common practice|our own|no source/.test(source));
  expect(silent.map(({ id }) => id)).toEqual([]);
  for (const { source } of phases) expect(source).toMatch(/seen|from memory|common practice/);
});

test('every item names a shipped exercise, and neither upright rows nor good mornings', () => {
  const names = items.map((item) => exerciseOf(item).name.toLowerCase());
  expect(names).not.toContain('upright row');
  expect(names).not.toContain('good morning');
});

test.each(phases.map((phase) => [phase.name, phase] as const))(
  'in %s each lift has one leading track, and a track one exercise on one kind of machine',
  (_, { sessions: ofPhase }) => {
    const inPhase = ofPhase.flatMap((session) => session.items);
    const lifts = inPhase.filter(isLiftItem);
    for (const exercise of new Set(lifts.map((item) => item.exercise))) {
      const leading = lifts.filter((item) => item.exercise === exercise && item.leading);
      expect([exercise, new Set(leading.map((item) => item.track)).size]).toEqual([exercise, 1]);
    }
    for (const track of new Set(inPhase.map((item) => item.track))) {
      const means = inPhase.filter((item) => item.track === track).map((item) => item.exercise + item.machineKind);
      expect([track, new Set(means).size]).toEqual([track, 1]);
    }
  },
);

test('tracks of lifts run through all phases of the flight, with the same fraction', () => {
  const [first, main, last] = (['first flight weeks', 'main flight', 'last flight weeks'] as const).map((name) =>
    liftsOf(name).map((item) => [item.track, startOf(item)]),
  );
  expect(first).toEqual(main);
  expect(last).toEqual(main);
});

test.each([
  ['squat-heavy-main', 4, 6, 0.78, 2],
  ['squat-medium-main', 4, 8, 0.74, 2],
  ['squat-light-main', 3, 12, 0.66, 3],
  ['deadlift-heavy-main', 4, 6, 0.78, 2],
  ['deadlift-medium-main', 4, 8, 0.74, 2],
  ['deadlift-light-main', 3, 12, 0.66, 3],
] as const)('%s is %i × %i at %d with %i in reserve', (id, sets, repetitions, of, reserve) => {
  const item = liftNamed(id);
  expect(item.sets.map((set) => set.repetitions)).toEqual(Array<number>(sets).fill(repetitions));
  expect(startOf(item)).toBe(of);
  expect(item.reserve).toBe(reserve);
});

test('upper body in main flight is 3 × 10', () => {
  const upper = liftsOf('main flight').filter((item) => exerciseOf(item).bodyPart === 'upper body');
  expect(new Set(upper.map((item) => item.track))).toEqual(
    new Set(['bench press', 'bent-over row', 'shoulder press', 'pull-down']),
  );
  for (const item of upper) expect(item.sets.map((set) => set.repetitions)).toEqual([10, 10, 10]);
});

const IN_FLIGHT = ['first flight weeks', 'main flight', 'last flight weeks'] as const;
const BEFORE_LAUNCH = ['general preparation', 'flight-specific preparation', 'taper', 'quarantine'] as const;

test('an item starts from a fraction only where its exercise has a capacity; in flight always where it has', () => {
  for (const item of items.filter(isLiftItem))
    if (startOf(item) !== null) expect([item.id, exerciseOf(item).capacity.kind]).not.toEqual([item.id, 'none']);
  for (const item of IN_FLIGHT.flatMap(liftsOf))
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

test('every fraction leaves the reserve that it promises; in flight not more than half a repetition besides', () => {
  const reserved = items.filter(isLiftItem).filter((item) => item.reserve !== null && startOf(item) !== null);
  expect(reserved.length).toBeGreaterThan(20);
  const over = reserved.filter((item) => (startOf(item) ?? 0) > allowed(item, item.reserve ?? 0));
  expect(over.map(({ id }) => id)).toEqual([]);
  const flight = reserved.filter((item) => item.machineKind === 'resistive machine');
  expect(flight.length).toBeGreaterThan(10);
  // Half a repetition is the grain of the reserve as it is reported.
  const wide = flight.filter((item) => (startOf(item) ?? 0) <= allowed(item, (item.reserve ?? 0) + 0.5));
  expect(wide.map(({ id }) => id)).toEqual([]);
});

test('first flight weeks: one set fewer, RPE 5 to 6, nothing from last; last flight weeks: one set fewer at the load', () => {
  for (const item of liftsOf('first flight weeks')) {
    const later = liftNamed(item.id.replace(/-first$/, '-main'));
    expect(item.sets.length).toBe(later.sets.length - 1);
    expect(item.shouldFeel).toEqual([5, 6]);
    expect(['fraction', 'effort']).toContain(item.basis.kind);
  }
  for (const item of liftsOf('last flight weeks')) {
    const before = liftNamed(item.id.replace(/-last$/, '-main'));
    expect(item.sets.length).toBe(before.sets.length - 1);
    expect([item.basis, item.reserve]).toEqual([before.basis, before.reserve]);
  }
});

test('heavy days are flight days 4, 11, 18; medium 8, 15, 22; light 6, 13, 20; every other day has another session', () => {
  const titleOn = (flightDay: number): string | undefined => {
    const at = onFlightDay(flightDay);
    return at?.phase.sessions.find((session) => session.weekday === at.weekday)?.title;
  };
  expect([4, 11, 18].map(titleOn)).toEqual(['Heavy day', 'Heavy day', 'Heavy day']);
  expect([8, 15, 22].map(titleOn)).toEqual(['Medium day', 'Medium day', 'Medium day']);
  expect([6, 13, 20].map(titleOn)).toEqual(['Light day', 'Light day', 'Light day']);
  for (let day = 1; day <= 180; day += 1) expect([day, typeof titleOn(day)]).toEqual([day, 'string']);
});

test('main flight begins on flight day 15, every fifth week of it is easier, and it gives way to the last weeks', () => {
  expect(onFlightDay(14)?.phase.name).toBe('first flight weeks');
  expect(onFlightDay(15)).toMatchObject({ phase: { name: 'main flight' }, week: 1 });
  expect([166, 167].map((day) => onFlightDay(day)?.phase.name)).toEqual(['main flight', 'last flight weeks']);
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

test('a flight whose landing is not known goes on and on', () => {
  const open = daysOfPhase(phaseNamed('main flight'), { launch: LAUNCH, landing: null });
  expect(open).toEqual({ first: addDays(LAUNCH, 14), last: null });
});

test('on a lifting day of the flight every lift has its own priority, squat first', () => {
  for (const name of IN_FLIGHT)
    for (const session of phaseNamed(name).sessions) {
      const lifts = session.items.filter(isLiftItem);
      const priorities = lifts.map((item) => item.priority);
      expect(new Set(priorities).size).toBe(priorities.length);
      const [first] = lifts.toSorted((one, other) => one.priority - other.priority);
      if (first) expect(exerciseOf(first).pattern).toBe('squat');
    }
});

test('common practice: squat and deadlift are main lifts of every phase before launch but the last week', () => {
  for (const name of BEFORE_LAUNCH.slice(0, -1)) {
    const first = phaseNamed(name).sessions.flatMap(({ items: each }) => {
      const lifts = each.filter(isLiftItem).filter(({ machineKind }) => machineKind === 'free bar');
      return lifts.filter(({ priority }) => priority === 1).map((item) => exerciseOf(item).name);
    });
    expect(first).toContain('Back squat');
    expect(itemsOf(name).map((item) => exerciseOf(item).name)).toContain('Deadlift');
  }
});

test('before launch: three days of strength and two of endurance a week, squats under a free bar', () => {
  for (const name of ['general preparation', 'flight-specific preparation'] as const) {
    const days = phaseNamed(name).sessions;
    const ofBar = days.filter(({ items: each }) => each.some(({ machineKind }) => machineKind === 'free bar'));
    const ofBouts = days.filter(({ items: each }) => each.some(({ kind }) => kind === 'bouts'));
    expect([days.length, ofBar.length, ofBouts.length]).toEqual([5, 3, 2]);
  }
});

test('the taper has half of the sets or fewer at the load of the heavy days; the last week is far under it', () => {
  const squat = (name: PhaseName) =>
    liftsOf(name).filter((item) => exerciseOf(item).name === 'Back squat' && item.machineKind === 'free bar');
  const setsOf = (list: readonly LiftItem[]): number => list.reduce((sum, item) => sum + item.sets.length, 0);
  expect(setsOf(squat('taper'))).toBeLessThanOrEqual(setsOf(squat('flight-specific preparation')) / 2);
  expect(squat('taper').map(startOf)).toEqual([0.78]);
  for (const item of squat('quarantine')) expect(startOf(item)).toBeLessThan(0.6);
});

test('the ground unit is met by effort, RPE 6 at most, behind the same gates as a bar', () => {
  const met = liftsOf('flight-specific preparation').filter(({ machineKind }) => machineKind === 'resistive machine');
  expect(met.map((item) => exerciseOf(item).name)).toEqual(['Back squat', 'Deadlift', 'Heel raise']);
  for (const { basis, shouldFeel } of met) {
    expect(basis).toMatchObject({ kind: 'from last', start: 'effort' });
    expect(shouldFeel[1]).toBeLessThanOrEqual(6);
  }
});

test('who has never squatted has something to squat and to hinge with every week before launch, and no bar in it', () => {
  for (const name of ['general preparation', 'flight-specific preparation'] as const) {
    const first = itemsOf(name).filter(({ condition }) => condition === 'before the squat gates');
    const patterns = new Set(first.map((item) => exerciseOf(item).pattern));
    expect(patterns).toEqual(new Set(['squat', 'hip hinge']));
    for (const { machineKind } of first) expect(['dumbbells', 'body weight', 'no gear']).toContain(machineKind);
  }
});

test('hands of who works outside: of grip and critical force, two to three times a week, in training and in flight', () => {
  for (const name of ['flight-specific preparation', 'main flight', 'last flight weeks'] as const) {
    const hands = itemsOf(name).filter(({ condition }) => condition === 'space-walk crew');
    for (const item of hands) expect(['grip']).toContain(exerciseOf(item).pattern);
    const drills = hands.flatMap((item) => (item.kind === 'drill' ? [item] : []));
    expect(drills.length).toBe(hands.length);
    expect(new Set(drills.flatMap(({ target }) => target?.kind ?? []))).toEqual(
      new Set(['of greatest grip', 'of critical force']),
    );
    const days = phaseNamed(name).sessions.filter((session) =>
      session.items.some(({ condition }) => condition === 'space-walk crew'),
    );
    expect(days.length).toBeGreaterThanOrEqual(2);
    const intervals = drills.find(({ track }) => track === 'critical-force intervals');
    expect(intervals?.target).toEqual({ kind: 'of critical force', of: 1 });
    expect(intervals?.sets[0]?.work).toMatchObject({ kind: 'pulses', on: 7, off: 3 });
  }
});

test('endurance in flight: three days of intervals, three steady, on treadmill and cycle, and one easy day', () => {
  const bouts = phaseNamed('main flight').sessions.map((session) =>
    session.items.flatMap((item) => (item.kind === 'bouts' ? [item] : [])),
  );
  const steady = bouts.filter((each) => each.some(({ bouts: all }) => all.some(({ seconds }) => seconds === 1800)));
  const intervals = bouts.filter((each) => each.some(({ bouts: all }) => all.length > 1));
  expect([steady.length, intervals.length, bouts.filter((each) => each.length === 0).length]).toEqual([3, 3, 1]);
  expect(new Set(bouts.flat().map(({ machineKind }) => machineKind))).toEqual(new Set(['treadmill', 'cycle']));
});

test('nothing is all-out but on the cycle, and only in main and last flight weeks', () => {
  for (const { name, sessions: ofPhase } of phases)
    for (const item of ofPhase.flatMap((session) => session.items))
      if (item.kind === 'bouts' && item.bouts.some(({ intensity }) => intensity?.kind === 'all-out')) {
        expect(item.machineKind).toBe('cycle');
        expect(['main flight', 'last flight weeks']).toContain(name);
      }
});

test('shoulders are cared for two or three times a week before launch and in flight', () => {
  for (const name of ['general preparation', 'flight-specific preparation', ...IN_FLIGHT] as const) {
    const days = phaseNamed(name).sessions.filter((session) =>
      session.items.some((item) => exerciseOf(item).pattern === 'shoulder care'),
    );
    expect([name, days.length >= 2 && days.length <= 4]).toEqual([name, true]);
  }
});

test('jumps and balance are asked for on the ground alone', () => {
  for (const name of IN_FLIGHT)
    for (const item of itemsOf(name)) expect(['jump', 'balance']).not.toContain(exerciseOf(item).pattern);
  expect(itemsOf('general preparation').map((item) => exerciseOf(item).pattern)).toEqual(
    expect.arrayContaining(['jump', 'balance', 'mobility']),
  );
});

/** The same holds for any day of launch: flight days are counted from it. */
const onFlightDay = (flightDay: number) => placeInProgramme(SET_PROGRAMME, DATES, addDays(LAUNCH, flightDay - 1));

const startOf = (item: LiftItem): number | null => {
  const { basis } = item;
  if (basis.kind === 'fraction') return basis.of;
  return basis.kind === 'from last' && basis.start !== 'effort' ? basis.start : null;
};
