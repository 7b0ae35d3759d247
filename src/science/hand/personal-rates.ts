import { seconds, type Fraction, type Newtons, type Seconds } from '#units/quantity.ts';
import { formula, type FormulaInput } from '../formula.ts';
import { OUR_OWN_DESIGN } from '../sources.ts';
import { testedImpulse } from './all-out-test.ts';
import { duty, force, restMultiplier, share, time } from './inputs.ts';
import { RAKSHIT_2021, XIA_FREY_LAW_2008 } from './sources.ts';

/** One person's constants from a test that was only summed up: critical force and the impulse above it. */

const criticalShare: FormulaInput = share('critical force of the maximum', 'c', [0.01, 0.99], [0.15, 0.7]);
const fall: FormulaInput = time('time in which the test falls to its plateau', 'τ', [1, 2000], [20, 200]);

const OF_THE_MODEL =
  'Muscle that behaves otherwise than three compartments: the impulse of a test is taken as that of one exponential fall.';

/** Time in which a test fell to its plateau [s], from its impulse. */
export const timeConstantOfTest = formula(
  {
    id: 'personal-constants/time-constant',
    revision: 1,
    title: 'Time in which a test fell to its plateau [s], from its impulse',
    equation: "τ = W' / (d (F_max − CF))",
    inputs: [
      testedImpulse,
      duty,
      force('maximum', 'F_max', [20, 2000], [100, 1000]),
      force('critical force', 'CF', [1, 2000], [20, 500]),
    ],
    conditions: [
      {
        says: 'The critical force must lie below 0.99 of the maximum: else there is no fall to time.',
        holds: (_impulse = 0, _duty = 0, maximum = 0, critical = 0) => critical <= 0.99 * maximum,
      },
    ],
    output: { name: 'time constant', symbol: 'τ', unit: 's' },
    source: OUR_OWN_DESIGN,
    restsOn: [XIA_FREY_LAW_2008],
    doesNotKnow: OF_THE_MODEL,
  },
  (above: number, loaded: Fraction, maximum: Newtons, critical: Newtons): Seconds =>
    seconds(above / (loaded * (maximum - critical))),
);

/** Rate of fatigue [1/s] of a person, from critical force and time constant. */
export const personalFatigueRate = formula(
  {
    id: 'personal-constants/fatigue-rate',
    revision: 1,
    title: 'Rate of fatigue [1/s] of a person, from critical force and time constant',
    equation: 'F = (1 − c) / (d τ)',
    inputs: [criticalShare, duty, fall],
    output: { name: 'rate of fatigue', symbol: 'F', unit: '1/s' },
    source: OUR_OWN_DESIGN,
    restsOn: [XIA_FREY_LAW_2008],
    doesNotKnow: OF_THE_MODEL,
  },
  (critical: Fraction, loaded: Fraction, falls: Seconds): number => (1 - critical) / (loaded * falls),
);

/** Rate of recovery [1/s] of a person, from critical force and time constant. */
export const personalRecoveryRate = formula(
  {
    id: 'personal-constants/recovery-rate',
    revision: 1,
    title: 'Rate of recovery [1/s] of a person, from critical force and time constant',
    equation: 'R = c / (τ (d + r (1 − d)))',
    inputs: [criticalShare, duty, fall, restMultiplier],
    output: { name: 'rate of recovery', symbol: 'R', unit: '1/s' },
    source: OUR_OWN_DESIGN,
    restsOn: [XIA_FREY_LAW_2008, RAKSHIT_2021],
    doesNotKnow: `The person’s own rest multiplier: one test cannot tell it from the rate, so 12.51 is taken from the pooled grip group. ${OF_THE_MODEL}`,
  },
  (critical: Fraction, loaded: Fraction, falls: Seconds, rest: number): number =>
    critical / (falls * (loaded + rest * (1 - loaded))),
);
