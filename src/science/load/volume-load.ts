import type { FormulaInput } from '../formula.ts';
import { method } from '../method.ts';
import { COMMON_PRACTICE } from '../sources.ts';

/** Sets times repetitions times load. Loads of different machines are different things, and are never added. */

export interface LoggedSets {
  readonly machine: string;
  readonly pattern: string;
  readonly sets: number;
  readonly repetitions: number;
  /** In kilograms as this machine shows them. */
  readonly load: number;
}

export interface MachineVolume {
  readonly machine: string;
  readonly pattern: string;
  /** Kilograms times repetitions. */
  readonly volume: number;
}

export type VolumeLoad =
  | { readonly kind: 'estimate'; readonly volumes: readonly MachineVolume[] }
  | { readonly kind: 'refused'; readonly reasons: readonly string[] };

const inputs: readonly FormulaInput[] = [
  { name: 'sets', symbol: 's', unit: 'sets', possible: [0, 100], valid: [0, 20] },
  { name: 'repetitions in a set', symbol: 'r', unit: 'repetitions', possible: [0, 1000], valid: [0, 100] },
  { name: 'load', symbol: 'F', unit: 'kg', possible: [0, 1000], valid: [0, 1000] },
];

const faultsOf = ({ sets, repetitions, load }: LoggedSets, place: number): readonly string[] =>
  [sets, repetitions, load].flatMap((value, of) => {
    const { name = '', possible: [low, high] = [0, 0] } = inputs[of] ?? {};
    return value >= low && value <= high
      ? []
      : [`The ${name} of line ${place + 1} must lie in ${low} to ${high}; it is ${value}.`];
  });

/** Volume load of each machine and pattern of movement (kg). */
export const volumeLoad = method(
  {
    id: 'load/volume-load',
    revision: 1,
    title: 'Volume load of each machine and pattern of movement (kg)',
    equations: ['V = sum s · r · F, for each machine and pattern by itself'],
    inputs,
    outputs: [{ name: 'volume load', symbol: 'V', unit: 'kg' }],
    refuses: ['Sets, repetitions or loads that cannot be.'],
    source: COMMON_PRACTICE,
    doesNotKnow:
      'How hard it was: many light repetitions outweigh a heavy set. What a kilogram of another machine is worth; a load in flight carries a part of body weight that the ground did not show.',
  },
  (lines: readonly LoggedSets[]): VolumeLoad => {
    const reasons = lines.flatMap(faultsOf);
    if (reasons.length > 0) return { kind: 'refused', reasons };
    const volumes: MachineVolume[] = [];
    for (const { machine, pattern, sets, repetitions, load } of lines) {
      const place = volumes.findIndex((each) => each.machine === machine && each.pattern === pattern);
      const volume = sets * repetitions * load + (volumes[place]?.volume ?? 0);
      volumes.splice(place < 0 ? volumes.length : place, 1, { machine, pattern, volume });
    }
    return { kind: 'estimate', volumes };
  },
);
