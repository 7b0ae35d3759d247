import type { Source } from '#science/formula.ts';
import styles from './entry.module.css';

interface SourceTextProps {
  readonly source: Source;
  /** How far it was checked for one entry; without it, how far the paper itself was. */
  readonly checked?: string;
}

/** A paper with how far it was checked, and where it can be read. */
export function SourceText({ source: { text, status, doi, note }, checked = status }: SourceTextProps) {
  return (
    <p>
      {text}
      {doi && (
        <>
          {' '}
          <a href={`https://doi.org/${doi}`} rel="noreferrer" target="_blank">
            doi:{doi}
          </a>
        </>
      )}{' '}
      <span className={styles['status']}>{checked}</span>
      {note && <span className="soft"> {note}</span>}
    </p>
  );
}
