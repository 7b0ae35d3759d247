import type { Fact, Sequence, Signer } from '#domain/fact.ts';
import type { PersonId, SignerId } from '#domain/identity.ts';
import { personOf, type Known } from '#domain/known.ts';
import type { Day } from '#units/day.ts';
import type { Road } from '#domain/road.ts';
import type { Problem } from '#contract/problem.ts';
import { movedOn } from './answer.ts';
import { trainerOn } from './signing.ts';
import { snapshotOf, type Snapshot } from './snapshot.ts';

export type PersonAtHand =
  | {
      readonly kind: 'at hand';
      readonly snapshot: Snapshot;
      readonly known: Known;
      readonly road: Road;
      readonly signer: Signer;
      readonly signsFor: string | null;
    }
  | { readonly kind: 'refused'; readonly problems: readonly Problem[] };

export interface Asked {
  readonly person: PersonId;
  readonly signer: SignerId;
  /** What the signer saw; null where nothing shown is signed. */
  readonly basis: number | null;
}

/** The person that somebody decides about, under the log's lock: known, derived, and not changed since they looked. */
export const personAtHand = (log: readonly Fact[], today: Day, asked: Asked): PersonAtHand => {
  const snapshot = snapshotOf(log, today);
  const writer = trainerOn(snapshot.house, asked.signer, today);
  const [known, road] = [snapshot.known(asked.person), snapshot.road(asked.person)];
  const problems = [
    ...(writer.kind === 'refused' ? [writer.problem] : []),
    ...(known ? [] : [nobody()]),
    ...(asked.basis !== null && hasMovedOn(log, asked.person, asked.basis) ? [movedOn()] : []),
  ];
  if (writer.kind === 'refused' || !known || !road || problems.length > 0) return { kind: 'refused', problems };
  return { kind: 'at hand', snapshot, known, road, signer: writer.signer, signsFor: writer.signsFor };
};

/** Has anything about the person or the house been recorded since? Other people's entries change nothing here. */
export const hasMovedOn = (log: readonly Fact[], person: PersonId | null, basis: number): boolean =>
  basis > (log.at(-1)?.sequence ?? 0) ||
  log.some((fact) => fact.sequence > (basis as Sequence) && [person, null].includes(personOf(fact)));

const nobody = (): Problem => ({
  what: 'Nobody in this log has that identity.',
  why: 'Only people who were introduced can be worked with.',
  whatToDo: 'Bring the person in, or choose another.',
  field: 'person',
});
