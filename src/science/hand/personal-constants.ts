import { fraction, type Fraction, type Newtons, type Seconds } from '#units/quantity.ts';
import { evaluate } from '../evaluate.ts';
import { method } from '../method.ts';
import { spaced, type Plot } from '../plot.ts';
import { OUR_OWN_DESIGN } from '../sources.ts';
import { fitFall, LEAST_KEPT, MOST_KEPT, ratesOf, type FittedCurve } from './all-out-curve.ts';
import { POOLED_GRIP, type FatigueConstants } from './fatigue-constants.table.ts';
import { fatigueRate, force, recoveryRate, time } from './inputs.ts';
import { personalFatigueRate, personalRecoveryRate, timeConstantOfTest } from './personal-rates.ts';
import { RAKSHIT_2021, XIA_FREY_LAW_2008 } from './sources.ts';
import { allOutTimeConstant, intermittentLimit } from './three-compartments.ts';
import { WORKED_FORCES } from './worked-example.ts';

export interface PersonalConstants extends FatigueConstants {
  /** Critical force over the maximum, at the share of the cycle that was tested. */
  readonly share: Fraction;
  readonly timeConstant: Seconds;
  readonly duty: Fraction;
}

export type PersonalConstantsResult =
  | { readonly kind: 'estimate'; readonly value: PersonalConstants; readonly cautions: readonly string[] }
  | { readonly kind: 'refused'; readonly reason: string };

/** One test cannot tell this from the rate of recovery. */
const REST_MULTIPLIER = POOLED_GRIP.restMultiplier;

/** Outside these no muscle of any table lies; our own design. */
export const PLAUSIBLE_FATIGUE = fatigueRate.valid;
export const PLAUSIBLE_RECOVERY = recoveryRate.valid;

const REFUSALS = [
  'Test implausible, repeat: a rate of fatigue outside 0.004 to 0.04 per second, a rate of recovery outside 0.0002 to 0.006.',
] as const;

const implausible = (what: string): PersonalConstantsResult => ({
  kind: 'refused',
  reason: `Test implausible, repeat: ${what}.`,
});

const outside = (value: number, [low, high]: readonly [number, number]): boolean => !(value >= low && value <= high);

const plausible = (value: PersonalConstants, cautions: readonly string[]): PersonalConstantsResult => {
  const { fatigue, recovery } = value;
  if (outside(fatigue, PLAUSIBLE_FATIGUE))
    return implausible(
      `the rate of fatigue would be ${fatigue.toPrecision(3)} per second, outside ${PLAUSIBLE_FATIGUE.join(' to ')}`,
    );
  if (outside(recovery, PLAUSIBLE_RECOVERY))
    return implausible(
      `the rate of recovery would be ${recovery.toPrecision(3)} per second, outside ${PLAUSIBLE_RECOVERY.join(' to ')}`,
    );
  return { kind: 'estimate', value, cautions };
};

/** Constants that have a critical force and a time constant, plausible or not. */
export const constantsOf = (share: Fraction, timeConstant: Seconds, duty: Fraction): PersonalConstants => ({
  fatigue: personalFatigueRate(share, duty, timeConstant),
  recovery: personalRecoveryRate(share, duty, timeConstant, REST_MULTIPLIER),
  restMultiplier: REST_MULTIPLIER,
  share,
  timeConstant,
  duty,
});

export interface SummedUpTest {
  readonly criticalForce: Newtons;
  readonly maximum: Newtons;
  /** Above the critical force [N s]. */
  readonly impulse: number;
  /** Share of the cycle under load in the test. */
  readonly duty: Fraction;
}

const READS_HIGH =
  'From a summary: critical force reads some two hundredths of the maximum high, as four minutes do not quite reach the plateau.';

/** A person's constants from critical force and impulse alone. */
export const constantsFromSummary = method(
  {
    id: 'personal-constants/from-summary',
    revision: 1,
    title: 'A person’s constants from critical force and impulse',
    equations: [
      'c = CF / F_max',
      "τ = W' / (d (F_max − CF))",
      'F = (1 − c) / (d τ)',
      'R = c / (τ (d + r (1 − d))), r = 12.51',
    ],
    inputs: timeConstantOfTest.record.inputs,
    outputs: [personalFatigueRate.record.output, personalRecoveryRate.record.output],
    refuses: ['Numbers that cannot be a test.', ...REFUSALS],
    source: OUR_OWN_DESIGN,
    restsOn: [XIA_FREY_LAW_2008, RAKSHIT_2021],
    doesNotKnow: `${READS_HIGH} Bounds of plausibility are our own and editable.`,
  },
  ({ criticalForce, maximum, impulse, duty }: SummedUpTest): PersonalConstantsResult => {
    const fall = evaluate(timeConstantOfTest, [impulse, duty, maximum, criticalForce]);
    if (fall.kind === 'refused') return { kind: 'refused', reason: fall.reasons.join(' ') };
    return plausible(constantsOf(fraction(criticalForce / maximum), fall.value as Seconds, duty), [READS_HIGH]);
  },
);

export interface RecordedTest {
  readonly meanForces: readonly Newtons[];
  readonly maximum: Newtons;
  readonly on: Seconds;
  readonly off: Seconds;
}

const problem = ({ meanForces, maximum, on, off }: RecordedTest): string | undefined => {
  if (meanForces.length < 12) return `A curve needs 12 contractions at least; there are ${meanForces.length}.`;
  if (!(maximum >= 20 && maximum <= 2000)) return `The maximum must lie in 20 to 2000 N; it is ${maximum}.`;
  const unlike = meanForces.findIndex((each) => !(each > 0 && each <= maximum));
  if (unlike >= 0)
    return `Contraction ${unlike + 1} must lie above 0 and not above the maximum of ${maximum} N; it is ${meanForces[unlike]}.`;
  return on >= 1 && on <= 60 && off >= 0.5 && off <= 60
    ? undefined
    : `Times must lie in 1 to 60 s on and 0.5 to 60 s off; they are ${on} and ${off}.`;
};

const ALL_OUT: Plot = {
  says: 'Forces of an all-out test, the exponential fall closest to them, and the plateau that it tends to.',
  x: { name: 'contraction', unit: '' },
  y: { name: 'mean force, of the maximum', unit: '1' },
  curves: () => {
    const { plateau, height, kept } = fitFall(WORKED_FORCES);
    return [
      {
        label: 'contractions',
        points: WORKED_FORCES.map((each, place) => [place + 1, each] as const),
        scattered: true,
      },
      { label: 'fall', points: spaced(1, 24).map((at) => [at, plateau + height * kept ** (at - 1)] as const) },
      { label: 'plateau', points: [1, 24].map((at) => [at, plateau] as const) },
    ];
  },
};

/** Of the maximum; an all-out test falls by far more. Our own design. */
const LEAST_FALL = 0.05;

const fallsToPlateau = ({ height, kept }: FittedCurve): boolean =>
  height >= LEAST_FALL && kept > LEAST_KEPT + 1e-6 && kept < MOST_KEPT - 1e-6;

/** A person's constants from every contraction of an all-out test. */
export const constantsFromCurve = method(
  {
    id: 'personal-constants/from-curve',
    revision: 1,
    title: 'A person’s constants from every contraction of an all-out test',
    equations: [
      'm_i / F_max = A + B q^i, i from 0: least squares, q by golden section in 0.5 to 0.999',
      'L = −ln(q)',
      'F = L / t_on − R (1 + r t_off / t_on), r = 12.51',
      'k_on = exp(−(F + R) t_on), k_off = exp(−r R t_off), M_S = F / (F + R)',
      'a = M_S (1 − k_on) / (1 − k_off k_on)',
      'A = 1 − (M_S + (a k_off − M_S) (1 − k_on) / ((F + R) t_on)): R by bisection',
    ],
    inputs: [
      force('mean force of a contraction', 'm_i'),
      force('maximum', 'F_max', [20, 2000], [100, 1000]),
      time('time of a contraction', 't_on', [1, 60], [5, 10]),
      time('rest after it', 't_off', [0.5, 60], [2, 5]),
    ],
    outputs: [personalFatigueRate.record.output, personalRecoveryRate.record.output],
    refuses: [
      'Fewer than 12 contractions, or one above the maximum.',
      'Test implausible, repeat: a fall of less than 0.05 of the maximum, or none that reaches a plateau between 0 and the maximum.',
      ...REFUSALS,
    ],
    source: OUR_OWN_DESIGN,
    restsOn: [XIA_FREY_LAW_2008, RAKSHIT_2021],
    doesNotKnow:
      'The person’s own rest multiplier, and whether the first contraction was a true maximum. Bounds of plausibility are our own and editable.',
    plot: ALL_OUT,
  },
  (test: RecordedTest): PersonalConstantsResult => {
    const reason = problem(test);
    if (reason !== undefined) return { kind: 'refused', reason };
    const { meanForces, maximum, on, off } = test;
    const curve = fitFall(meanForces.map((each) => each / maximum));
    if (!fallsToPlateau(curve)) return implausible('the force does not fall to a plateau');
    const rates = ratesOf(curve, { on, off, rest: REST_MULTIPLIER });
    if (!rates) return implausible('the plateau does not lie between 0 and the maximum');
    const duty = fraction(on / (on + off));
    const constants = { ...rates, restMultiplier: REST_MULTIPLIER };
    return plausible(
      {
        ...constants,
        share: intermittentLimit(duty, rates.fatigue, rates.recovery, REST_MULTIPLIER),
        timeConstant: allOutTimeConstant(duty, rates.fatigue, rates.recovery, REST_MULTIPLIER),
        duty,
      },
      curve.residual > 0.05 ? ['The forces scatter by more than a twentieth of the maximum around their curve.'] : [],
    );
  },
);

/** The same constants at a critical force that the noise of the test allows; kept within what is plausible. */
export const constantsAtShare = (
  { timeConstant, duty }: PersonalConstants,
  share: number,
): { value: PersonalConstants; clamped: boolean } => {
  const kept = Math.min(0.99, Math.max(0.01, share));
  const value = constantsOf(fraction(kept), timeConstant, duty);
  const clamp = (rate: number, [low, high]: readonly [number, number]): number => Math.min(high, Math.max(low, rate));
  const [fatigue, recovery] = [clamp(value.fatigue, PLAUSIBLE_FATIGUE), clamp(value.recovery, PLAUSIBLE_RECOVERY)];
  const clamped = kept !== share || fatigue !== value.fatigue || recovery !== value.recovery;
  return { value: { ...value, fatigue, recovery }, clamped };
};
