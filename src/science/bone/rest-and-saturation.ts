import { formula, type FormulaInput } from '../formula.ts';
import { method } from '../method.ts';
import { curveOf, type Curve } from '../plot.ts';
import { OUR_OWN_DESIGN } from '../sources.ts';
import { impossible, refused, type Refused } from './impossible.ts';
import { cyclesInput, exponentInput, groupInputs, type LoadGroup } from './load-stimulus.ts';
import { restInput, sensitivityAfterRest } from './osteogenic-index.ts';
import { GENC_2009, ROBLING_2001, TURNER_ROBLING_2003 } from './sources.ts';

/**
 * Our own rest-and-saturation load stimulus: cycles that saturate within a bout, sensitivity that returns with rest, and
 * standing. The enhanced daily load stimulus has the same three features; its equation was not seen, and this is not it.
 */

const NOT_A_DOSE =
  'It is our own, built on rodents, and is not the published enhanced daily load stimulus. That order and splitting matter is a property of the index, not a proven effect in people.';

const sensitivity: FormulaInput = {
  name: 'sensitivity at the start of the bout',
  symbol: 's',
  unit: '1',
  possible: [0, 1],
  valid: [0, 1],
};

/** Cycles that a run of cycles is worth. */
export const effectiveCycles = formula(
  {
    id: 'bone/effective-cycles',
    revision: 1,
    title: 'Cycles that a run of cycles is worth',
    equation: '(s / ln 2) · (ln(1 + C + n) − ln(1 + C))',
    inputs: [sensitivity, { ...cyclesInput, name: 'cycles before in the bout', symbol: 'C' }, cyclesInput],
    output: { name: 'effective cycles', symbol: 'n_eff', unit: 'cycles' },
    source: OUR_OWN_DESIGN,
    restsOn: [GENC_2009, TURNER_ROBLING_2003],
    doesNotKnow: NOT_A_DOSE,
    plot: {
      says: 'One cycle alone counts as one; ten count as three and a half; the next thousand hardly matter.',
      x: { name: 'cycles', unit: 'cycles' },
      y: { name: 'effective cycles', unit: 'cycles' },
      curves: (): readonly Curve[] => [
        curveOf('rested', effectiveCycles, [0, 600], (cycles) => [1, 0, cycles]),
        curveOf('after eight hours', effectiveCycles, [0, 600], (cycles) => [sensitivityAfterRest(8), 0, cycles]),
        curveOf('after a hundred in the same bout', effectiveCycles, [0, 600], (cycles) => [1, 100, cycles]),
      ],
    },
  },
  (sensitive: number, before: number, cycles: number): number =>
    (sensitive * Math.log1p(cycles / (1 + before))) / Math.LN2,
);

/** Groups in the order of time, a gap after the end of the bout before; the gap of the first bout says nothing. */
export interface LoadBout {
  readonly gapHours: number;
  readonly groups: readonly LoadGroup[];
}

/** A shorter gap goes on with the same bout [h]. */
const SAME_BOUT = 0.25;
/** Of each leg, standing still in 1 g [BW]. */
const STANDING_FORCE = 0.5;

/** Standing as load: a cycle for each minute at half of body weight on each leg. */
export const standing = (minutes: number): LoadGroup => ({ cycles: minutes, force: STANDING_FORCE });

export type RestAndSaturation = { readonly kind: 'estimate'; readonly value: number; readonly sum: number } | Refused;

/** Rest-and-saturation load stimulus of a day. */
export const restAndSaturationStimulus = method(
  {
    id: 'bone/rest-and-saturation',
    revision: 1,
    title: 'Rest-and-saturation load stimulus of a day',
    equations: [
      's = 1 for the first bout, else 1 − exp(−gap / 6); a gap under 0.25 h goes on with the same bout',
      'n_eff = (s / ln 2) · (ln(1 + C + n) − ln(1 + C)), C cycles so far in the bout',
      'stimulus = (sum n_eff F^m)^(1/m)',
      'standing = a bout of one cycle a minute at 0.5 BW',
    ],
    inputs: [cyclesInput, { ...exponentInput, name: 'exponent of the force' }, restInput],
    outputs: [{ name: 'rest-and-saturation stimulus', symbol: 'RSLS', unit: 'BW' }],
    refuses: ['Cycles, a force, a gap or an exponent that cannot be.'],
    source: OUR_OWN_DESIGN,
    restsOn: [GENC_2009, TURNER_ROBLING_2003, ROBLING_2001],
    doesNotKnow: `${NOT_A_DOSE} Ratios to a person’s own reference day may be compared, values not. A rest under some hours lowers the index against no rest at all, because the bout begins anew: an artefact.`,
  },
  (bouts: readonly LoadBout[], exponent: number): RestAndSaturation => {
    const reasons = impossible([[exponentInput, exponent], ...bouts.flatMap(boutInputs)]);
    if (reasons.length > 0) return refused(reasons);
    const sum = sumOver(bouts, exponent);
    return { kind: 'estimate', value: sum ** (1 / exponent), sum };
  },
);

const boutInputs = ({ gapHours, groups }: LoadBout, place: number): readonly (readonly [FormulaInput, number])[] => [
  ...(place === 0 ? [] : [[restInput, gapHours] as const]),
  ...groups.flatMap(groupInputs),
];

const sumOver = (bouts: readonly LoadBout[], exponent: number): number => {
  let [sum, sensitive, before] = [0, 1, 0];
  for (const [place, { gapHours, groups }] of bouts.entries()) {
    if (place > 0 && gapHours >= SAME_BOUT) [sensitive, before] = [sensitivityAfterRest(gapHours), 0];
    for (const { cycles, force } of groups) {
      sum += effectiveCycles(sensitive, before, cycles) * force ** exponent;
      before += cycles;
    }
  }
  return sum;
};
