import { ANOTHER_CREW_MISSION, ANOTHER_CREW_PEOPLE, ANOTHER_CREW_TESTS } from '#scenario/spreadsheets/another-crew.ts';
import { missionsTable, peopleTable, testsTable } from '#scenario/spreadsheets/before-flight.ts';
import { testsWorkbook } from '#scenario/spreadsheets/column-per-lift.ts';
import { CONTINENTAL, PLAIN, textOf, type WorkbookCell, type WorkbookTable } from '#scenario/spreadsheets/table.ts';
import { isoDay, isoOfDay } from '#units/day.ts';
import writeExcelFile from 'write-excel-file/node';
import { withFixedTimes } from './fixed-archive-times.ts';

/** The day on which the example files stand. */
export const EXAMPLES_TODAY = isoDay('2027-03-01');

export interface ExampleFile {
  readonly path: string;
  readonly content: Buffer;
}

/** Every file under examples that is made from the scenario; the same on every day and machine. */
export const exampleFiles = async (): Promise<readonly ExampleFile[]> => {
  const texts = {
    'people.csv': textOf(peopleTable(EXAMPLES_TODAY), PLAIN),
    'missions.csv': textOf(missionsTable(EXAMPLES_TODAY), PLAIN),
    'tests-one-a-row.csv': textOf(testsTable(EXAMPLES_TODAY), CONTINENTAL),
    'another-crew/people.csv': textOf(ANOTHER_CREW_PEOPLE, PLAIN),
    'another-crew/mission.csv': textOf(ANOTHER_CREW_MISSION, PLAIN),
    'another-crew/tests.csv': textOf(ANOTHER_CREW_TESTS, PLAIN),
  };
  const workbook = await workbookOf(testsWorkbook(EXAMPLES_TODAY), 'Tests');
  return [
    ...Object.entries(texts).map(([path, text]) => ({ path, content: Buffer.from(text, 'utf8') })),
    { path: 'tests-a-column-per-lift.xlsx', content: workbook },
  ];
};

const workbookOf = async (table: WorkbookTable, sheet: string): Promise<Buffer> => {
  const file = writeExcelFile(
    table.map((row) => row.map(cellOf)),
    { sheet },
  );
  return withFixedTimes(await file.toBuffer());
};

const cellOf = (cell: WorkbookCell) => {
  switch (cell.kind) {
    case 'text':
      return { value: cell.text, fontWeight: 'bold' as const, ...(cell.over > 1 ? { columnSpan: cell.over } : {}) };
    case 'number':
      return { value: cell.value };
    case 'day':
      return { value: new Date(isoOfDay(cell.day)), format: 'dd/mm/yyyy' };
    case 'blank':
      return null;
  }
};
