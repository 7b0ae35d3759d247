import type { Check } from '#science/check.ts';
import type { FormulaInput } from '#science/formula.ts';
import { checkGroups, shortSource } from './check-groups.ts';
import { CheckTable } from './check-table.tsx';
import { useResults } from './check-run-context.ts';
import styles from './checks.module.css';

interface CheckFoldProps {
  readonly of: string;
  readonly checks: readonly Check[];
  readonly inputs?: readonly FormulaInput[];
}

/** So many checks are read at a glance; more are opened by who wants them, by the browser's own search, and on paper. */
const AT_A_GLANCE = 5;
const NAMED = 3;

/** The checks of one entry: their outcome in a line, and under it every one of them. */
export function CheckFold({ of, checks, inputs }: CheckFoldProps) {
  const results = useResults(checks);
  const done = results.filter((result) => result !== undefined);
  const broken = done.filter((result) => result.kind === 'failed' || !result.holds).length;
  return (
    <details open={checks.length <= AT_A_GLANCE || broken > 0}>
      <summary>
        <Outcome of={checks.length} done={done.length} broken={broken} />{' '}
        <span className="soft">against {against(checks)}</span>
      </summary>
      <CheckTable label={`Checks of ${of}`} checks={checks} {...(inputs ? { inputs } : {})} />
    </details>
  );
}

function Outcome({ of, done, broken }: { readonly of: number; readonly done: number; readonly broken: number }) {
  if (done < of) return <>{of === 1 ? '1 check' : `${of} checks`}, being computed</>;
  if (broken > 0)
    return (
      <b className={styles['fails']}>
        {broken} of {of} {broken === 1 ? 'does' : 'do'} not hold
      </b>
    );
  return <>{of === 1 ? 'The one check holds' : `All ${of} hold`}</>;
}

/** "Brzycki M. (1993) and 2 other sources". */
const against = (checks: readonly Check[]): string => {
  const sources = [...new Set(checkGroups(checks).map(({ source }) => shortSource(source.text)))];
  const named = sources.slice(0, NAMED).join('; ');
  const more = sources.length - NAMED;
  return more > 0 ? `${named} and ${more} more` : named;
};
