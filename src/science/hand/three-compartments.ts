import { fraction, seconds, type Fraction, type Seconds } from '#units/quantity.ts';
import { formula, type FormulaOutput, type FormulaRecord } from '../formula.ts';
import { curveOf, type Plot } from '../plot.ts';
import { OUR_OWN_DESIGN } from '../sources.ts';
import { duty, fatigueRate, recoveryRate, restMultiplier, target, time, tired } from './inputs.ts';
import { POOLED_GRIP, SUSTAINED_GRIP } from './fatigue-constants.table.ts';
import { GILES_2019, KWAK_2023, LOOFT_2018, XIA_FREY_LAW_2008 } from './sources.ts';

/**
 * Muscle in three compartments, resting, active and tired, in closed form: the active share is taken as the force asked
 * for at once, where the full equations let a controller drive it there at 10 per second.
 */

/** About 0.40 of the maximum in trained climbers (Giles 2019, from memory); 0.189 held by ten women (Kwak 2023). */
const MEASURED_LIMITS: readonly (readonly [number, number])[] = [
  [0.7, 0.4],
  [1, 0.189],
];

const NO_LAG =
  'The tenth of a second in which the controller brings the force up or down: it is ignored here, and cross-checked against the full equations.';

const tiredShare: FormulaOutput = { name: 'tired share', symbol: 'M_F', unit: '1' };

const record = (
  id: string,
  title: string,
  equation: string,
  inputs: FormulaRecord['inputs'],
  output: FormulaOutput,
  doesNotKnow = NO_LAG,
): FormulaRecord => ({
  id: `three-compartments/${id}`,
  revision: 1,
  title,
  equation,
  inputs,
  output,
  source: XIA_FREY_LAW_2008,
  restsOn: [OUR_OWN_DESIGN],
  doesNotKnow,
});

const share = (value: number): Fraction => fraction(value);

/** Tired share that work of one force tends to. */
export const tiredInTheLongRun = formula(
  record(
    'tired-in-the-long-run',
    'Tired share that work of one force tends to',
    'M_I = F I / R',
    [target, fatigueRate, recoveryRate],
    { name: 'tired share in the long run', symbol: 'M_I', unit: '1' },
    'That a share cannot lie above 1: where it does, the force is lost before it is reached.',
  ),
  (load: Fraction, fatigue: number, recovery: number): number => (fatigue * load) / recovery,
);

/** Tired share that an all-out effort tends to. */
export const tiredAllOut = formula(
  record(
    'tired-all-out',
    'Tired share that an all-out effort tends to',
    'M_S = F / (F + R)',
    [fatigueRate, recoveryRate],
    { name: 'tired share of an all-out effort', symbol: 'M_S', unit: '1' },
  ),
  (fatigue: number, recovery: number): Fraction => share(fatigue / (fatigue + recovery)),
);

/** Force that can be held without end, of the maximum. */
export const sustainableForce = formula(
  record(
    'sustainable-force',
    'Force that can be held without end, of the maximum',
    'I_1 = R / (F + R)',
    [fatigueRate, recoveryRate],
    { name: 'sustainable force', symbol: 'I_1', unit: '1' },
    'Whether anything is held without end: it is a property of the model. Measured sustained critical forces lie nearer 0.19 of the maximum than the 0.10 of the pooled constants.',
  ),
  (fatigue: number, recovery: number): Fraction => share(recovery / (fatigue + recovery)),
);

/** Tired share after work that the capacity allows. */
export const tiredAfterWork = formula(
  {
    ...record(
      'tired-after-work',
      'Tired share after work that the capacity allows',
      'M_F = M_I + (M_0 − M_I) exp(−R t)',
      [tired, target, { ...time('time at work', 't'), valid: [0, 600] }, fatigueRate, recoveryRate],
      tiredShare,
    ),
    conditions: [
      {
        says: 'The force is lost before this time: what is not tired is less than the force asked for.',
        holds: (start = 0, load = 0, after = 0, fatigue = 1, recovery = 1) => {
          const towards = (fatigue * load) / recovery;
          return towards + (start - towards) * Math.exp(-recovery * after) <= 1 - load + 1e-12 && start <= 1 - load;
        },
      },
    ],
  },
  (start: Fraction, load: Fraction, after: Seconds, fatigue: number, recovery: number): Fraction => {
    const towards = (fatigue * load) / recovery;
    return share(towards + (start - towards) * Math.exp(-recovery * after));
  },
);

/** Tired share after an effort with all that is left. */
export const tiredWhenSpent = formula(
  record(
    'tired-when-spent',
    'Tired share after an effort with all that is left',
    'M_F = M_S + (M_0 − M_S) exp(−(F + R) t)',
    [tired, time('time at work', 't'), fatigueRate, recoveryRate],
    tiredShare,
  ),
  (start: Fraction, after: Seconds, fatigue: number, recovery: number): Fraction => {
    const most = fatigue / (fatigue + recovery);
    return share(most + (start - most) * Math.exp(-(fatigue + recovery) * after));
  },
);

/** Tired share after rest. */
export const tiredAfterRest = formula(
  {
    ...record(
      'tired-after-rest',
      'Tired share after rest',
      'M_F = M_0 exp(−r R t)',
      [tired, time('time at rest', 't'), recoveryRate, restMultiplier],
      tiredShare,
      'Slow fatigue: with the pooled constants half of it is gone in 41 s, so nothing can add up over hours.',
    ),
    restsOn: [LOOFT_2018],
  },
  (start: Fraction, after: Seconds, recovery: number, rest: number): Fraction =>
    share(start * Math.exp(-rest * recovery * after)),
);

/** Rate of recovery over a whole cycle [1/s]. */
export const cycleRecovery = formula(
  record(
    'cycle-recovery',
    'Rate of recovery over a whole cycle [1/s]',
    'R_E = R (d + r (1 − d))',
    [duty, recoveryRate, restMultiplier],
    { name: 'rate of recovery over a cycle', symbol: 'R_E', unit: '1/s' },
    'The length of a cycle: it holds where cycles are short against a minute.',
  ),
  (loaded: Fraction, recovery: number, rest: number): number => recovery * (loaded + rest * (1 - loaded)),
);

const LIMITS: Plot = {
  says: 'The force that the model repeats without end falls steeply with the share of the cycle under load.',
  x: { name: 'share of the cycle under load', unit: '1' },
  y: { name: 'force without end, of the maximum', unit: '1' },
  curves: () => [
    ...[SUSTAINED_GRIP, POOLED_GRIP].map(({ of, fatigue, recovery, restMultiplier: rest }) =>
      curveOf(of, intermittentLimit, [0.2, 1], (loaded) => [loaded, fatigue, recovery, rest]),
    ),
    { label: 'measured: 7 s on, 3 s off, climbers; held, women', scattered: true, points: MEASURED_LIMITS },
  ],
};

/** Force that can be repeated without end, of the maximum. */
export const intermittentLimit = formula(
  {
    ...record(
      'intermittent-limit',
      'Force that can be repeated without end, of the maximum',
      'c = R (d + r (1 − d)) / (R (d + r (1 − d)) + F d)',
      [duty, fatigueRate, recoveryRate, restMultiplier],
      { name: 'critical force in this model', symbol: 'c', unit: '1' },
      'Shares of the cycle far from those that people were tested at: near 0.7 it agrees with finger tests (0.41); at a third it gives 0.74, where about half of the maximum was measured; at 1 it gives 0.10, where 0.19 was. Trust it between 0.5 and 0.8.',
    ),
    restsOn: [LOOFT_2018, GILES_2019, KWAK_2023],
    plot: LIMITS,
  },
  (loaded: Fraction, fatigue: number, recovery: number, rest: number): Fraction => {
    const back = recovery * (loaded + rest * (1 - loaded));
    return share(back / (back + fatigue * loaded));
  },
);

/** Time in which an all-out test falls to its plateau [s]. */
export const allOutTimeConstant = formula(
  record(
    'all-out-time-constant',
    'Time in which an all-out test falls to its plateau [s]',
    'τ = 1 / (F d + R (d + r (1 − d)))',
    [duty, fatigueRate, recoveryRate, restMultiplier],
    { name: 'time constant', symbol: 'τ', unit: 's' },
    'The length of a cycle: it holds where cycles are short against it.',
  ),
  (loaded: Fraction, fatigue: number, recovery: number, rest: number): Seconds =>
    seconds(1 / (fatigue * loaded + recovery * (loaded + rest * (1 - loaded)))),
);

/** What is left above the force of a task, of the maximum. */
export const handMargin = formula(
  record(
    'margin',
    'What is left above the force of a task, of the maximum',
    'm = (1 − M_F) − I',
    [tired, target],
    { name: 'margin', symbol: 'm', unit: '1' },
    'How much of a margin is enough: nobody has measured it on suited crews.',
  ),
  (tiredNow: Fraction, load: Fraction): number => 1 - tiredNow - load,
);
