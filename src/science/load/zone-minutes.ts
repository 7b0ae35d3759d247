import { beats, minutes } from './inputs.ts';
import { method } from '../method.ts';
import { EDWARDS_1993 } from './sources.ts';

/** Minutes of a session in each of five heart-rate zones. */

/** Lower ends of the zones as parts of the maximal heart rate; the last is closed above. */
const LOWER_ENDS = [0.5, 0.6, 0.7, 0.8, 0.9] as const;

export type ZoneMinutes =
  | {
      readonly kind: 'estimate';
      /** Zones 1 to 5 [min]. */
      readonly zones: readonly [number, number, number, number, number];
      /** Under half of the maximal heart rate; they score nothing. */
      readonly below: number;
      readonly cautions: readonly string[];
    }
  | { readonly kind: 'none'; readonly reason: string }
  | { readonly kind: 'refused'; readonly reasons: readonly string[] };

export interface HeartRateTrace {
  /** At even steps; null where the strap told nothing. */
  readonly heartRates: readonly (number | null)[];
  /** Length of a step [min]. */
  readonly step: number;
  readonly maximal: number;
}

const stepInput = minutes('length of a step', 'Δt', [0.001, 60], [0.01, 5]);
const heartInput = beats('heart rate of each step', 'HR');
const maximalInput = beats('maximal heart rate', 'HR_max', [100, 240]);

const inside = ([low, high]: readonly [number, number], value: number): boolean => value >= low && value <= high;

const faultsOf = ({ heartRates, step, maximal }: HeartRateTrace): readonly string[] => [
  ...heartRates.flatMap((heart, place) =>
    heart === null || inside(heartInput.possible, heart)
      ? []
      : [`The heart rate of step ${place + 1} must lie in 25 to 240; it is ${heart}.`],
  ),
  ...(inside(stepInput.possible, step) ? [] : [`A step must last 0.001 to 60 min; it is ${step}.`]),
  ...(inside(maximalInput.possible, maximal)
    ? []
    : [`The maximal heart rate must lie in 100 to 240; it is ${maximal}.`]),
];

const cautionsOf = ({ heartRates, maximal }: HeartRateTrace, known: readonly number[]): readonly string[] => {
  const over = known.filter((heart) => heart > maximal).length;
  return [
    ...(known.length < heartRates.length ? [`${known.length} of ${heartRates.length} steps were recorded.`] : []),
    ...(over > 0
      ? [`${over} steps lie above the maximal heart rate, which may be too low; they count in zone 5.`]
      : []),
  ];
};

/** Minutes in five heart-rate zones. */
export const zoneMinutes = method(
  {
    id: 'load/zone-minutes',
    revision: 1,
    title: 'Minutes in five heart-rate zones',
    equations: [
      'zone n where 0.4 + 0.1 · n ≤ HR / HR_max < 0.5 + 0.1 · n; the fifth is closed above',
      't_n = Δt · number of steps in zone n',
    ],
    inputs: [heartInput, stepInput, maximalInput],
    outputs: [{ name: 'minutes in each zone, and below all of them', symbol: 't_n', unit: 'min' }],
    refuses: ['A heart rate, a step or a maximum that cannot be.', 'A trace without any heart rate.'],
    source: EDWARDS_1993,
    doesNotKnow:
      'Steps that were not recorded: they count nowhere, and how many is said. Whether the maximum was measured or guessed.',
  },
  (trace: HeartRateTrace): ZoneMinutes => {
    const reasons = faultsOf(trace);
    if (reasons.length > 0) return { kind: 'refused', reasons };
    const known = trace.heartRates.flatMap((heart) => heart ?? []);
    if (known.length === 0) return { kind: 'none', reason: `0 of ${trace.heartRates.length} steps were recorded.` };
    const counts: [number, number, number, number, number] = [0, 0, 0, 0, 0];
    let below = 0;
    for (const heart of known) {
      const zone = LOWER_ENDS.findLastIndex((end) => heart >= end * trace.maximal);
      if (zone < 0) below += trace.step;
      else counts[zone as 0 | 1 | 2 | 3 | 4] += trace.step;
    }
    return { kind: 'estimate', zones: counts, below, cautions: cautionsOf(trace, known) };
  },
);
