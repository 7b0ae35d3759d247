import styles from './figure.module.css';

export interface FigureProps {
  readonly value: number | string;
  readonly unit?: string;
  /** Decimals of a number; a text stands as it is. */
  readonly decimals?: number;
  /** Opens what the number rests on. */
  readonly onOpen?: () => void;
}

const show = (value: number | string, decimals: number): string =>
  typeof value === 'string' ? value : value.toFixed(decimals).replace('-', '−');

/** A number in tabular figures with its unit in a lighter ink. */
export const Figure = ({ value, unit, decimals = 0, onOpen }: FigureProps) => {
  const figure = (
    <>
      {show(value, decimals)}
      {unit ? <span className={styles['unit']}>{`\u00a0${unit}`}</span> : null}
    </>
  );
  return onOpen ? (
    <button type="button" className={styles['opens']} onClick={onOpen} title="show the working">
      {figure}
    </button>
  ) : (
    <span className={styles['figure']}>{figure}</span>
  );
};
