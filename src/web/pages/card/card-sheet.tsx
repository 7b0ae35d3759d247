import { liftsOf, totalMinutes, type Card, type CardItem } from '#domain/card.ts';
import { longDate } from '../../parts/dates.ts';
import { join } from '../../parts/join.ts';
import { CardItemBlock } from './card-item.tsx';
import { hatchedSays, MinutesStrip } from './minutes-strip.tsx';
import { StopBox } from './stop-box.tsx';
import styles from './card.module.css';
import exercise from './exercise.module.css';

export interface CardSheetProps {
  readonly card: Card;
  readonly personName: string;
  readonly missionName: string;
  /** What stands across the card where it cannot be trained from. */
  readonly band: string | null;
  /** Who issued it, until when it holds, its code. */
  readonly foot: string;
}

const unitsOf = (card: Card): string => [...new Set(liftsOf(card).map(({ unit }) => unit))].join(' and ');
const machinesOf = ({ items }: Card): string =>
  [...new Set(items.flatMap((item) => (item.kind === 'drill' ? [] : [item.machineName])))].join(', ');
const whereOf = (card: Card, missionName: string): string =>
  [machinesOf(card), missionName].filter((text) => text !== '').join(', ');
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const Head = ({ card, personName, missionName }: Pick<CardSheetProps, 'card' | 'personName' | 'missionName'>) => (
  <header className={styles['head']}>
    <div>
      <h2 className={styles['name']}>{personName}</h2>
      <p className={styles['title']}>
        {card.title}{' '}
        <span className="soft">
          · {card.phase}, week {card.week}
          {card.deload ? ', deload' : ''}
        </span>
      </p>
    </div>
    <div className={styles['when']}>
      <p className={styles['missionday']}>{capital(card.missionDay)}</p>
      <p>{longDate(card.day)}</p>
      <p>{whereOf(card, missionName)}</p>
    </div>
  </header>
);

const Left = ({ card }: { readonly card: Card }) => (
  <div className={styles['fallbacks']}>
    {card.leftOut.map(({ item, exerciseName, says }) => (
      <p key={item}>
        <strong>{exerciseName}:</strong> {says}
      </p>
    ))}
    {card.shortOfTime.length > 0 ? (
      <p>
        <strong>Short of time:</strong> leave out {card.shortOfTime.join(', then ')}.
      </p>
    ) : null}
    {card.machineDown ? (
      <p>
        <strong>Machine down:</strong> {card.machineDown}
      </p>
    ) : null}
  </div>
);

/** How much of a page an exercise takes, a lift being one: bouts say more, two drills share a row. */
const ROOM: Readonly<Record<CardItem['kind'], number>> = { lift: 1, bouts: 1.3, drill: 0.7 };

const roomOf = ({ items }: Card): number => items.reduce((sum, { kind }) => sum + ROOM[kind], 0);

/** From so much on exercises stand closer together, so that a day stays on one page. */
const MOST_ROOM = 6.2;

const linesOf = (card: Card): readonly string[] =>
  liftsOf(card).length > 0
    ? ['Whole session RPE', 'Shoulders 0–10', 'Back 0–10', 'Minutes in all']
    : ['Whole session RPE', 'Where it hurts', 'How much, 0–10', 'Minutes in all'];

interface OnPage {
  readonly item: CardItem;
  readonly isPaired: boolean;
}

/** By place; two drills that follow one another share a row. */
const inOrder = ({ items }: Card): readonly OnPage[] => {
  const shown: OnPage[] = [];
  for (const item of items.toSorted((a, b) => a.place - b.place)) {
    const before = shown.at(-1);
    const joins = item.kind === 'drill' && before?.item.kind === 'drill' && !before.isPaired;
    if (joins) shown.splice(-1, 1, { ...before, isPaired: true });
    shown.push({ item, isPaired: joins });
  }
  return shown;
};

const goesOn = (card: Card): boolean => liftsOf(card).some(({ sets }) => sets.some(({ orMore }) => orMore));

/** How to read and to write what follows: only what this card needs. */
const HowToRead = ({ card }: { readonly card: Card }) => {
  const hasLifts = liftsOf(card).length > 0;
  const hasBouts = card.items.some(({ kind }) => kind === 'bouts');
  return (
    <p className={styles['how']}>
      <span>
        {Math.round(totalMinutes(card))} of {card.blockMinutes} minutes. {hatchedSays(card)}
      </span>{' '}
      {hasLifts ? (
        <>
          Loads in <strong>{unitsOf(card)}</strong> as the machine shows them; <strong>w</strong> marks a warm-up set.
          Write repetitions done and effort (RPE) in the boxes. A rule counts once a week and for all repetitions; when
          a load feels wrong, take off what the rule allows and write why.{' '}
        </>
      ) : null}
      {goesOn(card) ? (
        <>
          <strong>+</strong> goes on while it goes well: its effort has to be written.{' '}
        </>
      ) : null}
      {hasBouts ? (
        <>
          <strong>Heart rate and effort govern:</strong> when either is over what stands here, go slower.{' '}
        </>
      ) : null}
      {hasBouts || !hasLifts ? 'Strike off each bout and set as it is done; write what was held.' : null}
    </p>
  );
};

/** One session on one page, to be read at arm's length by somebody who floats, and written on with a pencil. */
export const CardSheet = ({ card, personName, missionName, band, foot }: CardSheetProps) => {
  const isDense = roomOf(card) >= MOST_ROOM;
  return (
    <article
      className={join(styles['card'], isDense && styles['dense'], band !== null && styles['unsigned'])}
      aria-label={`${card.title}, ${card.missionDay}`}
    >
      {band === null ? null : <p className={styles['band']}>{band}</p>}
      <Head card={card} personName={personName} missionName={missionName} />
      <MinutesStrip card={card} />
      <HowToRead card={card} />
      <ol className={join(exercise['items'], isDense && exercise['dense'])}>
        {inOrder(card).map(({ item, isPaired }) => (
          <CardItemBlock key={item.item} item={item} isPaired={isPaired} />
        ))}
      </ol>
      <div className={styles['end']}>
        <Left card={card} />
        <StopBox breathing={card.breathing} />
        <div className={styles['lines']}>
          {linesOf(card).map((label) => (
            <p key={label}>{label}</p>
          ))}
        </div>
        <footer className={styles['foot']}>
          <span>
            {personName}, {card.missionDay} · {foot}
          </span>
          <span>Advice for supervised training; the physician’s word comes first.</span>
        </footer>
      </div>
    </article>
  );
};
