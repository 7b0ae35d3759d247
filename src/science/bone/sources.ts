import { cited } from '../cited.ts';

// Measuring

export const ISCD_POSITIONS = cited(
  'seen',
  'International Society for Clinical Densitometry: official positions on precision assessment and its calculator.',
  {
    note: 'The design of the study, RMS SD and 2.77 were seen in pages of the society; the worst acceptable precision is from memory.',
  },
);
export const NELSON_2010 = cited(
  'seen',
  'Nelson L. et al. (2010) Is a fixed value for the least significant change appropriate? Journal of Clinical Densitometry 13.',
  {
    doi: '10.1016/j.jocd.2009.10.001',
    note: 'The abstract was seen: eight technologists, 30 patients each; volume from memory.',
  },
);
export const LOOKER_1998 = cited(
  'from memory',
  'Looker A.C. et al. (1998) Updated data on proximal femur bone mineral levels of US adults. Osteoporosis International 8:468–489.',
  { doi: '10.1007/s001980050093', note: 'The abstract was seen; means and SD of young adults are from memory.' },
);
export const MICHALSKI_2019 = cited(
  'seen',
  'Michalski A.S. et al. (2019) Hip load capacity cut-points for crew bone health standards. npj Microgravity 5:6.',
  {
    doi: '10.1038/s41526-019-0066-3',
    note: 'The title is in our own words; the introduction was seen: T scores of crew are taken against the young of their own sex.',
  },
);

// Loading

export const CARTER_1987 = cited(
  'from memory',
  'Carter D.R., Fyhrie D.P., Whalen R.T. (1987) Trabecular bone density and loading history: regulation of connective tissue biology by mechanical energy. Journal of Biomechanics 20:785–794.',
  { note: 'The abstract was seen; the equation is from memory.' },
);
export const WHALEN_1988 = cited(
  'from memory',
  'Whalen R.T., Carter D.R., Steele C.R. (1988) Influence of physical activity on the regulation of bone density. Journal of Biomechanics 21:825–837.',
  { note: 'The abstract was seen: magnitudes weigh more than numbers of cycles; the equation is from memory.' },
);
export const BEAUPRE_1990 = cited(
  'from memory',
  'Beaupré G.S., Orr T.E., Carter D.R. (1990) An approach for time-dependent bone modeling and remodeling. Journal of Orthopaedic Research 8:651–661.',
);
export const GENC_2009 = cited(
  'from memory',
  'Genc K.O., Humphreys B.T., Cavanagh P.R. (2009) Enhanced daily load stimulus. Aviation, Space, and Environmental Medicine 80:919–926.',
  { note: 'The title is in our own words; its three features were seen, its equation was not.' },
);
export const TURNER_ROBLING_2003 = cited(
  'seen',
  'Turner C.H., Robling A.G. (2003) Designing exercise regimens to increase bone strength. Exercise and Sport Sciences Reviews 31:45–50.',
  {
    note: 'The abstract was seen; the formula in secondary pages; the recovery constant of 6 h is from memory. From rodents.',
  },
);
export const ROBLING_2001 = cited(
  'from memory',
  'Robling A.G., Burr D.B., Turner C.H. (2001) Recovery periods restore mechanosensitivity to dynamically loaded bone. Journal of Experimental Biology 204:3389–3399.',
  { note: 'Tibiae of rats.' },
);
export const UMEMURA_1997 = cited(
  'from memory',
  'Umemura Y. et al. (1997) Five jumps per day increase bone mass and breaking force in rats. Journal of Bone and Mineral Research 12:1480–1485.',
);

// Loss and recovery

export const LANG_2004 = cited(
  'from memory',
  'Lang T. et al. (2004) Cortical and trabecular bone mineral loss from the spine and hip in long-duration spaceflight. Journal of Bone and Mineral Research 19:1006–1012.',
  { note: 'Rates of spine and hip seen in papers that quote it; number of people and trabecular rate from memory.' },
);
export const LANG_2006 = cited(
  'from memory',
  'Lang T.F. et al. (2006) Adaptation of the proximal femur to skeletal reloading after long-duration spaceflight. Journal of Bone and Mineral Research 21:1224–1230.',
);
export const STAVNICHUK_2020 = cited(
  'seen',
  'Stavnichuk M. et al. (2020) A systematic review and meta-analysis of bone loss in space travelers. npj Microgravity 6:13.',
  { doi: '10.1038/s41526-020-0103-2', note: 'The abstract was seen; 148 people.' },
);
export const GABEL_2022 = cited(
  'seen',
  'Gabel L. et al. (2022) Incomplete recovery of bone strength and trabecular microarchitecture at the distal tibia 1 year after return from long duration spaceflight. Scientific Reports 12:9446.',
  { doi: '10.1038/s41598-022-13461-1', note: 'The abstract was seen; 17 people.' },
);
export const VICO_2017 = cited(
  'seen',
  'Vico L. et al. (2017) Cortical and trabecular bone in the year after long missions. Journal of Bone and Mineral Research 32:2010–2021.',
  { doi: '10.1002/jbmr.3188', note: 'The title is in our own words; the abstract was seen; 13 people.' },
);
