import { cited } from '../cited.ts';

export const MONOD_SCHERRER_1965 = cited(
  'from memory',
  'Monod H., Scherrer J. (1965) The work capacity of a synergic muscular group. Ergonomics 8:329–338.',
);
export const SKIBA_2012 = cited(
  'seen',
  'Skiba P.F., Chidnok W., Vanhatalo A., Jones A.M. (2012) Modeling the expenditure and reconstitution of work capacity above critical power. Medicine & Science in Sports & Exercise 44:1526–1532.',
  {
    doi: '10.1249/MSS.0b013e3182517a80',
    note: 'The abstract was seen; the constants 546, 0.01 and 316 are from memory.',
  },
);
export const SKIBA_CLARKE_2021 = cited(
  'seen',
  'Skiba P.F., Clarke D.C. (2021) The W′ balance model: mathematical and methodological considerations. International Journal of Sports Physiology and Performance 16:1561–1572.',
  { doi: '10.1123/ijspp.2021-0205' },
);
export const BARTRAM_2018 = cited(
  'seen',
  'Bartram J.C., Thewlis D., Martin D.T., Norton K.I. (2018) Accuracy of W′ recovery kinetics in high performance cyclists. International Journal of Sports Physiology and Performance 13:724–728.',
  { note: 'The abstract was seen: four elite cyclists, R² 0.433.' },
);
export const CHORLEY_2022 = cited(
  'seen',
  'Chorley A., Bott R.P., Marwood S., Lamb K.L. (2022) Bi-exponential modelling of W′ reconstitution kinetics in trained cyclists. European Journal of Applied Physiology 122:677–689.',
  { note: 'The two shares and their time constants were seen; volume and pages are from memory.' },
);
export const WEIGEND_2021 = cited(
  'seen',
  'Weigend F.C., Clarke D.C., Obst O., Siegler J. (2021) A hydraulic model outperforms work-balance models for predicting recovery kinetics from intermittent exercise.',
  { note: 'The abstract was seen; where it was printed is not given here.' },
);
