import { cited } from '../cited.ts';

export const SAYERS_1999 = cited(
  'seen',
  'Sayers S.P. et al. (1999) Cross-validation of three jump power equations. Medicine & Science in Sports & Exercise 31(4):572–577.',
  { note: 'Abstract and the line for squat jumps seen; the line for countermovement jumps from memory; 108 people.' },
);
export const HARMAN_1991 = cited(
  'from memory',
  'Harman E.A. et al. (1991) Estimation of human power output from vertical jump. Journal of Applied Sport Science Research 5(3):116–120.',
  {
    note: 'Many public copies print + 1822 for the peak; it is − 1822. Group means printed by Canavan and Vescovi (2004) fit the minus within 2 W and miss by 3600 W with the plus.',
  },
);
export const CANAVAN_VESCOVI_2004 = cited(
  'seen',
  'Canavan P.K., Vescovi J.D. (2004) Evaluation of power prediction equations: peak vertical jumping power in women. Medicine & Science in Sports & Exercise 36(9):1589–1593.',
  { note: 'Abstract seen: 20 women, body mass 65.9 ± 8.9 kg, with the means of three other lines on the same jumps.' },
);
export const DUNCAN_2008 = cited(
  'seen',
  'Duncan M.J., Lyons M., Nevill A.M. (2008) Evaluation of peak power prediction equations in male basketball players. Journal of Strength and Conditioning Research.',
  {
    doi: '10.1519/jsc.0b013e31816a6337',
    note: 'Abstract seen: 25 men of 16.5 years; all four lines fell short; ratio limits of agreement 6 % (Sayers, countermovement) to 12 % (Canavan and Vescovi).',
  },
);
export const FOX_MATHEWS_1974 = cited(
  'from memory',
  'Fox E.L., Mathews D.K. (1974) Interval training: conditioning for sports and general fitness. W.B. Saunders.',
  { note: 'Known as the Lewis formula.' },
);
export const BOSCO_1983 = cited(
  'from memory',
  'Bosco C., Luhtanen P., Komi P.V. (1983) A simple method for measurement of mechanical power in jumping. European Journal of Applied Physiology 50:273–282.',
  { note: 'The mechanics of a falling body are exact; that height may be timed this way is what is cited.' },
);
