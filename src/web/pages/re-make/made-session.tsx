import { showSets } from '#domain/asked-sets.ts';
import { totalMinutes, type CardDrill, type CardItem } from '#domain/card.ts';
import { showPiece } from '#domain/show-piece.ts';
import type { ReMadeWindow } from '#contract/windows/re-make-window.ts';
import { showIncrements } from '../../parts/loads.ts';
import styles from './re-make.module.css';

/** What the session would be: what is trained, what it stands in for, what is left out and why. */
export const MadeSession = ({ made }: { readonly made: ReMadeWindow }) => {
  const { card, gaps } = made;
  return (
    <section aria-live="polite" aria-label="The session as it would be">
      {gaps.map((gap) => (
        <p key={gap} className={styles['gap']}>
          {gap}
        </p>
      ))}
      {card ? (
        <>
          <h2>
            {card.title}{' '}
            <span className="soft">
              {Math.round(totalMinutes(card))} of {card.blockMinutes} minutes
            </span>
          </h2>
          <ol className={styles['items']}>
            {card.items.map((item) => (
              <li key={item.item}>
                <b>{item.exerciseName}</b> {workOf(item)}
                {item.says.map((says) => (
                  <div key={says} className="soft">
                    {says}
                  </div>
                ))}
              </li>
            ))}
          </ol>
          {card.leftOut.map(({ item, exerciseName, says }) => (
            <p key={item} className="soft">
              <b>{exerciseName}</b> {says}
            </p>
          ))}
        </>
      ) : null}
    </section>
  );
};

/** Gear is worth a word, a floor is not. */
const hasMeans = ({ means }: CardDrill): boolean => means !== 'no gear' && means !== 'body weight';

const workOf = (item: CardItem): string => {
  if (item.kind !== 'lift')
    return item.kind === 'drill' && hasMeans(item) ? `${item.means}, ${showPiece(item)}` : showPiece(item);
  const work = item.sets.filter(({ kind }) => kind === 'work');
  const [first] = work;
  if (!first) return '';
  const start = first.load.kind === 'start at' ? 'start at ' : '';
  const sides = new Set(work.map(({ side }) => side)).size;
  return `${showSets(
    work.filter(({ side }) => side === first.side),
  )}${sides > 1 ? ' each side' : ''}, ${start}${showIncrements(first.load.increments, item.increment)} ${item.unit}`;
};
