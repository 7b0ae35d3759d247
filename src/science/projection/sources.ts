import { cited } from '../cited.ts';

export const HYNDMAN_FAN_1996 = cited(
  'from memory',
  'Hyndman R.J., Fan Y. (1996) Sample quantiles in statistical packages. The American Statistician 50(4):361–365.',
  { note: 'Their seventh definition, which NumPy and R use; checked against NumPy.' },
);
export const BOX_MULLER_1958 = cited(
  'from memory',
  'Box G.E.P., Muller M.E. (1958) A note on the generation of random normal deviates. Annals of Mathematical Statistics 29(2):610–611.',
);
export const GELMAN_2013 = cited(
  'from memory',
  'Gelman A. et al. (2013) Bayesian data analysis, 3rd edition. CRC Press.',
  { note: 'Conjugate normal and Beta models; checked against SciPy.' },
);
/** An early report of five of the people of Moore 2014: the only one with a second test after landing in litres. */
export const MOORE_2010 = cited(
  'seen',
  'Moore A.D. et al. (2010) Aerobic capacity following long flights: preliminary results. Conference abstract.',
  { note: 'The title is in our own words; the abstract was seen; five people, flights of 91 to 188 days.' },
);
