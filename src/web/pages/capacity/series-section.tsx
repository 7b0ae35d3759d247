import type { CapacityObservation, CapacitySeries } from '#contract/windows/capacity-window.ts';
import type { Day } from '#units/day.ts';
import { dateWithYear, Table } from '../../parts/parts.ts';
import styles from './capacity-page.module.css';
import { HistoryPlot } from './history-plot.tsx';

interface SeriesProps {
  readonly series: CapacitySeries;
  readonly today: Day;
}

/** One history, kept apart by gravity and machine: drawn, then the same numbers as a table. */
export function SeriesSection({ series, today }: SeriesProps) {
  const counted = series.observations.filter(({ use }) => use !== 'not used');
  const unused = series.observations.filter(({ use }) => use === 'not used');
  return (
    <section className={styles['series']} aria-label={series.label}>
      <h3>
        {series.label} <span className="soft">{series.gravity}</span>
      </h3>
      <HistoryPlot series={series} today={today} />
      <p className="soft small">
        <Mark shape="test" /> test, with lowest and highest of three formulas; <Mark shape="card" /> card;{' '}
        <Mark shape="open" /> low confidence; <Mark shape="bound" /> lower bound: the person could have done more. Band:
        95 % of the smoothed history. The bar at the right: the estimate today.
      </p>
      <ObservationTable caption={`What ${series.label} rests on, newest first`} observations={counted} />
      {unused.length > 0 && (
        <ObservationTable caption="Recorded, but no evidence here, with the reason" observations={unused} />
      )}
    </section>
  );
}

function Mark({ shape }: { readonly shape: 'test' | 'card' | 'open' | 'bound' }) {
  return (
    <svg className={styles['key']} viewBox="0 0 12 12" aria-hidden="true">
      {shape === 'bound' ? (
        <path className={styles['test']} d="M2,9L6,2L10,9Z" />
      ) : (
        <circle className={styles[shape]} cx="6" cy="6" r={shape === 'card' ? 2.2 : 4} />
      )}
    </svg>
  );
}

interface ObservationTableProps {
  readonly caption: string;
  readonly observations: readonly CapacityObservation[];
}

function ObservationTable({ caption, observations }: ObservationTableProps) {
  const newestFirst = observations.toSorted((a, b) => b.day - a.day);
  return (
    <Table caption={caption}>
      <thead>
        <tr>
          <th scope="col">day</th>
          <th scope="col">what was done</th>
          <th scope="col" className="number">
            kg at the bar
          </th>
          <th scope="col" className="number">
            lowest to highest
          </th>
          <th scope="col">counts as</th>
        </tr>
      </thead>
      <tbody>
        {newestFirst.map((observation) => (
          <tr key={`${observation.fact} ${observation.says}`}>
            <td>
              {dateWithYear(observation.day)} <span className="soft small">{observation.missionDay}</span>
            </td>
            <td>
              {observation.says} <span className="soft small">{observation.kind}</span>
            </td>
            <td className="number">{observation.point === null ? '–' : observation.point.toFixed(1)}</td>
            <td className="number">
              {observation.range ? `${observation.range[0].toFixed(1)} to ${observation.range[1].toFixed(1)}` : '–'}
            </td>
            <td className="soft">
              {observation.use}
              {observation.why !== null && `: ${observation.why}`}
            </td>
          </tr>
        ))}
      </tbody>
    </Table>
  );
}
