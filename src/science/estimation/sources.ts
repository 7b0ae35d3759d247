import { cited } from '../cited.ts';

export const KALMAN_1960 = cited(
  'seen',
  'Kalman R.E. (1960) A new approach to linear filtering and prediction problems. Journal of Basic Engineering 82:35–45.',
  { note: 'The citation was seen; the equations are from memory and were checked numerically.' },
);
export const RAUCH_TUNG_STRIEBEL_1965 = cited(
  'seen',
  'Rauch H.E., Tung F., Striebel C.T. (1965) Maximum likelihood estimates of linear dynamic systems. AIAA Journal 3(8):1445–1450.',
  { note: 'The citation was seen; the equations are from memory and were checked numerically.' },
);
export const DURBIN_KOOPMAN_2012 = cited(
  'seen',
  'Durbin J., Koopman S.J. (2012) Time series analysis by state space methods, 2nd edition. Oxford University Press.',
  { note: 'The citation was seen; the equations are from memory and were checked numerically.' },
);
