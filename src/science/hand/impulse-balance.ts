import { newtons, seconds, type Fraction, type Newtons, type Seconds } from '#units/quantity.ts';
import { formula } from '../formula.ts';
import { method } from '../method.ts';
import { OUR_OWN_DESIGN, SKIBA_2015 } from '../sources.ts';
import { TASK_INPUTS, taskProblems, type GripTask } from './grip-task.ts';
import { force, impulse, share, time } from './inputs.ts';
import type { Failure } from './march.ts';

/** A second opinion that shares no equation with the three compartments: an impulse that is spent above a critical force. */

const mean = force('mean force over a cycle', 'x', [0, 2000], [0, 400]);
const critical = force('critical force as a mean over a cycle', 'P', [0.1, 2000], [10, 400]);
const store = impulse('impulse of a rested hand', 'W_0', [1, 200_000], [1000, 30_000]);
const left = impulse('impulse left at the start', 'W_1', [0, 200_000], [0, 30_000]);

/** Impulse left after work above the critical force [N s]. */
export const impulseAfterWork = formula(
  {
    id: 'impulse-balance/after-work',
    revision: 1,
    title: 'Impulse left after work above the critical force [N s]',
    equation: 'W = W_1 − (x − P) t',
    inputs: [left, mean, critical, time('time', 't')],
    conditions: [
      {
        says: 'The mean force must lie above the critical force: below it the impulse comes back.',
        holds: (_, x = 0, p = 0) => x >= p,
      },
    ],
    output: { name: 'impulse left', symbol: 'W', unit: 'N s' },
    source: SKIBA_2015,
    doesNotKnow: 'What happens below nothing: a negative result says that the impulse was spent before.',
  },
  (start: number, asked: Newtons, sustained: Newtons, lasts: Seconds): number => start - (asked - sustained) * lasts,
);

/** Impulse left after work below the critical force [N s]. */
export const impulseAfterEase = formula(
  {
    id: 'impulse-balance/after-ease',
    revision: 1,
    title: 'Impulse left after work below the critical force [N s]',
    equation: 'W = W_0 − (W_0 − W_1) exp(−(P − x) t / W_0)',
    inputs: [left, store, mean, critical, time('time', 't')],
    conditions: [
      {
        says: 'The mean force must not lie above the critical force: above it the impulse is spent.',
        holds: (_left, _store, x = 0, p = 0) => x <= p,
      },
      { says: 'What is left cannot be more than a rested hand has.', holds: (start = 0, full = 0) => start <= full },
    ],
    output: { name: 'impulse left', symbol: 'W', unit: 'N s' },
    source: SKIBA_2015,
    doesNotKnow: 'The hand: the form was made for cycling, where in 2025 it failed to predict exhaustion.',
  },
  (start: number, full: number, asked: Newtons, sustained: Newtons, lasts: Seconds): number =>
    full - (full - start) * Math.exp((-(sustained - asked) * lasts) / full),
);

export interface ImpulseOfHand {
  /** Critical force over the maximum, at the share of the cycle of its test. */
  readonly share: Fraction;
  readonly testDuty: Fraction;
  /** Maximum in the suit. */
  readonly suitedMaximum: Newtons;
  /** Of a rested hand in the suit [N s]: that of the bare hand times what the glove leaves. */
  readonly impulse: number;
}

export type ImpulseBalance =
  | {
      readonly kind: 'estimate';
      /** Least impulse left at the end of any task, of that of a rested hand. */
      readonly value: number;
      readonly criticalMean: Newtons;
      /** At the end of each task [N s]; held at 0 once spent, until it comes back. */
      readonly left: readonly number[];
      /** When it was first spent; null where it never was. */
      readonly exhausted: Failure | null;
      readonly cautions: readonly string[];
    }
  | { readonly kind: 'refused'; readonly reason: string };

const problems = ({ share: of, testDuty, impulse: full }: ImpulseOfHand): readonly string[] => [
  ...(of > 0 && of < 1 ? [] : [`The critical force must lie between 0 and 1 of the maximum; it is ${of}.`]),
  ...(testDuty > 0 && testDuty <= 1
    ? []
    : [`The test must have been under load for more than 0 and at most 1 of its cycle; it was ${testDuty}.`]),
  ...(full >= 1 && full <= 200_000 ? [] : [`The impulse must lie in 1 to 200000 N s; it is ${full}.`]),
];

const balanceThrough = (
  tasks: readonly GripTask[],
  sustained: number,
  full: number,
): Pick<Extract<ImpulseBalance, { kind: 'estimate' }>, 'left' | 'exhausted'> => {
  let [now, clock] = [full, 0];
  let exhausted: Failure | null = null;
  const after = tasks.map(({ name, duration, force: asked, duty }) => {
    const x = asked * duty;
    if (x > sustained) {
      const lasts = now / (x - sustained);
      if (lasts <= duration) exhausted ??= { task: name, at: seconds(clock + lasts) };
      now = Math.max(0, impulseAfterWork(now, newtons(x), newtons(sustained), duration));
    } else now = impulseAfterEase(now, full, newtons(x), newtons(sustained), duration);
    clock += duration;
    return now;
  });
  return { left: after, exhausted };
};

/** A hand's impulse above its critical force through the tasks of a space walk. */
export const balanceImpulse = method(
  {
    id: 'impulse-balance/through-tasks',
    revision: 1,
    title: 'Impulse above the critical force through the tasks of a space walk',
    equations: [
      'x = F_task d',
      'P = c F_suited d_test',
      "W_0 = W' g",
      'W = W_1 − (x − P) t if x > P',
      'W = W_0 − (W_0 − W_1) exp(−(P − x) t / W_0) else',
    ],
    inputs: [
      ...TASK_INPUTS,
      share('critical force of the maximum', 'c'),
      share('share under load in the test', 'd_test'),
      store,
    ],
    outputs: [
      { name: 'impulse left', symbol: 'W', unit: 'N s' },
      { name: 'time at which it is spent', symbol: 't', unit: 's' },
    ],
    refuses: ['Tasks that a march refuses.', 'A critical force, a duty or an impulse outside what is possible.'],
    source: SKIBA_2015,
    restsOn: [OUR_OWN_DESIGN],
    doesNotKnow:
      'What happens within a cycle: forces are averaged over it, so a hard short grip counts as an easy long one. That the impulse shrinks with the glove as the maximum does is our own assumption.',
  },
  (tasks: readonly GripTask[], hand: ImpulseOfHand): ImpulseBalance => {
    const reasons = [...taskProblems(tasks, hand.suitedMaximum), ...problems(hand)];
    if (reasons.length > 0) return { kind: 'refused', reason: reasons.join(' ') };
    const criticalMean = newtons(hand.share * hand.suitedMaximum * hand.testDuty);
    const { left: after, exhausted } = balanceThrough(tasks, criticalMean, hand.impulse);
    return {
      kind: 'estimate',
      value: Math.min(...after) / hand.impulse,
      criticalMean,
      left: after,
      exhausted,
      cautions: exhausted ? [`The impulse above critical force is spent in "${exhausted.task}".`] : [],
    };
  },
);
