import { seconds, type Fraction, type Newtons, type Seconds } from '#units/quantity.ts';
import { method } from '../method.ts';
import type { Plot } from '../plot.ts';
import { OUR_OWN_DESIGN } from '../sources.ts';
import type { FatigueConstants } from './fatigue-constants.table.ts';
import { forEachCycle, isRest, TASK_INPUTS, taskProblems, type GripTask } from './grip-task.ts';
import { fatigueRate, force, recoveryRate, restMultiplier } from './inputs.ts';
import { BISHU_1995, LOOFT_2018, XIA_FREY_LAW_2008 } from './sources.ts';
import { contraction, impossibleConstant } from './work-phases.ts';
import { WORKED_MAXIMUM, WORKED_SHARE, WORKED_TASKS, workedConstants } from './worked-example.ts';

/** One hand through its tasks, cycle by cycle, in the closed forms of the three compartments. */

/** A part of each contraction's fatigue that rest does not take away at once. A question asked of the model, not a finding. */
export interface SlowResidual {
  /** Of the fatigue of each contraction. */
  readonly share: Fraction;
  /** Time in which it fades to 1/e. */
  readonly fades: Seconds;
}

export interface TaskMargin {
  readonly name: string;
  /** Force asked for, of the maximum in the suit. */
  readonly load: Fraction;
  /** At the end of the task. */
  readonly tired: Fraction;
  /** Least margin at the end of any of its contractions; null where the task is rest. */
  readonly margin: number | null;
}

export interface Failure {
  readonly task: string;
  /** From the start of the first task. */
  readonly at: Seconds;
}

export interface TracePoint {
  readonly at: Seconds;
  /** Not tired, of the maximum in the suit. */
  readonly capacity: number;
  readonly load: number;
}

export type HandMarch =
  | {
      readonly kind: 'estimate';
      /** Least margin of all tasks; null where all of it is rest. */
      readonly value: number | null;
      readonly tasks: readonly TaskMargin[];
      /** Where the force was first lost; null where it never was. */
      readonly firstFailure: Failure | null;
      /** At the end of each contraction, and of each task that is rest. */
      readonly trace: readonly TracePoint[];
      readonly cautions: readonly string[];
    }
  | { readonly kind: 'refused'; readonly reason: string };

interface Walk {
  tired: number;
  residual: number;
  clock: number;
  failure: Failure | null;
  readonly trace: TracePoint[];
}

const NO_RESIDUAL: SlowResidual = { share: 0 as Fraction, fades: 14_400 as Seconds };

const marchTask = (
  walk: Walk,
  task: GripTask,
  maximum: Newtons,
  constants: FatigueConstants,
  slow: SlowResidual,
): TaskMargin => {
  const load = task.force / maximum;
  let least: number | null = null;
  forEachCycle(task, (on, off) => {
    if (on > 0) {
      const { tired, failedAfter } = contraction(walk.tired, load, on, constants);
      if (failedAfter !== null) walk.failure ??= { task: task.name, at: seconds(walk.clock + failedAfter) };
      walk.tired = tired;
      walk.residual += slow.share * constants.fatigue * load * on;
      const margin = 1 - tired - load - walk.residual;
      least = least === null ? margin : Math.min(least, margin);
      walk.trace.push({ at: seconds(walk.clock + on), capacity: 1 - tired, load });
    }
    walk.tired *= Math.exp(-constants.restMultiplier * constants.recovery * off);
    walk.residual *= Math.exp(-(on + off) / slow.fades);
    walk.clock += on + off;
  });
  if (isRest(task)) walk.trace.push({ at: seconds(walk.clock), capacity: 1 - walk.tired, load: 0 });
  return { name: task.name, load: load as Fraction, tired: walk.tired as Fraction, margin: least };
};

const leastOf = (tasks: readonly TaskMargin[]): number | null => {
  const margins = tasks.flatMap(({ margin }) => margin ?? []);
  return margins.length > 0 ? Math.min(...margins) : null;
};

/** A march without a look at its inputs: for those who have looked. */
export const marchThrough = (
  tasks: readonly GripTask[],
  maximum: Newtons,
  constants: FatigueConstants,
  slow: SlowResidual = NO_RESIDUAL,
): Extract<HandMarch, { kind: 'estimate' }> => {
  const walk: Walk = { tired: 0, residual: 0, clock: 0, failure: null, trace: [] };
  const marched = tasks.map((task) => marchTask(walk, task, maximum, constants, slow));
  const { failure, trace } = walk;
  return {
    kind: 'estimate',
    value: leastOf(marched),
    tasks: marched,
    firstFailure: failure,
    trace,
    cautions: failure ? [`The force is lost in "${failure.task}", ${Math.round(failure.at)} s from the start.`] : [],
  };
};

const slowProblem = ({ share, fades }: SlowResidual): string | undefined =>
  share >= 0 && share <= 0.1 && fades >= 60 && fades <= 864_000
    ? undefined
    : `A slow residual must be 0 to 0.1 of fatigue and fade in 60 to 864000 s; it is ${share} in ${fades} s.`;

const TIMELINE: Plot = {
  says: 'What a hand can still do, at the end of each contraction of a worked space walk, above what is asked of it.',
  x: { name: 'time', unit: 's' },
  y: { name: 'of the maximum in the suit', unit: '1' },
  curves: () => {
    const [low, middle, high] = [0.79, 1, 1.21].map((of) =>
      marchThrough(WORKED_TASKS, WORKED_MAXIMUM, workedConstants(of * WORKED_SHARE)).trace.filter(
        (_, place) => place % 6 === 0,
      ),
    ) as [TracePoint[], TracePoint[], TracePoint[]]; // three marches of the same contractions
    return [
      {
        label: 'capacity left, by the noise of its test',
        points: middle.map(({ at, capacity }) => [at, capacity] as const),
        band: low.map(({ capacity }, place) => [capacity, high[place]?.capacity ?? capacity] as const),
      },
      { label: 'force asked for', points: middle.map(({ at, load }) => [at, load] as const) },
    ];
  },
};

/** One hand through its tasks: margin of each, and where the force is lost. */
export const marchHand = method(
  {
    id: 'space-walk/march',
    revision: 1,
    title: 'One hand through the tasks of a space walk',
    equations: [
      'I = F_task / F_suited',
      't_on = d t_c, t_off = (1 − d) t_c; the last cycle is cut where the task ends',
      'contraction: M_F towards F I / R until it reaches 1 − I, then towards F / (F + R)',
      'rest: M_F exp(−r R t_off)',
      'S: S + φ F I t_on at each contraction, S exp(−t_c / τ_S) over each cycle',
      'm = least of 1 − M_F − I − S over the ends of contractions',
    ],
    inputs: [
      ...TASK_INPUTS,
      force('maximum in the suit', 'F_suited', [1, 2000], [10, 1000]),
      fatigueRate,
      recoveryRate,
      restMultiplier,
    ],
    outputs: [
      { name: 'margin, of the maximum in the suit', symbol: 'm', unit: '1' },
      { name: 'time at which the force is first lost', symbol: 't_lost', unit: 's' },
    ],
    refuses: [
      'No task; a task longer than 36 000 s, a duty outside 0 to 1, a cycle outside 0.5 to 600 s.',
      'A task whose force is above the maximum in the suit: impossible in this suit.',
      'Constants outside what is possible.',
    ],
    source: OUR_OWN_DESIGN,
    restsOn: [XIA_FREY_LAW_2008, LOOFT_2018, BISHU_1995],
    doesNotKnow:
      'Suited crews: it was not validated on them. It forgets fatigue with a half-life of about 41 s at rest, so it cannot add up hours; it knows one force for each task, one hand, no cold, no skin, no pain.',
    plot: TIMELINE,
  },
  (
    tasks: readonly GripTask[],
    suitedMaximum: Newtons,
    constants: FatigueConstants,
    slow: SlowResidual = NO_RESIDUAL,
  ): HandMarch => {
    const reasons = [
      ...taskProblems(tasks, suitedMaximum),
      ...[impossibleConstant(constants), slowProblem(slow)].flatMap((each) => each ?? []),
    ];
    return reasons.length > 0
      ? { kind: 'refused', reason: reasons.join(' ') }
      : marchThrough(tasks, suitedMaximum, constants, slow);
  },
);
