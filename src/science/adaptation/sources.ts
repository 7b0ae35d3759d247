import { cited } from '../cited.ts';

// Losses in flight

export const LEBLANC_2000_MUSCLE = cited(
  'seen',
  'LeBlanc A. et al. (2000) Muscle volume, MRI relaxation times (T2), and body composition after spaceflight. Journal of Applied Physiology 89(6):2158–2164.',
  { note: 'Abstract seen: 14 to 16 people for 16 to 28 weeks, 4 people for 17 days.' },
);
export const GOPALAKRISHNAN_2010 = cited(
  'seen',
  'Gopalakrishnan R. et al. (2010) Muscle volume, strength, endurance, and exercise loads during 6-month missions in space. Aviation, Space, and Environmental Medicine 81(2):91–102.',
  { doi: '10.3357/asem.2583.2010', note: 'Abstract seen: 4 men, 181 ± 15 days.' },
);
export const TRAPPE_2009 = cited(
  'from memory',
  'Trappe S. et al. (2009) Exercise in space: human skeletal muscle after six months in flight. Journal of Applied Physiology 106:1159–1168.',
  { note: 'The title is in our own words; whether ± is a standard deviation or error is not remembered.' },
);
export const KORYAK_2017 = cited(
  'seen',
  'Koryak Y.A. (2017) Influence of long-term space flight on mechanical properties of the human triceps surae muscle. Journal of Skeletal Muscle.',
  { doi: '10.14302/issn.2832-4048.jsm-17-1621', note: 'Abstract seen: 7 men, three days after landing.' },
);
export const MCNAMARA_2019 = cited(
  'seen',
  'McNamara K.P. et al. (2019) Trunk muscles after four to six months in flight. Frontiers in Physiology 10:627.',
  { note: 'The title is in our own words; abstract seen: 16 people.' },
);

// Losses in bed and on one leg

export const MARUSIC_2021 = cited(
  'seen',
  'Marusic U. et al. (2021) Nonuniform loss of muscle strength and atrophy during bed rest: a systematic review. Journal of Applied Physiology 131(1):194–206.',
  {
    doi: '10.1152/japplphysiol.00363.2020',
    note: 'Abstract and the first rows of its table 1 seen: 318 adults, 5 to 120 days.',
  },
);
export const DE_BOER_2007 = cited(
  'seen',
  'de Boer M.D. et al. (2007) Time course of muscular, neural and tendinous adaptations to 23 day unilateral lower-limb suspension in young men. Journal of Physiology 583:1079–1091.',
  { doi: '10.1113/jphysiol.2007.135392', note: 'Abstract seen: 9 men unloaded, 8 not.' },
);
export const KOPPELMANS_2018 = cited(
  'seen',
  'Koppelmans V. et al. (2018) Exercise effects on bed rest-induced brain changes. PLoS ONE 13(10):e0205515, table 1.',
  {
    doi: '10.1371/journal.pone.0205515',
    note: 'The table was seen; authors and title from memory; 5 controls and 13 who trained, 70 days.',
  },
);
export const MUIR_2011 = cited(
  'seen',
  'Muir J. et al. (2011) Postural instability caused by extended bed rest. Gait & Posture 33(3):429–435, table 3.',
  {
    doi: '10.1016/j.gaitpost.2010.12.019',
    note: 'The table was seen; authors from memory, the title shortened; 90 days.',
  },
);
export const KRAMER_2021 = cited(
  'seen',
  'Kramer A. et al. (2021) Artificial gravity and physical capacity in sixty days of bed rest. European Journal of Applied Physiology 121:2015–2026.',
  {
    note: 'Abstract seen in an open copy: 24 people in three groups; authors and place from memory, the title is in our own words.',
  },
);

// Gains

export const HUBAL_2005 = cited(
  'seen',
  'Hubal M.J. et al. (2005) Variability in muscle size and strength gain after unilateral resistance training. Medicine & Science in Sports & Exercise 37(6):964–972.',
  { note: 'Abstract seen: 585 people; the mean of 54 % is from memory.' },
);
export const STEELE_2022 = cited(
  'seen',
  'Steele J. et al. (2022) Long-term time-course of strength adaptation to minimal dose resistance training through retrospective longitudinal growth modeling. Research Quarterly for Exercise and Sport.',
  { doi: '10.1080/02701367.2022.2070592', note: 'Abstract seen: 14,690 people, up to 352 weeks.' },
);
export const LATELLA_2020 = cited(
  'seen',
  'Latella C. et al. (2020) Long-term strength adaptation: a 15-year analysis of powerlifting athletes. Journal of Strength and Conditioning Research 34(9):2412–2418.',
  { note: 'Abstract seen: 1897 people.' },
);
export const GAINS_PREPRINT = cited(
  'seen',
  'Preprint rs-6938909: weekly gains in squat, bench press and deadlift, 128 studies of 4357 people.',
  { note: 'Abstract seen, not peer reviewed; the title is in our own words and the authors were not noted.' },
);

// Stopping, keeping, tapering

export const MCMASTER_2013 = cited(
  'from memory',
  'McMaster D.T. et al. (2013) The development, retention and decay rates of strength and power in elite rugby union, rugby league and American football. Sports Medicine 43:367–384.',
  { note: 'Seen only as cited by others.' },
);
export const TRAVIS_2020 = cited(
  'seen',
  'Travis S.K. et al. (2020) Tapering and peaking maximal strength for powerlifting performance: a review. Sports 8(9):125.',
  { doi: '10.3390/sports8090125', note: 'Abstract seen; numbers from memory and from a summary by others.' },
);
export const PRITCHARD_2015 = cited(
  'seen',
  'Pritchard H. et al. (2015) Effects and mechanisms of tapering in maximizing muscular strength. Strength and Conditioning Journal 37(2):72–83.',
  { doi: '10.1519/SSC.0000000000000125', note: 'Abstract seen.' },
);
export const DELOAD_INTERVIEWS = cited(
  'seen',
  'Interviews with coaches on deloading, preprint 208 of a public server for sport science.',
  { note: 'Abstract seen; the title is in our own words and the authors were not noted.' },
);

// Prescriptions, readiness, first weeks

export const LOEHR_2011 = cited(
  'seen',
  'Loehr J.A. et al. (2011) Musculoskeletal adaptations to training with a flight resistive machine on the ground. Medicine & Science in Sports & Exercise 43(1):146–156.',
  { note: 'Abstract seen; the title is in our own words.' },
);
export const RYDER_2013 = cited(
  'seen',
  'Ryder J.W. et al. (2013) Influence of muscle strength to weight ratio on functional task performance. European Journal of Applied Physiology 113(4):911–921.',
  { doi: '10.1007/s00421-012-2500-z', note: 'Abstract seen: 20 people in a weighted suit.' },
);
export const STANDARD_3001 = cited('from memory', 'Standard 3001, volume 1: health of flight crews.', {
  note: 'Not opened; the revision in force is to be confirmed before anybody is judged by it.',
});
export const CHANG_2016 = cited(
  'seen',
  'Chang D.G. et al. (2016) Lumbar spine paraspinal muscle and intervertebral disc height changes on long flights. Spine.',
  { note: 'Only a press text beside the paper was seen; the title is in our own words.' },
);
export const KERSTMAN_2012 = cited(
  'from memory',
  'Kerstman E.L. et al. (2012) Space adaptation back pain: a retrospective study. Aviation, Space, and Environmental Medicine 83:2–7.',
);
export const SCHEURING_2009 = cited(
  'from memory',
  'Scheuring R.A. et al. (2009) Musculoskeletal injuries and minor trauma in space: incidence and injury mechanisms. Aviation, Space, and Environmental Medicine 80:117–124.',
);
