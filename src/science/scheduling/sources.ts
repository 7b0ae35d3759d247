import { cited } from '../cited.ts';

export const HICKSON_1980 = cited(
  'seen',
  'Hickson R.C. (1980) Interference of strength development by simultaneously training for strength and endurance. European Journal of Applied Physiology 45:255–263.',
  { doi: '10.1007/BF00421333', note: 'The abstract was seen.' },
);
export const WILSON_2012 = cited(
  'seen',
  'Wilson J.M. et al. (2012) Concurrent training: a meta-analysis examining interference of aerobic and resistance exercises. Journal of Strength and Conditioning Research 26(8):2293–2307.',
  { doi: '10.1519/JSC.0b013e31823a3e2d', note: 'The abstract was seen: 21 studies, 422 effect sizes.' },
);
export const SCHUMANN_2022 = cited(
  'seen',
  'Schumann M. et al. (2022) Compatibility of concurrent aerobic and strength training for skeletal muscle size and function: an updated systematic review and meta-analysis. Sports Medicine 52:601–612.',
  { doi: '10.1007/s40279-021-01587-7', note: 'The abstract was seen: 43 studies.' },
);
export const ROBINEAU_2016 = cited(
  'seen',
  'Robineau J. et al. (2016) Specific training effects of concurrent aerobic and strength exercises depend on recovery duration. Journal of Strength and Conditioning Research 30(3):672–683.',
  {
    doi: '10.1519/JSC.0000000000000798',
    note: 'The abstract was seen: 58 amateur rugby players, strength always before aerobic work.',
  },
);
export const MURLASITS_2017 = cited(
  'seen',
  'Murlasits Z., Kneffel Z., Thalib L. (2017) The physiological effects of concurrent strength and endurance training sequence: a systematic review and meta-analysis. Journal of Sports Sciences.',
  { doi: '10.1080/02640414.2017.1364405', note: 'The abstract was seen.' },
);
export const EDDENS_2018 = cited(
  'seen',
  'Eddens L., van Someren K., Howatson G. (2018) The role of intra-session exercise sequence in the interference effect: a systematic review with meta-analysis. Sports Medicine 48:177–188.',
  { doi: '10.1007/s40279-017-0784-1', note: 'The abstract was seen: ten studies.' },
);
export const STUTZ_2019 = cited(
  'seen',
  'Stutz J., Eiholzer R., Spengler C.M. (2019) Effects of evening exercise on sleep in healthy participants: a systematic review and meta-analysis. Sports Medicine 49:269–287.',
  { doi: '10.1007/s40279-018-1015-0', note: 'The abstract was seen.' },
);
export const LOEHR_2015 = cited(
  'seen',
  'Loehr J.A. et al. (2015) Physical training for long-duration spaceflight. Aerospace Medicine and Human Performance 86(12 Suppl.):A14–A23.',
  { doi: '10.3357/AMHP.EC03.2015', note: 'The abstract was seen; the title is in our own words.' },
);
