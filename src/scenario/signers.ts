import type { Signer } from '#domain/fact.ts';
import { idOf, type SignerId } from '#domain/identity.ts';
import { type Day, addDays } from '#units/day.ts';

export const SPECIALIST: Signer = {
  id: idOf('maud-arkwright'),
  name: 'Maud Arkwright',
  role: 'specialist',
  signsFor: null,
  from: null,
  until: null,
};

export const PHYSICIAN: Signer = {
  id: idOf('bram-oyelaran'),
  name: 'Bram Oyelaran',
  role: 'physician',
  signsFor: null,
  from: null,
  until: null,
};

/** Days from today in which the deputy signs for the specialist. */
const DEPUTY_FROM = -21;
const DEPUTY_UNTIL = -12;

export const deputy = (today: Day): Signer => ({
  id: idOf('ilse-tennant'),
  name: 'Ilse Tennant',
  role: 'deputy',
  signsFor: SPECIALIST.id,
  from: addDays(today, DEPUTY_FROM),
  until: addDays(today, DEPUTY_UNTIL),
});

/** Who is at the desk on a day. */
export const signerOn = (day: Day, today: Day): SignerId => {
  const standIn = deputy(today);
  const away = day >= (standIn.from ?? Infinity) && day <= (standIn.until ?? -Infinity);
  return away ? standIn.id : SPECIALIST.id;
};
