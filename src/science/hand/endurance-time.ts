import { seconds, type Fraction, type Seconds } from '#units/quantity.ts';
import { formula, type FormulaRecord, type Source } from '../formula.ts';
import { curveOf, spaced, type Plot } from '../plot.ts';
import { target } from './inputs.ts';
import { BISHU_1995, EL_AHRACHE_2006, FREY_LAW_AVIN_2010, MANENICA_1986, ROHMERT_1960, ROSE_1992 } from './sources.ts';

/** How long a force can be held without a break, by four authors. Each is refused outside what its author covered. */

const record = (
  id: string,
  author: string,
  equation: string,
  covered: readonly [number, number],
  source: Source,
  doesNotKnow: string,
): FormulaRecord => ({
  id: `grip-endurance/${id}`,
  revision: 1,
  title: `Time a force can be held [s], ${author}`,
  equation,
  inputs: [{ ...target, possible: covered, valid: covered }],
  output: { name: 'endurance time', symbol: 'T', unit: 's' },
  source,
  restsOn: source === FREY_LAW_AVIN_2010 ? [BISHU_1995] : [EL_AHRACHE_2006],
  doesNotKnow,
});

const GENERAL = 'The hand: one curve for all joints, and those for grip run about half as long again.';

const FOUR_AUTHORS: Plot = {
  says: 'Curves made for grip lie above those for any joint; their spread is the uncertainty of any of them.',
  x: { name: 'force held, of the maximum', unit: '1' },
  y: { name: 'time to exhaustion', unit: 's' },
  curves: () => [
    {
      ...curveOf('grip, Frey Law and Avin', enduranceTimeFreyLawAvin, [0.2, 0.8], (share) => [share]),
      band: spaced(0.2, 0.8).map((share) => {
        const four = [enduranceTimeFreyLawAvin, enduranceTimeRohmert, enduranceTimeRose, enduranceTimeManenica];
        const times = four.map((each) => each(share as Fraction));
        return [Math.min(...times), Math.max(...times)] as const;
      }),
    },
    curveOf('any joint, Rohmert', enduranceTimeRohmert, [0.2, 0.8], (share) => [share]),
    curveOf('any joint, Rose', enduranceTimeRose, [0.2, 0.8], (share) => [share]),
    curveOf('grip, Manenica', enduranceTimeManenica, [0.2, 0.8], (share) => [share]),
  ],
};

/** Time a force can be held [s], grip, Frey Law and Avin. */
export const enduranceTimeFreyLawAvin = formula(
  {
    ...record(
      'frey-law-avin',
      'grip, Frey Law and Avin',
      'T = 33.55 I^(−1.61)',
      [0.1, 0.9],
      FREY_LAW_AVIN_2010,
      'Single people: a curve through the means of studies. Its data thin out above 0.8 and below 0.2.',
    ),
    plot: FOUR_AUTHORS,
  },
  (share: Fraction): Seconds => seconds(33.55 * share ** -1.61),
);

/** Time a force can be held [s], any joint, Rohmert. */
export const enduranceTimeRohmert = formula(
  record(
    'rohmert',
    'any joint, Rohmert',
    'T = 60 (−1.5 + 2.1 / I − 0.6 / I^2 + 0.1 / I^3)',
    [0.15, 1],
    ROHMERT_1960,
    `${GENERAL} It runs to infinity below 0.15, which later studies did not find.`,
  ),
  (share: Fraction): Seconds => seconds(60 * (-1.5 + 2.1 / share - 0.6 / share ** 2 + 0.1 / share ** 3)),
);

/** Time a force can be held [s], any joint, Rose. */
export const enduranceTimeRose = formula(
  record('rose', 'any joint, Rose', 'T = 60 · 7.96 exp(−4.16 I)', [0.1, 0.9], ROSE_1992, GENERAL),
  (share: Fraction): Seconds => seconds(60 * 7.96 * Math.exp(-4.16 * share)),
);

/** Time a force can be held [s], grip, Manenica. */
export const enduranceTimeManenica = formula(
  record(
    'manenica',
    'grip, Manenica',
    'T = 60 · 16.6099 exp(−4.5 I)',
    [0.2, 0.8],
    MANENICA_1986,
    'How many people stand behind it, and what happens below 0.2: an exponential stays finite at no force at all.',
  ),
  (share: Fraction): Seconds => seconds(60 * 16.6099 * Math.exp(-4.5 * share)),
);

/** All of them, the one that is used first. */
export const ENDURANCE_AUTHORS = [
  enduranceTimeFreyLawAvin,
  enduranceTimeRohmert,
  enduranceTimeRose,
  enduranceTimeManenica,
] as const;
