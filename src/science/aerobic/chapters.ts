import type { Part } from '../chapter.ts';
import { COST_CHAPTERS } from './cost-chapters.ts';
import { FLIGHT_CHAPTERS } from './flight-chapters.ts';
import { MAXIMUM_CHAPTERS } from './maximum-chapters.ts';

export const AEROBIC: Part = {
  heading: 'Aerobic work',
  says: 'What work costs in oxygen, how hard that is for a person, and what changes weightless.',
  chapters: [...COST_CHAPTERS, ...MAXIMUM_CHAPTERS, ...FLIGHT_CHAPTERS],
};
