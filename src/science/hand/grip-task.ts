import type { Fraction, Newtons, Seconds } from '#units/quantity.ts';
import type { FormulaInput } from '../formula.ts';
import { force, share, time } from './inputs.ts';

/** What one hand does for a while, in cycles of gripping and letting go. */
export interface GripTask {
  readonly name: string;
  readonly duration: Seconds;
  /** While gripping, in the suit; 0 is rest. */
  readonly force: Newtons;
  /** Share of each cycle that is under load; 0 is rest. */
  readonly duty: Fraction;
  readonly cycle: Seconds;
}

export const TASK_INPUTS: readonly FormulaInput[] = [
  time('duration of a task', 't', [1, 36_000], [10, 14_400]),
  force('force of a task', 'F_task', [0, 2000], [0, 600]),
  share('share of the cycle under load', 'd', [0, 1], [0.5, 0.8]),
  time('length of a cycle', 't_c', [0.5, 600], [2, 30]),
];

/** Work beyond which a march would take longer than anybody waits. */
const MOST_CYCLES = 200_000;

/** Everything that keeps a list of tasks from being marched through, task by task. */
export const taskProblems = (tasks: readonly GripTask[], suitedMaximum: Newtons): readonly string[] => {
  if (!(suitedMaximum > 0 && suitedMaximum <= 2000))
    return [`The maximum in the suit must lie above 0 and at most at 2000 N; it is ${suitedMaximum}.`];
  if (tasks.length === 0) return ['There is no task.'];
  const alone = tasks.flatMap(({ name, duration, force: asked, duty, cycle }) => [
    ...(duration >= 1 && duration <= 36_000 ? [] : [`"${name}" must last 1 to 36000 s; it lasts ${duration}.`]),
    ...(asked >= 0 ? [] : [`"${name}" must ask for 0 N or more; it asks for ${asked}.`]),
    ...(asked > suitedMaximum
      ? [
          `"${name}" asks for ${asked} N and the maximum in the suit is ${Number(suitedMaximum.toPrecision(4))} N: it is impossible in this suit. Lower the force or share it between the hands.`,
        ]
      : []),
    ...(duty >= 0 && duty <= 1 ? [] : [`"${name}" must be under load for 0 to 1 of its cycle; it is ${duty}.`]),
    ...(cycle >= 0.5 && cycle <= 600 ? [] : [`A cycle of "${name}" must last 0.5 to 600 s; it lasts ${cycle}.`]),
  ]);
  if (alone.length > 0) return alone;
  const cycles = tasks.reduce((sum, { duration, cycle }) => sum + duration / cycle, 0);
  return cycles > MOST_CYCLES ? [`There are more than ${MOST_CYCLES} cycles: take longer ones.`] : [];
};

export const isRest = ({ force: asked, duty }: GripTask): boolean => asked === 0 || duty === 0;

/** Calls for each cycle with its seconds under load and at rest; the last one is cut where the task ends. */
export const forEachCycle = (task: GripTask, each: (on: number, off: number) => void): void => {
  const { duration, cycle, duty } = task;
  if (isRest(task)) {
    each(0, duration);
    return;
  }
  const whole = Math.floor(duration / cycle);
  const on = duty * cycle;
  for (let done = 0; done < whole; done += 1) each(on, cycle - on);
  const left = duration - whole * cycle;
  // A duration of whole cycles must not gain a sliver of one by rounding.
  if (left > 1e-9) each(Math.min(on, left), Math.max(0, left - on));
};
