import { method } from '../method.ts';
import { curveOf, type Curve } from '../plot.ts';
import { formula } from '../formula.ts';
import { MOORE_2010, MOORE_2014, MOORE_2015, OUR_OWN_DESIGN } from '../sources.ts';
import { fraction, type Fraction } from '#units/quantity.ts';
import { cautionIf, type Estimated } from './estimate.ts';
import { lineOfStages, rangeCaution, stagedEstimate, type Stage } from './staged-estimate.ts';
import { lineSd, onLine } from './line-through-stages.ts';

/** A submaximal test in flight against the same test before it, and how a deficit heals after landing. */

/** Standard deviation of a ratio of two indices; our own setting. */
export const RATIO_SD = 0.06;

/** The aerobic-capacity index of a test [mL/(kg min)]. */
export const capacityIndex = method(
  {
    id: 'capacity-index/index',
    revision: 1,
    title: 'Aerobic-capacity index: the stages’ line at the peak heart rate before flight',
    equations: [
      'VO2 = a + b · HR by least squares over the stages, residual standard deviation s',
      'index = a + b · HR_pre',
      'SD = s · √(1 / n + (HR_pre − HR_mean)^2 / S_xx)',
    ],
    inputs: stagedEstimate.record.inputs.slice(0, 3),
    outputs: [{ name: 'aerobic-capacity index', symbol: 'ACI', unit: 'mL/(kg min)' }],
    refuses: stagedEstimate.record.refuses,
    source: MOORE_2015,
    restsOn: [MOORE_2014],
    doesNotKnow:
      'The maximal uptake: the line runs on where the uptake flattens, so the index overshoots. It is used as a ratio to itself before flight, with the same peak heart rate.',
  },
  (stages: readonly Stage[], peakRateBefore: number): Estimated => {
    const line = lineOfStages(stages, { value: peakRateBefore, sd: 0 });
    if (line.kind === 'refused') return line;
    return {
      kind: 'estimate',
      value: onLine(line, peakRateBefore),
      sd: lineSd(line, peakRateBefore),
      cautions: ['An index, not a maximal uptake: compare it only with itself.', ...rangeCaution(line)],
    };
  },
);

/** The index of a test as a share of the one before flight. */
export const capacityRatio = method(
  {
    id: 'capacity-index/ratio',
    revision: 1,
    title: 'Aerobic-capacity index as a share of the one before flight',
    equations: ['ratio = ACI_t / ACI_pre', 'SD = 0.06 · ratio'],
    inputs: capacityIndex.record.inputs,
    outputs: [{ name: 'share of the index before flight', symbol: 'ratio', unit: '1' }],
    refuses: stagedEstimate.record.refuses,
    source: MOORE_2015,
    restsOn: [OUR_OWN_DESIGN],
    doesNotKnow:
      'How much of a change is plasma: early in flight and after landing the heart beats faster at every uptake, so the ratio reads low before flight day 30. 6 % is our own setting.',
  },
  (before: readonly Stage[], now: readonly Stage[], peakRateBefore: number, flightDay: number): Estimated => {
    const [pre, later] = [capacityIndex(before, peakRateBefore), capacityIndex(now, peakRateBefore)];
    if (pre.kind === 'refused') return { ...pre, reason: `Before flight: ${pre.reason}` };
    if (later.kind === 'refused') return { ...later, reason: `This test: ${later.reason}` };
    const value = later.value / pre.value;
    return {
      kind: 'estimate',
      value,
      sd: RATIO_SD * value,
      cautions: cautionIf(
        flightDay < 30,
        'Before flight day 30 the heart beats faster at every uptake: do not set zones anew by this test alone.',
      ),
    };
  },
);

/** Half-life in days, and its spread on the log scale, of a deficit after landing; derived from five people. */
export const RECOVERY_HALF_LIFE = 6;
export const RECOVERY_LOG_SD = 0.5;

/** Where the plot begins: a deficit that passes close to the five people's. */
const START = 0.14;

const deficit = { possible: [0.0001, 1], valid: [0.005, 0.4] } as const;
const days = (name: string, symbol: string, valid: readonly [number, number]) =>
  ({ name, symbol, unit: 'd', possible: [0.1, 1000], valid }) as const;

/** Half-life of a deficit between two tests [d]. */
export const deficitHalfLife = formula(
  {
    id: 'capacity-index/half-life',
    revision: 1,
    title: 'Half-life of a deficit between two tests [d]',
    equation: 't · ln(2) / ln(d_1 / d_2)',
    inputs: [
      { name: 'deficit at the first test', symbol: 'd_1', unit: '1', ...deficit },
      { name: 'deficit at the second test', symbol: 'd_2', unit: '1', ...deficit },
      days('days between', 't', [1, 60]),
    ],
    conditions: [
      {
        says: 'The deficit has shrunk by at least a twentieth between the tests.',
        holds: (first = 0, second = 0) => second <= 0.95 * first,
      },
    ],
    output: { name: 'half-life', symbol: 't_half', unit: 'd' },
    source: OUR_OWN_DESIGN,
    restsOn: [MOORE_2010],
    doesNotKnow: 'The noise of the two tests, which is large beside a small deficit.',
  },
  (first: Fraction, second: Fraction, between: number): number => (between * Math.LN2) / Math.log(first / second),
);

/** Deficit of aerobic capacity left some days after landing. */
export const deficitLeft = formula(
  {
    id: 'capacity-index/deficit',
    revision: 1,
    title: 'Deficit of aerobic capacity left some days after landing',
    equation: 'd_0 · 2^(−t / t_half)',
    inputs: [
      { name: 'deficit at landing', symbol: 'd_0', unit: '1', possible: [0, 1], valid: [0, 0.4] },
      days('half-life', 't_half', [2, 20]),
      { name: 'days since', symbol: 't', unit: 'd', possible: [0, 1000], valid: [0, 90] },
    ],
    output: { name: 'deficit left', symbol: 'd', unit: '1' },
    source: OUR_OWN_DESIGN,
    restsOn: [MOORE_2010, MOORE_2014],
    standardError: { value: RECOVERY_LOG_SD, unit: 'ln of the half-life', of: 'our own setting' },
    doesNotKnow:
      'This person and their work after landing; that by 30 days all was regained is seen, the shape between is not.',
    plot: {
      says: 'Half gone in about six days, nine tenths in twenty; the band is one standard deviation of the half-life.',
      x: { name: 'days since landing', unit: 'd' },
      y: { name: 'deficit left', unit: '1' },
      curves: (): readonly Curve[] => {
        const middle = curveOf('half-life 6 d', deficitLeft, [0, 40], (t) => [START, RECOVERY_HALF_LIFE, t]);
        const at = (sign: number, t: number): number =>
          START * 2 ** (-t / (RECOVERY_HALF_LIFE * Math.exp(sign * RECOVERY_LOG_SD)));
        return [
          { ...middle, band: middle.points.map(([t]) => [at(-1, t), at(1, t)] as const) },
          {
            label: 'five people',
            points: [
              [1.5, 0.117],
              [10, 0.04],
            ],
            scattered: true,
          },
        ];
      },
    },
  },
  (start: Fraction, halfLife: number, since: number): Fraction => fraction(start * 2 ** (-since / halfLife)),
);
