import type { IssuedCard } from '#domain/issued-card.ts';
import { weekText } from './week-text.ts';

/** One card as plain text: a week of one session. */
export const cardText = (document: IssuedCard): string => weekText([document]).text;
