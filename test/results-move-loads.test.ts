import { expect, test } from 'vitest';
import { addDays } from '#units/day.ts';
import { entered } from '#units/entered.ts';
import { liftsOf, workIncrements, type CardLift } from '#domain/card.ts';
import type { SetResult } from '#domain/fact.ts';
import { idOf, type FactId } from '#domain/identity.ts';
import { atTheTop, heavySquat, livedAsPlanned, person, TOP } from './rehearsal/heavy-squat.ts';
import { LAUNCH, onFlightDay, PERSON, Rehearsal } from './rehearsal/rehearsal.ts';

/** Lives flight day 32 so, everything else as planned up to the next heavy day, and answers its squat. */
const after = (set: (result: SetResult, item: CardLift) => SetResult, note?: string): CardLift => {
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
      item: heavyItem(liftsOf(document.card)),
      text: note,
    });
  rehearsal.live(TOP + 1, TOP + 6);
  return heavySquat(rehearsal, TOP + 7);
};

const heavyItem = (items: readonly CardLift[]) => items.find((item) => item.track === 'squat heavy')?.item ?? null;

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
  const rehearsal = livedAsPlanned(6);
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
  const rehearsal = livedAsPlanned(10);
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
  const signed = livedAsPlanned(10);
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
      pieces: [],
      sessionRpe,
      minutes,
    },
    wrong.id satisfies FactId,
  );
  expect(rehearsal.road(onFlightDay(5)).tracks.find((track) => track.track === 'squat heavy')?.last?.increments).toBe(
    200,
  );
});

test('discomfort of five or more that is told of no card takes the ramps a step back, too', () => {
  const rehearsal = new Rehearsal({ sex: 'male', mass: '80', squat: '120', deadlift: '150', heaviestBar: '110' });
  rehearsal.live(1, 24, { rpe: 6 });
  const steps = (): number | undefined =>
    rehearsal.road(onFlightDay(25)).lifts.find(({ exercise }) => exercise === 'back-squat')?.effortStep;
  expect(steps()).toBe(2);
  rehearsal.add({
    kind: 'hurt',
    person: PERSON,
    day: onFlightDay(24),
    card: null,
    item: null,
    site: 'knee',
    side: 'left',
    score: 6,
    when: 'during',
  });
  expect(steps()).toBe(1);
});
