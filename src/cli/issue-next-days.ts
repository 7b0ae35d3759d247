import type { Known } from '#domain/known.ts';
import type { SignerId } from '#domain/identity.ts';
import type { IssuedCard } from '#domain/issued-card.ts';
import type { Answer } from '#actions/answer.ts';
import { issueDays } from '#actions/issue-days.ts';
import type { Snapshot } from '#actions/snapshot.ts';
import type { Workplace } from '#actions/workplace.ts';

/** Issues the next sessions of a person that can be issued. */
export const issueNextDays = async (
  workplace: Workplace,
  snapshot: Snapshot,
  { person }: Known,
  signer: SignerId,
  asked: { readonly sessions: number; readonly reason: string | null },
): Promise<Answer<{ readonly documents: readonly IssuedCard[] }>> => {
  const cards = snapshot.road(person)?.cards ?? [];
  const planned = cards.flatMap((card) => (card.state === 'planned' ? [card] : [])).slice(0, asked.sessions);
  const tracks = planned.flatMap(({ card }) => card.items.map(({ track }) => track));
  return issueDays(workplace, {
    person,
    signer,
    days: planned.map(({ day }) => day),
    basis: snapshot.upTo,
    reasons: asked.reason === null ? {} : Object.fromEntries(tracks.map((track) => [track, asked.reason ?? ''])),
  });
};
