import type { Card, CardMinutes } from '#domain/card.ts';
import { join } from '../../parts/join.ts';
import styles from './card.module.css';

/** With more parts than these, names no longer fit: exercises stand by their places, machines in a sentence below. */
const MOST_NAMED = 8;

const isNamed = ({ minutes }: Card): boolean => minutes.length <= MOST_NAMED;

const shorter = (label: string): string => label.replace(/\s*\(.*\)/, '');

/** Where the minutes go, to scale; what is no training is hatched. */
export const MinutesStrip = ({ card }: { readonly card: Card }) => (
  <ol className={styles['minutes']} aria-label="Minutes">
    {card.minutes.map((part, place) => (
      <li
        key={`${place} ${part.label}`}
        className={join(part.overhead && styles['overhead'])}
        style={{ flexGrow: Math.max(part.minutes, 1) }}
        title={`${part.label}, ${Math.round(part.minutes)} minutes`}
      >
        <Part card={card} part={part} />
      </li>
    ))}
  </ol>
);

const placeOf = ({ items }: Card, { label }: CardMinutes): number | null =>
  items.find(({ exerciseName }) => exerciseName.toLowerCase() === label)?.place ?? null;

const Part = ({ card, part }: { readonly card: Card; readonly part: CardMinutes }) => {
  const minutes = Math.round(part.minutes);
  if (isNamed(card))
    return (
      <span>
        {shorter(part.label)} {minutes}
      </span>
    );
  const place = part.overhead ? null : placeOf(card, part);
  return (
    <span>
      {place === null ? null : <strong>{place} </strong>}
      {part.overhead ? minutes : `${minutes}′`}
    </span>
  );
};

/** "Hatched: set up 8, stow 8, resistive machine; set up 6, stow 5, treadmill." Nothing where the strip says it itself. */
export const hatchedSays = (card: Card): string => {
  if (isNamed(card)) return '';
  const machines = new Map<string, readonly string[]>();
  for (const { label, minutes, overhead } of card.minutes) {
    if (!overhead) continue;
    const [what = '', machine = ''] = shorter(label).split(', ');
    machines.set(machine, [...(machines.get(machine) ?? []), `${what} ${Math.round(minutes)}`]);
  }
  const says = [...machines].map(([machine, parts]) => [...parts, ...(machine === '' ? [] : [machine])].join(', '));
  return says.length === 0 ? '' : `Hatched: ${says.join('; ')}.`;
};
