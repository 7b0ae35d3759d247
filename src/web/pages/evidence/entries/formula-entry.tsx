import type { FormulaCheck } from '#science/check.ts';
import type { AnyFormula } from '#science/formula.ts';
import { CheckFold } from '../checks/check-fold.tsx';
import { Equation } from '../equation/math-text.tsx';
import { wholeEquation } from '../equation/whole-equation.ts';
import { Prose } from '../equation/prose.tsx';
import { shownNumber, shownUnit } from '../shown-number.ts';
import { TryIt } from '../trying/try-it.tsx';
import { EntryFrame, Fact } from './entry-frame.tsx';
import { QuantityTable } from './quantity-table.tsx';

interface FormulaEntryProps {
  readonly formula: AnyFormula;
  readonly checks: readonly FormulaCheck[];
}

/** One expression, one number. */
export function FormulaEntry({ formula, checks }: FormulaEntryProps) {
  const { record } = formula;
  const { equation, inputs, output, conditions = [], standardError } = record;
  return (
    <EntryFrame
      record={record}
      kind="Formula"
      after={
        <>
          <Fact name="Try it" isOnScreenOnly>
            <TryIt formula={formula} {...(checks[0] ? { example: checks[0] } : {})} />
          </Fact>
          <Fact name="Checks">
            <CheckFold of={record.title} checks={checks} inputs={inputs} />
          </Fact>
        </>
      }
    >
      <Equation text={wholeEquation(output.symbol, equation)} />
      <QuantityTable of={record.title} inputs={inputs} outputs={[output]} />
      {conditions.map(({ says }) => (
        <p key={says}>
          <span className="soft">Refused otherwise:</span> <Prose text={says} />
        </p>
      ))}
      {standardError && (
        <p>
          <span className="soft">Standard error:</span> {shownNumber(standardError.value)}{' '}
          {shownUnit(standardError.unit)}, {standardError.of}
        </p>
      )}
    </EntryFrame>
  );
}
