import { isOpenCount, showRepetitions } from '#domain/asked-sets.ts';
import {
  workIncrements,
  type Card,
  type CardBouts,
  type CardDrill,
  type CardItem,
  type CardLift,
} from '#domain/card.ts';
import { showPiece } from '#domain/show-piece.ts';
import { ratingOf } from '#domain/effort.ts';
import type { PieceResult } from '#domain/fact.ts';
import type { CardRecord, RoadCard } from '#domain/road.ts';
import { shownLoad } from '#interchange/plain-text/shown-load.ts';
import type { SheetCell } from '#contract/windows/sheet-window.ts';
import { differsFromPlan, showDone, workSetsWithResults, type WorkSetResult } from './item-result.ts';
import { showWorkSets } from './set-runs.ts';
import { shortPiece, shortPieceResult, shortWorkSets } from './short-cell.ts';

export const cardOf = (road: RoadCard): Card => (road.state === 'issued' ? road.record.document.card : road.card);

/** What a cell is as shorthand. */
export type CellLines = Pick<SheetCell, 'line' | 'shorthand' | 'isWritten'>;

export const NO_LINES: CellLines = { line: null, shorthand: null, isWritten: false };

/** One exercise in one session: planned over done. */
export const sheetCell = (item: CardItem, road: RoadCard, lines: CellLines = NO_LINES): SheetCell =>
  item.kind === 'lift' ? liftCell(item, road, lines) : pieceCell(item, road, lines);

const pieceCell = (item: CardBouts | CardDrill, road: RoadCard, lines: CellLines): SheetCell => {
  const record = road.state === 'issued' ? road.record : null;
  const result = record?.trained?.pieces.find((each) => each.item === item.item) ?? null;
  const of = item.kind === 'bouts' ? item.bouts.length : item.sets.length;
  return {
    item: item.item,
    track: item.track,
    kind: item.kind,
    planned: showPiece(item),
    short: { planned: shortPiece(item), done: result && shortPieceResult(result, of) },
    ...lines,
    done: result && showPieceResult(result, of),
    differs: result !== null && result.done < of,
    hurt: record && worstPain(record, item),
    note: record && noteOn(record, item),
    raise: item.raises[0] ?? null,
    limits: [],
    says: item.says,
    trueFraction: null,
    shoulderExcess: null,
    ceilingLeft: null,
    unit: item.kind === 'bouts' ? (item.harness?.unit ?? '') : '',
    increment: item.kind === 'bouts' ? (item.harness?.increment ?? '1') : '1',
    sets: [],
    piece: {
      of,
      asksWatts: asks(item, 'watts'),
      asksSpeed: asks(item, 'speed'),
      asksHarness: item.kind === 'bouts' && item.harness !== null,
    },
    hasWorking: item.row !== null || (record?.document.workings.some((each) => each.item === item.item) ?? false),
  };
};

const asks = (item: CardBouts | CardDrill, what: 'watts' | 'speed'): boolean =>
  item.kind === 'bouts' && item.bouts.some((bout) => bout[what] !== null);

/** "4 of 4 · 28 min · 196 W · 168/min · 7": what was written down, and no more. */
const showPieceResult = ({ done, minutes, watts, speed, heartRate, effort }: PieceResult, of: number): string =>
  [
    `${done} of ${of}`,
    ...(minutes === null ? [] : [`${minutes} min`]),
    ...(watts === null ? [] : [`${watts} W`]),
    ...(speed === null ? [] : [`${speed} km/h`]),
    ...(heartRate === null ? [] : [`${heartRate}/min`]),
    ...(effort === null ? [] : [`${ratingOf(effort)}`]),
  ].join(' · ');

const liftCell = (item: CardLift, road: RoadCard, lines: CellLines): SheetCell => {
  const record = road.state === 'issued' ? road.record : null;
  const sets = workSetsWithResults(item, record?.document ?? null, record?.results ?? []);
  const done = showDone(item, sets);
  return {
    item: item.item,
    track: item.track,
    kind: 'lift',
    planned: `${showWorkSets(item)}${showInTurn(item)}`,
    short: { planned: `${shortWorkSets(item)}${showInTurn(item)}`, done },
    ...lines,
    done,
    differs: differsFromPlan(item, sets),
    hurt: record && worstPain(record, item),
    note: record && noteOn(record, item),
    raise: item.raise,
    limits: item.limits,
    says: item.says,
    trueFraction: item.raise?.trueFraction?.is ?? issuedValue(record, item, 'true fraction'),
    shoulderExcess: issuedValue(record, item, 'shoulder excess'),
    ceilingLeft: ceilingLeft(item),
    unit: item.unit,
    increment: item.increment,
    sets: sets.map(setOfCell),
    piece: null,
    hasWorking: item.row !== null || (record?.document.workings.some((each) => each.item === item.item) ?? false),
  };
};

/** " · A1 with 2": what it is done in turn with. */
const showInTurn = ({ superset }: CardLift): string =>
  superset === null ? '' : ` · ${superset.letter} with ${superset.inTurnWith.join(', ')}`;

const setOfCell = ({ planned, id, result }: WorkSetResult): SheetCell['sets'][number] => ({
  id,
  load: planned.load,
  repetitions: planned.repetitions,
  asks: showRepetitions(planned),
  isOpen: isOpenCount(planned) || planned.optional === true,
  side: planned.side,
  result: result && {
    repetitions: result.repetitions,
    load: result.load.text,
    rating: result.effort && ratingOf(result.effort),
  },
});

const worstPain = (record: CardRecord, item: CardItem): SheetCell['hurt'] => {
  const [worst] = record.hurts.filter((hurt) => hurt.item === item.item).toSorted((a, b) => b.score - a.score);
  return worst ? { score: worst.score, side: worst.side, site: worst.site } : null;
};

/** A note about the whole session stands at its first exercise. */
const noteOn = (record: CardRecord, item: CardItem): SheetCell['note'] => {
  const isFirst = record.document.card.items[0]?.item === item.item;
  const notes = record.notes.filter(({ fact }) => fact.item === item.item || (isFirst && fact.item === null));
  const [shown] = notes.toSorted((a, b) => Number(a.read) - Number(b.read));
  return shown ? { fact: shown.fact.id, read: shown.read, text: shown.fact.text } : null;
};

const issuedValue = (record: CardRecord | null, item: CardLift, name: string): number | null => {
  const working = record?.document.workings.filter((each) => each.item === item.item) ?? [];
  return working.flatMap(({ cells }) => cells).find((cell) => cell.name === name)?.value ?? null;
};

const ceilingLeft = (item: CardLift): string | null => {
  const [ceiling, work] = [item.limits.find(({ kind }) => kind === 'ceiling'), workIncrements(item)];
  return ceiling && work !== null ? shownLoad(ceiling.increments - work, item.increment) : null;
};
