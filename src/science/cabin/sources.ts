import { cited } from '../cited.ts';

export const LAW_2014 = cited(
  'seen',
  'Law J. et al. (2014) Carbon dioxide and headaches in long flight. Journal of Occupational and Environmental Medicine 56(5):477–483.',
  {
    doi: '10.1097/JOM.0000000000000158',
    note: 'The abstract was seen; the title is in our own words. Low confidence: an erratum was printed (56(9):e82) and not seen, and a press text of the same time says 2 mmHg where the abstract says 2.5.',
  },
);
export const STANDARD_3001_VOLUME_2 = cited('from memory', 'Human-space-flight health standard 3001, volume 2.', {
  note: 'Cited for where limits of carbon dioxide belong; no number is taken from it.',
});
