import { memo, useMemo } from 'react';
import type { Source } from '#science/formula.ts';
import { SourceText } from './entries/source-text.tsx';
import { checksOf, recordOf, type OutlinePart } from './outline.ts';
import styles from './evidence-page.module.css';

interface SourcesSectionProps {
  readonly sources: readonly Source[];
  readonly parts: readonly OutlinePart[];
}

interface Reference {
  readonly id: string;
  readonly title: string;
}

/** Every paper once, with the entries that rest on it or are checked against it. */
export const SourcesSection = memo(function SourcesSection({ sources, parts }: SourcesSectionProps) {
  const users = useMemo(() => usersOfSources(parts), [parts]);
  return (
    <section className={styles['sources']} id="sources" aria-labelledby="sources-heading">
      <h2 id="sources-heading">Sources</h2>
      <ol>
        {sources.map((source) => (
          <li key={source.text}>
            <SourceText source={source} />
            <Users of={users.get(source.text) ?? []} />
          </li>
        ))}
      </ol>
    </section>
  );
});

const MOST_NAMED = 6;

function Users({ of }: { readonly of: readonly Reference[] }) {
  if (of.length === 0) return null;
  const more = of.length - MOST_NAMED;
  return (
    <p className={styles['users']}>
      Behind{' '}
      {of.slice(0, MOST_NAMED).map(({ id, title }, place) => (
        <span key={id}>
          {place > 0 && '; '}
          <a href={`#${id}`}>{title}</a>
        </span>
      ))}
      {more > 0 && ` and ${more} more`}.
    </p>
  );
}

const usersOfSources = (parts: readonly OutlinePart[]): ReadonlyMap<string, readonly Reference[]> => {
  const users = new Map<string, Map<string, Reference>>();
  for (const entry of parts.flatMap(({ chapters }) => chapters.flatMap(({ entries }) => entries))) {
    const { id, title, source, restsOn = [] } = recordOf(entry);
    for (const { text } of [source, ...restsOn, ...checksOf(entry).map((check) => check.source)]) {
      const known = users.get(text) ?? new Map<string, Reference>();
      known.set(id, { id, title });
      users.set(text, known);
    }
  }
  return new Map([...users].map(([text, references]) => [text, [...references.values()]]));
};
