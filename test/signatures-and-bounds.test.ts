import { expect, test } from 'vitest';
import { entered } from '#units/entered.ts';
import { workIncrements } from '#domain/card.ts';
import { atTheTop, heavySquat, livedAsPlanned, person, TOP } from './rehearsal/heavy-squat.ts';
import { onFlightDay, PERSON, Rehearsal } from './rehearsal/rehearsal.ts';

test('a card that was a raise itself allows no further step, and none without an earned one', () => {
  const rehearsal = livedAsPlanned(52);
  // The heavy card of this day carries its own raise to 305.
  rehearsal.live(53, 53, {
    set: (result, item) =>
      item.track === 'squat heavy'
        ? { ...result, load: entered('310', 'lb'), effort: { kind: 'RPE', value: 9.5 } }
        : result,
  });
  const road = rehearsal.road(onFlightDay(54));
  expect(road.proposals.some((proposal) => proposal.rule === 'over the rule')).toBe(true);
  expect(road.tracks.find((track) => track.track === 'squat heavy')?.signed).toBe(305);
});

test('a raise that was signed falls with the discomfort that came after it', () => {
  const rehearsal = livedAsPlanned(53);
  const today = onFlightDay(54);
  const proposal = rehearsal
    .road(today)
    .proposals.find((each) => each.rule === 'step rule' && each.raises.some((raise) => raise.track === 'squat heavy'));
  if (!proposal?.change) throw new Error('No raise of the heavy squat was proposed.');
  rehearsal.add({ kind: 'decided', answers: proposal.id, basis: rehearsal.end, decision: proposal.change });
  rehearsal.live(54, 56, { hurts: [{ site: 'knee', score: 4 }] });
  expect(workIncrements(heavySquat(rehearsal, 60))).toBeLessThanOrEqual(305);
});

test('a raise that was signed falls with repetitions missed after it', () => {
  const rehearsal = livedAsPlanned(52);
  const day = onFlightDay(53);
  const [document] = rehearsal.issue(day, [day]);
  if (!document) throw new Error('Nothing was issued.');
  rehearsal.train(document);
  const raised = rehearsal
    .road(onFlightDay(54))
    .proposals.find((each) => each.raises.some((raise) => raise.track === 'squat heavy'));
  if (!raised?.change) throw new Error('No raise of the heavy squat was proposed.');
  rehearsal.add({ kind: 'decided', answers: raised.id, basis: rehearsal.end, decision: raised.change });
  // The report is corrected after the signature: the last set had failed.
  const wrong = rehearsal.log.findLast((fact) => fact.kind === 'trained');
  if (wrong?.kind !== 'trained') throw new Error('No result is in the log.');
  const { person: who, day: on, card, sets, sessionRpe, minutes } = wrong;
  rehearsal.add(
    {
      kind: 'trained',
      person: who,
      day: on,
      card,
      sets: sets.map((set) => ({ ...set, repetitions: set.repetitions - 2 })),
      pieces: [],
      sessionRpe,
      minutes,
    },
    wrong.id,
  );
  expect(workIncrements(heavySquat(rehearsal, 60))).toBeLessThanOrEqual(305);
});

test('more than a physician allowed is never the next load', () => {
  const rehearsal = atTheTop();
  const day = onFlightDay(TOP);
  rehearsal.restrict({
    kind: 'restricted',
    person: PERSON,
    medicalReason: null,
    restriction: {
      scope: { kind: 'all' },
      limit: { kind: 'load at most', load: entered('200', 'lb') },
      toldBy: 'the physician',
      toldOn: day,
      confirmed: true,
      from: day,
      reviewOn: null,
    },
  });
  rehearsal.live(TOP, TOP, {
    set: (result, item) => (item.track === 'squat heavy' ? { ...result, load: entered('300', 'lb') } : result),
  });
  const road = rehearsal.road(onFlightDay(TOP + 1));
  expect(road.proposals.some((proposal) => proposal.rule === 'over the rule')).toBe(true);
  const lifted = rehearsal.log.findLast((fact) => fact.kind === 'restricted');
  if (!lifted) throw new Error('No restriction is in the log.');
  rehearsal.add({
    kind: 'restriction lifted',
    person: PERSON,
    restriction: lifted.id,
    toldBy: 'the physician',
    on: onFlightDay(TOP + 2),
  });
  rehearsal.live(TOP + 2, TOP + 6);
  const item = heavySquat(rehearsal, TOP + 7);
  expect((workIncrements(item) ?? NaN) <= 200 || item.raise !== null).toBe(true);
});

test('a card that nobody was heard on, and that may still be trained from, is recalled too', () => {
  const rehearsal = new Rehearsal(person);
  const told = onFlightDay(7);
  rehearsal.issue(onFlightDay(4), [onFlightDay(4), onFlightDay(6)]);
  const recalls = rehearsal.restrict({
    kind: 'restricted',
    person: PERSON,
    medicalReason: null,
    restriction: {
      scope: { kind: 'all' },
      limit: { kind: 'load at most', load: entered('100', 'lb') },
      toldBy: 'the physician',
      toldOn: told,
      confirmed: true,
      from: told,
      reviewOn: null,
    },
  });
  expect(recalls).toHaveLength(2);
});
