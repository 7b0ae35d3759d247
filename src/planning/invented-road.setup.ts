import { addDays, isoDay, type Day } from '#units/day.ts';
import { entered } from '#units/entered.ts';
import type { Decision } from '#domain/decision.ts';
import type { Fact, FactBody } from '#domain/fact.ts';
import { idOf, type PersonId } from '#domain/identity.ts';
import { logOf, type Line } from '#domain/invented-log.setup.ts';
import { knownAt, type Known, type Mission } from '#domain/known.ts';
import { endOfLog } from '#domain/log.ts';
import type { MissionDates } from '#domain/mission-day.ts';
import { takeUp, type PhaseName, type ProgrammeVersion } from '#domain/programme.ts';
import { SET_PROGRAMME } from '#shipped/set-programme.ts';
import { shippedFacts } from '#shipped/shipped-house.ts';

/* A person who prepares for two years under one programme and flies under another; nobody has planned the return yet. */

const partOf = (name: string, phases: readonly PhaseName[]): ProgrammeVersion => {
  const { id: _, ...content } = SET_PROGRAMME;
  return takeUp({
    ...content,
    programme: idOf(name),
    name,
    phases: content.phases.filter((phase) => phases.includes(phase.name)),
  });
};

export const PREPARATION_PROGRAMME = partOf('preparation', [
  'general preparation',
  'flight-specific preparation',
  'taper',
  'quarantine',
]);
export const FLIGHT_PROGRAMME = partOf('flight', ['first flight weeks', 'main flight', 'last flight weeks']);

export const PERSON: PersonId = idOf('person');
/** A Monday. */
export const LAUNCH = isoDay('2029-03-05');
export const LANDING = { earliest: addDays(LAUNCH, 170), latest: addDays(LAUNCH, 180) };

export const dated = (launch: Day, landing: MissionDates['landing']): FactBody => ({
  kind: 'dated',
  mission: idOf('tern-4'),
  name: 'Tern 4',
  site: idOf('aboard'),
  launch,
  landing,
});

export const assigned = (role: 'prime' | 'backup'): FactBody => ({
  kind: 'assigned',
  person: PERSON,
  mission: idOf('tern-4'),
  role,
  team: 'ours',
  spaceWalks: false,
});

export const decided = (decision: Decision): FactBody => ({
  kind: 'decided',
  decision,
  answers: null,
  basis: 0 as Fact['sequence'],
});

const follow = (programme: ProgrammeVersion, days: number): FactBody =>
  decided({ kind: 'follow', person: PERSON, programme: programme.id, from: { from: 'launch', days } });

export const tested = (day: Day, exercise = 'back-squat'): FactBody => ({
  kind: 'lifted',
  person: PERSON,
  day,
  exercise: idOf(exercise),
  machine: idOf('ground-free-bar'),
  load: entered('100', 'kg'),
  repetitions: 3,
  effort: { kind: 'repetitions in reserve', value: 0 },
  side: null,
});

const FIRST: readonly Line[] = [
  ...shippedFacts(),
  ...[PREPARATION_PROGRAMME, FLIGHT_PROGRAMME].map((version): FactBody => ({
    kind: 'catalogued',
    entry: { kind: 'programme', version },
  })),
  { kind: 'introduced', person: PERSON, name: 'Person', sex: 'female', birthDate: null, trainingAge: null },
  dated(LAUNCH, LANDING),
  assigned('prime'),
  { kind: 'measured', person: PERSON, day: addDays(LAUNCH, -730), what: 'body mass', value: entered('70', 'kg') },
  follow(PREPARATION_PROGRAMME, -730),
  follow(FLIGHT_PROGRAMME, 0),
];

/** Place in the log of the line that dates the mission, and of the one that assigns the person. */
export const DATED_IN = FIRST.findIndex((line) => 'kind' in line && line.kind === 'dated') + 1;
export const ASSIGNED_IN = DATED_IN + 1;

/** Place in the log of the first line that a test adds. */
export const ADDED_FROM = FIRST.length + 1;

export interface InventedRoad {
  readonly log: readonly Fact[];
  readonly known: Known;
}

export const inventedRoad = (...more: readonly Line[]): InventedRoad => {
  const log = logOf(...FIRST, ...more);
  const known = knownAt(log, PERSON, endOfLog(log));
  if (!known) throw new Error('Nobody was introduced.');
  return { log, known };
};

/** The same person with other dates: what a new date alone changes. */
export const withDates = (known: Known, dates: MissionDates): Known => ({
  ...known,
  mission: { ...(known.mission as Mission), ...dates },
});
