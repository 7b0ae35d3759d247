import type { FactBody } from '#domain/fact.ts';
import { type Day, isoDay } from '#units/day.ts';
import { entered } from '#units/entered.ts';
import type { InventedPerson } from '../invented-person.ts';
import { SKERRY_22 } from '../missions.ts';
import { momentOf } from '../moment.ts';
import { ANSELM, INVENTED_PEOPLE, OONA, WEN_LI } from '../people.ts';
import { SPECIALIST } from '../signers.ts';
import { dayTakenUp } from '../taken-up.ts';
import { type ScriptEntry, entry } from './script-entry.ts';

/** Everybody as they were brought in on the first day. */
export const peopleScript = (today: Day): readonly ScriptEntry[] => {
  const day = dayTakenUp(today);
  return INVENTED_PEOPLE.flatMap((person) =>
    factsAbout(person, day).map((body) =>
      entry(`${body.kind} ${person.id}`, momentOf(day, '08:40'), SPECIALIST.id, body),
    ),
  );
};

const factsAbout = (person: InventedPerson, day: Day): readonly FactBody[] => [
  {
    kind: 'introduced',
    person: person.id,
    name: person.name,
    sex: person.sex,
    birthDate: person.team === 'ours' ? isoDay(person.birthDate) : null,
    trainingAge: person.trainingAge === null ? null : entered(person.trainingAge, 'years'),
  },
  ...(person.team === 'ours' ? [statureOf(person, day)] : []),
  assignmentAtFirst(person),
];

const statureOf = (person: InventedPerson, day: Day): FactBody => ({
  kind: 'measured',
  person: person.id,
  day,
  what: 'stature',
  value: entered(person.stature, 'cm'),
});

/** On the first day one was backup and another prime where it is the other way round today. */
const assignmentAtFirst = (person: InventedPerson): FactBody => ({
  kind: 'assigned',
  person: person.id,
  mission: person === WEN_LI ? SKERRY_22.id : person.mission,
  role: person === OONA || person === ANSELM ? 'backup' : 'prime',
  team: person.team,
  spaceWalks: person.spaceWalks,
});
