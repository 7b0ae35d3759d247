import { useEffect, useMemo, useState } from 'react';
import type { Check } from '#science/check.ts';
import { ALL_CHECKS, ALL_FORMULAS } from '#science/textbook.ts';
import { Button, Page } from '../../parts/parts.ts';
import { CheckTable } from './check-table.tsx';
import { FormulaEntry } from './formula-entry.tsx';
import { formulaGroups, foundIn, seriesChecks } from './formula-groups.ts';
import { useRecomputed, type Recomputed } from './use-recomputed.ts';
import styles from './evidence-page.module.css';

const GROUPS = formulaGroups(ALL_FORMULAS, ALL_CHECKS);
const SERIES = seriesChecks(ALL_CHECKS);

/** The textbook of every formula, each check computed anew while it is read. */
export default function EvidencePage() {
  const [sought, setSought] = useState('');
  const recomputed = useRecomputed(ALL_CHECKS);
  const groups = useMemo(() => foundIn(GROUPS, sought), [sought]);
  useGoToAddress();
  return (
    <Page title="Evidence">
      <Tally recomputed={recomputed} />
      <div className={styles['frame']}>
        <nav aria-label="Groups of formulas" className={styles['contents']}>
          <label>
            Find a formula, symbol or author
            <input type="search" value={sought} onChange={(event) => setSought(event.target.value)} />
          </label>
          <ul>
            {groups.map((group) => (
              <li key={group.id}>
                <a href={`#group-${group.id}`}>{group.title}</a> <span className="faint">{group.entries.length}</span>
              </li>
            ))}
            {sought === '' && (
              <li>
                <a href="#series">Checks of more than one formula</a> <span className="faint">{SERIES.length}</span>
              </li>
            )}
          </ul>
        </nav>
        <div>
          {groups.length === 0 && (
            <p>
              No formula holds “{sought}”.{' '}
              <Button kind="link" onPress={() => setSought('')}>
                Show all
              </Button>
            </p>
          )}
          {groups.map((group) => (
            <section key={group.id} id={`group-${group.id}`} aria-label={group.title}>
              <h2>{group.title}</h2>
              {group.entries.map((entry) => (
                <FormulaEntry key={entry.formula.record.id} entry={entry} recomputed={recomputed} />
              ))}
            </section>
          ))}
          {sought === '' && <SeriesSection recomputed={recomputed} />}
        </div>
      </div>
    </Page>
  );
}

function SeriesSection({ recomputed }: { readonly recomputed: ReadonlyMap<Check, Recomputed> }) {
  return (
    <section id="series" aria-label="Checks of more than one formula">
      <h2>Checks of more than one formula</h2>
      <p className="soft">
        Whole columns, filters and searches for a root, against what was printed or computed elsewhere.
      </p>
      <CheckTable label="Checks of more than one formula" checks={SERIES} recomputed={recomputed} />
    </section>
  );
}

function Tally({ recomputed }: { readonly recomputed: ReadonlyMap<Check, Recomputed> }) {
  const results = [...recomputed.values()];
  const broken = results.filter((result) => result.kind === 'failed' || !result.holds).length;
  const open = ALL_CHECKS.length - results.length;
  return (
    <p>
      <output>
        {ALL_FORMULAS.length} formulas and {ALL_CHECKS.length} checks against print.{' '}
        {open > 0 ? (
          <span className="soft">Computing them in this browser: {open} to go.</span>
        ) : broken === 0 ? (
          <>Computed in this browser just now: all {results.length} hold.</>
        ) : (
          <b className={styles['fails']}>
            Computed in this browser just now: {broken} of {results.length} do not hold.
          </b>
        )}{' '}
        <span className="soft">
          Seen: read in a public copy. From memory: still to be opened. Common practice: no source. Our own design:
          ours.
        </span>
      </output>
    </p>
  );
}

/** An address such as evidence#one-rep-max/wathan is drawn after the browser looked for it. */
const useGoToAddress = (): void => {
  useEffect(() => {
    const id = decodeURIComponent(location.hash.slice(1));
    if (id) document.getElementById(id)?.scrollIntoView();
  }, []);
};
