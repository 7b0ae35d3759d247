import { LOOSE_KINDS, type Exercise, type LooseKind, type MachineKind } from '../catalogue.ts';
import type { ItemId, TrackId } from '../identity.ts';
import type { BoutsItem, DrillItem, LiftItem, ProgrammeItem } from '../programme.ts';

/** Where a new item comes to stand: the session knows names that are not taken, and what stands beside it. */
export interface PlaceOfItem {
  readonly newId: (exercise: Exercise) => ItemId;
  readonly trackFor: (exercise: Exercise) => TrackId;
  /** Does another item of the phase lead this lift already? */
  readonly isLed: (exercise: Exercise) => boolean;
  /** Kinds of machine that its session uses, the most usual first, then what the phase is usually done on. */
  readonly machineKinds: readonly ProgrammeItem['machineKind'][];
  readonly lowestPriority: number;
}

export type Kind = MachineKind | LooseKind;

const ENDURANCE: readonly Kind[] = ['treadmill', 'cycle', 'rower'];
const LOOSE: readonly Kind[] = LOOSE_KINDS;

export const isEndurance = (kind: Kind): boolean => ENDURANCE.includes(kind);
export const isLoose = (kind: Kind): boolean => LOOSE.includes(kind);
export const loadsLifts = (kind: Kind): boolean => !isEndurance(kind) && !isLoose(kind);

/** What an exercise can be done on; an old catalogue does not say. */
const kindsOf = ({ machineKinds }: Exercise, { machineKinds: near }: PlaceOfItem): readonly Kind[] =>
  machineKinds.length > 0 ? machineKinds : near;

/** The machine for an exercise: what its session uses already, else the first that it is made for. */
const machineFor = (exercise: Exercise, place: PlaceOfItem, suits: (kind: Kind) => boolean): Kind | null => {
  const possible = kindsOf(exercise, place).filter(suits);
  return place.machineKinds.find((kind) => possible.includes(kind)) ?? possible[0] ?? null;
};

/** Seconds of rest between the sets of a lift where none is named: common practice. */
export const USUAL_REST = 120;
const USUAL_FEEL = { lift: [6, 8], bouts: [5, 7], drill: [4, 6] } as const;

/** Of an item that stood there before, what does not hang on the exercise. */
const kept = (before: ProgrammeItem | null, exercise: Exercise, place: PlaceOfItem) => {
  const isSame = before?.exercise === exercise.id;
  return {
    id: isSame ? before.id : place.newId(exercise),
    track: isSame ? before.track : place.trackFor(exercise),
    exercise: exercise.id,
    condition: before?.condition ?? ('everyone' as const),
    priority: before?.priority ?? place.lowestPriority,
    source: isSame ? before.source : '',
  };
};

/** A lift with nothing in it yet, or null where no machine loads the exercise. */
export const newLift = (before: ProgrammeItem | null, exercise: Exercise, place: PlaceOfItem): LiftItem | null => {
  const machineKind = machineFor(exercise, place, loadsLifts);
  if (machineKind === null) return null;
  return {
    ...kept(before, exercise, place),
    kind: 'lift',
    machineKind,
    leading: !place.isLed(exercise),
    basis: { kind: 'fraction', of: 0 },
    warmUps: [],
    sets: [],
    tempo: null,
    superset: null,
    reserve: null,
    shouldFeel: USUAL_FEEL.lift,
  };
};

export const newBouts = (before: ProgrammeItem | null, exercise: Exercise, place: PlaceOfItem): BoutsItem | null => {
  const machineKind = machineFor(exercise, place, isEndurance);
  if (machineKind === null) return null;
  return {
    ...kept(before, exercise, place),
    kind: 'bouts',
    machineKind,
    warmUpSeconds: 0,
    bouts: [],
    coolDownSeconds: 0,
    shouldFeel: USUAL_FEEL.bouts,
  };
};

/** A drill needs no machine; where the exercise is done on one all the same, it stands there without its load. */
export const newDrill = (before: ProgrammeItem | null, exercise: Exercise, place: PlaceOfItem): DrillItem | null => {
  const machineKind = machineFor(exercise, place, isLoose) ?? machineFor(exercise, place, (kind) => !isEndurance(kind));
  if (machineKind === null) return null;
  return {
    ...kept(before, exercise, place),
    kind: 'drill',
    machineKind,
    sets: [],
    target: null,
    shouldFeel: USUAL_FEEL.drill,
  };
};
