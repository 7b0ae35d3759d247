import type { Effort } from '#domain/effort.ts';
import type { MassUnit } from '#units/mass.ts';
import { cellAt } from '../layout/sheet-layout.ts';
import { readLoad, type LoadText } from '../values/read-load.ts';
import { effortOfNoLift } from './columns-beside-lift.ts';
import { countedLoad } from './counting-of-loads.ts';
import { exercisesOfTests } from './exercises-of-tests.ts';
import { mayStand } from './judge-cell.ts';
import { machinesOfTests, type MachineOf } from './machines-of-tests.ts';
import { partsOfTests, type Parts } from './parts-of-tests.ts';
import { judgedEffort, judgedLoad } from './possible.ts';
import { effortIn, sideIn } from './read-effort-and-side.ts';
import type { Reading } from './reading.ts';
import { repetitionsOfTest } from './repetitions-of-test.ts';
import { kilogramsIn, type TestReading } from './test-reading.ts';

const typedEffort = (text: LoadText | null, parts: Parts, { cells, report }: Reading): Effort | null | 'wrong' => {
  if (!text || text.effort === null) return effortIn(parts.row, parts.efforts, cells, report);
  return mayStand(judgedEffort(text.effort.kind, text.effort.value), parts.row, parts.load, report)
    ? text.effort
    : 'wrong';
};

interface Load {
  readonly number: string;
  readonly unit: MassUnit;
  readonly changes: readonly string[];
}

const loadIn = (text: LoadText, parts: Parts, { layout, report, unitOf }: Reading): Load | null => {
  const { row, load, exercise, written, stated } = parts;
  if (Number(text.number) <= 0) {
    mayStand(judgedLoad(Number(text.number)), row, load, report);
    return null;
  }
  const unit = unitOf(row, load, text.unit ?? stated.unit);
  const counted = unit && countedLoad({ number: text.number, unit, exercise, written }, load, layout.rows, report);
  if (!unit || !counted) return null;
  const kilograms = kilogramsIn({ number: counted.number, unit });
  if (!mayStand(judgedLoad(kilograms), row, load, report)) return null;
  return { number: counted.number, unit, changes: counted.change === null ? [] : [counted.change] };
};

const REPETITION_MAXIMUM = /\d\s*-?\s*(RM|rep(etition)?\s*max)/i;
const NONE_LEFT: Effort = { kind: 'repetitions in reserve', value: 0 };

/** A load that is called a 5RM is the most that goes five times: none was left, where nobody wrote otherwise. */
const isMaximumByName = ({ written, stated }: Parts, repetitions: number): boolean =>
  REPETITION_MAXIMUM.test(written) && stated.repetitions === repetitions;

/** Reads everything about one test, so that everything wrong with it is said at once. */
const readTest = (parts: Parts, reading: Reading, machineOf: MachineOf): TestReading | null => {
  const { row, load, exercise, stated } = parts;
  const { cells, subjects, report, dayOf } = reading;
  const read = cells.text(row, load, readLoad);
  if (read.kind === 'blank') return null;
  const subject = subjects.of(row);
  if (subject.kind === 'left out' || subject.kind === 'nobody') return null;
  const text = report.take(row, load, read);
  const found = text && loadIn(text, parts, reading);
  const sources = { inCell: text?.repetitions ?? null, column: parts.repetitions, stated: stated.repetitions };
  const repetitions = repetitionsOfTest(row, load, sources, cells, report);
  const effort = typedEffort(text, parts, reading);
  const side = sideIn(row, parts.side, cells, report);
  const day = dayOf(row);
  const machine = machineOf(row, exercise);
  if (!text || !found || repetitions === null || effort === 'wrong' || side === 'wrong') return null;
  if (day === null || !machine || subject.kind === 'open') return null;
  const typed = cellAt(row, load)?.text ?? '';
  const isMaximum = effort === null && isMaximumByName(parts, repetitions);
  return {
    row,
    column: load,
    someone: subject.someone,
    day,
    exercise,
    machine,
    typed,
    ...found,
    changes: isMaximum ? [...found.changes, `a ${repetitions}RM leaves none in reserve`] : found.changes,
    repetitions,
    effort: isMaximum ? NONE_LEFT : effort,
    side: side ?? stated.side,
  };
};

/** Every test of the table. */
export const readTests = (reading: Reading): readonly TestReading[] => {
  const { layout, context, report } = reading;
  const partsOf = partsOfTests(reading, exercisesOfTests(context, report));
  const machineOf = machinesOfTests(layout, context, report);
  for (const issue of effortOfNoLift(layout.columns)) report.say(issue);
  return layout.rows.flatMap((row) => partsOf(row).flatMap((parts) => readTest(parts, reading, machineOf) ?? []));
};
