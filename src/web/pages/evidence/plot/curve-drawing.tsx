import { area, line } from 'd3-shape';
import type { Curve } from '#science/plot.ts';
import { join } from '#web/parts/parts.ts';
import { lookOf, shapeOf } from './curve-look.ts';
import type { PlotScales } from './plot-scales.ts';
import styles from './plot.module.css';

interface CurveDrawingProps {
  readonly curve: Curve;
  readonly place: number;
  readonly scales: PlotScales;
}

/** A line, or single points. */
export function CurveDrawing({ curve, place, scales }: CurveDrawingProps) {
  const look = styles[lookOf(place)];
  if (!curve.scattered) return <path className={join(styles['curve'], look)} d={pathOf(curve, scales)} />;
  return curve.points.map(([x, y], at) => (
    <path
      key={at}
      className={join(styles['point'], look)}
      d={shapeOf(place)}
      transform={`translate(${scales.x(x)} ${scales.y(y)})`}
    />
  ));
}

const pathOf = ({ points }: Curve, { x, y }: PlotScales): string =>
  line<readonly [number, number]>(
    ([at]) => x(at),
    ([, value]) => y(value),
  )(points) ?? '';

/** Between the bounds of a curve. Bands lie under every line. */
export function BandDrawing({ curve: { points, band = [] }, scales: { x, y } }: Omit<CurveDrawingProps, 'place'>) {
  const places = points.flatMap(([at], place) => {
    const bounds = band[place];
    return bounds ? [{ at, low: bounds[0], high: bounds[1] }] : [];
  });
  const path = area<(typeof places)[number]>(
    ({ at }) => x(at),
    ({ low }) => y(low),
    ({ high }) => y(high),
  )(places);
  return <path className={styles['band']} d={path ?? ''} />;
}
