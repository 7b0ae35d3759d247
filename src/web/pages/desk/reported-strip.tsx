import type { DeskPerson } from '#contract/windows/desk-window.ts';
import styles from './desk.module.css';

const WIDTH = 7;
const HEIGHT = 13;
const STEP = 9;

type Outcome = DeskPerson['reported']['days'][number];

/** Full: done; half: part done; hollow: not heard; a stroke: called off; a cross: missed. */
const Mark = ({ outcome, x }: { readonly outcome: Outcome; readonly x: number }) => {
  switch (outcome) {
    case 'done':
      return <rect className={styles['full']} x={x} y={0} width={WIDTH} height={HEIGHT} />;
    case 'part done':
      return (
        <>
          <rect className={styles['hollow']} x={x + 0.5} y={0.5} width={WIDTH - 1} height={HEIGHT - 1} />
          <rect className={styles['full']} x={x} y={HEIGHT / 2} width={WIDTH} height={HEIGHT / 2} />
        </>
      );
    case 'not heard':
      return (
        <rect className={styles['hollow']} x={x + 0.5} y={HEIGHT / 2} width={WIDTH - 1} height={HEIGHT / 2 - 0.5} />
      );
    case 'called off':
      return <path className={styles['stroke']} d={`M${x} ${HEIGHT}L${x + WIDTH} 2`} />;
    case 'missed':
      return <path className={styles['stroke']} d={`M${x} 4L${x + WIDTH} ${HEIGHT}M${x} ${HEIGHT}L${x + WIDTH} 4`} />;
  }
};

const saysOf = ({ of, done, calledOff, notHeard }: DeskPerson['reported']): string =>
  [
    `${done} of ${of}`,
    ...(calledOff > 0 ? [`${calledOff} called off`] : []),
    ...(notHeard > 0 ? [`${notHeard} not heard`] : []),
  ].join(', ');

/** What came of the cards of the last fourteen days, one mark each, and the count in words. */
export const ReportedStrip = ({ reported }: { readonly reported: DeskPerson['reported'] }) =>
  reported.of === 0 && reported.days.length === 0 ? (
    <span className="faint">–</span>
  ) : (
    <span className={styles['reported']}>
      <svg width={Math.max(1, reported.days.length) * STEP} height={HEIGHT} aria-hidden="true">
        {reported.days.map((outcome, at) => (
          <Mark key={`${at} ${outcome}`} outcome={outcome} x={at * STEP} />
        ))}
      </svg>
      <span>{saysOf(reported)}</span>
    </span>
  );
