import type { Day } from '#units/day.ts';
import type { FactId } from '#domain/identity.ts';
import type { PersonHead } from './person-head.ts';

/** In the order in which they are drawn. Planned cards that lack an entry or a signature wait. */
export const ROAD_CARD_STATES = ['issued', 'can be issued', 'waiting', 'expected'] as const;
export type RoadCardState = (typeof ROAD_CARD_STATES)[number];
export type RoadCounts = Readonly<Record<RoadCardState, number>>;

/** First and last day, both with it. */
export interface RoadSpan {
  readonly first: Day;
  readonly last: Day;
}

/** Days of one phase, or days that no programme holds (`name` is null). */
export interface RoadPhase extends RoadSpan {
  readonly name: string | null;
  readonly side: 'before launch' | 'in flight' | 'after landing';
  readonly programme: string | null;
  readonly from: string;
  readonly to: string;
  readonly source: string | null;
  readonly sessionsAWeek: number;
  /** Minutes a week: what the blocks reserve, what its cards truly take, and what practice asks of all exercise. */
  readonly reservedAWeek: number;
  readonly trueAWeek: number | null;
  readonly practiceAWeek: number | null;
  readonly cards: RoadCounts;
}

export interface RoadTest {
  readonly day: Day;
  readonly missionDay: string;
  readonly lifts: readonly string[];
}

/** A test that practice asks for: derived, never stored. */
export interface RoadAsk {
  readonly day: Day;
  readonly missionDay: string;
  readonly occasion: string;
  readonly state: 'tested' | 'part tested' | 'due' | 'not tested' | 'ahead';
  /** "3 of 4 lifts tested on L−24", "due until L−7". */
  readonly says: string;
}

/** A bar that may go on beyond what is drawn. */
export interface RoadBar extends RoadSpan {
  readonly says: string;
  readonly isOpen: boolean;
}

export interface RoadWeekLine extends RoadSpan {
  readonly cards: RoadCounts;
  readonly minutes: RoadCounts;
  readonly practice: number | null;
  /** All that lies in the week, in one sentence. */
  readonly says: string;
}

/** What the road says that needs a word, and where something can be done about it. */
export interface RoadSentence {
  readonly kind: 'dates' | 'gap' | 'test' | 'time';
  readonly says: string;
  readonly link: { readonly to: 'record' | 'programmes' | 'sheet' | 'test'; readonly says: string } | null;
}

/** A decision whose day lies elsewhere since a date moved. */
export interface RoadMoved {
  readonly fact: FactId;
  readonly day: Day;
  readonly which: string;
  readonly says: string;
  readonly was: string;
  readonly now: string;
}

export interface RoadDrawn extends RoadSpan {
  readonly launch: Day;
  readonly landing: { readonly earliest: Day; readonly latest: Day } | null;
  /** Marks of the mission's calendar: L−100, day 60, R+30. */
  readonly marks: readonly { readonly day: Day; readonly says: string }[];
  readonly phases: readonly RoadPhase[];
  readonly sites: readonly (RoadSpan & { readonly name: string; readonly isSaid: boolean })[];
  readonly tests: readonly RoadTest[];
  readonly testsBefore: number;
  readonly asks: readonly RoadAsk[];
  readonly restrictions: readonly RoadBar[];
  readonly adjustments: readonly RoadBar[];
  readonly weeks: readonly RoadWeekLine[];
  readonly sentences: readonly RoadSentence[];
  readonly moved: readonly RoadMoved[];
}

export interface RoadWindow {
  readonly person: PersonHead;
  readonly today: Day;
  readonly upTo: number;
  readonly road: RoadDrawn | null;
  /** Why there is no road. */
  readonly empty: string | null;
}
