import type { Card, CardLift } from '#domain/card.ts';
import type { IssuedCard } from '#domain/issued-card.ts';
import type { Raise } from '#domain/raise.ts';
import type { CardRecord } from '#domain/road.ts';
import type { Working } from '#domain/working.ts';

export interface IssuedCardWindow {
  readonly kind: 'issued';
  readonly document: IssuedCard;
  readonly code: string;
  readonly record: Pick<CardRecord, 'delivery' | 'outcome' | 'recall'>;
  readonly plainText: string;
}

/** A card that nobody has signed. It says so wherever it is shown and cannot be trained from. */
export interface PlannedCardWindow {
  readonly kind: 'planned';
  readonly card: Card;
  readonly personName: string;
  readonly missionName: string;
  readonly gaps: readonly string[];
}

export type CardWindow = IssuedCardWindow | PlannedCardWindow;

/** One person's week as plain text, at most 4,096 bytes of ASCII. */
export interface WeekTextWindow {
  readonly text: string;
  readonly bytes: number;
  /** What had to go to fit, in this order; whole sessions only where even that is too long. */
  readonly cut: readonly ('cues' | 'last time' | 'explanations' | 'warm-up sets' | 'machine down' | 'sessions')[];
}

/** What a signer must see before issuing. */
export interface IssuePreviewWindow {
  readonly upTo: number;
  readonly cards: readonly PlannedCardWindow[];
  readonly raises: readonly Raise[];
  readonly replaces: readonly { readonly code: string; readonly missionDay: string }[];
  /** Why something cannot be issued. */
  readonly refusals: readonly string[];
}

export interface WorkingWindow {
  readonly exerciseName: string;
  readonly load: string;
  readonly workings: readonly Working[];
  readonly limits: CardLift['limits'];
}
