import { decimalOf } from '#units/entered.ts';
import { mostOf } from '#domain/asked-sets.ts';
import type { CardLift, CardSet } from '#domain/card.ts';
import { ratingOf } from '#domain/effort.ts';
import type { SetResult } from '#domain/fact.ts';
import type { IssuedCard } from '#domain/issued-card.ts';
import { shownLoad } from '#interchange/plain-text/shown-load.ts';

export interface WorkSetResult {
  readonly planned: CardSet;
  readonly id: IssuedCard['sets'][number]['id'] | null;
  readonly result: SetResult | null;
}

/** Work sets of an item with what was done. A card that nobody issued has no ids and no results. */
export const workSetsWithResults = (
  item: CardLift,
  document: IssuedCard | null,
  results: readonly SetResult[],
): readonly WorkSetResult[] =>
  item.sets.flatMap((planned, place) => {
    if (planned.kind !== 'work') return [];
    const id = document?.sets.find((set) => set.item === item.item && set.place === place)?.id ?? null;
    return [{ planned, id, result: results.find((each) => each.set === id) ?? null }];
  });

/** "6 6 6 6 · 7", with the load where it is another than planned; null where nothing was recorded. */
export const showDone = (item: CardLift, sets: readonly WorkSetResult[]): string | null => {
  const done = sets.flatMap(({ result }) => (result ? [result] : []));
  if (done.length === 0) return null;
  const loads = [...new Set(done.map(({ load }) => load.text))];
  const isAsPlanned = sets.every(({ planned, result }) => !result || isPlannedLoad(item, planned, result));
  const ratings = done.flatMap(({ effort }) => (effort ? [ratingOf(effort)] : []));
  return [
    `${isAsPlanned ? '' : `${loads.join('/')} × `}${done.map(({ repetitions }) => repetitions).join(' ')}`,
    ...(ratings.length > 0 ? [`${Math.max(...ratings)}`] : []),
  ].join(' · ');
};

export const differsFromPlan = (item: CardLift, sets: readonly WorkSetResult[]): boolean =>
  sets.some(({ result }) => result !== null) &&
  sets.some(({ planned, result }) =>
    result ? !isAsAsked(planned, result) || !isPlannedLoad(item, planned, result) : !planned.optional,
  );

/** Inside a range, and on from the least where the set goes on. */
const isAsAsked = (planned: CardSet, { repetitions }: SetResult): boolean =>
  repetitions >= planned.repetitions && (planned.orMore === true || repetitions <= mostOf(planned));

/** "Start at" leaves the load to the person. */
const isPlannedLoad = (item: CardLift, { load }: CardSet, result: SetResult): boolean =>
  load.kind === 'start at' ||
  (result.load.unit === item.unit &&
    decimalOf(result.load.text) === Number(shownLoad(load.increments, item.increment)));
