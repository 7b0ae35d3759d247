import { Link } from 'wouter';
import type { RoadSentence } from '#contract/windows/road-window.ts';
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
        {sentences.map(({ kind, says, link }) => (
          <li key={says}>
            <b>{WORDS[kind]}</b> {datesInWords(says)}{' '}
            {link && (
              <span className="on-screen">
                <Link href={addressOf(link.to, person)}>{link.says}</Link>
              </span>
            )}
          </li>
        ))}
      </ul>
    </section>
  );

const WORDS: Readonly<Record<RoadSentence['kind'], string>> = {
  dates: 'Dates.',
  gap: 'Nothing planned.',
  test: 'Tests.',
  time: 'Time.',
};

const addressOf = (to: NonNullable<RoadSentence['link']>['to'], person: string): string => {
  switch (to) {
    case 'programmes':
      return '/programmes';
    case 'record':
      return `/people/${person}/record?record=mission%20dates`;
    case 'test':
      return `/people/${person}/record?record=test`;
    case 'sheet':
      return `/people/${person}`;
  }
};
