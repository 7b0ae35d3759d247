import type { Exercise } from '#domain/catalogue.ts';
import type { ProgrammeItem } from '#domain/programme.ts';
import { writeItem } from '#domain/programme-line/write-line.ts';
import styles from './item-line.module.css';

interface ItemLineProps {
  readonly item: ProgrammeItem;
  readonly exercise: Exercise | undefined;
}

/** An item as its line: the name first, the rest last and stepped back, then what the eye should not miss. */
export const ItemLine = ({ item, exercise }: ItemLineProps) => {
  const letter = item.kind === 'lift' && item.superset ? `${item.superset}: ` : '';
  const line = writeItem(item, exercise).slice(letter.length);
  const rest = REST.exec(line)?.[0] ?? '';
  const marks = marksOf(item);
  return (
    <>
      {letter}
      <b>{exercise?.name ?? item.exercise}</b> {unbroken(line.slice(0, line.length - rest.length))}
      {rest === '' ? null : (
        <>
          , <span className={styles['rest']}>{rest.slice(REST_BEGINS)}</span>
        </>
      )}
      {marks.length > 0 ? <span className={styles['marks']}> {marks.join(' · ')}</span> : null}
    </>
  );
};

const REST = /, rest [^,]+$/;
const REST_BEGINS = ', '.length;

/** "4 × 6", "@ 80 %" and "3 min" each stay on one line of the page. */
const unbroken = (line: string): string =>
  line
    .replaceAll(/ × /g, '\u00A0×\u00A0')
    .replaceAll(/@ /g, '@\u00A0')
    .replaceAll(/(\d) (%|min\b|s\b|W\b|kg\b|lb\b)/g, '$1\u00A0$2');

const marksOf = (item: ProgrammeItem): readonly string[] => [
  ...(item.kind === 'lift' && item.warmUps.length > 0 ? [`w ${item.warmUps.length}`] : []),
  ...(item.kind === 'lift' && item.basis.kind === 'from last' ? ['from last'] : []),
  ...(item.condition === 'everyone' ? [] : [item.condition]),
];
