import { memo } from 'react';
import { CheckTable } from './checks/check-table.tsx';
import { FormulaEntry } from './entries/formula-entry.tsx';
import { MethodEntry } from './entries/method-entry.tsx';
import { TableEntry } from './entries/table-entry.tsx';
import { Prose } from './equation/prose.tsx';
import { recordOf, type Entry, type OutlineChapter, type OutlinePart } from './outline.ts';
import styles from './evidence-page.module.css';

interface ChapterSectionProps {
  readonly chapter: OutlineChapter;
  /** The part that begins with this chapter. */
  readonly begins: OutlinePart | null;
}

/** A chapter of the textbook, under the heading of its part where it is the first of it. */
export const ChapterSection = memo(function ChapterSection({ chapter, begins }: ChapterSectionProps) {
  const { number, anchor, heading, says, entries, further } = chapter;
  return (
    <section className={styles['chapter']} id={anchor} aria-labelledby={`${anchor}-heading`}>
      {begins && (
        <header className={styles['part']} id={begins.anchor}>
          <h2>
            <span className={styles['number']}>{begins.number}</span> {begins.heading}
          </h2>
          <p>
            <Prose text={begins.says} />
          </p>
        </header>
      )}
      <header className={styles['opening']}>
        <h3 id={`${anchor}-heading`}>
          <span className={styles['number']}>{number}</span> {heading}
        </h3>
        <p>
          <Prose text={says} />
        </p>
      </header>
      {entries.map((entry) => (
        <EntryOfKind key={recordOf(entry).id} entry={entry} />
      ))}
      {further.length > 0 && (
        <section className={styles['further']} aria-label={`Further checks of ${heading}`}>
          <h4>Checks of more than one entry</h4>
          <CheckTable label={`Checks of more than one entry of ${heading}`} checks={further} />
        </section>
      )}
    </section>
  );
});

function EntryOfKind({ entry }: { readonly entry: Entry }) {
  switch (entry.kind) {
    case 'formula':
      return <FormulaEntry formula={entry.formula} checks={entry.checks} />;
    case 'method':
      return <MethodEntry method={entry.method} checks={entry.checks} />;
    case 'table':
      return <TableEntry table={entry.table} />;
  }
}
