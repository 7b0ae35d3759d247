import type { ReactNode } from 'react';
import { checkedAs, type EntryRecord } from '#science/formula.ts';
import { shortSource } from '../checks/check-groups.ts';
import { Prose } from '../equation/prose.tsx';
import { PlotFigure } from '../plot/plot-figure.tsx';
import { ScreenLinks } from './screen-links.tsx';
import { SourceText } from './source-text.tsx';
import styles from './entry.module.css';

interface EntryFrameProps {
  readonly record: EntryRecord;
  readonly kind: string;
  /** The equation, the quantities, the rows: what sets a kind of entry apart. */
  readonly children: ReactNode;
  /** What follows the sources: trying and checking. */
  readonly after?: ReactNode;
}

/** One entry as a small paper: head, body, what it does not know, where it comes from, who uses it, how it is checked. */
export function EntryFrame({ record, kind, children, after }: EntryFrameProps) {
  const { id, revision, title, source, restsOn = [], doesNotKnow, plot } = record;
  return (
    <article className={styles['entry']} id={id} aria-labelledby={`${id}-title`}>
      <header>
        <h4 id={`${id}-title`}>
          <a href={`#${id}`}>
            <Prose text={title} />
          </a>
        </h4>
        <p className={styles['id']}>
          {kind} <code>{id}</code>, revision {revision}
        </p>
      </header>
      {children}
      {plot && <PlotFigure plot={plot} title={title} />}
      <dl className={styles['facts']}>
        <Fact name="Does not know">
          <p>
            <Prose text={doesNotKnow} />
          </p>
        </Fact>
        <Fact name="Source">
          <SourceText source={source} checked={checkedAs(record)} />
        </Fact>
        {restsOn.length > 0 && (
          <Fact name="Rests on">
            <div className={styles['in-full']}>
              {restsOn.map((other) => (
                <SourceText key={other.text} source={other} />
              ))}
            </div>
            <p className={styles['in-short']}>{restsOn.map(({ text }) => shortSource(text)).join('; ')}</p>
          </Fact>
        )}
        <Fact name="Used by">
          <ScreenLinks id={id} />
        </Fact>
        {after}
      </dl>
    </article>
  );
}

/** A label at the left, what there is to say at the right. */
export function Fact({
  name,
  isOnScreenOnly = false,
  children,
}: {
  readonly name: string;
  readonly isOnScreenOnly?: boolean;
  readonly children: ReactNode;
}) {
  return (
    <div className={isOnScreenOnly ? 'on-screen' : undefined}>
      <dt>{name}</dt>
      <dd>{children}</dd>
    </div>
  );
}
