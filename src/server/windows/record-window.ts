import { isoOfDay, type Day } from '#units/day.ts';
import type { Fact } from '#domain/fact.ts';
import { personOf, type Known } from '#domain/known.ts';
import { showMissionDay } from '#domain/mission-day.ts';
import type { FactId } from '#domain/identity.ts';
import type { Snapshot } from '#actions/snapshot.ts';
import type { RecordLine, RecordWindow } from '#contract/windows/record-window.ts';
import { personHead } from './person-head.ts';
import { recordSays } from './record-says.ts';
import { restrictionsOf } from './sheet-strips.ts';

export const recordWindow = (snapshot: Snapshot, known: Known): RecordWindow => {
  const answers = answersById(snapshot.log);
  const own = snapshot.log.filter((fact) => fact.kind !== 'retracted' && personOf(fact) === known.person);
  return {
    person: personHead(snapshot, known),
    lines: own.toReversed().map((fact) => line(snapshot, known, fact, answers.get(fact.id) ?? null)),
    restrictions: restrictionsOf(known).map(({ fact, says, liftedOn }) => ({ fact, says, lifted: liftedOn !== null })),
  };
};

/** Of each fact, the one that corrected it or took it back. */
const answersById = (log: readonly Fact[]): ReadonlyMap<FactId, Fact> =>
  new Map(log.flatMap((fact) => (fact.supersedes === null ? [] : [[fact.supersedes, fact] as const])));

const line = (snapshot: Snapshot, known: Known, fact: Fact, answer: Fact | null): RecordLine => ({
  fact,
  when: whenOf(known, fact),
  kind: fact.kind === 'decided' ? fact.decision.kind : fact.kind,
  says: recordSays(fact, snapshot.house),
  by: snapshot.house.signers.get(fact.recordedBy)?.name ?? 'unknown',
  standing: answer === null ? 'stands' : answer.kind === 'retracted' ? 'taken back' : 'superseded',
  supersededBy: answer?.sequence ?? null,
  reason: answer?.reason ?? null,
});

const whenOf = ({ mission }: Known, fact: Fact): string => {
  const day = dayOf(fact);
  if (day === null) return fact.recordedAt.slice(0, 10);
  return mission ? `${isoOfDay(day)}, ${showMissionDay(mission, day)}` : isoOfDay(day);
};

const dayOf = (fact: Fact): Day | null => {
  if ('day' in fact) return fact.day;
  if (fact.kind === 'restricted') return fact.restriction.from;
  if (fact.kind === 'decided' && fact.decision.kind === 'issue') return fact.decision.card.card.day;
  return 'on' in fact ? fact.on : null;
};
