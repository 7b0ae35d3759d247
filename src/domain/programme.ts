import { addDays, type Day } from '#units/day.ts';
import type { MassUnit } from '#units/mass.ts';
import type { AskedSet } from './asked-sets.ts';
import type { LooseKind, MachineKind } from './catalogue.ts';
import { digestOf } from './digest.ts';
import type { ExerciseId, ItemId, ProgrammeId, ProgrammeVersionId, SessionId, TrackId } from './identity.ts';
import { dayOfAnchor, type MissionDates } from './mission-day.ts';
import type { BoutIntensity, Tempo } from './prescription.ts';

/** What a step rule adds, in each unit; brought to whole steps of the machine, at least one. */
export interface StepRule {
  readonly add: Readonly<Record<MassUnit, string>>;
}

/** Where an item's load comes from. */
export type LoadBasis =
  | { readonly kind: 'fraction'; readonly of: number }
  | { readonly kind: 'from last'; readonly start: number | 'effort'; readonly rule: StepRule }
  | { readonly kind: 'effort'; readonly rpe: readonly [number, number] }
  | { readonly kind: 'fixed'; readonly load: { readonly text: string; readonly unit: MassUnit } };

export interface ProgrammeSet extends AskedSet {
  /** Seconds of rest after the set. */
  readonly rest: number;
  /** Multiplies the load of the item, for sets after a heavier first one. */
  readonly loadBy?: number;
}

/** A warm-up set is a fraction of the work load on the machine. */
export interface WarmUpSet {
  readonly of: number;
  readonly repetitions: number;
}

/** Whom an item is for. Who walks in space is said at the assignment; the squat gates are judged. */
export const ITEM_CONDITIONS = ['everyone', 'space-walk crew', 'before the squat gates'] as const;
export type ItemCondition = (typeof ITEM_CONDITIONS)[number];

interface AnyItem {
  /** Kept from version to version. */
  readonly id: ItemId;
  readonly track: TrackId;
  readonly exercise: ExerciseId;
  readonly machineKind: MachineKind | LooseKind;
  readonly condition: ItemCondition;
  /** 1 is kept longest. */
  readonly priority: number;
  readonly shouldFeel: readonly [number, number];
  readonly source: string;
}

/** Sets under a load of a machine. */
export interface LiftItem extends AnyItem {
  readonly kind: 'lift';
  /** The track of this lift on which the rule is judged. */
  readonly leading: boolean;
  readonly basis: LoadBasis;
  readonly warmUps: readonly WarmUpSet[];
  readonly sets: readonly ProgrammeSet[];
  /** Null: as the exercise is usually done. */
  readonly tempo: Tempo | null;
  /** "A", "A1": lifts of a session with one letter are done in turn. */
  readonly superset: string | null;
  /** Repetitions in reserve that the set is meant to leave; null where an RPE band says it. */
  readonly reserve: number | null;
}

export interface ProgrammeBout {
  readonly seconds: number;
  /** Null: by feel. */
  readonly intensity: BoutIntensity | null;
  /** Seconds of easy work after it. */
  readonly easy: number;
}

/** Endurance on a treadmill, a cycle or a rower: steady, or work and easy in turn. */
export interface BoutsItem extends AnyItem {
  readonly kind: 'bouts';
  readonly warmUpSeconds: number;
  readonly bouts: readonly ProgrammeBout[];
  readonly coolDownSeconds: number;
}

/** What one set of a drill asks for, of a range the least and the most. Pulses: on and off in turn, as hands are trained. */
export type DrillWork =
  | { readonly kind: 'repetitions'; readonly count: number; readonly most?: number }
  | { readonly kind: 'hold'; readonly seconds: number; readonly most?: number }
  | { readonly kind: 'pulses'; readonly count: number; readonly on: number; readonly off: number };

export interface DrillSet {
  readonly work: DrillWork;
  /** Seconds of rest after the set. */
  readonly rest: number;
}

/** Of the person's own newest test of the hand. */
export interface HandTarget {
  readonly kind: 'of critical force' | 'of greatest grip';
  readonly of: number;
}

/** Sets that no machine loads: jumps, balance, mobility, care of the shoulders, work of the hands. */
export interface DrillItem extends AnyItem {
  readonly kind: 'drill';
  readonly sets: readonly DrillSet[];
  /** Null: by feel. */
  readonly target: HandTarget | null;
}

export type ProgrammeItem = LiftItem | BoutsItem | DrillItem;

export const isLiftItem = (item: ProgrammeItem): item is LiftItem => item.kind === 'lift';

export interface ProgrammeSession {
  readonly id: SessionId;
  readonly title: string;
  /** Day of the week, 1 to 7: from Monday before launch, from flight day 1 in flight, from landing day after it. */
  readonly weekday: number;
  /** Minutes of the block, overhead included. */
  readonly blockMinutes: number;
  readonly items: readonly ProgrammeItem[];
}

export interface Deload {
  readonly everyWeeks: number;
  readonly fewerSets: number;
  /** Multiplies the load: 0.9 is 10 % less. */
  readonly loadBy: number;
}

export const PHASE_NAMES = [
  'general preparation',
  'flight-specific preparation',
  'taper',
  'quarantine',
  'first flight weeks',
  'main flight',
  'last flight weeks',
  'first return stage',
  'second return stage',
  'third return stage',
] as const;
export type PhaseName = (typeof PHASE_NAMES)[number];

/** A day that moves with the mission: launch −180, landing 0. */
export interface RoadEdge {
  readonly from: 'launch' | 'landing';
  readonly days: number;
}

export interface ProgrammePhase {
  readonly name: PhaseName;
  /** First and last day, both with it; a last day of null: to the day before landing, or for ever after it. */
  readonly span: { readonly first: RoadEdge; readonly last: RoadEdge | null };
  readonly deload: Deload | null;
  readonly sessions: readonly ProgrammeSession[];
  readonly source: string;
}

export interface ProgrammeContent {
  readonly programme: ProgrammeId;
  readonly name: string;
  readonly number: number;
  readonly follows: ProgrammeVersionId | null;
  readonly phases: readonly ProgrammePhase[];
}

/** An immutable version: its identity is the digest of its content. */
export interface ProgrammeVersion extends ProgrammeContent {
  readonly id: ProgrammeVersionId;
}

export const takeUp = (content: ProgrammeContent): ProgrammeVersion => ({
  ...content,
  id: digestOf(content) as string as ProgrammeVersionId,
});

/** Where a day lies in a programme. */
export interface PlaceInProgramme {
  readonly phase: ProgrammePhase;
  /** Inside the phase, from 1. */
  readonly week: number;
  readonly weekday: number;
}

/** The phase that holds a day, with its week and weekday, or null where no phase does. */
export const placeInProgramme = (version: ProgrammeVersion, dates: MissionDates, on: Day): PlaceInProgramme | null => {
  for (const phase of version.phases) {
    const days = daysOfPhase(phase, dates);
    if (days && on >= days.first && (days.last === null || on <= days.last)) return placeInPhase(phase, dates, on);
  }
  return null;
};

/** Week and weekday of a day counted on in a phase, beyond its own last day too; null where the dates leave it no day. */
export const placeInPhase = (phase: ProgrammePhase, dates: MissionDates, on: Day): PlaceInProgramme | null => {
  const days = daysOfPhase(phase, dates);
  if (!days) return null;
  const start = startOfWeeks(phase, dates);
  return { phase, week: weeksBetween(start, days.first, on), weekday: weekdayFrom(start, on) };
};

/** First and last day of a phase; null where its landing is not known, or the dates leave it no day. */
export const daysOfPhase = (
  { span: { first, last } }: ProgrammePhase,
  dates: MissionDates,
): { readonly first: Day; readonly last: Day | null } | null => {
  const begins = dayOfAnchor(first, dates);
  if (begins === null) return null;
  const ends = last
    ? dayOfAnchor(last, dates)
    : isAfterLanding(first) || !dates.landing
      ? null
      : addDays(dates.landing.latest, -1);
  if (last && ends === null) return first.from === 'launch' ? { first: begins, last: null } : null;
  return ends !== null && ends < begins ? null : { first: begins, last: ends };
};

const isAfterLanding = ({ from, days }: RoadEdge): boolean => from === 'landing' && days >= 0;

/** A Monday before launch; launch day in flight; landing day after it. */
const startOfWeeks = ({ span: { first } }: ProgrammePhase, dates: MissionDates): Day => {
  if (isAfterLanding(first)) return dates.landing?.latest ?? dates.launch;
  const inFlight = first.from === 'landing' || first.days >= 0;
  return inFlight ? dates.launch : A_MONDAY;
};

const A_MONDAY = 4 as Day;
const WEEK = 7;

const weekdayFrom = (start: Day, on: Day): number => ((((on - start) % WEEK) + WEEK) % WEEK) + 1;

/** Weeks of a phase that begins inside a calendar week are counted from its first day in flight, from its first Monday's week before. */
const weeksBetween = (start: Day, first: Day, on: Day): number => {
  const begin = start === A_MONDAY ? addDays(first, 1 - weekdayFrom(start, first)) : first;
  return Math.floor((on - begin) / WEEK) + 1;
};

export const isDeloadWeek = (phase: ProgrammePhase, week: number): boolean =>
  phase.deload !== null && week % phase.deload.everyWeeks === 0;
