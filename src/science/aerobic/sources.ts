import { cited } from '../cited.ts';

// Cost of work

export const BUSHMAN_2020 = cited(
  'seen',
  "Bushman B.A. (2020) Metabolic calculations in exercise programming. ACSM's Health & Fitness Journal 24(3):6–10 and 24(4):5–8.",
  {
    doi: '10.1249/FIT.0000000000000562',
    note: 'Restates the handbook’s equations (10th edition); the title is in our own words. Ranges of speed and power come from memory or from secondary pages.',
  },
);
export const ACSM_HANDBOOK = cited(
  'from memory',
  'American College of Sports Medicine. Guidelines for exercise testing and prescription, 10th and 11th edition.',
  { note: 'Bands of heart rate and effort seen in a page that quotes the 10th edition.' },
);
export const BYRNE_2005 = cited(
  'from memory',
  'Byrne N.M. et al. (2005) Metabolic equivalent: one size does not fit all. Journal of Applied Physiology 99:1112–1119.',
);
export const WEIR_1949 = cited(
  'from memory',
  'Weir J.B. de V. (1949) New methods for calculating metabolic rate with special reference to protein metabolism. Journal of Physiology 109:1–9.',
);
export const KOKKINOS_2018 = cited(
  'seen',
  'Kokkinos P. et al. (2018) A new generalized cycle ergometry equation for predicting maximal oxygen uptake. European Journal of Preventive Cardiology 25:1077–1082.',
  { doi: '10.1177/2047487318772667', note: 'Abstract seen; 5100 people; volume and pages from memory.' },
);

// Heart rate and intensity

export const TANAKA_2001 = cited(
  'from memory',
  'Tanaka H., Monahan K.D., Seals D.R. (2001) Age-predicted maximal heart rate revisited. Journal of the American College of Cardiology 37:153–156.',
);
export const GELLISH_2007 = cited(
  'seen',
  'Gellish R.L. et al. (2007) Longitudinal modeling of the relationship between age and maximal heart rate. Medicine & Science in Sports & Exercise 39:822–829.',
  {
    doi: '10.1097/mss.0b013e31803349c6',
    note: 'Abstract seen with the straight line (132 people, 908 tests); the curved form is from memory.',
  },
);
export const JACKSON_2007 = cited(
  'seen',
  'Jackson A.S. (2007) Estimating maximum heart rate from age: is it a linear relationship? Medicine & Science in Sports & Exercise 39:821.',
  { doi: '10.1249/mss.0b013e318054d3ca', note: 'Seen; prints Gellish’s line with its constants before rounding.' },
);
export const KARVONEN_1957 = cited(
  'from memory',
  'Karvonen M.J., Kentala E., Mustala O. (1957) The effects of training on heart rate. Annales Medicinae Experimentalis et Biologiae Fenniae 35:307–315.',
);
export const SWAIN_LEUTHOLTZ_1997 = cited(
  'seen',
  'Swain D.P., Leutholtz B.C. (1997) Heart rate reserve is equivalent to %VO2 reserve, not to %VO2max. Medicine & Science in Sports & Exercise 29:410–414.',
  { doi: '10.1097/00005768-199703000-00018', note: 'Abstract seen; 63 people.' },
);
export const SWAIN_1998 = cited(
  'seen',
  'Swain D.P. et al. (1998) Relationship between heart-rate reserve and oxygen-uptake reserve in treadmill exercise. Medicine & Science in Sports & Exercise 30:318–321.',
  { note: 'Abstract seen; 50 people; the title is in our own words.' },
);
export const SWAIN_1994 = cited(
  'seen',
  'Swain D.P. et al. (1994) Target heart rates for the development of cardiorespiratory fitness. Medicine & Science in Sports & Exercise 26:112–116.',
  { note: 'Abstract seen with four mean pairs (162 people, 18 to 34 years); the line through them is from memory.' },
);
export const GARBER_2011 = cited(
  'from memory',
  'Garber C.E. et al. (2011) Quantity and quality of exercise for developing and maintaining fitness in healthy adults. Medicine & Science in Sports & Exercise 43:1334–1359.',
  {
    doi: '10.1249/MSS.0b013e318213fefb',
    note: 'Abstract seen, the table of intensities not; its MET column is from memory with low confidence.',
  },
);

// Estimating the maximal uptake

export const ASTRAND_RYHMING_1954 = cited(
  'from memory',
  'Åstrand P.-O., Ryhming I. (1954) A nomogram for calculation of aerobic capacity from pulse rate during submaximal work. Journal of Applied Physiology 7:218–221.',
  {
    doi: '10.1152/jappl.1954.7.2.218',
    note: 'The original is a chart; the algebra is the usual approximation of it, from memory.',
  },
);
export const ASTRAND_1960 = cited(
  'from memory',
  'Åstrand I. (1960) Aerobic work capacity in men and women with special reference to age. Acta Physiologica Scandinavica 49 (Supplement 169):1–92.',
  { note: 'The citation was seen; the factors are from memory.' },
);
export const CINK_THOMAS_1981 = cited(
  'seen',
  'Cink R.E., Thomas T.R. (1981) Validity of the Åstrand–Ryhming nomogram for predicting maximal oxygen intake. British Journal of Sports Medicine 15:182–185.',
  { note: 'Abstract seen; 40 men.' },
);
export const BJORKMAN_2016 = cited(
  'seen',
  'Björkman F. et al. (2016) Validity of a revised submaximal cycle test, with the single-stage test beside it. European Journal of Applied Physiology.',
  { note: 'Full text seen (PMC4983286); the title is in our own words; adults of 20 to 86 years.' },
);
export const STAGED_CYCLE_PROTOCOL = cited(
  'from memory',
  'Golding L.A., Myers C.R., Sinning W.E. (eds) (1989) Y’s way to physical fitness, 3rd edition. Human Kinetics.',
  { note: 'Stages and second work rates from memory.' },
);
export const KLINE_1987 = cited(
  'seen',
  'Kline G.M. et al. (1987) Estimation of VO2max from a one-mile track walk, gender, age, and body weight. Medicine & Science in Sports & Exercise 19:253–259.',
  {
    note: 'Abstract seen with the litre form (343 people, 30 to 69 years); the form per kilogram was seen in secondary pages.',
  },
);
export const GEORGE_1993 = cited(
  'seen',
  'George J.D. et al. (1993) VO2max estimation from a submaximal 1-mile track jog for fit college-age individuals. Medicine & Science in Sports & Exercise 25:401–406.',
  { note: 'Abstract seen with the errors of the 1.5-mile run (18 to 29 years); its equation is from memory.' },
);
export const COOPER_1968 = cited(
  'from memory',
  'Cooper K.H. (1968) A means of assessing maximal oxygen intake. JAMA 203:201–204.',
  { note: 'The equation was seen in secondary pages; no standard error is known to us.' },
);
export const LEGER_1988 = cited(
  'from memory',
  'Léger L.A. et al. (1988) The multistage 20 metre shuttle run test for aerobic fitness. Journal of Sports Sciences 6:93–101.',
);
export const STICKLAND_2003 = cited(
  'seen',
  'Stickland M.K. et al. (2003) Prediction of maximal aerobic power from the 20-m multi-stage shuttle run test. Canadian Journal of Applied Physiology 28:272–282.',
  { doi: '10.1139/h03-021', note: 'Abstract seen: Léger’s lines read low in 122 adults of about 25 years.' },
);

export const SPREAD_OF_ESTIMATES = cited(
  'from memory',
  'Working figures for the spread of estimates of the maximal uptake, collected from several papers.',
);

// Under a harness

export const TEUNISSEN_2007 = cited(
  'seen',
  'Teunissen L.P.J., Grabowski A., Kram R. (2007) Effects of independently altering body weight and body mass on the metabolic cost of running. Journal of Experimental Biology 210:4418–4427.',
  { doi: '10.1242/jeb.004481', note: 'Abstract and the figure with both lines seen; 10 runners at 3 m/s.' },
);
export const FARLEY_MCMAHON_1992 = cited(
  'from memory',
  'Farley C.T., McMahon T.A. (1992) Energetics of walking and running: insights from simulated reduced-gravity experiments. Journal of Applied Physiology 73:2709–2712.',
);
export const ARELLANO_KRAM_2014 = cited(
  'from memory',
  'Arellano C.J., Kram R. (2014) Partitioning the metabolic cost of human running: a task-by-task approach. Integrative and Comparative Biology 54:1084–1098.',
  { note: 'The shares were seen in the abstract of a thesis from the same laboratory.' },
);
export const MUNRO_1987 = cited(
  'from memory',
  'Munro C.F., Miller D.I., Fuglevand A.J. (1987) Ground reaction forces in running: a reexamination. Journal of Biomechanics 20:147–155.',
);
export const GENC_2010 = cited(
  'seen',
  'Genc K.O. et al. (2010) Foot forces during exercise on an orbiting station. Journal of Biomechanics 43:3020–3027.',
  {
    note: 'Abstract seen (4 people); title in our own words. Its closing percents are read as shares of the values on Earth that were reached, not as losses.',
  },
);
export const CHANG_2001 = cited(
  'seen',
  'Chang Y.-H., Hamerski C.M., Kram R. (2001) Applied horizontal force increases impact loading in reduced-gravity running. Journal of Biomechanics 34:679–685.',
);

// Programmes, changes, norms

export const HACKNEY_2011 = cited(
  'seen',
  'Hackney K.J. et al. (2011) High-intensity exercise in 14 days of bed rest. Conference abstract.',
  { note: 'Abstract seen (9 people); the title is in our own words.' },
);
export const HEDGE_2022 = cited(
  'seen',
  'Hedge E.T. et al. (2022) Implementation of exercise countermeasures in bed rest of older adults. Frontiers in Physiology 13:928313.',
  { doi: '10.3389/fphys.2022.928313', note: 'Table 2 seen; the title is in our own words.' },
);
export const KAMINSKY_2015 = cited(
  'from memory',
  'Kaminsky L.A., Arena R., Myers J. (2015) Reference standards for cardiorespiratory fitness measured with cardiopulmonary exercise testing. Mayo Clinic Proceedings 90:1515–1523.',
  {
    doi: '10.1016/j.mayocp.2015.07.026',
    note: 'Abstract seen: the medians of 20 to 29 and 70 to 79 years; every other cell is from memory.',
  },
);
export const KAMINSKY_2022 = cited(
  'seen',
  'Kaminsky L.A. et al. (2022) Updated reference standards for cardiorespiratory fitness. Mayo Clinic Proceedings.',
  { doi: '10.1016/j.mayocp.2021.08.020', note: 'Abstract seen; the title is in our own words.' },
);
export const PETERMAN_2020 = cited(
  'seen',
  'Peterman J.E. et al. (2020) Development of global reference standards for directly measured cardiorespiratory fitness. Mayo Clinic Proceedings.',
  { doi: '10.1016/j.mayocp.2019.06.013', note: 'Abstract seen; 11 678 tests of its own.' },
);
export const MYERS_2017 = cited(
  'from memory',
  'Myers J. et al. (2017) A reference equation for normal standards for VO2 max. Progress in Cardiovascular Diseases 60:21–29.',
  { note: 'Abstract seen (7783 people, R² 0.62), its equation not.' },
);
export const DE_SOUZA_E_SILVA_2018 = cited(
  'seen',
  'de Souza e Silva C.G. et al. (2018) A reference equation for maximal aerobic power for treadmill and cycle ergometer exercise testing. European Journal of Preventive Cardiology 25:742–750.',
  { note: 'Abstract seen with the equation (7617 people to develop it); volume and pages from memory.' },
);
