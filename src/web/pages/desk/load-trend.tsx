import type { LoadTrend as Trend } from '#contract/windows/desk-window.ts';
import styles from './desk.module.css';

const WIDTH = 84;
const HEIGHT = 20;
const MARGIN = 3;
/** Less than this share of the load is drawn flat: nothing is made to look like a climb. */
const LEAST_SPAN = 0.15;

interface Place {
  readonly x: number;
  readonly y: number;
}

const placesOf = ({ points }: Trend): readonly Place[] => {
  const [days, loads] = [points.map(({ day }) => day), points.map(({ load }) => load)];
  const [first, last] = [Math.min(...days), Math.max(...days)];
  const most = Math.max(...loads);
  const least = Math.min(...loads, most * (1 - LEAST_SPAN));
  return points.map(({ day, load }) => ({
    x: last === first ? WIDTH - MARGIN : MARGIN + ((day - first) / (last - first)) * (WIDTH - 2 * MARGIN),
    y: most === least ? HEIGHT / 2 : HEIGHT - MARGIN - ((load - least) / (most - least)) * (HEIGHT - 2 * MARGIN),
  }));
};

/** Steps, not slopes: a load stays until it is changed. */
const pathOf = (places: readonly Place[]): string =>
  places
    .map(({ x, y }, at) => (at === 0 ? `M${x.toFixed(1)} ${y.toFixed(1)}` : `H${x.toFixed(1)}V${y.toFixed(1)}`))
    .join('');

/** Machine loads of one lift over time with the newest one as a number. */
export const LoadTrend = ({ trend, lift }: { readonly trend: Trend; readonly lift: string }) => {
  const places = placesOf(trend);
  const last = places.at(-1);
  if (!last || trend.newest === null) return <span className="faint">–</span>;
  return (
    <span className={styles['trend']}>
      <svg width={WIDTH} height={HEIGHT} role="img" aria-label={`${lift} over ${trend.points.length} sessions`}>
        <path d={pathOf(places)} />
        <circle cx={last.x} cy={last.y} r={2.4} />
      </svg>
      <span className={styles['newest']}>{trend.newest}</span>
    </span>
  );
};
