import type { FormulaInput, FormulaOutput } from '#science/formula.ts';
import { MathText } from '../equation/math-text.tsx';
import { shownRange, shownUnit } from '../shown-number.ts';
import styles from './entry.module.css';

interface QuantityTableProps {
  readonly of: string;
  readonly inputs: readonly FormulaInput[];
  readonly outputs: readonly FormulaOutput[];
}

/** What goes in, within which bounds, and what comes out. */
export function QuantityTable({ of, inputs, outputs }: QuantityTableProps) {
  return (
    <section className={styles['scroll']} aria-label={`Quantities of ${of}`}>
      <table className={styles['quantities']}>
        <thead>
          <tr>
            <th scope="col">Symbol</th>
            <th scope="col">Quantity</th>
            <th scope="col">Unit</th>
            <th scope="col">Possible, else refused</th>
            <th scope="col">Valid, else flagged</th>
          </tr>
        </thead>
        <tbody>
          {outputs.map(({ name, symbol, unit }, place) => (
            <tr key={`result ${place}`} className={styles['output']}>
              <td>
                <MathText text={symbol} />
              </td>
              <td>{name}</td>
              <td className="soft">{shownUnit(unit)}</td>
              <td colSpan={2} className="soft">
                result
              </td>
            </tr>
          ))}
          {inputs.map((input, place) => (
            <InputRow key={place} input={input} />
          ))}
        </tbody>
      </table>
    </section>
  );
}

function InputRow({ input: { name, symbol, unit, possible, valid } }: { readonly input: FormulaInput }) {
  const isNarrower = valid[0] !== possible[0] || valid[1] !== possible[1];
  return (
    <tr>
      <td>
        <MathText text={symbol} />
      </td>
      <td>{name}</td>
      <td className="soft">{shownUnit(unit)}</td>
      <td className={styles['range']}>{shownRange(possible)}</td>
      <td className={isNarrower ? styles['range'] : 'soft'}>{isNarrower ? shownRange(valid) : 'wherever possible'}</td>
    </tr>
  );
}
