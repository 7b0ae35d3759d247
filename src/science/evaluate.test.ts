import fc from 'fast-check';
import { expect, test } from 'vitest';
import { evaluate, impossibilities, outsideValidRange, requirePossible } from './evaluate.ts';
import { formula, type FormulaInput, type FormulaRecord } from './formula.ts';
import { OUR_OWN_DESIGN } from './sources.ts';
import { ALL_FORMULAS } from './textbook.ts';

const NAMED = ALL_FORMULAS.map((formula) => [formula.record.id, formula] as const);

/** Numbers of a range, its ends more often than chance. */
const within = ([low, high]: readonly [number, number]): fc.Arbitrary<number> =>
  fc.oneof(fc.double({ min: low, max: high, noNaN: true }), fc.constantFrom(low, high));

const possibleCall = (inputs: readonly FormulaInput[]): fc.Arbitrary<readonly number[]> =>
  fc.tuple(...inputs.map(({ possible }) => within(possible)));

test.each(NAMED)('%s gives a finite number or a sentence for whatever is possible', (_, formula) => {
  fc.assert(
    fc.property(possibleCall(formula.record.inputs), (given) => {
      const met = evaluate(formula, given);
      if (met.kind === 'value') expect(Number.isFinite(met.value)).toBe(true);
      else expect(met.reasons.join(' ')).not.toMatch(/has no finite value/);
    }),
  );
});

test.each(NAMED)('%s has a value wherever its inputs are valid and its conditions hold', (_, formula) => {
  const valid = fc.tuple(...formula.record.inputs.map((input) => within(input.valid)));
  const agree = valid.filter((given) => (formula.record.conditions ?? []).every(({ holds }) => holds(...given)));
  fc.assert(
    fc.property(agree, (given) => {
      expect(evaluate(formula, given)).toMatchObject({ kind: 'value', cautions: [] });
    }),
  );
});

test.each(NAMED)('%s refuses what cannot be, in a sentence that names the input', (_, formula) => {
  const { inputs } = formula.record;
  const middle = inputs.map(({ valid: [low, high] }) => (low + high) / 2);
  for (const [place, { name, possible }] of inputs.entries())
    for (const impossible of [Number.NaN, possible[0] - 1, possible[1] + 1]) {
      const given = middle.with(place, impossible);
      const met = evaluate(formula, given);
      expect(met.kind).toBe('refused');
      if (met.kind === 'refused') expect(met.reasons.join(' ')).toContain(name);
      expect(() => requirePossible(formula.record, given)).toThrow(name);
    }
});

const QUOTIENT: FormulaRecord = {
  id: 'test/quotient',
  revision: 1,
  title: 'Quotient of a test',
  equation: 'a / b',
  inputs: [
    { name: 'dividend', symbol: 'a', unit: 'kg', possible: [-10, 100], valid: [0, 50] },
    { name: 'divisor', symbol: 'b', unit: 'm', possible: [0, 20], valid: [1, 10] },
  ],
  conditions: [{ says: 'The divisor must be smaller.', holds: (a = 0, b = 0) => b < a }],
  output: { name: 'quotient', symbol: 'q', unit: 'kg/m' },
  source: OUR_OWN_DESIGN,
  doesNotKnow: 'Nothing: it is made for this test.',
};
const quotient = formula(QUOTIENT, (a: number, b: number) => a / b);

test.each([
  { given: [50, 10], value: 5, cautions: [] },
  { given: [50, 1], value: 50, cautions: [] },
  { given: [50.123456789, 10], value: 5.0123456789, cautions: ['dividend 50.1235 kg is outside 0 to 50'] },
  {
    given: [60.5, 0.5],
    value: 121,
    cautions: ['dividend 60.5 kg is outside 0 to 50', 'divisor 0.5 m is outside 1 to 10'],
  },
  { given: [11, 10.0625], value: 11 / 10.0625, cautions: ['divisor 10.0625 m is outside 1 to 10'] },
])('$given is computed, and flagged where it lies outside what is valid', ({ given, value, cautions }) => {
  expect(evaluate(quotient, given)).toEqual({ kind: 'value', value, cautions });
});

test('both ends of what is possible are possible', () => {
  expect(impossibilities({ inputs: QUOTIENT.inputs }, [-10, 0])).toEqual([]);
  expect(impossibilities({ inputs: QUOTIENT.inputs }, [100, 20])).toEqual([]);
});

test('all that cannot be is told at once, and what must hold together only where each alone can be', () => {
  const DIVIDEND = 'dividend must lie in -10 to 100 kg; it is -11.';
  const DIVISOR = 'divisor must lie in 0 to 20 m; it is NaN.';
  expect(evaluate(quotient, [-11, Number.NaN])).toEqual({ kind: 'refused', reasons: [DIVIDEND, DIVISOR] });
  expect(evaluate(quotient, [-11, 5])).toEqual({ kind: 'refused', reasons: [DIVIDEND] });
  expect(evaluate(quotient, [5, 5])).toEqual({ kind: 'refused', reasons: ['The divisor must be smaller.'] });
  expect(() => requirePossible(QUOTIENT, [-11, Number.NaN])).toThrow(`Quotient of a test: ${DIVIDEND}`);
  expect(() => requirePossible(QUOTIENT, [5, 4])).not.toThrow();
});

test('a result without a finite value is refused by the title', () => {
  expect(evaluate(quotient, [5, 0])).toEqual({
    kind: 'refused',
    reasons: ['Quotient of a test has no finite value here.'],
  });
});

test('an input that is not there is missing, and cannot be', () => {
  expect(outsideValidRange(QUOTIENT, [60])).toEqual(['dividend 60 kg is outside 0 to 50', 'divisor is missing']);
  expect(evaluate(quotient, [5])).toEqual({
    kind: 'refused',
    reasons: ['divisor must lie in 0 to 20 m; it is undefined.'],
  });
});
