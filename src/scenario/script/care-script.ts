import type { Setting } from '#domain/catalogue.ts';
import { idOf } from '#domain/identity.ts';
import { backSquat, deadlift, heelRaise } from '#shipped/exercises/lower-body.ts';
import { SET_PROGRAMME } from '#shipped/set-programme.ts';
import { type Day, addDays } from '#units/day.ts';
import { entered } from '#units/entered.ts';
import type { InventedPerson } from '../invented-person.ts';
import { launchDay } from '../missions.ts';
import { momentOf } from '../moment.ts';
import { ADAEZE, ANSELM, INES, KERTTU, MIRELA, OONA, RAFAEL, TOMAS, WEN_LI, YUSUF } from '../people.ts';
import { SPECIALIST, signerOn } from '../signers.ts';
import { STATION_MACHINE } from '../skerry-station.ts';
import { type ScriptEntry, decision, entry } from './script-entry.ts';

/** Who follows the set programme. */
export const FOLLOWERS: readonly InventedPerson[] = [INES, TOMAS, OONA, KERTTU, RAFAEL, MIRELA, YUSUF];

/** Who prepares on the ground by the programme, since yesterday's talk. */
export const PREPARING: readonly InventedPerson[] = [WEN_LI, ADAEZE, ANSELM];

/** What the specialist decided for one person: programme, settings, shares, adjustments. */
export const careScript = (today: Day): readonly ScriptEntry[] => [
  ...FOLLOWERS.map((person) => follows(person, today)),
  ...PREPARING.map((person) => prepares(person, today)),
  ...FOLLOWERS.flatMap((person, place) => settingsOf(person, place, today)),
  entry('carried mirela', momentOf(addDays(today, -4), '14:10'), SPECIALIST.id, {
    kind: 'carried',
    person: MIRELA.id,
    day: addDays(today, -19),
    load: entered('90', 'kg'),
  }),
  decision('adjust tomas', momentOf(addDays(today, -2), '15:20'), SPECIALIST.id, {
    kind: 'adjust',
    person: TOMAS.id,
    track: idOf('shoulder press'),
    change: { kind: 'leave out' },
    from: addDays(today, -1),
    until: addDays(today, 13),
    reason: 'Neck stiff in the mornings; agreed in the talk of flight day 21.',
  }),
  decision('share kerttu', momentOf(addDays(today, -55), '15:00'), SPECIALIST.id, {
    kind: 'replace body weight',
    person: KERTTU.id,
    exercise: backSquat.id,
    policy: { share: 0.8 },
    reason: 'Shoulders quiet for a month; more for knees and ankles.',
  }),
  decision('hold kerttu', momentOf(addDays(today, -20), '15:10'), signerOn(addDays(today, -20), today), {
    kind: 'adjust',
    person: KERTTU.id,
    track: idOf('squat heavy'),
    change: { kind: 'hold' },
    from: addDays(today, -19),
    until: addDays(today, -13),
    reason: 'Slept badly all week; her wish.',
  }),
];

const launchBefore = (person: InventedPerson, today: Day, days: number): Day =>
  addDays(launchDay(person.mission, today), -days);

const follows = (person: InventedPerson, today: Day): ScriptEntry =>
  decision(`follow ${person.id}`, momentOf(launchBefore(person, today, 20), '13:00'), SPECIALIST.id, {
    kind: 'follow',
    person: person.id,
    programme: SET_PROGRAMME.id,
    from: { from: 'launch', days: 0 },
  });

const prepares = (person: InventedPerson, today: Day): ScriptEntry =>
  decision(`prepare ${person.id}`, momentOf(addDays(today, -1), '16:30'), SPECIALIST.id, {
    kind: 'follow',
    person: person.id,
    programme: SET_PROGRAMME.id,
    from: { from: 'launch', days: today - launchDay(person.mission, today) },
  });

/** Hole numbers differ from person to person; nothing hangs on them. */
const settingsOf = (person: InventedPerson, place: number, today: Day): readonly ScriptEntry[] => {
  const at = momentOf(launchBefore(person, today, 14), '17:10');
  const setUps = [
    {
      exercise: backSquat.id,
      settings: [field('bar stop', `${12 + place}`), field('stance', '2'), field('shoulder pads', 'low')],
    },
    { exercise: deadlift.id, settings: [field('bar stop', '3'), field('straps', place % 2 === 0 ? 'short' : 'long')] },
    { exercise: heelRaise.id, settings: [field('bar stop', `${13 + place}`), field('block', 'in')] },
  ];
  return setUps.map(({ exercise, settings }) =>
    entry(`set up ${person.id} ${exercise}`, at, SPECIALIST.id, {
      kind: 'set up',
      person: person.id,
      machine: STATION_MACHINE.id,
      exercise,
      settings,
    }),
  );
};

const field = (name: string, value: string): Setting => ({ field: name, value, side: null });
