import type { Source } from '#science/formula.ts';
import styles from './evidence-page.module.css';

/** A paper with how far it was checked, and where it can be read. */
export function SourceLine({ source }: { readonly source: Source }) {
  return (
    <p>
      <span className={styles['status']}>{source.status}</span> {source.text}
      {source.doi && (
        <>
          {' '}
          <a href={`https://doi.org/${source.doi}`} rel="noreferrer" target="_blank">
            doi:{source.doi}
          </a>
        </>
      )}
      {source.note && <span className={styles['note']}> {source.note}</span>}
    </p>
  );
}
