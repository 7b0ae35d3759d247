import { expect, test } from 'vitest';
import { addDays } from '#units/day.ts';
import { entered } from '#units/entered.ts';
import { workIncrements, type CardItem } from '#domain/card.ts';
import type { SetResult } from '#domain/fact.ts';
import { idOf, type FactId } from '#domain/identity.ts';
import { recallsUnder } from '#planning/recall.ts';
import { LAUNCH, onFlightDay, PERSON, Rehearsal } from './rehearsal/rehearsal.ts';

const person = { sex: 'female', mass: '71.4', squat: '104.714', deadlift: '120', heaviestBar: '102.5' } as const;
const TOP = 32;

/** Lived to the first load with both ramps at their top: heavy squat 295 lb on flight day 32. */
const atTheTop = (): Rehearsal => {
  const rehearsal = new Rehearsal(person);
  rehearsal.live(1, TOP - 1);
  return rehearsal;
};

const heavySquat = (rehearsal: Rehearsal, flightDay: number): CardItem => {
  const card = rehearsal.road(onFlightDay(flightDay), 1).cards.find((each) => each.state === 'planned');
  const item = card?.state === 'planned' ? card.card.items.find((each) => each.track === 'squat heavy') : undefined;
  if (!item) throw new Error(`No heavy squat is planned on flight day ${flightDay}.`);
  return item;
};

/** Lives flight day 32 so, everything else as planned up to the next heavy day, and answers its squat. */
const after = (set: (result: SetResult, item: CardItem) => SetResult, note?: string): CardItem => {
  const rehearsal = atTheTop();
  const [document] = rehearsal.live(TOP, TOP, {
    set: (result, item) => (item.track === 'squat heavy' ? set(result, item) : result),
  });
  if (note && document)
    rehearsal.add({
      kind: 'noted',
      person: PERSON,
      day: document.card.day,
      card: document.id,
      item: heavyItem(document.card.items),
      text: note,
    });
  rehearsal.live(TOP + 1, TOP + 6);
  return heavySquat(rehearsal, TOP + 7);
};

const heavyItem = (items: readonly CardItem[]) => items.find((item) => item.track === 'squat heavy')?.item ?? null;

test('all repetitions inside the rule raise the load by one step, marked for a signature', () => {
  const item = after((result) => result);
  expect(workIncrements(item)).toBe(300);
  expect(item.raise).toMatchObject({ from: 295, to: 300, cause: 'step rule' });
});

test('repetitions missed: the load repeats', () => {
  const item = after((result) => ({ ...result, repetitions: result.repetitions - 1 }));
  expect(workIncrements(item)).toBe(295);
  expect(item.raise).toBeNull();
});

test('less taken than planned: that load stands', () => {
  expect(workIncrements(after((result) => ({ ...result, load: entered('280', 'lb') })))).toBe(280);
});

test('effort over the rule: the load repeats', () => {
  expect(workIncrements(after((result) => ({ ...result, effort: { kind: 'RPE', value: 9 } })))).toBe(295);
});

test('an unread note on the lift blocks its raise', () => {
  const item = after((result) => result, 'strap slipped');
  expect(workIncrements(item)).toBe(295);
});

test('more than the signed rule allowed: its limit counts, and a line asks to be looked at', () => {
  const rehearsal = atTheTop();
  rehearsal.live(TOP, TOP + 6);
  rehearsal.live(TOP + 7, TOP + 7, {
    set: (result, item) => (item.track === 'squat heavy' ? { ...result, load: entered('340', 'lb') } : result),
  });
  const { proposals, tracks } = rehearsal.road(onFlightDay(TOP + 8));
  expect(proposals.find((proposal) => proposal.rule === 'over the rule')?.says).toContain('340');
  const track = tracks.find((each) => each.track === 'squat heavy');
  // The card of that day was a raise to 300 itself: the rule adds nothing more in the same week.
  expect(track?.signed).toBe(300);
});

test('discomfort of three holds the load, whatever the repetitions', () => {
  const rehearsal = atTheTop();
  rehearsal.live(TOP, TOP, { hurts: [{ site: 'shoulder', score: 3 }] });
  rehearsal.live(TOP + 1, TOP + 6);
  expect(workIncrements(heavySquat(rehearsal, TOP + 7))).toBe(295);
});

test('a rise of two points by next morning counts as the next band', () => {
  const rehearsal = atTheTop();
  rehearsal.live(TOP, TOP, {
    hurts: [
      { site: 'shoulder', score: 0 },
      { site: 'shoulder', score: 2, when: 'next morning' },
    ],
  });
  rehearsal.live(TOP + 1, TOP + 6);
  expect(workIncrements(heavySquat(rehearsal, TOP + 7))).toBe(295);
});

test('what was not heard earns nothing and resets nothing', () => {
  const rehearsal = new Rehearsal(person);
  rehearsal.live(1, 6);
  const before = rehearsal.road(onFlightDay(9)).lifts.find((lift) => lift.exercise === 'back-squat');
  rehearsal.issue(onFlightDay(8), [onFlightDay(8)]);
  const later = rehearsal.road(onFlightDay(9)).lifts.find((lift) => lift.exercise === 'back-squat');
  expect(later).toEqual(before);
});

test('backing off takes a tenth off at once, and coming back is a raise', () => {
  const rehearsal = atTheTop();
  rehearsal.live(TOP, TOP + 2);
  const day = onFlightDay(TOP + 3);
  rehearsal.add({
    kind: 'decided',
    answers: null,
    basis: rehearsal.end,
    decision: {
      kind: 'adjust',
      person: PERSON,
      track: idOf('squat heavy'),
      change: { kind: 'back off', by: 0.1 },
      from: day,
      until: null,
      reason: 'back tight',
    },
  });
  rehearsal.live(TOP + 3, TOP + 6);
  // 295 less a tenth is 265.5, down to the step of 5.
  expect(workIncrements(heavySquat(rehearsal, TOP + 7))).toBe(265);
  rehearsal.live(TOP + 7, TOP + 7);
  rehearsal.live(TOP + 8, TOP + 20);
  const next = heavySquat(rehearsal, TOP + 21);
  expect(workIncrements(next)).toBe(270);
  expect(next.raise?.cause).toBe('step rule');
});

test('a declined ramp step stays declined until there is new evidence', () => {
  const rehearsal = new Rehearsal(person);
  rehearsal.live(1, 10);
  const today = onFlightDay(11);
  const proposal = rehearsal
    .road(today)
    .proposals.find(
      (each) => each.rule === 'ramp step' && each.raises.some((raise) => raise.exercise === 'back-squat'),
    );
  if (!proposal) throw new Error('No ramp step was proposed.');
  rehearsal.add({
    kind: 'decided',
    answers: proposal.id,
    basis: rehearsal.end,
    decision: { kind: 'decline', person: PERSON, proposal: proposal.id, reason: 'not yet' },
  });
  expect(heavySquat(rehearsal, 11).ramp?.effortStep).toBe(0);
  rehearsal.live(11, 12);
  const again = rehearsal
    .road(onFlightDay(13))
    .proposals.find(
      (each) => each.rule === 'ramp step' && each.raises.some((raise) => raise.exercise === 'back-squat'),
    );
  expect(again?.state).toBe('open');
});

test('signing a proposal and issuing the card write the same raise', () => {
  const signed = new Rehearsal(person);
  signed.live(1, 10);
  const today = onFlightDay(11);
  const proposal = signed.road(today).proposals.find((each) => each.rule === 'ramp step' && each.change !== null);
  const planned = heavySquat(signed, 11);
  for (const each of signed.road(today).proposals)
    if (each.rule === 'ramp step' && each.change)
      signed.add({ kind: 'decided', answers: each.id, basis: signed.end, decision: each.change });
  expect(proposal).toBeDefined();
  expect(workIncrements(heavySquat(signed, 11))).toBe(workIncrements(planned));
  expect(heavySquat(signed, 11).ramp).toEqual(planned.ramp);
});

test('a later estimate never touches an issued card, and an issued day can be issued again', () => {
  const rehearsal = new Rehearsal(person);
  const [document] = rehearsal.issue(LAUNCH, [onFlightDay(4)]);
  rehearsal.test('back-squat', '130', addDays(LAUNCH, -60));
  const road = rehearsal.road(LAUNCH);
  const standing = road.cards.find((card) => card.state === 'issued');
  expect(standing?.state === 'issued' && standing.record.document).toEqual(document);
  expect(road.proposals.some((proposal) => proposal.rule === 'issue again')).toBe(true);
  const [again] = rehearsal.issue(LAUNCH, [onFlightDay(4)]);
  expect(again?.replaces).toBe(document?.id);
  const first = rehearsal.road(LAUNCH).cards.filter((card) => card.state === 'issued');
  expect(first).toHaveLength(1);
});

test('a result for a superseded card is still taken and shown', () => {
  const rehearsal = new Rehearsal(person);
  const [document] = rehearsal.issue(LAUNCH, [onFlightDay(4)]);
  rehearsal.issue(LAUNCH, [onFlightDay(4)]);
  if (document) rehearsal.train(document);
  const road = rehearsal.road(onFlightDay(5));
  expect(
    road.cards.some(
      (card) => card.state === 'issued' && card.record.delivery === 'superseded' && card.record.outcome === 'done',
    ),
  ).toBe(true);
  expect(road.tracks.find((track) => track.track === 'squat heavy')?.last?.increments).toBe(210);
});

test('a superseded result counts no more', () => {
  const rehearsal = new Rehearsal(person);
  const [document] = rehearsal.issue(onFlightDay(4), [onFlightDay(4)]);
  if (!document) throw new Error('Nothing was issued.');
  rehearsal.train(document);
  const wrong = rehearsal.log.at(-1);
  if (wrong?.kind !== 'trained') throw new Error('The result is not the last fact.');
  const { person: who, day, card, sets, sessionRpe, minutes } = wrong;
  rehearsal.add(
    {
      kind: 'trained',
      person: who,
      day,
      card,
      sets: sets.map((set) => ({ ...set, load: entered('200', 'lb') })),
      sessionRpe,
      minutes,
    },
    wrong.id satisfies FactId,
  );
  expect(rehearsal.road(onFlightDay(5)).tracks.find((track) => track.track === 'squat heavy')?.last?.increments).toBe(
    200,
  );
});

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
  expect(told.flatMap((fact) => recallsUnder(rehearsal.known(), fact.id))).toEqual([]);
});

test('two sides of a lift climb together', () => {
  const rehearsal = new Rehearsal(person);
  rehearsal.live(1, 80);
  const sides = rehearsal
    .road(onFlightDay(81), 14)
    .cards.flatMap((card) =>
      card.state === 'planned' ? card.card.items.filter((item) => item.track === 'single-leg squat') : [],
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
    planned?.state === 'planned' ? planned.card.items.find((item) => item.track === 'squat medium') : undefined;
  expect(squat && workIncrements(squat)).toBe(175);
  expect(squat?.limits.find((limit) => limit.kind === 'signed load')?.binds).toBe(true);
});

test('no track of a lift overtakes its leading one: a raise is taken once by each', () => {
  const rehearsal = new Rehearsal(person);
  rehearsal.live(1, 120);
  const road = rehearsal.road(onFlightDay(121), 14);
  const inUse = (track: string): number => road.tracks.find((each) => each.track === track)?.last?.increments ?? NaN;
  expect(inUse('squat medium')).toBeLessThan(inUse('squat heavy'));
  expect(inUse('squat light')).toBeLessThan(inUse('squat medium'));
});

test('a hold holds, also where the leading track has gone up', () => {
  const rehearsal = new Rehearsal(person);
  rehearsal.live(1, 50);
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
  const item = card?.state === 'planned' ? card.card.items.find((each) => each.track === 'squat medium') : undefined;
  return item ? (workIncrements(item) ?? NaN) : NaN;
};

test('a card from before a back-off neither undoes nor repeats it', () => {
  const rehearsal = new Rehearsal(person);
  rehearsal.live(1, 52);
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
  const rehearsal = new Rehearsal(person);
  rehearsal.live(1, 14);
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
    .cards.flatMap((card) => (card.state === 'planned' ? card.card.items : []));
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
  const rehearsal = new Rehearsal(person);
  rehearsal.live(1, 20);
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
