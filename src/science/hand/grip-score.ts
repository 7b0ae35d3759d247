import { kilograms as kilogramsOf, type Kilograms } from '#units/quantity.ts';
import { KILOGRAMS_PER_POUND } from '#units/mass.ts';
import { formula } from '../formula.ts';
import { method } from '../method.ts';
import { gripNorms } from './grip-norms.table.ts';
import { DODDS_2014, MATHIOWETZ_1985 } from './sources.ts';

const grip = (name: string, symbol: string, possible: readonly [number, number], valid: readonly [number, number]) => ({
  name,
  symbol,
  unit: 'kg',
  possible,
  valid,
});

/** Distance of a grip from the mean of a group, in standard deviations. */
export const gripStandardScore = formula(
  {
    id: 'hand/grip-standard-score',
    revision: 1,
    title: 'Distance of a grip from the mean of a group, in standard deviations',
    equation: 'z = (x − m) / s',
    inputs: [
      grip('grip', 'x', [0, 150], [5, 100]),
      grip('mean of the group', 'm', [1, 100], [10, 60]),
      grip('standard deviation of the group', 's', [0.5, 50], [3, 15]),
    ],
    output: { name: 'standard score', symbol: 'z', unit: 'SD' },
    source: MATHIOWETZ_1985,
    doesNotKnow: 'Whether the group is normal: a score is a distance, not a percentile.',
  },
  (value: Kilograms, mean: Kilograms, sd: Kilograms): number => (value - mean) / sd,
);

/** [years] */
const OLDEST = 120;

export interface GripTest {
  readonly sex: 'male' | 'female';
  /** In whole or broken years on the day of the test. */
  readonly age: number;
  readonly side: 'right' | 'left';
  readonly grip: Kilograms;
  /** How the trials were made one number. */
  readonly from: 'mean of three' | 'best of three';
}

export type GripScore =
  | {
      readonly kind: 'estimate';
      /** Standard score. */
      readonly value: number;
      readonly mean: Kilograms;
      readonly sd: Kilograms;
      readonly group: string;
      readonly cautions: readonly string[];
    }
  | { readonly kind: 'refused'; readonly reason: string };

const BEST_READS_HIGH = 'The norm is a mean of three trials; the best of three reads higher.';

/** A grip among people of the same age, sex and side. */
export const gripScore = method(
  {
    id: 'hand/grip-score',
    revision: 1,
    title: 'A grip among people of the same age, sex and side',
    equations: ['x_kg = 0.45359237 · x_lb', 'z = (x − m) / s'],
    inputs: [
      { name: 'age', symbol: 'a', unit: 'years', possible: [20, OLDEST], valid: [20, 90] },
      ...gripStandardScore.record.inputs.slice(0, 1),
    ],
    outputs: [gripStandardScore.record.output],
    refuses: ['An age under 20 years or over 120.', 'A grip that is not above 0 and at most 150 kg.'],
    source: MATHIOWETZ_1985,
    restsOn: [DODDS_2014],
    doesNotKnow: gripNorms.record.doesNotKnow,
  },
  ({ sex, age, side, grip: value, from }: GripTest): GripScore => {
    if (!(value > 0 && value <= 150))
      return { kind: 'refused', reason: `A grip must lie above 0 and at most at 150 kg; it is ${value}.` };
    const norm = gripNorms.rows.findLast((each) => age >= each.from);
    if (!norm) return { kind: 'refused', reason: `Norms begin at 20 years; the age is ${age}.` };
    if (age > OLDEST) return { kind: 'refused', reason: `An age must lie at most at ${OLDEST} years; it is ${age}.` };
    const people = sex === 'male' ? 'men' : 'women';
    const [mean, sd] = norm[people][side].map((pounds) => kilogramsOf(pounds * KILOGRAMS_PER_POUND)) as [
      Kilograms,
      Kilograms,
    ]; // a mean and its standard deviation stay two
    return {
      kind: 'estimate',
      value: gripStandardScore(value, mean, sd),
      mean,
      sd,
      group: `${people}, ${side}, ${norm.to === null ? `${norm.from} and over` : `${norm.from} to ${norm.to}`}`,
      cautions: from === 'best of three' ? [BEST_READS_HIGH] : [],
    };
  },
);
