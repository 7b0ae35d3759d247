import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readTabSeparated, writeTabSeparated } from './tab-separated.ts';

test.each([
  { name: 'one cell', text: '4 × 6 @ 80 %', rows: [['4 × 6 @ 80 %']] },
  { name: 'a row', text: 'a\tb\tc', rows: [['a', 'b', 'c']] },
  { name: 'lines of any machine', text: 'a\r\nb\nc\rd', rows: [['a'], ['b'], ['c'], ['d']] },
  {
    name: 'the line break that spreadsheets put last',
    text: 'a\tb\r\nc\td\r\n',
    rows: [
      ['a', 'b'],
      ['c', 'd'],
    ],
  },
  {
    name: 'empty cells',
    text: '\ta\t\r\n\t\t\r\n',
    rows: [
      ['', 'a', ''],
      ['', '', ''],
    ],
  },
  { name: 'an empty row in between', text: 'a\n\nb\n', rows: [['a'], [''], ['b']] },
  { name: 'rows of different lengths', text: 'a\tb\nc', rows: [['a', 'b'], ['c']] },
  { name: 'quoted tabs and line breaks', text: '"a\tb"\t"c\r\nd"\ne', rows: [['a\tb', 'c\r\nd'], ['e']] },
  { name: 'doubled quotes', text: '"say ""now"""\tb', rows: [['say "now"', 'b']] },
  { name: 'an empty quoted cell', text: '""\tb', rows: [['', 'b']] },
  { name: 'quotes within a cell as text', text: '5" band\tb', rows: [['5" band', 'b']] },
  { name: 'quotes around a part as text', text: '"heavy" day\tb', rows: [['"heavy" day', 'b']] },
  { name: 'a quote that never closes as text', text: '"a\tb\nc', rows: [['"a', 'b'], ['c']] },
  { name: 'the mark that some programs put first', text: '\uFEFFa\tb', rows: [['a', 'b']] },
  { name: 'nothing', text: '', rows: [] },
  { name: 'one empty row', text: '\r\n', rows: [['']] },
])('reads $name', ({ text, rows }) => {
  expect(readTabSeparated(text)).toEqual(rows);
});

test('writes tabs, a line break after every row, and quotes only where they are needed', () => {
  const rows = [
    ['4 × 6 @ 80 %', '', '5" band'],
    ['a\tb', 'c\nd', '"e"'],
  ];
  expect(writeTabSeparated(rows)).toBe('4 × 6 @ 80 %\t\t5" band\n"a\tb"\t"c\nd"\t"""e"""\n');
});

const anyCell = fc.string({ unit: fc.constantFrom('a', '6', ' ', '"', '\t', '\n', '\r', '×'), maxLength: 6 });
const anyRows = fc.array(fc.array(anyCell, { minLength: 1, maxLength: 4 }), { maxLength: 4 });

test('what is written is read back as it was', () => {
  fc.assert(
    fc.property(anyRows, (rows) => {
      expect(readTabSeparated(writeTabSeparated(rows))).toEqual(rows);
    }),
  );
});

test('any text can be read, and no row is without a cell', () => {
  fc.assert(
    fc.property(anyCell, anyCell, (one, other) => {
      const rows = readTabSeparated(`${one}${other}`);
      expect(rows.every(({ length }) => length > 0)).toBe(true);
    }),
  );
});
