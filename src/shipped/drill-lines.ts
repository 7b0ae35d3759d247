import { singleLegStand, tandemStand, tandemWalk } from './exercises/balance.ts';
import { overgroundWalk } from './exercises/endurance.ts';
import { gluteBridge, hipHingeDrill } from './exercises/hinges.ts';
import { countermovementJump } from './exercises/jumps.ts';
import { singleLegHeelRaise } from './exercises/lower-body.ts';
import {
  ankleRock,
  catCamel,
  hipFlexorStretch,
  hipRotation,
  shoulderSlide,
  thoracicRotation,
  wristRock,
} from './exercises/mobility.ts';
import { cordRow } from './exercises/presses-and-pulls.ts';
import { bandPullApart, externalRotation, scapularRow, yRaise } from './exercises/shoulder-care.ts';
import { bodyWeightSquat, boxSquat, sitToStand } from './exercises/squats.ts';
import { reverseLunge, stepUp } from './exercises/steps.ts';
import { birdDog, deadBug, pallofPress, sideHold } from './exercises/trunk.ts';
import { drillSets, held, repeated, type DrillLine } from './piece-line.ts';

const EASY = [2, 4] as const;

/** By name: the track of a drill is its exercise. */
const drill = (
  name: string,
  exercise: DrillLine['exercise'],
  machineKind: DrillLine['machineKind'],
  sets: DrillLine['sets'],
  shouldFeel: readonly [number, number],
  source: string,
): DrillLine => ({
  name,
  track: name.replaceAll('-', ' '),
  exercise,
  machineKind,
  condition: 'everyone',
  sets,
  target: null,
  shouldFeel,
  source,
});

const SHOULDERS =
  'Care of the shoulders two to three times a week: turning out 3 × 8 to 16, rows of the blades, Y and T 2 to 3 × 12 to 15; such a programme made shoulder problems rarer in 660 handball players (Andersson 2017, Br J Sports Med 51:1073–1080, seen). Sets fewer, for time: our own design.';

export const PULL_APART = drill('pull-apart', bandPullApart, 'band', drillSets(2, repeated(15), 20), [3, 5], SHOULDERS);
export const TURN_OUT = drill('turn-out', externalRotation, 'band', drillSets(2, repeated(12), 10), [3, 5], SHOULDERS);
export const BLADE_ROW = drill('blade-row', scapularRow, 'band', drillSets(2, repeated(12), 20), [3, 5], SHOULDERS);
export const Y_RAISE = drill('y-raise', yRaise, 'band', drillSets(2, repeated(12), 20), [3, 5], SHOULDERS);

const MOBILITY = 'A few minutes of mobility in every session: common practice, no source.';

export const ANKLES = drill('ankle-rock', ankleRock, 'no gear', drillSets(1, repeated(10), 0), EASY, MOBILITY);
export const HIPS = drill('hip-rotation', hipRotation, 'no gear', drillSets(1, repeated(12), 0), EASY, MOBILITY);
export const HIP_FLEXORS = drill(
  'hip-flexor-stretch',
  hipFlexorStretch,
  'no gear',
  drillSets(1, held(40), 5),
  EASY,
  MOBILITY,
);
export const UPPER_BACK = drill(
  'thoracic-rotation',
  thoracicRotation,
  'no gear',
  drillSets(1, repeated(8), 0),
  EASY,
  MOBILITY,
);
export const SPINE = drill('cat-camel', catCamel, 'no gear', drillSets(1, repeated(10), 0), EASY, MOBILITY);
export const SHOULDERS_UP = drill(
  'shoulder-slide',
  shoulderSlide,
  'no gear',
  drillSets(1, repeated(10), 0),
  EASY,
  MOBILITY,
);
export const WRISTS = drill('wrist-rock', wristRock, 'no gear', drillSets(1, repeated(12), 0), EASY, MOBILITY);

/** The same twice, where there is time. */
export const twice = (line: DrillLine): DrillLine => ({ ...line, sets: [...line.sets, ...line.sets] });

/** Few, full, with long rests, before anything that tires; on the ground alone. */
export const JUMPS = drill(
  'jumps',
  countermovementJump,
  'body weight',
  drillSets(3, repeated(5), 60),
  [5, 7],
  'Jumps keep up power and give bone what it answers to, few and full: common practice; three fives are our own design.',
);

const BALANCE = 'Balance before and after flight: common practice; sets and seconds are our own design.';

export const ONE_LEG_STAND = drill(
  'single-leg-stand',
  singleLegStand,
  'body weight',
  drillSets(2, held(30), 10),
  EASY,
  BALANCE,
);

const TRUNK = 'Trunk two or more times a week: common practice; sets are our own design.';

/** Weightless, a trunk is loaded from the side by a band. */
export const TRUNK_PRESS = drill('trunk-press', pallofPress, 'band', drillSets(2, repeated(10), 15), [4, 6], TRUNK);
export const DEAD_BUG = drill('dead-bug', deadBug, 'body weight', drillSets(2, repeated(8), 10), [3, 5], TRUNK);
export const SIDE_HOLD = drill('side-hold', sideHold, 'body weight', drillSets(2, held(25), 10), [4, 6], TRUNK);

/* Before the squat gates: work for who has never been under a bar. */

const GATES =
  'Before the squat gates the pattern is learned without a bar, light and watched: common practice; sets are our own design.';
const beforeGates = (line: DrillLine): DrillLine => ({ ...line, condition: 'before the squat gates' });

export const LEARN_SQUAT = beforeGates(
  drill('body-weight-squat', bodyWeightSquat, 'body weight', drillSets(2, repeated(10), 45), [3, 5], GATES),
);
export const LEARN_BOX_SQUAT = beforeGates(
  drill('box-squat', boxSquat, 'body weight', drillSets(3, repeated(8), 60), [3, 5], GATES),
);
export const LEARN_HINGE = beforeGates(
  drill('hip-hinge-drill', hipHingeDrill, 'no gear', drillSets(3, repeated(8), 45), [2, 4], GATES),
);

/* After landing. */

const RETURN =
  'First stage after landing: walking, mobility, balance and light strength (stages of the return: seen in a secondary source); sets are conservative and our own design.';
const NEXT =
  'Second stage: body sense and work of the heart, nothing maximal (stages of the return: seen in a secondary source); sets are our own design.';
const FUNCTION =
  'Third stage, the longest: what the work of the person asks of the body (stages of the return: seen in a secondary source); sets are our own design.';

export const WALKS = drill('walk', overgroundWalk, 'body weight', drillSets(5, held(300), 90), EASY, RETURN);
export const SHORT_WALKS = drill(
  'short-walk',
  overgroundWalk,
  'body weight',
  drillSets(3, held(180), 120),
  [2, 3],
  RETURN,
);
export const RISE = drill('sit-to-stand', sitToStand, 'body weight', drillSets(3, repeated(6), 60), [3, 4], RETURN);
export const BRIDGE = drill('glute-bridge', gluteBridge, 'body weight', drillSets(2, repeated(10), 45), [3, 4], RETURN);
export const CRAWL = drill('bird-dog', birdDog, 'body weight', drillSets(2, repeated(6), 15), [3, 4], RETURN);
export const FLOOR_TRUNK = drill('dead-bug', deadBug, 'body weight', drillSets(2, repeated(6), 15), [3, 4], RETURN);
export const BAND_ROW = drill('cord-row', cordRow, 'band', drillSets(2, repeated(12), 45), [3, 4], RETURN);
export const HEEL_TO_TOE = drill('tandem-stand', tandemStand, 'body weight', drillSets(3, held(20), 20), EASY, RETURN);
export const FIRST_ONE_LEG = drill(
  'single-leg-stand',
  singleLegStand,
  'body weight',
  drillSets(3, held(15), 20),
  EASY,
  RETURN,
);

export const LINE_WALK = drill('tandem-walk', tandemWalk, 'body weight', drillSets(4, repeated(10), 20), EASY, NEXT);
export const ONE_LEG_LONGER = drill(
  'single-leg-stand',
  singleLegStand,
  'body weight',
  drillSets(3, held(30), 15),
  [2, 4],
  NEXT,
);
export const HINGE_AGAIN = drill(
  'hip-hinge-again',
  hipHingeDrill,
  'no gear',
  drillSets(2, repeated(8), 45),
  EASY,
  NEXT,
);
export const STEPS = drill('step-up', stepUp, 'body weight', drillSets(2, repeated(8), 30), [4, 6], NEXT);
export const ONE_LEG_HEELS = drill(
  'single-leg-heel-raise',
  singleLegHeelRaise,
  'body weight',
  drillSets(2, repeated(8), 30),
  [4, 6],
  NEXT,
);

export const LUNGES = drill(
  'reverse-lunge',
  reverseLunge,
  'body weight',
  drillSets(2, repeated(8), 30),
  [4, 6],
  FUNCTION,
);
