import { newtons, type Newtons } from '#units/quantity.ts';
import { formula } from '../formula.ts';
import { force } from './inputs.ts';
import { BALAS_2024, MCCLEAN_2023 } from './sources.ts';

/** Share of a tested critical force that can be planned with: 16.8 of 20.1 kg. */
export const PLANNING_SHARE = 0.84;
/** Coefficients of variation between two all-out tests of one person, as printed. */
export const CRITICAL_FORCE_CV = 0.21;
export const IMPULSE_CV = 0.132;
export const PEAK_FORCE_CV = 0.056;

/** Critical force to plan with [N], from the mean of the last three contractions. */
export const planningCriticalForce = formula(
  {
    id: 'critical-force/planning',
    revision: 1,
    title: 'Critical force to plan with [N], from the mean of the last three contractions',
    equation: 'CF_plan = 0.84 CF',
    inputs: [force('mean of the last three contractions', 'CF', [0, 2000], [20, 500])],
    output: { name: 'critical force to plan with', symbol: 'CF_plan', unit: 'N' },
    source: BALAS_2024,
    doesNotKnow:
      'The person: it is one ratio of two group means (16.8 and 20.1 kg). At the mean of the last three, climbers lasted 440 ± 140 s, and one of 12 reached 12 minutes; four kilograms below it 69 % did.',
  },
  (critical: Newtons): Newtons => newtons(PLANNING_SHARE * critical),
);

/** Change of critical force between two tests. */
export const criticalForceChange = formula(
  {
    id: 'critical-force/change',
    revision: 1,
    title: 'Change of critical force between two tests',
    equation: 'Δ = CF_2 / CF_1 − 1',
    inputs: [
      force('critical force of the later test', 'CF_2', [0, 2000], [20, 500]),
      force('critical force of the earlier test', 'CF_1', [5, 2000], [20, 500]),
    ],
    output: { name: 'change', symbol: 'Δ', unit: '1' },
    source: MCCLEAN_2023,
    doesNotKnow: 'Whether hand, span of the handle and time of day were the same.',
  },
  (later: Newtons, earlier: Newtons): number => later / earlier - 1,
);
