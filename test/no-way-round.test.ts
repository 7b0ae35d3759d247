import { expect, test } from 'vitest';
import { addDays, type Day } from '#units/day.ts';
import { liftsOf, raisesOf, totalMinutes, workIncrements, type Card, type CardLift } from '#domain/card.ts';
import type { Machine } from '#domain/catalogue.ts';
import type { Change, Decision, Hurting } from '#domain/decision.ts';
import { idOf } from '#domain/identity.ts';
import { takeUp, type Deload, type LiftItem, type ProgrammeItem, type ProgrammeVersion } from '#domain/programme.ts';
import type { RestrictionLimit, RestrictionScope } from '#domain/restriction.ts';
import { backSquat, deadlift } from '#shipped/exercises/lower-body.ts';
import { SET_PROGRAMME } from '#shipped/set-programme.ts';
import { FREE_BAR, RESISTIVE_MACHINE } from '#shipped/shipped-house.ts';
import { LAUNCH, onFlightDay, PERSON, Rehearsal } from './rehearsal/rehearsal.ts';

/* Limits hold whichever way a session came about: written, made anew, stood in for, by another programme. */

const MONDAY = addDays(LAUNCH, -84);
const WEEK = 7;

const lift = (over: Partial<LiftItem> = {}): LiftItem => ({
  kind: 'lift',
  id: idOf('line'),
  track: idOf('track of the line'),
  leading: true,
  exercise: backSquat.id,
  machineKind: 'free bar',
  condition: 'everyone',
  priority: 1,
  basis: { kind: 'from last', start: 0.7, rule: { add: { kg: '2.5', lb: '5' } } },
  warmUps: [],
  sets: Array.from({ length: 4 }, () => ({ repetitions: 6, rest: 120 })),
  tempo: null,
  superset: null,
  reserve: 2,
  shouldFeel: [7, 8],
  source: 'invented',
  ...over,
});

const SPAN = { first: { from: 'launch', days: -90 }, last: { from: 'launch', days: -1 } } as const;

const mondays = (items: readonly ProgrammeItem[], deload: Deload | null = null): ProgrammeVersion =>
  takeUp({
    programme: idOf('mondays'),
    name: 'Mondays',
    number: 1,
    follows: null,
    phases: [
      {
        name: 'flight-specific preparation',
        span: SPAN,
        deload,
        source: 'invented',
        sessions: [{ id: idOf('monday'), title: 'Monday', weekday: 1, blockMinutes: 120, items }],
      },
    ],
  });

const decide = (rehearsal: Rehearsal, decision: Decision): void => {
  rehearsal.add({ kind: 'decided', answers: null, basis: rehearsal.end, decision });
};

const follow = (rehearsal: Rehearsal, version: ProgrammeVersion, days = -90): void => {
  rehearsal.add({ kind: 'catalogued', entry: { kind: 'programme', version } });
  rehearsal.follow(version.id, days);
};

const following = (version: ProgrammeVersion, body: { readonly squat?: string } = { squat: '120' }): Rehearsal => {
  const rehearsal = new Rehearsal({ sex: 'male', mass: '80' });
  if (body.squat) rehearsal.test('back-squat', body.squat, addDays(MONDAY, -10));
  follow(rehearsal, version);
  return rehearsal;
};

const adjust = (rehearsal: Rehearsal, change: Change, track = 'track of the line', from: Day = MONDAY): void =>
  decide(rehearsal, { kind: 'adjust', person: PERSON, track: idOf(track), change, from, until: from, reason: 'meant' });

const reMake = (
  rehearsal: Rehearsal,
  {
    here,
    minutes = 60,
    hurts = [],
    day = MONDAY,
    session = 'monday',
  }: {
    readonly here: Extract<Decision, { readonly kind: 're-make' }>['here'];
    readonly minutes?: number;
    readonly hurts?: readonly Hurting[];
    readonly day?: Day;
    readonly session?: string;
  },
): void =>
  decide(rehearsal, {
    kind: 're-make',
    person: PERSON,
    day,
    session: idOf(session),
    here,
    minutes,
    hurts,
    reason: 'told by telephone',
  });

const cardOn = (rehearsal: Rehearsal, on: Day, today: Day = on): Card => {
  const found = rehearsal.road(today, on - today + 1).cards.find(({ day, state }) => day === on && state !== 'issued');
  if (found?.state !== 'planned') throw new Error('No session is planned on that day.');
  return found.card;
};

const restrict = (rehearsal: Rehearsal, scope: RestrictionScope, limit: RestrictionLimit) =>
  rehearsal.restrict({
    kind: 'restricted',
    person: PERSON,
    medicalReason: null,
    restriction: { scope, limit, toldBy: 'Dr. A. Lowe', toldOn: MONDAY, confirmed: true, from: MONDAY, reviewOn: null },
  });

const machine = (over: Partial<Machine> & { readonly id: Machine['id'] }) => ({
  kind: 'catalogued' as const,
  entry: { kind: 'machine' as const, machine: { ...FREE_BAR, ...over } },
});

const GROUND_UNIT = machine({
  ...RESISTIVE_MACHINE,
  id: idOf('ground-unit'),
  name: 'Ground unit',
  site: idOf('ground-gym'),
  gravity: '1 g',
  groundUnitOf: RESISTIVE_MACHINE.id,
});

// squat gates

test('a line by effort sends nobody under a bar before the gates', () => {
  const rehearsal = following(mondays([lift()]), {});
  adjust(rehearsal, { kind: 'as written', line: '4 × 6 @ RPE 7' });
  expect(cardOn(rehearsal, MONDAY).items).toEqual([]);
});

test('a programme that loads by effort sends nobody under a bar or a ground unit before the gates', () => {
  const effort = { basis: { kind: 'effort', rpe: [5, 6] } } as const;
  const rehearsal = following(
    mondays([
      lift(effort),
      lift({ ...effort, id: idOf('hinge'), exercise: deadlift.id }),
      lift({ ...effort, id: idOf('on the unit'), machineKind: 'resistive machine' }),
    ]),
    {},
  );
  rehearsal.add(GROUND_UNIT);
  expect(cardOn(rehearsal, MONDAY).items).toEqual([]);
});

test('sets that nobody loads send nobody under a bar before the gates', () => {
  const { id, track, exercise, machineKind, condition, priority, shouldFeel, source } = lift();
  const drill: ProgrammeItem = {
    kind: 'drill',
    id,
    track,
    exercise,
    machineKind,
    condition,
    priority,
    shouldFeel,
    source,
    sets: [{ work: { kind: 'repetitions', count: 6 }, rest: 60 }],
    target: null,
  };
  expect(cardOn(following(mondays([drill]), {}), MONDAY).items).toEqual([]);
});

test('a session made anew sends nobody to a ground unit that nobody entered before the gates', () => {
  const rehearsal = following(mondays([lift()]), {});
  reMake(rehearsal, { here: ['resistive machine'] });
  expect(cardOn(rehearsal, MONDAY).items).toEqual([]);
});

// raises

const TWO_GYMS = ['one', 'other'] as const;

test('a raise that was signed for one bar moves no load on another', () => {
  const rehearsal = following(mondays([lift()]));
  for (const name of TWO_GYMS) {
    rehearsal.add({
      kind: 'catalogued',
      entry: { kind: 'site', site: { id: idOf(name), name, place: 'ground' } },
    });
    rehearsal.add(machine({ id: idOf(`bar of ${name}`), name: `Bar of ${name}`, site: idOf(name) }));
  }
  const stay = (name: string, from: Day, until: Day) =>
    rehearsal.add({ kind: 'stays', person: PERSON, site: idOf(name), from, until });
  stay('other', MONDAY, addDays(MONDAY, WEEK - 1));
  stay('one', addDays(MONDAY, WEEK), addDays(MONDAY, 3 * WEEK - 1));
  stay('other', addDays(MONDAY, 3 * WEEK), addDays(MONDAY, 4 * WEEK));
  const train = (day: Day, kilograms: number): void => {
    const [document] = rehearsal.issue(day, [day], { 'track of the line': 'rehearsed' });
    if (!document) throw new Error('Nothing was issued.');
    rehearsal.train(document, {
      rpe: 6,
      set: (result) => ({ ...result, load: { text: String(kilograms), unit: 'kg' } }),
    });
  };
  train(MONDAY, 50);
  train(addDays(MONDAY, WEEK), 85);
  const [proposal] = rehearsal.road(addDays(MONDAY, 2 * WEEK), 1).proposals.filter(({ rule }) => rule === 'step rule');
  if (!proposal?.change) throw new Error('Nothing was earned.');
  const last = addDays(MONDAY, 3 * WEEK);
  const other = () => liftsOf(cardOn(rehearsal, last))[0];
  decide(rehearsal, proposal.change);
  expect(other()?.machineName).toBe('Bar of other');
  expect(other() && workIncrements(other() as CardLift)).toBe(20);
});

test('a raise that is signed on the Desk lifts each side from its own load', () => {
  const rehearsal = following(
    mondays([
      lift({
        exercise: idOf('split-squat'),
        basis: { kind: 'from last', start: 'effort', rule: { add: { kg: '2.5', lb: '5' } } },
      }),
    ]),
  );
  const [document] = rehearsal.issue(MONDAY, [MONDAY], { 'track of the line': 'rehearsed' });
  if (!document) throw new Error('Nothing was issued.');
  rehearsal.train(document, {
    rpe: 6,
    set: (result) => ({ ...result, load: { text: result.side === 'left' ? '40' : '30', unit: 'kg' } }),
  });
  const next = addDays(MONDAY, WEEK);
  const [proposal] = rehearsal.road(next, 1).proposals.filter(({ rule }) => rule === 'step rule');
  if (!proposal?.change) throw new Error('Nothing was earned.');
  const before = loadsBySide(liftsOf(cardOn(rehearsal, next))[0]);
  decide(rehearsal, proposal.change);
  expect(loadsBySide(liftsOf(cardOn(rehearsal, next))[0])).toEqual(before);
});

const loadsBySide = (item: CardLift | undefined): readonly string[] => [
  ...new Set(item?.sets.map(({ side, load }) => `${side} ${load.increments}`)),
];

const SECOND_WEEKS: Deload = { everyWeeks: 2, fewerSets: 1, loadBy: 0.9 };

test('a new test raises nothing in an easier week, unseen', () => {
  const rehearsal = following(mondays([lift({ basis: { kind: 'fraction', of: 0.7 } })], SECOND_WEEKS));
  const loads = [0, 1, 2, 3].map((week) => {
    const day = addDays(MONDAY, week * WEEK);
    if (week === 1) rehearsal.test('back-squat', '180', addDays(day, -1));
    if (week === 2) rehearsal.test('back-squat', '260', addDays(day, -1));
    const card = cardOn(rehearsal, day);
    const [document] = rehearsal.issue(day, [day], { 'track of the line': 'rehearsed' });
    const [item] = liftsOf(card);
    if (document) rehearsal.train(document, { rpe: 6 });
    return { deload: card.deload, load: item ? workIncrements(item) : null, raised: raisesOf(card).length > 0 };
  });
  for (const [place, { load, raised }] of loads.entries()) {
    const before = Math.max(0, ...loads.slice(0, place).map((each) => each.load ?? 0));
    if ((load ?? 0) > before) expect(raised).toBe(true);
  }
  expect(loads.some(({ deload }) => deload)).toBe(true);
});

test('sessions of an easier week earn no step of the ramps', () => {
  const flight = (deload: Deload | null): number => {
    const { phases, ...programme } = mondays(
      [lift({ machineKind: 'resistive machine', basis: { kind: 'fraction', of: 0.7 } })],
      deload,
    );
    const version = takeUp({
      ...programme,
      phases: phases.map((phase) => ({
        ...phase,
        name: 'first flight weeks',
        span: { first: { from: 'launch', days: 0 }, last: { from: 'launch', days: 60 } },
      })),
    });
    const rehearsal = new Rehearsal({ sex: 'male', mass: '80', squat: '120', heaviestBar: '110' });
    follow(rehearsal, version, 0);
    rehearsal.live(8, 15, { rpe: 6 });
    return rehearsal.road(onFlightDay(16)).lifts.find(({ exercise }) => exercise === backSquat.id)?.earned ?? 0;
  };
  expect([flight(null), flight({ everyWeeks: 1, fewerSets: 1, loadBy: 0.9 })]).toEqual([2, 0]);
});

test('the last load of one exercise is not that of another on the same track', () => {
  const rehearsal = following(mondays([lift()]));
  const [document] = rehearsal.issue(MONDAY, [MONDAY], {});
  if (document) rehearsal.train(document, { rpe: 6 });
  follow(
    rehearsal,
    mondays([
      lift({
        exercise: idOf('bench-press'),
        basis: { kind: 'from last', start: 'effort', rule: { add: { kg: '1', lb: '2.5' } } },
      }),
    ]),
    -83,
  );
  const [item] = liftsOf(cardOn(rehearsal, addDays(MONDAY, WEEK)));
  expect(item).toMatchObject({ exercise: 'bench-press', basis: 'effort', last: null });
});

// time

test.each([1, 4, 8])('%i minutes are not exceeded by a session made anew', (minutes) => {
  const rehearsal = following(mondays([lift()]));
  reMake(rehearsal, { here: ['free bar'], minutes });
  expect(totalMinutes(cardOn(rehearsal, MONDAY))).toBeLessThanOrEqual(minutes);
});

// space walks

const flightWith = (walkOn: number): Rehearsal => {
  const rehearsal = new Rehearsal({ sex: 'male', mass: '80', squat: '120', deadlift: '150', heaviestBar: '110' });
  rehearsal.add({ kind: 'space walk', person: PERSON, day: onFlightDay(walkOn), text: '' });
  return rehearsal;
};
const HEAVY = SET_PROGRAMME.phases
  .find(({ name }) => name === 'first flight weeks')
  ?.sessions.find(({ items }) => items.some(({ exercise }) => exercise === 'back-squat'));

test('on the day of a space walk nothing is made anew', () => {
  const rehearsal = flightWith(10);
  const day = onFlightDay(10);
  reMake(rehearsal, { here: ['resistive machine'], day, session: HEAVY?.id ?? '' });
  expect(rehearsal.road(day, 1).cards).toEqual([]);
});

test('a session made anew the day before a space walk is a light one, whatever the programme has there', () => {
  const free = 14;
  const rehearsal = flightWith(free + 1);
  rehearsal.add({
    kind: 'set aside',
    person: PERSON,
    from: onFlightDay(free),
    until: onFlightDay(free),
    what: 'rest',
    minutes: 0,
    text: '',
  });
  const day = onFlightDay(free);
  reMake(rehearsal, { here: ['resistive machine'], minutes: 120, day, session: HEAVY?.id ?? '' });
  expect(cardOn(rehearsal, day).deload).toBe(true);
});

// restrictions

test('a limit on an exercise is not gone round by what stands in for it', () => {
  const rehearsal = following(mondays([lift()]));
  reMake(rehearsal, { here: ['dumbbells'] });
  expect(liftsOf(cardOn(rehearsal, MONDAY))).toHaveLength(1);
  restrict(
    rehearsal,
    { kind: 'exercise', exercise: backSquat.id },
    { kind: 'load at most', load: { text: '30', unit: 'kg' } },
  );
  expect(cardOn(rehearsal, MONDAY).items).toEqual([]);
});

test('a limit on load is said where the load is chosen by whoever is there, and recalls what does not say it', () => {
  const rehearsal = following(
    mondays([lift({ exercise: idOf('biceps-curl'), basis: { kind: 'effort', rpe: [5, 6] } })]),
  );
  reMake(rehearsal, { here: ['cable column'] });
  const [document] = rehearsal.issue(MONDAY, [MONDAY], {});
  expect(document?.card.items).toMatchObject([{ kind: 'drill', means: 'cable column' }]);
  const recalls = restrict(
    rehearsal,
    { kind: 'site', site: 'elbow', side: null },
    { kind: 'load at most', load: { text: '8', unit: 'kg' } },
  );
  expect(recalls).toHaveLength(1);
  const [item] = cardOn(rehearsal, MONDAY).items;
  expect(item?.says).toContain('limited by the physician: at most 8 kg');
});

test('a signed hold holds what stands in, too', () => {
  const rehearsal = following(mondays([lift()]));
  reMake(rehearsal, { here: ['dumbbells'] });
  adjust(rehearsal, { kind: 'hold' });
  const [first] = rehearsal.issue(MONDAY, [MONDAY], {});
  if (first) rehearsal.train(first, { rpe: 5 });
  const next = addDays(MONDAY, WEEK);
  reMake(rehearsal, { here: ['dumbbells'], day: next });
  const rule = (): unknown => liftsOf(cardOn(rehearsal, next))[0]?.rule;
  expect(rule()).not.toBeNull();
  adjust(rehearsal, { kind: 'hold' }, 'track of the line', next);
  expect(rule()).toBeNull();
});

test('a card whose signed rule allows more effort than the physician does is taken back', () => {
  const rehearsal = following(mondays([lift({ shouldFeel: [5, 6] })]));
  const [first] = rehearsal.issue(MONDAY, [MONDAY], {});
  if (first) rehearsal.train(first, { rpe: 6 });
  const next = addDays(MONDAY, WEEK);
  const [second] = rehearsal.issue(next, [next], {});
  expect(liftsOf((second as NonNullable<typeof second>).card)[0]?.rule?.rpeAtMost).toBe(8);
  expect(restrict(rehearsal, { kind: 'all' }, { kind: 'RPE at most', rpe: 6 })).toHaveLength(1);
});
