import { cited } from '../cited.ts';

export const MYER_2014 = cited(
  'seen',
  'Myer G.D. et al. (2014) The back squat: a proposed assessment of functional deficits and technical factors that limit performance. Strength and Conditioning Journal 36(6):4–27, table 1.',
  { doi: '10.1519/SSC.0000000000000103', note: 'Abstract and table 1 seen; the criteria are told in our own words.' },
);
