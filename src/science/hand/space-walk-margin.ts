import { fraction, seconds, type Fraction, type Newtons } from '#units/quantity.ts';
import { method } from '../method.ts';
import { OUR_OWN_DESIGN, SKIBA_2015 } from '../sources.ts';
import { CRITICAL_FORCE_CV } from './critical-force.ts';
import { TASK_INPUTS, taskProblems, type GripTask } from './grip-task.ts';
import { greatestHourMean, type HourMean } from './hour-mean.ts';
import { balanceImpulse, type ImpulseBalance } from './impulse-balance.ts';
import { force } from './inputs.ts';
import { marchThrough, type Failure, type TaskMargin, type TracePoint } from './march.ts';
import { constantsAtShare, type PersonalConstants } from './personal-constants.ts';
import { BISHU_1995, BJORKSTEN_JONSSON_1977, LOOFT_2018, MCCLEAN_2023, XIA_FREY_LAW_2008 } from './sources.ts';
import type { SuitedGrip } from './suited-grip.ts';
import { impossibleConstant } from './work-phases.ts';

/** One hand of one person, as tested bare and as the glove leaves it. */
export interface SuitedHand {
  readonly side: 'left' | 'right';
  readonly suited: Extract<SuitedGrip, { kind: 'estimate' }>;
  readonly constants: PersonalConstants;
  /** Impulse above critical force of the bare hand [N s]. */
  readonly impulse: number;
}

export interface Sensitivity {
  /** Of each contraction's fatigue, left over for hours. */
  readonly residual: Fraction;
  readonly margin: number | null;
}

export const NOT_VALIDATED = 'Not validated on suited crews.';

export type SpaceWalkMargin =
  | {
      readonly kind: 'estimate';
      readonly side: 'left' | 'right';
      /** Least margin of all tasks, of the maximum in the suit; null where all of it is rest. */
      readonly value: number | null;
      /** The same at a critical force one coefficient of variation lower and higher. */
      readonly band: readonly [low: number, high: number] | null;
      readonly tasks: readonly TaskMargin[];
      readonly firstFailure: Failure | null;
      readonly trace: readonly TracePoint[];
      readonly secondOpinion: ImpulseBalance;
      readonly hourMean: HourMean;
      readonly sensitivity: readonly Sensitivity[];
      /** Whoever else would read a margin as a promise. */
      readonly shownTo: 'the specialist only';
      readonly says: typeof NOT_VALIDATED;
      readonly cautions: readonly string[];
    }
  | { readonly kind: 'refused'; readonly reason: string };

/** Shares of fatigue that might stay for hours; nobody has measured one for grip. */
const RESIDUALS = [0, 0.01, 0.02].map(fraction);
const RESIDUAL_FADES = seconds(4 * 3600);
/** Shares of the cycle near those at which hands are tested. */
const TRUSTED_DUTY = [0.5, 0.8] as const;

const dutyCautions = (tasks: readonly GripTask[]): readonly string[] => {
  const far = tasks.filter(
    ({ duty, force: asked }) => asked > 0 && duty > 0 && (duty < TRUSTED_DUTY[0] || duty > TRUSTED_DUTY[1]),
  );
  return far.length === 0
    ? []
    : [
        `The model is trusted where 0.5 to 0.8 of a cycle is under load, near the test: ${far.map(({ name }) => `"${name}"`).join(', ')} lies outside.`,
      ];
};

interface Band {
  readonly band: readonly [number, number] | null;
  readonly cautions: readonly string[];
}

/** The margin at a critical force that is one coefficient of variation lower and higher. */
const bandOf = (tasks: readonly GripTask[], maximum: Newtons, constants: PersonalConstants): Band => {
  const ends = [1 - CRITICAL_FORCE_CV, 1 + CRITICAL_FORCE_CV].map((factor) => {
    const { value, clamped } = constantsAtShare(constants, factor * constants.share);
    return { margin: marchThrough(tasks, maximum, value).value, clamped };
  });
  const margins = ends.flatMap(({ margin }) => margin ?? []);
  return {
    band: margins.length === 0 ? null : [Math.min(...margins), Math.max(...margins)],
    cautions: ends.some(({ clamped }) => clamped)
      ? ['An end of the band rests on constants that were kept within what is plausible.']
      : [],
  };
};

const opinionCautions = (secondOpinion: ImpulseBalance, failure: Failure | null): readonly string[] => {
  if (secondOpinion.kind === 'refused') return [`No second opinion: ${secondOpinion.reason}`];
  return (secondOpinion.exhausted === null) === (failure === null)
    ? secondOpinion.cautions
    : [...secondOpinion.cautions, 'The two models do not agree on whether the force is lost.'];
};

/** What a hand has left through the tasks of a space walk, with the band of its test. */
export const spaceWalkMargin = method(
  {
    id: 'space-walk/margin',
    revision: 1,
    title: 'What a hand has left through a space walk, with its band',
    equations: [
      'm: the march at the person’s critical force c',
      'm_low, m_high: the march at c (1 − 0.21) and c (1 + 0.21), with the same time constant',
      'm_φ: the march with a slow residual φ of 0, 0.01 and 0.02, τ_S = 4 h',
    ],
    inputs: [...TASK_INPUTS, force('maximum in the suit', 'F_suited', [1, 2000], [10, 1000])],
    outputs: [
      { name: 'margin, of the maximum in the suit', symbol: 'm', unit: '1' },
      { name: 'greatest mean load of an hour', symbol: 'X', unit: '1' },
      { name: 'impulse left', symbol: 'W', unit: 'N s' },
    ],
    refuses: ['Tasks and constants that a march refuses, all of them at once.'],
    source: OUR_OWN_DESIGN,
    restsOn: [XIA_FREY_LAW_2008, LOOFT_2018, BISHU_1995, MCCLEAN_2023, BJORKSTEN_JONSSON_1977, SKIBA_2015],
    doesNotKnow:
      'Whether it holds: it is a composition of our own, not validated on suited crews. It goes to the specialist only, with its band, and makes no classes. The band is the noise of the test; the glove, the tasks and the model add their own. Critical force is taken as tested: the 0.84 of it that can be planned with lies within the band.',
  },
  ({ side, suited, constants, impulse }: SuitedHand, tasks: readonly GripTask[]): SpaceWalkMargin => {
    const maximum = suited.value;
    const reasons = [...taskProblems(tasks, maximum), ...[impossibleConstant(constants)].flatMap((each) => each ?? [])];
    if (reasons.length > 0) return { kind: 'refused', reason: reasons.join(' ') };
    const march = marchThrough(tasks, maximum, constants);
    const { band, cautions: bandCautions } = bandOf(tasks, maximum, constants);
    const { share, duty: testDuty } = constants;
    const secondOpinion = balanceImpulse(tasks, {
      share,
      testDuty,
      suitedMaximum: maximum,
      impulse: impulse * suited.factor,
    });
    const hourMean = greatestHourMean(tasks, maximum);
    return {
      kind: 'estimate',
      side,
      value: march.value,
      band,
      tasks: march.tasks,
      firstFailure: march.firstFailure,
      trace: march.trace,
      secondOpinion,
      hourMean,
      sensitivity: RESIDUALS.map((residual) => ({
        residual,
        margin: marchThrough(tasks, maximum, constants, { share: residual, fades: RESIDUAL_FADES }).value,
      })),
      shownTo: 'the specialist only',
      says: NOT_VALIDATED,
      cautions: [
        ...suited.cautions,
        ...march.cautions,
        ...bandCautions,
        ...dutyCautions(tasks),
        ...opinionCautions(secondOpinion, march.firstFailure),
        ...(hourMean.kind === 'estimate' ? hourMean.cautions : []),
      ],
    };
  },
);

type Margin = Extract<SpaceWalkMargin, { kind: 'estimate' }>;

/** Of two hands, the one with less left is the result; a hand that only rests has all of it. */
export const worseHand = (left: Margin, right: Margin): Margin =>
  (left.value ?? 1) <= (right.value ?? 1) ? left : right;
