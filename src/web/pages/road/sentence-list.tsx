import { Link } from 'wouter';
import type { RoadLink, RoadSentence } from '#contract/windows/road-window.ts';
import { datesInWords } from './dates-in-words.ts';
import styles from './road-page.module.css';

interface SentenceListProps {
  readonly sentences: readonly RoadSentence[];
  readonly person: string;
}

/** What the road says that needs a word, with the way to where something can be done about it. */
export const SentenceList = ({ sentences, person }: SentenceListProps) =>
  sentences.length === 0 ? null : (
    <section aria-label="What the road says">
      <h2>What the road says</h2>
      <ul className={styles['sentences']}>
        {byKind(sentences).map((group) => (
          <li key={group[0]?.kind}>
            <b>{WORDS[group[0]?.kind ?? 'dates']}</b>{' '}
            {group.map(({ says, link }, place) => (
              <span key={says} className={styles['sentence']}>
                {datesInWords(says)}{' '}
                {link && link.to !== group[place + 1]?.link?.to && (
                  <span className="on-screen">
                    <Link href={addressOf(link.to, person)}>{link.says}</Link>
                  </span>
                )}
              </span>
            ))}
          </li>
        ))}
      </ul>
    </section>
  );

/** What is of one kind stands together, under one word. */
const byKind = (sentences: readonly RoadSentence[]): readonly (readonly RoadSentence[])[] =>
  [...new Set(sentences.map(({ kind }) => kind))].map((kind) => sentences.filter((each) => each.kind === kind));

const WORDS: Readonly<Record<RoadSentence['kind'], string>> = {
  dates: 'Dates.',
  seat: 'Seat.',
  hold: 'Hold.',
  walk: 'Hands.',
  gap: 'Nothing planned.',
  test: 'Tests.',
  window: 'Windows.',
  time: 'Time.',
  dose: 'Dose.',
};

const addressOf = (to: RoadLink, person: string): string => {
  switch (to) {
    case 'programmes':
      return '/programmes';
    case 'desk':
      return '/';
    case 'sheet':
      return `/people/${person}`;
    case 'mission dates':
    case 'test':
    case 'weekly minutes':
    case 'days set aside':
    case 'space walk':
    case 'road hold':
      return `/people/${person}/record?record=${encodeURIComponent(to)}`;
  }
};
