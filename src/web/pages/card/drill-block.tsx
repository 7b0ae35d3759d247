import type { CardDrill, CardDrillSet } from '#domain/card.ts';
import { join } from '../../parts/join.ts';
import { kilogramsOfForce } from '../../parts/loads.ts';
import { Boxes } from './boxes.tsx';
import { alikeWork, drillRest, pulsesOf, setCount, shouldFeel } from './piece-words.ts';
import { PulseStrip } from './pulse-strip.tsx';
import { WhatToDo } from './what-to-do.tsx';
import styles from './exercise.module.css';

const sideOf = ({ side }: CardDrillSet): string => (side === null ? '' : side === 'left' ? 'L' : 'R');

const DrillSet = ({ set, saysWork }: { readonly set: CardDrillSet; readonly saysWork: boolean }) => (
  <li>
    <p className={styles['load']}>
      <strong>{set.force === null ? setCount(set) : set.force}</strong>
      {set.force === null ? null : <span className={styles['times']}> N</span>}
      <strong> {sideOf(set)}</strong>
    </p>
    {set.force === null ? null : (
      <p className={styles['label']}>
        {kilogramsOfForce(set.force)} kg{saysWork ? ` · ${setCount(set)}` : ''}
      </p>
    )}
    <Boxes labels={['done']} isSmall />
  </li>
);

/** Sets that no machine loads: each with its side and force, a box a set, one effort for all of them. */
export const DrillBlock = ({ item, isPaired }: { readonly item: CardDrill; readonly isPaired: boolean }) => {
  const pulses = pulsesOf(item);
  const alike = alikeWork(item);
  const hasForce = item.sets.some(({ force }) => force !== null);
  return (
    <li className={join(styles['item'], styles['drill'], isPaired && styles['paired'])}>
      <span className={styles['place']}>{item.place}</span>
      <WhatToDo item={item}>
        {drillRest(item)} {shouldFeel(item.shouldFeel)}
      </WhatToDo>
      <div className={styles['write']}>
        {pulses === null ? null : <PulseStrip pulses={pulses} />}
        {pulses === null && hasForce && alike !== null ? (
          <p className={styles['load']}>
            <strong>{alike}</strong> <span className={styles['times']}>each</span>
          </p>
        ) : null}
        <ul className={styles['drillsets']}>
          {item.sets.map((set, place) => (
            // Sets have no names of their own; their place in the item is what tells them apart.
            <DrillSet key={`set ${place}`} set={set} saysWork={alike === null} />
          ))}
          <li className={styles['effort']}>
            <Boxes labels={['RPE']} isSmall />
          </li>
        </ul>
        <p className={styles['noteline']}>note</p>
      </div>
    </li>
  );
};
