import { DE_LEVA_1996, WINTER_1990 } from './sources.ts';
import type { Source } from '../formula.ts';
import { fraction, type Fraction, type StatureFraction } from '#units/quantity.ts';

/** Masses, centres of mass and lengths of body segments, as printed. Limbs are per side. */

export type Sex = 'female' | 'male';
export const SEXES: readonly Sex[] = ['female', 'male'];

export interface Segment {
  readonly name: string;
  /** The end from which the centre is measured, and the other. */
  readonly ends: readonly [string, string];
  /** Of body mass. */
  readonly mass: Fraction;
  /** Of the segment's length, from its first-named end. */
  readonly centre: Fraction;
  readonly length: StatureFraction;
}

export interface SegmentTable<Name extends string> {
  readonly source: Source;
  readonly sample: string;
  readonly segments: Readonly<Record<Name, Segment>>;
}

/** One printed row: mass %, centre %, length mm, each male and female. */
type PrintedRow = readonly [
  ends: readonly [string, string],
  mass: readonly [number, number],
  centre: readonly [number, number],
  millimetres: readonly [number, number],
];

const PRINTED = {
  head: [
    ['vertex', 'mid-gonion'],
    [6.94, 6.68],
    [59.76, 58.94],
    [203.3, 200.2],
  ],
  'head to C7': [
    ['vertex', 'C7'],
    [6.94, 6.68],
    [50.02, 48.41],
    [242.9, 243.7],
  ],
  trunk: [
    ['suprasternale', 'mid-hip'],
    [43.46, 42.57],
    [44.86, 41.51],
    [531.9, 529.3],
  ],
  'trunk from C7': [
    ['C7', 'mid-hip'],
    [43.46, 42.57],
    [51.38, 49.64],
    [603.3, 614.8],
  ],
  'trunk from shoulder': [
    ['mid-shoulder', 'mid-hip'],
    [43.46, 42.57],
    [43.1, 37.82],
    [515.5, 497.9],
  ],
  'upper trunk': [
    ['suprasternale', 'xiphoid'],
    [15.96, 15.45],
    [29.99, 20.77],
    [170.7, 142.5],
  ],
  'upper trunk from C7': [
    ['C7', 'xiphoid'],
    [15.96, 15.45],
    [50.66, 50.5],
    [242.1, 228.0],
  ],
  'mid trunk': [
    ['xiphoid', 'omphalion'],
    [16.33, 14.65],
    [45.02, 45.12],
    [215.5, 205.3],
  ],
  'lower trunk': [
    ['omphalion', 'mid-hip'],
    [11.17, 12.47],
    [61.15, 49.2],
    [145.7, 181.5],
  ],
  'upper arm': [
    ['shoulder', 'elbow'],
    [2.71, 2.55],
    [57.72, 57.54],
    [281.7, 275.1],
  ],
  forearm: [
    ['elbow', 'wrist'],
    [1.62, 1.38],
    [45.74, 45.59],
    [268.9, 264.3],
  ],
  hand: [
    ['wrist', 'third knuckle'],
    [0.61, 0.56],
    [79.0, 74.74],
    [86.2, 78.0],
  ],
  thigh: [
    ['hip', 'knee'],
    [14.16, 14.78],
    [40.95, 36.12],
    [422.2, 368.5],
  ],
  shank: [
    ['knee', 'lateral malleolus'],
    [4.33, 4.81],
    [44.59, 44.16],
    [434.0, 432.3],
  ],
  'shank to ankle': [
    ['knee', 'ankle'],
    [4.33, 4.81],
    [43.95, 43.52],
    [440.3, 438.6],
  ],
  foot: [
    ['heel', 'toe tip'],
    [1.37, 1.29],
    [44.15, 40.14],
    [258.1, 228.3],
  ],
} as const satisfies Readonly<Record<string, PrintedRow>>;

export type DeLevaSegment = keyof typeof PRINTED;

/** Mean stature of the sample [mm], male and female. */
const SAMPLE_STATURE_MM = [1741, 1735] as const;

// A printed length over the sample's stature is a fraction of stature.
const statureFraction = (value: number): StatureFraction => value as StatureFraction;

const table = (side: 0 | 1): Readonly<Record<DeLevaSegment, Segment>> =>
  Object.fromEntries(
    Object.entries<PrintedRow>(PRINTED).map(([name, [ends, mass, centre, millimetres]]) => [
      name,
      {
        name,
        ends,
        mass: fraction(mass[side] / 100),
        centre: fraction(centre[side] / 100),
        length: statureFraction(millimetres[side] / SAMPLE_STATURE_MM[side]),
      },
    ]),
    // One segment for each printed row.
  ) as Record<DeLevaSegment, Segment>;

/** Segments after de Leva (1996), by sex. Thighs of the female sample are short: its hip centre was found by another rule. */
export const DE_LEVA: Readonly<Record<Sex, SegmentTable<DeLevaSegment>>> = {
  male: { source: DE_LEVA_1996, sample: '100 young athletic men, mean 1.741 m and 73.0 kg', segments: table(0) },
  female: { source: DE_LEVA_1996, sample: '15 young athletic women, mean 1.735 m and 61.9 kg', segments: table(1) },
};

const winter = (
  name: string,
  ends: readonly [string, string],
  mass: number,
  centre: number,
  length: number,
): Segment => ({
  name,
  ends,
  mass: fraction(mass),
  centre: fraction(centre),
  length: statureFraction(length),
});

export type WinterSegment = 'head and neck' | 'trunk' | 'upper arm' | 'forearm' | 'hand' | 'thigh' | 'shank' | 'foot';

/** Segments after Dempster as tabulated by Winter (1990), one sex only; used to see how much the table matters. */
export const WINTER: SegmentTable<WinterSegment> = {
  source: WINTER_1990,
  sample: 'Eight cadavers of men, after Dempster',
  segments: {
    'head and neck': winter('head and neck', ['C7 to T1', 'ear canal'], 0.081, 1, 0.182),
    trunk: winter('trunk', ['greater trochanter', 'glenohumeral joint'], 0.497, 0.5, 0.288),
    'upper arm': winter('upper arm', ['glenohumeral joint', 'elbow'], 0.028, 0.436, 0.186),
    forearm: winter('forearm', ['elbow', 'ulnar styloid'], 0.016, 0.43, 0.146),
    hand: winter('hand', ['wrist', 'second knuckle of the third finger'], 0.006, 0.506, 0.108),
    thigh: winter('thigh', ['greater trochanter', 'femoral condyles'], 0.1, 0.433, 0.245),
    shank: winter('shank', ['femoral condyles', 'malleolus'], 0.0465, 0.433, 0.246),
    foot: winter('foot', ['malleolus', 'second metatarsal head'], 0.0145, 0.5, 0.152),
  },
};
