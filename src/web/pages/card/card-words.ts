import type { CardItem } from '#domain/card.ts';

/** "foot plate 3 · strap left 2". */
export const settingsText = ({ settings }: Pick<CardItem, 'settings'>): string =>
  settings.map(({ field, value, side }) => `${field}${side ? ` ${side}` : ''} ${value}`).join(' · ');

export const asSentence = (says: string): string =>
  `${says.charAt(0).toUpperCase()}${says.slice(1)}${says.endsWith('.') ? '' : '.'}`;
