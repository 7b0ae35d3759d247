import type { Day } from '#units/day.ts';
import type { BodySite, LooseKind, MachineKind } from '#domain/catalogue.ts';
import type { Card } from '#domain/card.ts';
import type { SessionId } from '#domain/identity.ts';
import type { Raise } from '#domain/raise.ts';
import type { Problem } from '../problem.ts';
import type { PersonHead } from './person-head.ts';

export type Gear = MachineKind | LooseKind;

/** What somebody who makes a session anew begins from. */
export interface ReMakeWindow {
  readonly person: PersonHead;
  readonly upTo: number;
  readonly day: Day;
  readonly missionDay: string;
  readonly site: string | null;
  /** Sessions of the phase, the day's own first; empty where there is no programme. */
  readonly sessions: readonly {
    readonly id: SessionId;
    readonly title: string;
    readonly blockMinutes: number;
    readonly isOfDay: boolean;
  }[];
  readonly gear: readonly { readonly kind: Gear; readonly isHere: boolean; readonly name: string | null }[];
  readonly bodySites: readonly BodySite[];
  readonly isIssued: boolean;
}

/** What the session would be. Nothing is signed by looking. */
export interface ReMadeWindow {
  readonly problems: readonly Problem[];
  readonly card: Card | null;
  /** What stands in the way of issuing it. */
  readonly gaps: readonly string[];
  /** Does it hurt so much that there is no session? Then what hurts is recorded without one. */
  readonly hurtsTooMuch: boolean;
  readonly raises: readonly Raise[];
  readonly text: string;
  readonly messages: number;
}
