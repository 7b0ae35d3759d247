import type { Condition, FormulaInput } from '../formula.ts';
import { formula } from '../formula.ts';
import { days } from './inputs.ts';
import { curveOf, type Curve } from '../plot.ts';
import { halfLifeBetween } from '../recovery/halving.ts';
import { OUR_OWN_DESIGN } from '../sources.ts';
import { MULAVARA_2010 } from './sources.ts';

/** A loss that shrinks by the same share each day, and the time constant that published figures give for it. */

const lossInput = (name: string, symbol: string): FormulaInput => ({
  name,
  symbol,
  unit: '%',
  possible: [0.01, 100],
  valid: [0.5, 50],
});
const constant = days('time constant', 'τ', [0.1, 2000], [0.5, 1000]);
const time = days('time since landing', 't', [0, 2000], [0, 1000]);

const SHAPE =
  'Whether this person recovers so: one exponential to full recovery. Losses with two phases, and those that stay flat for weeks, do not fit it.';

/** Level on a day of an exponential recovery (% of before flight). */
export const recoveredLevel = formula(
  {
    id: 'return/recovered-level',
    revision: 1,
    title: 'Level on a day of an exponential recovery (% of before flight)',
    equation: '100 − δ · exp(−t / τ)',
    inputs: [lossInput('loss on landing day', 'δ'), constant, time],
    output: { name: 'level', symbol: 'y', unit: '%' },
    source: OUR_OWN_DESIGN,
    doesNotKnow: `${SHAPE} It is the law of recovery/part-left with a time constant, τ = h / ln(2), since the forecast of a recovery is made in time constants.`,
    plot: {
      says: 'A loss of 20 % with a short, a middling and a long time constant: balance, oxygen uptake, knee flexion.',
      x: { name: 'time since landing', unit: 'd' },
      y: { name: 'level', unit: '% of before flight' },
      curves: (): readonly Curve[] =>
        [4, 14, 41].map((tau) => curveOf(`τ ${tau} d`, recoveredLevel, [0, 60], (t) => [20, tau, t])),
    },
  },
  (loss: number, tau: number, t: number): number => 100 - loss * Math.exp(-t / tau),
);

/** Time to a level of an exponential recovery (d). */
export const timeToLevel = formula(
  {
    id: 'return/time-to-level',
    revision: 1,
    title: 'Time to a level of an exponential recovery (d)',
    equation: 'τ · ln(δ / (100 − Y)) where δ > 100 − Y, else 0',
    inputs: [
      lossInput('loss on landing day', 'δ'),
      constant,
      { name: 'level to reach', symbol: 'Y', unit: '%', possible: [0, 99.9], valid: [50, 99] },
    ],
    output: { name: 'time', symbol: 'T', unit: 'd' },
    source: OUR_OWN_DESIGN,
    doesNotKnow: `${SHAPE} Full recovery is never reached by it, so no time to 100 % is given.`,
  },
  (loss: number, tau: number, level: number): number => (loss > 100 - level ? tau * Math.log(loss / (100 - level)) : 0),
);

const LATER: Condition = {
  says: 'The second day lies after the first.',
  holds: (_first, _second, from = 0, to = 0) => to > from,
};
const SMALLER: Condition = { says: 'The second loss is smaller than the first.', holds: (a = 0, b = 0) => b < a };

/** Time constant from two losses (d). */
export const timeConstantOfTwo = formula(
  {
    id: 'return/time-constant-of-two',
    revision: 1,
    title: 'Time constant from two losses (d)',
    equation: '(t_2 − t_1) / ln(D_1 / D_2)',
    inputs: [
      lossInput('loss on the first day', 'D_1'),
      lossInput('loss on the second day', 'D_2'),
      days('first day', 't_1', [0, 2000]),
      days('second day', 't_2', [0, 2000]),
    ],
    output: { name: 'time constant', symbol: 'τ', unit: 'd' },
    conditions: [LATER, SMALLER],
    source: OUR_OWN_DESIGN,
    doesNotKnow:
      'The error of either loss: where they lie close together, the constant is mostly noise. It is the half-life of recovery/half-life-between over ln(2).',
  },
  (first: number, second: number, from: number, to: number): number =>
    halfLifeBetween(first, second, to - from) / Math.LN2,
);

/** Time constant of a time that recovers on its log scale (d). */
export const timeConstantOfLogTime = formula(
  {
    id: 'return/time-constant-of-log-time',
    revision: 1,
    title: 'Time constant of a time that recovers on its log scale (d)',
    equation: 't / ln(ln(r) / ln(1 / s))',
    inputs: [
      days('days to the recovered share', 't', [0.1, 2000]),
      {
        name: 'time just after landing over that before flight',
        symbol: 'r',
        unit: '1',
        possible: [1.001, 100],
        valid: [1.05, 5],
      },
      { name: 'recovered share of performance', symbol: 's', unit: '1', possible: [0.01, 0.999], valid: [0.5, 0.99] },
    ],
    output: { name: 'time constant', symbol: 'τ', unit: 'd' },
    conditions: [
      {
        says: 'The share lies above that of landing day.',
        // A hair above, binary fractions leave nothing of the difference of the logarithms.
        holds: (_days, ratio = 1, share = 1) => ratio * share > 1 + 1e-9,
      },
    ],
    source: MULAVARA_2010,
    restsOn: [OUR_OWN_DESIGN],
    doesNotKnow:
      'Whether "95 % recovered" meant the time or the loss: read as 95 % of the loss the same study gives 5.0 days instead of 7.4.',
  },
  (t: number, ratio: number, share: number): number => t / Math.log(Math.log(ratio) / Math.log(1 / share)),
);

/** Time constant of a half-life (d). */
export const timeConstantOfHalfLife = formula(
  {
    id: 'return/time-constant-of-half-life',
    revision: 1,
    title: 'Time constant of a half-life (d)',
    equation: 't_(1/2) / ln(2)',
    inputs: [days('half-life', 't_(1/2)', [0.01, 2000])],
    output: { name: 'time constant', symbol: 'τ', unit: 'd' },
    source: OUR_OWN_DESIGN,
    doesNotKnow: SHAPE,
  },
  (halfLife: number): number => halfLife / Math.LN2,
);
