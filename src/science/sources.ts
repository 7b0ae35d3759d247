import { cited } from './cited.ts';
import type { Source } from './formula.ts';

/** Sources of more than one folder; what a single folder cites stands in its own sources.ts. Each paper stands once. */

export const COMMON_PRACTICE: Source = { text: 'Common practice, no source.', status: 'common practice' };
export const OUR_OWN_DESIGN: Source = {
  text: 'Our own design; check values were computed a second time, by a separate program.',
  status: 'our own design',
};

/** What a check of such a rule is held against: its own words, applied to a case and counted. */
export const COUNTED_BY_HAND: Source = { text: 'A rule of our own, counted by hand.', status: 'our own design' };

// Papers that several chapters rest on

export const PETERSEN_2016 = cited(
  'seen',
  'Petersen N. et al. (2016) In-flight exercise countermeasures for long missions. Extreme Physiology & Medicine 5:9.',
  { doi: '10.1186/s13728-016-0050-4', note: 'The title is in our own words.' },
);
export const SMITH_2012 = cited(
  'seen',
  'Smith S.M. et al. (2012) Benefits for bone from resistance exercise and nutrition in long-duration spaceflight. Journal of Bone and Mineral Research.',
  { doi: '10.1002/jbmr.1647' },
);
export const ENGLISH_2020 = cited(
  'seen',
  'English K.L. et al. (2020) High intensity training during long missions. npj Microgravity 6:21.',
  { doi: '10.1038/s41526-020-00111-x', note: 'The title is in our own words; 26 people, both groups pooled.' },
);
export const SCOTT_2023 = cited(
  'seen',
  'Scott J.M. et al. (2023) Effects of exercise countermeasures on multisystem function in long duration spaceflight. npj Microgravity 9:11.',
  { doi: '10.1038/s41526-023-00256-5', note: 'The title is in our own words; 46 people.' },
);
export const MOORE_2014 = cited(
  'seen',
  'Moore A.D. et al. (2014) Peak exercise oxygen uptake during and following long-duration spaceflight. Journal of Applied Physiology 117:231–238.',
  { doi: '10.1152/japplphysiol.01251.2013', note: 'The abstract was seen; volume and doi are from memory; 14 people.' },
);
export const MOORE_2015 = cited(
  'seen',
  'Moore A.D., Lynn P.A., Feiveson A.H. (2015) The first ten years of aerobic exercise responses to long flights. Aerospace Medicine and Human Performance 86(12 Suppl.):A78–A86.',
  { note: 'The title is in our own words; the abstract was seen; 37 people, 48 to 219 days, 163 on average.' },
);
/** An early report of five of the people of Moore 2014: the only one with a second test after landing in litres. */
export const MOORE_2010 = cited(
  'seen',
  'Moore A.D. et al. (2010) Aerobic capacity following long flights: preliminary results. Conference abstract.',
  { note: 'The title is in our own words; the abstract was seen; five people, flights of 91 to 188 days.' },
);
export const PLOUTZ_SNYDER_2018 = cited(
  'seen',
  'Ploutz-Snyder L.L. et al. (2018) Exercise training through 70 days of bed rest. Medicine & Science in Sports & Exercise 50(9):1920–1928.',
  {
    doi: '10.1249/MSS.0000000000001618',
    note: 'The title is in our own words; abstract and introduction were seen; pattern of the sets from memory, rests and the four-minute intensity with low confidence.',
  },
);
export const CAVANAGH_2010 = cited(
  'seen',
  'Cavanagh P.R., Genc K.O. et al. (2010) Foot forces during typical days on an orbiting station. Journal of Biomechanics 43:2182–2188.',
  { note: 'The title is in our own words; the abstract was seen; volume and pages from memory; four men.' },
);
export const LEBLANC_2000 = cited(
  'from memory',
  'LeBlanc A. et al. (2000) Bone mineral and lean tissue loss after long duration space flight. Journal of Musculoskeletal and Neuronal Interactions 1:157–160.',
  { note: 'Number of people (18) and length of the missions (4 to 14.4 months) seen; rates and their SD from memory.' },
);
export const AXPE_2020 = cited(
  'seen',
  'Axpe E. et al. (2020) A human mission to Mars: predicting the bone mineral density loss of astronauts. PLoS ONE 15:e0226434.',
  { doi: '10.1371/journal.pone.0226434', note: 'The fit and its constant were seen; 69 people compiled.' },
);
export const PETERSEN_2015 = cited(
  'seen',
  'Petersen N. et al. (2015) Reliability of a battery of fitness tests for crews. Extreme Physiology & Medicine 4:12.',
  { doi: '10.1186/s13728-015-0032-y', note: 'The title is in our own words.' },
);
export const HELMS_2017 = cited(
  'seen',
  'Helms E.R. et al. (2017) RPE and velocity relationships for the back squat, bench press, and deadlift in powerlifters. Journal of Strength and Conditioning Research 31(2):292–297.',
  { doi: '10.1519/JSC.0000000000001517' },
);
export const ZOURDOS_2016 = cited(
  'seen',
  'Zourdos M.C. et al. (2016) Novel resistance training-specific rating of perceived exertion scale measuring repetitions in reserve. Journal of Strength and Conditioning Research 30(1):267–275.',
  { note: 'Whole steps from 7 to 10 were seen; half steps and the part below 7 are from memory.' },
);
export const KRAEMER_2002 = cited(
  'seen',
  'Kraemer W.J. et al. (2002) Progression models in resistance training for healthy adults. Medicine & Science in Sports & Exercise 34(2):364–380.',
);
export const RATAMESS_2009 = cited(
  'seen',
  'Ratamess N.A. et al. (2009) Progression models in resistance training for healthy adults. Medicine & Science in Sports & Exercise 41(3):687–708.',
);
export const MAYHEW_2008 = cited(
  'seen',
  'Mayhew J.L. et al. (2008) Accuracy of prediction equations for determining one repetition maximum bench press in women before and after resistance training. Journal of Strength and Conditioning Research 22(5):1570–1577.',
);
export const ENGLISH_2015 = cited(
  'seen',
  'English K.L. et al. (2015) Isokinetic strength changes following long-duration spaceflight. Aerospace Medicine and Human Performance 86(12 Suppl.):A68–A77.',
  {
    doi: '10.3357/AMHP.EC09.2015',
    note: 'Abstract seen: 37 people, 163 ± 38 days; the title is in our own words, pages from memory.',
  },
);
export const BOSQUET_2013 = cited(
  'seen',
  'Bosquet L. et al. (2013) Effect of training cessation on muscular performance: a meta-analysis. Scandinavian Journal of Medicine & Science in Sports 23(3):e140–e149.',
  { doi: '10.1111/sms.12047', note: 'Abstract seen: 103 studies.' },
);
export const BICKEL_2011 = cited(
  'seen',
  'Bickel C.S., Cross J.M., Bamman M.M. (2011) Exercise dosing to retain resistance training adaptations in young and older adults. Medicine & Science in Sports & Exercise 43(7):1177–1187.',
  {
    note: 'Abstract seen: 70 people. That one third was one day of three sets, one ninth one day of one set: from memory.',
  },
);
export const SPIERING_2021 = cited(
  'seen',
  'Spiering B.A. et al. (2021) Maintaining physical performance: the minimal dose of exercise needed to preserve endurance and strength over time. Journal of Strength and Conditioning Research 35(5):1449–1458.',
  { doi: '10.1519/JSC.0000000000003964', note: 'Abstract seen.' },
);
export const MUJIKA_PADILLA_2000 = cited(
  'seen',
  'Mujika I., Padilla S. (2000) Detraining: loss of training-induced physiological and performance adaptations. Sports Medicine 30(2):79–87 and 30(3):145–154.',
  { note: 'Abstracts seen; percentages of oxygen uptake from memory.' },
);
export const COYLE_1984 = cited(
  'from memory',
  'Coyle E.F. et al. (1984) Time course of loss of adaptations after stopping prolonged intense endurance training. Journal of Applied Physiology 57:1857–1864.',
);
export const LEE_2004 = cited(
  'seen',
  'Lee S.M.C. et al. (2004) Foot-ground reaction force during resistive exercise in parabolic flight. Aviation, Space, and Environmental Medicine 75(5):405–412.',
);
export const SIBONGA_2007 = cited(
  'from memory',
  'Sibonga J.D. et al. (2007) Recovery of spaceflight-induced bone loss. Bone 41:973–978.',
  { note: 'Number of people (45) and exponential fit seen; values of the sites from memory.' },
);
export const SKIBA_2015 = cited(
  'from memory',
  'Skiba P.F. et al. (2015) Intramuscular determinants of the ability to recover work capacity above critical power. European Journal of Applied Physiology 115:703–713.',
);
export const BLACKMAN_VIGNA_2021 = cited(
  'from memory',
  'Blackman D., Vigna S. (2021) Scrambled linear pseudorandom number generators. ACM Transactions on Mathematical Software 47(4):36.',
);

export const GELMAN_2013 = cited(
  'from memory',
  'Gelman A. et al. (2013) Bayesian data analysis, 3rd edition. CRC Press.',
  { note: 'Conjugate normal and Beta models; checked against SciPy.' },
);

// Reference libraries: nobody here wrote them. Scripts, versions and seeds stand in test/fixtures/science.

const library = (name: string): Source => ({
  text: `${name}, run by a script of test/fixtures/science; versions and seeds stand beside its values.`,
  status: 'seen',
});
export const SCIPY = library('SciPy');
export const NUMPY = library('NumPy');
export const STATSMODELS = library('statsmodels');
export const R_PROJECT = library('R');
/** The printed equation, computed a second time by a program that shares no line with this one. */
export const RECOMPUTED = library('The printed equation recomputed in Python by a separate program');
