import { addDays, isoDay } from '#units/day.ts';
import { entered } from '#units/entered.ts';
import { idOf, instant } from '#domain/identity.ts';
import { knownAt, type Known } from '#domain/known.ts';
import { endOfLog, enterInLog } from '#domain/log.ts';
import type { Fact, FactBody, Sequence } from '#domain/fact.ts';
import { takeUp, type ProgrammeItem, type ProgrammeVersion } from '#domain/programme.ts';
import { programmeDifference } from '#domain/programme-difference.ts';
import { readLine } from '#domain/programme-line/read-line.ts';
import { COMPARED_DAYS, comparePerson, firstDayOn, houseWith } from '#planning/compare-programme.ts';
import { derive } from '#planning/derive.ts';
import { SHIPPED_EXERCISES } from '#shipped/exercises/shipped-exercises.ts';
import { SET_PROGRAMME } from '#shipped/set-programme.ts';
import { shippedFacts } from '#shipped/shipped-house.ts';
import { compare, measure, present } from './measure.ts';

/** One edit of one programme, and what it changes in four weeks for a team's sixty people in the middle of a flight. */
const LAUNCH = isoDay('2027-03-01');
const TODAY = addDays(LAUNCH, 40);
const LANDING = addDays(LAUNCH, 170);
const PEOPLE = 60;
const LIFTS = ['back-squat', 'deadlift', 'heel-raise', 'bench-press'];

const factsOf = (place: number): readonly FactBody[] => {
  const person = idOf<'person'>(`p${place}`);
  const sex = place % 2 ? 'male' : 'female';
  return [
    { kind: 'introduced', person, name: `Person ${place}`, sex, birthDate: null, trainingAge: null },
    { kind: 'assigned', person, mission: idOf('m'), role: 'prime', team: 'ours', spaceWalks: false },
    { kind: 'measured', person, day: addDays(LAUNCH, -7), what: 'body mass', value: entered(String(55 + place), 'kg') },
    ...LIFTS.map((lift): FactBody => ({
      kind: 'lifted',
      person,
      day: addDays(LAUNCH, -7),
      exercise: idOf(lift),
      machine: idOf('ground-free-bar'),
      load: entered(String(60 + place), 'kg'),
      repetitions: 5,
      effort: { kind: 'repetitions in reserve', value: 1 },
      side: null,
    })),
    {
      kind: 'decided',
      answers: null,
      basis: 0 as Sequence,
      decision: { kind: 'follow', person, programme: SET_PROGRAMME.id, from: { from: 'launch', days: 0 } },
    },
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
    instant('2027-01-01T00:00:00.000Z'),
  ),
);

const people = Array.from({ length: PEOPLE }, (_, place) => knownAt(log, idOf(`p${place}`), endOfLog(log))).filter(
  (known) => known !== null,
);
const { house } = people[0] as Known;

/** One line typed anew: the first back squat of the programme. */
const editedLine = (item: ProgrammeItem): ProgrammeItem => {
  const reading = readLine('Back squat 5 × 5 @ 80 %, rest 3:00', {
    exercises: SHIPPED_EXERCISES,
    before: item,
    place: {
      newId: () => item.id,
      trackFor: () => item.track,
      isLed: () => false,
      machineKinds: ['resistive machine'],
      lowestPriority: 1,
    },
  });
  return reading.kind === 'item' ? reading.item : item;
};

const edited = (): ProgrammeVersion => {
  const { id, ...content } = SET_PROGRAMME;
  const phases = content.phases.map((phase) => ({
    ...phase,
    sessions: phase.sessions.map((session) => ({
      ...session,
      items: session.items.map((item) => (item.exercise === 'back-squat' ? editedLine(item) : item)),
    })),
  }));
  return takeUp({ ...content, number: content.number + 1, follows: id, phases });
};

const roadOf = (known: Known) => derive(known, TODAY, addDays(TODAY, COMPARED_DAYS - 1));
const roads = people.map(roadOf);

/** The same person as if just read from the log: nothing that was read for them before is at hand. */
const anew = (known: Known): Known => ({ ...known, facts: [...known.facts] });

const compareAll = () => {
  const version = edited();
  const looked = { version, house: houseWith(house, version) };
  return people.map((known, place) => {
    const road = roads[place];
    const from = firstDayOn(known, version.programme, TODAY);
    return road && from !== null ? comparePerson(known, road, looked, from) : null;
  });
};

const changed = compareAll().filter((each) => each !== null && each.sessions.length > 0).length;
const exercises = new Map(SHIPPED_EXERCISES.map((exercise) => [exercise.id, exercise]));
const next = edited();

present(`One edit of one programme, and its comparison (${changed} of ${PEOPLE} people change)`, [
  await compare(
    'comparison against one derive of all',
    { name: `edit, derive and compare ${COMPARED_DAYS} days for ${PEOPLE}`, work: compareAll },
    {
      name: `derive ${COMPARED_DAYS} days for ${PEOPLE}, anew`,
      work: () => people.map((known) => roadOf(anew(known))),
    },
  ),
  await measure('the difference of two versions in sentences', () =>
    programmeDifference(SET_PROGRAMME, next, exercises),
  ),
]);
