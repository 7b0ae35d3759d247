import { formula } from '../formula.ts';
import { angle, length, ratio } from '../inputs.ts';
import { method } from '../method.ts';
import { bisect, type RootResult } from '../numeric/root.ts';
import { spaced, type Curve } from '../plot.ts';
import { BODY, type BodyModel } from './body-model.ts';
import { ANKLE_ALONG_FOOT, figure, type Figure, type Posture } from './planar-model.ts';
import { OUR_OWN_DESIGN } from '../sources.ts';
import { DE_LEVA_1996, FREGLY_2015, SJOBERG_2020 } from './sources.ts';
import { degrees, fraction, type Fraction, type StatureFraction } from '#units/quantity.ts';

/**
 * Moments about hip, knee and ankle at the bottom of a squat, both legs together, in body weight times stature. In
 * 1 g the body's own weight adds to the bar's; weightless, the pull on the bar is all there is, and the person stands
 * more upright under it. No single share matches every joint: that is what these numbers are shown for.
 */

export type Gravity = '1 g' | '0 g';
export type LegJoint = 'hip' | 'knee' | 'ankle';
export type JointMoments = Readonly<Record<LegJoint, number>>;

/** A weight and how far in front of the ankle it acts. */
interface Weight {
  readonly mass: number;
  readonly x: number;
}

/** The bottom of a squat without its trunk lean, which balance decides. */
export type LegPosture = Omit<Posture, 'trunkLean'>;

/** Middle of the foot in front of the ankle: where the load should stand. */
export const midFoot = ({ foot }: BodyModel): StatureFraction =>
  // A part of a length is a length.
  (ANKLE_ALONG_FOOT * foot.length) as StatureFraction;

const aboveHip = (body: BodyModel, { centres, joints }: Figure, bar: Fraction): readonly Weight[] => [
  { mass: bar + body.armsMass, x: joints.bar.x },
  { mass: body.headMass, x: centres.head.x },
  { mass: body.trunk.mass, x: centres.trunk.x },
];

const aboveKnee = (body: BodyModel, at: Figure, bar: Fraction): readonly Weight[] => [
  ...aboveHip(body, at, bar),
  { mass: 2 * body.thigh.mass, x: at.centres.thigh.x },
];

const aboveAnkle = (body: BodyModel, at: Figure, bar: Fraction): readonly Weight[] => [
  ...aboveKnee(body, at, bar),
  { mass: 2 * body.shank.mass, x: at.centres.shank.x },
];

const all = (body: BodyModel, at: Figure, bar: Fraction): readonly Weight[] => [
  ...aboveAnkle(body, at, bar),
  { mass: 2 * body.foot.mass, x: at.centres.foot.x },
];

const momentAbout = (x: number, weights: readonly Weight[]): number =>
  weights.reduce((sum, weight) => sum + weight.mass * (weight.x - x), 0);

const withLean = (legs: LegPosture, lean: number): Posture => ({ ...legs, trunkLean: degrees(lean) });

const MOST_LEAN = 80;
const LEAN_WITHIN = 1e-10;

/** Trunk lean [°] that stands balanced: bar and body over mid-foot in 1 g, the bar alone weightless. */
export const balancedTrunkLean = (body: BodyModel, legs: LegPosture, bar: Fraction, gravity: Gravity): RootResult => {
  const middle = midFoot(body);
  const inFront = (lean: number): number => {
    const at = figure(body, withLean(legs, lean));
    return gravity === '0 g' ? at.joints.bar.x - middle : momentAbout(middle, all(body, at, bar));
  };
  return bisect(inFront, { low: 0, high: MOST_LEAN, within: LEAN_WITHIN });
};

/** Extension moments in 1 g; the bar in body weights. */
export const momentsOnGround = (body: BodyModel, posture: Posture, bar: Fraction): JointMoments => {
  const at = figure(body, posture);
  const { hip, knee, ankle } = at.joints;
  return {
    hip: momentAbout(hip.x, aboveHip(body, at, bar)),
    knee: -momentAbout(knee.x, aboveKnee(body, at, bar)),
    ankle: momentAbout(ankle.x, aboveAnkle(body, at, bar)),
  };
};

/** Lever arms of a pull along the bar, by joint. */
export const leverArms = (body: BodyModel, posture: Posture): JointMoments => {
  const { hip, knee, ankle, bar } = figure(body, posture).joints;
  return { hip: bar.x - hip.x, knee: knee.x - bar.x, ankle: bar.x - ankle.x };
};

/** Extension moments weightless under a pull in body weights. */
export const momentsInFlight = (body: BodyModel, posture: Posture, pull: Fraction): JointMoments => {
  const { hip, knee, ankle } = leverArms(body, posture);
  return { hip: pull * hip, knee: pull * knee, ankle: pull * ankle };
};

/** Share of body weight that gives a joint the moment it has in 1 g. */
export const shareMatchingMoment = formula(
  {
    id: 'body-weight-share/matching-moment',
    revision: 1,
    title: 'Share of body weight that gives a joint the moment it has in 1 g',
    equation: 'M / d − bar',
    inputs: [
      ratio('moment in 1 g, over body weight and stature', 'M', [0, 5]),
      length('lever arm of the pull weightless', 'd', [0.01, 1]),
      ratio('bar in body weights', 'bar', [0, 5]),
    ],
    output: { name: 'share of body weight', symbol: 's', unit: '1' },
    source: OUR_OWN_DESIGN,
    restsOn: [FREGLY_2015, SJOBERG_2020],
    doesNotKnow: 'How this person squats; a static picture of the bottom position.',
  },
  (moment: Fraction, arm: StatureFraction, bar: Fraction): Fraction => fraction(moment / arm - bar),
);

export type MomentMatch =
  | {
      readonly kind: 'matched';
      readonly leanOnGround: number;
      readonly leanInFlight: number;
      readonly onGround: JointMoments;
      readonly arms: JointMoments;
      readonly shares: Readonly<Record<LegJoint, Fraction>>;
    }
  | { readonly kind: 'none'; readonly reason: string };

/** The bottom of the parallel squat. */
export const PARALLEL_LEGS: LegPosture = { shankLean: degrees(30), thighLean: degrees(90) };
/** 300 lb on a person of 200 lb. */
const USUAL_BAR = fraction(1.5);

/** Thigh leans that are drawn [°]: from a half squat to below level. */
const DRAWN_THIGHS = [60, 110] as const;
const DRAWN_POINTS = 9;

const sharesOverDepth = (): readonly Curve[] => {
  const matches = spaced(...DRAWN_THIGHS, DRAWN_POINTS).flatMap((lean) => {
    const match = momentMatchedShares(BODY.male, USUAL_BAR, { ...PARALLEL_LEGS, thighLean: degrees(lean) });
    return match.kind === 'matched' ? [{ lean, shares: match.shares }] : [];
  });
  return (['ankle', 'knee', 'hip'] as const).map((joint) => ({
    label: joint,
    points: matches.map(({ lean, shares }) => [lean, shares[joint]]),
  }));
};

/** Shares that match hip, knee and ankle of a balanced squat. */
export const momentMatchedShares = method(
  {
    id: 'body-weight-share/moment-matched',
    revision: 1,
    title: 'Shares that match hip, knee and ankle of a balanced squat',
    equations: [
      'trunk lean in 1 g: sum_i m_i x_i = x_mid sum_i m_i',
      'trunk lean weightless: x_bar = x_mid',
      'M_joint = sum of m_i (x_i − x_joint) over what stands above the joint, in 1 g',
      'd_joint = x_bar − x_joint, weightless; both with their sign turned at the knee',
      's_joint = M_joint / d_joint − bar',
    ],
    inputs: [
      ratio('bar in body weights', 'bar', [0, 5], [0.25, 2]),
      angle('shank lean', 'σ', [0, 90], [15, 40]),
      angle('thigh lean', 'τ', [0, 120], [60, 110]),
    ],
    outputs: (['hip', 'knee', 'ankle'] as const).map((joint) => ({
      name: `share that matches the ${joint}`,
      symbol: `s_${joint}`,
      unit: '1',
    })),
    refuses: ['No trunk lean between 0° and 80° brings the load over the middle of the foot.'],
    source: OUR_OWN_DESIGN,
    restsOn: [FREGLY_2015, SJOBERG_2020, DE_LEVA_1996],
    doesNotKnow:
      'How this person squats. A static picture of the bottom: no muscles, no motion, the pull straight down through the middle of the foot. With the legs where they are, the shares do not depend on the bar.',
    plot: {
      says: 'Ankle and knee ask for almost the whole body weight, the hip for two thirds, at any depth: no single share satisfies all three.',
      x: { name: 'thigh lean', unit: '°' },
      y: { name: 'share that matches the moment', unit: '1' },
      curves: sharesOverDepth,
    },
  },
  (body: BodyModel, bar: Fraction = USUAL_BAR, legs: LegPosture = PARALLEL_LEGS): MomentMatch => {
    const [ground, flight] = [balancedTrunkLean(body, legs, bar, '1 g'), balancedTrunkLean(body, legs, bar, '0 g')];
    if (ground.kind !== 'converged' || flight.kind !== 'converged')
      return { kind: 'none', reason: 'No trunk lean between 0° and 80° brings the load over the middle of the foot.' };
    const onGround = momentsOnGround(body, withLean(legs, ground.root), bar);
    const arms = leverArms(body, withLean(legs, flight.root));
    // A lever arm is a fraction of stature.
    const match = (joint: LegJoint): Fraction =>
      shareMatchingMoment(fraction(onGround[joint]), arms[joint] as StatureFraction, bar);
    return {
      kind: 'matched',
      leanOnGround: ground.root,
      leanInFlight: flight.root,
      onGround,
      arms,
      shares: { hip: match('hip'), knee: match('knee'), ankle: match('ankle') },
    };
  },
);
