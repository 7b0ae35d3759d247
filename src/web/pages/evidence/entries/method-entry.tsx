import type { MethodCheck } from '#science/check.ts';
import type { AnyMethod } from '#science/method.ts';
import { CheckFold } from '../checks/check-fold.tsx';
import { Equation } from '../equation/math-text.tsx';
import { Prose } from '../equation/prose.tsx';
import { EntryFrame, Fact } from './entry-frame.tsx';
import { QuantityTable } from './quantity-table.tsx';
import styles from './entry.module.css';

interface MethodEntryProps {
  readonly method: AnyMethod;
  readonly checks: readonly MethodCheck[];
}

/** More than one expression: its equations in the order in which they are used. */
export function MethodEntry({ method: { record }, checks }: MethodEntryProps) {
  const { title, equations, inputs, outputs, refuses } = record;
  return (
    <EntryFrame
      record={record}
      kind="Method"
      after={
        <Fact name="Checks">
          <CheckFold of={title} checks={checks} />
        </Fact>
      }
    >
      <ol className={styles['steps']}>
        {equations.map((equation, place) => (
          <li key={place}>
            <Equation text={equation} />
          </li>
        ))}
      </ol>
      <QuantityTable of={title} inputs={inputs} outputs={outputs} />
      <p className="soft">Refuses:</p>
      <ul className={styles['refuses']}>
        {refuses.map((sentence) => (
          <li key={sentence}>
            <Prose text={sentence} />
          </li>
        ))}
      </ul>
    </EntryFrame>
  );
}
