import type { BringInAnswers, MatchingByHand, TableReading } from '#contract/bring-in.ts';
import type { Problem } from '#contract/problem.ts';
import { capacityReader, type CapacityReader } from '#assessing/capacity.ts';
import type { Fact } from '#domain/fact.ts';
import type { PersonId, SignerId } from '#domain/identity.ts';
import { endOfLog } from '#domain/log.ts';
import type { Day } from '#units/day.ts';
import { barLoad, repetitions } from '#units/quantity.ts';
import { draftsOf } from '#interchange/drafts-of.ts';
import { planBringIn, type BringInPlan } from '#interchange/plan-bring-in.ts';
import { bringInContext, type OneRepMax, type OwnEstimate } from '#interchange/planning/context.ts';
import { repetitionMaximum } from '#science/strength/repetition-maximum.ts';
import { rangeOfRepetitions } from '#science/strength/set-estimate.ts';
import { answerOf, notBuilt, type Answer } from './answer.ts';
import { writerOn } from './signing.ts';
import { snapshotOf, type Snapshot } from './snapshot.ts';
import type { Workplace } from './workplace.ts';

export interface BringIn {
  readonly table: TableReading;
  readonly matching: MatchingByHand | null;
  readonly answers: BringInAnswers;
}

/** What a file would bring into the log as it stands. Nothing is written. */
export const lookThrough = (log: readonly Fact[], today: Day, { table, matching, answers }: BringIn): BringInPlan => {
  const ownEstimate = ownEstimates(snapshotOf(log, today));
  const context = bringInContext(log, endOfLog(log), { today, ownEstimate, oneRepMax });
  return planBringIn(table, { matching, answers, context });
};

/** Records all that a file brings, or nothing. It is looked through anew under the log's lock. */
export const bringIn = async (
  { store, today, newId }: Workplace,
  signer: SignerId,
  asked: BringIn,
): Promise<Answer<{ readonly recorded: number }>> =>
  answerOf(
    await store.transact((log) => {
      const writer = writerOn(snapshotOf(log, today()).house, signer, today());
      if (writer.kind === 'refused') return notBuilt(writer.problem);
      const plan = lookThrough(log, today(), asked);
      if (!plan.ready) return notBuilt(...whatStandsOpen(plan));
      const drafts = draftsOf(plan, { newId, recordedBy: signer });
      return { kind: 'drafts', drafts, result: { recorded: drafts.length } };
    }),
  );

const whatStandsOpen = ({ questions, problems, facts }: BringInPlan): readonly Problem[] => {
  const open = questions.filter(({ answer }) => answer === null);
  const refused = problems.filter(({ kind }) => kind === 'refused');
  return [
    ...refused.map(({ where, what, why, whatToDo }) => ({ what: `${where}: ${what}`, why, whatToDo, field: null })),
    ...open.map(({ id, where, asks, because, choices }) => ({
      what: `${where}: ${asks}`,
      why: because,
      whatToDo: `Answer: ${choices.map(({ answer }) => answer).join(', ')}.`,
      field: id,
    })),
    ...(refused.length + open.length === 0 && facts.length === 0 ? [nothingNew()] : []),
  ];
};

const nothingNew = (): Problem => ({
  what: 'The file brings nothing new.',
  why: 'Everything in it is recorded already, or was left out.',
  whatToDo: 'Nothing, or choose another file.',
  field: null,
});

/** A person's own one-repetition maximum on the free bar, to question a load by. */
const ownEstimates = (snapshot: Snapshot): OwnEstimate => {
  const readers = new Map<PersonId, CapacityReader | null>();
  const bar = [...snapshot.house.machines.values()].find(({ kind }) => kind === 'free bar');
  return (person, id) => {
    const known = snapshot.known(person);
    const reader = readers.get(person) ?? (known && capacityReader(known));
    readers.set(person, reader);
    const exercise = snapshot.house.exercises.get(id);
    const estimate = (reader && exercise && bar && reader.trace(exercise, bar)?.at(snapshot.today)) ?? null;
    return estimate?.of === 1 ? estimate.median : null;
  };
};

const ONE = repetitions(1);

const oneRepMax: OneRepMax = (load, done) => {
  const effective = repetitions(done);
  return load > 0 && rangeOfRepetitions(effective).kind !== 'none'
    ? repetitionMaximum(barLoad(load), effective, ONE)
    : null;
};
