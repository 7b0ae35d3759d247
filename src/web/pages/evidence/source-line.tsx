import type { Source } from '#science/formula.ts';

/** A paper with how far it was checked, and where it can be read. */
export function SourceLine({ source }: { readonly source: Source }) {
  return (
    <p className="evidence-source">
      <span className="evidence-status">{source.status}</span> {source.text}
      {source.doi && (
        <>
          {' '}
          <a href={`https://doi.org/${source.doi}`} rel="noreferrer" target="_blank">
            doi:{source.doi}
          </a>
        </>
      )}
      {source.note && <span className="evidence-note"> {source.note}</span>}
    </p>
  );
}
