import { expect, test } from 'vitest';
import { formula, type Formula, type FormulaRecord } from './formula.ts';
import { reckoning } from './reckoning.ts';
import { OUR_OWN_DESIGN } from './sources.ts';

const record = (id: string, inputs: number): FormulaRecord => ({
  id: `test/${id}`,
  revision: 3,
  title: `Title of ${id}`,
  equation: `equation of ${id}`,
  inputs: Array.from({ length: inputs }, (_, place) => ({
    name: `input ${place + 1}`,
    symbol: 'x',
    unit: 'kg',
    possible: [-1e6, 1e6],
    valid: [0, 10],
  })),
  output: { name: id, symbol: id, unit: 'lb' },
  source: OUR_OWN_DESIGN,
  doesNotKnow: 'Nothing: it is made for this test.',
});

const twice: Formula<[number], number> = formula(record('twice', 1), (a: number) => 2 * a);
const less = formula(record('less', 2), (a: number, b: number) => a - b);
const three = formula(record('three', 3), (a: number, b: number, c: number) => a + 10 * b + 100 * c);
const four = formula(
  record('four', 4),
  (a: number, b: number, c: number, d: number) => a + 10 * b + 100 * c + 1000 * d,
);
const six = formula(
  record('six', 6),
  (a: number, b: number, c: number, d: number, e: number, f: number) =>
    a + 10 * b + 100 * c + 1000 * d + 10_000 * e + 100_000 * f,
);

type Givens = { readonly a: number; readonly b: number; readonly c: number };

/** Made anew in each test, so that a fault in the making shows. */
const make = () =>
  reckoning<Givens>('a reckoning of a test', ['a', 'b', 'c'])
    .cell('double', twice, 'b')
    .cell('rest', less, 'double', 'a')
    .cell('three', three, 'c', 'b', 'a')
    .cell('four', four, 'rest', 'a', 'b', 'c')
    .cell('six', six, 'a', 'b', 'c', 'c', 'b', 'a')
    .cell('again', twice, 'rest');

const GIVENS: Givens = { a: 1, b: 2, c: 3 };

test('a row is filled as far as it is possible, and says why no farther', () => {
  const made = make();
  const filledWithCare = (givens: Givens) => {
    const row = new Float64Array(made.width);
    row.set(Object.values(givens));
    return { row, reasons: made.fillWithCare(row, 0) };
  };
  expect(filledWithCare(GIVENS)).toEqual({ row: made.row(GIVENS), reasons: [] });
  const { row, reasons } = filledWithCare({ a: 1, b: 2, c: 3e6 });
  expect(reasons).toEqual(['input 1 must lie in -1000000 to 1000000 kg; it is 3000000.']);
  expect([row[made.place('rest')], row[made.place('three')]]).toEqual([3, 0]);
});

test('a cell tells its formula, a given has none', () => {
  expect(make().formulaOf('three')?.record.id).toBe('test/three');
  expect(make().formulaOf('a')).toBeNull();
});

test('cells are computed from givens and earlier cells, each argument in its place', () => {
  const made = make();
  expect(made.reckon(GIVENS)).toEqual({
    a: 1,
    b: 2,
    c: 3,
    double: 4,
    rest: 3,
    three: 123,
    four: 3213,
    six: 123_321,
    again: 6,
  });
});

test('a reckoning knows its name, its columns and their places', () => {
  const made = make();
  expect(made.name).toBe('a reckoning of a test');
  expect(made.givens).toEqual(['a', 'b', 'c']);
  expect(made.columns).toEqual(['a', 'b', 'c', 'double', 'rest', 'three', 'four', 'six', 'again']);
  expect(made.width).toBe(9);
  expect([made.place('a'), made.place('again')]).toEqual([0, 8]);
  expect(() => made.place('z' as 'a')).toThrow('Reckoning "a reckoning of a test" has no column "z".');
});

test('the formulas in use are listed once each', () => {
  const made = make();
  expect(made.formulas).toEqual([twice, less, three, four, six]);
});

test('a row that stands behind others is filled without touching them', () => {
  const made = make();
  const rows = new Float64Array(3 * made.width).fill(7);
  rows.set([1, 2, 3], made.width);
  made.fill(rows, made.width);
  expect(rows.slice(made.width, 2 * made.width)).toEqual(made.row(GIVENS));
  expect([...rows.slice(0, made.width), ...rows.slice(2 * made.width)].every((value) => value === 7)).toBe(true);
});

test('a row is spelled out with names, values and what lies outside its range', () => {
  const made = make();
  const rows = new Float64Array(2 * made.width);
  rows.set(made.row({ a: 1, b: 6, c: 3 }), made.width);
  const cells = made.spell(rows, made.width);
  expect(cells.map(({ name }) => name)).toEqual(['double', 'rest', 'three', 'four', 'six', 'again']);
  expect(cells[0]).toEqual({
    name: 'double',
    formula: 'test/twice',
    revision: 3,
    title: 'Title of twice',
    equation: 'equation of twice',
    unit: 'lb',
    of: ['b'],
    value: 12,
    outsideRange: [],
  });
  expect(cells[1]).toMatchObject({
    of: ['double', 'a'],
    value: 11,
    outsideRange: ['input 1 12 kg is outside 0 to 10'],
  });
});

test('a cell of a column that is not there is refused when it is added', () => {
  expect(() => reckoning<Givens>('short', ['a', 'b', 'c']).cell('x', twice, 'y' as 'a')).toThrow(
    'Reckoning "short" has no column "y".',
  );
});

test('a reckoning to which a cell is added stays as it was', () => {
  const one = reckoning<Givens>('one', ['a', 'b', 'c']);
  one.cell('double', twice, 'a');
  expect(one.columns).toEqual(['a', 'b', 'c']);
});
