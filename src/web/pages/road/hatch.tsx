import styles from './marks.module.css';

/** Thin slanted lines, for what is not there yet. */
export const Hatch = ({ id }: { readonly id: string }) => (
  <defs>
    <pattern id={id} width="4" height="4" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <line className={styles['hatchline']} x1="0" x2="0" y1="0" y2="4" />
    </pattern>
  </defs>
);
