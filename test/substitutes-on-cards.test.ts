import { expect, test } from 'vitest';
import { addDays } from '#units/day.ts';
import type { Card, CardItem } from '#domain/card.ts';
import type { Machine } from '#domain/catalogue.ts';
import { idOf } from '#domain/identity.ts';
import type { RestrictionScope } from '#domain/restriction.ts';
import { SET_PROGRAMME } from '#shipped/set-programme.ts';
import { FREE_BAR } from '#shipped/shipped-house.ts';
import { LAUNCH, PERSON, Rehearsal } from './rehearsal/rehearsal.ts';

const MONDAY = addDays(LAUNCH, -385);
const HOTEL = idOf<'site'>('hotel');

/** Somebody who spends the week where there is no bar but these kinds of machines. */
const travelling = (
  kinds: readonly Machine['kind'][],
  body: { readonly squat?: string } = { squat: '120' },
): Rehearsal => {
  const rehearsal = new Rehearsal({ sex: 'male', mass: '80' });
  if (body.squat) rehearsal.test('back-squat', body.squat, addDays(MONDAY, -10));
  rehearsal.follow(SET_PROGRAMME.id, -730);
  rehearsal.add({ kind: 'catalogued', entry: { kind: 'site', site: { id: HOTEL, name: 'Hotel', place: 'ground' } } });
  for (const kind of kinds)
    rehearsal.add({
      kind: 'catalogued',
      entry: { kind: 'machine', machine: { ...FREE_BAR, id: idOf(`hotel-${kind}`), name: kind, kind, site: HOTEL } },
    });
  rehearsal.add({ kind: 'stays', person: PERSON, site: HOTEL, from: MONDAY, until: addDays(MONDAY, 6) });
  return rehearsal;
};

const restrict = (rehearsal: Rehearsal, scope: RestrictionScope, forbidden: boolean): void => {
  rehearsal.restrict({
    kind: 'restricted',
    person: PERSON,
    medicalReason: null,
    restriction: {
      scope,
      limit: forbidden ? { kind: 'forbidden' } : { kind: 'RPE at most', rpe: 6 },
      toldBy: 'Dr. A. Lowe',
      toldOn: MONDAY,
      confirmed: true,
      from: MONDAY,
      reviewOn: null,
    },
  });
};

const planned = (rehearsal: Rehearsal): { readonly card: Card; readonly gaps: readonly string[] } => {
  const found = rehearsal.road(MONDAY, 1).cards.find(({ day }) => day === MONDAY);
  if (found?.state !== 'planned') throw new Error('No session is planned on that day.');
  return found;
};

const saidOf = (rehearsal: Rehearsal, exercise: string): string | undefined =>
  planned(rehearsal).card.leftOut.find(({ exerciseName }) => exerciseName === exercise)?.says;

/** What stands on the card in place of an exercise, and why. */
const insteadOf = (rehearsal: Rehearsal, exercise: string): CardItem | undefined =>
  planned(rehearsal).card.items.find(({ says }) => says.some((each) => each.startsWith(`instead of ${exercise}:`)));

test('where there is no bar the card holds what is done instead, what that covers and what it does not', () => {
  const rehearsal = travelling(['dumbbells']);
  const squat = insteadOf(rehearsal, 'back squat');
  expect(squat?.says).toContain('instead of back squat: Box squat with dumbbells, covers strength 0.85, power 0.6');
  expect(squat).toMatchObject({
    kind: 'lift',
    exercise: 'box-squat',
    basis: 'effort',
    leading: false,
    shouldFeel: [5, 6],
  });
  const press = insteadOf(rehearsal, 'bench press');
  expect(press?.says.join()).toContain(
    'the same with dumbbells, with a load of its own, first session at RPE 6 or less',
  );
  expect(press).toMatchObject({
    exercise: 'bench-press',
    machineName: 'dumbbells',
    shouldFeel: [5, 6],
  });
});

test('what is done instead has a track of its own: it moves no load of the lift that it stands in for', () => {
  const rehearsal = travelling(['dumbbells']);
  const tracks = planned(rehearsal).card.items.map(({ track }) => track);
  expect(tracks).toContain('general squat, box-squat dumbbells');
  expect(tracks).not.toContain('general squat');
});

test('where there is nothing at all the body itself is what is left', () => {
  const rehearsal = travelling([]);
  const squat = insteadOf(rehearsal, 'back squat');
  expect(squat).toMatchObject({ kind: 'drill', exercise: 'body-weight-squat', means: 'body weight' });
  expect(saidOf(rehearsal, 'Bent-over row')).toBe(
    'left out: there is no free bar here; instead: Cord row with a band, if it is there, covers strength 0.6, grip 0.2',
  );
});

test('a session of which nothing is left is shown, and cannot be issued', () => {
  const rehearsal = travelling([]);
  restrict(rehearsal, { kind: 'all' }, true);
  const { card, gaps } = planned(rehearsal);
  expect([card.items, card.minutes]).toEqual([[], []]);
  expect(card.leftOut.map(({ exerciseName }) => exerciseName)).toContain('Back squat');
  expect(gaps).toContain('Nothing is left of this session.');
});

test('what a physician forbids is never offered, and nothing stands in for a lift that is forbidden itself', () => {
  const noKnees = travelling(['dumbbells']);
  restrict(noKnees, { kind: 'site', site: 'knee', side: null }, true);
  expect(saidOf(noKnees, 'Back squat')).toBe('left out: there is no free bar here');
  const noBoxes = travelling(['dumbbells']);
  restrict(noBoxes, { kind: 'exercise', exercise: idOf('box-squat') }, true);
  expect(insteadOf(noBoxes, 'back squat')).toMatchObject({ exercise: 'single-leg-squat', machineName: 'dumbbells' });
  const easy = travelling(['dumbbells']);
  restrict(easy, { kind: 'pattern', pattern: 'squat' }, false);
  expect(insteadOf(easy, 'back squat')?.says).toContain('limited by the physician: effort at most RPE 6');
});

test('machines that are out of service stand in for nothing', () => {
  const rehearsal = travelling([]);
  rehearsal.add({
    kind: 'catalogued',
    entry: {
      kind: 'machine',
      machine: {
        ...FREE_BAR,
        id: idOf('hotel-dumbbells'),
        kind: 'dumbbells',
        site: HOTEL,
        outOfService: { from: MONDAY, until: null, reason: 'locked away' },
      },
    },
  });
  expect(saidOf(rehearsal, 'Bent-over row')).toBe(
    'left out: there is no free bar here; instead: Cord row with a band, if it is there, covers strength 0.6, grip 0.2',
  );
});

test('nobody behind the gates is sent under a bar in place of a machine', () => {
  const rehearsal = travelling(['free bar'], {});
  const onMachine = {
    ...SET_PROGRAMME,
    id: idOf<'programme version'>('on-the-machine'),
    phases: SET_PROGRAMME.phases.map((phase) => ({
      ...phase,
      sessions: phase.sessions.map((session) => ({
        ...session,
        items: session.items.map((item) => ({ ...item, machineKind: 'resistive machine' as const })),
      })),
    })),
  };
  rehearsal.add({ kind: 'catalogued', entry: { kind: 'programme', version: onMachine } });
  rehearsal.follow(onMachine.id, -730);
  expect(insteadOf(rehearsal, 'back squat')?.says).toContain(
    'instead of back squat: Body-weight squat with body weight alone, covers strength 0.2, power 0.1',
  );
  const tested = rehearsal.fork();
  tested.test('back-squat', '100', addDays(MONDAY, -10));
  expect(insteadOf(tested, 'back squat')).toMatchObject({ exercise: 'back-squat', machineName: 'free bar' });
  const learning = rehearsal.fork();
  learning.test('goblet-squat', '16', addDays(MONDAY, -10));
  expect(insteadOf(learning, 'back squat')).toMatchObject({ exercise: 'body-weight-squat' });
});
