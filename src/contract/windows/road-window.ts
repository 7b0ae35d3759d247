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
  /** Nobody planned it, and practice means it to be planned. */
  readonly isGap: boolean;
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
  readonly kind: 'dates' | 'seat' | 'hold' | 'walk' | 'gap' | 'test' | 'window' | 'time' | 'dose';
  readonly says: string;
  readonly link: { readonly to: RoadLink; readonly says: string } | null;
}

/** Where something is done: the sheet, the programmes, or a form of the record. */
export type RoadLink =
  | 'sheet'
  | 'programmes'
  | 'desk'
  | 'mission dates'
  | 'test'
  | 'weekly minutes'
  | 'days set aside'
  | 'space walk'
  | 'road hold';

export interface RoadWalk {
  readonly day: Day;
  readonly missionDay: string;
  readonly state: 'ahead' | 'to be looked at' | 'not sound' | 'sound' | 'not in flight';
  readonly says: string;
}

/** One thing that is counted week by week, in the order of the road's weeks. */
export interface RoadDoseLine {
  readonly id: string;
  readonly label: string;
  readonly unit: 'sets' | 'min' | 'steps' | 'kg';
  readonly planned: readonly number[];
  /** Weeks of which something was recorded, by their place. */
  readonly done: readonly (readonly [week: number, amount: number])[];
  /** Weeks that should hold at least so much, first and last place. */
  readonly floors: readonly (readonly [first: number, last: number, floor: number])[];
}

export interface RoadDose {
  readonly lines: readonly RoadDoseLine[];
  /** Minutes of endurance of every week: light, moderate, vigorous and harder. */
  readonly zones: readonly (readonly [light: number, moderate: number, vigorous: number])[];
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
  readonly setAside: readonly RoadBar[];
  readonly holds: readonly RoadBar[];
  readonly walks: readonly RoadWalk[];
  readonly dose: RoadDose;
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
