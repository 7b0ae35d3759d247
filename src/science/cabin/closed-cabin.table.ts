import type { Source } from '../formula.ts';
import { COMMON_PRACTICE } from '../sources.ts';
import type { SourcedTable } from '../sourced-table.ts';
import { LAW_2014 } from './sources.ts';

/** What a closed cabin asks of exercise, as prompts: none of them decides. */

export interface CabinPrompt {
  readonly about: string;
  readonly says: string;
  readonly value: number | null;
  readonly unit: string;
  readonly confidence: 'low' | 'practice';
  readonly source: Source;
}

export const CABIN_PROMPTS: SourcedTable<CabinPrompt> = {
  record: {
    id: 'cabin/prompts',
    revision: 1,
    title: 'What a closed cabin asks of exercise',
    source: COMMON_PRACTICE,
    restsOn: [LAW_2014],
    doesNotKnow:
      'The limits of this mission. The association with headache is of means over days, in people who reported them; an erratum to it was not seen.',
  },
  columns: [
    { name: 'about', unit: '' },
    { name: 'prompt', unit: '' },
    { name: 'value', unit: '' },
    { name: 'unit', unit: '' },
    { name: 'confidence', unit: '' },
  ],
  rows: [
    {
      about: 'air',
      says: 'There is no free convection: sweat and carbon dioxide stay around the body. A fan runs, or the session stops.',
      value: null,
      unit: '',
      confidence: 'practice',
      source: COMMON_PRACTICE,
    },
    {
      about: 'headache',
      says: 'The odds of a reported headache doubled for each mmHg more of carbon dioxide.',
      value: 2,
      unit: 'ratio of odds for 1 mmHg',
      confidence: 'low',
      source: LAW_2014,
    },
    {
      about: 'headache',
      says: 'A mean of seven days below this was advised to keep the risk of a headache under 1 %.',
      value: 2.5,
      unit: 'mmHg',
      confidence: 'low',
      source: LAW_2014,
    },
    {
      about: 'readings',
      says: 'Show the carbon dioxide of the cabin, if it is known, beside an unusual heart rate or effort; several people who exercise together raise it.',
      value: null,
      unit: '',
      confidence: 'practice',
      source: COMMON_PRACTICE,
    },
    {
      about: 'heat',
      says: 'Shorten or lower the work where cabin temperature or humidity is out of its limits, or where a session costs more than this of body mass.',
      value: 2,
      unit: '%',
      confidence: 'practice',
      source: COMMON_PRACTICE,
    },
  ],
  cells: ({ about, says, value, unit, confidence }) => [about, says, value, unit, confidence],
};
