import type { Check } from '#science/check.ts';
import type { FormulaInput, FormulaRecord } from '#science/formula.ts';
import { CheckTable } from './check-table.tsx';
import type { FormulaEntry as Entry } from './formula-groups.ts';
import { shownRange } from './shown-number.ts';
import { SourceLine } from './source-line.tsx';
import { WithSubscripts } from './with-subscripts.tsx';
import type { Recomputed } from './use-recomputed.ts';
import styles from './evidence-page.module.css';

interface FormulaEntryProps {
  readonly entry: Entry;
  readonly recomputed: ReadonlyMap<Check, Recomputed>;
}

/** One formula as a small paper. */
export function FormulaEntry({ entry: { formula, checks }, recomputed }: FormulaEntryProps) {
  const { record } = formula;
  return (
    <article className={styles['entry']} id={record.id} aria-labelledby={`${record.id}-title`}>
      <h3 id={`${record.id}-title`}>
        <a href={`#${record.id}`}>{record.title}</a>
        <span className={styles['id']}>
          {record.id}, revision {record.revision}
        </span>
      </h3>
      <p className={styles['equation']}>
        <i>
          <WithSubscripts text={record.output.symbol} />
        </i>{' '}
        = <WithSubscripts text={record.equation} />
      </p>
      <InputTable record={record} />
      <SourceLine source={record.source} />
      {record.restsOn?.map((source, index) => (
        <SourceLine key={index} source={source} />
      ))}
      <p>
        <b>Does not know:</b> {record.doesNotKnow}
      </p>
      {checks.length > 0 ? (
        <CheckTable label={`Checks of ${record.title}`} checks={checks} recomputed={recomputed} />
      ) : (
        <p className="soft">No printed value was found to check this against.</p>
      )}
    </article>
  );
}

function InputTable({ record }: { readonly record: FormulaRecord }) {
  return (
    <section className={styles['scroll']} aria-label={`Inputs of ${record.title}`}>
      <table className={styles['inputs']}>
        <thead>
          <tr>
            <th scope="col">Quantity</th>
            <th scope="col">Symbol</th>
            <th scope="col">Unit</th>
            <th scope="col">Possible (else refused)</th>
            <th scope="col">Valid (else flagged)</th>
          </tr>
        </thead>
        <tbody>
          {record.inputs.map((input) => (
            <InputRow key={input.symbol + input.name} input={input} />
          ))}
          <tr>
            <td>{record.output.name} (result)</td>
            <td>
              <i>
                <WithSubscripts text={record.output.symbol} />
              </i>
            </td>
            <td className="soft">{record.output.unit}</td>
            <td className="faint">–</td>
            <td className="faint">–</td>
          </tr>
        </tbody>
      </table>
    </section>
  );
}

function InputRow({ input }: { readonly input: FormulaInput }) {
  return (
    <tr>
      <td>{input.name}</td>
      <td>
        <i>
          <WithSubscripts text={input.symbol} />
        </i>
      </td>
      <td className="soft">{input.unit}</td>
      <td>{shownRange(input.possible)}</td>
      <td>{shownRange(input.valid)}</td>
    </tr>
  );
}
