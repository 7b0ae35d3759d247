import { showRepetitions } from '#domain/asked-sets.ts';
import type { CardItem, CardLift, CardSet } from '#domain/card.ts';
import { join } from '../../parts/join.ts';
import { showIncrements } from '../../parts/loads.ts';
import { prescription, ruleText, span } from './prescription.ts';
import { BoutsBlock } from './bouts-block.tsx';
import { Boxes } from './boxes.tsx';
import { DrillBlock } from './drill-block.tsx';
import { WhatToDo } from './what-to-do.tsx';
import styles from './exercise.module.css';

const marksOf = (set: CardSet): string =>
  [set.kind === 'warm-up' ? ' w' : '', set.side === null ? '' : set.side === 'left' ? ' L' : ' R'].join('');

const LoadLine = ({ set, item }: { readonly set: CardSet; readonly item: CardLift }) => (
  <p className={styles['load']}>
    {set.load.kind === 'start at' ? <span className={styles['start']}>start </span> : null}
    <strong>
      {showIncrements(set.load.increments, item.increment)}
      {marksOf(set)}
    </strong>
    <span className={styles['times']}> × {showRepetitions(set)}</span>
  </p>
);

const WorkSet = ({ set, item }: { readonly set: CardSet; readonly item: CardLift }) => (
  <li className={join(set.optional && styles['optional'])}>
    <LoadLine set={set} item={item} />
    <Boxes labels={['done', 'RPE']} />
    {set.optional ? <p className={styles['label']}>if it goes well</p> : null}
  </li>
);

/** Warm-up sets are done, not written down: they share one place. */
const WarmUps = ({ item }: { readonly item: CardLift }) => {
  const sets = item.sets.filter(({ kind }) => kind === 'warm-up');
  return sets.length > 0 ? (
    <li className={styles['warmup']}>
      {sets.map((set, place) => (
        <LoadLine key={`set ${place}`} set={set} item={item} />
      ))}
    </li>
  ) : null;
};

const bandOf = (item: CardLift): string | null => {
  const load = item.sets.find((set) => set.load.kind === 'start at')?.load;
  return load?.kind === 'start at'
    ? `Start there, then change the load so that each set feels ${span(load.rpe)}.`
    : null;
};

/** One exercise: what to do at the left, where to write at the right. */
export const CardItemBlock = ({
  item,
  isPaired,
}: {
  readonly item: CardItem;
  /** Shares its row with the drill before or after it. */
  readonly isPaired: boolean;
}) => {
  switch (item.kind) {
    case 'lift':
      return <LiftBlock item={item} />;
    case 'bouts':
      return <BoutsBlock item={item} />;
    case 'drill':
      return <DrillBlock item={item} isPaired={isPaired} />;
  }
};

const LiftBlock = ({ item }: { readonly item: CardLift }) => {
  const band = bandOf(item);
  const rule = ruleText(item);
  return (
    <li className={styles['item']}>
      <span className={styles['place']}>
        {item.place}
        {item.superset === null ? null : <span className={styles['letter']}>{item.superset.letter}</span>}
      </span>
      <WhatToDo item={item}>
        {prescription(item)} {band}
      </WhatToDo>
      <div className={styles['write']}>
        <ul className={join(styles['sets'], band !== null && styles['starts'])}>
          <WarmUps item={item} />
          {item.sets
            .filter(({ kind }) => kind === 'work')
            .map((set, place) => (
              // Sets have no names of their own; their place in the item is what tells them apart.
              <WorkSet key={`set ${place}`} set={set} item={item} />
            ))}
        </ul>
        {rule ? <p className={styles['rule']}>Rule: {rule}</p> : null}
        <p className={styles['noteline']}>note</p>
      </div>
    </li>
  );
};
