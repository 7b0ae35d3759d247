import { cited } from '../cited.ts';

export const LEE_2004 = cited(
  'seen',
  'Lee S.M.C. et al. (2004) Foot-ground reaction force during resistive exercise in parabolic flight. Aviation, Space, and Environmental Medicine 75(5):405–412.',
);
