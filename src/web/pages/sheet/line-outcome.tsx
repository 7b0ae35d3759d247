import type { WrittenWindow } from '#contract/windows/written-window.ts';
import { showChange, showFraction, showIncrements } from '../../parts/loads.ts';
import styles from './write-line.module.css';

/** What a line comes to: the load, what changes at the bar, what binds, how long the session lasts. */
export const LineOutcome = ({ outcome }: { readonly outcome: WrittenWindow }) => {
  if (outcome.problems.length > 0)
    return (
      <>
        {outcome.problems.map(({ says }) => (
          <p key={says} className={styles['wrong']}>
            {says}
          </p>
        ))}
      </>
    );
  return (
    <p>
      {partsOf(outcome).map((part, place) => (
        <span key={part} className={place === 0 ? styles['first'] : undefined}>
          {place === 0 ? '' : ' · '}
          {part}
        </span>
      ))}
    </p>
  );
};

const partsOf = ({ cell, minutes, leavesOut }: WrittenWindow): readonly string[] => {
  const binding = cell?.limits.filter(({ binds }) => binds) ?? [];
  const raise = cell?.raise ?? null;
  return [
    ...(cell ? [`${cell.planned} ${cell.unit}`] : []),
    ...(raise === null || raise.from === null
      ? []
      : [`from ${showIncrements(raise.from, raise.increment)}${atTheBar(raise.atTheBar)}`]),
    ...(raise?.trueFraction ? [`true fraction ${showFraction(raise.trueFraction.is)}`] : []),
    ...(cell?.ceilingLeft ? [`ceiling left ${cell.ceilingLeft}`] : []),
    ...binding.map(({ says }) => `held by ${says}`),
    ...(raise?.needsReason ? ['more than one signature covers: it will ask for a reason when it is issued'] : []),
    ...(minutes ? [timeOf(minutes)] : []),
    ...leavesOut.map((says) => `no time for ${says}`),
    ...(cell?.says ?? []),
  ];
};

const atTheBar = (change: number | null): string => (change === null ? '' : `, ${showChange(change)} at the bar`);

const timeOf = ({ was, is, block }: NonNullable<WrittenWindow['minutes']>): string =>
  `${is} of ${block} min${is === was ? '' : `, was ${was}`}`;
