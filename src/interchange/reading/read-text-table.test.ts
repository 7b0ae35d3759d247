import { describe, expect, test } from 'vitest';
import type { TableReading } from '#contract/bring-in.ts';
import { LIMITS } from './limits.ts';
import { readTable } from './read-table.ts';
import { sniffDelimiter } from './sniff-delimiter.ts';

const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text);

const texts = (reading: TableReading): readonly (readonly string[])[] =>
  reading.kind === 'read' ? (reading.sheets[0]?.rows ?? []).map(({ cells }) => cells.map(({ text }) => text)) : [];

const utf16 = (text: string, order: 'little' | 'big'): Uint8Array => {
  const view = new DataView(new ArrayBuffer(2 + text.length * 2));
  view.setUint16(0, 0xfeff, order === 'little');
  for (let at = 0; at < text.length; at += 1) view.setUint16(2 + at * 2, text.charCodeAt(at), order === 'little');
  return new Uint8Array(view.buffer);
};

describe('what separates the values', () => {
  test.each([
    ['Name,Load\nAna,100', ','],
    ['Name;Load;Reps\nAna;102,5;5\nIwo;97,5;3', ';'],
    ['Name;Squat\nAna;102,5\nIwo;97,5\nMaren;60,5', ';'],
    ['Name\tLoad\nAna, Ruiz\t102,5', '\t'],
    ['Tests, spring 2027\n\nName;Load;Reps\nAna;1;2\nIwo;3;4', ';'],
    ['"Name;x","Load"\n"a;b;c","1"\n"d;e","2"', ','],
    ['only one column', ','],
    ['', ','],
  ])('%j', (text, delimiter) => {
    expect(sniffDelimiter(text)).toBe(delimiter);
  });
});

describe('encodings give the same table', () => {
  const text = 'Name;Load\r\nJún Árnason;102,5\r\n';
  const rows = [
    ['Name', 'Load'],
    ['Jún Árnason', '102,5'],
  ];
  test.each([
    ['UTF-8', utf8(text), 'semicolons, UTF-8'],
    ['UTF-8 with byte-order mark', utf8(`\uFEFF${text}`), 'semicolons, UTF-8 with byte-order mark'],
    ['UTF-16, little end first', utf16(text, 'little'), 'semicolons, UTF-16 with byte-order mark'],
    ['UTF-16, big end first', utf16(text, 'big'), 'semicolons, UTF-16 with byte-order mark'],
  ])('%s', async (_, bytes, how) => {
    const reading = await readTable(bytes, 'a.csv');
    expect(texts(reading)).toEqual(rows);
    expect(reading).toMatchObject({ kind: 'read', format: 'CSV', how, issues: [] });
  });

  test('Windows-1252 is read, and said to be a guess', async () => {
    const reading = await readTable(
      Uint8Array.from({ length: text.length }, (_, at) => text.charCodeAt(at)),
      'a.csv',
    );
    expect(texts(reading)).toEqual(rows);
    expect(reading).toMatchObject({
      issues: [{ kind: 'odd', what: 'The text is not UTF-8 and was read as Windows-1252.' }],
    });
  });
});

test('quotes hold delimiters, quotes and line ends; rows keep their numbers', async () => {
  const reading = await readTable(utf8('Name,Note\n"Holt, Maren","said ""fine""\nand left"\n\nIwo,x\n'), 'a.csv');
  expect(reading).toMatchObject({
    sheets: [
      {
        rows: [
          { number: 1 },
          { number: 2, cells: [{ text: 'Holt, Maren' }, { text: 'said "fine"\nand left' }] },
          { number: 4, cells: [{ text: 'Iwo' }, { text: 'x' }] },
        ],
      },
    ],
  });
});

test('a first line that tells the delimiter is obeyed and is no row', async () => {
  const reading = await readTable(utf8('sep=;\r\nName;a,b,c\r\nAna;1,2,3\r\n'), 'a.csv');
  expect(texts(reading)).toEqual([
    ['Name', 'a,b,c'],
    ['Ana', '1,2,3'],
  ]);
});

test('folders before the name of the file are dropped', async () => {
  expect(await readTable(utf8('Name,Load\nAna,1\n'), '/some/where/tests.csv')).toMatchObject({ fileName: 'tests.csv' });
  expect(await readTable(utf8(''), 'C:\\some\\tests.csv')).toMatchObject({ fileName: 'tests.csv' });
});

test('thousands of empty rows at the end are nothing', async () => {
  const reading = await readTable(utf8(`Name;Load\nAna;100\n${';\n'.repeat(60_000)}`), 'a.csv');
  expect(texts(reading)).toHaveLength(2);
});

describe('what is no table is refused with a sentence', () => {
  test.each([
    ['nothing', new Uint8Array(), 'The file is empty.'],
    ['blanks', utf8(' \n;;\n'), 'The file is empty.'],
    ['a PDF', utf8('%PDF-1.7 ...'), 'The file is a PDF.'],
    [
      'an old workbook',
      Uint8Array.from([0xd0, 0xcf, 0x11, 0xe0, 1, 2]),
      'The file is a workbook of the old kind (XLS), or one with a password.',
    ],
    ['gzip', Uint8Array.from([0x1f, 0x8b, 8, 0]), 'The file is compressed.'],
    [
      'a web page',
      utf8('<html><table><tr><td>Ana</td></tr></table></html>'),
      'The file is a web page or XML, not a table.',
    ],
    ['UTF-16 without its mark', utf16('Name;Load\nAna;100', 'little').slice(2), 'The file is not a text table.'],
    ['half of UTF-16', utf16('Name', 'little').slice(0, -1), 'The text of the file is damaged.'],
    ['a quote that never ends', utf8('Name,Load\n"Ana,100\nIwo,90'), 'A quotation mark is opened and never closed.'],
    ['too many rows', utf8('a,b\n'.repeat(LIMITS.rows + 1)), 'The table has more than 10,100 rows.'],
    [
      'too many columns',
      utf8(`Name\n${'1,'.repeat(LIMITS.columns)}1`),
      'The row has 201 columns; at most 200 are read.',
    ],
  ])('%s', async (_, bytes, what) => {
    const reading = await readTable(bytes, 'a.csv');
    expect(reading).toMatchObject({ kind: 'refused', issues: [{ kind: 'refused', what }] });
  });

  test('too many bytes', async () => {
    const reading = await readTable(utf8('Name,Load\n'), 'a.csv', { ...LIMITS, bytes: 5 });
    expect(reading).toMatchObject({ kind: 'refused', issues: [{ what: 'The file has 1 MB; at most 1 MB are read.' }] });
  });
});

test('a null byte is refused at its place', async () => {
  const reading = await readTable(utf8('Name,Load,Reps\nAna,100,5\nIwo,9\u00000,3\n'), 'a.csv');
  expect(reading).toMatchObject({
    kind: 'read',
    sheets: [{ issues: [{ kind: 'refused', where: 'row 3, column B', what: 'The cell holds a null byte.' }] }],
  });
});

test('markup and formulas are text, letter for letter', async () => {
  const reading = await readTable(
    utf8('Name,Load\n<script>alert(1)</script>,"=HYPERLINK(""x"")"\n+1,@SUM(A1)\n'),
    'a.csv',
  );
  expect(texts(reading).slice(1)).toEqual([
    ['<script>alert(1)</script>', '=HYPERLINK("x")'],
    ['+1', '@SUM(A1)'],
  ]);
});

test('a text that nobody reads to its end is cut, and it is said', async () => {
  const reading = await readTable(utf8(`Name,Note\nAna,${'x'.repeat(9000)}\n`), 'a.csv');
  expect(texts(reading)[1]?.[1]).toHaveLength(LIMITS.charactersInCell);
  expect(reading).toMatchObject({ sheets: [{ issues: [{ kind: 'odd', where: 'row 2, column B' }] }] });
});
