import { method } from '../method.ts';
import { MOORE_2015, OUR_OWN_DESIGN } from '../sources.ts';
import { cautionIf, refusalOf, refused, type Estimate, type Estimated, type Refused } from './estimate.ts';
import { heartRateInput, maximalRate, uptake } from './inputs.ts';
import { STAGED_CYCLE_PROTOCOL } from './sources.ts';
import { lineOfLeastSquares, lineSd, onLine, type Line } from './line-through-stages.ts';

/** The maximal uptake where a line through stages of a test reaches the maximal heart rate. */

export interface Stage {
  /** Gross, measured or by an equation [mL/(kg min)]. */
  readonly uptake: number;
  /** [1/min] */
  readonly heartRate: number;
}

/** What is known of the maximal heart rate: its value and standard deviation [1/min]. */
export type MaximalRate = Pick<Estimate, 'value' | 'sd'>;

/** Where the heart answers to work in a straight line: from 110 beats to 85 % of the maximum. */
const LEAST_RATE = 110;
const HIGHEST_FRACTION = 0.85;
const LEAST_RANGE = 30;
const LEAST_TOP_RESERVE = 0.65;

const inputs = [
  uptake('oxygen uptake of a stage', 'VO2_i', [3.5, 90]),
  heartRateInput('heart rate of a stage', 'HR_i', [60, 210]),
  maximalRate,
  { name: 'its standard deviation', symbol: 'SD_HR', unit: '1/min', possible: [0, 30], valid: [0, 15] },
] as const;
const outputs = [
  { name: 'maximal oxygen uptake', symbol: 'VO2_max', unit: 'mL/(kg min)' },
  { name: 'its standard deviation', symbol: 'SD', unit: 'mL/(kg min)' },
] as const;

const impossible = (stages: readonly Stage[], maximum: MaximalRate): Refused | undefined => {
  const [used, rate, most, sd] = inputs;
  const reasons = [
    ...stages.flatMap(({ uptake: each, heartRate }, place) => {
      const reason = refusalOf({ inputs: [used, rate] }, [each, heartRate])?.reason;
      return reason ? [`Stage ${place + 1}: ${reason}`] : [];
    }),
    ...[refusalOf({ inputs: [most, sd] }, [maximum.value, maximum.sd])?.reason ?? []].flat(),
  ];
  return reasons.length > 0 ? refused(reasons.join(' ')) : undefined;
};

const FALLING = 'The heart rate does not rise with the uptake over these stages: no line can be drawn to its maximum.';

const aboveEveryStage = (stages: readonly Stage[], { value }: MaximalRate): Refused | undefined =>
  stages.every(({ heartRate }) => heartRate < value)
    ? undefined
    : refused('A stage has a heart rate at or above the maximal one: the maximum is higher than was given.');

/** The maximal uptake from two stages of a cycle test [mL/(kg min)]. */
export const twoPointEstimate = method(
  {
    id: 'submaximal/two-point-line',
    revision: 1,
    title: 'Maximal oxygen uptake from a cycle test in stages, two-point line',
    equations: ['b = (VO2_2 − VO2_1) / (HR_2 − HR_1)', 'VO2_max = VO2_2 + b · (HR_max − HR_2)', 'SD = b · SD_HR'],
    inputs,
    outputs,
    refuses: [FALLING, 'A stage at or above the maximal heart rate.', 'A number that is not possible.'],
    source: STAGED_CYCLE_PROTOCOL,
    doesNotKnow:
      'Its own scatter: two points always lie on a line, so the standard deviation has only the maximal heart rate in it. Published spreads are 4 to 5 with a predicted maximum, 3 to 4 with a measured one (from memory).',
  },
  (first: Stage, second: Stage, maximum: MaximalRate): Estimated => {
    const refusal = impossible([first, second], maximum) ?? aboveEveryStage([first, second], maximum);
    if (refusal) return refusal;
    const slope = (second.uptake - first.uptake) / (second.heartRate - first.heartRate);
    if (!(slope > 0 && slope < 10)) return refused(FALLING);
    const highest = HIGHEST_FRACTION * maximum.value;
    const outside = [first, second].some(({ heartRate }) => heartRate < LEAST_RATE || heartRate > highest);
    return {
      kind: 'estimate',
      value: second.uptake + slope * (maximum.value - second.heartRate),
      sd: slope * maximum.sd,
      cautions: [
        'Two stages say nothing of their own scatter: the standard deviation is that of the maximal heart rate alone.',
        ...cautionIf(
          outside,
          `A heart rate lies outside ${LEAST_RATE} to ${Math.round(highest)}, 85 % of the maximum, where it rises in a straight line.`,
        ),
      ],
    };
  },
);

/** The rising line of uptake on heart rate through three or more stages that all lie below the maximal heart rate. */
export const lineOfStages = (stages: readonly Stage[], maximum: MaximalRate): Line | Refused => {
  const refusal = impossible(stages, maximum) ?? aboveEveryStage(stages, maximum);
  if (refusal) return refusal;
  const line = lineOfLeastSquares(stages.map(({ uptake: y, heartRate: x }) => ({ x, y })));
  return line.kind === 'line' && !(line.slope > 0) ? refused(FALLING) : line;
};

export const rangeCaution = ({ from, to }: Line): readonly string[] =>
  cautionIf(
    to - from < LEAST_RANGE,
    `The stages span ${Math.round(to - from)} beats; ${LEAST_RANGE} or more are needed for a line that can be trusted.`,
  );

/** The maximal uptake from three or more stages [mL/(kg min)]. */
export const stagedEstimate = method(
  {
    id: 'submaximal/stages-least-squares',
    revision: 1,
    title: 'Maximal oxygen uptake from three or more stages, least squares',
    equations: [
      'VO2 = a + b · HR by least squares, residual standard deviation s',
      'VO2_max = a + b · HR_max',
      'SD = √(s^2 · (1 / n + (HR_max − HR_mean)^2 / S_xx) + b^2 · SD_HR^2)',
    ],
    inputs,
    outputs,
    refuses: [
      'Fewer than three stages: take the two-point line.',
      FALLING,
      'A stage at or above the maximal heart rate.',
      'A number that is not possible.',
    ],
    source: OUR_OWN_DESIGN,
    restsOn: [MOORE_2015, STAGED_CYCLE_PROTOCOL],
    doesNotKnow:
      'That the uptake flattens near the maximum, and the error of an equation that stands in for a measured uptake. Least range and highest stage are our own, editable.',
  },
  (stages: readonly Stage[], maximum: MaximalRate, resting?: number): Estimated => {
    const line = lineOfStages(stages, maximum);
    if (line.kind === 'refused') return line;
    return {
      kind: 'estimate',
      value: onLine(line, maximum.value),
      sd: Math.hypot(lineSd(line, maximum.value), line.slope * maximum.sd),
      cautions: [...rangeCaution(line), ...topCaution(line.to, maximum.value, resting)],
    };
  },
);

const topCaution = (top: number, maximum: number, resting: number | undefined): readonly string[] => {
  if (resting === undefined)
    return ['Without a resting heart rate nobody knows how far the top stage is from maximal.'];
  if (!(resting > 0 && resting < maximum))
    return ['The resting heart rate does not lie below the maximal one; it was not used.'];
  const reached = (top - resting) / (maximum - resting);
  return cautionIf(
    reached < LEAST_TOP_RESERVE,
    `The top stage reaches ${Math.round(100 * reached)} % of the heart-rate reserve; 65 % or more keeps the line short.`,
  );
};
