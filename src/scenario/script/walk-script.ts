import type { FactBody } from '#domain/fact.ts';
import { type Day, addDays } from '#units/day.ts';
import type { InventedPerson } from '../invented-person.ts';
import { dayOfFlight } from '../missions.ts';
import { momentOf } from '../moment.ts';
import { INES, KERTTU, RAFAEL } from '../people.ts';
import { PHYSICIAN, SPECIALIST } from '../signers.ts';
import { type ScriptEntry, correcting, entry } from './script-entry.ts';

/** Work outside the station: one walk behind, with the look at hands and shoulders after it; one ahead that moved twice. */
export const walkScript = (today: Day): readonly ScriptEntry[] => [
  ...[KERTTU, RAFAEL].flatMap((person) => [...walked(person, today), ...moved(person, today)]),
  entry('space walk ines', momentOf(addDays(today, -12), '10:50'), SPECIALIST.id, walk(INES, 47, today, 'Antenna.')),
];

const walk = (person: InventedPerson, flightDay: number, today: Day, text: string): FactBody => ({
  kind: 'space walk',
  person: person.id,
  day: dayOfFlight(person.mission, today, flightDay),
  text,
});

const WALKED_ON = 74;

const walked = (person: InventedPerson, today: Day): readonly ScriptEntry[] => {
  const day = dayOfFlight(person.mission, today, WALKED_ON);
  return [
    entry(
      `space walk ${person.id}`,
      momentOf(addDays(day, -15), '10:40'),
      SPECIALIST.id,
      walk(person, WALKED_ON, today, 'Six hours, two of them on the new radiator.'),
    ),
    entry(`looked at ${person.id}`, momentOf(addDays(day, 1), '09:20'), PHYSICIAN.id, {
      kind: 'looked at',
      person: person.id,
      day: addDays(day, 1),
      what: 'hands and shoulders',
      passed: true,
      observedBy: PHYSICIAN.name,
    }),
  ];
};

/** Flight days of the next walk, as it stood, with the day from today on which it was told. */
const NEXT: readonly (readonly [flightDay: number, told: number, why: string])[] = [
  [121, -33, ''],
  [126, -14, 'A pump in the airlock is changed first.'],
  [131, -4, 'The cargo vehicle comes five days later.'],
];

const moved = (person: InventedPerson, today: Day): readonly ScriptEntry[] =>
  NEXT.map(([flightDay, told, why], place) => {
    const name = `next space walk ${person.id} ${place}`;
    const body = walk(person, flightDay, today, 'Radiator, second half.');
    const moment = entry(name, momentOf(addDays(today, told), '10:30'), SPECIALIST.id, body);
    return place === 0 ? moment : correcting(`next space walk ${person.id} ${place - 1}`, why, moment);
  });
