import { stepsNotOver } from '#units/rounding.ts';
import type { CardBouts, CardDrill } from '#domain/card.ts';
import type { Change } from '#domain/decision.ts';
import { ratingOf } from '#domain/effort.ts';
import type { Fact, PieceResult } from '#domain/fact.ts';
import type { TrackId } from '#domain/identity.ts';
import type { IssuedCard } from '#domain/issued-card.ts';
import type { Known } from '#domain/known.ts';
import { showMissionDay } from '#domain/mission-day.ts';
import type { CardRecord } from '#domain/road.ts';
import { BELT_STEP, inTenths } from './bout-speed.ts';
import { WATT_STEP } from './bout-watts.ts';
import { takeHarnessBack } from './harness-raise.ts';
import { painOf } from './pain.ts';
import { FORCE_STEP } from './plan-drill.ts';
import type { PlanContext } from './plan-context.ts';
import {
  pieceHold,
  piecesOfTrack,
  pieceState,
  SETTINGS,
  type PieceSettings,
  type PieceState,
  type Progress,
} from './progress.ts';
import { takeHarnessDiscomfort, takeHarnessResults, takeIssuedHarness } from './take-harness.ts';

type Piece = CardBouts | CardDrill;

const piecesOf = ({ card }: IssuedCard): readonly Piece[] => card.items.filter((item) => item.kind !== 'lift');
const boutsOf = (document: IssuedCard): readonly CardBouts[] =>
  piecesOf(document).filter((item): item is CardBouts => item.kind === 'bouts');

const stateOf = (progress: Progress, item: Piece): PieceState =>
  pieceState(progress, item.track, item.kind === 'bouts' ? item.machine : null);

/** The most that is set in a piece. */
export const settingsOf = (item: Piece): PieceSettings => {
  if (item.kind === 'bouts')
    return {
      watts: highest(item.bouts.map(({ watts }) => watts)),
      speed: highest(item.bouts.map(({ speed }) => speed)),
      left: null,
      right: null,
    };
  const ofSide = (wanted: 'left' | 'right'): number | null =>
    highest(item.sets.map(({ side, force }) => (side === wanted ? force : null)));
  return { watts: null, speed: null, left: ofSide('left'), right: ofSide('right') };
};

const highest = (settings: readonly (number | null)[]): number | null => {
  const set = settings.filter((each) => each !== null);
  return set.length > 0 ? Math.max(...set) : null;
};

/** Settings of an issued card, on its own day: the signature covers them. What was written for a day, or is easier, moves none. */
export const takeIssuedPieces = (progress: Progress, document: IssuedCard): void => {
  for (const item of boutsOf(document)) takeIssuedHarness(progress, item, document);
  for (const item of piecesOf(document)) {
    pieceHold(progress, item.exercise);
    if (item.asWritten !== null || document.card.deload) continue;
    const state = stateOf(progress, item);
    if (document.basis.upTo < state.backedOffIn) continue;
    const settings = settingsOf(item);
    for (const name of SETTINGS) {
      const [set, most] = [settings[name], state.backedOff?.most[name] ?? null];
      if (set !== null && most !== null && set > most) state.backedOff = null;
      const before = state.inUse[name];
      if (set !== null && before !== null && set > before) state.raisedOn = document.card.day;
      state.inUse[name] = set ?? before;
    }
    state.setOn = document.card.day;
  }
};

/** What was done of bouts and drills: the text of last time, what holds them, and what was earned. */
export const takePieces = (
  context: PlanContext,
  progress: Progress,
  record: CardRecord,
  trained: Fact<'trained'>,
): void => {
  const { known } = context;
  for (const item of piecesOf(record.document)) {
    const exercise = known.house.exercises.get(item.exercise);
    const result = trained.pieces.find((each) => each.item === item.item);
    if (!exercise) continue;
    const { band } = painOf(record.hurts, item.item, exercise, known.house.policies);
    pieceHold(progress, item.exercise).painHolds = band !== 'go on';
    if (!result || item.asWritten !== null) continue;
    const state = stateOf(progress, item);
    state.last = lastText(known, trained, result, partsOf(item));
    const isOwn = !record.document.card.deload && record.document.basis.upTo >= state.backedOffIn;
    if (isOwn && band === 'go on') takeClean(context, state, item, { trained, result });
    if (band !== 'go on') state.cleanBy = [];
  }
  takeHarnessResults(context, progress, { record, trained }, boutsOf(record.document));
};

const partsOf = (item: Piece): number => (item.kind === 'bouts' ? item.bouts.length : item.sets.length);

/** Done whole, effort recorded inside the rule's limit: it earns the way back from a back-off. */
const takeClean = (
  { known }: PlanContext,
  state: PieceState,
  item: Piece,
  { trained, result }: { readonly trained: Fact<'trained'>; readonly result: PieceResult },
): void => {
  const rating = result.effort && ratingOf(result.effort);
  const isClean = result.done >= partsOf(item) && rating !== null && rating <= known.house.policies.ruleRpeAtMost;
  if (state.backedOff !== null && isClean && !state.cleanBy.includes(trained.id)) state.cleanBy.push(trained.id);
};

/** Discomfort without a result: of a card that was called off or not heard of, or of no card at all. */
export const takePieceDiscomfort = (
  context: PlanContext,
  progress: Progress,
  hurts: readonly Fact<'hurt'>[],
  card: IssuedCard | null,
): void => {
  const newest = hurts.at(-1);
  if (!newest) return;
  for (const [id, hold] of progress.pieceHolds) {
    const exercise = context.known.house.exercises.get(id);
    const item = (card && piecesOf(card).find((each) => each.exercise === id)) ?? null;
    const pain = exercise && painOf(hurts, item?.item ?? null, exercise, context.known.house.policies);
    if (pain && pain.band !== 'go on') hold.painHolds = true;
  }
  takeHarnessDiscomfort(context, progress, hurts, card ? boutsOf(card) : [], newest);
};

/** A part off every setting in use, down to its step, and one step off the harness, at once. */
export const backOffPieces = (
  context: PlanContext,
  progress: Progress,
  track: TrackId,
  { by }: Extract<Change, { readonly kind: 'back off' }>,
  fact: Fact<'decided'>,
): void => {
  if (fact.decision.kind !== 'adjust') return;
  for (const state of piecesOfTrack(progress, track)) {
    const most: PieceSettings = { watts: null, speed: null, left: null, right: null };
    for (const name of SETTINGS) {
      const now = state.inUse[name];
      most[name] = now === null ? null : lessBy(name, now, by);
      state.inUse[name] = most[name];
    }
    state.backedOff = { by, most };
    state.backedOffIn = fact.sequence;
    state.cleanBy = [];
    const harness = state.machine === null ? undefined : progress.harnesses.get(state.machine);
    if (harness) takeHarnessBack(context, harness, fact.decision.from, fact.sequence);
  }
};

const lessBy = (name: keyof PieceSettings, now: number, by: number): number => {
  if (name === 'speed') return inTenths(stepsNotOver(now * (1 - by), BELT_STEP));
  const step = name === 'watts' ? WATT_STEP : FORCE_STEP;
  return stepsNotOver(now * (1 - by), step) * step;
};

const lastText = ({ mission }: Known, trained: Fact<'trained'>, result: PieceResult, of: number): string => {
  const day = mission ? `${showMissionDay(mission, trained.day).replace('flight ', '')}: ` : '';
  const { done, watts, speed, heartRate, effort } = result;
  return [
    `${day}${done} of ${of}`,
    ...(watts === null ? [] : [`${watts} W`]),
    ...(speed === null ? [] : [`${speed} km/h`]),
    ...(heartRate === null ? [] : [`${heartRate}/min`]),
    ...(effort === null ? [] : [`RPE ${ratingOf(effort)}`]),
  ].join(', ');
};
