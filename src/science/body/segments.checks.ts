import type { Check } from '../check.ts';
import { DE_LEVA, SEXES, WINTER, type DeLevaSegment, type Segment, type Sex } from './segments.ts';
import { DE_LEVA_1996, WINTER_1990 } from './sources.ts';

const massOf = (sex: Sex, names: readonly DeLevaSegment[]): number =>
  names.reduce((sum, name) => sum + DE_LEVA[sex].segments[name].mass, 0);

const TRUNK_PARTS = ['upper trunk', 'mid trunk', 'lower trunk'] as const;
const LIMBS = ['upper arm', 'forearm', 'hand', 'thigh', 'shank', 'foot'] as const;

const PRINTED: Readonly<Record<Sex, { readonly whole: number; readonly trunk: number }>> = {
  male: { whole: 1, trunk: 0.4346 },
  female: { whole: 0.9999, trunk: 0.4257 },
};

const sumsOf = (sex: Sex): readonly Check[] => [
  {
    kind: 'series',
    title: `Masses of all segments, ${sex}`,
    compute: () => massOf(sex, ['head', ...TRUNK_PARTS]) + 2 * massOf(sex, LIMBS),
    printed: PRINTED[sex].whole,
    within: 1e-9,
    because: 'sums of the printed percents; the female ones leave 0.01 % to rounding',
    source: DE_LEVA_1996,
  },
  {
    kind: 'series',
    title: `Upper, mid and lower trunk, ${sex}`,
    compute: () => massOf(sex, TRUNK_PARTS),
    printed: PRINTED[sex].trunk,
    within: 1e-9,
    because: 'exact but for binary fractions',
    source: DE_LEVA_1996,
  },
];

/** Lengths over stature, male and female, by name. */
const LENGTHS: Readonly<Record<DeLevaSegment, readonly [number, number]>> = {
  head: [0.1168, 0.1154],
  'head to C7': [0.1395, 0.1405],
  trunk: [0.3055, 0.3051],
  'trunk from C7': [0.3465, 0.3544],
  'trunk from shoulder': [0.2961, 0.287],
  'upper trunk': [0.098, 0.0821],
  'upper trunk from C7': [0.1391, 0.1314],
  'mid trunk': [0.1238, 0.1183],
  'lower trunk': [0.0837, 0.1046],
  'upper arm': [0.1618, 0.1586],
  forearm: [0.1545, 0.1523],
  hand: [0.0495, 0.045],
  thigh: [0.2425, 0.2124],
  shank: [0.2493, 0.2492],
  'shank to ankle': [0.2529, 0.2528],
  foot: [0.1482, 0.1316],
};

const lengthsOf = (sex: Sex): readonly Check[] =>
  Object.entries(LENGTHS).map(([name, [male, female]]) => ({
    kind: 'series',
    title: `Length of ${name} over stature, ${sex}`,
    // The names are the keys of the table above.
    compute: () => DE_LEVA[sex].segments[name as DeLevaSegment].length,
    printed: sex === 'male' ? male : female,
    within: 0.00005 + 1e-9,
    because: 'printed to four decimals',
    source: DE_LEVA_1996,
  }));

const winterMass = (): number => {
  const { 'head and neck': head, trunk, ...limbs } = WINTER.segments;
  return head.mass + trunk.mass + 2 * Object.values<Segment>(limbs).reduce((sum, { mass }) => sum + mass, 0);
};

export const segmentChecks: readonly Check[] = [
  ...SEXES.flatMap(sumsOf),
  ...SEXES.flatMap(lengthsOf),
  {
    kind: 'series',
    title: 'Masses of all segments, Winter',
    compute: winterMass,
    printed: 1,
    within: 1e-9,
    because: 'exact but for binary fractions',
    source: WINTER_1990,
  },
];
