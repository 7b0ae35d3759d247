import { printedResults, type Check } from '../check.ts';
import { BODY } from './body-model.ts';
import {
  balancedTrunkLean,
  midFoot,
  momentMatchedShares,
  momentsInFlight,
  momentsOnGround,
  PARALLEL_LEGS,
  shareMatchingMoment,
  type Gravity,
  type JointMoments,
  type LegJoint,
} from './moments.ts';
import type { Sex } from './segments.ts';
import { OUR_OWN_DESIGN, SCIPY } from '../sources.ts';
import { degrees, fraction, type StatureFraction } from '#units/quantity.ts';

/** A parallel squat with a bar of one and a half body weights. */
const BAR = fraction(1.5);
const JOINTS: readonly LegJoint[] = ['hip', 'knee', 'ankle'];

type Three = readonly [hip: number, knee: number, ankle: number];

interface Printed {
  readonly leanOnGround: number;
  readonly leanInFlight: number;
  readonly midFoot: number;
  readonly onGround: Three;
  readonly workShare: number;
  readonly atWorkShare: Three;
  readonly changeAtWorkShare: Three;
  readonly atWhole: Three;
  readonly changeAtWhole: Three;
  readonly matching: Three;
  readonly hipShareAtForty: number;
}

const PRINTED: Readonly<Record<Sex, Printed>> = {
  male: {
    leanOnGround: 35.887,
    leanInFlight: 31.139,
    midFoot: 0.0371,
    onGround: [0.3345, 0.216, 0.0919],
    workShare: 0.7175,
    atWorkShare: [0.3395, 0.1982, 0.0822],
    changeAtWorkShare: [1.5, -8.2, -10.6],
    atWhole: [0.3828, 0.2235, 0.0927],
    changeAtWhole: [14, 3.5, 0.9],
    matching: [0.685, 0.916, 0.977],
    hipShareAtForty: 0.427,
  },
  female: {
    leanOnGround: 27.499,
    leanInFlight: 24.475,
    midFoot: 0.0329,
    onGround: [0.2567, 0.2257, 0.0817],
    workShare: 0.717,
    atWorkShare: [0.2636, 0.2073, 0.0729],
    changeAtWorkShare: [2.7, -8.2, -10.8],
    atWhole: [0.2972, 0.2338, 0.0822],
    changeAtWhole: [16, 3.6, 0.6],
    matching: [0.659, 0.914, 0.983],
    hipShareAtForty: 0.437,
  },
};

const check = (title: string, compute: () => number, printed: number, within: number, because: string): Check => ({
  kind: 'series',
  title,
  compute,
  printed,
  within,
  because,
  source: OUR_OWN_DESIGN,
});

const leanOf = (sex: Sex, gravity: Gravity): number => {
  const found = balancedTrunkLean(BODY[sex], PARALLEL_LEGS, BAR, gravity);
  if (found.kind !== 'converged') throw new RangeError('The squat does not balance.');
  return found.root;
};

const matchOf = (sex: Sex) => {
  const found = momentMatchedShares(BODY[sex], BAR);
  if (found.kind === 'none') throw new RangeError(found.reason);
  return found;
};

const groundMoments = (sex: Sex): JointMoments => matchOf(sex).onGround;
const flightMoments = (sex: Sex, share: number): JointMoments =>
  momentsInFlight(BODY[sex], { ...PARALLEL_LEGS, trunkLean: degrees(leanOf(sex, '0 g')) }, fraction(BAR + share));

const change = (sex: Sex, share: number, joint: LegJoint): number =>
  100 * (flightMoments(sex, share)[joint] / groundMoments(sex)[joint] - 1);

const FOUR = 'printed to four decimals';
const OF_ROUNDED =
  'printed as a quotient of moments that were rounded to four decimals first; 0.00005 of 0.08 is 0.06 %, twice';

const rows = (
  title: string,
  printed: Three,
  compute: (joint: LegJoint) => number,
  within: (joint: LegJoint) => number,
  because: (joint: LegJoint) => string,
): readonly Check[] =>
  JOINTS.map((joint, place) =>
    check(`${title}: ${joint}`, () => compute(joint), printed[place] ?? Number.NaN, within(joint), because(joint)),
  );

const WHOLE = 1;

const hipShareAtForty = (sex: Sex): number => {
  const posture = { ...PARALLEL_LEGS, trunkLean: degrees(40) };
  const arm = momentsInFlight(BODY[sex], posture, fraction(1)).hip;
  // A moment of a pull of one body weight is its lever arm.
  return shareMatchingMoment(fraction(momentsOnGround(BODY[sex], posture, BAR).hip), arm as StatureFraction, BAR);
};

const half = (): number => 0.00005;
const four = (): string => FOUR;
const THREE = 'printed to three decimals';

const balanceOf = (sex: Sex, printed: Printed): readonly Check[] => [
  check(`Trunk lean in 1 g [°], ${sex}`, () => leanOf(sex, '1 g'), printed.leanOnGround, 0.0005, THREE),
  check(`Trunk lean in 0 g [°], ${sex}`, () => leanOf(sex, '0 g'), printed.leanInFlight, 0.0005, THREE),
  check(`Mid-foot before the ankle, ${sex}`, () => midFoot(BODY[sex]), printed.midFoot, 0.00005, FOUR),
];

const momentsOf = (sex: Sex, { onGround, atWorkShare, workShare, atWhole }: Printed): readonly Check[] => [
  ...rows(`Moment in 1 g, ${sex}`, onGround, (joint) => groundMoments(sex)[joint], half, four),
  ...rows(
    `Moment in 0 g, work-matched, ${sex}`,
    atWorkShare,
    (joint) => flightMoments(sex, workShare)[joint],
    half,
    four,
  ),
  ...rows(`Moment in 0 g, whole body weight, ${sex}`, atWhole, (joint) => flightMoments(sex, WHOLE)[joint], half, four),
];

const changesOf = (sex: Sex, { changeAtWorkShare, workShare, changeAtWhole }: Printed): readonly Check[] => [
  ...rows(
    `Change of moment [%], work-matched, ${sex}`,
    changeAtWorkShare,
    (joint) => change(sex, workShare, joint),
    (joint) => (joint === 'ankle' ? 0.17 : 0.05),
    (joint) => (joint === 'ankle' ? OF_ROUNDED : 'printed to one decimal'),
  ),
  ...rows(
    `Change of moment [%], whole body weight, ${sex}`,
    changeAtWhole,
    (joint) => change(sex, WHOLE, joint),
    (joint) => ({ hip: 0.5, knee: 0.05, ankle: 0.17 })[joint],
    (joint) => ({ hip: 'printed as a whole number', knee: 'printed to one decimal', ankle: OF_ROUNDED })[joint],
  ),
];

const TWICE_ROUNDED =
  'printed from a moment and a lever arm that were rounded to four decimals: 0.00005 / 0.033, and again for the arm';

const matchesOf = (sex: Sex, { matching, hipShareAtForty: printed }: Printed): readonly Check[] => [
  ...JOINTS.flatMap((joint, place) =>
    printedResults(
      momentMatchedShares,
      OUR_OWN_DESIGN,
      joint === 'ankle' ? 0.0035 : 0.0005,
      joint === 'ankle' ? TWICE_ROUNDED : THREE,
      [
        [
          `Share that matches the moment, ${sex}: ${joint}`,
          () => matchOf(sex).shares[joint],
          matching[place] ?? Number.NaN,
        ],
      ],
    ),
  ),
  check(`Hip share where the lean stays at 40°, ${sex}`, () => hipShareAtForty(sex), printed, 0.0005, THREE),
];

/** Leans at which the squat balances, found by Brent’s search of SciPy over geometry written a second time. */
const balancedBySciPy = (sex: Sex, onGround: number, inFlight: number): readonly Check[] =>
  printedResults(momentMatchedShares, SCIPY, 5e-7, 'printed to six decimals', [
    [`Trunk lean in 1 g [°], ${sex}, by SciPy`, () => matchOf(sex).leanOnGround, onGround],
    [`Trunk lean weightless [°], ${sex}, by SciPy`, () => matchOf(sex).leanInFlight, inFlight],
  ]);

export const momentChecks: readonly Check[] = [
  ...(['male', 'female'] as const).flatMap((sex) => {
    const printed = PRINTED[sex];
    return [balanceOf, momentsOf, changesOf, matchesOf].flatMap((of) => of(sex, printed));
  }),
  ...balancedBySciPy('male', 35.887477, 31.139218),
  ...balancedBySciPy('female', 27.499378, 24.474613),
];
