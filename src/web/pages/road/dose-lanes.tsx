import type { RoadDoseLine, RoadDrawn } from '#contract/windows/road-window.ts';
import { join } from '../../parts/parts.ts';
import { percent, roadScale } from './road-scale.ts';
import { barPath, floorPath, isShort } from './dose-paths.ts';
import chart from './road-chart.module.css';
import styles from './dose-lanes.module.css';

/** What each week holds of each thing, thin, with its floor as a line: a glance tells where something is missing. */
export const DoseLanes = ({ road }: { readonly road: RoadDrawn }) =>
  road.dose.lines.length === 0 ? null : (
    <>
      <div className={join(chart['lane'], styles['head'])}>
        <div className={chart['label']}>Dose a week</div>
        <div className={join(chart['track'], styles['means'])}>planned; dark: done; line: floor; open: under it</div>
      </div>
      {road.dose.lines.map((line) => (
        <DoseLane key={line.id} line={line} road={road} />
      ))}
    </>
  );

/** Longer ones are cut by the page; the whole stands in what a reader of the page hears. */
const UNITS: Readonly<Record<RoadDoseLine['unit'], string>> = {
  sets: 'sets',
  min: 'min',
  steps: 'steps',
  kg: 'kg × rep.',
};

const DoseLane = ({ line, road }: { readonly line: RoadDoseLine; readonly road: RoadDrawn }) => {
  const { at, width } = roadScale(road);
  const drawn = { left: percent(at(road.weeks[0]?.first ?? road.first)), width: percent(width(road)) };
  const enough = line.planned.map((amount, week) => (isShort(line, week) || amount === 0 ? null : amount));
  const short = line.planned.map((amount, week) => (isShort(line, week) ? amount : null));
  const done = line.planned.map((_, week) => line.done.find(([place]) => place === week)?.[1] ?? null);
  return (
    <div className={join(chart['lane'], styles['dose'])}>
      <div className={join(chart['label'], styles['name'])} title={line.label}>
        {line.label}
        {line.label.includes(line.unit) ? null : <span className={styles['unit']}> {UNITS[line.unit]}</span>}
      </div>
      <div className={chart['track']}>
        <svg
          className={styles['plot']}
          style={drawn}
          viewBox={`0 0 ${line.planned.length} 100`}
          preserveAspectRatio="none"
          role="img"
          aria-label={saysOf(line)}
        >
          <path className={styles['planned']} d={barPath(line, enough)} />
          <path className={styles['short']} d={barPath(line, short)} />
          <path className={styles['done']} d={barPath(line, done)} />
          <path className={styles['floor']} d={floorPath(line)} />
        </svg>
      </div>
    </div>
  );
};

const saysOf = (line: RoadDoseLine): string => {
  const { label, unit, planned, floors } = line;
  const short = planned.filter((_, week) => isShort(line, week)).length;
  const floor =
    floors.length === 0
      ? ''
      : `; floor ${[...new Set(floors.map(([, , each]) => each))].join(', ')}, ${short} weeks under it`;
  return `${label}: up to ${Math.max(0, ...planned)} ${unit} a week${floor}`;
};
