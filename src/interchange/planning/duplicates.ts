import { ratingOf } from '#domain/effort.ts';
import type { Fact } from '#domain/fact.ts';
import { kilogramsOf, type Entered } from '#units/entered.ts';
import { passedOver } from '../place.ts';
import type { BringInContext } from './context.ts';
import type { MeasurementReading } from './read-measurements.ts';
import type { Report } from './report.ts';
import { kilogramsIn, type TestReading } from './test-reading.ts';

/** Loads closer than a thousandth of a gram are the same load. */
const KILOGRAM_DECIMALS = 6;

const testKey = (parts: readonly (string | number | null)[], kilograms: number): string =>
  JSON.stringify([...parts, kilograms.toFixed(KILOGRAM_DECIMALS)]);

const keyOfReading = (test: TestReading): string =>
  testKey(
    [test.someone.id, test.day, test.exercise.id, test.machine.id, test.repetitions, test.side],
    kilogramsIn(test),
  );

const keyOfFact = (fact: Fact<'lifted'>): string =>
  testKey([fact.person, fact.day, fact.exercise, fact.machine, fact.repetitions, fact.side], kilogramsOf(fact.load));

const ratingIn = ({ effort }: TestReading): number => (effort === null ? 0 : ratingOf(effort));

/** Of equal tests the one whose set was hardest stands first: it claims least. Then the order no longer matters. */
const byClaim = (one: TestReading, other: TestReading): number =>
  ratingIn(other) - ratingIn(one) ||
  one.unit.localeCompare(other.unit, 'en') ||
  one.number.length - other.number.length ||
  one.row.number - other.row.number ||
  one.column.index - other.column.index;

const tellTwice = (test: TestReading, kept: TestReading, report: Report): void => {
  const effort = ratingIn(test) === ratingIn(kept) ? '' : ' The harder set of the two is kept.';
  report.say(
    passedOver(
      {
        what: `The test was passed over: row ${kept.row.number} is the same.`,
        why: `Person, day, exercise, machine, load and repetitions are equal.${effort}`,
        whatToDo: 'Nothing. Were they two different sets, type the second one in by hand.',
      },
      test.row.number,
      test.column.place,
    ),
  );
};

const tellRecorded = (row: number, column: TestReading['column'], what: string, report: Report): void =>
  report.say(
    passedOver(
      {
        what: `The ${what} was passed over: it is recorded already.`,
        why: 'Everything that matters is equal.',
        whatToDo: 'Nothing.',
      },
      row,
      column.place,
    ),
  );

const grouped = (tests: readonly TestReading[]): ReadonlyMap<string, readonly TestReading[]> => {
  const groups = new Map<string, TestReading[]>();
  for (const test of tests) {
    const key = keyOfReading(test);
    const group = groups.get(key);
    if (group) group.push(test);
    else groups.set(key, [test]);
  }
  return groups;
};

/** Tests that are neither twice in the file nor in the log. */
export const newTests = (
  tests: readonly TestReading[],
  { tests: recorded }: BringInContext,
  report: Report,
): readonly TestReading[] => {
  const inLog = new Set(recorded.map(keyOfFact));
  return [...grouped(tests)].flatMap(([key, group]) => {
    const [kept, ...others] = group.toSorted(byClaim);
    if (!kept) return [];
    if (inLog.has(key)) {
      for (const test of group) tellRecorded(test.row.number, test.column, 'test', report);
      return [];
    }
    for (const other of others) tellTwice(other, kept, report);
    return [kept];
  });
};

const measuredKey = (person: string, day: number, what: string, { text, unit }: Entered<string>): string =>
  JSON.stringify([person, day, what, Number(text), unit]);

/** Measurements that are not in the log. */
export const newMeasurements = (
  measurements: readonly MeasurementReading[],
  context: BringInContext,
  report: Report,
): readonly MeasurementReading[] => {
  const inLog = new Set(context.measurements.map((fact) => measuredKey(fact.person, fact.day, fact.what, fact.value)));
  return measurements.filter(({ row, column, someone, day, measured }) => {
    const isRecorded = inLog.has(measuredKey(someone.id, day, measured.what, measured.value));
    if (isRecorded) tellRecorded(row.number, column, measured.what, report);
    return !isRecorded;
  });
};
