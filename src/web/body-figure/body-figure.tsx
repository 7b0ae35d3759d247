import type { ShareModel } from '#domain/catalogue.ts';
import type { LevelLoad } from '#contract/windows/crossing-window.ts';
import { BODY } from '#science/body/body-model.ts';
import { FigurePanel } from './figure-panel.tsx';
import { liftDrawing } from './lift-drawing.ts';
import styles from './body-figure.module.css';

export interface BodyFigureProps {
  readonly sex: 'female' | 'male';
  /** Metres; null where it was never measured. */
  readonly stature: number | null;
  readonly shareModel: ShareModel;
  readonly levels: readonly LevelLoad[];
  /** "bar 77 kg" and "machine 270 lb, 122 kg". */
  readonly bar: string;
  readonly machine: string;
}

/** Drawn where no stature was measured, and said so [m]. */
const STATURE_WHERE_UNKNOWN = 1.7;

/** The same lift twice: in 1 g the body weighs, in 0 g only the machine pulls. Drawn from the planar model. */
export function BodyFigure({ sex, stature, shareModel, levels, bar, machine }: BodyFigureProps) {
  const drawing = liftDrawing(shareModel);
  if (drawing.kind === 'not drawn') return <p className={styles['figure-caption']}>{drawing.why}</p>;
  const shared = { drawing, levels, body: BODY[sex], stature: stature ?? STATURE_WHERE_UNKNOWN };
  return (
    <figure className={styles['figure-pair']}>
      <div>
        <p className={styles['figure-head']}>
          <b>1 g</b> {bar}; the body weighs
        </p>
        <FigurePanel {...shared} gravity="1 g" says={`In 1 g: ${bar}. ${loads(levels, 'onGround')}`} />
      </div>
      <div>
        <p className={styles['figure-head']}>
          <b>0 g</b> {machine}; only the machine pulls
        </p>
        <FigurePanel {...shared} gravity="0 g" says={`In 0 g: ${machine}. ${loads(levels, 'inFlight')}`} />
      </div>
      <figcaption className={styles['figure-caption']}>
        Planar model, {drawing.position}
        {stature === null
          ? `, drawn ${STATURE_WHERE_UNKNOWN} m tall: no stature is recorded.`
          : `, ${stature.toFixed(2)} m tall.`}{' '}
        Lengths after {shortSource(BODY[sex].source.text)}: mean proportions of a sample, not this person’s own. Widths
        are only drawn. Numbers: load carried at each level.
      </figcaption>
    </figure>
  );
}

const loads = (levels: readonly LevelLoad[], where: 'onGround' | 'inFlight'): string =>
  levels.map((level) => `${level.level} ${Math.round(level[where])} kg`).join(', ');

/** "de Leva P. (1996)": author and year, the rest stands on the Evidence page. */
const shortSource = (text: string): string => `${text.split(')')[0] ?? text})`;
