import { printedResults, type Check } from '../check.ts';
import { BODY, WINTER_BODY, type BodyModel } from './body-model.ts';
import { BOTTOM_POSTURES, type LegLift } from './postures.ts';
import { SEXES, type Sex } from './segments.ts';
import { bendingShare } from './share-reckonings.ts';
import {
  shareAboveL5,
  shareAboveLegs,
  shareAboveNavel,
  shareAboveStanceLeg,
  staticShare,
  type Level,
} from './static-share.ts';
import { bendingGivens, bodyWeightShare, workShareInPosture, workShareOf, type ShareModel } from './work-share.ts';
import { OUR_OWN_DESIGN } from '../sources.ts';
import { WINTER_1990 } from './sources.ts';
import { degrees } from '#units/quantity.ts';

const FOUR_DECIMALS = 'printed to four decimals';

type Pair = readonly [male: number, female: number];
const of = (pair: Pair, sex: Sex): number => (sex === 'male' ? pair[0] : pair[1]);

const series = (
  title: string,
  compute: () => number,
  printed: number,
  within: number,
  because: string,
  source = OUR_OWN_DESIGN,
): Check => ({ kind: 'series', title, compute, printed, within, because, source });

// Static shares

const STATIC: Readonly<Record<Level, Pair>> = {
  feet: [1, 1],
  'above both ankles': [0.9726, 0.9742],
  'above both knees': [0.886, 0.878],
  'above both hips': [0.6028, 0.5824],
  'above L5/S1': [0.5358, 0.5075],
  'above the navel': [0.4911, 0.4576],
  'both arms': [0.0988, 0.0898],
  'both forearms and hands': [0.0446, 0.0388],
  'above the stance ankle': [0.9863, 0.9871],
  'above the stance knee': [0.943, 0.939],
};

/** Winter's own table, with the pelvis wholly under the hip joints of ours. */
const STATIC_WINTER: readonly (readonly [string, number, number])[] = [
  ['ankles', 1 - 2 * WINTER_BODY.foot.mass, 0.971],
  ['knees', 1 - 2 * (WINTER_BODY.foot.mass + WINTER_BODY.shank.mass), 0.878],
  ['hips', WINTER_BODY.headMass + WINTER_BODY.trunk.mass + WINTER_BODY.armsMass, 0.678],
  ['L4/L5', WINTER_BODY.headMass + WINTER_BODY.trunk.mass + WINTER_BODY.armsMass - WINTER_BODY.lowerTrunkMass, 0.536],
  ['arms', WINTER_BODY.armsMass, 0.1],
  ['forearms and hands', 2 * (WINTER_BODY.forearm.mass + WINTER_BODY.hand.mass), 0.044],
];

export const staticShareChecks: readonly Check[] = [
  ...SEXES.flatMap((sex) =>
    Object.entries(STATIC).map(([level, pair]) =>
      series(
        `Static share ${level}, ${sex}`,
        // The levels are the keys of the table above.
        () => staticShare(level as Level, sex),
        of(pair, sex),
        0.00005 + 1e-9,
        FOUR_DECIMALS,
      ),
    ),
  ),
  ...STATIC_WINTER.map(([level, value, printed]) =>
    series(
      `Static share, Winter: ${level}`,
      () => value,
      printed,
      0.0005 + 1e-9,
      'printed to three decimals',
      WINTER_1990,
    ),
  ),
  ...(
    [
      [shareAboveLegs, [0.057], 0.886],
      [shareAboveStanceLeg, [0.057], 0.943],
      [shareAboveL5, [0.0694, 0.4346, 0.0988, 0.1117], 0.5358],
      [shareAboveNavel, [0.0694, 0.4346, 0.0988, 0.1117], 0.4911],
    ] as const
  ).map(([formula, given, printed]): Check => ({
    kind: 'formula',
    formula,
    given,
    printed,
    within: 0.00005 + 1e-9,
    because: FOUR_DECIMALS,
    source: OUR_OWN_DESIGN,
  })),
];

// Work-matched shares

const WORK: Readonly<Record<Exclude<ShareModel, 'none'>, Pair>> = {
  'back squat, half': [0.7175, 0.7175],
  'back squat, parallel': [0.7175, 0.717],
  'back squat, deep': [0.7314, 0.7315],
  'single-leg squat': [0.7897, 0.7863],
  'split squat': [0.8453, 0.8443],
  deadlift: [0.6014, 0.5993],
  'Romanian deadlift': [0.4595, 0.4656],
  'heel raise': [0.9896, 0.993],
  'single-leg heel raise': [0.9948, 0.9965],
  'press or row': [0.0759, 0.0681],
  curl: [0.024, 0.0215],
  'straight-arm raise': [0.0476, 0.043],
};

const JOINT: readonly (readonly [ShareModel, Pair])[] = [
  ['back squat, parallel', [0.886, 0.878]],
  ['single-leg squat', [0.943, 0.939]],
  ['deadlift', [0.886, 0.878]],
  ['Romanian deadlift', [0.603, 0.582]],
  ['heel raise', [0.973, 0.974]],
  ['single-leg heel raise', [0.986, 0.987]],
  ['press or row', [0.099, 0.09]],
  ['curl', [0.045, 0.039]],
  ['straight-arm raise', [0.099, 0.09]],
];

const jointShareOf = (model: ShareModel, sex: Sex): number => {
  const found = bodyWeightShare(model, sex).static;
  if (found.kind === 'none') throw new RangeError(found.reason);
  return found.share;
};

const WINTER_WORK: readonly (readonly [ShareModel, number])[] = [
  ['back squat, parallel', 0.734],
  ['back squat, half', 0.733],
  ['deadlift', 0.616],
  ['Romanian deadlift', 0.465],
  ['press or row', 0.068],
];

export const workShareChecks: readonly Check[] = [
  ...SEXES.flatMap((sex) =>
    printedResults(
      bodyWeightShare,
      OUR_OWN_DESIGN,
      0.00005 + 1e-9,
      FOUR_DECIMALS,
      Object.entries(WORK).map(([model, pair]) => [
        `Work-matched share: ${model}, ${sex}`,
        // The models are the keys of the table above.
        () => bodyWeightShare(model as ShareModel, sex).work,
        of(pair, sex),
      ]),
    ),
  ),
  ...SEXES.flatMap((sex) =>
    printedResults(
      bodyWeightShare,
      OUR_OWN_DESIGN,
      0.0005 + 1e-9,
      'printed to three decimals',
      JOINT.map(([model, pair]) => [
        `Joint-matched share: ${model}, ${sex}`,
        () => jointShareOf(model, sex),
        of(pair, sex),
      ]),
    ),
  ),
  ...WINTER_WORK.map(([model, printed]) =>
    series(
      `Work-matched share: ${model}, Winter`,
      () => workShareOf(model, WINTER_BODY),
      printed,
      0.0005,
      'printed to three decimals',
      WINTER_1990,
    ),
  ),
];

// Inside the parallel squat

const parallel = (body: BodyModel) => bendingShare.reckon(bendingGivens(body, 'back squat, parallel'));
const MALE_MM = 1741;
const FEMALE_MM = 1735;

const TRAVEL_MM = [
  ['shankDrop', 33.063],
  ['thighDrop', 308.298],
  ['hipDrop', 481.189],
  ['trunkDrop', 549.813],
  ['c7Drop', 622.334],
  ['barDrop', 601.793],
] as const;

const COMPOSITION = [
  ['trunk', 0.3971],
  ['thighs', 0.1451],
  ['arms', 0.0988],
  ['head', 0.0718],
  ['shanks', 0.0048],
] as const;

const deadliftTravel = (): number => MALE_MM * bendingShare.reckon(bendingGivens(BODY.male, 'deadlift')).barDrop;

export const squatInsideChecks: readonly Check[] = [
  ...TRAVEL_MM.map(([column, printed]) =>
    series(
      `Parallel squat, male of 1741 mm: ${column} [mm]`,
      () => MALE_MM * parallel(BODY.male)[column],
      printed,
      0.0005 + 1e-9,
      'printed to a thousandth of a millimetre',
    ),
  ),
  series(
    'Parallel squat, female of 1735 mm: barDrop [mm]',
    () => FEMALE_MM * parallel(BODY.female).barDrop,
    543.75,
    0.005,
    'printed to two decimals',
  ),
  series(
    'Parallel squat, male: barDrop over stature',
    () => parallel(BODY.male).barDrop,
    0.3457,
    0.00005,
    FOUR_DECIMALS,
  ),
  series('Deadlift, male of 1741 mm: barDrop [mm]', deadliftTravel, 590, 5, 'printed as 0.59 m'),
  ...COMPOSITION.map(([column, printed]) =>
    series(
      `Parallel squat, male: part of the ${column}`,
      () => parallel(BODY.male)[column],
      printed,
      0.00005,
      FOUR_DECIMALS,
    ),
  ),
];

// What posture does

const LEANS = [20, 30, 40, 50] as const;
/** Male shares at a shank lean of 30°, by thigh lean and trunk lean. */
const SENSITIVITY: readonly (readonly [thighLean: number, shares: readonly number[]])[] = [
  [60, [0.767, 0.729, 0.689, 0.652]],
  [90, [0.768, 0.745, 0.717, 0.69]],
  [105, [0.769, 0.749, 0.726, 0.701]],
];

const LIFT: LegLift = 'back squat, parallel';
const shareAt = (body: BodyModel, thighLean: number, trunkLean: number): number =>
  workShareInPosture(LIFT, body, {
    ...BOTTOM_POSTURES[LIFT],
    thighLean: degrees(thighLean),
    trunkLean: degrees(trunkLean),
  });

export const postureChecks: readonly Check[] = SENSITIVITY.flatMap(([thighLean, shares]) =>
  LEANS.flatMap((lean, place): readonly Check[] => {
    const printed = shares[place] ?? Number.NaN;
    const title = `Share of a squat, thigh lean ${thighLean}°, trunk lean ${lean}°`;
    return [
      series(`${title}, male`, () => shareAt(BODY.male, thighLean, lean), printed, 0.0005, 'printed to three decimals'),
      series(
        `${title}, female`,
        () => shareAt(BODY.female, thighLean, lean),
        printed,
        0.003,
        'female shares are said to lie within 0.003 of the male ones',
      ),
    ];
  }),
);
