import type { Day } from '#units/day.ts';
import { kilogramsOf, numberOf } from '#units/entered.ts';
import { kilogramsPer } from '#units/mass.ts';
import { workSetResults } from '#assessing/card-evidence.ts';
import { mostOf } from '#domain/asked-sets.ts';
import { liftsOf, type CardLift } from '#domain/card.ts';
import { ratingOf, type Side } from '#domain/effort.ts';
import type { Fact, Sequence, SetResult } from '#domain/fact.ts';
import type { ExerciseId } from '#domain/identity.ts';
import type { IssuedCard } from '#domain/issued-card.ts';
import type { Known } from '#domain/known.ts';
import type { CardRecord } from '#domain/road.ts';
import { painOf, type PainBand } from './pain.ts';
import type { PlanContext } from './plan-context.ts';
import { takeIssuedPieces, takePieces } from './take-pieces.ts';
import {
  liftState,
  ruleTotalOf,
  setRuleTotal,
  trackState,
  tracksOf,
  type LiftState,
  type Progress,
  type TrackState,
} from './progress.ts';

/** What was done of one item: the sets that count, against what was planned. */
interface ItemResult {
  readonly item: CardLift;
  readonly card: IssuedCard;
  readonly trained: Fact<'trained'>;
  readonly pain: PainBand;
  readonly sides: readonly SideResult[];
}

interface SideResult {
  readonly side: Side | null;
  readonly planned: number;
  readonly done: number;
  /** Of what must be, of a range the least. */
  readonly complete: boolean;
  /** Every set that was done reached the most of its range. */
  readonly full: boolean;
  readonly repetitions: readonly number[];
  /** Highest rating over the work sets; null where one of them has none. */
  readonly rating: number | null;
}

/** Moves progress by the results of one card, on the day they were lived. */
export const takeResult = (context: PlanContext, progress: Progress, record: CardRecord): void => {
  const { known } = context;
  const { trained, document } = record;
  if (!trained) return;
  takePieces(context, progress, record, trained);
  for (const item of liftsOf(document.card)) {
    const exercise = known.house.exercises.get(item.exercise);
    if (!exercise) continue;
    const pain = painOf(record.hurts, item.item, exercise, known.house.policies);
    const result: ItemResult = {
      item,
      card: document,
      trained,
      pain: pain.band,
      sides: sideResults(document, item, trained.sets),
    };
    takePain(known, progress, item.exercise, pain.band, trained.sequence, item);
    // What the rule allowed is what stood before this session was judged.
    const allowed = result.sides.map((side) => allowedIncrements(known, progress, result, side));
    if (item.asWritten !== null) continue;
    takeEarned(known, progress, result);
    if (!document.card.deload)
      for (const [place, side] of result.sides.entries()) takeLoad(progress, result, side, allowed[place] as number);
  }
};

const sideResults = (card: IssuedCard, item: CardLift, results: readonly SetResult[]): readonly SideResult[] => {
  const sets = workSetResults(card, item, results);
  const sides = [...new Set(item.sets.filter((set) => set.kind === 'work').map((set) => set.side))];
  return sides.flatMap((side) => {
    const done = sets.filter((set) => set.side === side);
    if (done.length === 0) return [];
    const planned = Math.max(...done.map((set) => set.increments));
    const must = item.sets.filter((set) => set.kind === 'work' && set.side === side && !set.optional).length;
    const mustDone = done.filter((set) => !set.planned.optional);
    const ratings = done.map(({ result }) => (result.effort ? ratingOf(result.effort) : null));
    return {
      side,
      planned,
      done: workedAt(
        item,
        done.map(({ result }) => incrementsOf(item, result)),
      ),
      complete: mustDone.length === must && mustDone.every((set) => set.result.repetitions >= set.planned.repetitions),
      full: done.every((set) => set.result.repetitions >= mostOf(set.planned)),
      repetitions: done.map((set) => set.result.repetitions),
      rating: ratings.some((rating) => rating === null) ? null : Math.max(...ratings.map((rating) => rating ?? 0)),
    };
  });
};

/** On effort the load settles from set to set: the last one counts. Else the lightest of the work sets. */
const workedAt = (item: CardLift, increments: readonly number[]): number =>
  item.sets.some((set) => set.load.kind === 'start at') ? (increments.at(-1) as number) : Math.min(...increments);

/** A load as typed, in whole increments of the item's machine; a load between two counts as the lower one. */
const incrementsOf = (item: CardLift, result: SetResult): number =>
  Math.floor(
    kilogramsOf(result.load) / (numberOf({ text: item.increment, unit: item.unit }) * kilogramsPer(item.unit)) + 1e-6,
  );

/** Discomfort 5 or more, or twice 3 to 4, takes both ramps one step back at once: down needs no signature. */
const takePain = (
  known: Known,
  progress: Progress,
  exercise: ExerciseId,
  pain: PainBand,
  sequence: Sequence,
  item: CardLift | null,
): void => {
  const lift = liftState(progress, exercise);
  lift.painHolds = pain !== 'go on';
  if (!lift.painHolds) return;
  for (const track of tracksOf(progress, exercise)) track.ruleTotal = ruleTotalOf(lift, track.machine, track.side);
  lift.earnedBy = [];
  lift.ruleEarnedBy = [];
  lift.painIn = sequence;
  lift.held += 1;
  const isRamping = item ? isOnTheWayUp(item) : pain !== 'hold' && isBelowTop(known, lift);
  if (!isRamping || (pain === 'hold' && lift.held < 2)) return;
  lift.effortStep = Math.max(0, lift.effortStep - 1);
  lift.shareStep = Math.max(0, lift.shareStep - 1);
  lift.held = 0;
  lift.stepsSignedAfter = sequence;
};

const isOnTheWayUp = ({ ramp }: CardLift): boolean =>
  ramp !== null && ramp.effortStep + ramp.shareStep < 2 * (ramp.steps - 1);

/** Told of no card with this lift: then its ramps say themselves where they stand. */
const isBelowTop = ({ house: { policies } }: Known, { effortStep, shareStep, lastStepOn }: LiftState): boolean =>
  lastStepOn !== null && effortStep + shareStep < policies.effortSteps.length + policies.shareSteps.length - 2;

/** Discomfort without a result: of a card that was called off or not heard of, or of no card at all. */
export const takeDiscomfort = (
  known: Known,
  progress: Progress,
  hurts: readonly Fact<'hurt'>[],
  card: IssuedCard | null,
): void => {
  const newest = hurts.at(-1);
  if (!newest) return;
  for (const exercise of progress.lifts.keys()) {
    const entry = known.house.exercises.get(exercise);
    const item = (card && liftsOf(card.card).find((each) => each.exercise === exercise)) ?? null;
    const pain = entry && painOf(hurts, item?.item ?? null, entry, known.house.policies);
    if (pain && pain.band !== 'go on') takePain(known, progress, exercise, pain.band, newest.sequence, item);
  }
};

/**
 * A step of the ramps is earned by what must be, at the load of the step: an easier session earns none. The step rule adds only where the most of every range was reached: first
 * repetitions, then load (double progression, common practice).
 */
const takeEarned = (known: Known, progress: Progress, result: ItemResult): void => {
  const { item, trained, pain, sides } = result;
  const lift = liftState(progress, item.exercise);
  const { policies } = known.house;
  const plannedSides = new Set(item.sets.filter((set) => set.kind === 'work').map((set) => set.side)).size;
  const complete = sides.length === plannedSides && sides.every((side) => side.complete && side.done >= side.planned);
  const rating = sides.some((side) => side.rating === null) ? null : Math.max(...sides.map((side) => side.rating ?? 0));
  const clean = complete && pain === 'go on' && rating !== null;
  const atThisStep =
    item.ramp !== null && item.ramp.effortStep === lift.effortStep && item.ramp.shareStep === lift.shareStep;
  const isEasier = result.card.card.deload;
  if (clean && atThisStep && !isEasier && rating <= policies.rampRpeAtMost && !lift.earnedBy.includes(trained.id))
    lift.earnedBy.push(trained.id);
  if (!clean && item.ramp !== null) lift.earnedBy = lift.earnedBy.filter((fact) => fact !== trained.id);
  if (item.leading && !isEasier)
    lift.ruleEarnedBy =
      clean && sides.every(({ full }) => full) && rating <= policies.ruleRpeAtMost ? [trained.id] : [];
};

/**
 * The load that counts next: what was completed, up to what the card or its signed rule allowed. Repetitions missed: the
 * load repeats. Less taken than planned: that load. A card from before a back-off changes no load.
 */
const takeLoad = (progress: Progress, { item, trained, card }: ItemResult, side: SideResult, most: number): void => {
  const track = trackState(progress, item, side.side);
  track.last = { day: trained.day, increments: side.done, repetitions: [...side.repetitions], rating: side.rating };
  if (side.done > most) track.over = { day: trained.day, done: side.done, allowed: most, fact: trained.id };
  if (isFromBefore(track, card)) return;
  const done = Math.min(side.done, most);
  const before = track.inUse;
  track.next = side.complete ? done : Math.min(done, side.planned);
  track.inUse = track.next;
  track.signed = Math.max(track.signed ?? 0, done);
  track.atTop ||= item.ramp === null || item.ramp.effortStep + item.ramp.shareStep >= 2 * (item.ramp.steps - 1);
  const up = before === null ? 0 : track.next - before;
  if (up > 0 && item.rule && up <= item.rule.add) markRaise(progress, item, track, up, trained.day);
};

/** Was the card issued before this track was backed off? */
const isFromBefore = (track: TrackState, card: IssuedCard): boolean =>
  track.backedOff !== null && card.basis.upTo < track.backedOffIn;

/**
 * On effort the person chooses, up to the limits. Else the card's load, and one step more where the signed rule's
 * conditions were met: the last session earned it, the week has passed, and the card was not a raise itself.
 */
const allowedIncrements = (known: Known, progress: Progress, result: ItemResult, side: SideResult): number => {
  const { item, card } = result;
  const limit = Math.min(...item.limits.map((each) => each.increments));
  if (item.sets.some((set) => set.load.kind === 'start at')) return limit;
  const lift = liftState(progress, item.exercise);
  const isWeekOver =
    lift.lastRaiseOn === null || card.card.day - lift.lastRaiseOn >= known.house.policies.daysBetweenRaises;
  const mayAdd = item.rule !== null && item.raise === null && lift.ruleEarnedBy.length > 0 && isWeekOver;
  const most = mayAdd ? Math.min(item.rule.neverOver, side.planned + item.rule.add) : side.planned;
  return Math.min(most, limit);
};

/** The step rule has taken hold on a track: on the leading one it is the lift's one increase, the others go with it. */
const markRaise = (progress: Progress, item: CardLift, track: TrackState, by: number, day: Day): void => {
  const lift = liftState(progress, item.exercise);
  if (item.leading) {
    lift.lastRaiseOn = day;
    lift.ruleEarnedBy = [];
    setRuleTotal(lift, track.machine, track.side, ruleTotalOf(lift, track.machine, track.side) + by);
  }
  track.ruleTotal = item.leading ? ruleTotalOf(lift, track.machine, track.side) : track.ruleTotal + by;
};

/** Signed loads of an issued card, on its own day: the signature covers them, and its ramps are in force. */
export const takeIssue = (progress: Progress, document: IssuedCard, inUse: boolean): void => {
  if (inUse) takeIssuedPieces(progress, document);
  for (const item of liftsOf(document.card)) {
    const lift = liftState(progress, item.exercise);
    if (item.ramp && document.basis.upTo >= lift.stepsSignedAfter) {
      const up = item.ramp.effortStep > lift.effortStep || item.ramp.shareStep > lift.shareStep;
      if (up) stepTo(lift, item.ramp.effortStep, item.ramp.shareStep, document.card.day);
      lift.lastStepOn ??= document.card.day;
    }
    if (!document.card.deload && item.asWritten === null && inUse) takeSignedLoads(progress, item, document);
  }
};

const takeSignedLoads = (progress: Progress, item: CardLift, document: IssuedCard): void => {
  for (const set of item.sets.filter((each) => each.kind === 'work' && each.load.kind === 'set')) {
    const track = trackState(progress, item, set.side);
    if (!isFromBefore(track, document)) takeSignedLoad(progress, item, track, set.load.increments, document.card.day);
  }
};

const takeSignedLoad = (progress: Progress, item: CardLift, track: TrackState, load: number, day: Day): void => {
  const up = track.inUse === null ? 0 : load - track.inUse;
  if (up > 0 && item.raise?.cause === 'step rule') markRaise(progress, item, track, up, day);
  if (track.backedOff !== null && load > track.backedOff) {
    track.backedOff = null;
    liftState(progress, item.exercise).earnedBy = [];
  }
  track.signed = Math.max(track.signed ?? 0, load);
  track.inUse = load;
  track.rampSteps = item.ramp ? item.ramp.effortStep + item.ramp.shareStep : null;
  if (track.next !== null && up > 0) track.next = load;
};

/** Both ramps stand at these steps from a day on. */
export const stepTo = (lift: LiftState, effortStep: number, shareStep: number, day: Day): void => {
  lift.effortStep = effortStep;
  lift.shareStep = shareStep;
  lift.earnedBy = [];
  lift.held = 0;
  lift.lastStepOn = day;
};
