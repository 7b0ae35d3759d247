import { area, line } from 'd3-shape';
import type { CapacityObservation, CapacitySeries } from '#contract/windows/capacity-window.ts';
import { intervalOf } from '#domain/estimate.ts';
import type { Day } from '#units/day.ts';
import { dateWithYear, shortDate } from '../../parts/parts.ts';
import styles from './capacity-page.module.css';
import { PLOT, plotScales, type PlotScales } from './plot-scales.ts';

interface HistoryPlotProps {
  readonly series: CapacitySeries;
  readonly today: Day;
}

/** The smoothed history with its band, what was measured, and where the estimate stands today. */
export function HistoryPlot({ series, today }: HistoryPlotProps) {
  const scales = plotScales(series, today);
  return (
    <svg className={styles['plot']} viewBox={`0 0 ${PLOT.width} ${PLOT.height}`} role="img">
      <title>{saysOf(series, today)}</title>
      <Axes scales={scales} />
      <Band series={series} scales={scales} />
      <text x={PLOT.left + 4} y={PLOT.top + 4}>
        kg at the bar
      </text>
      <Today series={series} today={today} scales={scales} />
      {series.observations.map((observation) => (
        <Point key={`${observation.fact} ${observation.says}`} observation={observation} scales={scales} />
      ))}
    </svg>
  );
}

const saysOf = ({ label, observations, estimate }: CapacitySeries, today: Day): string => {
  const [low, high] = intervalOf(estimate).map(Math.round);
  return `${label}: ${observations.length} observations; on ${dateWithYear(today)} ${Math.round(estimate.median)} kg, ${low} to ${high}.`;
};

function Axes({ scales: { x, y, days, loads } }: { readonly scales: PlotScales }) {
  const floor = PLOT.height - PLOT.bottom;
  return (
    <g className={styles['axes']}>
      {loads.map((load) => (
        <g key={load}>
          <line x1={PLOT.left} x2={PLOT.width - PLOT.right} y1={y(load)} y2={y(load)} />
          <text x={PLOT.left - 8} y={y(load) + 4} textAnchor="end">
            {load}
          </text>
        </g>
      ))}
      {days.map((day) => (
        <g key={day}>
          <line x1={x(day)} x2={x(day)} y1={floor} y2={floor + 4} />
          <text x={x(day)} y={floor + 18} textAnchor="middle">
            {shortDate(day).slice(4)}
          </text>
        </g>
      ))}
    </g>
  );
}

function Band({
  series: { smoothed },
  scales: { x, y },
}: {
  readonly series: CapacitySeries;
  readonly scales: PlotScales;
}) {
  type Place = CapacitySeries['smoothed'][number];
  const band = area<Place>(
    ({ day }) => x(day),
    ({ low }) => y(low),
    ({ high }) => y(high),
  );
  const median = line<Place>(
    ({ day }) => x(day),
    (place) => y(place.median),
  );
  return (
    <>
      <path className={styles['band']} d={band(smoothed) ?? ''} />
      <path className={styles['median']} d={median(smoothed) ?? ''} />
    </>
  );
}

/** The estimate today: held from the newest observation, its interval grown since. */
function Today({ series, today, scales: { x, y } }: HistoryPlotProps & { readonly scales: PlotScales }) {
  const [low, high] = intervalOf(series.estimate);
  const newest = series.smoothed.at(-1);
  const middle = y(series.estimate.median);
  return (
    <g className={styles['today']}>
      {newest && newest.day < today && (
        <line className={styles['held']} x1={x(newest.day)} x2={x(today)} y1={y(newest.median)} y2={middle} />
      )}
      <line x1={x(today)} x2={x(today)} y1={y(low)} y2={y(high)} />
      <line x1={x(today) - 5} x2={x(today) + 5} y1={middle} y2={middle} />
    </g>
  );
}

function Point({
  observation,
  scales: { x, y },
}: {
  readonly observation: CapacityObservation;
  readonly scales: PlotScales;
}) {
  const { day, point, range, kind, use, says, why } = observation;
  // What gives no number has no place in the drawing; the table under it says why.
  if (point === null) return null;
  const at = { x: x(day), y: y(point) };
  return (
    <g>
      <title>{`${dateWithYear(day)}: ${says}, ${point.toFixed(1)} kg, ${use}${why === null ? '' : `: ${why}`}`}</title>
      {range !== null && <line className={styles['range']} x1={at.x} x2={at.x} y1={y(range[0])} y2={y(range[1])} />}
      {use === 'not used' ? (
        <path className={styles['unused']} d={`M${at.x - 3},${at.y - 3}l6,6m0,-6l-6,6`} />
      ) : use === 'lower bound' ? (
        <path className={styles['test']} d={`M${at.x - 4},${at.y + 3}L${at.x},${at.y - 4}L${at.x + 4},${at.y + 3}Z`} />
      ) : (
        <circle
          className={styles[use === 'low confidence' ? 'open' : kind]}
          cx={at.x}
          cy={at.y}
          r={kind === 'test' ? 4 : 2.2}
        />
      )}
    </g>
  );
}
