import { expect, test } from 'vitest';
import { entered } from '#units/entered.ts';
import { liftsOf, workIncrements } from '#domain/card.ts';
import { idOf } from '#domain/identity.ts';
import { recallsUnder } from '#planning/recall.ts';
import { atTheTop, heavySquat, livedAsPlanned, person, TOP } from './rehearsal/heavy-squat.ts';
import { LAUNCH, onFlightDay, PERSON, Rehearsal } from './rehearsal/rehearsal.ts';

test('a card issued under a restriction is not against it', () => {
  const rehearsal = new Rehearsal(person);
  const limits = [
    { kind: 'no straining' as const },
    { kind: 'RPE at most' as const, rpe: 6 },
    { kind: 'load at most' as const, load: entered('150', 'lb') },
  ];
  const told = limits.map((limit) =>
    rehearsal.add({
      kind: 'restricted',
      person: PERSON,
      medicalReason: null,
      restriction: {
        scope: { kind: 'all' },
        limit,
        toldBy: 'the physician',
        toldOn: LAUNCH,
        confirmed: true,
        from: LAUNCH,
        reviewOn: null,
      },
    }),
  );
  rehearsal.issue(LAUNCH, [onFlightDay(4), onFlightDay(6)]);
  expect(told.flatMap((fact) => recallsUnder(rehearsal.known(), fact.id, LAUNCH))).toEqual([]);
});

test('two sides of a lift climb together', () => {
  const rehearsal = livedAsPlanned(80);
  const sides = rehearsal
    .road(onFlightDay(81), 14)
    .cards.flatMap((card) =>
      card.state === 'planned' ? liftsOf(card.card).filter((item) => item.track === 'single-leg squat') : [],
    );
  const loads = sides.map((item) => item.sets.filter((set) => set.kind === 'work').map((set) => set.load.increments));
  expect(loads.length).toBeGreaterThan(0);
  for (const each of loads) expect(new Set(each).size).toBe(1);
});

test('a raise that was signed and called off is signed again: the load was never done', () => {
  const rehearsal = atTheTop();
  rehearsal.live(TOP, TOP + 6);
  const day = onFlightDay(TOP + 7);
  const [document] = rehearsal.issue(day, [day]);
  if (!document) throw new Error('Nothing was issued.');
  rehearsal.add({ kind: 'called off', person: PERSON, day, card: document.id, cause: 'operations', text: 'docking' });
  rehearsal.live(TOP + 8, TOP + 20);
  const next = heavySquat(rehearsal, TOP + 21);
  expect(workIncrements(next)).toBe(300);
  expect(next.raise).toMatchObject({ from: 295, to: 300 });
});

test('discomfort holds the load on the ramps too, when a limit falls away', () => {
  const rehearsal = new Rehearsal({ ...person, heaviestBar: '80' });
  rehearsal.live(1, 10);
  rehearsal.live(11, 14, { hurts: [{ site: 'shoulder', score: 4 }] });
  // The shoulder rule of the first fortnight is over on flight day 15; the medium squat would go up with it.
  const planned = rehearsal.road(onFlightDay(15), 1).cards.find((card) => card.state === 'planned');
  const squat =
    planned?.state === 'planned' ? liftsOf(planned.card).find((item) => item.track === 'squat medium') : undefined;
  expect(squat && workIncrements(squat)).toBe(175);
  expect(squat?.limits.find((limit) => limit.kind === 'signed load')?.binds).toBe(true);
});

test('no track of a lift overtakes its leading one: a raise is taken once by each', () => {
  const rehearsal = livedAsPlanned(120);
  const road = rehearsal.road(onFlightDay(121), 14);
  const inUse = (track: string): number => road.tracks.find((each) => each.track === track)?.last?.increments ?? NaN;
  expect(inUse('squat medium')).toBeLessThan(inUse('squat heavy'));
  expect(inUse('squat light')).toBeLessThan(inUse('squat medium'));
});

test('a hold holds, also where the leading track has gone up', () => {
  const rehearsal = livedAsPlanned(50);
  const before = medium(rehearsal, 57, 50);
  rehearsal.add({
    kind: 'decided',
    answers: null,
    basis: rehearsal.end,
    decision: {
      kind: 'adjust',
      person: PERSON,
      track: idOf('squat medium'),
      change: { kind: 'hold' },
      from: onFlightDay(51),
      until: null,
      reason: 'technique first',
    },
  });
  rehearsal.live(51, 56);
  expect(medium(rehearsal, 57, 57)).toBe(before);
});

/** Load in use of the medium squat before a day, or as planned on it. */
const medium = (rehearsal: Rehearsal, flightDay: number, today: number): number => {
  const road = rehearsal.road(onFlightDay(today), flightDay - today + 1);
  if (today !== flightDay) return road.tracks.find((track) => track.track === 'squat medium')?.last?.increments ?? NaN;
  const card = road.cards.find((each) => each.state === 'planned' && each.day === onFlightDay(flightDay));
  const item = card?.state === 'planned' ? liftsOf(card.card).find((each) => each.track === 'squat medium') : undefined;
  return item ? (workIncrements(item) ?? NaN) : NaN;
};

test('a card from before a back-off neither undoes nor repeats it', () => {
  const rehearsal = livedAsPlanned(52);
  const today = onFlightDay(53);
  const [first, second] = rehearsal.issue(today, [onFlightDay(53), onFlightDay(60)]);
  if (!first || !second) throw new Error('Two heavy days were not issued.');
  rehearsal.train(first);
  rehearsal.add({
    kind: 'decided',
    answers: null,
    basis: rehearsal.end,
    decision: {
      kind: 'adjust',
      person: PERSON,
      track: idOf('squat heavy'),
      change: { kind: 'back off', by: 0.1 },
      from: onFlightDay(54),
      until: null,
      reason: 'back tight',
    },
  });
  rehearsal.live(54, 59);
  rehearsal.train(second);
  rehearsal.live(61, 66);
  const item = heavySquat(rehearsal, 67);
  // 305 less a tenth is 274.5, down to 270; one clean session may have earned one step.
  expect(workIncrements(item)).toBeLessThanOrEqual(275);
});

test('discomfort of a session that was called off holds the lift all the same', () => {
  const rehearsal = livedAsPlanned(14);
  const day = onFlightDay(15);
  const [document] = rehearsal.issue(day, [day]);
  if (!document) throw new Error('Nothing was issued.');
  rehearsal.add({
    kind: 'hurt',
    person: PERSON,
    day,
    card: document.id,
    item: null,
    site: 'knee',
    side: null,
    score: 8,
    when: 'during',
  });
  rehearsal.add({ kind: 'called off', person: PERSON, day, card: document.id, cause: 'medical', text: 'knee' });
  const item = heavySquat(rehearsal, 18);
  expect(item.raise).toBeNull();
});

test('a limit of effort binds what is started at, leaves no rule, and a test without a load blanks nothing', () => {
  const rehearsal = atTheTop();
  rehearsal.live(TOP, TOP + 6);
  rehearsal.restrict({
    kind: 'restricted',
    person: PERSON,
    medicalReason: null,
    restriction: {
      scope: { kind: 'all' },
      limit: { kind: 'RPE at most', rpe: 5 },
      toldBy: 'the physician',
      toldOn: onFlightDay(TOP + 7),
      confirmed: true,
      from: onFlightDay(TOP + 7),
      reviewOn: null,
    },
  });
  rehearsal.test('bench-press', '0');
  const items = rehearsal
    .road(onFlightDay(TOP + 7))
    .cards.flatMap((card) => (card.state === 'planned' ? liftsOf(card.card) : []));
  expect(items.length).toBeGreaterThan(0);
  for (const item of items) {
    expect(item.shouldFeel[1]).toBeLessThanOrEqual(5);
    expect(item.rule).toBeNull();
    expect(item.sets.every((set) => set.load.kind === 'set' || set.load.rpe[1] <= 5)).toBe(true);
  }
});

test('a limit is held by the calibration of its day', () => {
  const rehearsal = atTheTop();
  rehearsal.add({ kind: 'calibrated', machine: idOf('resistive-machine'), day: onFlightDay(23), factor: '1.1' });
  rehearsal.restrict({
    kind: 'restricted',
    person: PERSON,
    medicalReason: null,
    restriction: {
      scope: { kind: 'all' },
      limit: { kind: 'load at most', load: entered('200', 'lb') },
      toldBy: 'the physician',
      toldOn: onFlightDay(TOP),
      confirmed: true,
      from: onFlightDay(TOP),
      reviewOn: null,
    },
  });
  // 200 lb delivered are 181.8 commanded, down to the step of 5.
  expect(workIncrements(heavySquat(rehearsal, TOP))).toBe(180);
});

test('coming back after a limit was lifted wants a typed reason', () => {
  const rehearsal = livedAsPlanned(20);
  const limited = rehearsal.add({
    kind: 'restricted',
    person: PERSON,
    medicalReason: null,
    restriction: {
      scope: { kind: 'all' },
      limit: { kind: 'load at most', load: entered('100', 'lb') },
      toldBy: 'the physician',
      toldOn: onFlightDay(21),
      confirmed: true,
      from: onFlightDay(21),
      reviewOn: null,
    },
  });
  rehearsal.live(21, 31);
  rehearsal.add({
    kind: 'restriction lifted',
    person: PERSON,
    restriction: limited.id,
    toldBy: 'the physician',
    on: onFlightDay(32),
  });
  expect(heavySquat(rehearsal, 32).raise).toMatchObject({ from: 100, needsReason: true });
});
