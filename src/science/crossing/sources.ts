import { cited } from '../cited.ts';

export const LEE_2004 = cited(
  'seen',
  'Lee S.M.C. et al. (2004) Foot-ground reaction force during resistive exercise in parabolic flight. Aviation, Space, and Environmental Medicine 75(5):405–412.',
);
export const KERSTMAN_2012 = cited(
  'from memory',
  'Kerstman E.L. et al. (2012) Space adaptation back pain: a retrospective study. Aviation, Space, and Environmental Medicine 83:2–7.',
);
export const SCHEURING_2009 = cited(
  'from memory',
  'Scheuring R.A. et al. (2009) Musculoskeletal injuries and minor trauma in space: incidence and injury mechanisms. Aviation, Space, and Environmental Medicine 80:117–124.',
);
