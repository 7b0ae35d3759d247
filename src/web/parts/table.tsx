import { useEffect, useRef, useState, type ReactNode, type RefObject } from 'react';
import styles from './table.module.css';

export interface TableProps {
  /** Said aloud, and shown unless hidden. */
  readonly caption: string;
  readonly isCaptionHidden?: boolean;
  /** The rows: `thead` and `tbody` as in any table. Numbers take the class `number`. */
  readonly children: ReactNode;
  readonly isWide?: boolean;
}

/** A plain table that scrolls sideways on its own where the page is narrow, and then by the keyboard too. */
export const Table = ({ caption, isCaptionHidden = false, children, isWide = true }: TableProps) => {
  const [scroller, isCut] = useCut();
  return (
    <section
      className={styles['scrolls']}
      aria-label={caption}
      ref={scroller}
      // oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex -- what scrolls must be within reach of the keyboard
      tabIndex={isCut ? 0 : undefined}
    >
      <table className={isWide ? styles['wide'] : undefined}>
        <caption className={isCaptionHidden ? 'unseen' : undefined}>{caption}</caption>
        {children}
      </table>
    </section>
  );
};

/** Is an element's content wider than the element, now that it has this size? */
const useCut = (): readonly [RefObject<HTMLElement | null>, boolean] => {
  const scroller = useRef<HTMLElement>(null);
  const [isCut, setIsCut] = useState(false);
  useEffect(() => {
    const { current } = scroller;
    if (!current) return;
    const observer = new ResizeObserver(() => setIsCut(current.scrollWidth > current.clientWidth));
    observer.observe(current);
    return () => observer.disconnect();
  }, []);
  return [scroller, isCut];
};
