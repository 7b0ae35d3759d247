import type { ReactNode } from 'react';
import styles from './table.module.css';

export interface TableProps {
  /** Said aloud, and shown unless hidden. */
  readonly caption: string;
  readonly isCaptionHidden?: boolean;
  /** The rows: `thead` and `tbody` as in any table. Numbers take the class `number`. */
  readonly children: ReactNode;
  readonly isWide?: boolean;
}

/** A plain table that scrolls sideways on its own where the page is narrow. */
export const Table = ({ caption, isCaptionHidden = false, children, isWide = true }: TableProps) => (
  <section className={styles['scrolls']} aria-label={caption}>
    <table className={isWide ? styles['wide'] : undefined}>
      <caption className={isCaptionHidden ? 'unseen' : undefined}>{caption}</caption>
      {children}
    </table>
  </section>
);
