import type { CrossingDetail, LevelLoad } from '#contract/windows/crossing-window.ts';
import { join } from '../../parts/parts.ts';
import styles from './crossing-page.module.css';

/** Change at each level against the same effort on the ground, left and right of nothing. */
export function LoadCarried({ detail }: { readonly detail: CrossingDetail }) {
  if (detail.levels.length === 0) return null;
  const most = Math.max(0.1, ...detail.levels.map(({ change }) => (Number.isFinite(change) ? Math.abs(change) : 0)));
  return (
    <section aria-label="Where the load is carried">
      <h2>Where the load is carried</h2>
      <table className={styles['carried']}>
        <caption className="unseen">Load at each level of the body, on the ground and in flight, kg</caption>
        <thead>
          <tr>
            <th scope="col">level</th>
            <th scope="col" className="number">
              1 g
            </th>
            <th scope="col" className="number">
              0 g
            </th>
            <th scope="col" className="number">
              change
            </th>
          </tr>
        </thead>
        <tbody>
          {detail.levels.map((level) => (
            <LevelRow key={level.level} level={level} most={most} />
          ))}
        </tbody>
      </table>
      {detail.shoulderExcess !== null && detail.shoulderExcess > 0 && (
        <p className={styles['caution']}>
          <b>Shoulders carry {percent(detail.shoulderExcess)} more</b> than at the same effort on the ground: body
          weight that the whole body carries in 1 g hangs on them alone.
        </p>
      )}
      <p className="soft small">Against the same bar part lifted on the ground, standing.</p>
    </section>
  );
}

const HALF = 40;

function LevelRow({ level, most }: { readonly level: LevelLoad; readonly most: number }) {
  const known = Number.isFinite(level.change);
  const width = known ? (HALF * Math.abs(level.change)) / most : 0;
  const isMore = level.change > 0;
  return (
    <tr>
      <th scope="row">{level.level}</th>
      <td className="number">{Math.round(level.onGround)}</td>
      <td className="number">{Math.round(level.inFlight)}</td>
      <td className="number">
        <svg className={styles['change']} viewBox={`0 0 ${HALF * 2} 10`} aria-hidden="true">
          <rect
            className={styles[isMore ? (level.level === 'shoulders' ? 'shoulders' : 'more') : 'less']}
            x={isMore ? HALF : HALF - width}
            y="1"
            width={width}
            height="8"
          />
          <line x1={HALF} x2={HALF} y1="0" y2="10" />
        </svg>
        <span className={join(styles['percent'], level.level === 'shoulders' && isMore && styles['strong'])}>
          {known ? `${isMore ? '+' : level.change < 0 ? '−' : '±'}${percent(Math.abs(level.change))}` : '–'}
        </span>
      </td>
    </tr>
  );
}

const percent = (part: number): string => `${Math.round(part * 100)} %`;
