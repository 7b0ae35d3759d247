import { workIncrements, type Card, type CardItem } from '#domain/card.ts';
import { ratingOf } from '#domain/effort.ts';
import type { CardRecord, RoadCard } from '#domain/road.ts';
import { shownLoad } from '#interchange/plain-text/shown-load.ts';
import type { SheetCell } from '#contract/windows/sheet-window.ts';
import { differsFromPlan, showDone, workSetsWithResults, type WorkSetResult } from './item-result.ts';
import { showWorkSets } from './set-runs.ts';

export const cardOf = (road: RoadCard): Card => (road.state === 'issued' ? road.record.document.card : road.card);

/** One exercise in one session: planned over done. */
export const sheetCell = (item: CardItem, road: RoadCard, line: string | null = null): SheetCell => {
  const record = road.state === 'issued' ? road.record : null;
  const sets = workSetsWithResults(item, record?.document ?? null, record?.results ?? []);
  return {
    item: item.item,
    track: item.track,
    planned: showWorkSets(item),
    line,
    done: showDone(item, sets),
    differs: differsFromPlan(item, sets),
    hurt: record && worstPain(record, item),
    note: record && noteOn(record, item),
    raise: item.raise,
    limits: item.limits,
    says: item.says,
    trueFraction: item.raise?.trueFraction?.is ?? issuedValue(record, item, 'trueFraction'),
    shoulderExcess: issuedValue(record, item, 'shoulderExcess'),
    ceilingLeft: ceilingLeft(item),
    unit: item.unit,
    increment: item.increment,
    sets: sets.map(setOfCell),
    hasWorking: item.row !== null || (record?.document.workings.some((each) => each.item === item.item) ?? false),
  };
};

const setOfCell = ({ planned, id, result }: WorkSetResult): SheetCell['sets'][number] => ({
  id,
  load: planned.load,
  repetitions: planned.repetitions,
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

const issuedValue = (record: CardRecord | null, item: CardItem, name: string): number | null => {
  const working = record?.document.workings.filter((each) => each.item === item.item) ?? [];
  return working.flatMap(({ cells }) => cells).find((cell) => cell.name === name)?.value ?? null;
};

const ceilingLeft = (item: CardItem): string | null => {
  const [ceiling, work] = [item.limits.find(({ kind }) => kind === 'ceiling'), workIncrements(item)];
  return ceiling && work !== null ? shownLoad(ceiling.increments - work, item.increment) : null;
};
