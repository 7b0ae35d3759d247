import { impossibilities } from '../evaluate.ts';
import type { FormulaInput } from '../formula.ts';
import { method } from '../method.ts';
import { COMMON_PRACTICE } from '../sources.ts';
import { levelAfter } from './carbon-dioxide-level.ts';
import { STANDARD_3001_VOLUME_2 } from './sources.ts';

/** Carbon dioxide of a cabin along a day of sessions, alone and together. */

export interface Cabin {
  /** [m³] */
  readonly volume: number;
  /** [m³/min] */
  readonly cleanAir: number;
  /** What is there without the sessions [ppm]. */
  readonly background: number;
}

/** Somebody who gives off carbon dioxide for a while. Minutes of one running clock; flow as it fills the cabin [m³/min]. */
export interface Exerciser {
  readonly from: number;
  readonly until: number;
  readonly flow: number;
}

export interface LevelAt {
  readonly minute: number;
  /** With the background [ppm]. */
  readonly level: number;
}

export type LevelAlong =
  | {
      readonly kind: 'levels';
      /** Wherever somebody begins or ends. The level is highest at one of them. */
      readonly levels: readonly LevelAt[];
      readonly highest: LevelAt;
      /** Where the limit is exceeded at the highest level, by how much [ppm]; nothing where no limit was given. */
      readonly over: number | null;
    }
  | { readonly kind: 'refused'; readonly reason: string };

const personFlow: FormulaInput = {
  name: 'carbon dioxide of a person',
  symbol: 'G',
  unit: 'm³/min',
  possible: [0, 0.1],
  valid: [0, 0.007],
};
const cabinInputs: readonly FormulaInput[] = [
  { name: 'flow of clean air', symbol: 'Q', unit: 'm³/min', possible: [0.01, 100], valid: [0.1, 20] },
  { name: 'volume of the cabin', symbol: 'V', unit: 'm³', possible: [1, 5000], valid: [10, 1000] },
  { name: 'background', symbol: 'C_b', unit: 'ppm', possible: [0, 200_000], valid: [0, 10_000] },
];
const limitInput: FormulaInput = {
  name: 'limit of the mission',
  symbol: 'C_limit',
  unit: 'ppm',
  possible: [1, 200_000],
  valid: [500, 20_000],
};

const sessionReasons = ({ from, until, flow }: Exerciser, place: number): readonly string[] =>
  [
    ...(from < until && from > -Infinity && until < Infinity ? [] : ['it must end after it begins.']),
    ...impossibilities({ inputs: [personFlow] }, [flow]),
  ].map((reason) => `Session ${place + 1}: ${reason}`);

const refusalsOf = (
  { volume, cleanAir, background }: Cabin,
  exercisers: readonly Exerciser[],
  limit: number | null,
): readonly string[] => [
  ...impossibilities({ inputs: cabinInputs }, [cleanAir, volume, background]),
  ...(limit === null ? [] : impossibilities({ inputs: [limitInput] }, [limit])),
  ...(exercisers.length === 0 ? ['Nobody exercises.'] : exercisers.flatMap(sessionReasons)),
];

/** Level of carbon dioxide along sessions, alone and together. */
export const levelAlong = method(
  {
    id: 'cabin/level-along',
    revision: 1,
    title: 'Level of carbon dioxide [ppm] along sessions, alone and together',
    equations: [
      'between two changes: C = 10^6 · (G / Q) · (1 − exp(−Q · t / V)) + C_0 · exp(−Q · t / V)',
      'G = sum of the flows of all who exercise at that time',
      'level = background + C',
    ],
    inputs: [personFlow, ...cabinInputs, limitInput],
    outputs: [
      { name: 'level', symbol: 'C', unit: 'ppm' },
      { name: 'how far the highest lies over the limit', symbol: 'ΔC', unit: 'ppm' },
    ],
    refuses: [
      'nobody who exercises',
      'a session that ends before it begins',
      'a flow, a cabin or a limit that cannot be',
    ],
    source: COMMON_PRACTICE,
    restsOn: [STANDARD_3001_VOLUME_2],
    doesNotKnow:
      'The limit: it belongs to the mission and is typed. It does not know of pockets near a face, of scrubbers that tire, nor of what people give off at rest, which is in the background.',
  },
  (cabin: Cabin, exercisers: readonly Exerciser[], limit: number | null = null): LevelAlong => {
    const reasons = refusalsOf(cabin, exercisers, limit);
    if (reasons.length > 0) return { kind: 'refused', reason: reasons.join(' ') };
    const levels = levelsOf(cabin, exercisers);
    const highest = levels.reduce((best, each) => (each.level > best.level ? each : best));
    return { kind: 'levels', levels, highest, over: limit === null ? null : Math.max(0, highest.level - limit) };
  },
);

const levelsOf = (
  { volume, cleanAir, background }: Cabin,
  exercisers: readonly Exerciser[],
): readonly [LevelAt, ...LevelAt[]] => {
  const changes = [...new Set(exercisers.flatMap(({ from, until }) => [from, until]))].toSorted((a, b) => a - b);
  const [first = 0, ...others] = changes;
  const levels: [LevelAt, ...LevelAt[]] = [{ minute: first, level: background }];
  let [above, last] = [0, first];
  for (const minute of others) {
    const now = last;
    const source = exercisers.reduce(
      (sum, { from, until, flow }) => (from <= now && until > now ? sum + flow : sum),
      0,
    );
    above = levelAfter(source, cleanAir, volume, minute - now, above);
    levels.push({ minute, level: background + above });
    last = minute;
  }
  return levels;
};
