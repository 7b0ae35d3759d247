import type { Card } from '#domain/card.ts';
import { join } from '../../parts/join.ts';
import styles from './card.module.css';

const shorter = (label: string): string => label.replace(/\s*\(.*\)/, '');

/** Where the minutes go, to scale; what is no training is hatched. */
export const MinutesStrip = ({ card }: { readonly card: Card }) => (
  <ol className={styles['minutes']} aria-label="Minutes">
    {card.minutes.map(({ label, minutes, overhead }, place) => (
      <li
        key={`${place} ${label}`}
        className={join(overhead && styles['overhead'])}
        style={{ flexGrow: Math.max(minutes, 1) }}
        title={`${label}, ${Math.round(minutes)} minutes`}
      >
        <span>
          {shorter(label)} {Math.round(minutes)}
        </span>
      </li>
    ))}
  </ol>
);
