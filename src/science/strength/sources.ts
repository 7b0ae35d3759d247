import { cited } from '../cited.ts';

const EQUATION_SEEN = { note: 'The equation was seen in several independent pages; the original was not opened.' };

export const EPLEY_1985 = cited(
  'from memory',
  'Epley B. (1985) Poundage chart. In: Boyd Epley workout. Lincoln, Nebraska.',
  EQUATION_SEEN,
);
export const BRZYCKI_1993 = cited(
  'from memory',
  'Brzycki M. (1993) Strength testing: predicting a one-rep max from reps-to-fatigue. Journal of Physical Education, Recreation and Dance 64(1):88–90.',
  EQUATION_SEEN,
);
export const LOMBARDI_1989 = cited(
  'from memory',
  'Lombardi V.P. (1989) Beginning weight training. W.C. Brown.',
  EQUATION_SEEN,
);
export const MAYHEW_1992 = cited(
  'from memory',
  'Mayhew J.L. et al. (1992) Relative muscular endurance performance as a predictor of bench press strength. Journal of Applied Sport Science Research 6(4):200–206.',
  EQUATION_SEEN,
);
export const OCONNER_1989 = cited(
  'from memory',
  "O'Conner B., Simmons J., O'Shea P. (1989) Weight training today. West Publishing.",
  EQUATION_SEEN,
);
export const WATHAN_1994 = cited(
  'from memory',
  'Wathan D. (1994) Load assignment. In: Baechle T.R. (ed.) Essentials of strength training and conditioning. Human Kinetics.',
  { note: 'Also spelt Wathen. The equation was seen in several independent pages; the original was not opened.' },
);
export const LANDER_1985 = cited(
  'from memory',
  'Lander J. (1985) Maximum based on reps. NSCA Journal 6(6):60–61.',
  EQUATION_SEEN,
);
export const REYNOLDS_2006 = cited(
  'seen',
  'Reynolds J.M., Gordon T.J., Robergs R.A. (2006) Prediction of one repetition maximum strength from multiple repetition maximum testing and anthropometry. Journal of Strength and Conditioning Research 20(3):584–592.',
);
export const LESUER_1997 = cited(
  'from memory',
  'LeSuer D.A. et al. (1997) The accuracy of prediction equations for estimating 1-RM performance in the bench press, squat, and deadlift. Journal of Strength and Conditioning Research 11(4):211–213.',
);
export const KRAVITZ_2003 = cited(
  'seen',
  'Kravitz L. et al. (2003) Prediction of 1 repetition maximum in high-school power lifters. Journal of Strength and Conditioning Research 17(1):167–172.',
);
export const HUTCHINS_GEARHART_2010 = cited(
  'seen',
  'Hutchins M.D., Gearhart R.F. (2010) Accuracy of 1-RM prediction equations for the bench press and biceps curl. Journal of Exercise Physiology online 13(3):32–39.',
);
export const WHISENANT_2003 = cited(
  'seen',
  'Whisenant M.J. et al. (2003) Validation of submaximal prediction equations for the 1 repetition maximum bench press test on a group of collegiate football players. Journal of Strength and Conditioning Research 17(2):221–227.',
);
export const GRGIC_2020 = cited(
  'seen',
  'Grgic J. et al. (2020) Test–retest reliability of the one-repetition maximum (1RM) strength assessment: a systematic review. Sports Medicine – Open 6:31.',
  { doi: '10.1186/s40798-020-00260-z' },
);
export const MITTER_2022 = cited(
  'seen',
  'Mitter B. et al. (2022) Reliability of repetitions to failure in the bench press. PLoS ONE 17(5):e0268074.',
  { note: 'The title is in our own words.' },
);
export const HALPERIN_2022 = cited(
  'seen',
  'Halperin I. et al. (2022) Accuracy in predicting repetitions to task failure in resistance exercise: a scoping review and exploratory meta-analysis. Sports Medicine 52(2):377–390.',
  { doi: '10.1007/s40279-021-01559-x' },
);
export const HAFF_TRIPLETT_2016 = cited(
  'from memory',
  'Haff G.G., Triplett N.T. (eds) (2016) Essentials of strength training and conditioning, 4th edition. Human Kinetics.',
  { note: 'Anchor points of its table of repetitions seen in two secondary pages.' },
);
export const NUZZO_2024 = cited(
  'seen',
  'Nuzzo J.L. et al. (2024) Maximal number of repetitions at percentages of the one repetition maximum: a meta-regression and moderator analysis. Sports Medicine 54:303–321.',
  { doi: '10.1007/s40279-023-01937-7', note: 'Abstract and text seen; its numeric table was not visible.' },
);
