import { describe, expect, test } from 'vitest';
import writeWorkbook, { type SheetData } from 'write-excel-file/node';
import type { BringInPlan } from './plan-bring-in.ts';
import { draftsIn, oddities, openQuestions, planned, refusals } from './fixtures/bring-in.ts';
import { storedArchive } from './reading/stored-archive.ts';

const bar = { 'machine of the table': 'bar-brae' };

const lifted = (plan: BringInPlan): readonly string[] =>
  draftsIn(plan).flatMap(({ body }) =>
    body.kind === 'lifted' ? [`${body.exercise} ${body.load.text} ${body.load.unit} × ${body.repetitions}`] : [],
  );

const letters = 'ABCDEFGHIJ';

/** A workbook of texts, numbers and formulas, with cells drawn as one. */
const withMerges = (rows: readonly (readonly (string | number | null)[])[], merges: readonly string[]): Uint8Array => {
  const cell = (value: string | number | null, row: number, column: number): string => {
    const place = `${letters[column]}${row + 1}`;
    if (value === null) return '';
    if (typeof value === 'number') return `<c r="${place}"><v>${value}</v></c>`;
    if (value.startsWith('=')) return `<c r="${place}"><f>${value.slice(1)}</f><v>92.5</v></c>`;
    return `<c r="${place}" t="inlineStr"><is><t>${value}</t></is></c>`;
  };
  const body = rows.map(
    (row, number) => `<row r="${number + 1}">${row.map((value, column) => cell(value, number, column)).join('')}</row>`,
  );
  const relation = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
  return storedArchive(
    new Map([
      ['xl/workbook.xml', '<workbook><sheets><sheet name="Tests" sheetId="1" r:id="rId1"/></sheets></workbook>'],
      [
        'xl/_rels/workbook.xml.rels',
        `<Relationships><Relationship Id="rId1" Type="${relation}/worksheet" Target="worksheets/sheet1.xml"/></Relationships>`,
      ],
      [
        'xl/worksheets/sheet1.xml',
        `<worksheet><sheetData>${body.join('')}</sheetData><mergeCells>${merges.map((ref) => `<mergeCell ref="${ref}"/>`).join('')}</mergeCells></worksheet>`,
      ],
    ]),
  );
};

test('date cells, numbers and a summary below, as a spreadsheet program writes them', async () => {
  const date = (iso: string) => ({ value: new Date(`${iso}T00:00:00Z`), type: Date, format: 'dd.mm.yyyy' }) as const;
  const rows: SheetData = [
    ['Strength tests'],
    [],
    ['Name', 'Sex', 'Date', 'BW (kg)', 'Back squat 5RM (lb)'],
    ['Ana Ruiz', 'F', date('2027-02-03'), 61.4, 185],
    ['Bo Lund', 'M', date('2027-02-04'), 80, 255],
    ['Mean', null, null, 70.7, 220],
  ];
  const plan = await planned(await writeWorkbook(rows).toBuffer(), { answers: bar });
  expect(refusals(plan)).toEqual([]);
  expect(plan.matching.headerRow).toBe(3);
  expect(lifted(plan)).toEqual(['back-squat 185 lb × 5', 'back-squat 255 lb × 5']);
  expect(plan.preview.people.flatMap(({ lines }) => lines.map(({ says }) => says))).toContain(
    '2027-02-03 body mass 61.4 kg',
  );
  expect(plan.preview.passedOver).toMatchObject([{ row: 6, what: 'The line “Mean” was passed over.' }]);
});

test('one of several sheets is chosen', async () => {
  const bytes = await writeWorkbook([
    { sheet: 'Notes', data: [['Season 2027']] },
    {
      sheet: 'Tests',
      data: [
        ['Name', 'Sex', 'Date', 'BW (kg)'],
        ['Ana Ruiz', 'F', '2027-02-03', 61.4],
      ],
    },
  ]).toBuffer();
  const open = await planned(bytes);
  expect(openQuestions(open)).toMatchObject([
    { id: 'sheet', choices: [{ answer: 'Notes' }, { answer: 'Tests', says: 'Tests, 2 rows' }] },
  ]);
  expect((await planned(bytes, { answers: { sheet: 'Tests' } })).ready).toBe(true);
  expect((await planned(bytes, { matching: { sheet: 'Tests', headerRow: null, columns: {} } })).ready).toBe(true);
  expect(refusals(await planned(bytes, { matching: { sheet: 'Gone', headerRow: null, columns: {} } }))).toEqual([
    'the file: The chosen sheet is not in the file or holds nothing.',
  ]);
});

test('a date in a column of loads is refused, as spreadsheet programs make them of entries such as 3-5', async () => {
  const rows: SheetData = [
    ['Name', 'Sex', 'Date', 'Squat 5RM (kg)'],
    ['Ana Ruiz', 'F', '2027-02-03', { value: new Date('2027-05-03T00:00:00Z'), type: Date, format: 'd-mmm' }],
  ];
  expect(refusals(await planned(await writeWorkbook(rows).toBuffer(), { answers: bar }))).toEqual([
    'row 2, column D “Squat 5RM (kg)”: The cell holds the date 2027-05-03.',
  ]);
});

test('date cells among typed dates are suspected of exchanged day and month', async () => {
  const rows: SheetData = [
    ['Name', 'Sex', 'Date', 'BW (kg)'],
    ['Ana Ruiz', 'F', { value: new Date('2026-03-04T00:00:00Z'), type: Date, format: 'dd/mm/yyyy' }, 61],
    ['Bo Lund', 'M', '13/04/2026', 80],
  ];
  expect(oddities(await planned(await writeWorkbook(rows).toBuffer()))).toEqual([
    'column C “Date”: The column mixes date cells and dates typed as text.',
  ]);
});

describe('merged cells', () => {
  test('a heading over two columns names their lift', async () => {
    const file = withMerges(
      [
        ['Tests of 2027-02-03', null, null, null, null, null],
        ['Name', 'Sex', 'Back squat', null, 'Bench press', null],
        [null, null, 'kg', 'reps', 'load (lb)', 'reps'],
        ['Ana Ruiz', 'F', 90, 4, 110, 6],
      ],
      ['A1:F1', 'A2:A3', 'B2:B3', 'C2:D2', 'E2:F2'],
    );
    const plan = await planned(file, { answers: { ...bar, 'day of the table': '2027-02-03' } });
    expect(refusals(plan)).toEqual([]);
    expect(plan.matching.columns.map(({ header }) => header)).toEqual([
      'Name',
      'Sex',
      'Back squat kg',
      'reps',
      'Bench press load (lb)',
      'reps',
    ]);
    expect(lifted(plan)).toEqual(['back-squat 90 kg × 4', 'bench-press 110 lb × 6']);
  });

  test('a name over several rows is the name of each', async () => {
    const file = withMerges(
      [
        ['Name', 'Sex', 'Date', 'Exercise', 'Load (kg)', 'Reps'],
        ['Ana Ruiz', 'F', '2027-02-03', 'Squat', 90, 4],
        [null, null, null, 'Bench', 50, 6],
        ['Second day', null, null, null, null, null],
        ['Bo Lund', 'M', '2027-02-04', 'Squat', 140, 3],
      ],
      ['A2:A3', 'B2:B3', 'C2:C3', 'A4:F4'],
    );
    const plan = await planned(file, { answers: bar });
    expect(refusals(plan)).toEqual([]);
    expect(plan.preview.people.map(({ name, tests }) => [name, tests])).toEqual([
      ['Ana Ruiz', 2],
      ['Bo Lund', 1],
    ]);
    expect(plan.preview.passedOver).toMatchObject([{ row: 4, what: 'The line was passed over: it is a heading.' }]);
  });

  test('a number over several rows is one measurement', async () => {
    const file = withMerges(
      [
        ['Name', 'Sex', 'Date', 'Squat 5RM (kg)'],
        ['Ana Ruiz', 'F', '2027-02-03', 90],
        ['Bo Lund', 'M', '2027-02-03', null],
      ],
      ['D2:D3'],
    );
    const plan = await planned(file, { answers: bar });
    expect(lifted(plan)).toEqual(['back-squat 90 kg × 5']);
    expect(oddities(plan)).toEqual([
      'row 2, column D “Squat 5RM (kg)”: The cell spans rows 2 to 3; its value is taken for row 2 alone.',
    ]);
  });
});

test('a formula gives the value that was saved, and it is said', async () => {
  const file = withMerges(
    [
      ['Name', 'Sex', 'Date', 'Squat 5RM (kg)'],
      ['Ana Ruiz', 'F', '2027-02-03', '=90+2.5'],
    ],
    [],
  );
  const plan = await planned(file, { answers: bar });
  expect(lifted(plan)).toEqual(['back-squat 92.5 kg × 5']);
  expect(oddities(plan)).toEqual(['row 2, column D “Squat 5RM (kg)”: One value of the column came from formulas.']);
});
