import type { CardBout, CardBouts } from '#domain/card.ts';
import { showSeconds } from '#domain/show-piece.ts';
import { join } from '../../parts/join.ts';
import { showIncrements } from '../../parts/loads.ts';
import { Boxes, Ticks } from './boxes.tsx';
import { boutTargets, runsOf, shouldFeel, warmAndCool, type Run, type Target } from './piece-words.ts';
import { Says, WhatToDo } from './what-to-do.tsx';
import styles from './exercise.module.css';

const Term = ({ target: { value, unit, label } }: { readonly target: Target }) => (
  <li>
    <p className={styles['load']}>
      <strong>{value}</strong>
      {unit === '' ? null : <span className={styles['times']}> {unit}</span>}
    </p>
    <p className={styles['label']}>{label}</p>
  </li>
);

/** How long, how hard: the numbers that are read while running, one beside the other. */
const BoutRun = ({ run: { part, count } }: { readonly run: Run<CardBout> }) => (
  <>
    <Term
      target={{
        value: count > 1 ? `${count} × ${showSeconds(part.seconds)}` : showSeconds(part.seconds),
        unit: '',
        label: part.easy > 0 && count > 1 ? `${showSeconds(part.easy)} easy between` : 'at a stretch',
      }}
    />
    {boutTargets(part).map((target) => (
      <Term key={target.label} target={target} />
    ))}
  </>
);

const Harness = ({ item: { harness } }: { readonly item: CardBouts }) =>
  harness === null ? null : (
    <li className={styles['harness']}>
      <p className={styles['load']}>
        <strong>{showIncrements(harness.increments, harness.increment)}</strong>
        <span className={styles['times']}> {harness.unit}</span>
      </p>
      <p className={styles['label']}>harness, in all</p>
    </li>
  );

const boxesOf = ({ harness, bouts }: CardBouts): readonly string[] => {
  const isOnBelt = harness !== null || bouts.some(({ speed }) => speed !== null);
  return ['pulse', isOnBelt ? 'km/h' : 'W', 'RPE', 'min', ...(harness === null ? [] : ['harness L', 'harness R'])];
};

/** Bouts of endurance: how long, how hard, what to set; a square for each bout and places for what was held. */
export const BoutsBlock = ({ item }: { readonly item: CardBouts }) => (
  <li className={join(styles['item'], styles['endurance'])}>
    <span className={styles['place']}>{item.place}</span>
    <WhatToDo item={item}>
      {warmAndCool(item)} {shouldFeel(item.shouldFeel)}
    </WhatToDo>
    <div className={styles['write']}>
      <ul className={styles['targets']}>
        <Harness item={item} />
        {runsOf(item.bouts).map((run, place) => (
          <BoutRun key={`run ${place}`} run={run} />
        ))}
      </ul>
      <div className={styles['held']}>
        <Ticks count={item.bouts.length} />
        <Boxes labels={boxesOf(item)} />
      </div>
      <Says item={item} />
      <p className={styles['noteline']}>note</p>
    </div>
  </li>
);
