import type { ReactNode } from 'react';
import type { Check } from '#science/check.ts';
import type { FormulaInput } from '#science/formula.ts';
import { join } from '#web/parts/parts.ts';
import { MathText } from '../equation/math-text.tsx';
import { Prose } from '../equation/prose.tsx';
import { shownNumber } from '../shown-number.ts';
import { checkGroups, shortSource } from './check-groups.ts';
import type { Recomputed } from './check-run.ts';
import { useResults } from './check-run-context.ts';
import styles from './checks.module.css';

interface CheckTableProps {
  readonly label: string;
  readonly checks: readonly Check[];
  /** The inputs of a formula, a column for each; elsewhere a check says what it is of. */
  readonly inputs?: readonly FormulaInput[];
}

const RESULT_COLUMNS = 4;
const NARROW = 3;
const ROOMY = 9;

/** What was printed, and what comes out here and now. Rows stand under the reason for their tolerance. */
export function CheckTable({ label, checks, inputs }: CheckTableProps) {
  const groups = checkGroups(checks);
  const width = (inputs?.length ?? 1) + RESULT_COLUMNS;
  const isNarrow = inputs !== undefined && inputs.length <= NARROW && checks.length > NARROW;
  return (
    <section className={join(styles['scroll'], isNarrow && styles['narrow'])} aria-label={label}>
      <table className={join(styles['checks'], width > ROOMY && styles['crowded'])}>
        <CheckHead {...(inputs ? { inputs } : {})} />
        {groups.map((group, place) => (
          <tbody key={place}>
            <tr>
              <th scope="rowgroup" colSpan={width} className={styles['reason']}>
                <div>
                  {capital(group.because)}. <span>{shortSource(group.source.text)}</span>
                </div>
              </th>
            </tr>
            <CheckRows checks={group.checks} />
          </tbody>
        ))}
      </table>
    </section>
  );
}

function CheckHead({ inputs }: Pick<CheckTableProps, 'inputs'>) {
  return (
    <thead>
      <tr>
        {inputs?.map(({ name, symbol, unit }, place) => (
          <th scope="col" className="number" key={place} title={`${name} [${unit}]`}>
            <MathText text={symbol} />
          </th>
        )) ?? <th scope="col">Of</th>}
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
      </tr>
    </thead>
  );
}

function CheckRows({ checks }: { readonly checks: readonly Check[] }) {
  const results = useResults(checks);
  return checks.map((check, place) => (
    <tr key={place}>
      {check.kind === 'formula' ? (
        check.given.map((value, at) => (
          <td key={at} className="number">
            {shownNumber(value)}
          </td>
        ))
      ) : (
        <td>
          <Prose text={check.title} />
        </td>
      )}
      <td className="number">{shownNumber(check.printed, figuresFor(check, results[place]))}</td>
      <Outcome found={results[place]} check={check} />
    </tr>
  ));
}

interface OutcomeProps {
  readonly found: Recomputed | undefined;
  readonly check: Check;
}

const USUAL_FIGURES = 6;
const MOST_FIGURES = 15;
const TOLERANCE_FIGURES = 3;

/** Where a value is off by little, the figures in which it is off are shown. */
const figuresFor = ({ printed, within }: Check, found: Recomputed | undefined): number => {
  if (found?.kind !== 'computed' || found.holds) return USUAL_FIGURES;
  const figures = Math.ceil(Math.log10(Math.abs(printed) / within)) + 2;
  return Number.isFinite(figures) ? Math.min(MOST_FIGURES, Math.max(USUAL_FIGURES, figures)) : MOST_FIGURES;
};

function Outcome({ found, check }: OutcomeProps): ReactNode {
  const { within } = check;
  const tolerance = <td className="number soft">{within === 0 ? 'exact' : shownNumber(within, TOLERANCE_FIGURES)}</td>;
  if (!found)
    return (
      <>
        <td className="number faint">…</td>
        {tolerance}
        <td className="faint">computing</td>
      </>
    );
  if (found.kind === 'failed')
    return (
      <>
        <td className="number">–</td>
        {tolerance}
        <td className={styles['fails']}>did not compute: {found.why}</td>
      </>
    );
  return (
    <>
      <td className="number">{shownNumber(found.value, figuresFor(check, found))}</td>
      {tolerance}
      <td className={found.holds ? undefined : styles['fails']}>{found.holds ? 'holds' : 'does not hold'}</td>
    </>
  );
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1).replace(/\.$/, '');
