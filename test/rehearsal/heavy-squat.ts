import { liftsOf, type CardLift } from '#domain/card.ts';
import { onFlightDay, Rehearsal } from './rehearsal.ts';

export const person = { sex: 'female', mass: '71.4', squat: '104.714', deadlift: '120', heaviestBar: '102.5' } as const;
/** First flight day with both ramps at their top, for somebody who trains as planned. */
export const TOP = 32;

/** Lived to the first load with both ramps at their top: heavy squat 295 lb on flight day 32. */
export const atTheTop = (): Rehearsal => {
  lived ??= livedToTheTop();
  return lived.fork();
};

/** Lived once, and gone on with by every test in its own way. */
let lived: Rehearsal | null = null;

const livedToTheTop = (): Rehearsal => {
  const rehearsal = new Rehearsal(person);
  rehearsal.live(1, TOP - 1);
  return rehearsal;
};

export const heavySquat = (rehearsal: Rehearsal, flightDay: number): CardLift => {
  const card = rehearsal.road(onFlightDay(flightDay), 1).cards.find((each) => each.state === 'planned');
  const item = card?.state === 'planned' ? liftsOf(card.card).find((each) => each.track === 'squat heavy') : undefined;
  if (!item) throw new Error(`No heavy squat is planned on flight day ${flightDay}.`);
  return item;
};
