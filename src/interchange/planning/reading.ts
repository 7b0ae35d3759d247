import type { SheetLayout } from '../layout/sheet-layout.ts';
import type { CellReader } from './cell-reader.ts';
import type { BringInContext } from './context.ts';
import type { DayOf } from './day-of-row.ts';
import type { Report } from './report.ts';
import type { Subjects } from './subjects.ts';
import type { UnitOf } from './units-of-columns.ts';

/** All that reading the rows of a table leans on. */
export interface Reading {
  readonly layout: SheetLayout;
  readonly cells: CellReader;
  readonly subjects: Subjects;
  readonly context: BringInContext;
  readonly report: Report;
  readonly dayOf: DayOf;
  readonly unitOf: UnitOf;
}
