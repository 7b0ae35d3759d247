import type { Day } from '#units/day.ts';
import type { Endurance } from '#assessing/endurance.ts';
import type { CardItem } from '#domain/card.ts';
import { showMissionDay } from '#domain/mission-day.ts';
import { foundOn, planCard, planSession, type PlannedCard } from './plan-card.ts';
import type { PlanContext } from './plan-context.ts';
import type { Progress } from './progress.ts';
import type { FoundSession } from './session-on.ts';
import { roomOn } from './time/day-room.ts';
import { stretchesOf, type Stretches } from './time/stretches.ts';

/** Plans the card of a day, or answers null where there is none. */
export type CardPlanner = (context: PlanContext, progress: Progress, on: Day) => PlannedCard | null;

/** A card with the rows that were reckoned for it. */
interface Reckoned {
  readonly planned: PlannedCard | null;
  readonly rows: Span;
  readonly pieces: Span;
}

interface Span {
  readonly first: number;
  readonly end: number;
}

/**
 * For days that are only expected: as long as nothing begins, ends or is near, a session of the programme comes out the
 * same week after week, and is reckoned once. What can be issued is never taken from another day.
 */
export const repeatingPlanner = (): CardPlanner => {
  const kept = new Map<Endurance, Map<string, Reckoned>>();
  let stretches: Stretches | null = null;
  return (context, progress, on) => {
    stretches ??= stretchesOf(context);
    const stretch = stretches.numberOf(on);
    if (stretch === null) return planCard(context, progress, on);
    const found = foundOn(context, on);
    if (!found) return null;
    const person = context.endurance.on(on);
    const ofPerson = kept.get(person) ?? new Map<string, Reckoned>();
    kept.set(person, ofPerson);
    const name = nameOf(context, found, stretch, on);
    const before = ofPerson.get(name);
    if (before) return repeated(context, before, found, on);
    const reckoned = reckon(context, progress, found, on);
    ofPerson.set(name, reckoned);
    return reckoned.planned;
  };
};

/** Everything that a session hangs on inside a stretch, tests of endurance apart. */
const nameOf = (context: PlanContext, found: FoundSession, stretch: number, on: Day): string => {
  const { programme, phase, session, deload } = found;
  const easier = deload && `${deload.everyWeeks} ${deload.fewerSets} ${deload.loadBy}`;
  const minutes = `${session.blockMinutes} ${roomOn(context, on).minutes ?? ''}`;
  return [stretch, programme.id, phase.name, session.id, session.title, minutes, easier].join('|');
};

const reckon = (context: PlanContext, progress: Progress, found: FoundSession, on: Day): Reckoned => {
  const [row, piece] = [context.rows.count, context.pieces.length];
  const planned = planSession(context, progress, on, found);
  return {
    planned,
    rows: { first: row, end: context.rows.count },
    pieces: { first: piece, end: context.pieces.length },
  };
};

/** The same session on another day, with rows of its own. */
const repeated = (
  context: PlanContext,
  { planned, rows, pieces }: Reckoned,
  found: FoundSession,
  on: Day,
): PlannedCard | null => {
  const row = context.rows.count - rows.first;
  const piece = context.pieces.length - pieces.first;
  context.rows.repeat(rows.first, rows.end);
  context.pieces.push(...context.pieces.slice(pieces.first, pieces.end));
  if (!planned) return null;
  const { mission } = context.known;
  return {
    gaps: planned.gaps,
    card: {
      ...planned.card,
      day: on,
      missionDay: mission ? showMissionDay(mission, on) : '',
      week: found.week,
      items: planned.card.items.map((item) => moved(item, item.kind === 'lift' ? row : piece)),
    },
  };
};

const moved = (item: CardItem, by: number): CardItem => (item.row === null ? item : { ...item, row: item.row + by });
