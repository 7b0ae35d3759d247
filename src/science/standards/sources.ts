import { cited } from '../cited.ts';

/** Cited by its number only: nothing of it is copied here but limits, in our own words. */
export const STANDARD_3001_BASELINE = cited(
  'seen',
  'Space flight human system standard 3001, volume 1: crew health. Baseline issue of 5 March 2007.',
  {
    note: 'The paragraph on bone was seen in a public copy, directly before section 4.2.10; the other limits and the section numbers are from memory.',
  },
);
export const STANDARD_3001_LATER = cited('from memory', 'Later revisions of standard 3001, volume 1 (from 2014 on).', {
  note: 'Low confidence: none of these limits was seen. Obtain the document.',
});
export const LUNSFORD_PERRY_1995 = cited(
  'from memory',
  'Lunsford B.R., Perry J. (1995) The standing heel-rise test for ankle plantar flexion: criterion for normal. Physical Therapy 75(8):694–698.',
);
