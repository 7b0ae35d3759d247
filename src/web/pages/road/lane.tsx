import type { ReactNode } from 'react';
import { join } from '../../parts/parts.ts';
import { laneRows, type Labelled } from './lane-rows.ts';
import { percent, roadScale } from './road-scale.ts';
import type { RoadSpan } from '#contract/windows/road-window.ts';
import looks from './lane.module.css';
import styles from './road-chart.module.css';

export interface RowProps {
  readonly label: string;
  readonly hint?: string;
  readonly children: ReactNode;
}

/** A lane: its name at the left, what lies on it at the right. */
export const Row = ({ label, hint, children }: RowProps) => (
  <div className={styles['lane']}>
    <div className={styles['label']}>
      {label}
      {hint === undefined ? null : <span className={styles['hint']}>{hint}</span>}
    </div>
    <div className={styles['track']}>{children}</div>
  </div>
);

export interface Bar extends Labelled {
  readonly look: 'phase' | 'none' | 'thin' | 'assumed' | 'aside' | 'stop' | 'caution';
  readonly title: string;
  readonly isOpen: boolean;
}

/** Bars of one lane in as many rows as their labels need. */
export const Bars = ({ bars, road }: { readonly bars: readonly Bar[]; readonly road: RoadSpan }) => {
  const { at, width } = roadScale(road);
  return (
    <ul className={styles['rows']}>
      {laneRows(bars, road).flatMap((row, line) =>
        row.map(({ item, place }) => (
          <li
            key={`${item.first} ${item.label}`}
            className={join(looks['bar'], looks[item.look], item.isOpen && looks['open'], looks[place])}
            style={{ left: percent(at(item.first)), width: percent(width(item)), gridRow: line + 1 }}
            title={item.title}
          >
            <span>{item.label}</span>
          </li>
        )),
      )}
    </ul>
  );
};
