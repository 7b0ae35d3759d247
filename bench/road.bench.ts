import { addDays, isoDay } from '#units/day.ts';
import { entered } from '#units/entered.ts';
import { idOf, instant } from '#domain/identity.ts';
import { knownAt, type Known } from '#domain/known.ts';
import { endOfLog, enterInLog } from '#domain/log.ts';
import type { Fact, FactBody, Sequence } from '#domain/fact.ts';
import { asIfDecided } from '#planning/as-if.ts';
import { derive } from '#planning/derive.ts';
import { SET_PROGRAMME } from '#shipped/set-programme.ts';
import { shippedFacts } from '#shipped/shipped-house.ts';
import { measure, present } from './measure.ts';

/** Two years before launch to the end of a flight of half a year, for a team's sixty people. */
const LAUNCH = isoDay('2027-03-01');
const FIRST = addDays(LAUNCH, -730);
const LANDING = addDays(LAUNCH, 170);
const PEOPLE = 60;
const LIFTS = ['back-squat', 'deadlift', 'heel-raise', 'bench-press'];

const factsOf = (place: number): readonly FactBody[] => {
  const person = idOf<'person'>(`p${place}`);
  const follow = (programme: typeof SET_PROGRAMME, days: number): FactBody => ({
    kind: 'decided',
    answers: null,
    basis: 0 as Sequence,
    decision: { kind: 'follow', person, programme: programme.id, from: { from: 'launch', days } },
  });
  return [
    {
      kind: 'introduced',
      person,
      name: `Person ${place}`,
      sex: place % 2 ? 'male' : 'female',
      birthDate: null,
      trainingAge: null,
    },
    { kind: 'assigned', person, mission: idOf('m'), role: 'prime', team: 'ours', spaceWalks: false },
    { kind: 'measured', person, day: addDays(FIRST, -7), what: 'body mass', value: entered(String(55 + place), 'kg') },
    ...LIFTS.map((lift): FactBody => ({
      kind: 'lifted',
      person,
      day: addDays(FIRST, -7),
      exercise: idOf(lift),
      machine: idOf('ground-free-bar'),
      load: entered(String(60 + place), 'kg'),
      repetitions: 5,
      effort: { kind: 'repetitions in reserve', value: 1 },
      side: null,
    })),
    follow(SET_PROGRAMME, -730),
    follow(SET_PROGRAMME, 0),
  ];
};

const bodies: readonly FactBody[] = [
  ...shippedFacts(),
  {
    kind: 'dated',
    mission: idOf('m'),
    name: 'A mission',
    site: idOf('aboard'),
    launch: LAUNCH,
    landing: { earliest: LANDING, latest: LANDING },
  },
  ...Array.from({ length: PEOPLE }, (_, place) => factsOf(place)).flat(),
];

const log: readonly Fact[] = bodies.map((body, place) =>
  enterInLog(
    { id: idOf(`f${place}`), body, recordedBy: idOf('s'), supersedes: null, reason: null },
    (place + 1) as Sequence,
    instant('2025-01-01T00:00:00.000Z'),
  ),
);

const people = Array.from({ length: PEOPLE }, (_, place) => knownAt(log, idOf(`p${place}`), endOfLog(log))).filter(
  (known) => known !== null,
);
const roadOf = (known: Known) => derive(known, FIRST, LANDING);
const cards = roadOf(people[0] as Known).cards.length;

/** One stroke of the keyboard on the sheet: what a line of shorthand makes of a day a week ahead. */
const lookAt = (known: Known) =>
  derive(
    asIfDecided(known, {
      kind: 'adjust',
      person: known.person,
      track: idOf('general squat'),
      change: { kind: 'as written', line: '4 × 6 @ 75 %' },
      from: addDays(FIRST, 7),
      until: addDays(FIRST, 7),
      reason: 'looked at',
    }),
    FIRST,
    addDays(FIRST, 7),
  );

present(`The whole road (900 days, ${cards} sessions)`, [
  await measure('one person', () => roadOf(people[0] as Known), { aimMilliseconds: 50 }),
  await measure('sixty people', () => people.map(roadOf)),
  await measure('one stroke on the sheet', () => lookAt(people[0] as Known), { aimMilliseconds: 16 }),
]);
