import { liftsOf, type CardLift } from '#domain/card.ts';
import { onFlightDay, Rehearsal } from './rehearsal.ts';
import { WORKED_PERSON } from './worked.ts';

export const person = WORKED_PERSON;
/** First flight day with both ramps at their top, for somebody who trains as planned. */
export const TOP = 32;

/** Lived to the first load with both ramps at their top: heavy squat 295 lb on flight day 32. */
export const atTheTop = (): Rehearsal => livedAsPlanned(TOP - 1);

/** Every session trained as planned up to the end of a flight day, to be gone on with by every test in its own way. */
export const livedAsPlanned = (flightDay: number): Rehearsal => {
  for (let day = ends.length; day <= flightDay; day += 1) {
    flight.live(day, day);
    ends[day] = flight.fork();
  }
  return (ends[flightDay] as Rehearsal).fork();
};

/** Lived once, as far as any test has asked. */
const flight = new Rehearsal(person);
/** The flight at the end of each flight day; 0: before the first. */
const ends: Rehearsal[] = [flight.fork()];

export const heavySquat = (rehearsal: Rehearsal, flightDay: number): CardLift => {
  const card = rehearsal.road(onFlightDay(flightDay), 1).cards.find((each) => each.state === 'planned');
  const item = card?.state === 'planned' ? liftsOf(card.card).find((each) => each.track === 'squat heavy') : undefined;
  if (!item) throw new Error(`No heavy squat is planned on flight day ${flightDay}.`);
  return item;
};
