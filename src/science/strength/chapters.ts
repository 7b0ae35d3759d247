import { byIdentity, type Part } from '../chapter.ts';
import { effectiveRepetitions, repetitionsInReserve } from './effort.ts';
import { estimateLogSd, logSdOfMaximum, logSlope, noviceReserveSd, reserveSd } from './estimate-spread.ts';
import {
  effortChecks,
  readingChecks,
  regressionChecks,
  repetitionMaximumChecks,
  spreadOfEstimateChecks,
} from './estimate-spread.checks.ts';
import * as maxima from './one-rep-max.ts';
import * as regressions from './regressions.ts';
import {
  percentTableChecks,
  repetitionTableChecks,
  reserveChecks,
  spreadChecks,
} from './repetition-formulas.checks.ts';
import * as fractions from './repetition-fraction.ts';
import { fractionAllowing, maximumMultiplier, ratioToTestedLift, repetitionMaximum } from './repetition-maximum.ts';
import * as multipliers from './repetition-multiplier.ts';
import { readSet } from './set-estimate.ts';

export const STRENGTH: Part = {
  heading: 'Strength',
  says: 'What somebody can lift, read from what they lifted.',
  chapters: [
    {
      heading: 'Effort',
      says: 'How hard a set was, in repetitions that were left.',
      formulas: [repetitionsInReserve, effectiveRepetitions],
      checks: effortChecks,
    },
    {
      heading: 'Repetitions and the maximum, as printed',
      says: 'Eight authors; at one repetition most of them do not give the load itself.',
      formulas: [...byIdentity(multipliers), ...byIdentity(fractions)],
      checks: [...percentTableChecks, ...spreadChecks],
    },
    {
      heading: 'One-repetition maximum of a set',
      says: 'The same lines, with a single taken as the maximum. Loads are made with Wathan’s.',
      formulas: byIdentity(maxima),
      checks: [...repetitionTableChecks, ...reserveChecks],
    },
    {
      heading: 'Maxima of several repetitions, and of other lifts',
      says: 'From one number of repetitions to another, and from a tested lift to an untested one.',
      formulas: [maximumMultiplier, fractionAllowing, repetitionMaximum, ratioToTestedLift],
      checks: repetitionMaximumChecks,
    },
    {
      heading: 'How sure one estimate is',
      says: 'The standard deviation of a single reading, on the log scale.',
      formulas: [reserveSd, noviceReserveSd, logSlope, logSdOfMaximum, estimateLogSd],
      checks: spreadOfEstimateChecks,
    },
    {
      heading: 'What one set says',
      says: 'A maximum with its standard deviation, a lower bound, or nothing and why.',
      methods: [readSet],
      checks: readingChecks,
    },
    {
      heading: 'Straight lines of single studies',
      says: 'Fitted to one group each; no load is made from them.',
      formulas: byIdentity(regressions),
      checks: regressionChecks,
    },
  ],
};
