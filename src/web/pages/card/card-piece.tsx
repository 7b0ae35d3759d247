import type { CardBout, CardBouts, CardDrill, CardDrillSet } from '#domain/card.ts';
import { showBoutTargets, showDrillWork, showHarness, showSeconds } from '#domain/show-piece.ts';
import { asSentence, settingsText } from './card-words.ts';
import styles from './card.module.css';

type Piece = CardBouts | CardDrill;

const feel = ([low, high]: readonly [number, number]): string =>
  `Should feel ${low === high ? low : `${low} to ${high}`}.`;

/** What to do before, between and after, in one sentence each. */
const aroundOf = (item: Piece): string => {
  if (item.kind === 'drill') return restOf(item);
  const { warmUpSeconds, coolDownSeconds } = item;
  return [
    ...(warmUpSeconds > 0 ? [`Warm up ${showSeconds(warmUpSeconds)}, easy.`] : []),
    ...(coolDownSeconds > 0 ? [`Cool down ${showSeconds(coolDownSeconds)}; do not stop at once.`] : []),
  ].join(' ');
};

const restOf = ({ sets }: CardDrill): string => {
  const rests = [...new Set(sets.map(({ rest }) => rest))].filter((rest) => rest > 0);
  return rests.length === 0 ? '' : `Rest ${rests.map(showSeconds).join(' or ')}.`;
};

const Bout = ({ bout, count }: { readonly bout: CardBout; readonly count: number }) => (
  <li>
    <p className={styles['load']}>
      {count > 1 ? <span className={styles['times']}>{count} × </span> : null}
      <strong>{showSeconds(bout.seconds)}</strong>
    </p>
    <p>{showBoutTargets(bout).join(' · ')}</p>
    {bout.easy > 0 ? <p className="soft">then {showSeconds(bout.easy)} easy</p> : null}
    <Boxes labels={['done', 'pulse', 'RPE']} />
  </li>
);

const DrillSet = ({ set, count }: { readonly set: CardDrillSet; readonly count: number }) => (
  <li>
    <p className={styles['load']}>
      {count > 1 ? <span className={styles['times']}>{count} × </span> : null}
      <strong>{showDrillWork(set.work)}</strong>
      {set.side === null ? null : <span className={styles['times']}>{set.side === 'left' ? ' L' : ' R'}</span>}
    </p>
    {set.force === null ? null : <p>at {set.force} N</p>}
    <Boxes labels={['done', 'RPE']} />
  </li>
);

const Boxes = ({ labels }: { readonly labels: readonly string[] }) => (
  <div className={styles['boxes']} aria-hidden="true">
    {labels.map((label) => (
      <span key={label}>{label}</span>
    ))}
  </div>
);

/** Neighbours that are alike share one place, with their count. */
const runsOf = <Part,>(parts: readonly Part[]): readonly { readonly part: Part; readonly count: number }[] => {
  const runs: { readonly part: Part; count: number }[] = [];
  for (const part of parts) {
    const same = runs.find((run) => JSON.stringify(run.part) === JSON.stringify(part));
    if (same) same.count += 1;
    else runs.push({ part, count: 1 });
  }
  return runs;
};

const Work = ({ item }: { readonly item: Piece }) => (
  <ul className={styles['sets']}>
    {item.kind === 'bouts'
      ? runsOf(item.bouts).map(({ part, count }, place) => <Bout key={`bout ${place}`} bout={part} count={count} />)
      : runsOf(item.sets).map(({ part, count }, place) => <DrillSet key={`set ${place}`} set={part} count={count} />)}
  </ul>
);

/** Bouts of endurance or a drill: what to do at the left, where to write at the right. */
export const PieceBlock = ({ item }: { readonly item: Piece }) => (
  <li className={styles['item']}>
    <span className={styles['place']}>{item.place}</span>
    <div className={styles['what']}>
      <h3>{item.exerciseName}</h3>
      <p className={styles['last']}>{item.last ? `Last, ${item.last}` : 'First time on this card'}</p>
      <p>
        {item.kind === 'bouts' ? `${item.machineName}. ` : ''}
        {aroundOf(item)} {feel(item.shouldFeel)}
      </p>
      {item.kind === 'bouts' && item.harness ? (
        <p>
          Harness <strong>{showHarness(item.harness)}</strong>, both sides together.
        </p>
      ) : null}
      {item.cues.length > 0 ? <p>{item.cues.join(' ')}</p> : null}
      {item.settings.length > 0 ? <p className="soft">{settingsText(item)}</p> : null}
      {item.says.length > 0 ? <p>{item.says.map(asSentence).join(' ')}</p> : null}
    </div>
    <div className={styles['write']}>
      <Work item={item} />
      <p className={styles['noteline']}>note</p>
    </div>
  </li>
);
