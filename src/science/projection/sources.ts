import { cited } from '../cited.ts';

export const HYNDMAN_FAN_1996 = cited(
  'from memory',
  'Hyndman R.J., Fan Y. (1996) Sample quantiles in statistical packages. The American Statistician 50(4):361–365.',
  { note: 'Their seventh definition, which NumPy and R use; checked against NumPy.' },
);
export const MARSAGLIA_TSANG_2000 = cited(
  'from memory',
  'Marsaglia G., Tsang W.W. (2000) The ziggurat method for generating random variables. Journal of Statistical Software 5(8).',
);
export const DOORNIK_2005 = cited(
  'from memory',
  'Doornik J.A. (2005) An improved ziggurat method to generate normal random samples. University of Oxford.',
  { note: 'Both constants are from memory; draws were held to the normal distribution with SciPy’s values.' },
);
