import { expect, test } from 'vitest';
import { addDays, type Day } from '#units/day.ts';
import { liftsOf, workIncrements, type Card } from '#domain/card.ts';
import { SQUAT_GATES, type SquatGateName, type WayOfWatching } from '#domain/squat-gate.ts';
import { SQUAT_GATES as SCIENCE_GATES } from '#science/novice/squat-gates.table.ts';
import { SET_PROGRAMME } from '#shipped/set-programme.ts';
import { LAUNCH, PERSON, Rehearsal } from './rehearsal/rehearsal.ts';

/** A Monday of general preparation, and the one after it. */
const MONDAY = addDays(LAUNCH, -385);
const NEXT_MONDAY = addDays(MONDAY, 7);

const novice = (): Rehearsal => {
  const rehearsal = new Rehearsal({ sex: 'male', mass: '74' });
  rehearsal.add({
    kind: 'measured',
    person: PERSON,
    day: addDays(MONDAY, -30),
    what: 'body mass',
    value: { text: '74', unit: 'kg' },
  });
  rehearsal.follow(SET_PROGRAMME.id, -730);
  return rehearsal;
};

const judge = (
  rehearsal: Rehearsal,
  gate: SquatGateName,
  day: Day,
  { passed = true, watched = 'in person' }: { readonly passed?: boolean; readonly watched?: WayOfWatching } = {},
): void => {
  rehearsal.add({ kind: 'judged', person: PERSON, day, gate, passed, observedBy: 'Maud Arkwright', watched });
};

const cardOn = (rehearsal: Rehearsal, day: Day): Card => {
  const found = rehearsal.road(day, 1).cards.find((card) => card.day === day);
  if (found?.state !== 'planned') throw new Error('No session is planned on that day.');
  return found.card;
};
const squatOn = (rehearsal: Rehearsal, day: Day) =>
  liftsOf(cardOn(rehearsal, day)).find((item) => item.exercise === 'back-squat');
const whyOn = (rehearsal: Rehearsal, day: Day) =>
  cardOn(rehearsal, day).leftOut.find((each) => each.exerciseName === 'Back squat')?.says;

test('the gates of planning are those of the science, in the same order', () => {
  expect(SQUAT_GATES).toEqual(SCIENCE_GATES);
});

test('gate by gate the card names the next one; the bar comes with the one before it', () => {
  const rehearsal = novice();
  for (const gate of ['clearance gate', 'first squat gate', 'light load gate'] as const) {
    expect(whyOn(rehearsal, MONDAY)).toBe(`left out: the ${gate} comes first`);
    judge(rehearsal, gate, addDays(MONDAY, -3));
  }
  const work = squatOn(rehearsal, MONDAY)?.sets.find((set) => set.kind === 'work');
  expect(work?.load).toMatchObject({ kind: 'start at', increments: 8 });
});

test('a gate counts from its own day, not before', () => {
  const rehearsal = novice();
  judge(rehearsal, 'light load gate', addDays(MONDAY, 1));
  expect(squatOn(rehearsal, MONDAY)).toBeUndefined();
  expect(squatOn(rehearsal, NEXT_MONDAY)).toBeDefined();
});

test('a film that is not enough shows nothing, and a later judgement takes an earlier one back', () => {
  const rehearsal = novice();
  judge(rehearsal, 'light load gate', addDays(MONDAY, -3), { watched: 'on film, not enough' });
  expect(squatOn(rehearsal, MONDAY)).toBeUndefined();
  judge(rehearsal, 'light load gate', addDays(MONDAY, -2), { watched: 'on film, enough' });
  expect(squatOn(rehearsal, MONDAY)).toBeDefined();
  judge(rehearsal, 'light load gate', addDays(MONDAY, -1), { passed: false });
  expect(squatOn(rehearsal, MONDAY)).toBeUndefined();
});

test('between the gates a bar weighs half of the body at most, whatever results say', () => {
  const rehearsal = novice();
  judge(rehearsal, 'light load gate', addDays(MONDAY, -3));
  const [document] = rehearsal.issue(MONDAY, [MONDAY]);
  if (!document) throw new Error('Nothing was issued.');
  // So easy that the estimate runs ahead: 60 kg for eight with effort 5.
  rehearsal.train(document, {
    rpe: 6,
    set: (result, item) => (item.exercise === 'back-squat' ? { ...result, load: { text: '60', unit: 'kg' } } : result),
  });
  const squat = squatOn(rehearsal, NEXT_MONDAY);
  expect((workIncrements(squat ?? (null as never)) ?? 0) * 2.5).toBeLessThanOrEqual(37);
  expect(squat?.limits.find(({ kind }) => kind === 'gate')?.says).toMatch(/bar gate: half of body mass/);
  judge(rehearsal, 'bar gate', addDays(MONDAY, 1));
  expect(squatOn(rehearsal, NEXT_MONDAY)?.limits.some(({ kind }) => kind === 'gate')).toBe(false);
});

test('somebody who was tested under a bar needs no gate', () => {
  const rehearsal = novice();
  rehearsal.test('back-squat', '80', addDays(MONDAY, -20));
  expect(squatOn(rehearsal, MONDAY)).toBeDefined();
});
