import type { ReactNode } from 'react';
import type { CardItem } from '#domain/card.ts';
import { asSentence, settingsText } from './card-words.ts';
import { otherSentences } from './prescription.ts';
import styles from './exercise.module.css';

/** What else is to be known of it today; beside bouts there is more room for it at the right. */
export const Says = ({ item }: { readonly item: CardItem }) => {
  const says = otherSentences(item);
  return says.length > 0 ? <p className={styles['says']}>{says.map(asSentence).join(' ')}</p> : null;
};

/** The left of an exercise: its name, last time, how, cues, the person's own settings, what else is to be known. */
export const WhatToDo = ({ item, children }: { readonly item: CardItem; readonly children: ReactNode }) => (
  <div className={styles['what']}>
    <h3>{item.exerciseName}</h3>
    <p className={styles['last']}>{item.last ? `Last, ${item.last}` : 'First time on this card'}</p>
    <p>{children}</p>
    {item.cues.length > 0 ? <p>{item.cues.join(' ')}</p> : null}
    {item.settings.length > 0 ? <p className="soft">{settingsText(item)}.</p> : null}
    {item.kind === 'bouts' ? null : <Says item={item} />}
  </div>
);
