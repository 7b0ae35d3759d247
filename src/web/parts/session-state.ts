import type { SheetColumn } from '#contract/windows/sheet-window.ts';

type SessionStanding = Pick<SheetColumn, 'state' | 'past' | 'delivery' | 'outcome' | 'gaps'>;

/** What became of a session, or what may become of it: one plain word. */
export const sessionState = ({ state, past, delivery, outcome, gaps }: SessionStanding): string => {
  if (delivery === 'recalled') return 'recalled';
  if (past && outcome && outcome !== 'none') return outcome;
  if (state === 'issued') return delivery ?? 'issued';
  if (state === 'planned') return gaps.length > 0 ? 'cannot be issued' : 'can be issued';
  return 'expected';
};
