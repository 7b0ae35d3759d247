import type { ProgrammeItem } from '#domain/programme.ts';
import type { Draft } from './draft.ts';

/** One item otherwise, wherever it stands. */
export const withItem = (draft: Draft, item: ProgrammeItem): Draft => ({
  ...draft,
  phases: draft.phases.map((phase) => ({
    ...phase,
    sessions: phase.sessions.map((session) => ({
      ...session,
      slots: session.slots.map((slot) => (slot.kind === 'item' && slot.item.id === item.id ? { ...slot, item } : slot)),
    })),
  })),
});
