import { method } from '../method.ts';
import { MOORE_2014, MOORE_2015, OUR_OWN_DESIGN } from '../sources.ts';
import { cautionIf, type Estimated } from './estimate.ts';
import { lineOfStages, rangeCaution, stagedEstimate, type Stage } from './staged-estimate.ts';
import { lineSd, onLine } from './line-through-stages.ts';

/** A submaximal test in flight against the same test before it; how a deficit heals stands in recovery/part-left. */

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
