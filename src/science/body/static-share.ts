import { formula, type FormulaRecord } from '../formula.ts';
import { ratio } from '../inputs.ts';
import { BODY, type BodyModel } from './body-model.ts';
import { OUR_OWN_DESIGN } from '../sources.ts';
import { DE_LEVA_1996 } from './sources.ts';
import type { Sex } from './segments.ts';
import { fraction, type Fraction } from '#units/quantity.ts';

/** Static shares: the part of body mass that stands above a joint, which is what the joint carries in 1 g. */

export const LEVELS = [
  'feet',
  'above both ankles',
  'above both knees',
  'above both hips',
  'above L5/S1',
  'above the navel',
  'both arms',
  'both forearms and hands',
  'above the stance ankle',
  'above the stance knee',
] as const;

export type Level = (typeof LEVELS)[number];

const record = (id: string, title: string, equation: string, inputs: readonly string[]): FormulaRecord => ({
  id: `static-share/${id}`,
  revision: 1,
  title,
  equation,
  inputs: inputs.map((each) => ratio(each, each)),
  output: { name: 'static share', symbol: 's', unit: '1' },
  source: OUR_OWN_DESIGN,
  restsOn: [DE_LEVA_1996],
  doesNotKnow: 'Muscle forces, several times larger at the low back, are not in it.',
});

/** Part of body mass above a pair of joints of the legs. */
export const shareAboveLegs = formula(
  record('above-legs', 'Part of body mass above a pair of joints of the legs', '1 − 2 m_below', ['m_below']),
  (belowOnOneSide: Fraction): Fraction => fraction(1 - 2 * belowOnOneSide),
);

/** Part of body mass above a joint of the leg that stands on one foot. */
export const shareAboveStanceLeg = formula(
  record('above-stance-leg', 'Part of body mass above a joint of the leg that stands on one foot', '1 − m_below', [
    'm_below',
  ]),
  (below: Fraction): Fraction => fraction(1 - below),
);

/** Of the lower trunk, the part that stands above L5/S1: our own choice, it reproduces 0.536 of Winter's table. */
const LOWER_TRUNK_ABOVE_L5 = 0.4;

/** Part of body mass above L5/S1. */
export const shareAboveL5 = formula(
  record('above-l5', 'Part of body mass above L5/S1', 'm_head + m_trunk + m_arms − 0.6 m_lower', [
    'm_head',
    'm_trunk',
    'm_arms',
    'm_lower',
  ]),
  (head: Fraction, trunk: Fraction, arms: Fraction, lowerTrunk: Fraction): Fraction =>
    fraction(head + trunk + arms - (1 - LOWER_TRUNK_ABOVE_L5) * lowerTrunk),
);

/** Part of body mass above the navel. */
export const shareAboveNavel = formula(
  record('above-navel', 'Part of body mass above the navel', 'm_head + m_trunk + m_arms − m_lower', [
    'm_head',
    'm_trunk',
    'm_arms',
    'm_lower',
  ]),
  (head: Fraction, trunk: Fraction, arms: Fraction, lowerTrunk: Fraction): Fraction =>
    fraction(head + trunk + arms - lowerTrunk),
);

const SHARES: Readonly<Record<Level, (body: BodyModel) => Fraction>> = {
  feet: () => fraction(1),
  'above both ankles': ({ foot }) => shareAboveLegs(foot.mass),
  'above both knees': ({ foot, shank }) => shareAboveLegs(fraction(foot.mass + shank.mass)),
  'above both hips': ({ foot, shank, thigh }) => shareAboveLegs(fraction(foot.mass + shank.mass + thigh.mass)),
  'above L5/S1': (body) => shareAboveL5(body.headMass, body.trunk.mass, body.armsMass, body.lowerTrunkMass),
  'above the navel': (body) => shareAboveNavel(body.headMass, body.trunk.mass, body.armsMass, body.lowerTrunkMass),
  'both arms': ({ armsMass }) => armsMass,
  'both forearms and hands': ({ forearm, hand }) => fraction(2 * (forearm.mass + hand.mass)),
  'above the stance ankle': ({ foot }) => shareAboveStanceLeg(foot.mass),
  'above the stance knee': ({ foot, shank }) => shareAboveStanceLeg(fraction(foot.mass + shank.mass)),
};

/** Static share at a level. */
export const staticShare = (level: Level, sex: Sex): Fraction => SHARES[level](BODY[sex]);

/** The same from another table of segments. */
export const staticShareOf = (level: Level, body: BodyModel): Fraction => SHARES[level](body);

/** Share that matches the load of the lowest joint which moves, or why no joint stands for the lift. */
export type JointShare =
  | { readonly kind: 'share'; readonly share: Fraction; readonly at: Level }
  | { readonly kind: 'none'; readonly reason: string };

export const jointShare = (at: Level, sex: Sex): JointShare => ({ kind: 'share', share: staticShare(at, sex), at });
