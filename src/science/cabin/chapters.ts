import type { Part } from '../chapter.ts';
import { shownTable } from '../sourced-table.ts';
import { levelChecks, outputChecks } from './cabin.checks.ts';
import { headacheOdds, levelAfter, levelOfPressure, partialPressure, steadyLevel } from './carbon-dioxide-level.ts';
import { CABIN_PROMPTS } from './closed-cabin.table.ts';
import { carbonDioxideFlow, carbonDioxideMass, flowInCabin, heatToCabin, metabolicHeat } from './exercise-output.ts';
import { levelAlong } from './level-along.ts';

export const CABIN: Part = {
  heading: 'The cabin',
  says: 'What exercise gives to the air that others breathe.',
  chapters: [
    {
      heading: 'Carbon dioxide and heat of a person',
      says: 'From oxygen uptake to grams, litres and watts.',
      formulas: [carbonDioxideFlow, carbonDioxideMass, flowInCabin, metabolicHeat, heatToCabin],
      checks: outputChecks,
    },
    {
      heading: 'Carbon dioxide of a cabin',
      says: 'How it builds up while people exercise, alone and together, and what was associated with it.',
      formulas: [steadyLevel, levelAfter, partialPressure, levelOfPressure, headacheOdds],
      methods: [levelAlong],
      tables: [shownTable(CABIN_PROMPTS)],
      checks: levelChecks,
    },
  ],
};
