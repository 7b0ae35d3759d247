import type { Machine } from '#domain/catalogue.ts';
import type { MachineId } from '#domain/identity.ts';
import { catalogued } from '#shipped/shipped-house.ts';
import { type Day, addDays } from '#units/day.ts';
import { momentOf } from '../moment.ts';
import { SPECIALIST } from '../signers.ts';
import { TREADMILL, scenarioHouse } from '../skerry-station.ts';
import { type ScriptEntry, correcting, entry } from './script-entry.ts';

/** Days from today: the belt broke, and when it is to run again, as it was told at first and again. */
const BROKE = -5;
const BACK_AT_FIRST = -2;
const SLIPPED_ON = -3;
const BACK_NOW = 3;

/** Does a machine truly stand still on a day, whatever the ground has heard of it? */
export const isOutOn =
  (today: Day) =>
  (machine: MachineId, day: Day): boolean =>
    machine === TREADMILL.id && day >= addDays(today, BROKE) && day <= addDays(today, BACK_NOW);

/** The treadmill aboard is out of service, and its return slips. */
export const outageScript = (today: Day): readonly ScriptEntry[] => {
  const first = stands(today, 'treadmill out', BROKE, BACK_AT_FIRST, 'Belt torn at the seam; a new one is being cut.');
  const again = stands(
    today,
    'treadmill out longer',
    SLIPPED_ON,
    BACK_NOW,
    'Belt torn at the seam; the new one was cut too short.',
  );
  return [
    correcting(nameOfTreadmill(), 'Told by the crew in the morning.', first),
    correcting(first.name, 'Its return slips by five days.', again),
  ];
};

const stands = (today: Day, name: string, told: number, until: number, reason: string): ScriptEntry => {
  const machine: Machine = {
    ...TREADMILL,
    outOfService: { from: addDays(today, BROKE), until: addDays(today, until), reason },
  };
  return entry(name, momentOf(addDays(today, told), '11:35'), SPECIALIST.id, catalogued({ kind: 'machine', machine }));
};

/** The entry by which the treadmill came into the house. */
const nameOfTreadmill = (): string => {
  const place = scenarioHouse().findIndex(
    (fact) => fact.kind === 'catalogued' && fact.entry.kind === 'machine' && fact.entry.machine.id === TREADMILL.id,
  );
  return `house ${place}`;
};
