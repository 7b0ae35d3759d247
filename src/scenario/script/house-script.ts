import { type Day, addDays } from '#units/day.ts';
import { momentOf } from '../moment.ts';
import { PHYSICIAN, SPECIALIST, deputy } from '../signers.ts';
import { STATION_MACHINE, scenarioHouse } from '../skerry-station.ts';
import { dayTakenUp } from '../taken-up.ts';
import { type ScriptEntry, entry } from './script-entry.ts';

/** From this day on the machine aboard pulls 4 % more than it is told: its belt was changed. */
const BELT_CHANGED = -18;
const FIRST_CALIBRATION = -140;

const NEW_BELT = 1.04;

const beltChanged = (today: Day): Day => addDays(today, BELT_CHANGED);

/** What the machine aboard truly pulls on a day, over what it is told. */
export const truePull =
  (today: Day) =>
  (day: Day): number =>
    day >= beltChanged(today) ? NEW_BELT : 1;

/** Who signs, what there is, and how true the machine aboard was found to be. */
export const houseScript = (today: Day): readonly ScriptEntry[] => {
  const first = dayTakenUp(today);
  const by = SPECIALIST.id;
  return [
    entry('signs specialist', momentOf(first, '08:00'), by, { kind: 'signs', signer: SPECIALIST }),
    ...scenarioHouse().map((body, place) => entry(`house ${place}`, momentOf(first, '08:01'), by, body)),
    entry('signs physician', momentOf(first, '08:10'), by, { kind: 'signs', signer: PHYSICIAN }),
    calibration(addDays(today, FIRST_CALIBRATION), '1.00'),
    calibration(beltChanged(today), NEW_BELT.toFixed(2)),
    entry('signs deputy', momentOf(addDays(today, -22), '15:40'), by, { kind: 'signs', signer: deputy(today) }),
  ];
};

const calibration = (day: Day, factor: string): ScriptEntry =>
  entry(`calibrated ${factor}`, momentOf(day, '16:20'), SPECIALIST.id, {
    kind: 'calibrated',
    machine: STATION_MACHINE.id,
    day,
    factor,
  });
