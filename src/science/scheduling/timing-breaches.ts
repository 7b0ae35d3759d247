import { method } from '../method.ts';
import { COMMON_PRACTICE } from '../sources.ts';
import { schedulingRule, type SchedulingRule, type SchedulingRuleId } from './scheduling-rules.table.ts';
import { STUTZ_2019 } from './sources.ts';

/** Where in a day a session may stand. All times are minutes of one running clock. */

export interface PlacedSession {
  readonly from: number;
  readonly until: number;
  readonly intensity: 'easy' | 'hard' | 'maximal';
  /** Shakes the vehicle: treadmill and resistive work. */
  readonly shakes: boolean;
  readonly lifts: boolean;
}

export interface DayFrame {
  readonly waking: number;
  readonly lightsOut: number;
  /** Ends of the main meals. */
  readonly mealsEnd: readonly number[];
  /** Windows in which nothing may shake. */
  readonly protectedWindows: readonly { readonly from: number; readonly until: number }[];
}

export interface Breach {
  readonly rule: SchedulingRule;
  /** By how many minutes. */
  readonly by: number;
}

export type TimingBreaches =
  | { readonly kind: 'breaches'; readonly breaches: readonly Breach[] }
  | { readonly kind: 'refused'; readonly reason: string };

const minutesOf = (id: SchedulingRuleId): number => schedulingRule(id).value ?? 0;

/** A distance that must be at least what a rule says. */
const atLeast = (id: SchedulingRuleId, minutes: number): readonly Breach[] => {
  const by = minutesOf(id) - minutes;
  return by > 0 ? [{ rule: schedulingRule(id), by }] : [];
};

const sleepBreaches = ({ until, intensity }: PlacedSession, lightsOut: number): readonly Breach[] => {
  if (intensity === 'easy') return [];
  const left = lightsOut - until;
  // An hour exactly is still too little: the pooled studies found harm at one hour or less.
  if (left <= minutesOf('before-sleep-least'))
    return [{ rule: schedulingRule('before-sleep-least'), by: minutesOf('before-sleep-least') - left }];
  return atLeast('before-sleep', left);
};

const mealBreaches = ({ from, intensity }: PlacedSession, mealsEnd: readonly number[]): readonly Breach[] => {
  // Before the first meal the last one is for ever ago.
  const last = Math.max(...mealsEnd.filter((end) => end <= from), -Infinity);
  return atLeast(intensity === 'easy' ? 'after-meal-easy' : 'after-meal-hard', from - last);
};

const windowBreaches = (
  { from, until, shakes }: PlacedSession,
  windows: DayFrame['protectedWindows'],
): readonly Breach[] =>
  shakes
    ? windows.flatMap((closed) => {
        const by = Math.min(until, closed.until) - Math.max(from, closed.from);
        return by > 0 ? [{ rule: schedulingRule('protected-window'), by }] : [];
      })
    : [];

/** Minutes of the running clock; beyond these something else was written. */
const FARTHEST = 1e9;

const faultOfTime = (what: string, minute: number): readonly string[] =>
  Math.abs(minute) <= FARTHEST ? [] : [`${what} must be a minute of the running clock; it is ${minute}.`];

/** Everything that makes a day or a session impossible, each as a sentence: a time that is none would break no rule. */
const faultsOf = (session: PlacedSession, frame: DayFrame): readonly string[] => [
  ...(session.until > session.from ? [] : ['A session must end after it begins.']),
  ...(frame.lightsOut > frame.waking ? [] : ['Lights-out must come after waking.']),
  ...faultOfTime('The begin of the session', session.from),
  ...faultOfTime('The end of the session', session.until),
  ...faultOfTime('Waking', frame.waking),
  ...faultOfTime('Lights-out', frame.lightsOut),
  ...frame.mealsEnd.flatMap((end, place) => faultOfTime(`The end of meal ${place + 1}`, end)),
  ...frame.protectedWindows.flatMap(({ from, until }, place) => [
    ...faultOfTime(`The begin of protected window ${place + 1}`, from),
    ...faultOfTime(`The end of protected window ${place + 1}`, until),
    ...(until < from ? [`Protected window ${place + 1} must not end before it begins.`] : []),
  ]),
];

/** Rules of the day that a session breaks where it stands. */
export const timingBreaches = method(
  {
    id: 'scheduling/timing-breaches',
    revision: 1,
    title: 'Rules of the day that a session breaks where it stands [min]',
    equations: [
      'before sleep, vigorous: t_lights-out − t_end > 60 must hold, ≥ 120 should',
      'after the last main meal: t_begin − t_meal ≥ 60 easy, ≥ 120 hard or maximal',
      'maximal lifts: t_begin − t_waking ≥ 45',
      'treadmill and resistive work: no minute inside a protected window',
    ],
    inputs: [
      {
        name: 'begin and end of a session, of a meal, of a window',
        symbol: 't',
        unit: 'min',
        possible: [-FARTHEST, FARTHEST],
        valid: [-FARTHEST, FARTHEST],
      },
    ],
    outputs: [{ name: 'minutes by which a rule is broken', symbol: 'b', unit: 'min' }],
    refuses: [
      'a session or a protected window that ends before it begins',
      'lights-out before waking',
      'a begin, an end, a meal or a window that is no minute of the clock',
    ],
    source: COMMON_PRACTICE,
    restsOn: [STUTZ_2019],
    doesNotKnow:
      'When this person sleeps and eats best. Hard rules must hold; soft ones are a reason to move, not a ban.',
  },
  (session: PlacedSession, frame: DayFrame): TimingBreaches => {
    const faults = faultsOf(session, frame);
    if (faults.length > 0) return { kind: 'refused', reason: faults.join(' ') };
    return {
      kind: 'breaches',
      breaches: [
        ...windowBreaches(session, frame.protectedWindows),
        ...sleepBreaches(session, frame.lightsOut),
        ...mealBreaches(session, frame.mealsEnd),
        ...(session.lifts && session.intensity === 'maximal'
          ? atLeast('after-waking', session.from - frame.waking)
          : []),
      ],
    };
  },
);
