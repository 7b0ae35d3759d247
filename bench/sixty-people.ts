import type { Day } from '#units/day.ts';
import { entered } from '#units/entered.ts';
import { idOf, instant } from '#domain/identity.ts';
import { knownAt, type Known } from '#domain/known.ts';
import { endOfLog, enterInLog } from '#domain/log.ts';
import type { Fact, FactBody, Sequence } from '#domain/fact.ts';
import { SET_PROGRAMME } from '#shipped/set-programme.ts';
import { shippedFacts } from '#shipped/shipped-house.ts';

export const PEOPLE = 60;
const LIFTS = ['back-squat', 'deadlift', 'heel-raise', 'bench-press'];

interface Team {
  readonly launch: Day;
  readonly landing: Day;
  /** Day on which everybody's body mass and four lifts were measured. */
  readonly tested: Day;
  /** From which day before or after launch the shipped programme is followed. */
  readonly followedFrom: number;
  readonly walks: (place: number) => boolean;
  /** What else is recorded of a person. */
  readonly more?: (place: number) => readonly FactBody[];
}

const personOf = ({ tested, followedFrom, walks, more }: Team, place: number): readonly FactBody[] => {
  const person = idOf<'person'>(`p${place}`);
  const sex = place % 2 ? 'male' : 'female';
  return [
    { kind: 'introduced', person, name: `Person ${place}`, sex, birthDate: null, trainingAge: null },
    { kind: 'assigned', person, mission: idOf('m'), role: 'prime', team: 'ours', spaceWalks: walks(place) },
    { kind: 'measured', person, day: tested, what: 'body mass', value: entered(String(55 + place), 'kg') },
    ...LIFTS.map((lift): FactBody => ({
      kind: 'lifted',
      person,
      day: tested,
      exercise: idOf(lift),
      machine: idOf('ground-free-bar'),
      load: entered(String(60 + place), 'kg'),
      repetitions: 5,
      effort: { kind: 'repetitions in reserve', value: 1 },
      side: null,
    })),
    ...(more?.(place) ?? []),
    {
      kind: 'decided',
      answers: null,
      basis: 0 as Sequence,
      decision: {
        kind: 'follow',
        person,
        programme: SET_PROGRAMME.id,
        from: { from: 'launch', days: followedFrom },
      },
    },
  ];
};

/** A team's sixty people on one mission, in the shipped house, all following the shipped programme, and what was recorded of them. */
export const sixtyPeople = (team: Team): { readonly log: readonly Fact[]; readonly people: readonly Known[] } => {
  const { launch, landing } = team;
  const bodies: readonly FactBody[] = [
    ...shippedFacts(),
    {
      kind: 'dated',
      mission: idOf('m'),
      name: 'A mission',
      site: idOf('aboard'),
      launch,
      landing: { earliest: landing, latest: landing },
    },
    ...Array.from({ length: PEOPLE }, (_, place) => personOf(team, place)).flat(),
  ];
  const log = bodies.map((body, place) =>
    enterInLog(
      { id: idOf(`f${place}`), body, recordedBy: idOf('s'), supersedes: null, reason: null },
      (place + 1) as Sequence,
      instant('2025-01-01T00:00:00.000Z'),
    ),
  );
  const people = Array.from({ length: PEOPLE }, (_, place) => knownAt(log, idOf(`p${place}`), endOfLog(log)));
  return { log, people: people.filter((known) => known !== null) };
};
