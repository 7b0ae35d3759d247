import type { LevelLoad } from '#contract/windows/crossing-window.ts';
import { figure, type Figure } from '#science/body/planar-model.ts';
import type { BodyModel } from '#science/body/body-model.ts';
import type { LiftDrawing } from './lift-drawing.ts';
import { bodyShape, type BodyShape } from './body-shape.ts';
import { levelPlaces, type Level } from './level-places.ts';
import { pointsOf, screenFor, type Screen, type Spot } from './screen.ts';
import { join } from '../parts/join.ts';
import styles from './body-figure.module.css';

/** One drawing: 300 wide, the floor near its foot. */
export const VIEW = { width: 300, height: 400, floor: 384, left: 14, labels: 208 };

/** Deep positions are drawn larger than standing ones, so that both fill the panel; tall people stay taller. */
const PER_METRE = { standing: 190, deep: 225 };

export interface PanelProps {
  readonly gravity: '1 g' | '0 g';
  readonly drawing: Extract<LiftDrawing, { kind: 'drawn' }>;
  readonly body: BodyModel;
  readonly stature: number;
  readonly levels: readonly LevelLoad[];
  readonly says: string;
}

/** A person at the bottom of the lift: solid where the body weighs, an outline where it does not. */
export function FigurePanel({ gravity, drawing, body, stature, levels, says }: PanelProps) {
  const posed = figure(body, drawing.posture, drawing.bar);
  const perMetre = drawing.standing ? PER_METRE.standing : PER_METRE.deep;
  const screen = screenFor(stature, perMetre, ankleAt(posed, stature * perMetre), VIEW.floor);
  const shape = bodyShape(posed, screen);
  const bar = screen.spot(posed.joints.bar);
  return (
    <svg className={join(styles['body-figure'], gravity === '0 g' && styles['weighs-no'])} viewBox={viewBox} role="img">
      <title>{says}</title>
      <line className={styles['floor']} x1="0" x2={VIEW.width} y1={VIEW.floor} y2={VIEW.floor} />
      <Silhouette shape={shape} />
      {gravity === '1 g' ? (
        <Bar at={bar} size={screen.perStature} />
      ) : (
        <MachineLine at={bar} size={screen.perStature} />
      )}
      <JointMarks posed={posed} screen={screen} />
      <LevelLabels gravity={gravity} levels={levels} places={levelPlaces(posed.joints, screen)} />
    </svg>
  );
}

/** Behind the hindmost joint the body is this deep, as a fraction of stature. */
const BEHIND = 0.06;

/** So far to the right that nothing leaves the panel, and never left of where a standing person stands. */
const ankleAt = ({ joints }: Figure, perStature: number): number =>
  Math.max(84, VIEW.left + (BEHIND - Math.min(joints.hip.x, joints.shoulder.x)) * perStature);

const viewBox = `0 0 ${VIEW.width} ${VIEW.height}`;

/** Edges first, then the inside over them: what is left of the edges is the outline of the whole. */
function Silhouette({ shape: { body, head, arm } }: { readonly shape: BodyShape }) {
  const ellipse = { cx: head.centre.x, cy: head.centre.y, rx: head.across, ry: head.upright };
  return (
    <>
      {body.map((part, index) => (
        <polygon key={index} className={styles['edge']} points={pointsOf(part)} />
      ))}
      <ellipse className={styles['edge']} {...ellipse} />
      {body.map((part, index) => (
        <polygon key={index} className={styles['inside']} points={pointsOf(part)} />
      ))}
      <ellipse className={styles['inside']} {...ellipse} />
      {arm.map((part, index) => (
        <polygon key={index} className={styles['edge']} points={pointsOf(part)} />
      ))}
      {arm.map((part, index) => (
        <polygon key={index} className={styles['inside']} points={pointsOf(part)} />
      ))}
    </>
  );
}

/** The bar seen from its end, and its weight. */
function Bar({ at, size }: { readonly at: Spot; readonly size: number }) {
  const end = Math.min(at.y + 0.17 * size, VIEW.floor);
  return (
    <g className={styles['bar']}>
      <line x1={at.x} x2={at.x} y1={at.y} y2={end} />
      <Head x={at.x} y={end} />
      <circle cx={at.x} cy={at.y} r={0.02 * size} />
    </g>
  );
}

/** The machine's line from the yoke to the platform: nothing else pulls. */
function MachineLine({ at, size }: { readonly at: Spot; readonly size: number }) {
  return (
    <g className={styles['machine-line']}>
      <line x1={at.x} x2={at.x} y1={at.y} y2={VIEW.floor} />
      <Head x={at.x} y={Math.min(at.y + 0.17 * size, VIEW.floor)} />
      <circle cx={at.x} cy={at.y} r={0.02 * size} />
    </g>
  );
}

function Head({ x, y }: Spot) {
  return (
    <polygon
      points={pointsOf([
        { x: x - 6, y: y - 9 },
        { x: x + 6, y: y - 9 },
        { x, y },
      ])}
    />
  );
}

function JointMarks({ posed, screen }: { readonly posed: Figure; readonly screen: Screen }) {
  const { ankle, knee, hip, shoulder } = posed.joints;
  return (
    <>
      {[ankle, knee, hip, shoulder].map((joint, index) => (
        <circle key={index} className={styles['joint']} cx={screen.spot(joint).x} cy={screen.spot(joint).y} r="2.6" />
      ))}
    </>
  );
}

interface LabelProps {
  readonly gravity: '1 g' | '0 g';
  readonly levels: readonly LevelLoad[];
  readonly places: Readonly<Record<Level, Spot>>;
}

const LABEL_TOP = 34;
const BAR_MOST = 66;

/** Load at each level, from the shoulders down, evenly spread, each tied to its place by a thin line. */
function LevelLabels({ gravity, levels, places }: LabelProps) {
  const most = Math.max(1, ...levels.flatMap((level) => [level.onGround, level.inFlight]));
  const step = levels.length > 1 ? (VIEW.floor - 26 - LABEL_TOP) / (levels.length - 1) : 0;
  return (
    <>
      {levels.map((level, index) => {
        const y = LABEL_TOP + index * step;
        const load = gravity === '1 g' ? level.onGround : level.inFlight;
        const place = places[level.level];
        return (
          <g key={level.level}>
            <polyline
              className={styles['leader']}
              points={pointsOf([place, { x: VIEW.labels - 20, y }, { x: VIEW.labels - 5, y }])}
            />
            <text className={styles['level-name']} x={VIEW.labels} y={y - 7}>
              {level.level}
            </text>
            <rect
              className={styles['level-bar']}
              x={VIEW.labels}
              y={y - 3}
              width={(BAR_MOST * Math.max(0, load)) / most}
              height="6"
            />
            <text className={styles['level-load']} x={VIEW.labels} y={y + 16}>
              {Math.round(load)}
              <tspan className={styles['level-unit']}> kg</tspan>
            </text>
          </g>
        );
      })}
    </>
  );
}
