import { Link } from 'wouter';
import type { CardAhead } from '#contract/windows/settings-window.ts';
import { dayFromIso } from '#units/day.ts';
import { shortDate } from '../../parts/parts.ts';
import styles from './settings-page.module.css';

interface CardsBetweenProps {
  readonly cards: readonly CardAhead[];
  readonly from: string;
  /** Empty: until further notice. */
  readonly until: string;
}

/** Cards that went out already for days on which the machine is out: they stand, and somebody has to see to them. */
export function CardsBetween({ cards, from, until }: CardsBetweenProps) {
  const [first, last] = [dayFromIso(from), dayFromIso(until)];
  const hit = cards.filter(({ day }) => first !== null && day >= first && (last === null || day <= last));
  return (
    <div aria-live="polite">
      {hit.length > 0 && (
        <div className={styles['warning']}>
          {hit.length === 1 ? 'One issued card asks' : `${hit.length} issued cards ask`} for it on these days, and{' '}
          {hit.length === 1 ? 'stands' : 'stand'}: issue anew for{' '}
          {hit.map(({ card, person, day }, place) => (
            <span key={card}>
              {place > 0 && ', '}
              <Link href={`/cards/${card}`}>
                {person} {shortDate(day)}
              </Link>
            </span>
          ))}
          .
        </div>
      )}
    </div>
  );
}
