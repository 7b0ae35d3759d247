import type { Check } from '#science/check.ts';
import type { Source, SourceStatus } from '#science/formula.ts';
import { CheckTable } from './checks/check-table.tsx';
import { useTally } from './checks/check-run-context.ts';
import { Button } from '../../parts/parts.ts';
import type { OutlinePart } from './outline.ts';
import styles from './evidence-page.module.css';

interface FrontProps {
  readonly parts: readonly OutlinePart[];
  readonly sources: readonly Source[];
  readonly onSeek: (sought: string) => void;
}

/** What this book is, whether its checks hold, and how far its sources were checked. The title page on paper. */
export function Front({ parts, sources, onSeek }: FrontProps) {
  return (
    <header className={styles['front']}>
      <h1>Evidence</h1>
      <p className={styles['lead']}>
        Every formula, method and table that a number in Ballast can rest on: what it takes, where it holds, what it
        does not know, and who published it.
      </p>
      <Verdict parts={parts} />
      <Statuses sources={sources} onSeek={onSeek} />
      <Broken />
    </header>
  );
}

const KINDS = ['formula', 'method', 'table'] as const;

function Verdict({ parts }: Pick<FrontProps, 'parts'>) {
  const { of, done, broken, milliseconds } = useTally();
  const entries = parts.flatMap(({ chapters }) => chapters.flatMap((chapter) => chapter.entries));
  const counts = KINDS.map((kind) => [kind, entries.filter((entry) => entry.kind === kind).length] as const)
    .filter(([, count]) => count > 0)
    .map(([kind, count]) => `${count} ${kind}${count === 1 ? '' : 's'}`);
  return (
    <output className={styles['verdict']}>
      {counts.join(', ')}; {of} checks against what was printed or computed elsewhere.{' '}
      {done < of ? (
        <span className="soft">Computing them in this browser: {of - done} to go.</span>
      ) : broken.length === 0 ? (
        <b>
          Computed in this browser just now, in {seconds(milliseconds)}: all {of} hold.
        </b>
      ) : (
        <b className={styles['fails']}>
          Computed in this browser just now: {broken.length} of {of} do not hold.
        </b>
      )}
    </output>
  );
}

const seconds = (milliseconds: number): string => `${(milliseconds / 1000).toFixed(2)} s`;

const STATUSES: readonly (readonly [SourceStatus, string])[] = [
  ['seen', 'read in a public copy'],
  ['from memory', 'still to be opened'],
  ['common practice', 'of the trade, no paper'],
  ['our own design', 'ours, and editable'],
];

function Statuses({ sources, onSeek }: Pick<FrontProps, 'sources' | 'onSeek'>) {
  return (
    <dl className={styles['statuses']}>
      {STATUSES.map(([status, says]) => (
        <div key={status}>
          <dt>
            <span className={styles['paper-only']}>{status}</span>
            <Button kind="link" onPress={() => onSeek(status)} label={`Find what is ${status}`}>
              {status}
            </Button>
          </dt>
          <dd>
            <b>{sources.filter((source) => source.status === status).length}</b> <span className="soft">{says}</span>
          </dd>
        </div>
      ))}
    </dl>
  );
}

/** Before everything else stands what does not hold. */
function Broken() {
  const { broken } = useTally();
  if (broken.length === 0) return null;
  return (
    <section className={styles['broken']} aria-labelledby="broken-heading">
      <h2 id="broken-heading">Checks that do not hold</h2>
      <p>Do not rely on these entries until their checks hold again.</p>
      {[...byOwner(broken)].map(([owner, checks]) => (
        <div key={owner}>
          <p>{owner.includes('/') ? <a href={`#${owner}`}>{owner}</a> : owner}</p>
          <CheckTable label={`Checks of ${owner} that do not hold`} checks={checks} {...inputsOf(checks)} />
        </div>
      ))}
    </section>
  );
}

const inputsOf = ([first]: readonly Check[]) =>
  first?.kind === 'formula' ? { inputs: first.formula.record.inputs } : {};

const ownerOf = (check: Check): string => {
  switch (check.kind) {
    case 'formula':
      return check.formula.record.id;
    case 'method':
      return check.method.record.id;
    case 'series':
      return 'Checks of more than one entry';
  }
};

const byOwner = (checks: readonly Check[]): ReadonlyMap<string, readonly Check[]> => {
  const owners = new Map<string, Check[]>();
  for (const check of checks) owners.set(ownerOf(check), [...(owners.get(ownerOf(check)) ?? []), check]);
  return owners;
};
