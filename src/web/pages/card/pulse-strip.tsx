import type { DrillWork } from '#domain/programme.ts';
import styles from './exercise.module.css';

export type Pulses = Extract<DrillWork, { readonly kind: 'pulses' }>;

const HEIGHT = 8;
/** More than these would be a grey bar: the first of them show the beat, the words say how many. */
const MOST_DRAWN = 24;

/** On and off in turn, to scale: the beat can be seen before the first squeeze. */
export const PulseStrip = ({ pulses: { count, on, off } }: { readonly pulses: Pulses }) => {
  const drawn = Math.min(count, MOST_DRAWN);
  return (
    <figure className={styles['pulses']}>
      <svg
        viewBox={`0 0 ${drawn * (on + off)} ${HEIGHT}`}
        preserveAspectRatio="none"
        role="img"
        aria-label={`${count} pulses of ${on} seconds on and ${off} seconds off`}
      >
        <line x1="0" x2={drawn * (on + off)} y1={HEIGHT} y2={HEIGHT} vectorEffect="non-scaling-stroke" />
        {Array.from({ length: drawn }, (_, place) => (
          <rect key={`pulse ${place}`} x={place * (on + off)} y="0" width={on} height={HEIGHT} />
        ))}
      </svg>
      <figcaption>
        <strong>{count}</strong> × <strong>{on} s</strong> on, <strong>{off} s</strong> off
      </figcaption>
    </figure>
  );
};
