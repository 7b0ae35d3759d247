import type { FormulaInput } from '../formula.ts';
import { angle, length } from '../inputs.ts';
import { method } from '../method.ts';
import { spaced, type Curve } from '../plot.ts';
import { LEE_2004, OUR_OWN_DESIGN } from '../sources.ts';
import { BODY, type BodyModel } from './body-model.ts';
import { ANKLE_HEIGHT, type Posture } from './planar-model.ts';
import { BOTTOM_POSTURES, type LegLift } from './postures.ts';
import type { Columns, Reckoning, SpelledCell } from '../reckoning.ts';
import type { Sex } from './segments.ts';
import {
  bendingShare,
  curlShare,
  heelRaiseShare,
  pressOrRowShare,
  straightArmRaiseShare,
  type ArmGivens,
  type BendingGivens,
  type HeelRaiseGivens,
} from './share-reckonings.ts';
import { DE_LEVA_1996, WINTER_1990 } from './sources.ts';
import { jointShare, type JointShare, type Level } from './static-share.ts';
import { degrees, fraction, repetitions, type Fraction, type StatureFraction } from '#units/quantity.ts';

/** Which model gives the share of body weight that a lift moves in 1 g. */
export type ShareModel =
  LegLift | 'heel raise' | 'single-leg heel raise' | 'press or row' | 'curl' | 'straight-arm raise' | 'none';

export const SHARE_MODELS: readonly ShareModel[] = [
  'back squat, half',
  'back squat, parallel',
  'back squat, deep',
  'single-leg squat',
  'split squat',
  'deadlift',
  'Romanian deadlift',
  'heel raise',
  'single-leg heel raise',
  'press or row',
  'curl',
  'straight-arm raise',
  'none',
];

/** How far the foot turns in a full heel raise; our own choice, the share hardly depends on it. */
const HEEL_RAISE_TURN = degrees(35);
const STANDS_STILL = 0 as StatureFraction; // the ankle of a foot that does not move

/** Mass of the leg that does not bend with the lift, as a mass that moves with the hip. */
const otherLegMass = ({ thigh, shank, foot }: BodyModel, lift: LegLift): Fraction => {
  if (lift === 'single-leg squat') return fraction(thigh.mass + shank.mass + foot.mass);
  // The rear shank turns about the ankle; the rear foot stays.
  if (lift === 'split squat') return fraction(thigh.mass + shank.mass * (1 - shank.centre));
  return fraction(0);
};

/** Numbers that the share of a lift is reckoned from. */
export const bendingGivens = (
  body: BodyModel,
  lift: LegLift,
  posture: Posture = BOTTOM_POSTURES[lift],
): BendingGivens => ({
  ...posture,
  shankLength: body.shank.length,
  thighLength: body.thigh.length,
  hipToShoulder: body.trunk.length,
  hipToC7: body.hipToC7,
  shankCentre: body.shank.centre,
  thighCentre: body.thigh.centre,
  trunkCentre: body.trunk.centre,
  shankMass: body.shank.mass,
  thighMass: body.thigh.mass,
  trunkMass: body.trunk.mass,
  headMass: body.headMass,
  armsMass: body.armsMass,
  otherLegMass: otherLegMass(body, lift),
  bendingLegs: repetitions(lift === 'single-leg squat' || lift === 'split squat' ? 1 : 2),
  once: repetitions(1),
  ankleDrop: STANDS_STILL,
});

export const heelRaiseGivens = ({ foot }: BodyModel, feet: 1 | 2): HeelRaiseGivens => ({
  turn: HEEL_RAISE_TURN,
  footLength: foot.length,
  ankleHeight: ANKLE_HEIGHT,
  footCentre: foot.centre,
  footMass: foot.mass,
  feet: repetitions(feet),
});

export const armGivens = ({ upperArm, forearm, hand }: BodyModel): ArmGivens => ({
  upperArmMass: upperArm.mass,
  upperArmCentre: upperArm.centre,
  upperArmLength: upperArm.length,
  forearmMass: forearm.mass,
  forearmCentre: forearm.centre,
  forearmLength: forearm.length,
  handMass: hand.mass,
  // The grip lies at the centre of mass of the hand.
  elbowToGrip: (forearm.length + hand.centre * hand.length) as StatureFraction,
});

export type ShareWorking =
  | {
      readonly kind: 'reckoned';
      readonly name: string;
      readonly givens: Readonly<Record<string, number>>;
      readonly cells: readonly SpelledCell[];
    }
  | { readonly kind: 'none'; readonly reason: string };

interface Reckoned {
  readonly share: Fraction;
  readonly working: ShareWorking;
}

const reckoned = <Given extends Columns>(
  of: Reckoning<Given, Given & { readonly share: Fraction }>,
  givens: Given,
): Reckoned => {
  const row = of.row(givens);
  return {
    // The column holds fractions.
    share: row[of.place('share')] as Fraction,
    working: { kind: 'reckoned', name: of.name, givens, cells: of.spell(row, 0) },
  };
};

const NO_BODY_WEIGHT = 'The lift moves no body weight that weightlessness takes away.';

const reckonShare = (model: ShareModel, body: BodyModel): Reckoned => {
  switch (model) {
    case 'none':
      return { share: fraction(0), working: { kind: 'none', reason: NO_BODY_WEIGHT } };
    case 'heel raise':
      return reckoned(heelRaiseShare, heelRaiseGivens(body, 2));
    case 'single-leg heel raise':
      return reckoned(heelRaiseShare, heelRaiseGivens(body, 1));
    case 'press or row':
      return reckoned(pressOrRowShare, armGivens(body));
    case 'curl':
      return reckoned(curlShare, armGivens(body));
    case 'straight-arm raise':
      return reckoned(straightArmRaiseShare, armGivens(body));
    case 'back squat, half':
    case 'back squat, parallel':
    case 'back squat, deep':
    case 'single-leg squat':
    case 'split squat':
    case 'deadlift':
    case 'Romanian deadlift':
      return reckoned(bendingShare, bendingGivens(body, model));
  }
};

/** The lowest joint that moves. In a split squat two feet carry unequal parts, and no joint stands for the lift. */
const LOWEST_MOVING: Readonly<Record<ShareModel, Level | { readonly none: string }>> = {
  'back squat, half': 'above both knees',
  'back squat, parallel': 'above both knees',
  'back squat, deep': 'above both knees',
  'single-leg squat': 'above the stance knee',
  'split squat': { none: 'Two feet carry unequal parts: no joint stands for the lift.' },
  deadlift: 'above both knees',
  'Romanian deadlift': 'above both hips',
  'heel raise': 'above both ankles',
  'single-leg heel raise': 'above the stance ankle',
  'press or row': 'both arms',
  curl: 'both forearms and hands',
  'straight-arm raise': 'both arms',
  none: { none: NO_BODY_WEIGHT },
};

const jointShareOf = (model: ShareModel, sex: Sex): JointShare => {
  const at = LOWEST_MOVING[model];
  return typeof at === 'string' ? jointShare(at, sex) : { kind: 'none', reason: at.none };
};

export interface BodyWeightShare {
  /** Work-matched. */
  readonly work: Fraction;
  /** Joint-matched: what the lowest moving joint carries. */
  readonly static: JointShare;
  readonly working: ShareWorking;
}

const shareOf = (model: ShareModel, sex: Sex): BodyWeightShare => {
  const { share, working } = reckonShare(model, BODY[sex]);
  return { work: share, static: jointShareOf(model, sex), working };
};

// Two sexes and thirteen models are reckoned once; the rows are small and never change.
const SHARES: Readonly<Record<Sex, ReadonlyMap<ShareModel, BodyWeightShare>>> = {
  female: new Map(SHARE_MODELS.map((model) => [model, shareOf(model, 'female')])),
  male: new Map(SHARE_MODELS.map((model) => [model, shareOf(model, 'male')])),
};

const mass: FormulaInput = { name: 'mass of a segment', symbol: 'm_i', unit: '1', possible: [0, 1], valid: [0, 0.5] };
const centre: FormulaInput = {
  name: 'centre of a segment along it',
  symbol: 'c_i',
  unit: '1',
  possible: [0, 1],
  valid: [0.3, 0.8],
};

/** Thigh and trunk leans that are drawn [°]; shanks lean by 30° in all of them. */
const DRAWN_THIGHS = [60, 90, 105] as const;
const DRAWN_TRUNK = [10, 60] as const;
const DRAWN_POINTS = 11;

const sharesOverLean = (): readonly Curve[] =>
  DRAWN_THIGHS.map((thighLean) => ({
    label: `thighs ${thighLean}° from the vertical`,
    points: spaced(...DRAWN_TRUNK, DRAWN_POINTS).map((trunkLean) => [
      trunkLean,
      workShareInPosture('back squat, parallel', BODY.male, {
        ...BOTTOM_POSTURES['back squat, parallel'],
        thighLean: degrees(thighLean),
        trunkLean: degrees(trunkLean),
      }),
    ]),
  }));

/** Share of body weight that a lift moves in 1 g: work-matched, joint-matched, and the working. A look-up. */
export const bodyWeightShare = method(
  {
    id: 'body-weight-share/of-lift',
    revision: 1,
    title: 'Share of body weight that a lift moves in 1 g',
    equations: ['s_work = sum_i m_i Δ_i / Δ_bar', 's_joint = the part of body mass above the lowest joint that moves'],
    inputs: [
      angle('shank lean', 'σ', [0, 90], [0, 45]),
      angle('thigh lean', 'τ', [0, 120], [20, 110]),
      angle('trunk lean', 'κ', [0, 90], [0, 80]),
      mass,
      length('length of a segment', 'L_i', [0, 1], [0.02, 0.5]),
      centre,
    ],
    outputs: [
      { name: 'work-matched share', symbol: 's_work', unit: '1' },
      { name: 'joint-matched share', symbol: 's_joint', unit: '1' },
    ],
    refuses: [
      'A model that is not in the list, by its name.',
      'A joint-matched share of a split squat: two feet carry unequal parts.',
    ],
    source: OUR_OWN_DESIGN,
    restsOn: [DE_LEVA_1996, WINTER_1990, LEE_2004],
    doesNotKnow:
      'How this person squats: postures are typical, and trunk lean matters more than depth, about ± 0.04. Another table of segments moves a share by 0.02 at most. No single share restores work, moments and the load on every joint at once.',
    plot: {
      says: 'The more the trunk leans at the bottom, the smaller the share; how deep the thighs go matters less.',
      x: { name: 'trunk lean at the bottom', unit: '°' },
      y: { name: 'work-matched share', unit: '1' },
      curves: sharesOverLean,
    },
  },
  (model: ShareModel, sex: Sex): BodyWeightShare => {
    const found = SHARES[sex].get(model);
    if (!found) throw new RangeError(`No share model is called "${model}".`);
    return found;
  },
);

/** Work-matched share of any body, for comparing tables of segments. */
export const workShareOf = (model: ShareModel, body: BodyModel): Fraction => reckonShare(model, body).share;

/** Work-matched share of a leg lift in another posture. */
export const workShareInPosture = (lift: LegLift, body: BodyModel, posture: Posture): Fraction =>
  bendingShare.reckon(bendingGivens(body, lift, posture)).share;
