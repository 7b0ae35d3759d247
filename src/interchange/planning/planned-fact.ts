import type { FactBody } from '#domain/fact.ts';
import type { FactId } from '#domain/identity.ts';
import { isoOfDay } from '#units/day.ts';
import { showEntered } from '#units/entered.ts';
import { showEffort } from '#domain/effort.ts';
import { quoted } from '../place.ts';
import { datesInWords } from './mission-dates.ts';
import type { AssignmentReading } from './read-assignments.ts';
import type { MeasurementReading } from './read-measurements.ts';
import type { MissionReading } from './read-missions.ts';
import type { Someone } from './someone.ts';
import type { NewPerson } from './subjects.ts';
import { kilogramsIn, type TestReading } from './test-reading.ts';

/** A fact that would be recorded. Its body names new people and missions by stand-ins until drafts are made. */
export interface PlannedFact {
  readonly body: FactBody;
  readonly supersedes: FactId | null;
  /** Where it came from, and what answers made of it. */
  readonly reason: string;
  readonly rows: readonly number[];
  readonly someone: Someone | null;
  /** The fact in words, for the preview. */
  readonly says: string;
  /** Place among facts of its kind, whatever the order of the rows. */
  readonly order: readonly (string | number)[];
}

const ROWS_NAMED = 5;

const broughtIn = (fileName: string, rows: readonly number[], changes: readonly string[] = []): string => {
  const named = rows.slice(0, ROWS_NAMED).join(', ');
  const more = rows.length > ROWS_NAMED ? ` and ${rows.length - ROWS_NAMED} more` : '';
  const changed = changes.length === 0 ? '' : ` Taken so: ${changes.join('; ')}.`;
  return `Brought in from ${quoted(fileName)}, ${rows.length === 1 ? 'row' : 'rows'} ${named}${more}.${changed}`;
};

const SHOWN_TENTHS = 10;

export const plannedTest = (test: TestReading, fileName: string): PlannedFact => {
  const { row, someone, day, exercise, machine, number, unit, repetitions, effort, side, changes } = test;
  const load = { text: number, unit };
  const kilograms = unit === 'kg' ? '' : ` (${Math.round(kilogramsIn(test) * SHOWN_TENTHS) / SHOWN_TENTHS} kg)`;
  const details = [side, effort && showEffort(effort), machine.name].filter((one) => one !== null);
  return {
    body: {
      kind: 'lifted',
      person: someone.id,
      day,
      exercise: exercise.id,
      machine: machine.id,
      load,
      repetitions,
      effort,
      side,
    },
    supersedes: null,
    reason: broughtIn(fileName, [row.number], changes),
    rows: [row.number],
    someone,
    says: `${isoOfDay(day)} ${exercise.name} ${showEntered(load)}${kilograms} × ${repetitions}, ${details.join(', ')}`,
    order: [day, exercise.id, machine.id, repetitions, side ?? '', kilogramsIn(test)],
  };
};

export const plannedMeasurement = (
  { row, someone, day, measured }: MeasurementReading,
  fileName: string,
): PlannedFact => ({
  body: { kind: 'measured', person: someone.id, day, ...measured },
  supersedes: null,
  reason: broughtIn(fileName, [row.number]),
  rows: [row.number],
  someone,
  says: `${isoOfDay(day)} ${measured.what} ${showEntered(measured.value)}`,
  order: [day, measured.what],
});

export const plannedPerson = (
  { someone, sex, birthDate, trainingAge, rows }: NewPerson,
  fileName: string,
): PlannedFact => {
  const years = trainingAge === null ? null : ({ text: trainingAge, unit: 'years' } as const);
  const details = [
    sex,
    birthDate === null ? null : `born ${isoOfDay(birthDate)}`,
    years && `training age ${showEntered(years)}`,
  ];
  return {
    body: { kind: 'introduced', person: someone.id, name: someone.name, sex, birthDate, trainingAge: years },
    supersedes: null,
    reason: broughtIn(fileName, rows),
    rows,
    someone,
    says: `new: ${details.filter((one) => one !== null).join(', ')}`,
    order: [],
  };
};

export const plannedMission = (
  { id, name, site, dates, supersedes, rows }: MissionReading,
  fileName: string,
): PlannedFact => ({
  body: { kind: 'dated', mission: id, name, site, launch: dates.launch, landing: dates.landing },
  supersedes,
  reason: broughtIn(fileName, rows, supersedes === null ? [] : ['the mission has moved']),
  rows,
  someone: null,
  says: `${name}: ${datesInWords(dates)}`,
  order: [name],
});

export const plannedAssignment = (
  { row, someone, mission, role, team, supersedes }: AssignmentReading,
  fileName: string,
): PlannedFact => ({
  body: { kind: 'assigned', person: someone.id, mission: mission.id, role, team, spaceWalks: false },
  supersedes,
  reason: broughtIn(fileName, [row.number], supersedes === null ? [] : ['the assignment has changed']),
  rows: [row.number],
  someone,
  says: `${role} on ${mission.name}${team === 'ours' ? '' : ', another team'}`,
  order: [mission.name],
});

const KINDS: readonly FactBody['kind'][] = ['dated', 'introduced', 'assigned', 'measured', 'lifted'];

const compared = (one: string | number, other: string | number): number =>
  typeof one === 'number' && typeof other === 'number'
    ? one - other
    : String(one) < String(other)
      ? -1
      : String(one) > String(other)
        ? 1
        : 0;

const keyOf = ({ body, someone, order }: PlannedFact): readonly (string | number)[] => [
  KINDS.indexOf(body.kind),
  someone?.name ?? '',
  someone?.id ?? '',
  ...order,
];

/** Missions, people, assignments, measurements, tests; within them by name and day: the order of the rows is forgotten. */
export const inOrder = (facts: readonly PlannedFact[]): readonly PlannedFact[] => {
  const keyed = facts.map((fact) => ({ fact, key: keyOf(fact) }));
  const byKey = keyed.toSorted(({ key: one }, { key: other }) => {
    const place = one.findIndex((part, index) => compared(part, other[index] ?? '') !== 0);
    return place < 0 ? 0 : compared(one[place] ?? '', other[place] ?? '');
  });
  return byKey.map(({ fact }) => fact);
};
