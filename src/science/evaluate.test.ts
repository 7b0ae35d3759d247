import fc from 'fast-check';
import { expect, test } from 'vitest';
import { evaluate, requirePossible } from './evaluate.ts';
import type { FormulaInput } from './formula.ts';
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
