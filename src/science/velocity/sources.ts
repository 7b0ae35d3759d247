import { cited } from '../cited.ts';

export const BANYARD_2017 = cited(
  'seen',
  'Banyard H.G., Nosaka K., Haff G.G. (2017) Reliability and validity of the load–velocity relationship to predict the 1RM back squat. Journal of Strength and Conditioning Research 31(7):1897–1904.',
  { doi: '10.1519/JSC.0000000000001657', note: '17 people.' },
);
export const HUGHES_2019 = cited(
  'seen',
  'Hughes L.J. et al. (2019) Load–velocity methods to predict one-repetition maximum: minimal velocity against zero velocity. Journal of Strength and Conditioning Research.',
  { doi: '10.1519/JSC.0000000000002550', note: 'The title is in our own words; the abstract was seen.' },
);
export const BENCH_PRESS_2021 = cited(
  'seen',
  'Validity of the bench press one-repetition maximum test predicted through individualized load–velocity relationship using different repetition criteria and minimal velocity thresholds (2021) Isokinetics and Exercise Science.',
  { doi: '10.3233/IES-202247', note: 'Abstract seen; its authors did not stand with it; 16 men.' },
);
export const FAHS_2019 = cited(
  'seen',
  'Fahs C.A., Blumkaitis J.C., Rossow L.M. (2019) Factors related to average concentric velocity of four barbell exercises at various loads. Journal of Strength and Conditioning Research 33(3):597–605.',
  { doi: '10.1519/JSC.0000000000003043', note: 'The abstract was seen; authors and title from memory.' },
);
export const VENABLES_RIPLEY_2002 = cited(
  'from memory',
  'Venables W.N., Ripley B.D. (2002) Modern applied statistics with S, 4th edition. Springer.',
  { note: 'Its dose.p reads a line backwards with this standard error; values were checked against it.' },
);
/** Nobody in particular: thresholds that are handed on without a paper. */
export const GENERIC_THRESHOLDS = cited(
  'from memory',
  'Minimal velocity thresholds as they are handed on in practice; no paper was opened.',
);
