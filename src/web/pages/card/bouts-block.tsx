import type { CardBout, CardBouts } from '#domain/card.ts';
import { areAlikeInTime, showSeconds } from '#domain/show-piece.ts';
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

const timeOf = ({ seconds, easy }: CardBout, count: number): Target => ({
  value: count > 1 ? `${count} × ${showSeconds(seconds)}` : showSeconds(seconds),
  unit: '',
  label: easy > 0 && count > 1 ? `${showSeconds(easy)} easy between` : 'at a stretch',
});

const Time = ({ bouts }: { readonly bouts: readonly CardBout[] }) => {
  const [first] = bouts;
  return first ? <Term target={timeOf(first, bouts.length)} /> : null;
};

/** How long, how hard: the numbers that are read while running, one beside the other. */
const BoutRun = ({ run: { part, count } }: { readonly run: Run<CardBout> }) => (
  <>
    <Term target={timeOf(part, count)} />
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

/** Bouts that last alike and are held at different loads: the time once, then a square for each with what it asks for. */
const EachBout = ({ bouts }: { readonly bouts: readonly CardBout[] }) => (
  <ol className={styles['each']}>
    {bouts.map((bout, place) => {
      const [first, ...others] = boutTargets(bout).toReversed();
      return (
        // Bouts have no names of their own; their place in the item is what tells them apart.
        <li key={`bout ${place}`}>
          <span className={styles['label']}>{place + 1}</span>
          <strong>
            {first?.value} {first?.unit}
          </strong>
          <span className={styles['label']}>{others.map(({ value, unit }) => `${value} ${unit}`).join(' ')}</span>
        </li>
      );
    })}
  </ol>
);

const boxesOf = ({ harness, bouts }: CardBouts): readonly string[] => {
  const isOnBelt = harness !== null || bouts.some(({ speed }) => speed !== null);
  return ['pulse', isOnBelt ? 'km/h' : 'W', 'RPE', 'min', ...(harness === null ? [] : ['harness L', 'harness R'])];
};

/** Bouts of endurance: how long, how hard, what to set; a square for each bout and places for what was held. */
export const BoutsBlock = ({ item }: { readonly item: CardBouts }) => {
  const runs = runsOf(item.bouts);
  const differ = runs.length > 1 && areAlikeInTime(item.bouts);
  return (
    <li className={join(styles['item'], styles['endurance'])}>
      <span className={styles['place']}>{item.place}</span>
      <WhatToDo item={item}>
        {warmAndCool(item)} {shouldFeel(item.shouldFeel)}
      </WhatToDo>
      <div className={styles['write']}>
        <ul className={styles['targets']}>
          <Harness item={item} />
          {differ ? <Time bouts={item.bouts} /> : runs.map((run, place) => <BoutRun key={`run ${place}`} run={run} />)}
        </ul>
        <div className={styles['held']}>
          {differ ? <EachBout bouts={item.bouts} /> : <Ticks count={item.bouts.length} />}
          <Boxes labels={boxesOf(item)} />
        </div>
        <Says item={item} />
        <p className={styles['noteline']}>note</p>
      </div>
    </li>
  );
};
