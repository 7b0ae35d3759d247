import { cited } from '../cited.ts';

export const DE_LEVA_1996 = cited(
  'seen',
  "de Leva P. (1996) Adjustments to Zatsiorsky-Seluyanov's segment inertia parameters. Journal of Biomechanics 29(9):1223–1230, table 4.",
  {
    doi: '10.1016/0021-9290(95)00178-6',
    note: 'Read from two independent public copies of table 4, which agree.',
  },
);
export const WINTER_1990 = cited(
  'seen',
  'Winter D.A. (1990) Biomechanics and motor control of human movement, 2nd edition. Wiley.',
  { note: 'Masses and centres of mass were seen; lengths after Drillis and Contini are from memory.' },
);
export const FREGLY_2015 = cited(
  'seen',
  'Fregly B.J. et al. (2015) Computational prediction of muscle moments during resistive exercise in weightlessness. Journal of Biomechanical Engineering.',
  { note: 'Abstract only; the title is in our own words.' },
);
export const SJOBERG_2020 = cited(
  'seen',
  'Sjöberg M. et al. (2020) Hip and low-back loading in flywheel squats under simulated weightlessness. Sports Biomechanics.',
  { note: 'Abstract only; the title is in our own words.' },
);
