import { cited } from '../cited.ts';
import { formula, type FormulaInput } from '../formula.ts';

/** The normal distribution. Far out take `normalCdf(−z)` for the upper tail: 1 − cdf would lose its digits. */

export const MARSAGLIA_2004 = cited(
  'from memory',
  'Marsaglia G. (2004) Evaluating the normal distribution. Journal of Statistical Software 11(4).',
  { doi: '10.18637/jss.v011.i04', note: 'The series; the doi is from memory. The values were checked against SciPy.' },
);
export const ABRAMOWITZ_STEGUN_1964 = cited(
  'from memory',
  'Abramowitz M., Stegun I.A. (1964) Handbook of mathematical functions. National Bureau of Standards.',
  { note: 'Continued fraction 26.2.14 and start 26.2.23 from memory. The values were checked against SciPy.' },
);

const WHOLE_LINE = [-38, 38] as const;

const standardised: FormulaInput = {
  name: 'standardised value',
  symbol: 'z',
  unit: '1',
  possible: WHOLE_LINE,
  valid: WHOLE_LINE,
};

const NOT_THE_SHAPE = 'Whether what it is used for is normally distributed, in the tails least of all.';

/** Density of the standard normal distribution. */
export const normalDensity = formula(
  {
    id: 'normal/density',
    revision: 1,
    title: 'Density of the standard normal distribution',
    equation: 'exp(−z² / 2) / √(2 π)',
    inputs: [standardised],
    output: { name: 'density', symbol: 'φ', unit: '1' },
    source: ABRAMOWITZ_STEGUN_1964,
    doesNotKnow: NOT_THE_SHAPE,
  },
  (z: number): number => Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI),
);

/** Below this distance from the middle the series is used, above it the fraction; at either side both reach double precision. */
const SERIES_BELOW = 2.5;
/** Levels of the fraction; at 2.5 some forty are enough for double precision, and it converges faster further out. */
const LEVELS = 60;

/** Probability between the middle and z, by Marsaglia’s series. */
const fromTheMiddle = (z: number): number => {
  let [term, sum, before] = [z, z, 0];
  for (let odd = 3; sum !== before; odd += 2) {
    term *= (z * z) / odd;
    before = sum;
    sum += term;
  }
  return normalDensity(z) * sum;
};

/** Probability above z, far out, by the continued fraction z + 1/(z + 2/(z + …)). */
const upperTail = (z: number): number => {
  let below = z;
  for (let level = LEVELS; level >= 1; level -= 1) below = z + level / below;
  return normalDensity(z) / below;
};

/** Probability that a standard normal value lies below z. */
export const normalCdf = formula(
  {
    id: 'normal/cdf',
    revision: 1,
    title: 'Probability that a standard normal value lies below z',
    equation: 'Φ(z) = 1/2 + φ(z) · (z + z³/3 + z⁵/(3·5) + …); beyond ± 2.5 the continued fraction of the tail',
    inputs: [standardised],
    output: { name: 'probability', symbol: 'Φ', unit: '1' },
    source: MARSAGLIA_2004,
    restsOn: [ABRAMOWITZ_STEGUN_1964],
    doesNotKnow: NOT_THE_SHAPE,
  },
  (z: number): number => {
    if (z > SERIES_BELOW) return 1 - upperTail(z);
    return z < -SERIES_BELOW ? upperTail(-z) : 0.5 + fromTheMiddle(z);
  },
);

/** A lower quantile to three decimals, for p of at most one half. */
const roughQuantile = (p: number): number => {
  const t = Math.sqrt(-2 * Math.log(p));
  return (2.515517 + t * (0.802853 + t * 0.010328)) / (1 + t * (1.432788 + t * (0.189269 + t * 0.001308))) - t;
};

/** Each of Halley’s steps triples the digits that are right: three, nine, all. */
const STEPS = 2;

const lowerQuantile = (p: number): number => {
  let z = roughQuantile(p);
  for (let step = 1; step <= STEPS; step += 1) {
    const newton = (normalCdf(z) - p) / normalDensity(z);
    z -= newton / (1 + (z * newton) / 2);
  }
  return z;
};

/** Standard normal value below which a given share lies. */
export const normalQuantile = formula(
  {
    id: 'normal/quantile',
    revision: 1,
    title: 'Standard normal value below which a given share lies',
    equation: 'z with Φ(z) = p',
    inputs: [
      {
        name: 'probability',
        symbol: 'p',
        unit: '1',
        possible: [1e-300, 1 - 2 ** -53],
        valid: [1e-300, 1 - 2 ** -53],
      },
    ],
    output: { name: 'standardised value', symbol: 'z', unit: '1' },
    source: ABRAMOWITZ_STEGUN_1964,
    restsOn: [MARSAGLIA_2004],
    doesNotKnow: NOT_THE_SHAPE,
  },
  (p: number): number => (p <= 0.5 ? lowerQuantile(p) : -lowerQuantile(1 - p)),
);
