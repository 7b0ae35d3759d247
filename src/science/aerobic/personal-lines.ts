import { method } from '../method.ts';
import { MOORE_2014, OUR_OWN_DESIGN } from '../sources.ts';
import { cautionIf, refusalOf, refused, type Estimated, type Refused } from './estimate.ts';
import { heartRateInput, maximalUptake, power, share, uptake } from './inputs.ts';
import { lineOfLeastSquares, onLine, readingSd, whereOnLine, type Line } from './line-through-stages.ts';

/** The person's own lines from their own stages: oxygen against watts, and heart rate against watts. */

export interface UptakeStage {
  /** [W] */
  readonly power: number;
  /** Measured, gross [mL/(kg min)]. */
  readonly uptake: number;
}

export interface RateStage {
  /** [W] */
  readonly power: number;
  /** [1/min] */
  readonly heartRate: number;
}

const FEW = 5;
const LEAST_SLOPE = 1e-4;

const usual = (line: Line, at: number): readonly string[] => [
  ...cautionIf(
    at < line.from || at > line.to,
    `${Math.round(at)} W lies outside the ${line.from} to ${line.to} W that were tested.`,
  ),
  ...cautionIf(line.count < FEW, `The line rests on ${line.count} stages: its own standard error is a guess.`),
];

const stagesRefused = (
  record: Parameters<typeof refusalOf>[0],
  stages: readonly (readonly [number, number])[],
): Refused | undefined => {
  const reasons = stages.flatMap((stage, place) => {
    const reason = refusalOf({ inputs: record.inputs.slice(0, 2) }, stage)?.reason;
    return reason ? [`Stage ${place + 1}: ${reason}`] : [];
  });
  return reasons.length > 0 ? refused(reasons.join(' ')) : undefined;
};

const rising = (pairs: readonly (readonly [number, number])[], what: string): Line | Refused => {
  const line = lineOfLeastSquares(pairs.map(([x, y]) => ({ x, y })));
  if (line.kind === 'refused' || line.slope > LEAST_SLOPE) return line;
  return refused(`The ${what} does not rise with power over these stages: look for a stage typed wrongly.`);
};

const refuses = [
  'Fewer than three stages, or stages of one power.',
  'A line that does not rise.',
  'A number that is not possible.',
] as const;

/** The watts at which a person takes up a fraction of their maximum. */
export const ownPowerForFraction = method(
  {
    id: 'personal-line/power-for-fraction',
    revision: 1,
    title: 'Watts for a fraction of the maximal uptake, from the person’s own stages',
    equations: [
      'VO2 = a + b · P by least squares, residual standard deviation s',
      'P = (p · VO2_max − a) / b',
      'SD = s / b · √(1 + 1 / n + (P − P_mean)^2 / S_xx)',
    ],
    inputs: [
      power('power of a stage', 'P_i', [20, 400]),
      uptake('measured oxygen uptake of a stage', 'VO2_i', [5, 80]),
      share('fraction of the maximal uptake', 'p', [0.3, 1]),
      maximalUptake(),
    ],
    outputs: [
      { name: 'power', symbol: 'P', unit: 'W' },
      { name: 'standard error on one occasion', symbol: 'SD', unit: 'W' },
    ],
    refuses,
    source: OUR_OWN_DESIGN,
    restsOn: [MOORE_2014],
    doesNotKnow: 'That the line bends near the maximum and shifts with another cycle; the error of the maximum itself.',
  },
  (stages: readonly UptakeStage[], part: number, maximum: number): Estimated => {
    const { record } = ownPowerForFraction;
    const pairs = stages.map(({ power: x, uptake: y }) => [x, y] as const);
    const refusal = stagesRefused(record, pairs) ?? refusalOf({ inputs: record.inputs.slice(2) }, [part, maximum]);
    if (refusal) return refusal;
    const line = rising(pairs, 'oxygen uptake');
    if (line.kind === 'refused') return line;
    const { x, sd } = whereOnLine(line, part * maximum);
    if (x < 0) return refused('That uptake lies below this person’s unloaded pedalling: no power is low enough.');
    return { kind: 'estimate', value: x, sd, cautions: usual(line, x) };
  },
);

/** The heart rate that a person has at a power. */
export const ownHeartRateAtPower = method(
  {
    id: 'personal-line/heart-rate-at-power',
    revision: 1,
    title: 'Heart rate expected at a power, from the person’s own stages',
    equations: [
      'HR = a + b · P by least squares, residual standard deviation s',
      'SD = s · √(1 + 1 / n + (P − P_mean)^2 / S_xx)',
    ],
    inputs: [
      power('power of a stage', 'P_i', [20, 400]),
      heartRateInput('heart rate of a stage', 'HR_i', [60, 200]),
      power('power asked for', 'P', [20, 400]),
    ],
    outputs: [
      { name: 'heart rate', symbol: 'HR', unit: '1/min' },
      { name: 'standard error of one reading', symbol: 'SD', unit: '1/min' },
    ],
    refuses,
    source: OUR_OWN_DESIGN,
    restsOn: [MOORE_2014],
    doesNotKnow:
      'Heat, sleep, caffeine, drift over a long bout; and the first weeks of flight and of return, when the heart beats faster at every power.',
  },
  (stages: readonly RateStage[], at: number): Estimated => {
    const { record } = ownHeartRateAtPower;
    const pairs = stages.map(({ power: x, heartRate: y }) => [x, y] as const);
    const refusal = stagesRefused(record, pairs) ?? refusalOf({ inputs: record.inputs.slice(2) }, [at]);
    if (refusal) return refusal;
    const line = rising(pairs, 'heart rate');
    if (line.kind === 'refused') return line;
    return { kind: 'estimate', value: onLine(line, at), sd: readingSd(line, at), cautions: usual(line, at) };
  },
);
