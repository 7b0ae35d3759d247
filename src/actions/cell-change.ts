import type { Day } from '#units/day.ts';
import type { Decision } from '#domain/decision.ts';
import type { FactId, TrackId } from '#domain/identity.ts';
import { ofKind, type Known } from '#domain/known.ts';

/** What is to stand in one cell of a sheet: one track on one day. */
export interface CellChange {
  readonly track: TrackId;
  readonly day: Day;
  readonly change:
    | { readonly kind: 'as written'; readonly line: string }
    | { readonly kind: 'leave out' }
    /** What was written for the day ends; the programme stands again. */
    | { readonly kind: 'as programmed' };
}

type Adjust = Extract<Decision, { readonly kind: 'adjust' }>;

export interface WrittenOnCell {
  readonly id: FactId;
  readonly decision: Adjust;
}

/** Adjustments that were written for one track and that day alone, and were not ended, in order of signature. */
export const writtenOn = (known: Known, track: TrackId, day: Day): readonly WrittenOnCell[] =>
  standing(known, track).filter(({ decision: { from, until } }) => from === day && until === day);

/** Lifts left out over several days, which one cell cannot bring back. */
export const leftOutOver = (known: Known, track: TrackId, day: Day): WrittenOnCell | null =>
  standing(known, track).find(
    ({ decision: { change, from, until } }) =>
      change.kind === 'leave out' &&
      from <= day &&
      (until === null || day <= until) &&
      !(from === day && until === day),
  ) ?? null;

/** Every cell of a person that was written for its day alone. */
export const cellsWritten = (known: Known): ReadonlySet<string> =>
  new Set(
    standing(known, null).flatMap(({ decision: { track, from, until } }) =>
      from === until ? [cellName(track, from)] : [],
    ),
  );

export const cellName = (track: TrackId, day: Day): string => `${day} ${track}`;

const ON_CELLS = new Set(['as written', 'leave out']);

/** Lines and leave-outs that were not ended, of one track or of all. */
const standing = (known: Known, track: TrackId | null): readonly WrittenOnCell[] => {
  const decided = ofKind(known, 'decided');
  const ended = new Set(
    decided.flatMap(({ decision }) => (decision.kind === 'end adjustment' ? [decision.adjustment] : [])),
  );
  return decided.flatMap(({ id, decision }) =>
    decision.kind === 'adjust' &&
    (track === null || decision.track === track) &&
    ON_CELLS.has(decision.change.kind) &&
    !ended.has(id)
      ? [{ id, decision }]
      : [],
  );
};

/** What stood in a cell before: written again, it stands so once more. */
export const cellBefore = (known: Known, { track, day }: Pick<CellChange, 'track' | 'day'>): CellChange => {
  const change = writtenOn(known, track, day).at(-1)?.decision.change;
  return {
    track,
    day,
    change: change?.kind === 'as written' || change?.kind === 'leave out' ? change : { kind: 'as programmed' },
  };
};
