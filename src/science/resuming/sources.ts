import { cited } from '../cited.ts';

export const CATERISANO_2019 = cited(
  'seen',
  'Caterisano A. et al. (2019) Joint consensus guidelines for transition periods: safe return to training following inactivity. Strength and Conditioning Journal 41(3):1–23.',
  {
    doi: '10.1519/SSC.0000000000000477',
    note: 'The abstract was seen; the cuts of 50, 30, 20 and 10 % are known from others who quote it. The title is shortened.',
  },
);
