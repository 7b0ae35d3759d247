import { useEffect, useRef, useState } from 'react';
import { Button } from '../../parts/parts.ts';
import type { OutlinePart } from './outline.ts';
import styles from './contents.module.css';

interface ContentsProps {
  readonly parts: readonly OutlinePart[];
  readonly sources: number;
  readonly sought: string;
  readonly onSeek: (sought: string) => void;
  /** What the search found, in words. */
  readonly found: string;
  /** The chapter that is being read. */
  readonly current: string | null;
}

/** The search and the list of chapters: at the side, above the text where it is narrow, a page of its own on paper. */
export function Contents({ parts, sources, sought, onSeek, found, current }: ContentsProps) {
  const [isOpen, open] = useState(false);
  return (
    <nav aria-label="Contents" className={styles['contents']}>
      <div className="on-screen">
        <label>
          Find a title, symbol, author, id or figure
          <input type="search" value={sought} onChange={(event) => onSeek(event.target.value)} />
        </label>
        <output className={styles['found']}>{found}</output>
        <div className={styles['toggle']}>
          <Button onPress={() => open(!isOpen)}>{isOpen ? 'Hide the contents' : 'Show the contents'}</Button>
        </div>
      </div>
      <p className={styles['paper-heading']}>Contents</p>
      <ol className={styles[isOpen ? 'open' : 'closed']}>
        {parts.map(({ anchor, number, heading, chapters }) => (
          <li key={anchor}>
            <ContentsLine anchor={anchor} number={number} heading={heading} isCurrent={false} />
            <ol>
              {chapters.map((chapter) => (
                <li key={chapter.anchor}>
                  <ContentsLine {...chapter} isCurrent={chapter.anchor === current} count={chapter.entries.length} />
                </li>
              ))}
            </ol>
          </li>
        ))}
        <li>
          <ContentsLine
            anchor="sources"
            number=""
            heading="Sources"
            isCurrent={current === 'sources'}
            count={sources}
          />
        </li>
      </ol>
    </nav>
  );
}

interface ContentsLineProps {
  readonly anchor: string;
  readonly number: string;
  readonly heading: string;
  readonly isCurrent: boolean;
  readonly count?: number;
}

function ContentsLine({ anchor, number, heading, isCurrent, count }: ContentsLineProps) {
  const line = useRef<HTMLAnchorElement>(null);
  useEffect(() => {
    if (isCurrent) keepInSight(line.current);
  }, [isCurrent]);
  return (
    <a href={`#${anchor}`} ref={line} aria-current={isCurrent ? 'location' : undefined}>
      <span className={styles['number']}>{number}</span>
      <span>
        {heading}
        {count ? <span className="faint">&nbsp;{count}</span> : null}
      </span>
    </a>
  );
}

/** Scrolls the list, never the page. */
const keepInSight = (line: HTMLElement | null): void => {
  const list = line?.closest('nav');
  if (!line || !list || list.scrollHeight <= list.clientHeight) return;
  const [inner, outer] = [line.getBoundingClientRect(), list.getBoundingClientRect()];
  if (inner.top < outer.top + 90 || inner.bottom > outer.bottom - 20)
    list.scrollTop += inner.top - outer.top - outer.height / 2;
};
