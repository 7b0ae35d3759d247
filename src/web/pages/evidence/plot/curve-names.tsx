import type { Curve } from '#science/plot.ts';
import { join } from '#web/parts/parts.ts';
import { lookOf, shapeOf } from './curve-look.ts';
import { labelLines, placedApart } from './plot-labels.ts';
import { LINE_HEIGHT, type PlotScales } from './plot-scales.ts';
import styles from './plot.module.css';

const SAMPLE = 20;
const GAP = 7;

/** The name of each curve beside its end, with a piece of it, joined to the end by a hair where it had to move. */
export function CurveNames({ curves, scales }: { readonly curves: readonly Curve[]; readonly scales: PlotScales }) {
  const { frame } = scales;
  const ends = curves.map((curve) => endOf(curve, scales));
  const wanted = curves.map(({ label }, place) => ({
    at: ends[place]?.y ?? 0,
    height: labelLines(label).length * LINE_HEIGHT + 2,
  }));
  const middles = placedApart(wanted, frame.top - LINE_HEIGHT, frame.height - LINE_HEIGHT);
  return curves.map((curve, place) => (
    <CurveName
      key={curve.label}
      curve={curve}
      place={place}
      end={ends[place] ?? { x: 0, y: 0 }}
      at={{ x: frame.width - frame.right + GAP, y: middles[place] ?? 0 }}
    />
  ));
}

interface Point {
  readonly x: number;
  readonly y: number;
}

interface CurveNameProps {
  readonly curve: Curve;
  readonly place: number;
  readonly end: Point;
  readonly at: Point;
}

function CurveName({ curve, place, end, at }: CurveNameProps) {
  const look = styles[lookOf(place)];
  const lines = labelLines(curve.label);
  const first = at.y - ((lines.length - 1) * LINE_HEIGHT) / 2 + 4;
  return (
    <g>
      <line className={styles['leader']} x1={end.x} y1={end.y} x2={at.x} y2={at.y} />
      {curve.scattered ? (
        <path
          className={join(styles['point'], look)}
          d={shapeOf(place)}
          transform={`translate(${at.x + SAMPLE / 2} ${at.y})`}
        />
      ) : (
        <line className={join(styles['curve'], look)} x1={at.x} x2={at.x + SAMPLE} y1={at.y} y2={at.y} />
      )}
      {lines.map((text, row) => (
        <text key={text} x={at.x + SAMPLE + 5} y={first + row * LINE_HEIGHT}>
          {text}
        </text>
      ))}
    </g>
  );
}

/** The last point to the right. */
const endOf = ({ points }: Curve, { x, y }: PlotScales): Point => {
  const last = points.reduce<readonly [number, number] | null>(
    (best, point) => (best === null || point[0] >= best[0] ? point : best),
    null,
  );
  return last ? { x: x(last[0]), y: y(last[1]) } : { x: 0, y: 0 };
};
