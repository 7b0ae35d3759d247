import type { CardBouts, CardDrill } from '#domain/card.ts';
import { ratingOf } from '#domain/effort.ts';
import type { Fact, PieceResult } from '#domain/fact.ts';
import type { IssuedCard } from '#domain/issued-card.ts';
import type { Known } from '#domain/known.ts';
import { showMissionDay } from '#domain/mission-day.ts';
import type { CardRecord } from '#domain/road.ts';
import { painOf } from './pain.ts';
import { harnessState, pieceState, type Progress } from './progress.ts';

type Piece = CardBouts | CardDrill;

const piecesOf = ({ card }: IssuedCard): readonly Piece[] => card.items.filter((item) => item.kind !== 'lift');

const machineOf = (item: Piece) => (item.kind === 'bouts' ? item.machine : null);

/** Settings of an issued card, on its own day: the signature covers them. */
export const takeIssuedPieces = (progress: Progress, document: IssuedCard): void => {
  for (const item of piecesOf(document)) {
    const state = pieceState(progress, item.track, machineOf(item));
    if (item.kind === 'drill') {
      state.force = highest(item.sets.map(({ force }) => force)) ?? state.force;
      continue;
    }
    state.watts = highest(item.bouts.map(({ watts }) => watts)) ?? state.watts;
    state.speed = highest(item.bouts.map(({ speed }) => speed)) ?? state.speed;
    if (item.harness) takeHarness(progress, item, document);
  }
};

const highest = (settings: readonly (number | null)[]): number | null => {
  const set = settings.filter((each) => each !== null);
  return set.length > 0 ? Math.max(...set) : null;
};

const takeHarness = (progress: Progress, { machine, harness, asWritten }: CardBouts, { card }: IssuedCard): void => {
  if (!harness || asWritten !== null) return;
  const state = harnessState(progress, machine);
  if (state.ofBodyWeight === null || harness.ofBodyWeight > state.ofBodyWeight + SAME) {
    state.lastStepOn = card.day;
    state.earnedBy = [];
  }
  state.ofBodyWeight = harness.ofBodyWeight;
};

/** Loads are whole increments: the same load is not always the same fraction to the last digit. */
const SAME = 1e-6;

/** What was done of bouts and drills: the text of last time, and what the harness has earned. */
export const takePieces = (known: Known, progress: Progress, record: CardRecord, trained: Fact<'trained'>): void => {
  for (const item of piecesOf(record.document)) {
    const result = trained.pieces.find((each) => each.item === item.item);
    const of = item.kind === 'bouts' ? item.bouts.length : item.sets.length;
    if (!result) continue;
    pieceState(progress, item.track, machineOf(item)).last = lastText(known, trained, result, of);
    if (item.kind === 'bouts' && item.harness) takeHarnessResult(known, progress, { record, trained, item, result });
  }
};

interface HarnessResult {
  readonly record: CardRecord;
  readonly trained: Fact<'trained'>;
  readonly item: CardBouts;
  readonly result: PieceResult;
}

/** A step is earned by sessions done whole, effort recorded inside the ramp's limit, discomfort under what holds. */
const takeHarnessResult = (
  known: Known,
  progress: Progress,
  { record, trained, item, result }: HarnessResult,
): void => {
  const exercise = known.house.exercises.get(item.exercise);
  if (!exercise) return;
  const state = harnessState(progress, item.machine);
  const { band } = painOf(record.hurts, item.item, exercise, known.house.policies);
  state.painHolds = band !== 'go on';
  if (state.painHolds) {
    state.earnedBy = [];
    return;
  }
  const rating = result.effort && ratingOf(result.effort);
  const isWhole = result.done >= item.bouts.length && rating !== null && rating <= known.house.policies.ruleRpeAtMost;
  if (isWhole && !state.earnedBy.includes(trained.id)) state.earnedBy.push(trained.id);
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
