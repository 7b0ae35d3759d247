import { ageInYears, type Day } from '#units/day.ts';
import { showEntered } from '#units/entered.ts';
import { bodyMassOn, ofKind, type Known } from '#domain/known.ts';
import { dayOfAnchor, missionDay, showMissionDay, type Anchor } from '#domain/mission-day.ts';
import type { ProgrammeVersion } from '#domain/programme.ts';
import type { PersonId } from '#domain/identity.ts';
import { reportedOf } from '#following/reported.ts';
import type { Snapshot } from '#actions/snapshot.ts';
import type { PersonHead } from '#contract/windows/person-head.ts';
import type { PersonLine } from '#contract/windows/house-window.ts';

export const groupOf = ({ mission }: Known, today: Snapshot['today']): PersonLine['group'] => {
  if (!mission) return 'no mission';
  const { kind } = missionDay(mission, today);
  if (kind === 'before launch') return 'before launch';
  return kind === 'in flight' ? 'in flight' : 'returned';
};

/** "Skerry Station · flight day 23 of 182". */
export const dayLabelOf = ({ mission }: Known, today: Snapshot['today']): string => {
  if (!mission) return 'no mission';
  const place = missionDay(mission, today);
  const of = place.kind === 'in flight' && mission.landing ? ` of ${mission.landing.latest - mission.launch + 1}` : '';
  return `${mission.name} · ${showMissionDay(mission, today)}${of}`;
};

const GROUPS: readonly PersonLine['group'][] = ['in flight', 'before launch', 'returned', 'no mission'];

/** People in the order of the Desk: ours before another team's, in flight first, then as they were introduced. */
export const peopleInOrder = (snapshot: Snapshot): readonly Known[] =>
  snapshot.people
    .flatMap((person) => snapshot.known(person) ?? [])
    .map((known, place) => ({
      known,
      place,
      rank: GROUPS.indexOf(groupOf(known, snapshot.today)) + (isOurs(known) ? 0 : GROUPS.length),
    }))
    .sort((a, b) => a.rank - b.rank || a.place - b.place)
    .map(({ known }) => known);

export const isOurs = ({ assignment }: Known): boolean => assignment?.team !== 'another team';

export const personLine = (known: Known, today: Snapshot['today']): PersonLine => ({
  id: known.person,
  name: known.name,
  group: groupOf(known, today),
  mission: known.mission?.name ?? null,
  dayLabel: dayLabelOf(known, today),
});

export const personHead = (snapshot: Snapshot, known: Known): PersonHead => {
  const { today } = snapshot;
  const order = peopleInOrder(snapshot);
  const place = order.findIndex((each) => each.person === known.person);
  const next = order[(place + 1) % order.length];
  const road = snapshot.road(known.person);
  const { of, done, calledOff, notHeard } = road ? reportedOf(road) : NOTHING_REPORTED;
  return {
    id: known.person,
    name: known.name,
    sex: known.sex,
    age: known.birthDate === null ? null : ageInYears(known.birthDate, today),
    mission: missionOf(known),
    dayLabel: dayLabelOf(known, today),
    reported: { of, done, calledOff, notHeard },
    bodyMass: newestMass(known, today),
    stature: newestStature(known),
    next: next && next.person !== known.person ? { id: next.person, name: next.name } : null,
    place: place + 1,
    ofPeople: order.length,
    programme: programmeOf(known, today),
  };
};

const NOTHING_REPORTED = { of: 0, done: 0, calledOff: 0, notHeard: 0 };

const missionOf = ({ mission, assignment }: Known): PersonHead['mission'] =>
  mission && assignment
    ? { launch: mission.launch, landing: mission.landing, name: mission.name, role: assignment.role }
    : null;

const newestMass = (known: Known, today: Snapshot['today']): PersonHead['bodyMass'] => {
  const mass = bodyMassOn(known, today)?.fact;
  return mass?.what === 'body mass' ? { text: showEntered(mass.value), day: mass.day } : null;
};

const newestStature = (known: Known): string | null => {
  const stature = ofKind(known, 'measured').findLast((fact) => fact.what === 'stature');
  return stature ? showEntered(stature.value) : null;
};

/** The versions that somebody follows at some time: of each programme the one signed last, in order of their first day. */
export const followedBy = (known: Known): readonly Followed[] => {
  const signed = ofKind(known, 'decided').flatMap(({ decision }): readonly Followed[] => {
    if (decision.kind !== 'follow') return [];
    const version = known.house.programmes.get(decision.programme);
    return version ? [{ version, anchor: decision.from, from: dayOfAnchor(decision.from, known.mission) }] : [];
  });
  const lastOfEach = new Map(signed.map((each) => [each.version.programme, each] as const));
  return [...lastOfEach.values()].toSorted((a, b) => (a.from ?? Infinity) - (b.from ?? Infinity));
};

export interface Followed {
  readonly version: ProgrammeVersion;
  readonly anchor: Anchor;
  /** Null where it counts from a landing that is not known. */
  readonly from: Day | null;
}

/** What is followed today, else what comes first. */
const programmeOf = (known: Known, today: Day): string | null => {
  const followed = followedBy(known);
  const now = followed.findLast(({ from }) => from !== null && from <= today) ?? followed[0];
  return now ? `${now.version.name}, version ${now.version.number}` : null;
};

export const knownPerson = (snapshot: Snapshot, person: string): Known | null => snapshot.known(person as PersonId);
