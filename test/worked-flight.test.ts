import { expect, test } from 'vitest';
import { liftsOf, workIncrements } from '#domain/card.ts';
import { FLIGHT_SET } from '#planning/flight-set.ts';
import { livedAsPlanned, person } from './rehearsal/heavy-squat.ts';
import { LAUNCH, onFlightDay, PERSON, Rehearsal } from './rehearsal/rehearsal.ts';
import { WORKED } from './rehearsal/worked.ts';
import { addDays } from '#units/day.ts';
import { entered } from '#units/entered.ts';
import { idOf } from '#domain/identity.ts';

test('the heavy squat climbs to its full load as worked by hand', () => {
  const cards = livedAsPlanned(32).issued;
  for (const worked of WORKED) {
    const document = cards.find((card) => card.card.day === onFlightDay(worked.flightDay));
    const item = document && liftsOf(document.card).find((each) => each.track === 'squat heavy');
    const working = document?.workings.find((each) => each.item === item?.item);
    const cell = (name: string): number => working?.cells.find((each) => each.name === name)?.value ?? NaN;
    expect(workIncrements(item as NonNullable<typeof item>), `flight day ${worked.flightDay}`).toBe(worked.load);
    // Printed to three decimals.
    expect(Math.abs(cell('bar') - worked.bar)).toBeLessThanOrEqual(0.0005);
    // The printed share has four decimals, the model's has all of them: half a unit of the last, times body mass.
    expect(Math.abs(cell('added') - worked.added)).toBeLessThanOrEqual(0.00005 * 71.4 + 0.0005);
    expect(Math.abs(cell('true fraction') - worked.trueFraction)).toBeLessThanOrEqual(0.0005);
  }
});

test('with both ramps at the top the load comes from the last one, and a clean session raises it by one step', () => {
  const cards = livedAsPlanned(53).issued;
  const heavy = (flightDay: number) => {
    const document = cards.find((card) => card.card.day === onFlightDay(flightDay));
    const item = document && liftsOf(document.card).find((each) => each.track === 'squat heavy');
    return { basis: item?.basis, load: item && workIncrements(item) };
  };
  expect(heavy(39)).toEqual({ basis: 'from last', load: 300 });
  // The fifth week of main flight is an easier one: 10 % less, down to the step of 5 lb.
  expect(heavy(46)).toEqual({ basis: 'from last', load: 270 });
  expect(heavy(53)).toEqual({ basis: 'from last', load: 305 });
});

test('sets without recorded effort never raise a load', () => {
  const rehearsal = new Rehearsal(person);
  const cards = rehearsal.live(1, 32, { rpe: null });
  const loads = cards.flatMap((card) =>
    liftsOf(card.card)
      .filter((item) => item.track === 'squat heavy')
      .map((item) => workIncrements(item)),
  );
  expect(new Set(loads)).toEqual(new Set([210]));
});

test('a forbidden lift recalls every card that holds it, in the same breath, and is left out of what is planned', () => {
  const rehearsal = new Rehearsal(person);
  const today = onFlightDay(1);
  const issued = rehearsal.issue(today, [onFlightDay(4), onFlightDay(6)]);
  const recalls = rehearsal.restrict({
    kind: 'restricted',
    person: PERSON,
    medicalReason: 'seen by telephone',
    restriction: {
      scope: { kind: 'site', site: 'shoulder', side: 'left' },
      limit: { kind: 'forbidden' },
      toldBy: 'the physician',
      toldOn: today,
      confirmed: false,
      from: onFlightDay(5),
      reviewOn: null,
    },
  });
  expect(recalls).toHaveLength(1);
  const road = rehearsal.road(today);
  const [four, six] = issued.map((card) =>
    road.cards.find((each) => each.state === 'issued' && each.record.document.id === card.id),
  );
  expect(four?.state === 'issued' && four.record.delivery).toBe('issued');
  expect(six?.state === 'issued' && six.record.delivery).toBe('recalled');
  const planned = road.cards.filter((card) => card.state === 'planned' && card.day >= onFlightDay(5));
  for (const card of planned)
    if (card.state === 'planned') expect(liftsOf(card.card).some((item) => item.exercise === 'back-squat')).toBe(false);
});

test('without a bar on record the shoulder-carried lifts of the first fortnight are a gap, not a guess', () => {
  const rehearsal = new Rehearsal({ sex: 'male', mass: '90', squat: '140' });
  const road = rehearsal.road(LAUNCH);
  const first = road.cards.find((card) => card.day === onFlightDay(4));
  expect(first?.state === 'planned' && first.gaps.join(' ')).toContain('heaviest');
  rehearsal.add({ kind: 'carried', person: PERSON, day: addDays(LAUNCH, -3), load: entered('120', 'kg') });
  const again = rehearsal.road(LAUNCH).cards.find((card) => card.day === onFlightDay(4));
  expect(again?.state === 'planned' && liftsOf(again.card).some((item) => item.exercise === idOf('back-squat'))).toBe(
    true,
  );
});

test('deriving twice gives the same bytes', () => {
  const rehearsal = livedAsPlanned(15);
  const once = rehearsal.road(onFlightDay(16), 28);
  const twice = rehearsal.road(onFlightDay(16), 28);
  expect(JSON.stringify(twice)).toBe(JSON.stringify(once));
  expect(FLIGHT_SET.width).toBeGreaterThan(0);
});

test('what is planned for a day does not hang on how far ahead the road is laid', () => {
  const rehearsal = livedAsPlanned(31);
  const [alone, ahead] = [1, 28].map((days) => {
    const { cards, rows } = rehearsal.road(onFlightDay(32), days);
    return { planned: cards.filter((card) => card.state !== 'issued'), rows };
  });
  expect(alone?.planned).toHaveLength(1);
  expect(alone?.planned).toEqual(ahead?.planned.slice(0, 1));
  expect(alone?.rows.length).toBeGreaterThan(0);
  expect(alone?.rows).toEqual(ahead?.rows.subarray(0, alone?.rows.length));
});
