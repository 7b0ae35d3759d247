import { join } from '../../parts/join.ts';
import styles from './exercise.module.css';

/** Places for a pencil, side by side; whoever listens to the page does not write on it. */
export const Boxes = ({
  labels,
  isSmall = false,
}: {
  readonly labels: readonly string[];
  readonly isSmall?: boolean;
}) => (
  <div className={join(styles['boxes'], isSmall && styles['smallboxes'])} aria-hidden="true">
    {labels.map((label) => (
      <span key={label}>{label}</span>
    ))}
  </div>
);

/** One square for each bout: a stroke a bout, while floating. */
export const Ticks = ({ count }: { readonly count: number }) => (
  <ol className={styles['ticks']} aria-hidden="true">
    {Array.from({ length: count }, (_, place) => (
      <li key={`bout ${place + 1}`}>{place + 1}</li>
    ))}
  </ol>
);
