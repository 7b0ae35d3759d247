import type {
  BringInAnswers,
  BringInWindow,
  Issue,
  Matching,
  MatchingByHand,
  Question,
  Sheet,
  TableReading,
} from '#contract/bring-in.ts';
import { findLayout } from './layout/find-layout.ts';
import type { Column, SheetLayout } from './layout/sheet-layout.ts';
import { columnIndex, refusal } from './place.ts';
import { makeCellReader } from './planning/cell-reader.ts';
import type { BringInContext } from './planning/context.ts';
import { daysOfRows } from './planning/day-of-row.ts';
import { newMeasurements, newTests } from './planning/duplicates.ts';
import {
  inOrder,
  plannedAssignment,
  plannedMeasurement,
  plannedMission,
  plannedPerson,
  plannedTest,
  type PlannedFact,
} from './planning/planned-fact.ts';
import { previewOf } from './planning/preview.ts';
import { readAssignments } from './planning/read-assignments.ts';
import { readMeasurements } from './planning/read-measurements.ts';
import { readMissions } from './planning/read-missions.ts';
import { readTests } from './planning/read-tests.ts';
import type { Reading } from './planning/reading.ts';
import { examplesIn, makeReport, type Report } from './planning/report.ts';
import { findSubjects } from './planning/subjects.ts';
import { unitsOfColumns } from './planning/units-of-columns.ts';
import { withLikelyLoads } from './planning/unlikely-loads.ts';

/** What a file would bring, with everything that must be settled before. */
export interface BringInPlan extends BringInWindow {
  /** All that would be recorded; drafts are made of it only where the plan is ready. */
  readonly facts: readonly PlannedFact[];
}

export interface BringInOptions {
  readonly matching?: MatchingByHand | null;
  readonly answers: BringInAnswers;
  readonly context: BringInContext;
}

const chosenSheet = (sheets: readonly Sheet[], wanted: string | null, report: Report): Sheet | null => {
  const filled = sheets.filter(({ rows }) => rows.length > 0);
  const [only, ...more] = filled;
  if (wanted !== null) return filled.find(({ name }) => name === wanted) ?? null;
  if (only && more.length === 0) return only;
  const answer = report.ask({
    id: 'sheet',
    about: 'sheet',
    asks: 'Which sheet?',
    because: `The workbook has ${filled.length} sheets that hold something; one is brought in at a time.`,
    choices: filled.map(({ name, rows }) => ({ answer: name, says: `${name}, ${rows.length} rows` })),
  });
  return filled.find(({ name }) => name === answer) ?? null;
};

const isForeign = ({ meaning }: Column, { exercises }: BringInContext): boolean =>
  meaning.is === 'lift' && !exercises.some(({ id }) => id === meaning.exercise);

const plannedFacts = (
  layout: SheetLayout,
  fileName: string,
  context: BringInContext,
  report: Report,
): readonly PlannedFact[] => {
  const cells = makeCellReader(layout, report);
  const reading: Reading = {
    layout,
    cells,
    context,
    report,
    subjects: findSubjects(layout, cells, context, report),
    dayOf: daysOfRows(layout, cells, context.today, report),
    unitOf: unitsOfColumns(layout, report),
  };
  const missions = readMissions(reading);
  const assignments = readAssignments(reading, missions);
  const measurements = readMeasurements(reading);
  const likely = withLikelyLoads(newTests(readTests(reading), context, report), measurements, reading);
  return inOrder([
    ...missions.toRecord.map((mission) => plannedMission(mission, fileName)),
    ...reading.subjects.newPeople.map((person) => plannedPerson(person, fileName)),
    ...assignments.map((assignment) => plannedAssignment(assignment, fileName)),
    ...newMeasurements(measurements, context, report).map((measurement) => plannedMeasurement(measurement, fileName)),
    ...newTests(likely, context, report).map((test) => plannedTest(test, fileName)),
  ]);
};

const matchingOf = (sheet: Sheet, layout: SheetLayout): Matching => ({
  sheet: sheet.name,
  headerRow: layout.headerRow,
  columns: layout.columns.map((column) => ({
    ...column.place,
    meaning: column.meaning,
    by: column.by,
    examples: examplesIn(layout.rows, column),
  })),
});

const NO_MATCHING: Matching = { sheet: '', headerRow: null, columns: [] };

const byPlace = (one: Issue, other: Issue): number =>
  (one.row ?? 0) - (other.row ?? 0) || columnIndex(one.column?.letter ?? '') - columnIndex(other.column?.letter ?? '');

const openFirst = (questions: readonly Question[]): readonly Question[] => [
  ...questions.filter(({ answer }) => answer === null),
  ...questions.filter(({ answer }) => answer !== null),
];

const planOf = (
  matching: Matching,
  facts: readonly PlannedFact[],
  before: readonly Issue[],
  report: Report,
): BringInPlan => {
  const issues = [...before, ...report.issues()].toSorted(byPlace);
  const questions = report.questions();
  const settled = questions.every(({ answer }) => answer !== null) && issues.every(({ kind }) => kind !== 'refused');
  return {
    matching,
    questions: openFirst(questions),
    problems: issues.filter(({ kind }) => kind !== 'passed over'),
    preview: previewOf(facts, issues),
    ready: settled && facts.length > 0,
    facts,
  };
};

const NO_SUCH_SHEET = refusal({
  what: 'The chosen sheet is not in the file or holds nothing.',
  why: 'The matching was made for another file.',
  whatToDo: 'Choose a sheet of this file.',
});
const NO_SUCH_EXERCISE = {
  what: 'The exercise of the column is not in the catalogue.',
  why: 'The matching was made with another catalogue.',
  whatToDo: 'Match the column again.',
};

/**
 * Looks through a table that was read and says all at once what it would bring, what must be answered, what is refused
 * and what is passed over. Pure: asked again with more answers it says the same of everything else.
 */
export const planBringIn = (
  table: TableReading,
  { matching = null, answers, context }: BringInOptions,
): BringInPlan => {
  const report = makeReport(answers);
  if (table.kind === 'refused') return planOf(NO_MATCHING, [], table.issues, report);
  const sheet = chosenSheet(table.sheets, matching?.sheet ?? null, report);
  if (!sheet) {
    const issues = matching?.sheet ? [...table.issues, NO_SUCH_SHEET] : table.issues;
    return planOf(NO_MATCHING, [], issues, report);
  }
  const read = [...table.issues, ...sheet.issues];
  const layout = findLayout(sheet, context.exercises, matching);
  if ('refused' in layout) return planOf({ ...NO_MATCHING, sheet: sheet.name }, [], [...read, layout.refused], report);
  const foreign = layout.columns
    .filter((column) => isForeign(column, context))
    .map(({ place }) => refusal(NO_SUCH_EXERCISE, null, place));
  const facts = plannedFacts(layout, table.fileName, context, report);
  return planOf(matchingOf(sheet, layout), facts, [...read, ...layout.issues, ...foreign], report);
};

/** The plan as a screen gets it. */
export const windowOf = ({ matching, questions, problems, preview, ready }: BringInPlan): BringInWindow => ({
  matching,
  questions,
  problems,
  preview,
  ready,
});
