import { cited } from '../cited.ts';

/** What the chapters of the return rest on. */

export const RECONDITIONING_2011 = cited(
  'seen',
  'Conference abstract (2011) Reconditioning of crews after long missions: two hours a day, seven days a week, for 45 days. Public technical reports.',
  { note: 'The title is in our own words; authors were not noted. Length and hours of the programme were seen.' },
);
export const PETERSEN_2017 = cited(
  'from memory',
  'Petersen N. et al. (2017) A case of reconditioning after a long mission. Musculoskeletal Science and Practice.',
  {
    note: 'The title is in our own words; the abstract was seen, the citation is from memory. All items were back by day 21 but jump power; one person.',
  },
);
export const BALANCE_TABLE_2022 = cited(
  'seen',
  'Frontiers in Neurology (2022) 13:856946, table 1: standing balance in six conditions and its composite of 14 trials.',
  { doi: '10.3389/fneur.2022.856946', note: 'Authors and title were not noted; the composite was seen in its table.' },
);
export const NASHNER_1993 = cited(
  'from memory',
  'Nashner L.M. (1993) Computerized dynamic posturography. In: Handbook of balance function testing.',
  { note: 'That 12.5° from back to front is the limit of sway, and that a fall counts nothing, is from memory.' },
);
export const FREEMAN_2011 = cited(
  'from memory',
  'Freeman R. et al. (2011) Consensus statement on the definition of orthostatic hypotension, neurally mediated syncope and the postural tachycardia syndrome. Clinical Autonomic Research 21:69–72.',
  { note: 'The title and the limits of 20 and 10 mmHg within three minutes were seen in public pages, the paper not.' },
);
export const MECK_2001 = cited(
  'seen',
  'Meck J.V. et al. (2001) Marked exacerbation of orthostatic intolerance after long- vs. short-duration spaceflight in veteran astronauts. Psychosomatic Medicine 63:865–873.',
  {
    note: 'The abstract was seen, the title is from memory; five of six could not finish a tilt on landing day, after 129 to 190 days.',
  },
);
export const BALANCE_2023 = cited(
  'seen',
  'Frontiers in Neural Circuits (2023) Sensory organization of postural control after long term space flight.',
  {
    doi: '10.3389/fncir.2023.1135434',
    note: 'The abstract was seen, its authors were not noted; 33 people after 166 to 196 days, −27 % in the hardest test, on days 3, 7 and 10.',
  },
);
export const PALOSKI_1999 = cited('from memory', 'Paloski W.H. et al.: recovery of balance after short flights.', {
  note: 'The title is in our own words; two phases of about 2.7 and 100 hours, from memory, low confidence.',
});
export const MULAVARA_2010 = cited(
  'seen',
  'Mulavara A.P. et al. (2010) Locomotor function after long-duration space flight: effects and motor learning during recovery. Experimental Brain Research 202:649–659.',
  {
    doi: '10.1007/s00221-010-2171-0',
    note: 'The abstract was seen; 18 people, 185 days on average; exponential recovery of the log of the time.',
  },
);
