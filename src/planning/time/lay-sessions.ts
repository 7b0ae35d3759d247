/** A session that a week asks for. */
export interface Asked {
  /** The day of the week that the programme means, from 0. */
  readonly day: number;
  /** Minutes of its block. */
  readonly minutes: number;
}

/** Minutes of each day of a week that can hold sessions; null where there is no limit, 0 where there is none. */
export type WeekRoom = readonly (number | null)[];

/**
 * Lays sessions on days in their order: as many as can be, then as few as can be together on one day, then as near as can
 * be to the days that the programme means, rather later than earlier. Two lie together only where the day holds both
 * blocks whole. Answers the day of each, or null for what has no place; of two that would both do, the later has none.
 */
export const laySessions = (asked: readonly Asked[], room: WeekRoom): readonly (number | null)[] =>
  new Laying(asked, room).from(0, { day: -1, held: 0, left: 0 }).days;

/** Where the last session was laid: how many lie there, and what is left of the day. */
interface Last {
  readonly day: number;
  readonly held: number;
  readonly left: number;
}

interface Way {
  readonly cost: number;
  readonly days: readonly (number | null)[];
}

/** Each outweighs all that a week can hold of the next: seven sessions, moved by six days at most. */
const COST = { ofNoPlace: 1e6, ofEarlier: 1e4, ofTogether: 1e3, ofADay: 10, ofBackwards: 1 } as const;
const TOGETHER_AT_MOST = 2;

class Laying {
  readonly #asked: readonly Asked[];
  readonly #room: WeekRoom;
  readonly #known = new Map<string, Way>();

  constructor(asked: readonly Asked[], room: WeekRoom) {
    this.#asked = asked;
    this.#room = room;
  }

  from(next: number, last: Last): Way {
    const key = `${next} ${last.day} ${last.held} ${last.left}`;
    const known = this.#known.get(key);
    if (known) return known;
    const found = this.#best(next, last);
    this.#known.set(key, found);
    return found;
  }

  #best(next: number, last: Last): Way {
    const session = this.#asked[next];
    if (!session) return { cost: 0, days: [] };
    const nowhere = this.from(next + 1, last);
    const ways = this.#room.flatMap((minutes, day) => this.#laid(session, next, day, minutes, last));
    const left = COST.ofNoPlace + COST.ofEarlier * (this.#asked.length - next);
    return ways.reduce((best, way) => (way.cost < best.cost ? way : best), {
      cost: nowhere.cost + left,
      days: [null, ...nowhere.days],
    });
  }

  #laid(session: Asked, next: number, day: number, minutes: number | null, last: Last): readonly Way[] {
    if (day < last.day || minutes === 0) return [];
    const isTogether = day === last.day;
    // Nobody said that a day without a limit has time for two.
    const left = isTogether ? last.left : (minutes ?? session.minutes);
    if (isTogether && (last.held >= TOGETHER_AT_MOST || session.minutes > left)) return [];
    const rest = this.from(next + 1, { day, held: isTogether ? last.held + 1 : 1, left: left - session.minutes });
    const moved = day - session.day;
    const own = (isTogether ? COST.ofTogether : 0) + COST.ofADay * Math.abs(moved) + (moved < 0 ? COST.ofBackwards : 0);
    return [{ cost: rest.cost + own, days: [day, ...rest.days] }];
  }
}
