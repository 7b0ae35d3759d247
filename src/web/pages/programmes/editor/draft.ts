import type { Exercise } from '#domain/catalogue.ts';
import { idOf, type ProgrammeId, type ProgrammeVersionId } from '#domain/identity.ts';
import type { ProgrammeItem, ProgrammePhase, ProgrammeSession, ProgrammeVersion } from '#domain/programme.ts';
import { writeLine } from '#domain/programme-line/write-line.ts';

/** One place of a session's list: an item, nothing, or what was typed and cannot be read yet. */
export type Slot =
  | { readonly kind: 'item'; readonly item: ProgrammeItem }
  | { readonly kind: 'unread'; readonly text: string; readonly before: ProgrammeItem | null }
  | { readonly kind: 'blank' };

export const BLANK: Slot = { kind: 'blank' };

export interface DraftSession extends Omit<ProgrammeSession, 'items' | 'blockMinutes'> {
  /** Minutes as they were typed. */
  readonly block: string;
  readonly slots: readonly Slot[];
}

export interface DraftPhase extends Omit<ProgrammePhase, 'sessions'> {
  readonly sessions: readonly DraftSession[];
}

/** A programme while somebody writes it: nothing of it stands in the log until it is taken up. */
export interface Draft {
  readonly programme: ProgrammeId | null;
  readonly name: string;
  /** The version that it was made from; null: a programme of its own. */
  readonly follows: ProgrammeVersionId | null;
  readonly phases: readonly DraftPhase[];
}

export const draftOf = ({ programme, name, id, phases }: ProgrammeVersion): Draft => ({
  programme,
  name,
  follows: id,
  phases: phases.map(({ sessions, ...phase }) => ({
    ...phase,
    sessions: sessions.map(({ items, blockMinutes, ...session }) => ({
      ...session,
      block: String(blockMinutes),
      slots: items.map((item): Slot => ({ kind: 'item', item })),
    })),
  })),
});

export const EMPTY_DRAFT: Draft = {
  programme: null,
  name: '',
  follows: null,
  phases: [
    {
      name: 'general preparation',
      span: { first: { from: 'launch', days: -730 }, last: { from: 'launch', days: -181 } },
      deload: null,
      sessions: [],
      source: '',
    },
  ],
};

export const itemOf = (slot: Slot): ProgrammeItem | null => (slot.kind === 'item' ? slot.item : null);

/** Minutes of a block as a number; no number where they are none. */
export const minutesOf = (block: string): number =>
  /^\s*\d+([.,]\d+)?\s*$/.test(block) ? Number(block.replace(',', '.')) : Number.NaN;

/** What would be taken up. Blank and unread places are left out; what is unread is told apart. */
export const phasesOf = ({ phases }: Draft): readonly ProgrammePhase[] =>
  phases.map(({ sessions, ...phase }) => ({
    ...phase,
    sessions: sessions.map(({ slots, block, ...session }) => ({
      ...session,
      blockMinutes: minutesOf(block),
      items: slots.flatMap((slot) => itemOf(slot) ?? []),
    })),
  }));

/** A programme of its own is known by its name. */
export const programmeOf = ({ programme, follows, name }: Draft): ProgrammeId => {
  if (programme !== null && follows !== null) return programme;
  return idOf(slugOf(name) || 'programme');
};

export const slugOf = (text: string): string =>
  text
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, '-')
    .replaceAll(/^-|-$/g, '')
    .slice(0, 60);

export const textOfSlot = (slot: Slot, exercises: readonly Exercise[]): string => {
  switch (slot.kind) {
    case 'item':
      return writeLine(
        slot.item,
        exercises.find(({ id }) => id === slot.item.exercise),
      );
    case 'unread':
      return slot.text;
    case 'blank':
      return '';
  }
};

/** One phase otherwise. */
export const withPhase = (draft: Draft, at: number, change: (phase: DraftPhase) => DraftPhase): Draft => ({
  ...draft,
  phases: draft.phases.map((phase, place) => (place === at ? change(phase) : phase)),
});
