import { angle, count, length, ratio } from '../inputs.ts';
import { formula, type FormulaInput, type FormulaRecord, type Source } from '../formula.ts';
import { cosine, sine } from './planar-model.ts';
import { OUR_OWN_DESIGN } from '../sources.ts';
import { DE_LEVA_1996 } from './sources.ts';
import { fraction, type Degrees, type Fraction, type Repetitions, type StatureFraction } from '#units/quantity.ts';

/**
 * The cells of which shares of body weight are reckoned. A share is the work done on the segments over the work done
 * on the same weight at the bar: the constant pull that does the same work against gravity over the repetition.
 */

const SHARE_LIMIT =
  'Postures are typical, not this person’s; inertia and the machine’s own friction are left out. Trunk lean matters most: ± 0.04.';

const record = (
  id: string,
  title: string,
  equation: string,
  inputs: readonly FormulaInput[],
  output: FormulaRecord['output'],
  doesNotKnow = SHARE_LIMIT,
  source: Source = OUR_OWN_DESIGN,
): FormulaRecord => ({
  id: `body-weight-share/${id}`,
  revision: 1,
  title,
  equation,
  inputs,
  output,
  source,
  restsOn: [DE_LEVA_1996],
  doesNotKnow,
});

const travel = { name: 'vertical travel', symbol: 'Δ', unit: 'stature' } as const;
const share = { name: 'share of body weight', symbol: 's', unit: '1' } as const;
const lean = (name: string, symbol: string): FormulaInput => angle(name, symbol, [0, 180], [0, 110]);
const long = (name: string, symbol: string): FormulaInput => length(name, symbol);
/** A length that is divided by: a hundredth of stature is less than any bar or grip travels. */
const divisor = (name: string, symbol: string) => length(name, symbol, [0.01, 1]);
const mass = (name: string, symbol: string): FormulaInput => ratio(name, symbol);

// A sum or multiple of fractions of stature is a fraction of stature.
const stature = (value: number): StatureFraction => value as StatureFraction;

/** Drop of the far end of a segment that leans from the vertical. */
export const dropOfLeaning = formula(
  record(
    'drop-of-leaning',
    'Drop of the far end of a segment that leans from the vertical',
    'L (1 − cos φ)',
    [long('length', 'L'), lean('lean from the vertical', 'φ')],
    travel,
  ),
  (of: StatureFraction, by: Degrees): StatureFraction => stature(of * (1 - cosine(by))),
);

/** Drop of a point on a leaning segment whose near end drops too. */
export const dropAlong = formula(
  record(
    'drop-along',
    'Drop of a point on a leaning segment whose near end drops too',
    'Δ₀ + d (1 − cos φ)',
    [long('drop of the near end', 'Δ₀'), long('distance from the near end', 'd'), lean('lean from the vertical', 'φ')],
    travel,
  ),
  (near: StatureFraction, distance: StatureFraction, by: Degrees): StatureFraction =>
    stature(near + distance * (1 - cosine(by))),
);

/** Drop of a centre of mass between two ends. */
export const dropBetween = formula(
  record(
    'drop-between',
    'Drop of a centre of mass between two ends',
    'Δ_a + c (Δ_b − Δ_a)',
    [long('drop of the first end', 'Δ_a'), long('drop of the other end', 'Δ_b'), ratio('centre of mass', 'c')],
    travel,
  ),
  (first: StatureFraction, other: StatureFraction, centre: Fraction): StatureFraction =>
    stature(first + centre * (other - first)),
);

/** Part of the share that a segment makes. */
export const partOfShare = formula(
  record(
    'part',
    'Part of the share that a segment makes',
    'k m Δ / Δ_bar',
    [
      count('how many of them move', 'k', [0, 2]),
      mass('mass of one', 'm'),
      long('drop of its centre of mass', 'Δ'),
      divisor('drop of the bar', 'Δ_bar'),
    ],
    share,
  ),
  (howMany: Repetitions, of: Fraction, drop: StatureFraction, bar: StatureFraction): Fraction =>
    fraction((howMany * of * drop) / bar),
);

/** Work-matched share of a lift in which the legs bend. */
export const shareOfBending = formula(
  record(
    'of-bending',
    'Work-matched share of a lift in which the legs bend',
    'shanks + thighs + other leg + trunk + head + arms',
    ['shanks', 'thighs', 'other leg', 'trunk', 'head', 'arms'].map((part) => mass(part, part)),
    share,
  ),
  (shanks: Fraction, thighs: Fraction, otherLeg: Fraction, trunk: Fraction, head: Fraction, arms: Fraction): Fraction =>
    fraction(shanks + thighs + otherLeg + trunk + head + arms),
);

/** Of the foot's length, ball less ankle. */
const ANKLE_TO_BALL = 0.48;
const BALL = 0.73;

/** Rise of the ankle as the foot turns about its ball. */
export const riseOfAnkle = formula(
  record(
    'rise-of-ankle',
    'Rise of the ankle as the foot turns about its ball',
    '0.48 L_foot sin φ − h (1 − cos φ)',
    [long('length of the foot', 'L_foot'), long('height of the ankle', 'h'), lean('turn of the foot', 'φ')],
    travel,
    'Where this person’s ankle and ball stand: 0.25 and 0.73 of the foot’s length are our own choice.',
  ),
  (foot: StatureFraction, height: StatureFraction, turn: Degrees): StatureFraction =>
    stature(ANKLE_TO_BALL * foot * sine(turn) - height * (1 - cosine(turn))),
);

/** Rise of the centre of mass of a foot that turns about its ball. */
export const riseOfFoot = formula(
  record(
    'rise-of-foot',
    'Rise of the centre of mass of a foot that turns about its ball',
    '(0.73 − c) L_foot sin φ − 0.5 h (1 − cos φ)',
    [
      ratio('centre of mass from the heel', 'c'),
      long('length of the foot', 'L_foot'),
      long('height of the ankle', 'h'),
      lean('turn of the foot', 'φ'),
    ],
    travel,
  ),
  (centre: Fraction, foot: StatureFraction, height: StatureFraction, turn: Degrees): StatureFraction =>
    stature((BALL - centre) * foot * sine(turn) - 0.5 * height * (1 - cosine(turn))),
);

/** Work-matched share of a heel raise. */
export const shareOfHeelRaise = formula(
  record(
    'of-heel-raise',
    'Work-matched share of a heel raise',
    '1 − k m_foot (1 − Δ_foot / Δ_ankle)',
    [
      count('feet that stand', 'k', [1, 2]),
      mass('mass of one foot', 'm_foot'),
      long('rise of the foot', 'Δ_foot'),
      divisor('rise of the ankle', 'Δ_ankle'),
    ],
    share,
  ),
  (feet: Repetitions, of: Fraction, foot: StatureFraction, ankle: StatureFraction): Fraction =>
    fraction(1 - feet * of * (1 - foot / ankle)),
);

const POSTURAL =
  'What legs and back hold against weight in 1 g while the arms work: that load is not replaced, and cannot be by loading the arms.';

/** Work-matched share of presses and rows. */
export const shareOfPressOrRow = formula(
  record(
    'of-press-or-row',
    'Work-matched share of presses and rows',
    '2 (m_upper c_upper + m_fore + m_hand)',
    [
      mass('mass of an upper arm', 'm_upper'),
      ratio('its centre of mass from the shoulder', 'c_upper'),
      mass('mass of a forearm', 'm_fore'),
      mass('mass of a hand', 'm_hand'),
    ],
    share,
    POSTURAL,
  ),
  (upper: Fraction, centre: Fraction, forearm: Fraction, hand: Fraction): Fraction =>
    fraction(2 * (upper * centre + forearm + hand)),
);

/** Work-matched share of curls and elbow extensions. */
export const shareOfCurl = formula(
  record(
    'of-curl',
    'Work-matched share of curls and elbow extensions',
    '2 (m_fore c_fore L_fore / D + m_hand)',
    [
      mass('mass of a forearm', 'm_fore'),
      ratio('its centre of mass from the elbow', 'c_fore'),
      long('length of the forearm', 'L_fore'),
      mass('mass of a hand', 'm_hand'),
      divisor('elbow to grip', 'D'),
    ],
    share,
    POSTURAL,
  ),
  (forearm: Fraction, centre: Fraction, of: StatureFraction, hand: Fraction, grip: StatureFraction): Fraction =>
    fraction(2 * ((forearm * centre * of) / grip + hand)),
);

/** Work-matched share of raises with straight arms. */
export const shareOfStraightArmRaise = formula(
  record(
    'of-straight-arm-raise',
    'Work-matched share of raises with straight arms',
    '2 (m_upper c_upper L_upper + m_fore (L_upper + c_fore L_fore) + m_hand (L_upper + D)) / (L_upper + D)',
    [
      mass('mass of an upper arm', 'm_upper'),
      ratio('its centre of mass from the shoulder', 'c_upper'),
      long('length of the upper arm', 'L_upper'),
      mass('mass of a forearm', 'm_fore'),
      ratio('its centre of mass from the elbow', 'c_fore'),
      long('length of the forearm', 'L_fore'),
      mass('mass of a hand', 'm_hand'),
      divisor('elbow to grip', 'D'),
    ],
    share,
    POSTURAL,
  ),
  (
    upper: Fraction,
    upperCentre: Fraction,
    upperLength: StatureFraction,
    forearm: Fraction,
    centre: Fraction,
    of: StatureFraction,
    hand: Fraction,
    grip: StatureFraction,
  ): Fraction => {
    const reach = upperLength + grip;
    return fraction(
      (2 * (upper * upperCentre * upperLength + forearm * (upperLength + centre * of) + hand * reach)) / reach,
    );
  },
);
