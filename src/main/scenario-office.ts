import type { Fact, Draft } from '#domain/fact.ts';
import { idOf } from '#domain/identity.ts';
import { isKind, endOfLog } from '#domain/log.ts';
import { knownAt } from '#domain/known.ts';
import { derive } from '#planning/derive.ts';
import { issueDocuments, planIssue } from '#planning/issue.ts';
import { recallsUnder } from '#planning/recall.ts';
import type { AtTheDesk, Office, WeekToIssue } from '#scenario/office.ts';

/** What a specialist of the scenario writes as the reason for a raise that needs one. */
const REASON = 'Agreed in the talk: it has felt light for two sessions.';

/** The desk at which the scenario's cards are issued and recalled: the same planning that a real one uses. */
export const scenarioOffice = (program: string): Office => ({
  issue: (log, week) => issueWeek(log, week, program),
  recall: (log, because, desk) => {
    const restricted = log.findLast((fact) => fact.id === because);
    if (!restricted || !isKind('restricted')(restricted)) return [];
    const known = knownAt(log, restricted.person, endOfLog(log));
    return known ? recallsUnder(known, because, desk.today).map((decision) => decided(log, desk, decision)) : [];
  },
});

const issueWeek = (log: readonly Fact[], week: WeekToIssue, program: string): readonly Draft[] => {
  const known = knownAt(log, week.person, endOfLog(log));
  const signer = known?.house.signers.get(week.signer);
  if (!known || !signer) return [];
  const road = derive(known, week.today, week.until);
  const days = road.cards.flatMap((card) =>
    card.state === 'planned' && card.gaps.length === 0 && card.day >= week.from && card.day <= week.until
      ? [card.day]
      : [],
  );
  const reasons = Object.fromEntries(planIssue(known, road, days).raises.map((raise) => [raise.track, REASON]));
  const signsFor = signer.signsFor === null ? null : (known.house.signers.get(signer.signsFor)?.name ?? null);
  const issuing = issueDocuments(known, road, days, {
    signer,
    signsFor,
    issuedAt: week.at,
    newId: week.newId,
    program,
    reasons,
  });
  if (issuing.kind === 'refused') return [];
  return issuing.documents.map((card) =>
    decided(log, week, { kind: 'issue', person: week.person, card, raises: card.raises }),
  );
};

type Decision = Extract<Draft['body'], { readonly kind: 'decided' }>['decision'];

const decided = (log: readonly Fact[], { newId, signer }: AtTheDesk, decision: Decision): Draft => ({
  id: idOf(newId()),
  body: { kind: 'decided', decision, answers: null, basis: endOfLog(log) },
  recordedBy: signer,
  supersedes: null,
  reason: null,
});
