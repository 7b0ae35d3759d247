import { cited } from '../cited.ts';

/** What the chapters on training load rest on, and what speaks against them. */

export const FOSTER_2001 = cited(
  'seen',
  'Foster C., Florhaug J.A., Franklin J. et al. (2001) A new approach to monitoring exercise training. Journal of Strength and Conditioning Research 15(1):109–115.',
  { note: 'The abstract was seen; that one asks half an hour after the end is from memory.' },
);
export const FOSTER_1998 = cited(
  'from memory',
  'Foster C. (1998) Monitoring training in athletes with reference to overtraining syndrome. Medicine & Science in Sports & Exercise 30(7):1164–1168.',
  { note: 'The definitions were seen in public pages, the paper not; which standard deviation it took was not found.' },
);
export const MORTON_1990 = cited(
  'from memory',
  'Morton R.H., Fitz-Clarke J.R., Banister E.W. (1990) Modeling human performance in running. Journal of Applied Physiology 69:1171–1177.',
  { note: 'Title and coefficients were seen in public pages, the paper not.' },
);
export const EDWARDS_1993 = cited('from memory', 'Edwards S. (1993) The heart rate monitor book.', {
  note: 'Zones and weights were seen in public pages, the book not.',
});
export const LUCIA_2003 = cited(
  'seen',
  'Lucia A., Hoyos J., Santalla A., Earnest C.P., Chicharro J.L. (2003) Tour de France versus Vuelta a España: which is harder? Medicine & Science in Sports & Exercise 35(5):872–878.',
  { note: 'The abstract was seen; seven riders; that the multipliers are 1, 2 and 3 is from memory.' },
);
export const WILLIAMS_2017 = cited(
  'seen',
  'Williams S., West S., Cross M.J., Stokes K.A. (2017) Better way to determine the acute:chronic workload ratio? British Journal of Sports Medicine 51:209–210.',
  { doi: '10.1136/bjsports-2016-096589' },
);
export const LOLLI_2019_COUPLING = cited(
  'seen',
  'Lolli L. et al. (2019) Mathematical coupling causes spurious correlation within the conventional acute-to-chronic workload ratio calculations. British Journal of Sports Medicine 53(15):921–922.',
);
export const LOLLI_2019_SCALING = cited(
  'seen',
  'Lolli L. et al. (2019) The acute-to-chronic workload ratio: an inaccurate scaling index for an unnecessary normalisation process? British Journal of Sports Medicine 53(24):1510–1512.',
  { note: 'The first page was seen.' },
);
export const IMPELLIZZERI_2021 = cited(
  'seen',
  'Impellizzeri F.M., Woodcock S., Coutts A.J. et al. (2021) What role do chronic workloads play in the acute to chronic workload ratio? Time to dismiss ACWR and its underlying theory. Sports Medicine 51:581–592.',
  { doi: '10.1007/s40279-020-01378-6', note: 'The abstract was seen; the pages are from memory.' },
);
export const IMPELLIZZERI_2020 = cited(
  'from memory',
  'Impellizzeri F.M., Tenan M.S., Kempton T. et al. (2020) Acute:chronic workload ratio: conceptual issues and fundamental pitfalls. International Journal of Sports Physiology and Performance 15(6):907–913.',
);
export const BANISTER_1975 = cited(
  'seen',
  'Banister E.W., Calvert T.W., Savage M.V., Bach T. (1975) A systems model of training for athletic performance. Australian Journal of Sports Medicine 7:57–61.',
  { note: 'The sum was seen in public pages, the paper not.' },
);
export const BUSSO_1994 = cited(
  'from memory',
  'Busso T., Candau R., Lacour J.R. (1994) Fatigue and fitness modelled from the effects of training on performance. European Journal of Applied Physiology 69:50–54.',
);
export const CLARKE_SKIBA_2013 = cited(
  'from memory',
  'Clarke D.C., Skiba P.F. (2013) Rationale and resources for teaching the mathematical modeling of athletic training and performance. Advances in Physiology Education 37:134–152.',
);
export const HELLARD_2006 = cited(
  'seen',
  'Hellard P., Avalos M., Lacoste L. et al. (2006) Assessing the limitations of the Banister model in monitoring training. Journal of Sports Sciences 24(5):509–520.',
  { doi: '10.1080/02640410500244697', note: 'Nine swimmers.' },
);
export const MARCHAL_2025 = cited(
  'seen',
  'Marchal A., Benazieb O., Weldegebriel Y., Méline T., Imbach F. (2025) A Bayesian look at the model of fitness and fatigue. Scientific Reports 15.',
  { doi: '10.1038/s41598-025-88153-7', note: 'The title is in our own words.' },
);
export const BUSSO_2003 = cited(
  'seen',
  'Busso T. (2003) Variable dose-response relationship between exercise training and performance. Medicine & Science in Sports & Exercise 35:1188–1195.',
  {
    doi: '10.1249/01.MSS.0000074465.13621.37',
    note: 'The abstract was seen; six untrained people. Mean parameters are from memory.',
  },
);
export const HOOPER_1995 = cited(
  'seen',
  'Hooper S.L., Mackinnon L.T., Howard A., Gordon R.D., Bachmann A.W. (1995) Markers for monitoring overtraining and recovery. Medicine & Science in Sports & Exercise 27(1):106–112.',
  { note: 'The abstract was seen; 14 swimmers. The items and their sum were seen in another paper.' },
);
export const SAW_2016 = cited(
  'seen',
  'Saw A.E., Main L.C., Gastin P.B. (2016) Monitoring the athlete training response: subjective self-reported measures trump commonly used objective measures. British Journal of Sports Medicine 50:281–291.',
);
export const BARGER_2014 = cited(
  'seen',
  'Barger L.K. et al. (2014) Prevalence of sleep deficiency and use of hypnotic drugs in astronauts before, during, and after spaceflight. Lancet Neurology 13:904–912.',
  {
    note: 'The abstract was seen; measured sleep on long flights was about six hours. Volume and pages are from memory.',
  },
);
