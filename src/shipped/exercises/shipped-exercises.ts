import type { Exercise } from '#domain/catalogue.ts';
import { singleLegStand, tandemStand, tandemWalk } from './balance.ts';
import { oneHandCarry, twoHandCarry } from './carries.ts';
import { cycling, overgroundWalk, rowing, treadmillRun, treadmillWalk } from './endurance.ts';
import {
  crushHold,
  fingerExtension,
  forearmRotation,
  pinchHold,
  thickHandleHold,
  wristExtension,
  wristFlexion,
} from './grip.ts';
import { fingerHold, gripPulses } from './hand-training.ts';
import {
  gluteBridge,
  hipHingeDrill,
  hipThrust,
  raisedDeadlift,
  singleLegRomanianDeadlift,
  wideStanceDeadlift,
} from './hinges.ts';
import { ankleHops, countermovementJump, dropLanding, heelDrops, squatJump } from './jumps.ts';
import { hipAbduction, hipAdduction, kneeExtension, legCurl, seatedHeelRaise } from './legs.ts';
import {
  backSquat,
  deadlift,
  heelRaise,
  romanianDeadlift,
  singleLegHeelRaise,
  singleLegSquat,
  splitSquat,
} from './lower-body.ts';
import {
  ankleRock,
  catCamel,
  hipFlexorStretch,
  hipRotation,
  shoulderSlide,
  thoracicRotation,
  wristRock,
} from './mobility.ts';
import { chinUp, cordRow, inclinePress, oneArmRow, pushUp } from './presses-and-pulls.ts';
import { bandPullApart, externalRotation, internalRotation, scapularRow, tRaise, yRaise } from './shoulder-care.ts';
import {
  bodyWeightSquat,
  boxSquat,
  cordSquat,
  frontSquat,
  gobletSquat,
  isometricSquatPush,
  sitToStand,
} from './squats.ts';
import { reverseLunge, stepUp } from './steps.ts';
import { birdDog, deadBug, pallofPress, sideHold, trunkHold } from './trunk.ts';
import {
  benchPress,
  bentOverRow,
  bicepsCurl,
  frontRaise,
  lateralRaise,
  pullDown,
  seatedRow,
  shoulderPress,
  tricepsExtension,
} from './upper-body.ts';

/**
 * The exercises that ship, in the order in which a catalogue is read: the main lifts first, then family by family. Two are
 * left out on purpose: upright rows and good mornings. The front squat is for the ground only: its trunk stands steeper
 * than in the back squat model, so no share of ours is its own.
 */
export const SHIPPED_EXERCISES: readonly Exercise[] = [
  backSquat,
  deadlift,
  romanianDeadlift,
  heelRaise,
  singleLegHeelRaise,
  singleLegSquat,
  splitSquat,
  frontSquat,
  boxSquat,
  gobletSquat,
  bodyWeightSquat,
  sitToStand,
  cordSquat,
  isometricSquatPush,
  reverseLunge,
  stepUp,
  wideStanceDeadlift,
  raisedDeadlift,
  singleLegRomanianDeadlift,
  hipThrust,
  gluteBridge,
  hipHingeDrill,
  legCurl,
  kneeExtension,
  hipAbduction,
  hipAdduction,
  seatedHeelRaise,
  benchPress,
  shoulderPress,
  bentOverRow,
  seatedRow,
  pullDown,
  pushUp,
  chinUp,
  cordRow,
  oneArmRow,
  inclinePress,
  bicepsCurl,
  tricepsExtension,
  lateralRaise,
  frontRaise,
  externalRotation,
  internalRotation,
  yRaise,
  tRaise,
  scapularRow,
  bandPullApart,
  trunkHold,
  sideHold,
  deadBug,
  pallofPress,
  birdDog,
  twoHandCarry,
  oneHandCarry,
  crushHold,
  pinchHold,
  thickHandleHold,
  wristFlexion,
  wristExtension,
  forearmRotation,
  fingerExtension,
  gripPulses,
  fingerHold,
  squatJump,
  countermovementJump,
  ankleHops,
  dropLanding,
  heelDrops,
  singleLegStand,
  tandemStand,
  tandemWalk,
  treadmillRun,
  treadmillWalk,
  overgroundWalk,
  cycling,
  rowing,
  ankleRock,
  hipFlexorStretch,
  hipRotation,
  thoracicRotation,
  catCamel,
  shoulderSlide,
  wristRock,
];
