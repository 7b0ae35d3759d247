import { fraction, type Fraction, type Newtons } from '#units/quantity.ts';
import { method } from '../method.ts';
import { TASK_INPUTS, taskProblems, type GripTask } from './grip-task.ts';
import { force } from './inputs.ts';
import { BJORKSTEN_JONSSON_1977 } from './sources.ts';

/** A guard against what the three compartments forget: work that is light in each minute and long. */

/** Mean load of an hour of intermittent work that could just be kept up, of the maximum. */
export const HOUR_LIMIT = 0.14;
const HOUR = 3600;

export type HourMean =
  | {
      readonly kind: 'estimate';
      /** Greatest mean load of any hour, of the maximum in the suit. */
      readonly value: Fraction;
      readonly aboveLimit: boolean;
      readonly cautions: readonly string[];
    }
  | { readonly kind: 'refused'; readonly reason: string };

interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly load: number;
}

const stretchesOf = (tasks: readonly GripTask[], maximum: Newtons): readonly Stretch[] => {
  let clock = 0;
  return tasks.map(({ duration, force: asked, duty }) => {
    const from = clock;
    clock += duration;
    return { from, to: clock, load: (asked / maximum) * duty };
  });
};

/** Load times time within an hour; outside the tasks the hand rests. */
const within = (stretches: readonly Stretch[], start: number): number =>
  stretches.reduce(
    (sum, { from, to, load }) => sum + load * Math.max(0, Math.min(to, start + HOUR) - Math.max(from, start)),
    0,
  );

/** The greatest mean load of any hour of a space walk. */
export const greatestHourMean = method(
  {
    id: 'space-walk/hour-mean',
    revision: 1,
    title: 'Greatest mean load of any hour of a space walk',
    equations: [
      'x = d F_task / F_suited',
      'X = greatest mean of x over 3 600 s; over an hour that begins with a task or ends with one',
      'flagged if X > 0.14',
    ],
    inputs: [...TASK_INPUTS, force('maximum in the suit', 'F_suited', [1, 2000], [10, 1000])],
    outputs: [{ name: 'greatest mean load of an hour', symbol: 'X', unit: '1' }],
    refuses: ['Tasks that a march refuses.'],
    source: BJORKSTEN_JONSSON_1977,
    doesNotKnow:
      'The hand: the limit was measured on flexors of the elbow, bare, over one hour. Weak people had a higher one. A list shorter than an hour is filled up with rest.',
  },
  (tasks: readonly GripTask[], suitedMaximum: Newtons): HourMean => {
    const reasons = taskProblems(tasks, suitedMaximum);
    if (reasons.length > 0) return { kind: 'refused', reason: reasons.join(' ') };
    const stretches = stretchesOf(tasks, suitedMaximum);
    // A mean of an hour stops growing only where its end leaves a task or its start enters one.
    const starts = stretches.flatMap(({ from, to }) => [from, to - HOUR]);
    const value = fraction(Math.max(...starts.map((start) => within(stretches, start))) / HOUR);
    const aboveLimit = value > HOUR_LIMIT;
    return {
      kind: 'estimate',
      value,
      aboveLimit,
      cautions: aboveLimit
        ? [
            `Over one hour the mean load reaches ${value.toFixed(2)} of the maximum; 0.14 is what could just be kept up in the one study there is.`,
          ]
        : [],
    };
  },
);
