import { cited } from '../cited.ts';

export const RHEA_2003 = cited(
  'seen',
  'Rhea M.R. et al. (2003) A meta-analysis to determine the dose response for strength development. Medicine & Science in Sports & Exercise 35(3):456–464.',
  { doi: '10.1249/01.MSS.0000053727.63505.D4', note: 'The abstract was seen: 140 studies, 1433 effect sizes.' },
);
export const PETERSON_2004 = cited(
  'seen',
  'Peterson M.D., Rhea M.R., Alvar B.A. (2004) Maximizing strength development in athletes: a meta-analysis to determine the dose-response relationship. Journal of Strength and Conditioning Research 18(2):377–382.',
  {
    doi: '10.1519/R-12842.1',
    note: 'The beginning of the abstract was seen: 37 studies, 370 effect sizes. Load, days and sets are from memory.',
  },
);
export const SCHOENFELD_2017 = cited(
  'seen',
  'Schoenfeld B.J., Ogborn D., Krieger J.W. (2017) Dose-response relationship between weekly resistance training volume and increases in muscle mass: a systematic review and meta-analysis. Journal of Sports Sciences 35(11):1073–1082.',
  {
    doi: '10.1080/02640414.2016.1210197',
    note: 'The abstract was seen: 34 groups of 15 studies. The gains of the three classes are from memory.',
  },
);
export const RALSTON_2017 = cited(
  'seen',
  'Ralston G.W. et al. (2017) The effect of weekly set volume on strength gain: a meta-analysis. Sports Medicine 47:2585–2601.',
  { doi: '10.1007/s40279-017-0762-7', note: 'The abstract was seen: 61 groups of nine studies.' },
);
export const RALSTON_2018 = cited(
  'seen',
  'Ralston G.W. et al. (2018) Weekly training frequency effects on strength gain: a meta-analysis. Sports Medicine – Open 4:36.',
  {
    doi: '10.1186/s40798-018-0149-9',
    note: 'The abstract was seen: 74 groups of twelve studies; pages are from memory.',
  },
);
export const GRGIC_2018 = cited(
  'seen',
  'Grgic J. et al. (2018) Effect of resistance training frequency on gains in muscular strength: a systematic review and meta-analysis. Sports Medicine 48:1207–1220.',
  {
    doi: '10.1007/s40279-018-0872-x',
    note: 'The abstract was seen: 22 studies. That it vanishes at equal volume is from memory.',
  },
);
export const PELLAND_2024 = cited(
  'seen',
  'Pelland J.C. et al. (2024) The resistance training dose-response: meta-regressions exploring the effects of weekly volume and frequency on muscle hypertrophy and strength gain. Preprint.',
  { note: 'The abstract was seen, not peer reviewed then: 67 studies of 2058 people.' },
);
export const OTTO_CARPINELLI_2006 = cited(
  'seen',
  'Otto R.M., Carpinelli R.N. (2006) A critical analysis of the single versus multiple set debate. Journal of Exercise Physiology online 9(1):32–57.',
  { note: 'The abstract was seen.' },
);
