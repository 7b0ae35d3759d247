import { reckoning } from '../reckoning.ts';
import {
  dropAlong,
  dropBetween,
  dropOfLeaning,
  partOfShare,
  riseOfAnkle,
  riseOfFoot,
  shareOfBending,
  shareOfCurl,
  shareOfHeelRaise,
  shareOfPressOrRow,
  shareOfStraightArmRaise,
} from './share-formulas.ts';
import type { Degrees, Fraction, Repetitions, StatureFraction } from '#units/quantity.ts';

/** Work-matched shares as columns: a filled row is the whole working of a share. */

export type BendingGivens = {
  readonly shankLean: Degrees;
  readonly thighLean: Degrees;
  readonly trunkLean: Degrees;
  readonly shankLength: StatureFraction;
  readonly thighLength: StatureFraction;
  readonly hipToShoulder: StatureFraction;
  readonly hipToC7: StatureFraction;
  readonly shankCentre: Fraction;
  readonly thighCentre: Fraction;
  readonly trunkCentre: Fraction;
  readonly shankMass: Fraction;
  readonly thighMass: Fraction;
  readonly trunkMass: Fraction;
  readonly headMass: Fraction;
  readonly armsMass: Fraction;
  /** Of the leg that does not bend with the lift and moves with the hip; 0 where both bend. */
  readonly otherLegMass: Fraction;
  readonly bendingLegs: Repetitions;
  readonly once: Repetitions;
  readonly ankleDrop: StatureFraction;
};

/** Squats, lunges, deadlifts: standing at the top, the feet do not move, the arms move with the bar. */
export const bendingShare = reckoning<BendingGivens>('share of a lift in which the legs bend', [
  'shankLean',
  'thighLean',
  'trunkLean',
  'shankLength',
  'thighLength',
  'hipToShoulder',
  'hipToC7',
  'shankCentre',
  'thighCentre',
  'trunkCentre',
  'shankMass',
  'thighMass',
  'trunkMass',
  'headMass',
  'armsMass',
  'otherLegMass',
  'bendingLegs',
  'once',
  'ankleDrop',
])
  .cell('kneeDrop', dropOfLeaning, 'shankLength', 'shankLean')
  .cell('hipDrop', dropAlong, 'kneeDrop', 'thighLength', 'thighLean')
  .cell('barDrop', dropAlong, 'hipDrop', 'hipToShoulder', 'trunkLean')
  .cell('c7Drop', dropAlong, 'hipDrop', 'hipToC7', 'trunkLean')
  .cell('shankDrop', dropBetween, 'kneeDrop', 'ankleDrop', 'shankCentre')
  .cell('thighDrop', dropBetween, 'hipDrop', 'kneeDrop', 'thighCentre')
  .cell('trunkDrop', dropBetween, 'barDrop', 'hipDrop', 'trunkCentre')
  .cell('shanks', partOfShare, 'bendingLegs', 'shankMass', 'shankDrop', 'barDrop')
  .cell('thighs', partOfShare, 'bendingLegs', 'thighMass', 'thighDrop', 'barDrop')
  .cell('otherLeg', partOfShare, 'once', 'otherLegMass', 'hipDrop', 'barDrop')
  .cell('trunk', partOfShare, 'once', 'trunkMass', 'trunkDrop', 'barDrop')
  .cell('head', partOfShare, 'once', 'headMass', 'c7Drop', 'barDrop')
  .cell('arms', partOfShare, 'once', 'armsMass', 'barDrop', 'barDrop')
  .cell('share', shareOfBending, 'shanks', 'thighs', 'otherLeg', 'trunk', 'head', 'arms');

export type HeelRaiseGivens = {
  readonly turn: Degrees;
  readonly footLength: StatureFraction;
  readonly ankleHeight: StatureFraction;
  readonly footCentre: Fraction;
  readonly footMass: Fraction;
  readonly feet: Repetitions;
};

/** Heel raises: the foot turns about its ball, everything above rises with the ankle. */
export const heelRaiseShare = reckoning<HeelRaiseGivens>('share of a heel raise', [
  'turn',
  'footLength',
  'ankleHeight',
  'footCentre',
  'footMass',
  'feet',
])
  .cell('ankleRise', riseOfAnkle, 'footLength', 'ankleHeight', 'turn')
  .cell('footRise', riseOfFoot, 'footCentre', 'footLength', 'ankleHeight', 'turn')
  .cell('share', shareOfHeelRaise, 'feet', 'footMass', 'footRise', 'ankleRise');

export type ArmGivens = {
  readonly upperArmMass: Fraction;
  readonly upperArmCentre: Fraction;
  readonly upperArmLength: StatureFraction;
  readonly forearmMass: Fraction;
  readonly forearmCentre: Fraction;
  readonly forearmLength: StatureFraction;
  readonly handMass: Fraction;
  /** Elbow to the middle of the grip. */
  readonly elbowToGrip: StatureFraction;
};

const arms = (name: string) =>
  reckoning<ArmGivens>(name, [
    'upperArmMass',
    'upperArmCentre',
    'upperArmLength',
    'forearmMass',
    'forearmCentre',
    'forearmLength',
    'handMass',
    'elbowToGrip',
  ]);

/** Presses and rows with a vertical forearm and a shoulder that stays: the elbow travels as the bar does. */
export const pressOrRowShare = arms('share of a press or row').cell(
  'share',
  shareOfPressOrRow,
  'upperArmMass',
  'upperArmCentre',
  'forearmMass',
  'handMass',
);

/** Curls and elbow extensions: the upper arm stays. */
export const curlShare = arms('share of a curl').cell(
  'share',
  shareOfCurl,
  'forearmMass',
  'forearmCentre',
  'forearmLength',
  'handMass',
  'elbowToGrip',
);

/** Raises with straight arms, to the front or the side. */
export const straightArmRaiseShare = arms('share of a straight-arm raise').cell(
  'share',
  shareOfStraightArmRaise,
  'upperArmMass',
  'upperArmCentre',
  'upperArmLength',
  'forearmMass',
  'forearmCentre',
  'forearmLength',
  'handMass',
  'elbowToGrip',
);
