import { formula, type FormulaInput } from '../formula.ts';
import { method } from '../method.ts';
import { curveOf, type Curve } from '../plot.ts';
import { densityInput, precisionInput } from './density-input.ts';
import { impossible, refused, type Refused } from './impossible.ts';
import { ISCD_POSITIONS, NELSON_2010 } from './sources.ts';
import { boneDensity, type BoneDensity } from '#units/quantity.ts';

/** How well a scanner and its technologist repeat themselves, and what change of a person that lets them see. */

/** 1.96 · √2 to two decimals, as it is printed: both scans of a difference are noisy. */
const FACTOR = 2.77;

const SIX_MONTHS_OF = (percentPerMonth: number): number => 0.06 * percentPerMonth * 0.88;

const levelAt = (label: string, value: number): Curve => ({
  label,
  points: [
    [0.004, value],
    [0.024, value],
  ],
});

/** Least significant change [g/cm²]. */
export const leastSignificantChange = formula(
  {
    id: 'bone/least-significant-change',
    revision: 1,
    title: 'Least significant change [g/cm²]',
    equation: '2.77 · RMS_SD',
    inputs: [precisionInput],
    output: { name: 'least significant change', symbol: 'LSC', unit: 'g/cm²' },
    source: ISCD_POSITIONS,
    restsOn: [NELSON_2010],
    doesNotKnow:
      'Precision belongs to one scanner, one region and one technologist; a figure from elsewhere says nothing about here. One unchanged person in twenty exceeds it by chance.',
    plot: {
      says: 'What six months cost at today’s and at yesterday’s rates, for a femoral neck of 0.88 g/cm²: only coarse losses stand above the noise of a usual technologist (0.010 to 0.020 g/cm²).',
      x: { name: 'precision of repeat scans', unit: 'g/cm²' },
      y: { name: 'change', unit: 'g/cm²' },
      curves: (): readonly Curve[] => [
        curveOf('least significant change', leastSignificantChange, [0.004, 0.024], (precision) => [precision]),
        levelAt('six months at 0.3 % a month', SIX_MONTHS_OF(0.3)),
        levelAt('six months at 1.15 % a month', SIX_MONTHS_OF(1.15)),
      ],
    },
  },
  (precision: BoneDensity): BoneDensity => boneDensity(FACTOR * precision),
);

const scan: FormulaInput = densityInput('density of one scan', 'x_ij');

/** Degrees of freedom that the society asks for: 15 people three times, or 30 people twice. */
const ENOUGH_FREEDOM = 30;

export type Precision =
  | {
      readonly kind: 'estimate';
      /** Root mean square of the standard deviations within people. */
      readonly value: BoneDensity;
      /** Standard deviation of that estimate, for normal noise. */
      readonly sd: number;
      readonly leastSignificantChange: BoneDensity;
      readonly people: number;
      readonly degreesOfFreedom: number;
      readonly cautions: readonly string[];
    }
  | Refused;

/** Precision of repeat scans, with its least significant change: one list of scans for each person, repositioned between. */
export const precisionOfScans = method(
  {
    id: 'bone/precision',
    revision: 1,
    title: 'Precision of repeat scans and their least significant change [g/cm²]',
    equations: [
      'SD_i² = sum_j (x_ij − mean_i)² / (k_i − 1)',
      'RMS_SD = √(sum_i (k_i − 1) SD_i² / sum_i (k_i − 1)), which is √(mean of SD_i²) where all were scanned equally often',
      'SD of RMS_SD = RMS_SD / √(2 · sum_i (k_i − 1))',
      'LSC = 2.77 · RMS_SD',
    ],
    inputs: [scan],
    outputs: [
      { name: 'precision', symbol: 'RMS_SD', unit: 'g/cm²' },
      { name: 'least significant change', symbol: 'LSC', unit: 'g/cm²' },
    ],
    refuses: ['Fewer than two people.', 'A person with fewer than two scans.', 'A density that cannot be.'],
    source: ISCD_POSITIONS,
    restsOn: [NELSON_2010],
    doesNotKnow:
      'Drift of the machine between months, and another technologist: scans of one day by one pair of hands are all it saw.',
  },
  (people: readonly (readonly BoneDensity[])[]): Precision => {
    const reasons = whyNot(people);
    if (reasons.length > 0) return refused(reasons);
    const degreesOfFreedom = people.reduce((sum, scans) => sum + scans.length - 1, 0);
    const squares = people.reduce((sum, scans) => sum + squaredDeviations(scans), 0);
    const value = boneDensity(Math.sqrt(squares / degreesOfFreedom));
    return {
      kind: 'estimate',
      value,
      sd: value / Math.sqrt(2 * degreesOfFreedom),
      leastSignificantChange: leastSignificantChange(value),
      people: people.length,
      degreesOfFreedom,
      cautions: cautionsOf(people, degreesOfFreedom, value),
    };
  },
);

const squaredDeviations = (scans: readonly number[]): number => {
  const mean = scans.reduce((sum, value) => sum + value, 0) / scans.length;
  return scans.reduce((sum, value) => sum + (value - mean) ** 2, 0);
};

const whyNot = (people: readonly (readonly number[])[]): readonly string[] => [
  ...(people.length < 2 ? [`Precision needs at least two people; there are ${people.length}.`] : []),
  ...people.flatMap((scans, place) =>
    scans.length < 2
      ? [`Person ${place + 1} was scanned ${scans.length === 1 ? 'once' : 'never'}; twice is the least.`]
      : [],
  ),
  ...people.flatMap((scans, place) =>
    impossible(scans.map((value) => [scan, value])).map((reason) => `Person ${place + 1}: ${reason}`),
  ),
];

const cautionsOf = (
  people: readonly (readonly number[])[],
  degreesOfFreedom: number,
  precision: number,
): readonly string[] => [
  ...(degreesOfFreedom < ENOUGH_FREEDOM
    ? [`${degreesOfFreedom} degrees of freedom; 15 people scanned three times or 30 twice give ${ENOUGH_FREEDOM}.`]
    : []),
  ...(new Set(people.map((scans) => scans.length)).size > 1
    ? ['Not everybody was scanned equally often: people with more scans weigh more.']
    : []),
  ...(precision === 0 ? ['Every repeat gave the same value: copied rather than repeated?'] : []),
];
