import type { Exercise, LooseKind, MachineKind } from '#domain/catalogue.ts';
import { idOf } from '#domain/identity.ts';
import type {
  BoutsItem,
  DrillItem,
  DrillSet,
  DrillWork,
  HandTarget,
  ItemCondition,
  ProgrammeBout,
} from '#domain/programme.ts';

interface AnyLine {
  /** Stem of the item's identity, such as "run-four-minutes". */
  readonly name: string;
  readonly track: string;
  readonly exercise: Exercise;
  readonly shouldFeel: readonly [number, number];
  readonly source: string;
}

/** One line of endurance, from which the items of all phases are written. */
export interface BoutsLine extends AnyLine {
  readonly machineKind: 'treadmill' | 'cycle' | 'rower';
  readonly warmUpSeconds: number;
  readonly bouts: readonly ProgrammeBout[];
  readonly coolDownSeconds: number;
}

/** One line of sets that no machine loads. */
export interface DrillLine extends AnyLine {
  readonly machineKind: LooseKind | Extract<MachineKind, 'dumbbells'>;
  readonly condition: ItemCondition;
  readonly sets: readonly DrillSet[];
  readonly target: HandTarget | null;
}

/** Where a line comes to stand: the phase's own word, and how long it is kept when time is short. */
export interface Placing {
  readonly phase: string;
  readonly priority: number;
}

export const boutsItem = (line: BoutsLine, { phase, priority }: Placing): BoutsItem => ({
  kind: 'bouts',
  id: idOf(`${line.name}-${phase}`),
  track: idOf<'track'>(line.track),
  exercise: line.exercise.id,
  machineKind: line.machineKind,
  condition: 'everyone',
  priority,
  shouldFeel: line.shouldFeel,
  warmUpSeconds: line.warmUpSeconds,
  bouts: line.bouts,
  coolDownSeconds: line.coolDownSeconds,
  source: line.source,
});

export const drillItem = (line: DrillLine, { phase, priority }: Placing): DrillItem => ({
  kind: 'drill',
  id: idOf(`${line.name}-${phase}`),
  track: idOf<'track'>(line.track),
  exercise: line.exercise.id,
  machineKind: line.machineKind,
  condition: line.condition,
  priority,
  shouldFeel: line.shouldFeel,
  sets: line.sets,
  target: line.target,
  source: line.source,
});

/** So many sets of the same work, with seconds of rest after each. */
export const drillSets = (count: number, work: DrillWork, rest: number): readonly DrillSet[] =>
  Array.from({ length: count }, () => ({ work, rest }));

export const repeated = (count: number): DrillWork => ({ kind: 'repetitions', count });
export const held = (seconds: number): DrillWork => ({ kind: 'hold', seconds });
export const pulses = (count: number, on: number, off: number): DrillWork => ({ kind: 'pulses', count, on, off });
