import { useId } from 'react';
import { AskMark } from './test-lane.tsx';
import { Hatch } from './hatch.tsx';
import styles from './marks.module.css';

/** What the marks of the two lower lanes mean. */
export const Legend = () => {
  const hatch = useId();
  return (
    <ul className={styles['legend']}>
      <li>
        <svg viewBox="-6 -6 12 12" aria-hidden="true">
          <circle className={styles['tested']} r="4" />
        </svg>
        tests recorded
      </li>
      {ASKS.map(({ state, says }) => (
        <li key={state}>
          <svg viewBox="-6 -6 12 12" aria-hidden="true">
            <AskMark state={state} />
          </svg>
          {says}
        </li>
      ))}
      {CARDS.map(({ look, says, isHatched }) => (
        <li key={look}>
          <svg viewBox="0 0 12 12" aria-hidden="true">
            {isHatched && <Hatch id={hatch} />}
            <rect
              className={styles[look]}
              {...(isHatched ? { fill: `url(#${hatch})` } : {})}
              x="1"
              y="1"
              width="10"
              height="10"
            />
          </svg>
          {says}
        </li>
      ))}
    </ul>
  );
};

const ASKS = [
  { state: 'tested', says: 'test asked for and kept' },
  { state: 'part tested', says: 'kept in part' },
  { state: 'due', says: 'due now' },
  { state: 'not tested', says: 'passed without one' },
  { state: 'ahead', says: 'ahead' },
] as const;

const CARDS = [
  { look: 'issued', says: 'minutes of issued cards', isHatched: false },
  { look: 'issuable', says: 'can be issued', isHatched: false },
  { look: 'waiting', says: 'waiting for an entry or a signature', isHatched: true },
  { look: 'expected', says: 'expected', isHatched: true },
] as const;
