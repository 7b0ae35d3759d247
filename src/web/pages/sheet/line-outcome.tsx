import type { WrittenWindow } from '#contract/windows/written-window.ts';
import { barChangeText, fractionText, shouldersText, timeText } from './outcome-text.ts';
import styles from './write-line.module.css';

/** What a line comes to: the load, what changes at the bar, what binds, how long the session lasts. */
export const LineOutcome = ({ written }: { readonly written: WrittenWindow }) => {
  if (written.problems.length > 0)
    return (
      <>
        {written.problems.map(({ says }) => (
          <p key={says} className={styles['wrong']}>
            {says}
          </p>
        ))}
      </>
    );
  return (
    <p>
      {partsOf(written).map((part, place) => (
        <span key={part} className={place === 0 ? styles['first'] : undefined}>
          {place === 0 ? '' : ' · '}
          {part}
        </span>
      ))}
    </p>
  );
};

const partsOf = ({ outcome, minutes, leavesOut }: WrittenWindow): readonly string[] => [
  ...(outcome ? outcomeParts(outcome) : []),
  ...(minutes ? [timeText(minutes)] : []),
  ...leavesOut.map((says) => `no time for ${says}`),
  ...(outcome?.cell.says ?? []),
];

const outcomeParts = ({ cell, change, shoulders }: NonNullable<WrittenWindow['outcome']>): readonly string[] => {
  const against = barChangeText(change, cell);
  return [
    `${cell.planned} ${cell.unit}`,
    ...(against === '–' ? [] : [against]),
    ...fractionText(cell),
    ...(cell.ceilingLeft ? [`ceiling left ${cell.ceilingLeft}`] : []),
    ...shouldersText(shoulders),
    ...cell.limits.filter(({ binds }) => binds).map(({ says }) => `held by ${says}`),
    ...(cell.raise?.needsReason ? ['more than one signature covers: it will ask for a reason when it is issued'] : []),
  ];
};
