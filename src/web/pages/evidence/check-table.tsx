import type { Check, FormulaCheck } from '#science/check.ts';
import { shownNumber } from './shown-number.ts';
import { WithSubscripts } from './with-subscripts.tsx';
import type { Recomputed } from './use-recomputed.ts';
import styles from './evidence-page.module.css';

interface CheckTableProps {
  readonly label: string;
  readonly checks: readonly Check[];
  readonly recomputed: ReadonlyMap<Check, Recomputed>;
}

/** What was printed, and what comes out here and now. */
export function CheckTable({ label, checks, recomputed }: CheckTableProps) {
  return (
    <section className={styles['scroll']} aria-label={label}>
      <table className={styles['checks']}>
        <thead>
          <tr>
            <th scope="col">Given</th>
            <th scope="col" className="number">
              Printed
            </th>
            <th scope="col" className="number">
              Computed now
            </th>
            <th scope="col" className="number">
              Within
            </th>
            <th scope="col">Holds</th>
            <th scope="col">Why this tolerance; where printed</th>
          </tr>
        </thead>
        <tbody>
          {checks.map((check, index) => (
            <tr key={index}>
              <td>{check.kind === 'formula' ? <WithSubscripts text={givenOf(check)} /> : check.title}</td>
              <td className="number">{shownNumber(check.printed)}</td>
              <Outcome found={recomputed.get(check)} within={check.within} />
              <td className="soft">
                {check.because}; {check.source.text.split(')')[0]}
                {check.source.text.includes(')') && ')'}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

function Outcome({ found, within }: { readonly found: Recomputed | undefined; readonly within: number }) {
  if (!found)
    return (
      <>
        <td className="number faint">…</td>
        <td className="number">{shownNumber(within)}</td>
        <td className="faint">computing</td>
      </>
    );
  if (found.kind === 'failed')
    return (
      <>
        <td className="number">–</td>
        <td className="number">{shownNumber(within)}</td>
        <td className={styles['fails']}>did not compute: {found.why}</td>
      </>
    );
  return (
    <>
      <td className="number">{shownNumber(found.value)}</td>
      <td className="number">{shownNumber(within)}</td>
      <td className={found.holds ? undefined : styles['fails']}>{found.holds ? 'holds' : 'does not hold'}</td>
    </>
  );
}

const givenOf = (check: FormulaCheck): string =>
  check.given
    .map((value, place) => `${check.formula.record.inputs[place]?.symbol ?? '?'} = ${shownNumber(value)}`)
    .join(', ');
