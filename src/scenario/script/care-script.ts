import type { Setting } from '#domain/catalogue.ts';
import { idOf } from '#domain/identity.ts';
import { backSquat, deadlift, heelRaise } from '#shipped/exercises/lower-body.ts';
import { SET_PROGRAMME } from '#shipped/set-programme.ts';
import { type Day, addDays } from '#units/day.ts';
import { entered } from '#units/entered.ts';
import type { InventedPerson } from '../invented-person.ts';
import { launchDay, missionWith } from '../missions.ts';
import { momentOf } from '../moment.ts';
import { ADAEZE, ANSELM, INES, JOON_HO, KERTTU, MIRELA, NOOR, OONA, RAFAEL, TOMAS, WEN_LI, YUSUF } from '../people.ts';
import { SPECIALIST, signerOn } from '../signers.ts';
import { STATION_MACHINE } from '../skerry-station.ts';
import { type ScriptEntry, decision, entry } from './script-entry.ts';

/** Who flies by the set programme, or is about to. */
export const FOLLOWERS: readonly InventedPerson[] = [INES, TOMAS, OONA, KERTTU, RAFAEL, MIRELA, YUSUF];

/** Who prepares on the ground by it, from how many days before today: two of them since yesterday's talk. */
export const PREPARING: readonly { readonly person: InventedPerson; readonly since: number }[] = [
  { person: WEN_LI, since: 28 },
  { person: ADAEZE, since: 0 },
  { person: ANSELM, since: 0 },
];

/** Who comes back by it, from landing day. */
export const RETURNING: readonly InventedPerson[] = [JOON_HO, NOOR];

/** What the specialist decided for one person: programme, settings, shares, adjustments. */
export const careScript = (today: Day): readonly ScriptEntry[] => [
  ...FOLLOWERS.map((person) => follows(person, today)),
  ...PREPARING.map(({ person, since }) => prepares(person, since, today)),
  ...RETURNING.map((person) => returns(person, today)),
  ...GATES_OF_NOOR.map((gate) =>
    entry(`judged noor ${gate}`, momentOf(addDays(today, -12), '15:30'), SPECIALIST.id, {
      kind: 'judged',
      person: NOOR.id,
      day: addDays(today, -12),
      gate,
      passed: true,
      observedBy: SPECIALIST.name,
      watched: 'in person',
    }),
  ),
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

/** Home again, nobody is sent under a bar before it was watched anew; hers stays a light one. */
const GATES_OF_NOOR = ['clearance gate', 'first squat gate', 'light load gate'] as const;

const launchBefore = (person: InventedPerson, today: Day, days: number): Day =>
  addDays(launchDay(person.mission, today), -days);

/** Whoever flies already was prepared by another programme, on paper. */
const TAPERING: readonly InventedPerson[] = [MIRELA, YUSUF];

const follows = (person: InventedPerson, today: Day): ScriptEntry =>
  decision(`follow ${person.id}`, momentOf(launchBefore(person, today, 20), '13:00'), SPECIALIST.id, {
    kind: 'follow',
    person: person.id,
    programme: SET_PROGRAMME.id,
    from: { from: 'launch', days: TAPERING.includes(person) ? -19 : 0 },
  });

const prepares = (person: InventedPerson, since: number, today: Day): ScriptEntry =>
  decision(`prepare ${person.id}`, momentOf(addDays(today, -since - 1), '16:30'), SPECIALIST.id, {
    kind: 'follow',
    person: person.id,
    programme: SET_PROGRAMME.id,
    from: { from: 'launch', days: today - since - launchDay(person.mission, today) },
  });

const returns = (person: InventedPerson, today: Day): ScriptEntry => {
  const landing = missionWith(person.mission).landing?.[1] ?? 0;
  return decision(`return ${person.id}`, momentOf(addDays(today, landing - 5), '13:20'), SPECIALIST.id, {
    kind: 'follow',
    person: person.id,
    programme: SET_PROGRAMME.id,
    from: { from: 'landing', days: 0 },
  });
};

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
