import type { Day } from '#units/day.ts';
import type { Draft, Fact, FactBody } from '#domain/fact.ts';
import type { FactId, Instant } from '#domain/identity.ts';
import { ofKind, type Known } from '#domain/known.ts';
import { endOfLog } from '#domain/log.ts';
import { recallsUnder } from '#planning/recall.ts';
import { decided, logWith } from './drafts.ts';
import { snapshotOf } from './snapshot.ts';

/**
 * Recalls that drafts entail: whatever makes a binding restriction meet a standing card (entered, corrected, its lifting
 * or a called-off session taken back) recalls that card in the same transaction. Nobody can train between the two.
 */
export const recallsAfter = (
  log: readonly Fact[],
  drafts: readonly Draft[],
  moment: { readonly now: Instant; readonly today: Day },
  draft: (body: FactBody) => Draft,
): readonly Draft[] => {
  const after = snapshotOf(logWith(log, drafts, moment.now), moment.today);
  const recalls = after.people.flatMap((person) => {
    const known = after.known(person);
    return known
      ? bindingRestrictions(known).flatMap((restriction) => recallsUnder(known, restriction, moment.today))
      : [];
  });
  const once = new Map(recalls.flatMap((recall) => (recall.kind === 'recall' ? [[recall.card, recall] as const] : [])));
  return [...once.values()].map((recall) => draft(decided(recall, endOfLog(log))));
};

const bindingRestrictions = (known: Known): readonly FactId[] => {
  const lifted = new Set(ofKind(known, 'restriction lifted').map(({ restriction }) => restriction));
  return ofKind(known, 'restricted').flatMap(({ id }) => (lifted.has(id) ? [] : [id]));
};
