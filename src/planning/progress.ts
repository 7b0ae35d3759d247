import type { Day } from '#units/day.ts';
import type { Side } from '#domain/effort.ts';
import type { Sequence } from '#domain/fact.ts';
import type { ExerciseId, FactId, MachineId, TrackId } from '#domain/identity.ts';

/** Where a lift stands as the days go by. Changed only by results, signatures and pain. */
export interface LiftState {
  effortStep: number;
  shareStep: number;
  /** Facts of the sessions that earned towards the next step. */
  earnedBy: FactId[];
  lastStepOn: Day | null;
  /** Sessions with discomfort that holds, since the last step. */
  held: number;
  /** Issued cards older than this cannot set the ramps any more: pain took a step back since. */
  stepsSignedAfter: Sequence;
  /** Last day on which the load of this lift went up. */
  lastRaiseOn: Day | null;
  /** The leading track's last session, if it earned a raise by the step rule. */
  ruleEarnedBy: FactId[];
  /** Increments that the step rule has added to the leading track so far, by machine and side; other tracks follow. */
  ruleTotals: Map<string, number>;
  /** Was there discomfort that holds, at the last session of the lift? */
  painHolds: boolean;
  /** Signatures older than the last discomfort raise nothing any more. */
  painIn: Sequence;
  /** Facts of unread notes on this lift: they block a raise. */
  unread: FactId[];
}

/** A track of the programme on one machine: increments of another mean nothing there. */
export interface TrackPlace {
  readonly track: TrackId;
  readonly exercise: ExerciseId;
  readonly machine: MachineId;
}

/** Where a track stands, for each side of a lift that has sides. Loads in whole increments of its machine. */
export interface TrackState extends TrackPlace {
  readonly side: Side | null;
  /** What counts for the next load. */
  next: number | null;
  /** The load in use: last issued or done outside a deload. */
  inUse: number | null;
  signed: number | null;
  /** How much of the lift's rule increments this track has taken. */
  ruleTotal: number;
  /** Steps of both ramps, together, under the load in use; null where it stands on no ramp. */
  rampSteps: number | null;
  /** Has a work load been completed with both ramps at their top? */
  atTop: boolean;
  /** The load that a back-off left: nothing on a ramp goes over it until a raise is signed. */
  backedOff: number | null;
  /** Cards issued before this place in the log know nothing of the back-off. */
  backedOffIn: Sequence;
  last: { day: Day; increments: number; repetitions: number[]; rating: number | null } | null;
  /** "done 280 where the rule allowed 275": a line on the Desk. */
  over: { day: Day; done: number; allowed: number; fact: FactId } | null;
}

/** What is set in a track of bouts or drills, the most of it: watts, km/h, newtons of each hand. */
export const SETTINGS = ['watts', 'speed', 'left', 'right'] as const;
export type SettingName = (typeof SETTINGS)[number];
export type PieceSettings = Record<SettingName, number | null>;

/** Where a track of bouts or drills stands on one machine: what a card last set, outside an easier week. Less done lowers nothing by itself. */
export interface PieceState {
  readonly track: TrackId;
  readonly machine: MachineId | null;
  readonly inUse: PieceSettings;
  /** Day of the card that set it, and of the last one that set more than before. */
  setOn: Day | null;
  raisedOn: Day | null;
  /** What a back-off left: nothing goes over it until a raise is signed. */
  backedOff: { readonly by: number; readonly most: PieceSettings } | null;
  /** Cards issued before this place in the log know nothing of the back-off. */
  backedOffIn: Sequence;
  /** Clean sessions since the back-off: they earn the way back. */
  cleanBy: FactId[];
  last: string | null;
}

/** What holds an exercise of bouts or drills where it is. */
export interface PieceHold {
  /** Was there discomfort that holds, at the last session? */
  painHolds: boolean;
  /** Facts of unread notes on it. */
  unread: FactId[];
}

/** What pulls a person to one treadmill; shared by all that is done on it. */
export interface HarnessState {
  /** Where its ramp stands, over body weight, as set. */
  share: number | null;
  /** The pull in use: last issued or done, in increments. */
  inUse: number | null;
  /** Tracks that were done in it. */
  readonly tracks: Set<TrackId>;
  /** Facts of the sessions that earned towards the next step. */
  earnedBy: FactId[];
  lastStepOn: Day | null;
  /** Was there discomfort that holds, at the last session? */
  painHolds: boolean;
  /** Cards and signatures older than this set the ramp no more: a step was taken back since. */
  signedAfter: Sequence;
}

export interface Progress {
  readonly lifts: Map<ExerciseId, LiftState>;
  readonly tracks: Map<string, TrackState>;
  readonly pieces: Map<string, PieceState>;
  readonly pieceHolds: Map<ExerciseId, PieceHold>;
  readonly harnesses: Map<MachineId, HarnessState>;
  /** Exercises that stood on a card so far. */
  readonly met: Set<ExerciseId>;
}

export const emptyProgress = (): Progress => ({
  lifts: new Map(),
  tracks: new Map(),
  pieces: new Map(),
  pieceHolds: new Map(),
  harnesses: new Map(),
  met: new Set(),
});

const kept = <Key, State>(states: Map<Key, State>, key: Key, fresh: () => State): State => {
  const known = states.get(key);
  if (known) return known;
  const state = fresh();
  states.set(key, state);
  return state;
};

export const pieceState = (progress: Progress, track: TrackId, machine: MachineId | null): PieceState =>
  kept(progress.pieces, `${track}|${machine ?? ''}`, () => ({
    track,
    machine,
    inUse: { watts: null, speed: null, left: null, right: null },
    setOn: null,
    raisedOn: null,
    backedOff: null,
    backedOffIn: 0 as Sequence,
    cleanBy: [],
    last: null,
  }));

export const piecesOfTrack = (progress: Progress, track: TrackId): readonly PieceState[] =>
  [...progress.pieces.values()].filter((state) => state.track === track);

export const pieceHold = (progress: Progress, exercise: ExerciseId): PieceHold =>
  kept(progress.pieceHolds, exercise, () => ({ painHolds: false, unread: [] }));

export const harnessState = (progress: Progress, machine: MachineId): HarnessState =>
  kept(progress.harnesses, machine, () => ({
    share: null,
    inUse: null,
    tracks: new Set(),
    earnedBy: [],
    lastStepOn: null,
    painHolds: false,
    signedAfter: 0 as Sequence,
  }));

export const liftState = (progress: Progress, exercise: ExerciseId): LiftState =>
  kept(progress.lifts, exercise, () => ({
    effortStep: 0,
    shareStep: 0,
    earnedBy: [],
    lastStepOn: null,
    held: 0,
    stepsSignedAfter: 0 as Sequence,
    lastRaiseOn: null,
    ruleEarnedBy: [],
    ruleTotals: new Map(),
    painHolds: false,
    painIn: 0 as Sequence,
    unread: [],
  }));

const sideOfMachine = (machine: MachineId, side: Side | null): string => `${machine}|${side ?? ''}`;

export const ruleTotalOf = (lift: LiftState, machine: MachineId, side: Side | null): number =>
  lift.ruleTotals.get(sideOfMachine(machine, side)) ?? 0;

export const setRuleTotal = (lift: LiftState, machine: MachineId, side: Side | null, total: number): void => {
  lift.ruleTotals.set(sideOfMachine(machine, side), total);
};

export const trackState = (progress: Progress, place: TrackPlace, side: Side | null): TrackState => {
  const { track, exercise, machine } = place;
  // Another exercise on the same track, in another version of a programme, begins with loads of its own.
  const key = `${track}|${exercise}|${sideOfMachine(machine, side)}`;
  return kept(progress.tracks, key, () => ({
    track,
    exercise,
    machine,
    side,
    next: null,
    inUse: null,
    signed: null,
    ruleTotal: ruleTotalOf(liftState(progress, exercise), machine, side),
    rampSteps: null,
    atTop: false,
    backedOff: null,
    backedOffIn: 0 as Sequence,
    last: null,
    over: null,
  }));
};

export const tracksOf = (progress: Progress, exercise: ExerciseId): readonly TrackState[] =>
  [...progress.tracks.values()].filter((state) => state.exercise === exercise);
