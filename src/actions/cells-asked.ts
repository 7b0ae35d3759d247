import type { Day } from '#units/day.ts';
import type { Card } from '#domain/card.ts';
import type { Decision } from '#domain/decision.ts';
import type { TrackId } from '#domain/identity.ts';
import type { Known } from '#domain/known.ts';
import { showMissionDay } from '#domain/mission-day.ts';
import type { Road, RoadCard } from '#domain/road.ts';
import { problemsOfLine } from '#domain/programme-line/written-line.ts';
import { asIfDecided } from '#planning/as-if.ts';
import { derive } from '#planning/derive.ts';
import type { Problem } from '#contract/problem.ts';
import { cellBefore, leftOutOver, writtenOn, type CellChange } from './cell-change.ts';

/** Cells as they would be written together: what would be decided, what the days would be, and everything against it. */
export interface CellsAsked {
  readonly decisions: readonly Decision[];
  /** What stood there before, for taking it back. */
  readonly before: readonly CellChange[];
  /** Cells that say already what is asked: nothing is written for them. */
  readonly unchanged: ReadonlySet<CellChange>;
  /** The session of a day as it would be; null where none is planned. */
  readonly after: (day: Day) => Looked | null;
  /** `field` names the cell by its place in what was asked: "cells.3". */
  readonly problems: readonly Problem[];
}

/** One session of a road that was derived up to its day. */
export interface Looked {
  readonly road: Road;
  readonly planned: Exclude<RoadCard, { readonly state: 'issued' }>;
}

export const cellsAsked = (known: Known, road: Road, cells: readonly CellChange[], reason: string): CellsAsked => {
  const first = cells.map((cell, place) => ({ cell, place, problem: problemOf(known, road, cells, cell, place) }));
  const sound = first.flatMap(({ cell, place, problem }) => (problem ? [] : [{ cell, place }]));
  const unchanged = new Set(sound.flatMap(({ cell }) => (saysSoAlready(known, cell) ? [cell] : [])));
  const decisions = sound.flatMap(({ cell }) => (unchanged.has(cell) ? [] : decisionsOf(known, cell, reason)));
  const after = lookingAhead(asIfDecided(known, ...decisions), road);
  const later = sound.flatMap(({ cell, place }) => refusalOf(known, after, cell, place) ?? []);
  const problems = [...first.flatMap(({ problem }) => problem ?? []), ...later];
  return {
    decisions,
    before: sound.flatMap(({ cell }) => (unchanged.has(cell) ? [] : [cellBefore(known, cell)])),
    unchanged,
    after,
    problems: problems.length === 0 && decisions.length === 0 ? [nothingChanges()] : problems,
  };
};

/**
 * Each day is derived once, as far as itself: what later days bring does not count yet. A day on which nothing is planned is
 * not looked at: it may lie a thousand years ahead.
 */
const lookingAhead = (known: Known, before: Road): CellsAsked['after'] => {
  const kept = new Map<Day, Looked | null>();
  return (day) => {
    const found = kept.get(day);
    if (found !== undefined) return found;
    if (!plannedOn(before, day)) return null;
    const road = derive(known, before.today, day);
    const planned = plannedOn(road, day);
    const looked = planned && { road, planned };
    kept.set(day, looked);
    return looked;
  };
};

export const plannedOn = (road: Road, day: Day): Looked['planned'] | null =>
  road.cards.find((card): card is Looked['planned'] => card.day === day && card.state !== 'issued') ?? null;

const decisionsOf = (known: Known, { track, day, change }: CellChange, reason: string): readonly Decision[] => {
  const { person } = known;
  const ends = writtenOn(known, track, day).map(({ id }): Decision => ({
    kind: 'end adjustment',
    person,
    adjustment: id,
  }));
  return change.kind === 'as programmed'
    ? ends
    : [...ends, { kind: 'adjust', person, track, change, from: day, until: day, reason }];
};

const saysSoAlready = (known: Known, cell: CellChange): boolean => {
  const { change } = cellBefore(known, cell);
  if (change.kind === 'as written' && cell.change.kind === 'as written') return change.line === cell.change.line;
  return change.kind === cell.change.kind;
};

/** Longer than any session that fits a cell. */
const LONGEST_LINE = 200;

/** What can be said of one cell before anything is planned. */
const problemOf = (
  known: Known,
  road: Road,
  cells: readonly CellChange[],
  cell: CellChange,
  place: number,
): Problem | null => {
  const { track, day, change } = cell;
  const at = atCell(known, road, cell, place);
  if (cells.findIndex((each) => each.track === track && each.day === day) < place)
    return at('is given twice.', 'One cell can be written one way.', 'Leave one of the two out.');
  if (day < road.today) return at('is past.', 'It stands as it was issued and done.', 'Write sessions from today on.');
  const planned = plannedOn(road, day);
  if (!planned) return at(...withoutSession(road, day));
  if (!isInSession(known, planned.card, track))
    return at('is not in this session.', 'Its programme does not hold this lift.', 'Leave this cell empty.');
  if (change.kind !== 'as written') return null;
  if (change.line.length > LONGEST_LINE)
    return at('is too long to be a session.', `It has ${change.line.length} signs.`, EXAMPLE);
  const unread = problemsOfLine(change.line);
  if (unread.length > 0)
    return at(`cannot be read: “${change.line}”.`, unread.map(({ says }) => says).join(' '), EXAMPLE);
  return leftOutOver(known, track, day)
    ? at(
        'is left out over several days.',
        'Somebody signed so for longer than this day.',
        'Take that back in the record first.',
      )
    : null;
};

const EXAMPLE = 'Write it as in 4 × 6 @ 80 %, rest 2:30.';

const withoutSession = (road: Road, day: Day): readonly [string, string, string] =>
  road.cards.some((card) => card.day === day)
    ? [
        'stands on an issued card.',
        'What was issued stands as it was signed.',
        'Write a session that can still be issued.',
      ]
    : ['is on a day without a session.', 'Nothing is planned there.', 'Leave this cell empty.'];

/** The item itself has to be in the session that comes of it. */
const refusalOf = (known: Known, after: CellsAsked['after'], cell: CellChange, place: number): Problem | null => {
  const looked = after(cell.day);
  if (cell.change.kind !== 'as written' || !looked) return null;
  const { card } = looked.planned;
  if (card.items.some(({ track }) => track === cell.track)) return null;
  const out = card.leftOut.find(({ item }) => trackOfItem(known, item) === cell.track);
  return atCell(
    known,
    looked.road,
    cell,
    place,
  )(
    'would be left out of its session.',
    out ? `${out.says}.`.replace(/\.\.$/, '.') : 'The session does not hold it.',
    'Write it shorter or lighter, or leave this cell as it is.',
  );
};

/** A problem at its cell, which is named as the sheet names it. */
const atCell =
  (known: Known, road: Road, { track, day }: CellChange, place: number) =>
  (what: string, why: string, whatToDo: string): Problem => ({
    what: `${liftOn(road, track)}, ${known.mission ? showMissionDay(known.mission, day) : 'no mission'}, ${what}`,
    why,
    whatToDo,
    field: `cells.${place}`,
  });

/** The name of the lift that is trained on a track. */
export const liftOn = (road: Road, wanted: TrackId): string =>
  road.cards
    .flatMap((each) => (each.state === 'issued' ? each.record.document.card : each.card).items)
    .find(({ track }) => track === wanted)?.exerciseName ?? wanted;

const isInSession = (known: Known, card: Card, track: TrackId): boolean =>
  card.items.some((item) => item.track === track) ||
  card.leftOut.some(({ item }) => trackOfItem(known, item) === track);

/** The track of an item, also where a session leaves it out. */
export const trackOfItem = ({ house }: Known, wanted: Card['items'][number]['item']): TrackId | null =>
  [...house.programmes.values()]
    .flatMap(({ phases }) => phases.flatMap(({ sessions }) => sessions.flatMap(({ items }) => items)))
    .find(({ id }) => id === wanted)?.track ?? null;

const nothingChanges = (): Problem => ({
  what: 'Nothing would change.',
  why: 'The cells say already what is asked.',
  whatToDo: 'Write something else, or leave them as they are.',
  field: null,
});
