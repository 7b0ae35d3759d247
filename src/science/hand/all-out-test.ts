import { fraction, newtons, type Fraction, type Newtons, type Seconds } from '#units/quantity.ts';
import { method } from '../method.ts';
import {
  CRITICAL_FORCE_CV,
  criticalForceChange,
  IMPULSE_CV,
  PEAK_FORCE_CV,
  planningCriticalForce,
} from './critical-force.ts';
import { force, impulse, time } from './inputs.ts';
import { BALAS_2024, GILES_2021, KELLAWAN_TSCHAKOVSKY_2014, MCCLEAN_2023 } from './sources.ts';

/** Contractions with all that is there, each followed by a short rest, until the force no longer falls. */
export interface AllOutTest {
  /** Mean of each contraction over its time under load, in order. */
  readonly meanForces: readonly Newtons[];
  readonly on: Seconds;
  readonly off: Seconds;
  /** A maximum taken apart from the test, and peaks of its contractions, where they were recorded. */
  readonly maxima?: readonly Newtons[];
}

/** A value with the range of one coefficient of variation of its test. */
export interface Tested<Value extends number> {
  readonly value: Value;
  readonly band: readonly [low: Value, high: Value];
}

export type AllOutScore =
  | {
      readonly kind: 'estimate';
      readonly criticalForce: Tested<Newtons>;
      readonly planningForce: Newtons;
      readonly maximum: Tested<Newtons>;
      /** Critical force over the maximum. */
      readonly share: Fraction;
      /** Above the critical force [N s]; contractions below it count against it. */
      readonly impulse: Tested<number>;
      readonly duty: Fraction;
      readonly cautions: readonly string[];
    }
  | { readonly kind: 'refused'; readonly reason: string };

const FEWEST = 12;
const USUAL = { contractions: 24, on: 7, off: 3 } as const;
/** Fall from the last six to the last three contractions beyond which there is no plateau; our own design. */
const STILL_FALLING = 0.05;

const mean = (values: readonly number[]): number => values.reduce((sum, each) => sum + each, 0) / values.length;

const problems = ({ meanForces, on, off, maxima = [] }: AllOutTest): readonly string[] => [
  ...(meanForces.length < FEWEST
    ? [`An all-out test needs ${FEWEST} contractions at least, and usually has 24; there are ${meanForces.length}.`]
    : []),
  ...meanForces.flatMap((each, place) =>
    each > 0 && each <= 2000 ? [] : [`Contraction ${place + 1} must lie above 0 and at most at 2000 N; it is ${each}.`],
  ),
  ...maxima.flatMap((each) =>
    each > 0 && each <= 2000 ? [] : [`A maximum must lie above 0 and at most at 2000 N; it is ${each}.`],
  ),
  ...(on >= 1 && on <= 60 ? [] : [`A contraction must last 1 to 60 s; it lasts ${on}.`]),
  ...(off >= 0.5 && off <= 60 ? [] : [`A rest must last 0.5 to 60 s; it lasts ${off}.`]),
];

const cautionsOf = ({ meanForces, on, off }: AllOutTest, critical: number): readonly string[] => {
  const earlier = mean(meanForces.slice(-6, -3));
  const usual = meanForces.length === USUAL.contractions && on === USUAL.on && off === USUAL.off;
  return [
    'Four minutes do not quite reach the plateau: critical force reads some two hundredths of the maximum high.',
    ...(usual ? [] : ['Its reliability is published for 24 contractions of 7 s with 3 s of rest.']),
    ...(earlier - critical > STILL_FALLING * critical
      ? ['The force still falls at the end: there is no plateau yet.']
      : []),
  ];
};

const around = <Value extends number>(value: Value, by: number): Tested<Value> => ({
  value,
  // The same unit on both sides.
  band: [(value * (1 - by)) as Value, (value * (1 + by)) as Value],
});

/** Critical force, maximum and impulse of an all-out test of one hand. */
export const scoreAllOutTest = method(
  {
    id: 'critical-force/all-out-test',
    revision: 1,
    title: 'Critical force of an all-out test of one hand',
    equations: [
      'CF = (m_(n−2) + m_(n−1) + m_n) / 3',
      'F_max = the greatest of the separate maximum, the peaks and the means',
      "W' = sum_(i=1)^n (m_i − CF) t_on",
      'CF_plan = 0.84 CF',
      'd = t_on / (t_on + t_off)',
    ],
    inputs: [
      force('mean force of a contraction', 'm_i'),
      time('time of a contraction', 't_on', [1, 60], [5, 10]),
      time('rest after it', 't_off', [0.5, 60], [2, 5]),
    ],
    outputs: [
      { name: 'critical force', symbol: 'CF', unit: 'N' },
      { name: 'maximum', symbol: 'F_max', unit: 'N' },
      { name: 'impulse above critical force', symbol: "W'", unit: 'N s' },
      { name: 'critical force to plan with', symbol: 'CF_plan', unit: 'N' },
    ],
    refuses: [
      'Fewer than 12 contractions.',
      'A force that is not above 0, or above 2 000 N.',
      'Times outside 1 to 60 s on and 0.5 to 60 s off.',
      'A force that does not fall.',
    ],
    source: MCCLEAN_2023,
    restsOn: [GILES_2021, KELLAWAN_TSCHAKOVSKY_2014, BALAS_2024],
    doesNotKnow:
      'Whether everything was given from the first contraction. Twice the same test gave critical forces 21 % apart in the middle: one test moves nobody’s plan. The maximum does not predict the critical force.',
  },
  (test: AllOutTest): AllOutScore => {
    const [first, ...more] = problems(test);
    if (first !== undefined) return { kind: 'refused', reason: [first, ...more].join(' ') };
    const { meanForces, on, off, maxima = [] } = test;
    const critical = mean(meanForces.slice(-3));
    const above = meanForces.reduce((sum, each) => sum + (each - critical) * on, 0);
    if (!(above > 0))
      return {
        kind: 'refused',
        reason: 'The force does not fall from first to last: this was not an all-out test. Repeat it.',
      };
    const greatest = Math.max(...maxima, ...meanForces);
    return {
      kind: 'estimate',
      criticalForce: around(newtons(critical), CRITICAL_FORCE_CV),
      planningForce: planningCriticalForce(newtons(critical)),
      maximum: around(newtons(greatest), PEAK_FORCE_CV),
      share: fraction(critical / greatest),
      impulse: around(above, IMPULSE_CV),
      duty: fraction(on / (on + off)),
      cautions: cautionsOf(test, critical),
    };
  },
);

export type CriticalForceComparison =
  | {
      readonly kind: 'estimate';
      /** Later over earlier, less one. */
      readonly value: number;
      readonly verdict:
        'not distinguishable from test noise' | 'higher by more than one CV' | 'lower by more than one CV';
      readonly cautions: readonly string[];
    }
  | { readonly kind: 'refused'; readonly reason: string };

const TWICE_NOISE =
  'The difference of two tests varies by 1.4 CV, here 30 %: a change beyond one CV is a reason to test again, not yet a change.';

/** Whether two critical forces of one hand differ by more than the noise of the test. */
export const compareCriticalForces = method(
  {
    id: 'critical-force/comparison',
    revision: 1,
    title: 'Whether two critical forces of one hand differ',
    equations: ['Δ = CF_2 / CF_1 − 1', '|Δ| < 0.21: not distinguishable from test noise'],
    inputs: criticalForceChange.record.inputs,
    outputs: [criticalForceChange.record.output],
    refuses: ['A critical force that is not above 5 N, or above 2 000 N.'],
    source: MCCLEAN_2023,
    doesNotKnow: TWICE_NOISE,
  },
  (earlier: Newtons, later: Newtons): CriticalForceComparison => {
    if (![earlier, later].every((each) => each >= 5 && each <= 2000))
      return { kind: 'refused', reason: `Critical forces must lie in 5 to 2000 N; they are ${earlier} and ${later}.` };
    const change = criticalForceChange(later, earlier);
    // A change of exactly one CV counts as beyond it, whatever a double makes of 121 over 100.
    if (Math.abs(change) < CRITICAL_FORCE_CV - 1e-9)
      return { kind: 'estimate', value: change, verdict: 'not distinguishable from test noise', cautions: [] };
    const verdict = change > 0 ? 'higher by more than one CV' : 'lower by more than one CV';
    return { kind: 'estimate', value: change, verdict, cautions: [TWICE_NOISE] };
  },
);

/** Impulse as an input of others. */
export const testedImpulse = impulse('impulse above critical force', "W'", [1, 200_000], [1000, 40_000]);
