import { expect, test } from 'vitest';
import { ALL_FORMULAS, ALL_METHODS } from '#science/textbook.ts';
import { equationParts } from './equation-parts.ts';
import { elementsOfMath, mathTree, readMath, textOfMath } from './math-tree.ts';
import { wholeEquation } from './whole-equation.ts';
import { mathupText } from './mathup-text.ts';

/** The elements of presentation MathML that browsers draw. */
const DRAWN =
  /^(mrow|mi|mn|mo|mtext|mfrac|msqrt|mroot|msub|msup|msubsup|munder|mover|munderover|mtable|mtr|mtd|mspace|mmultiscripts)$/;

const EQUATIONS = [
  ...ALL_FORMULAS.map(({ record }) => [record.id, wholeEquation(record.output.symbol, record.equation)] as const),
  ...ALL_METHODS.flatMap(({ record }) => record.equations.map((equation) => [record.id, equation] as const)),
];
const SYMBOLS = [
  ...ALL_FORMULAS.flatMap(({ record: { id, inputs, output } }) =>
    [...inputs, output].map(({ symbol }) => [id, symbol]),
  ),
  ...ALL_METHODS.flatMap(({ record: { id, inputs, outputs } }) =>
    [...inputs, ...outputs].map(({ symbol }) => [id, symbol]),
  ),
];

/** Letters and digits in any order: setting moves them, and turns some words into signs. */
const letters = (text: string): string =>
  [...text.replaceAll('∑', 'sum').replaceAll('∏', 'prod').replaceAll('sqrt', '').normalize('NFKD')]
    .filter((letter) => /[\p{L}\p{N}]/u.test(letter))
    .sort()
    .join('');

test('every equation keeps every letter and digit, and adds none', () => {
  const changed = EQUATIONS.filter(([, text]) => letters(textOfMath(mathTree(text))) !== letters(text));
  expect(changed).toEqual([]);
});

test('every symbol of an input or an output keeps every letter and digit', () => {
  expect(SYMBOLS.filter(([, text = '']) => letters(textOfMath(mathTree(text))) !== letters(text))).toEqual([]);
});

test('every equation is made of elements that browsers draw, without a mark of error', () => {
  const odd = [...EQUATIONS, ...SYMBOLS].flatMap(([id, text = '']) =>
    elementsOfMath(mathTree(text))
      .filter(({ tag }) => !DRAWN.test(tag))
      .map(({ tag }) => `${id}: ${tag} in ${text}`),
  );
  expect(odd).toEqual([]);
});

test('no quote, backtick or backslash of the typesetter is left over', () => {
  const left = EQUATIONS.filter(([, text]) => /["`\\]|:\}|\{:/.test(textOfMath(mathTree(text))));
  expect(left).toEqual([]);
});

test('the parts of an equation are the equation', () => {
  const bare = (text: string): string => text.replaceAll(/\s/g, '');
  const changed = EQUATIONS.filter(([, text]) => bare(equationParts(text).join('')) !== bare(text));
  expect(changed).toEqual([]);
});

test.each([
  ['(L − s_work · W) / R', '(`L` − `s`_{:`work`:} · `W`)/{:`R`:}'],
  ['w · 36 / (37 − n)', '{:`w` · 36:}/(37 − `n`)'],
  ['n^−0.10', '`n`^{:− 0.10:}'],
  ["W'_0", "`W`_{:0:}^{:':}"],
  ['z²', '`z`^{:2:}'],
  ['10⁻³', '10^{:− 3:}'],
  ['Δ₀', '`Δ`_{:0:}'],
  ['√(2 π)', 'sqrt{:2"\u2009"`π`:}'],
  ['√h / 2', '{:sqrt{:`h`:}:}/{:2:}'],
  ['exp(−t/τ)', '`exp`(− {:`t`:}/{:`τ`:})'],
  ['e^(−t/τ)', '`e`^{:− `t` \\/ `τ`:}'],
  ['|a − b|', '|:`a` − `b`:|'],
  ['sum_(i=1)^n w_i / n', '{:sum_{:`i` = 1:}^{:`n`:} `w`_{:`i`:}:}/{:`n`:}'],
  ['s = shanks + other leg', '`s` = `shanks` + "other leg"'],
  ['bar-equivalent', '`bar-equivalent`'],
  ['a_i,j', '`a`_{:`i` \\, `j`:}'],
  ['1RM', '`1RM`'],
])('%s is set as %s', (equation, expected) => {
  expect(mathupText(equation).replaceAll(/ (?="\u2009")|(?<="\u2009") /g, '')).toBe(expected);
});

test('a choice between cases stands in lines behind a brace', () => {
  const tree = mathTree('y = a where n ≤ 1, else b where n ≤ 2, else c');
  const rows = elementsOfMath(tree).filter(({ tag }) => tag === 'mtr');
  expect(rows.map((row) => row.children.map(textOfMath))).toEqual([
    ['a', 'wheren≤1'],
    ['b', 'wheren≤2'],
    ['c', 'else'],
  ]);
});

test('what says more than a choice stays on its line', () => {
  const tree = mathTree('y = c where g < 3, else 0, with c = 1 where z, else 0.3');
  expect(elementsOfMath(tree).filter(({ tag }) => tag === 'mtable')).toEqual([]);
});

test('a fraction has what stands before the stroke over it, and only the next factor under it', () => {
  const [fraction] = elementsOfMath(mathTree('x = a b / c d')).filter(({ tag }) => tag === 'mfrac');
  expect(fraction?.children.map(textOfMath)).toEqual(['ab', 'c']);
});

test('signs of the markup are read back as letters', () => {
  expect(textOfMath(mathTree('a < b'))).toBe('a<b');
  expect(textOfMath(readMath('<mo>&lt;</mo><mtext>a &amp; b</mtext>'))).toBe('<a & b');
});
