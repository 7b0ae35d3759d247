import type { PersonId, SignerId } from '#domain/identity.ts';
import { answerOf, notBuilt, type Answer } from './answer.ts';
import type { CellChange } from './cell-change.ts';
import { cellsAsked } from './cells-asked.ts';
import { decided, draftOf } from './drafts.ts';
import { personAtHand } from './person-at-hand.ts';
import type { Workplace } from './workplace.ts';

export interface CellsToWrite {
  readonly person: PersonId;
  readonly signer: SignerId;
  readonly cells: readonly CellChange[];
  readonly reason: string;
  /** What the signer saw; null where one cell is written and seen as it is typed. */
  readonly basis: number | null;
}

/**
 * Several cells of one sheet under one signature: all of them or none. What was written on a cell before ends, and the
 * new line stands in its place; facts stay as they are. Nothing goes up by it: what a line asks for above the load in use
 * stands as a raise on the card, and is signed with it.
 */
export const writeCells = async (
  { store, today, newId }: Workplace,
  asked: CellsToWrite,
): Promise<Answer<{ readonly before: readonly CellChange[] }>> =>
  answerOf(
    await store.transact((log) => {
      const at = personAtHand(log, today(), asked);
      if (at.kind === 'refused') return notBuilt(...at.problems);
      const { decisions, before, problems } = cellsAsked(at.known, at.road, asked.cells, asked.reason);
      if (problems.length > 0) return notBuilt(...problems);
      return {
        kind: 'drafts',
        drafts: decisions.map((decision) =>
          draftOf(newId, asked.signer, decided(decision, at.road.upTo), { supersedes: null, reason: asked.reason }),
        ),
        result: { before },
      };
    }),
  );
