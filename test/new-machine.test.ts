import { expect, test } from 'vitest';
import { addDays, type Day } from '#units/day.ts';
import { entered } from '#units/entered.ts';
import { liftsOf, workIncrements, type CardLift } from '#domain/card.ts';
import type { Machine } from '#domain/catalogue.ts';
import { idOf } from '#domain/identity.ts';
import { takeUp } from '#domain/programme.ts';
import { capacityReader } from '#assessing/capacity.ts';
import { backSquat, deadlift } from '#shipped/exercises/lower-body.ts';
import { RESISTIVE_MACHINE } from '#shipped/shipped-house.ts';
import { LAUNCH, PERSON, Rehearsal } from './rehearsal/rehearsal.ts';

/** A ground unit in steps of 0.5 kg beside the bar: what it shows is what would hang on one. */
const GROUND_UNIT: Machine = {
  ...RESISTIVE_MACHINE,
  id: idOf('ground-unit'),
  name: 'Ground unit',
  site: idOf('ground-gym'),
  gravity: '1 g',
  groundUnitOf: RESISTIVE_MACHINE.id,
  unit: 'kg',
  increment: '0.5',
  least: '10',
  ceiling: '270',
};

const MONDAY = addDays(LAUNCH, -84);
const WEEK = 7;

/** Once a week 4 × 6 at 78 % of the maximum. */
const ON_THE_UNIT = takeUp({
  programme: idOf('on-the-unit'),
  name: 'On the unit',
  number: 1,
  follows: null,
  phases: [
    {
      name: 'flight-specific preparation',
      span: { first: { from: 'launch', days: -90 }, last: { from: 'launch', days: -1 } },
      deload: null,
      source: 'invented',
      sessions: [
        {
          id: idOf('monday'),
          title: 'Monday',
          weekday: 1,
          blockMinutes: 120,
          items: [backSquat, deadlift].map((exercise, place) => ({
            kind: 'lift',
            id: idOf(`${exercise.id} on the unit`),
            track: idOf(`${exercise.id} on the unit`),
            leading: true,
            exercise: exercise.id,
            machineKind: 'resistive machine',
            condition: 'everyone',
            priority: place + 1,
            basis: { kind: 'fraction', of: 0.78 },
            warmUps: [],
            sets: Array.from({ length: 4 }, () => ({ repetitions: 6, rest: 120 })),
            tempo: null,
            superset: null,
            reserve: 2,
            shouldFeel: [7, 8],
            source: 'invented',
          })),
        },
      ],
    },
  ],
});

const person = (): Rehearsal => {
  const rehearsal = new Rehearsal({ sex: 'female', mass: '65', squat: '100', deadlift: '120' });
  rehearsal.add({ kind: 'catalogued', entry: { kind: 'machine', machine: GROUND_UNIT } });
  rehearsal.add({ kind: 'catalogued', entry: { kind: 'programme', version: ON_THE_UNIT } });
  rehearsal.follow(ON_THE_UNIT.id, -90);
  return rehearsal;
};

const liftOn = (rehearsal: Rehearsal, day: Day, exercise: string): CardLift => {
  const card = rehearsal.road(day, 1).cards.find((each) => each.state === 'planned');
  const lift = card?.state === 'planned' && liftsOf(card.card).find((each) => each.exercise === exercise);
  if (!lift) throw new Error(`No ${exercise} is planned on that day.`);
  return lift;
};

const kilogramsOf = (lift: CardLift): number => (workIncrements(lift) ?? Number.NaN) * Number(lift.increment);

/** Wathan 1994 (from memory), retyped: the fraction that n repetitions to failure allow. */
const wathan = (n: number): number => (48.8 + 53.8 * Math.exp(-0.075 * n)) / 100;

test('a first session on a machine that a person never used leaves four repetitions: RPE 6 or less', () => {
  const lift = liftOn(person(), MONDAY, 'back-squat');
  expect(kilogramsOf(lift)).toBeLessThanOrEqual(100 * wathan(10) + 1.25);
  expect(kilogramsOf(lift)).toBeLessThan(78);
  expect(lift).toMatchObject({ shouldFeel: [6, 6], reserve: null });
  expect(lift.says).toContain('first session of this lift on this machine: RPE 6 or less');
});

test('the second session there stands at what the programme means', () => {
  const rehearsal = person();
  const [document] = rehearsal.issue(MONDAY, [MONDAY]);
  if (!document) throw new Error('Nothing was issued.');
  rehearsal.train(document);
  const lift = liftOn(rehearsal, addDays(MONDAY, WEEK), 'back-squat');
  // 78 % of 100 kg to the nearest 2.5 kg; half a step goes down.
  expect(kilogramsOf(lift)).toBe(77.5);
  expect(lift).toMatchObject({ shouldFeel: [7, 8] });
});

test('what other lifts on both have shown moves the estimate of a lift that was never done there', () => {
  const rehearsal = person();
  const capacity = (): number => {
    const reading = capacityReader(rehearsal.known()).on(backSquat, GROUND_UNIT, MONDAY);
    return reading.kind === 'estimate' ? reading.estimate.median : Number.NaN;
  };
  expect(capacity()).toBeCloseTo(100, 6);
  rehearsal.add({
    kind: 'lifted',
    person: PERSON,
    day: addDays(MONDAY, -5),
    exercise: deadlift.id,
    machine: GROUND_UNIT.id,
    load: entered('108', 'kg'),
    repetitions: 1,
    effort: { kind: 'repetitions in reserve', value: 0 },
    side: null,
  });
  // The deadlift reads a tenth lower there: the squat is expected lower too, but by less than one lift alone says.
  expect(capacity()).toBeLessThan(97);
  expect(capacity()).toBeGreaterThan(90);
});

test('nothing is carried over to dumbbells: they load a lift in another way', () => {
  const dumbbells: Machine = { ...GROUND_UNIT, id: idOf('dumbbells'), kind: 'dumbbells', groundUnitOf: null };
  const reading = capacityReader(person().known()).on(backSquat, dumbbells, MONDAY);
  expect(reading.kind).toBe('none');
});
