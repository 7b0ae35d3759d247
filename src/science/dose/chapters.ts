import type { Part } from '../chapter.ts';
import { shownTable } from '../sourced-table.ts';
import { countingChecks, strengthDoseChecks } from './dose.checks.ts';
import { DOSE_FINDINGS, WEEKLY_TARGETS } from './dose-response.table.ts';
import { setsForShare, shareOfStrengthEffect, strengthEffect, strengthEffectOfNextSet } from './strength-effect.ts';
import { weeklyDose } from './weekly-dose.ts';
import { fractionalSets, mostSetsNextWeek, setsForStrength, sizeDifference } from './weekly-sets.ts';

export const DOSE: Part = {
  heading: 'How much work',
  says: 'Sets of a week, what they gave others, and when a week is too little, too much or too sudden.',
  chapters: [
    {
      heading: 'Strength by weekly sets',
      says: 'Diminishing returns: a shape through two published means.',
      formulas: [strengthEffect, strengthEffectOfNextSet, shareOfStrengthEffect, setsForShare],
      tables: [shownTable(DOSE_FINDINGS)],
      checks: strengthDoseChecks,
    },
    {
      heading: 'Counting a week',
      says: 'Which sets count how much, and what to plan for.',
      formulas: [fractionalSets, setsForStrength, sizeDifference, mostSetsNextWeek],
      methods: [weeklyDose],
      tables: [shownTable(WEEKLY_TARGETS)],
      checks: countingChecks,
    },
  ],
};
