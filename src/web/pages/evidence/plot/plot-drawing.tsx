import { useMemo } from 'react';
import type { Axis, Curve, Plot } from '#science/plot.ts';
import { shownNumber, shownUnit } from '../shown-number.ts';
import { BandDrawing, CurveDrawing } from './curve-drawing.tsx';
import { CurveNames } from './curve-names.tsx';
import { plotScales, ticksOf, type PlotScales } from './plot-scales.ts';
import styles from './plot.module.css';

/** A plot of the textbook: axes with their units, curves named at their ends. */
export function PlotDrawing({ plot, title }: { readonly plot: Plot; readonly title: string }) {
  const curves = useMemo(() => plot.curves(), [plot]);
  const scales = useMemo(() => plotScales(curves), [curves]);
  const { width, height } = scales.frame;
  return (
    <svg
      className={styles['plot']}
      viewBox={`0 0 ${width} ${height}`}
      style={{ maxWidth: `${width}px` }}
      role="img"
      aria-label={saysOf(plot, title, curves)}
    >
      <Axes plot={plot} scales={scales} />
      {curves.map((curve) => curve.band && <BandDrawing key={curve.label} curve={curve} scales={scales} />)}
      {curves.map((curve, place) => (
        <CurveDrawing key={curve.label} curve={curve} place={place} scales={scales} />
      ))}
      <CurveNames curves={curves} scales={scales} />
    </svg>
  );
}

const saysOf = ({ x, y, says }: Plot, title: string, curves: readonly Curve[]): string =>
  `${title}. ${named(y)} against ${named(x)}: ${curves.map(({ label }) => label).join('; ')}. ${says}`;

const named = ({ name, unit }: Axis): string => (shownUnit(unit) ? `${name} (${unit})` : name);

function Axes({ plot, scales: { frame, x, y } }: { readonly plot: Plot; readonly scales: PlotScales }) {
  const floor = frame.height - frame.bottom;
  const end = frame.width - frame.right;
  return (
    <g className={styles['axes']}>
      {ticksOf(y).map((tick) => (
        <g key={tick}>
          <line x1={frame.left} x2={end} y1={y(tick)} y2={y(tick)} />
          <text x={frame.left - 8} y={y(tick) + 4} textAnchor="end">
            {shownNumber(tick)}
          </text>
        </g>
      ))}
      {ticksOf(x).map((tick) => (
        <g key={tick}>
          <line className={styles['tick']} x1={x(tick)} x2={x(tick)} y1={floor} y2={floor + 5} />
          <text x={x(tick)} y={floor + 19} textAnchor="middle">
            {shownNumber(tick)}
          </text>
        </g>
      ))}
      <line className={styles['tick']} x1={frame.left} x2={end} y1={floor} y2={floor} />
      <text className={styles['axis-name']} x={(frame.left + end) / 2} y={floor + 38} textAnchor="middle">
        {named(plot.x)}
      </text>
      <text className={styles['axis-name']} x={0} y={14}>
        {named(plot.y)}
      </text>
    </g>
  );
}
