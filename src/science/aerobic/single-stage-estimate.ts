import { method } from '../method.ts';
import type { Sex } from '../body/segments.ts';
import { bodyMass } from '../inputs.ts';
import { heartRate, kilograms, oxygenFlow } from '#units/quantity.ts';
import {
  cautionIf,
  cautionsOf,
  refusalOf,
  refused,
  refusedTogether,
  type Estimated,
  type Refused,
} from './estimate.ts';
import { heartRateInput, workRate } from './inputs.ts';
import { AGE_FACTORS, MAXIMAL_RATE_FACTORS, type FactorRow } from './single-stage-factors.table.ts';
import { chartUptake, singleStageMan, singleStageWoman } from './single-stage.ts';
import { ASTRAND_1960, ASTRAND_RYHMING_1954, BJORKMAN_2016, CINK_THOMAS_1981 } from './sources.ts';
import { uptakeOfFlow } from './uptake-units.ts';

/** The maximal uptake from one stage of six minutes on a cycle, with one factor: for the age, or for a known maximum. */

/** Standard deviation about measured maxima [mL/(kg min)], 40 men, with the factor for the age; in a mixed group 0.48 L/min. */
export const SINGLE_STAGE_SD = 5.7;
const SPREAD_WITH_THE_AGE = `The standard deviation of ${SINGLE_STAGE_SD} was found with the factor for the age; with a known maximal heart rate nobody we know of printed one.`;
/** The last two minutes of a steady stage differ by no more [1/min]. */
export const STEADY_WITHIN = 5;

export type StageFactor =
  { readonly by: 'age'; readonly years: number } | { readonly by: 'maximal heart rate'; readonly rate: number };

export interface SingleStage {
  readonly sex: Sex;
  /** [kg m/min] */
  readonly workRate: number;
  /** Heart rates of the fifth and the sixth minute [1/min]. */
  readonly heartRates: readonly [fifth: number, sixth: number];
  /** [kg] */
  readonly bodyMass: number;
  /** One of the two, never both: the age stands in for the maximal heart rate. */
  readonly factor: StageFactor;
}

/** Between two printed rows a straight line; outside them none. */
const interpolated = (rows: readonly FactorRow[], at: number): number | undefined => {
  const above = rows.findIndex(([x]) => x >= at);
  const [upper, lower] = [rows[above], rows[above - 1]];
  if (!upper) return undefined;
  if (upper[0] === at) return upper[1];
  return lower && lower[1] + ((upper[1] - lower[1]) * (at - lower[0])) / (upper[0] - lower[0]);
};

/** The factor of a single stage. */
export const singleStageFactor = method(
  {
    id: 'submaximal/single-stage-factor',
    revision: 1,
    title: 'Factor of a single stage, for the age or for a known maximal heart rate',
    equations: ['between two printed rows: c_1 + (c_2 − c_1) · (x − x_1) / (x_2 − x_1)'],
    inputs: [
      { name: 'age', symbol: 'age', unit: 'years', possible: [15, 65], valid: [15, 65] },
      { name: 'maximal heart rate', symbol: 'HR_max', unit: '1/min', possible: [150, 210], valid: [150, 210] },
    ],
    outputs: [{ name: 'factor', symbol: 'c', unit: '1' }],
    refuses: ['An age outside 15 to 65 years.', 'A maximal heart rate outside 150 to 210.'],
    source: ASTRAND_1960,
    doesNotKnow: 'How far this person’s maximal heart rate lies from that of the age.',
  },
  (factor: StageFactor): { readonly kind: 'factor'; readonly value: number } | Refused => {
    const found =
      factor.by === 'age' ? interpolated(AGE_FACTORS, factor.years) : interpolated(MAXIMAL_RATE_FACTORS, factor.rate);
    if (found !== undefined) return { kind: 'factor', value: found };
    return refused(
      factor.by === 'age'
        ? `The factors are printed for 15 to 65 years; the age is ${factor.years}. Use a test with a measured maximal heart rate.`
        : `The factors are printed for maximal heart rates of 150 to 210; it is ${factor.rate}. Use the age, or a test in stages.`,
    );
  },
);

/** The maximal uptake from a single stage [mL/(kg min)]. */
export const singleStageEstimate = method(
  {
    id: 'submaximal/single-stage',
    revision: 1,
    title: 'Maximal oxygen uptake from a single stage on the cycle',
    equations: [
      'VO2_sub = 0.002 · k + 0.3',
      'HR = mean of the fifth and the sixth minute',
      'man: VO2_max,L = c · VO2_sub · (195 − 61) / (HR − 61)',
      'woman: VO2_max,L = c · VO2_sub · (198 − 72) / (HR − 72)',
      'VO2_max = 1000 · VO2_max,L / M, SD 5.7',
    ],
    inputs: [
      workRate('work rate', 'k', [300, 1050], [1, 3000]),
      heartRateInput('heart rate of the fifth minute', 'HR_5', [125, 170], [100, 220]),
      heartRateInput('heart rate of the sixth minute', 'HR_6', [125, 170], [100, 220]),
      bodyMass('M'),
    ],
    outputs: [
      { name: 'maximal oxygen uptake', symbol: 'VO2_max', unit: 'mL/(kg min)' },
      { name: 'its standard deviation', symbol: 'SD', unit: 'mL/(kg min)' },
    ],
    refuses: ['What the factor refuses.', 'A work rate, a heart rate or a body mass that is not possible.'],
    source: ASTRAND_RYHMING_1954,
    restsOn: [ASTRAND_1960, CINK_THOMAS_1981, BJORKMAN_2016],
    doesNotKnow:
      'Anything of the person but sex, age and one heart rate: coffee, heat, nerves and a strange saddle move it. In 115 adults the spread was 18 % of the mean.',
  },
  ({ sex, workRate: work, heartRates: [fifth, sixth], bodyMass: mass, factor }: SingleStage): Estimated => {
    const refusal = refusalOf(singleStageEstimate.record, [work, fifth, sixth, mass]);
    const correction = singleStageFactor(factor);
    if (refusal || correction.kind === 'refused') return refusedTogether(refusal, correction);
    const rate = heartRate((fifth + sixth) / 2);
    const used = chartUptake(work);
    const chart = sex === 'male' ? singleStageMan : singleStageWoman;
    const value = uptakeOfFlow(oxygenFlow(correction.value * chart(used, rate)), kilograms(mass));
    const cautions = [
      ...cautionsOf(chartUptake, [work]),
      ...cautionsOf(chart, [used, rate]).filter((caution) => caution.startsWith('heart')),
      ...cautionIf(
        Math.abs(sixth - fifth) > STEADY_WITHIN,
        `The last two minutes differ by ${Math.abs(sixth - fifth)} beats: the stage is not steady, prolong it by a minute.`,
      ),
      ...cautionIf(factor.by === 'maximal heart rate', SPREAD_WITH_THE_AGE),
    ];
    return { kind: 'estimate', value, sd: SINGLE_STAGE_SD, cautions };
  },
);
