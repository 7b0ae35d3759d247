import { addDays, type Day } from '#units/day.ts';
import type { CardItem } from '#domain/card.ts';
import type { Machine } from '#domain/catalogue.ts';
import type { Fact } from '#domain/fact.ts';
import type { ExerciseId, FactId } from '#domain/identity.ts';
import type { IssuedCard } from '#domain/issued-card.ts';
import { ofKind, type Known } from '#domain/known.ts';
import type { Raise } from '#domain/raise.ts';
import type { CardRecord, LiftProgress, Road, RoadCard, TrackProgress } from '#domain/road.ts';
import { stepsNotOver } from '#units/rounding.ts';
import { asExpected } from './as-expected.ts';
import { cardRecords, stands } from './card-records.ts';
import { frozenCapacity } from './frozen-capacity.ts';
import { liftingMachineOn, machinesOn } from './machine-on.ts';
import { machineSteps, planContext, type PlanContext } from './plan-context.ts';
import { planCard, type PlannedCard } from './plan-card.ts';
import {
  emptyProgress,
  liftState,
  pieceHold,
  ruleTotalOf,
  setRuleTotal,
  tracksOf,
  type Progress,
  type TrackState,
} from './progress.ts';
import { harnessOf, isHarnessStepEarned, takeHarnessRaise } from './harness-raise.ts';
import { proposalsOf } from './proposals.ts';
import { repeatingPlanner, type CardPlanner } from './repeated-cards.ts';
import { backOffPieces, takePieceDiscomfort } from './take-pieces.ts';
import { stepTo, takeDiscomfort, takeIssue, takeResult } from './take-result.ts';
import { unlaidSessions } from './time/unlaid-sessions.ts';

/** A card that stands as issued, with what would be planned for its day now. */
export interface IssuedAgainst {
  readonly record: CardRecord;
  readonly now: PlannedCard | null;
}

/**
 * Everything that follows from what is known of a person, from launch to `until`: a fold over days. Before today issued
 * cards stand as their documents and results move progress; from today on sessions ahead earn nothing, so that every load
 * inside the horizon is what recorded results justify today. `expect` plans what cannot be issued yet.
 */
export const derive = (known: Known, today: Day, until: Day, expect: CardPlanner = repeatingPlanner()): Road => {
  const context = planContext(known, today);
  const records = cardRecords(known, today);
  const progress = emptyProgress();
  const cards: RoadCard[] = [];
  const issuedAhead: IssuedAgainst[] = [];
  for (let on = firstDay(known, records, today); on <= until; on = addDays(on, 1)) {
    takeDecisions(context, progress, on);
    const standing = records.filter((record) => stands(record) && record.document.card.day === on);
    const others = records.filter((record) => isShownStill(record) && record.document.card.day === on);
    if (standing.length > 0 && on >= today)
      issuedAhead.push({ record: standing[0] as CardRecord, now: planCard(context, progress, on) });
    for (const record of standing) takeIssue(progress, record.document, isAheadOrLived(record));
    for (const record of [...others, ...standing]) cards.push({ state: 'issued', day: on, record });
    for (const record of records) if (record.trained?.day === on) takeResult(context, progress, record);
    takeDiscomfortWithoutResult(context, progress, records, on);
    noteUnread(known, progress, records, on);
    if (standing.length === 0 && on >= today) {
      const beyond = on - today - known.house.policies.horizonDays;
      const planned = (beyond < 0 ? planCard : expect)(context, progress, on);
      if (planned) cards.push(roadCard(planned, on, beyond));
    }
    for (const { exercise } of itemsOn(cards, on)) progress.met.add(exercise);
  }
  return {
    person: known.person,
    upTo: known.house.upTo,
    today,
    until,
    cards,
    lifts: liftProgress(context, progress, today),
    tracks: trackProgress(progress),
    proposals: proposalsOf(context, progress, cards, issuedAhead, today),
    gaps: cards.flatMap((card) =>
      card.state === 'planned' ? card.gaps.map((says) => ({ day: card.day, exercise: null, says })) : [],
    ),
    unlaid: unlaidSessions(context, today, until),
    rows: context.rows.numbers(),
    pieces: context.pieces,
  };
};

/** Discomfort counts whatever became of the session, and where it was told of no card at all. */
const takeDiscomfortWithoutResult = (
  context: PlanContext,
  progress: Progress,
  records: readonly CardRecord[],
  on: Day,
): void => {
  const { known } = context;
  const take = (hurts: readonly Fact<'hurt'>[], card: IssuedCard | null): void => {
    takeDiscomfort(known, progress, hurts, card);
    takePieceDiscomfort(context, progress, hurts, card);
  };
  for (const record of records)
    if (!record.trained)
      take(
        record.hurts.filter((fact) => fact.day === on),
        record.document,
      );
  take(
    ofKind(known, 'hurt').filter((fact) => fact.card === null && fact.day === on),
    null,
  );
};

/** Loads of a session that was called off, missed or not heard of were never in use. */
const isAheadOrLived = ({ outcome }: CardRecord): boolean =>
  outcome === 'none' || outcome === 'done' || outcome === 'part done';

/** A recalled card stays in sight; a superseded one only if somebody trained from it. */
const isShownStill = (record: CardRecord): boolean =>
  record.delivery === 'recalled' || (record.delivery === 'superseded' && record.trained !== null);

/** What stands on the last card of a day, whatever became of it. */
const itemsOn = (cards: readonly RoadCard[], on: Day): readonly CardItem[] => {
  const last = cards.at(-1);
  if (last?.day !== on) return [];
  return last.state === 'issued' ? last.record.document.card.items : last.card.items;
};

const firstDay = (known: Known, records: readonly CardRecord[], today: Day): Day =>
  Math.min(known.mission?.launch ?? today, today, ...records.map((record) => record.document.card.day)) as Day;

/** `beyond`: days past the last one on which a card can be issued. */
const roadCard = ({ card, gaps }: PlannedCard, on: Day, beyond: number): RoadCard =>
  beyond < 0
    ? { state: 'planned', day: on, card, gaps }
    : { state: 'expected', day: on, card: asExpected(card, beyond), gaps };

/** Signed raises, back-offs and new loads take hold on their own day. */
const takeDecisions = (context: PlanContext, progress: Progress, on: Day): void => {
  for (const fact of context.decisions) {
    const { decision } = fact;
    if (decision.kind === 'raise' && decision.from === on) takeRaise(context, progress, fact, on);
    if (decision.kind === 'adjust' && decision.from === on && decision.change.kind === 'back off')
      takeBackOff(context, progress, fact, on);
  }
};

/** A signed raise takes hold only while what earned it still stands: corrected, failed or painful sessions since undo it. */
const takeRaise = (context: PlanContext, progress: Progress, fact: Fact<'decided'>, on: Day): void => {
  if (fact.decision.kind !== 'raise') return;
  const earned = fact.decision.raises.filter((raise) => isStillEarned(context, progress, raise));
  for (const raise of earned) {
    const harness = harnessOf(context, raise);
    if (harness) {
      takeHarnessRaise(context, progress, harness, { raise, on, sequence: fact.sequence });
      continue;
    }
    const lift = liftState(progress, raise.exercise);
    if (fact.sequence < lift.painIn) continue;
    if (raise.effortStep !== null && raise.shareStep !== null && fact.sequence >= lift.stepsSignedAfter) {
      if (raise.effortStep > lift.effortStep || raise.shareStep > lift.shareStep)
        stepTo(lift, raise.effortStep, raise.shareStep, on);
      continue;
    }
    for (const track of tracksOf(progress, raise.exercise).filter((each) => isRaised(context, raise, each, on))) {
      const to = raisedTo(raise, track);
      if (track.next !== null && to > track.next && fact.sequence >= track.backedOffIn) {
        const by = to - track.next;
        track.next = to;
        track.inUse = to;
        track.signed = Math.max(track.signed ?? 0, to);
        if (raise.cause === 'step rule') {
          lift.lastRaiseOn = on;
          lift.ruleEarnedBy = [];
          track.ruleTotal += by;
          setRuleTotal(
            lift,
            track.machine,
            track.side,
            Math.max(ruleTotalOf(lift, track.machine, track.side), track.ruleTotal),
          );
        }
      }
    }
  }
};

/** A raise is counted in increments of the machine that it was signed for: the one where the person trains on its day. */
const isRaised = ({ known }: PlanContext, raise: Raise, { track, machine }: TrackState, on: Day): boolean => {
  const here = machinesOn(known, on).find(({ id }) => id === machine);
  return track === raise.track && here?.unit === raise.unit && here.increment === raise.increment;
};

/** Each side goes up from its own load, by as much as the heavier one that the raise names. */
const raisedTo = ({ from, to }: Raise, { side, next }: TrackState): number =>
  side === null || from === null || next === null ? to : Math.min(to, next + to - from);

const isStillEarned = (context: PlanContext, progress: Progress, raise: Raise): boolean => {
  const harness = harnessOf(context, raise);
  if (harness) return isHarnessStepEarned(context, progress, harness);
  const lift = liftState(progress, raise.exercise);
  return raise.cause === 'ramp step'
    ? lift.earnedBy.length >= context.known.house.policies.sessionsPerStep
    : lift.ruleEarnedBy.length > 0;
};

/** A fraction off the machine load, down to the rounding step, at once. */
const takeBackOff = (context: PlanContext, progress: Progress, fact: Fact<'decided'>, on: Day): void => {
  const { decision } = fact;
  if (decision.kind !== 'adjust' || decision.change.kind !== 'back off') return;
  const { by } = decision.change;
  backOffPieces(context, progress, decision.track, decision.change, fact);
  for (const state of progress.tracks.values()) {
    const exercise = context.known.house.exercises.get(state.exercise);
    const machine = context.known.house.machines.get(state.machine);
    if (state.track !== decision.track || state.inUse === null || !machine || !exercise) continue;
    const { perStep } = machineSteps(context.known, machine, exercise, on);
    const load = stepsNotOver(state.inUse * (1 - by), perStep) * perStep;
    state.backedOff = load;
    state.backedOffIn = fact.sequence;
    state.signed = load;
    state.inUse = load;
    if (state.next !== null) state.next = Math.min(state.next, load);
    const lift = liftState(progress, state.exercise);
    lift.earnedBy = [];
    lift.ruleEarnedBy = [];
  }
};

/** Unread notes up to a day block raising the lift they were written on; a note on a whole card blocks all its lifts. */
const noteUnread = (known: Known, progress: Progress, records: readonly CardRecord[], on: Day): void => {
  const read = new Set(ofKind(known, 'read').map((fact) => fact.note));
  for (const record of records) {
    for (const { fact } of record.notes.filter((note) => note.fact.day === on)) {
      if (read.has(fact.id)) continue;
      for (const item of record.document.card.items)
        if (fact.item === null || fact.item === item.item) holdOf(progress, item).unread.push(fact.id);
    }
  }
};

const holdOf = (progress: Progress, { kind, exercise }: CardItem): { unread: FactId[] } =>
  kind === 'lift' ? liftState(progress, exercise) : pieceHold(progress, exercise);

const liftProgress = (context: PlanContext, progress: Progress, today: Day): readonly LiftProgress[] => {
  const machine = liftingMachineOn(context.known, today);
  return [...progress.lifts].map(([exercise, state]) => ({
    exercise,
    effortStep: state.effortStep,
    shareStep: state.shareStep,
    earned: state.earnedBy.length,
    lastStepOn: state.lastStepOn,
    frozen: machine ? frozenEstimate(context, exercise, machine, today) : null,
  }));
};

const frozenEstimate = (context: PlanContext, id: ExerciseId, machine: Machine, today: Day) => {
  const exercise = context.known.house.exercises.get(id);
  const frozen = exercise && frozenCapacity(context, exercise, machine, today);
  return frozen?.reading.kind === 'estimate' ? frozen.reading.estimate : null;
};

const trackProgress = (progress: Progress): readonly TrackProgress[] =>
  [...progress.tracks.values()].map(({ track, exercise, machine, last, inUse, signed }) => ({
    track,
    exercise,
    machine,
    last,
    inUse,
    signed,
  }));
