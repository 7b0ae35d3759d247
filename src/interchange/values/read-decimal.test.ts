import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { decimalMark, doubled, halved, hundredfold, increasedBy, readDecimal } from './read-decimal.ts';

describe('a number is read', () => {
  test.each([
    ['102.5', null, '102.5'],
    ['102,5', null, '102.5'],
    ['102,50', ',', '102.50'],
    ['1.250', '.', '1.250'],
    ['1.250', null, '1.250'],
    ['1,250', ',', '1.250'],
    ['1.234,5', null, '1234.5'],
    ['1,234.5', null, '1234.5'],
    ['1,234.50', ',', '1234.50'],
    ['.5', null, '0.5'],
    ['007', null, '7'],
    ['0,500', '.', '0.500'],
    ['−5', null, '-5'],
    ['+5', null, '5'],
    ['１０２', null, '102'],
    ["'80", null, '80'],
  ] as const)('%s with mark %s is %s', (text, mark, value) => {
    expect(readDecimal(text, mark)).toEqual({ kind: 'value', value });
  });
});

test.each(['', '-', '–', 'n/a', 'N.A.', 'DNT', 'not tested', '...'])('"%s" says nothing', (text) => {
  expect(readDecimal(text, null)).toEqual({ kind: 'blank' });
});

describe('what is no number is refused with its reason', () => {
  test.each([
    ['NaN', 'A calculation in the file failed.'],
    ['#DIV/0!', 'A calculation in the file failed.'],
    ['Infinity', 'No load, mass or count is infinite.'],
    ['1e9', 'It is written with an exponent.'],
    ['=1+1', 'It looks like a formula; formulas are never run.'],
    ['@SUM(A1)', 'It looks like a formula; formulas are never run.'],
    ['0x10', 'A number is expected here.'],
    ['1 000', 'A number is expected here.'],
    ['<script>', 'A number is expected here.'],
  ])('%s', (text, why) => {
    expect(readDecimal(text, null)).toMatchObject({ kind: 'wrong', said: { why } });
  });

  test('more digits than a load can have', () => {
    expect(readDecimal('99999999999999999999', null)).toMatchObject({
      kind: 'wrong',
      said: { what: 'The number has too many digits.' },
    });
  });
});

test.each([
  ['1,250', null],
  ['1,250', '.'],
  ['1.250', ','],
] as const)('%s where the mark is %s is two numbers and neither is guessed', (text, mark) => {
  expect(readDecimal(text, mark)).toMatchObject({
    kind: 'wrong',
    said: { what: `“${text}” can be read as two numbers.` },
  });
});

test.each([
  [['102,5', '100'], ','],
  [['102.5', '1,250'], '.'],
  [['102.5', '97,5'], null],
  [['1,250'], null],
  [['1.234,5'], ','],
] as const)('the mark that %j prove is %s', (texts, mark) => {
  expect(decimalMark(texts)).toBe(mark);
});

test.each([
  [doubled, '22.5', '45'],
  [doubled, '0.05', '0.1'],
  [halved, '45', '22.5'],
  [halved, '22.5', '11.25'],
  [halved, '1', '0.5'],
  [hundredfold, '1.72', '172'],
  [hundredfold, '1.725', '172.5'],
  [(text: string) => increasedBy(text, 20n), '32.5', '52.5'],
  [(text: string) => increasedBy(text, 45n), '90', '135'],
] as const)('digits are kept exactly: %o of %s is %s', (change, text, value) => {
  expect(change(text)).toBe(value);
});

const decimalText = fc
  .tuple(fc.integer({ min: 0, max: 999 }), fc.integer({ min: 0, max: 99 }))
  .map(([whole, hundredths]) => `${whole}.${String(hundredths).padStart(2, '0')}`);

test('doubling and halving undo each other', () => {
  fc.assert(
    fc.property(decimalText, (text) => {
      expect(Number(halved(doubled(text)))).toBe(Number(text));
    }),
  );
});

test('a comma reads as the point that it stands for', () => {
  fc.assert(
    fc.property(decimalText, (text) => {
      expect(readDecimal(text.replace('.', ','), ',')).toEqual(readDecimal(text, '.'));
    }),
  );
});

test('half of a load with nine decimals is still a decimal that the log keeps (a damaged file once was not borne)', () => {
  expect(halved('0.999999999')).toBe('0.499999999');
  expect(halved('92.5')).toBe('46.25');
});
