import { deflateRawSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import writeWorkbook, { type SheetData } from 'write-excel-file/node';
import type { Cell, Sheet, TableReading } from '#contract/bring-in.ts';
import { LIMITS } from './limits.ts';
import { openArchive } from './open-archive.ts';
import { readTable } from './read-table.ts';
import { storedArchive } from './stored-archive.ts';

const workbook = async (rows: SheetData): Promise<Uint8Array> => writeWorkbook(rows).toBuffer();

const sheetIn = (reading: TableReading): Sheet => {
  const [sheet] = reading.kind === 'read' ? reading.sheets : [];
  if (!sheet) throw new Error(`No sheet was read: ${JSON.stringify(reading)}`);
  return sheet;
};

const cells = (reading: TableReading): readonly (readonly Cell[])[] => sheetIn(reading).rows.map((row) => row.cells);
const texts = (reading: TableReading): readonly (readonly string[])[] =>
  cells(reading).map((row) => row.map(({ text }) => text));

/** A workbook of one sheet, from the XML of its rows; parts may be replaced. */
const handmade = (rows: string, more: Readonly<Record<string, string>> = {}): Uint8Array => {
  const relation = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
  const parts = {
    'xl/workbook.xml': '<workbook><sheets><sheet name="Tests" sheetId="1" r:id="rId1"/></sheets></workbook>',
    'xl/_rels/workbook.xml.rels': `<Relationships><Relationship Id="rId1" Type="${relation}/worksheet" Target="worksheets/sheet1.xml"/></Relationships>`,
    'xl/worksheets/sheet1.xml': `<worksheet><sheetData>${rows}</sheetData></worksheet>`,
    ...more,
  };
  return storedArchive(new Map(Object.entries(parts)));
};

const inline = (place: string, text: string): string => `<c r="${place}" t="inlineStr"><is><t>${text}</t></is></c>`;

test('texts, numbers, dates and yes or no are read as they stand', async () => {
  const reading = await readTable(
    await workbook([
      ['Name', 'Date', 'Load', 'Done'],
      [
        'Maren Holt',
        { value: new Date('2027-02-10T00:00:00Z'), type: Date, format: 'dd/mm/yyyy' },
        { value: 102.4, type: Number },
        { value: true, type: Boolean },
      ],
      [null, null, null, null],
      ['Iwo Falk', null, { value: 0.1 + 0.2, type: Number }],
    ]),
    'tests.xlsx',
  );
  expect(reading).toMatchObject({ kind: 'read', format: 'XLSX' });
  expect(sheetIn(reading).rows.map(({ number }) => number)).toEqual([1, 2, 4]);
  expect(cells(reading)[1]).toEqual([
    { text: 'Maren Holt', is: 'text', formula: false },
    { text: '2027-02-10', is: 'date', formula: false },
    { text: '102.4', is: 'number', formula: false },
    { text: 'TRUE', is: 'yes or no', formula: false },
  ]);
  expect(cells(reading)[2]?.[2]?.text).toBe('0.3');
});

test('a formula gives the value that the file keeps, and is marked', async () => {
  const reading = await readTable(
    handmade(`<row r="1">${inline('A1', 'Name')}${inline('B1', 'Load')}</row>
      <row r="2">${inline('A2', 'Ana')}<c r="B2"><f>100+2.5</f><v>102.5</v></c></row>
      <row r="3">${inline('A3', 'Iwo')}<c r="B3"><f>1/0</f></c></row>
      <row r="4">${inline('A4', 'Jún')}<c r="B4" t="e"><f>1/0</f><v>#DIV/0!</v></c></row>
      <row r="5">${inline('A5', 'Liv')}<c r="B5" t="str"><f>"9"&amp;"0"</f><v>90</v></c></row>`),
    'a.xlsx',
  );
  expect(cells(reading).map((row) => row[1])).toEqual([
    { text: 'Load', is: 'text', formula: false },
    { text: '102.5', is: 'number', formula: true },
    { text: '', is: 'error', formula: true },
    { text: '#DIV/0!', is: 'error', formula: true },
    { text: '90', is: 'text', formula: true },
  ]);
});

test('merged cells are told', async () => {
  const merge = (top: number, bottom: number, left: number, right: number) => ({ top, bottom, left, right });
  const reading = await readTable(
    handmade(
      `<row r="1">${inline('A1', 'Title')}</row><row r="2">${inline('A2', 'Ana')}${inline('B2', 'x')}</row><row r="3">${inline('B3', 'y')}</row>`,
      {},
    ),
    'a.xlsx',
  );
  expect(sheetIn(reading).merged).toEqual([]);
  const merged = handmade('', {
    'xl/worksheets/sheet1.xml': `<worksheet><sheetData><row r="1">${inline('A1', 'Title')}</row><row r="2">${inline('A2', 'Ana')}${inline('B2', 'x')}</row><row r="3">${inline('B3', 'y')}</row></sheetData><mergeCells count="2"><mergeCell ref="A1:B1"/><mergeCell ref="A2:A3"/></mergeCells></worksheet>`,
  });
  expect(sheetIn(await readTable(merged, 'a.xlsx')).merged).toEqual([merge(1, 1, 0, 1), merge(2, 3, 0, 0)]);
});

test('several sheets keep their names and order', async () => {
  const bytes = await writeWorkbook([
    { sheet: 'Notes', data: [['nothing']] },
    { sheet: 'Tests & more', data: [['Name', 'Load']] },
  ]).toBuffer();
  const reading = await readTable(bytes, 'a.xlsx');
  expect(reading.kind === 'read' && reading.sheets.map(({ name }) => name)).toEqual(['Notes', 'Tests & more']);
});

test('cells out of order, told twice, or without a place are put where they belong', async () => {
  const reading = await readTable(
    handmade(
      `<row r="3">${inline('B3', 'b')}${inline('A3', 'a')}</row><row r="1"><c t="inlineStr"><is><t>first</t></is></c>${inline('B1', 'old')}${inline('B1', 'new')}</row>`,
    ),
    'a.xlsx',
  );
  expect(texts(reading)).toEqual([
    ['first', 'new'],
    ['a', 'b'],
  ]);
});

test('numbers that are none stay text, and nothing is thrown', async () => {
  const reading = await readTable(
    handmade(
      '<row r="1"><c r="A1"><v>NaN</v></c><c r="B1"><v>1e400</v></c><c r="C1" t="d"><v>soon</v></c><c r="D1" t="b"><v>7</v></c><c r="E1" t="zz"><v>?</v></c></row>',
    ),
    'a.xlsx',
  );
  expect(texts(reading)).toEqual([['NaN', '1e400', 'soon', '7', '?']]);
});

describe('hostile workbooks are refused with a sentence', () => {
  const what = async (bytes: Uint8Array, limits = LIMITS): Promise<string> => {
    const reading = await readTable(bytes, 'a.xlsx', limits);
    return reading.kind === 'refused' ? (reading.issues[0]?.what ?? '') : 'read';
  };

  test('an archive that is no workbook', async () => {
    expect(await what(storedArchive(new Map([['content.xml', '<x/>']])))).toBe(
      'The file is an archive, but no XLSX workbook.',
    );
  });

  test('a workbook that is cut off', async () => {
    const whole = await workbook([['Name', 'Load']]);
    expect(await what(whole.slice(0, whole.byteLength - 40))).toBe('The workbook cannot be unpacked.');
  });

  test('a cell far outside the table', async () => {
    expect(await what(handmade('<row r="1048576"><c r="XFD1048576"><v>1</v></c></row>'))).toBe(
      'A cell holds something outside the 10,100 rows and 200 columns that are read.',
    );
  });

  test('a row number written as an entity reaches nothing', async () => {
    expect(await what(handmade(`<row r="&#49;000000000">${inline('A1', 'x')}</row>`))).toBe('read');
    expect(await what(handmade('<row r="&#57;999999"><c t="inlineStr"><is><t>x</t></is></c></row>'))).toBe(
      'A cell holds something outside the 10,100 rows and 200 columns that are read.',
    );
  });

  test('formatted cells without value are not counted', async () => {
    expect(
      await what(handmade(`<row r="1">${inline('A1', 'x')}</row><row r="1048576"><c r="XFD1048576" s="1"/></row>`)),
    ).toBe('read');
  });

  test('a document type with entities', async () => {
    const bomb = '<!DOCTYPE x [<!ENTITY a "aaaa"><!ENTITY b "&a;&a;">]><worksheet><sheetData/></worksheet>';
    expect(await what(handmade('', { 'xl/worksheets/sheet1.xml': bomb }))).toBe('The workbook cannot be read.');
  });

  test('a cell that points to a text that is not there', async () => {
    expect(await what(handmade('<row r="1"><c r="A1" t="s"><v>99</v></c></row>'))).toBe('The workbook cannot be read.');
  });

  test('more filled cells than can be held', async () => {
    const row = `<row r="1">${Array.from({ length: 30 }, (_, index) => `<c r="A${index + 1}"><v>1</v></c>`).join('')}</row>`;
    expect(await what(handmade(row), { ...LIMITS, cells: 20 })).toBe('A sheet holds more than 20 filled cells.');
  });
});

/** Writes over the sizes in the directory of an archive whose entries are all alike. */
const withPatch = (bytes: Uint8Array, at: number, value: number): Uint8Array => {
  const patched = bytes.slice();
  new DataView(patched.buffer).setUint32(at, value, true);
  return patched;
};

describe('archives that unpack to more than they say', () => {
  /** One deflated entry with the sizes that are told, true or not. */
  const deflated = (content: Uint8Array, declared: number): Uint8Array => {
    const packed = deflateRawSync(content);
    const stored = storedArchive(new Map([['xl/workbook.xml', '']]));
    const nameBytes = 'xl/workbook.xml'.length;
    const local = stored.slice(0, 30 + nameBytes);
    const directory = stored.slice(30 + nameBytes, 30 + nameBytes + 46 + nameBytes);
    const end = stored.slice(-22);
    const whole = new Uint8Array(local.byteLength + packed.byteLength + directory.byteLength + end.byteLength);
    const view = new DataView(whole.buffer);
    whole.set(local, 0);
    whole.set(packed, local.byteLength);
    const directoryAt = local.byteLength + packed.byteLength;
    whole.set(directory, directoryAt);
    whole.set(end, directoryAt + directory.byteLength);
    view.setUint16(8, 8, true);
    view.setUint16(directoryAt + 10, 8, true);
    view.setUint32(directoryAt + 20, packed.byteLength, true);
    view.setUint32(directoryAt + 24, declared, true);
    view.setUint32(directoryAt + directory.byteLength + 16, directoryAt, true);
    return whole;
  };
  const zeros = new Uint8Array(80 * 1024 * 1024);

  test('a bomb that says its size is never unpacked', () => {
    expect(openArchive(deflated(zeros, zeros.byteLength), LIMITS)).toMatchObject({
      kind: 'refused',
      said: { what: 'The workbook unpacks to 80 MB; at most 50 MB are read.' },
    });
  });

  test('a bomb that lies about its size is cut short', () => {
    expect(openArchive(deflated(zeros, 100), LIMITS)).toMatchObject({
      kind: 'refused',
      said: { what: 'The workbook cannot be unpacked.' },
    });
  });

  test('too many parts', () => {
    const parts = new Map(Array.from({ length: LIMITS.entries + 1 }, (_, index) => [`${index}.xml`, '']));
    expect(openArchive(storedArchive(parts), LIMITS)).toMatchObject({
      said: { what: 'The workbook holds 1,001 parts; at most 1,000 are read.' },
    });
  });

  test('contents that do not fit their checksum', () => {
    const good = storedArchive(new Map([['a.xml', '<a/>']]));
    const at = 30 + 'a.xml'.length;
    expect(openArchive(good, LIMITS).kind).toBe('opened');
    expect(openArchive(withPatch(good, at, 0x41414141), LIMITS).kind).toBe('refused');
  });

  test('a password', () => {
    const good = storedArchive(new Map([['a.xml', '<a/>']]));
    const directoryAt = 30 + 'a.xml'.length + '<a/>'.length;
    good[directoryAt + 8] = 1;
    expect(openArchive(good, LIMITS)).toMatchObject({ said: { what: 'The workbook is protected by a password.' } });
  });
});
