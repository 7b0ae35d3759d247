import type { AnyFormula } from './formula.ts';
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
} from './body/share-formulas.ts';
import { shareMatchingMoment } from './body/moments.ts';
import { shareAboveL5, shareAboveLegs, shareAboveNavel, shareAboveStanceLeg } from './body/static-share.ts';
import { axialExcess, axialLoadInFlight, axialLoadOnGround, shoulderExcess } from './crossing/axial-load.ts';
import { deliveredLoad, loadToCommand } from './crossing/calibration.ts';
import {
  barEquivalent,
  barOfFraction,
  barPart,
  bodyWeightAdded,
  cappedOff,
  evidenceFloor,
  fractionOfBar,
  machineTarget,
  programmeFractionOf,
  trueFraction,
} from './crossing/crossing.ts';
import {
  barFractionOfSystemFraction,
  differenceOfReadings,
  machineLoadByBar,
  machineLoadBySystem,
  systemFractionOfBarFraction,
} from './crossing/percent-of-system.ts';
import { effectiveRepetitions, repetitionsInReserve } from './strength/effort.ts';
import { estimateLogSd, logSdOfMaximum, logSlope, noviceReserveSd, reserveSd } from './strength/estimate-spread.ts';
import * as maxima from './strength/one-rep-max.ts';
import * as regressions from './strength/regressions.ts';
import * as fractions from './strength/repetition-fraction.ts';
import {
  fractionAllowing,
  maximumMultiplier,
  ratioToTestedLift,
  repetitionMaximum,
} from './strength/repetition-maximum.ts';
import * as multipliers from './strength/repetition-multiplier.ts';

/** The formulas of a module in one order, whichever tool lists its exports. */
const byIdentity = (module: Readonly<Record<string, AnyFormula>>): readonly AnyFormula[] =>
  Object.values(module).toSorted((a, b) => (a.record.id < b.record.id ? -1 : 1));

/** Every formula with a record, in the order and under the headings of a textbook. */
export interface Chapter {
  readonly heading: string;
  readonly says: string;
  readonly formulas: readonly AnyFormula[];
}

export const CHAPTERS: readonly Chapter[] = [
  {
    heading: 'Effort',
    says: 'How hard a set was, in repetitions that were left.',
    formulas: [repetitionsInReserve, effectiveRepetitions],
  },
  {
    heading: 'Repetitions and the maximum, as printed',
    says: 'Eight authors; at one repetition most of them do not give the load itself.',
    formulas: [...byIdentity(multipliers), ...byIdentity(fractions)],
  },
  {
    heading: 'One-repetition maximum of a set',
    says: 'The same lines, with a single taken as the maximum. Loads are made with Wathan’s.',
    formulas: byIdentity(maxima),
  },
  {
    heading: 'Maxima of several repetitions, and of other lifts',
    says: 'From one number of repetitions to another, and from a tested lift to an untested one.',
    formulas: [maximumMultiplier, fractionAllowing, repetitionMaximum, ratioToTestedLift],
  },
  {
    heading: 'How sure one estimate is',
    says: 'The standard deviation of a single reading, on the log scale.',
    formulas: [reserveSd, noviceReserveSd, logSlope, logSdOfMaximum, estimateLogSd],
  },
  {
    heading: 'Straight lines of single studies',
    says: 'Fitted to one group each; no load is made from them.',
    formulas: byIdentity(regressions),
  },
  {
    heading: 'What a joint carries in 1 g',
    says: 'Static shares: the body above a level.',
    formulas: [shareAboveLegs, shareAboveStanceLeg, shareAboveL5, shareAboveNavel],
  },
  {
    heading: 'How much of the body a lift moves',
    says: 'Work-matched shares, cell by cell.',
    formulas: [
      dropOfLeaning,
      dropAlong,
      dropBetween,
      partOfShare,
      shareOfBending,
      riseOfAnkle,
      riseOfFoot,
      shareOfHeelRaise,
      shareOfPressOrRow,
      shareOfCurl,
      shareOfStraightArmRaise,
      shareMatchingMoment,
    ],
  },
  {
    heading: 'The crossing',
    says: 'From a bar in 1 g to the pull of a machine weightless, and back.',
    formulas: [
      barOfFraction,
      fractionOfBar,
      barPart,
      bodyWeightAdded,
      machineTarget,
      cappedOff,
      barEquivalent,
      trueFraction,
      programmeFractionOf,
      evidenceFloor,
    ],
  },
  {
    heading: 'Two readings of a percent',
    says: 'Of the bar, or of bar and share together.',
    formulas: [
      machineLoadByBar,
      machineLoadBySystem,
      differenceOfReadings,
      barFractionOfSystemFraction,
      systemFractionOfBarFraction,
    ],
  },
  {
    heading: 'Where the load is carried',
    says: 'Level by level, in 1 g and weightless.',
    formulas: [axialLoadOnGround, axialLoadInFlight, axialExcess, shoulderExcess],
  },
  {
    heading: 'What a machine delivers',
    says: 'From the load that is set to the load that is pulled.',
    formulas: [deliveredLoad, loadToCommand],
  },
];

export const ALL_FORMULAS: readonly AnyFormula[] = CHAPTERS.flatMap(({ formulas }) => formulas);
