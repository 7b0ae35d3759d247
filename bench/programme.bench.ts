import { addDays, isoDay } from '#units/day.ts';
import type { Known } from '#domain/known.ts';
import { takeUp, type ProgrammeItem, type ProgrammeVersion } from '#domain/programme.ts';
import { programmeDifference } from '#domain/programme-difference.ts';
import { readLine } from '#domain/programme-line/read-line.ts';
import { COMPARED_DAYS, comparePerson, firstDayOn, houseWith } from '#planning/compare-programme.ts';
import { derive } from '#planning/derive.ts';
import { SHIPPED_EXERCISES } from '#shipped/exercises/shipped-exercises.ts';
import { SET_PROGRAMME } from '#shipped/set-programme.ts';
import { compare, measure, present } from './measure.ts';
import { PEOPLE, sixtyPeople } from './sixty-people.ts';

/** One edit of one programme, and what it changes in four weeks for a team's sixty people in the middle of a flight. */
const LAUNCH = isoDay('2027-03-01');
const TODAY = addDays(LAUNCH, 40);
const LANDING = addDays(LAUNCH, 170);
const { people } = sixtyPeople({
  launch: LAUNCH,
  landing: LANDING,
  tested: addDays(LAUNCH, -7),
  followedFrom: 0,
  walks: () => false,
});
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
