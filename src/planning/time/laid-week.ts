import { addDays, type Day } from '#units/day.ts';
import type { Card } from '#domain/card.ts';
import type { ProgrammeSession } from '#domain/programme.ts';
import type { PlanContext } from '../plan-context.ts';
import { isMeantToPass, roomOn, type DayRoom } from './day-room.ts';
import { laySessions, type WeekRoom } from './lay-sessions.ts';
import { placeOnRoad, type PlaceOnRoad } from './place-on-road.ts';

/** The days of one week of one phase, each with what is laid on it: none, one, or two together. */
export interface LaidWeek {
  readonly days: ReadonlyMap<Day, LaidDay>;
  /** First day of the week, whether the phase holds it or not. */
  readonly first: Day;
  /** What the week has no time for. */
  readonly unlaid: readonly SessionOfWeek[];
}

export interface LaidDay {
  readonly place: PlaceOnRoad;
  readonly sessions: readonly ProgrammeSession[];
}

/** A session with the day that the programme means. */
export interface SessionOfWeek {
  readonly session: ProgrammeSession;
  readonly day: Day;
}

const WEEK = 7;

/** The week that holds a day, laid out once for all its days; null where no phase holds the day. */
export const laidWeekOf = (context: PlanContext, on: Day): LaidWeek | null => {
  const known = context.weeks.get(on);
  if (known) return known;
  const place = placeOnRoad(context, on);
  if (!place) return null;
  const laid = layWeek(context, addDays(on, 1 - place.weekday), place);
  for (const day of laid.days.keys()) context.weeks.set(day, laid);
  return laid;
};

interface WeekDay {
  readonly day: Day;
  readonly place: PlaceOnRoad;
  readonly room: DayRoom;
}

const layWeek = (context: PlanContext, first: Day, of: PlaceOnRoad): LaidWeek => {
  const days = Array.from({ length: WEEK }, (_, place) => addDays(first, place)).flatMap((day): readonly WeekDay[] => {
    const place = placeOnRoad(context, day);
    return place?.phase === of.phase && place.programme === of.programme
      ? [{ day, place, room: roomOn(context, day) }]
      : [];
  });
  const pinned = pinnedSessions(context, days, of);
  const asked = askedOf(days, of).filter(({ session }) => ![...pinned.values()].flat().includes(session));
  const laidOn = layOn(asked, days, pinned);
  return {
    first,
    days: new Map(
      days.map(({ day, place }) => [
        day,
        { place, sessions: pinned.get(day) ?? asked.filter((_, at) => laidOn[at] === day).map((each) => each.session) },
      ]),
    ),
    unlaid: asked.filter((_, at) => laidOn[at] === null),
  };
};

/** Sessions whose day is not meant to pass without them, in the order of the programme. */
const askedOf = (days: readonly WeekDay[], { phase }: PlaceOnRoad): readonly SessionOfWeek[] =>
  days.flatMap(({ day, place, room }) => {
    const session = phase.sessions.find(({ weekday }) => weekday === place.weekday);
    return session && !isMeantToPass(room) ? [{ session, day }] : [];
  });

/** What was issued stays on its day: its card is known by its items. */
const pinnedSessions = (
  { calendar }: PlanContext,
  days: readonly WeekDay[],
  { phase }: PlaceOnRoad,
): ReadonlyMap<Day, readonly ProgrammeSession[]> => {
  const pinned = new Map<Day, readonly ProgrammeSession[]>();
  for (const { day } of days) {
    const issued = calendar.issued.get(day);
    const sessions = issued ? phase.sessions.filter((session) => isOnCard(session, issued.card)) : [];
    if (sessions.length > 0) pinned.set(day, sessions);
  }
  return pinned;
};

const isOnCard = ({ items }: ProgrammeSession, card: Card): boolean => {
  const ids = new Set([...card.items, ...card.leftOut].map(({ item }) => item));
  return items.some(({ id }) => ids.has(id));
};

const layOn = (
  asked: readonly SessionOfWeek[],
  days: readonly WeekDay[],
  pinned: ReadonlyMap<Day, readonly ProgrammeSession[]>,
): readonly (Day | null)[] => {
  const room: WeekRoom = days.map((each) => (pinned.has(each.day) ? 0 : each.room.minutes));
  const isAsMeant = asked.every(({ day }) => room[days.findIndex((each) => each.day === day)] !== 0);
  if (isAsMeant) return asked.map(({ day }) => day);
  const wanted = asked.map(({ session, day }) => ({
    day: days.findIndex((each) => each.day === day),
    minutes: session.blockMinutes,
  }));
  return laySessions(wanted, room).map((at) => (at === null ? null : (days[at]?.day ?? null)));
};
