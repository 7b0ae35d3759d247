import type { Source } from '#science/formula.ts';
import styles from './entry.module.css';

/** A paper with how far it was checked, and where it can be read. */
export function SourceText({ source: { text, status, doi, note } }: { readonly source: Source }) {
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
      <span className={styles['status']}>{status}</span>
      {note && <span className="soft"> {note}</span>}
    </p>
  );
}
