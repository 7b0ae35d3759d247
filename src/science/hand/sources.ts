import { cited } from '../cited.ts';

// What a pressurised glove takes away

export const ROESCH_1986 = cited(
  'seen',
  "Roesch J.R. (1986) Hand grip performance with the bare hand and in the extravehicular activity glove. Master's thesis, Virginia Polytechnic Institute and State University.",
  {
    note: 'Abstract seen, and that of the companion proceedings paper of 1987 with the losses by hand size; 16 people.',
  },
);
export const APPENDINO_2014 = cited(
  'seen',
  'Appendino S. et al. (2014) Effects of a suit glove on grasping and pinching tasks. Acta Astronautica 96:151–158.',
  { note: 'Abstract seen; the title is in our own words.' },
);
export const BISHU_1995 = cited(
  'seen',
  'Bishu R.R., Kim B., Klute G. (1995) Force-endurance relationship: does it matter if gloves are donned? Applied Ergonomics 26(3):179–185.',
  { note: 'Abstract seen, title from memory; 6 people, 3 hand conditions, 3 pressures, 4 levels of force.' },
);
export const TANAKA_2014 = cited('seen', 'Tanaka K. (2014) Mobility of elastic and stiff suit gloves. J Ergonomics.', {
  note: 'The title is in our own words.',
});
export const STRAUSS_2005 = cited(
  'seen',
  'Strauss S., Krog R.L., Feiveson A.H. (2005) Injuries and symptoms in suited training. Aviation, Space, and Environmental Medicine 76(5):469–474.',
  { note: 'Figures seen in the abstract; the list of authors is partly from memory and the title in our own words.' },
);

// Norms

export const MATHIOWETZ_1985 = cited(
  'seen',
  'Mathiowetz V. et al. (1985) Grip and pinch strength: normative data for adults. Archives of Physical Medicine and Rehabilitation 66:69–74.',
  { note: 'Table read as reprinted with a dynamometer; 310 men and 328 women.' },
);
export const DODDS_2014 = cited(
  'seen',
  'Dodds R.M. et al. (2014) Grip strength across the life course: normative data from twelve British studies. PLoS ONE 9(12):e113637.',
  { note: 'Medians seen; the cut-offs of 27 and 16 kg are from memory.' },
);
export const WANG_2018 = cited(
  'seen',
  'Wang Y.C. et al. (2018) Hand-grip strength: normative reference values and equations. Journal of Orthopaedic & Sports Physical Therapy 48(9):685–693.',
  { note: 'The title is shortened; its regression on age, height and mass was not seen and is not used.' },
);

// How long a force can be held

export const FREY_LAW_AVIN_2010 = cited(
  'seen',
  'Frey Law L.A., Avin K.G. (2010) Endurance time is joint-specific: a modelling and meta-analysis investigation. Ergonomics 53:109–129.',
  {
    doi: '10.1080/00140130903389068',
    note: 'Abstract seen (194 papers, 369 points); the grip coefficients were seen where a public simulation quotes table 2.',
  },
);
export const ROHMERT_1960 = cited(
  'from memory',
  'Rohmert W. (1960) Ermittlung von Erholungspausen für statische Arbeit des Menschen. Internationale Zeitschrift für angewandte Physiologie 18:123–164.',
);
export const ROSE_1992 = cited('from memory', 'Rose L. et al. (1992) General model of endurance time in static work.', {
  note: 'The title is in our own words; coefficients as tabulated by El Ahrache and colleagues, from memory.',
});
export const MANENICA_1986 = cited(
  'from memory',
  'Manenica I. (1986) A technique for postural load assessment. In: The ergonomics of working postures. Taylor & Francis.',
  { note: 'Coefficients as tabulated by El Ahrache and colleagues, from memory.' },
);
export const EL_AHRACHE_2006 = cited(
  'from memory',
  'El Ahrache K., Imbeau D., Farbos B. (2006) Percentile values of maximum endurance times in static muscular work. International Journal of Industrial Ergonomics 36.',
  { note: 'The title is in our own words; it tabulates the models of the other authors.' },
);
export const BJORKSTEN_JONSSON_1977 = cited(
  'seen',
  'Björkstén M., Jonsson B. (1977) Endurance limit of force in long-term intermittent static contractions. Scandinavian Journal of Work, Environment & Health 3:23–27.',
  { doi: '10.5271/sjweh.2795', note: 'Abstract seen: 14.0 % intermittent, 7.9 % sustained, over 60 minutes.' },
);

// Critical force

export const KELLAWAN_TSCHAKOVSKY_2014 = cited(
  'seen',
  'Kellawan J.M., Tschakovsky M.E. (2014) The single-bout forearm critical force test. PLoS ONE 9(4):e93481.',
  { note: 'Abstract seen; the title is shortened; 10 men, 1 s on and 2 s off for 600 s.' },
);
export const GILES_2019 = cited(
  'from memory',
  'Giles D. et al. (2019) The determination of finger-flexor critical force in rock climbers. International Journal of Sports Physiology and Performance 14:972–979.',
);
export const GILES_2021 = cited(
  'seen',
  'Giles D. et al. (2021) An all-out test to determine finger flexor critical force in rock climbers. International Journal of Sports Physiology and Performance.',
  { doi: '10.1123/ijspp.2020-0637', note: 'Abstract seen; 129 climbers.' },
);
export const MCCLEAN_2023 = cited(
  'seen',
  'McClean Z.J. et al. (2023) Test-retest reliability of a 4-minute all-out critical force test in rock climbers. International Journal of Exercise Science 16(4):912–923.',
  { doi: '10.70252/DBIC1991', note: 'Abstract seen; 13 climbers.' },
);
export const BALAS_2024 = cited(
  'seen',
  'Baláš J. et al. (2024) Whether finger-flexor critical force can be held. European Journal of Applied Physiology 124:2787–2798.',
  { doi: '10.1007/s00421-024-05490-7', note: 'Abstract seen; the title is in our own words; 12 climbers.' },
);
export const KWAK_2023 = cited(
  'seen',
  'Kwak M., Succi P.J., Benitez B., Bergstrom H.C. (2023) Critical force of sustained handgrip. European Journal of Applied Physiology.',
  { note: 'Abstract seen; the title is in our own words; 10 women.' },
);

// Three compartments

export const XIA_FREY_LAW_2008 = cited(
  'from memory',
  'Xia T., Frey Law L.A. (2008) A theoretical approach for modeling peripheral muscle fatigue and recovery. Journal of Biomechanics 41:3046–3052.',
  { note: 'Equations and the rates of 10 per second were seen in public programs.' },
);
export const FREY_LAW_2012 = cited(
  'seen',
  'Frey-Law L.A., Looft J.M., Heitsman J. (2012) A three-compartment muscle fatigue model accurately predicts joint-specific maximum endurance times for sustained isometric tasks. Journal of Biomechanics 45:1803–1808.',
  {
    doi: '10.1016/j.jbiomech.2012.04.018',
    note: 'Abstract seen; the grip constants were seen where a public simulation quotes table 1.',
  },
);
export const LOOFT_2018 = cited(
  'seen',
  'Looft J.M., Herkert N., Frey-Law L. (2018) Modification of a three-compartment muscle fatigue model to predict peak torque decline during intermittent tasks. Journal of Biomechanics 77:16–25.',
  { doi: '10.1016/j.jbiomech.2018.06.005', note: 'Abstract seen.' },
);
export const LOOFT_2020 = cited(
  'seen',
  'Looft J.M., Frey-Law L.A. (2020) Adapting a fatigue model for shoulder flexion fatigue. Journal of Biomechanics.',
  {
    doi: '10.1016/j.jbiomech.2020.109762',
    note: 'The title is shortened; a rest multiplier of 30 for the hand was seen as a note in a public program.',
  },
);
export const RAKSHIT_2021 = cited(
  'seen',
  'Rakshit R., Xiang Y., Yang J. (2021) Functional muscle group- and sex-specific parameters for a three-compartment controller muscle fatigue model applied to isometric contractions. Journal of Biomechanics.',
  {
    doi: '10.1016/j.jbiomech.2021.110695',
    note: 'Table 2 as quoted by a public simulation, which says that every value matches print.',
  },
);

/** A second table of the same curves, made by people who share nothing with us. */
export const PUBLIC_FATIGUE_TABLE = cited(
  'seen',
  'Validation table of a public muscle simulation: endurance times by the grip curve and by the three compartments stepped at 0.02 s.',
  { note: 'It quotes table 2 of Frey Law and Avin (2010) and table 1 of Frey-Law (2012) for its constants.' },
);

// Training and the shoulder

export const LEVERNIER_LAFFAYE_2017 = cited(
  'seen',
  'Levernier G., Laffaye G. (2017) Four weeks of finger grip training in elite climbers. Journal of Strength and Conditioning Research.',
  { doi: '10.1519/JSC.0000000000002230', note: 'Abstract seen; the title is shortened.' },
);
export const SHOULDER_MEMORANDUM_2003 = cited(
  'seen',
  'Technical memorandum (2003) on shoulder injuries in suited training, with a survey of 42 people.',
  { note: 'The title is in our own words.' },
);
export const ANDERSSON_2017 = cited(
  'seen',
  'Andersson S.H. et al. (2017) Preventing overuse shoulder injuries among throwing athletes: a cluster-randomised trial. British Journal of Sports Medicine 51:1073–1080.',
  { note: 'Abstract seen; the title is shortened; 660 players.' },
);
export const ROTATION_RATIO_PRACTICE = cited(
  'from memory',
  'Ratio of external to internal rotation strength of at least 0.75, as used in screening of throwing athletes.',
  { note: 'No single paper was opened for the line.' },
);
