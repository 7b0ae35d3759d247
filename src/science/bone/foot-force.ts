import { formula, type FormulaInput } from '../formula.ts';
import { bodyMass, load } from '../inputs.ts';
import { CAVANAGH_2010, COMMON_PRACTICE, OUR_OWN_DESIGN } from '../sources.ts';
import { newtons, type BarLoad, type Fraction, type Kilograms, type Newtons } from '#units/quantity.ts';

/** What a lift does to one foot. In weightlessness the body adds nothing: foot force is what the machine pulls. */

/** Standard acceleration of free fall, exact by definition [m/s²]. */
const STANDARD_GRAVITY = 9.80665;
/** Of body mass, above the shanks: what a squat moves; common practice. */
const ABOVE_SHANKS = 0.88;

const footShare: FormulaInput = {
  name: 'share of one foot',
  symbol: 'share',
  unit: '1',
  possible: [0, 1],
  valid: [0.5, 1],
};
const machineForce: FormulaInput = {
  name: 'machine load',
  symbol: 'L',
  unit: 'N',
  possible: [0, 10_000],
  valid: [0, 3000],
};
const allowance: FormulaInput = {
  name: 'dynamic allowance',
  symbol: 'a',
  unit: '1',
  possible: [0, 1],
  valid: [0, 0.2],
};

const NOT_THE_HIP =
  'Foot force is a stand-in: muscles press the hip together with several times as much, so heavy lifts are under-rated. No load is made with it.';

/** Foot force of a weightless lift [BW]. */
export const weightlessFootForce = formula(
  {
    id: 'bone/weightless-foot-force',
    revision: 1,
    title: 'Foot force of a weightless lift [BW]',
    equation: 'share · L · (1 + a) / (M g_0)',
    inputs: [footShare, machineForce, allowance, bodyMass('M')],
    output: { name: 'peak force of one foot', symbol: 'F', unit: 'BW' },
    source: OUR_OWN_DESIGN,
    restsOn: [CAVANAGH_2010],
    doesNotKnow: NOT_THE_HIP,
  },
  (share: Fraction, pull: Newtons, dynamic: Fraction, mass: Kilograms): number =>
    (share * pull * (1 + dynamic)) / (mass * STANDARD_GRAVITY),
);

/** Foot force of the same squat in 1 g [BW]. */
export const groundFootForce = formula(
  {
    id: 'bone/ground-foot-force',
    revision: 1,
    title: 'Foot force of the same squat in 1 g [BW]',
    equation: 'share · (bar + 0.88 M) / M',
    inputs: [footShare, load('bar', 'bar'), bodyMass('M')],
    output: { name: 'peak force of one foot', symbol: 'F', unit: 'BW' },
    source: COMMON_PRACTICE,
    doesNotKnow: `${NOT_THE_HIP} 0.88 is quoted practice for what is above the shanks.`,
  },
  (share: Fraction, bar: BarLoad, mass: Kilograms): number => (share * (bar + ABOVE_SHANKS * mass)) / mass,
);

/** Machine load that gives the foot force of a squat in 1 g [N]. */
export const footForceLoad = formula(
  {
    id: 'bone/foot-force-load',
    revision: 1,
    title: 'Machine load that gives the foot force of a squat in 1 g [N]',
    equation: '(bar + 0.88 M) g_0',
    inputs: [load('bar', 'bar'), bodyMass('M')],
    output: { name: 'machine load', symbol: 'L', unit: 'N' },
    source: COMMON_PRACTICE,
    doesNotKnow: `${NOT_THE_HIP} Loads to train with come from the crossing, with its own share of body weight and its ramps.`,
  },
  (bar: BarLoad, mass: Kilograms): Newtons => newtons((bar + ABOVE_SHANKS * mass) * STANDARD_GRAVITY),
);
