import type { MassUnit } from '#units/mass.ts';
import { digestOf } from './digest.ts';
import type { ExerciseId, ItemId, ProgrammeId, ProgrammeVersionId, SessionId, TrackId } from './identity.ts';

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

export interface ProgrammeSet {
  readonly repetitions: number;
  /** Seconds of rest after the set. */
  readonly rest: number;
}

/** A warm-up set is a fraction of the work load on the machine. */
export interface WarmUpSet {
  readonly of: number;
  readonly repetitions: number;
}

export interface ProgrammeItem {
  /** Kept from version to version. */
  readonly id: ItemId;
  readonly track: TrackId;
  /** The track of this lift on which the rule is judged. */
  readonly leading: boolean;
  readonly exercise: ExerciseId;
  readonly machineKind: 'resistive machine' | 'free bar';
  /** 1 is kept longest. */
  readonly priority: number;
  readonly basis: LoadBasis;
  readonly warmUps: readonly WarmUpSet[];
  readonly sets: readonly ProgrammeSet[];
  /** Repetitions in reserve that the set is meant to leave; null where an RPE band says it. */
  readonly reserve: number | null;
  readonly shouldFeel: readonly [number, number];
  readonly source: string;
}

export interface ProgrammeSession {
  readonly id: SessionId;
  readonly title: string;
  /** Day of the programme week, 1 to 7; flight day 1 is the first day of its first week. */
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

export interface ProgrammePhase {
  readonly name: 'first flight weeks' | 'main flight';
  /** First and last flight day; null: to the end of the flight. */
  readonly flightDays: readonly [number, number | null];
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

/** The phase that holds a flight day, with the week inside it (from 1), or null before and between phases. */
export const phaseAt = (
  version: ProgrammeVersion,
  flightDay: number,
): { readonly phase: ProgrammePhase; readonly week: number } | null => {
  const phase = version.phases.find(
    ({ flightDays: [first, last] }) => flightDay >= first && flightDay <= (last ?? Infinity),
  );
  return phase ? { phase, week: Math.floor((flightDay - phase.flightDays[0]) / 7) + 1 } : null;
};

export const programmeWeekday = (flightDay: number): number => ((flightDay - 1) % 7) + 1;

export const isDeloadWeek = (phase: ProgrammePhase, week: number): boolean =>
  phase.deload !== null && week % phase.deload.everyWeeks === 0;
