import type { Part } from '../chapter.ts';
import { postureChecks, squatInsideChecks, staticShareChecks, workShareChecks } from './body-weight-share.checks.ts';
import { momentChecks } from './moments.checks.ts';
import { momentMatchedShares, shareMatchingMoment } from './moments.ts';
import { segmentChecks } from './segments.checks.ts';
import { shareFormulaChecks } from './share-formulas.checks.ts';
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
import { bodyWeightShare } from './work-share.ts';
import { shareAboveL5, shareAboveLegs, shareAboveNavel, shareAboveStanceLeg } from './static-share.ts';

export const BODY: Part = {
  heading: 'The body in a lift',
  says: 'How much of itself a body moves, and what its joints carry.',
  chapters: [
    {
      heading: 'What a joint carries in 1 g',
      says: 'Static shares: the body above a level.',
      formulas: [shareAboveLegs, shareAboveStanceLeg, shareAboveL5, shareAboveNavel],
      checks: [...segmentChecks, ...staticShareChecks],
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
      ],
      methods: [bodyWeightShare],
      checks: [...workShareChecks, ...shareFormulaChecks, ...squatInsideChecks, ...postureChecks],
    },
    {
      heading: 'Moments at the bottom of the squat',
      says: 'Why one share cannot satisfy hip, knee and ankle at once.',
      formulas: [shareMatchingMoment],
      methods: [momentMatchedShares],
      checks: momentChecks,
    },
  ],
};
