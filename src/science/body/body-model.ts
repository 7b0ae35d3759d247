import { DE_LEVA, WINTER, type Segment, type Sex } from './segments.ts';
import type { Source } from '../formula.ts';
import { fraction, type Fraction, type StatureFraction } from '#units/quantity.ts';

/** The segments of a table in the one form that the planar model walks on. */
export interface BodyModel {
  readonly source: Source;
  /** From knee to ankle, from hip to knee, from shoulder to hip: centres are measured from the first. */
  readonly shank: Segment;
  readonly thigh: Segment;
  readonly trunk: Segment;
  readonly upperArm: Segment;
  readonly forearm: Segment;
  readonly hand: Segment;
  readonly foot: Segment;
  readonly headMass: Fraction;
  readonly hipToC7: StatureFraction;
  /** The head stays upright above C7. */
  readonly headAboveC7: StatureFraction;
  readonly headCentreAboveC7: StatureFraction;
  readonly lowerTrunkMass: Fraction;
  readonly armsMass: Fraction;
}

type Limbs = Pick<BodyModel, 'upperArm' | 'forearm' | 'hand'>;

const armsMass = ({ upperArm, forearm, hand }: Limbs): Fraction =>
  fraction(2 * (upperArm.mass + forearm.mass + hand.mass));

const deLevaModel = (sex: Sex): BodyModel => {
  const { source, segments } = DE_LEVA[sex];
  const head = segments['head to C7'];
  const limbs = { upperArm: segments['upper arm'], forearm: segments.forearm, hand: segments.hand };
  return {
    source,
    ...limbs,
    shank: segments['shank to ankle'],
    thigh: segments.thigh,
    trunk: segments['trunk from shoulder'],
    foot: segments.foot,
    headMass: head.mass,
    hipToC7: segments['trunk from C7'].length,
    headAboveC7: head.length,
    // The printed centre is measured from the vertex; a part of a length is a length.
    headCentreAboveC7: (head.length * (1 - head.centre)) as StatureFraction,
    lowerTrunkMass: segments['lower trunk'].mass,
    armsMass: armsMass(limbs),
  };
};

/** Bodies after de Leva: the ones that shares are made from. */
export const BODY: Readonly<Record<Sex, BodyModel>> = { male: deLevaModel('male'), female: deLevaModel('female') };

/** Body after Winter, one sex. Its head and neck ride at the shoulder: no C7 is tabulated above the trunk. */
export const WINTER_BODY: BodyModel = (() => {
  const { source, segments } = WINTER;
  const limbs = { upperArm: segments['upper arm'], forearm: segments.forearm, hand: segments.hand };
  const head = segments['head and neck'];
  return {
    source,
    ...limbs,
    shank: segments.shank,
    thigh: segments.thigh,
    // Printed from the trochanter; at one half it reads the same from the shoulder.
    trunk: segments.trunk,
    foot: segments.foot,
    headMass: head.mass,
    hipToC7: segments.trunk.length,
    headAboveC7: head.length,
    headCentreAboveC7: 0 as StatureFraction, // rides at the shoulder
    // Pelvis, printed mass.
    lowerTrunkMass: fraction(0.142),
    armsMass: armsMass(limbs),
  };
})();
