import type { FactId } from '#domain/identity.ts';
import { cellAt, columnThatIs, type Column, type Row } from '../layout/sheet-layout.ts';
import { spelling } from '../layout/spelling.ts';
import { passedOver, quoted, refusal } from '../place.ts';
import { readRole, readTeam } from '../values/read-words.ts';
import { BLANK_VALUE, saysNothing, valued, wrong, type Value } from '../values/value.ts';
import type { MissionsFound } from './read-missions.ts';
import type { Reading } from './reading.ts';
import type { Someone } from './someone.ts';

type Role = 'prime' | 'backup';
type Team = 'ours' | 'another team';
type Mission = NonNullable<ReturnType<MissionsFound['named']>>;

export interface AssignmentReading {
  readonly row: Row;
  readonly someone: Someone;
  readonly mission: Mission;
  readonly role: Role;
  readonly team: Team;
  readonly supersedes: FactId | null;
}

const aWord =
  <Kind>(read: (text: string) => Kind | null, expected: string) =>
  (text: string): Value<Kind> => {
    if (saysNothing(text)) return BLANK_VALUE;
    const value = read(text);
    return value === null
      ? wrong(
          `${quoted(text)} is not known here.`,
          `${expected} is expected.`,
          'Write one of these, or leave the cell empty.',
        )
      : valued(value);
  };

const askRole = ({ report }: Reading): Role | null => {
  const answer = report.ask({
    id: 'role of the people',
    about: 'role',
    asks: 'Are people without a role prime or backup?',
    because: 'The file assigns them to a mission and does not say which.',
    choices: [
      { answer: 'prime', says: 'prime' },
      { answer: 'backup', says: 'backup' },
    ],
  });
  return answer === 'prime' || answer === 'backup' ? answer : null;
};

const wordIn = <Kind>(
  row: Row,
  column: Column | null,
  read: (text: string) => Value<Kind>,
  { cells, report }: Reading,
): Kind | null | 'unsettled' => {
  if (!column) return null;
  const value = cells.text(row, column, read);
  return value.kind === 'blank' ? null : (report.take(row, column, value) ?? 'unsettled');
};

const assignmentIn = (
  row: Row,
  column: Column,
  missions: MissionsFound,
  reading: Reading,
): AssignmentReading | null => {
  const { columns } = reading.layout;
  const subject = reading.subjects.of(row);
  const text = cellAt(row, column)?.text ?? '';
  if (saysNothing(text) || (subject.kind !== 'someone' && subject.kind !== 'open')) return null;
  const told = wordIn(row, columnThatIs(columns, 'role'), aWord(readRole, 'Prime or backup'), reading);
  const team = wordIn(row, columnThatIs(columns, 'team'), aWord(readTeam, 'Ours or another team'), reading);
  const role = told ?? askRole(reading);
  const mission = missions.named(text);
  if (!mission || role === null || role === 'unsettled' || team === 'unsettled' || subject.kind === 'open') return null;
  return { row, someone: subject.someone, mission, role, team: team ?? 'ours', supersedes: null };
};

const onePerPerson = (
  assignments: readonly AssignmentReading[],
  column: Column,
  { report }: Reading,
): readonly AssignmentReading[] => {
  const first = new Map<string, AssignmentReading>();
  for (const assignment of assignments) {
    const { row, someone, mission, role, team } = assignment;
    const before = first.get(someone.id);
    if (!before) first.set(someone.id, assignment);
    else if (before.mission.id !== mission.id || before.role !== role || before.team !== team)
      report.say(
        refusal(
          {
            what: 'The assignment contradicts another row.',
            why: `Row ${before.row.number} assigns ${someone.name} otherwise.`,
            whatToDo: 'Correct one of them.',
          },
          row.number,
          column.place,
        ),
      );
  }
  return [...first.values()];
};

/** An assignment that differs from the record is changed only where a person says so. */
const againstRecord = (
  assignment: AssignmentReading,
  column: Column,
  { report, context }: Reading,
): AssignmentReading | null => {
  const { row, someone, mission, role } = assignment;
  const recorded = someone.onRecord?.assignment;
  if (!recorded) return assignment;
  const equal = recorded.mission === mission.id && recorded.role === role;
  const recordedName = context.missions.find(({ id }) => id === recorded.mission)?.name ?? 'another mission';
  const answer = equal
    ? 'record'
    : report.ask({
        id: `assignment, ${spelling(someone.name)}`,
        about: 'assignment',
        asks: `Is ${someone.name} now ${role} on ${mission.name}?`,
        because: `Recorded is ${recorded.role} on ${recordedName}.`,
        row: row.number,
        column,
        choices: [
          { answer: 'file', says: `yes: ${role} on ${mission.name}` },
          { answer: 'record', says: `no: keep ${recorded.role} on ${recordedName}` },
        ],
      });
  if (answer === 'file') return { ...assignment, supersedes: recorded.fact };
  if (answer === 'record')
    report.say(
      passedOver(
        {
          what: 'The assignment was passed over.',
          why: equal ? 'It is recorded already.' : 'You chose to keep what is recorded.',
          whatToDo: 'Nothing.',
        },
        row.number,
        column.place,
      ),
    );
  return null;
};

export const readAssignments = (reading: Reading, missions: MissionsFound): readonly AssignmentReading[] => {
  const column = columnThatIs(reading.layout.columns, 'mission');
  if (!column) return [];
  const found = reading.layout.rows.flatMap((row) => assignmentIn(row, column, missions, reading) ?? []);
  return onePerPerson(found, column, reading).flatMap((assignment) => againstRecord(assignment, column, reading) ?? []);
};
