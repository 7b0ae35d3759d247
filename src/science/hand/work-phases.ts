import { fraction, seconds, type Fraction, type Seconds } from '#units/quantity.ts';
import { method } from '../method.ts';
import { OUR_OWN_DESIGN } from '../sources.ts';
import type { FatigueConstants } from './fatigue-constants.table.ts';
import { fatigueRate, recoveryRate, target, time, tired } from './inputs.ts';
import { FREY_LAW_2012, XIA_FREY_LAW_2008 } from './sources.ts';

/** Work and its end, in closed form. */

interface Refused {
  readonly kind: 'refused';
  readonly reason: string;
}

export type SustainedEndurance =
  | { readonly kind: 'estimate'; readonly value: Seconds; readonly cautions: readonly string[] }
  | { readonly kind: 'without end'; readonly reason: string }
  | Refused;

const inRange = (value: number, [low, high]: readonly [number, number]): boolean => value >= low && value <= high;

/** The first constant that cannot be, as a sentence. */
export const impossibleConstant = ({ fatigue, recovery, restMultiplier }: FatigueConstants): string | undefined => {
  const given = [
    ['rate of fatigue', fatigue, fatigueRate.possible, '1/s'],
    ['rate of recovery', recovery, recoveryRate.possible, '1/s'],
    ['recovery at rest over that under load', restMultiplier, [1, 100], '1'],
  ] as const;
  const off = given.find(([, value, range]) => !inRange(value, range));
  return off && `The ${off[0]} must lie in ${off[2][0]} to ${off[2][1]} ${off[3]}; it is ${off[1]}.`;
};

const SHORT_ABOVE =
  'Above 0.6 of the maximum the model is short: at 0.8 by a half, at 0.9 by two thirds, against the curve it was fitted to.';

/** How long a force can be held without a break, in the three compartments. */
export const sustainedEndurance = method(
  {
    id: 'three-compartments/sustained-endurance',
    revision: 1,
    title: 'Time a force can be held [s], three compartments',
    equations: ['T = −ln(1 − R (1 − I) / (F I)) / R', 'without end if I ≤ R / (F + R)'],
    inputs: [target, fatigueRate, recoveryRate],
    outputs: [{ name: 'endurance time', symbol: 'T', unit: 's' }],
    refuses: ['A force outside 0 to 1 of the maximum.', 'Constants outside what is possible.'],
    source: FREY_LAW_2012,
    restsOn: [XIA_FREY_LAW_2008, OUR_OWN_DESIGN],
    doesNotKnow: `${SHORT_ABOVE} The root mean square error from 0.1 to 0.9 is 19 s here; the paper prints 5.6 s, so its measure is another.`,
  },
  (load: Fraction, constants: FatigueConstants): SustainedEndurance => {
    const { fatigue, recovery } = constants;
    const reason = impossibleConstant(constants);
    if (reason !== undefined) return { kind: 'refused', reason };
    if (!inRange(load, [0, 1]))
      return { kind: 'refused', reason: `A force must lie in 0 to 1 of the maximum; it is ${load}.` };
    const used = (recovery * (1 - load)) / (fatigue * load);
    return used < 1
      ? {
          kind: 'estimate',
          value: seconds(-Math.log1p(-used) / recovery),
          cautions: load > 0.6 ? [SHORT_ABOVE] : [],
        }
      : {
          kind: 'without end',
          reason: `At or below ${(recovery / (fatigue + recovery)).toFixed(3)} of the maximum this model recovers as fast as it tires.`,
        };
  },
);

export interface WorkPhase {
  /** Share of the muscle that is tired at the end. */
  readonly tired: Fraction;
  /** When the force was lost, in seconds from the start of the phase; null where it was not. */
  readonly failedAfter: Seconds | null;
}

/** All that is left is used: the tired share runs towards that of an all-out effort. */
const spent = (start: number, after: number, { fatigue, recovery }: FatigueConstants): number => {
  const most = fatigue / (fatigue + recovery);
  return most + (start - most) * Math.exp(-(fatigue + recovery) * after);
};

/** The force asked for is there: the tired share runs towards that of this work. */
const held = (start: number, load: number, after: number, { fatigue, recovery }: FatigueConstants): number => {
  const towards = (fatigue * load) / recovery;
  return towards + (start - towards) * Math.exp(-recovery * after);
};

/** When a force is lost from a state in which it is there; never, where the work tends to less than it leaves. */
const lostAfter = (start: number, load: number, { fatigue, recovery }: FatigueConstants): number | null => {
  const towards = (fatigue * load) / recovery;
  const kept = 1 - load;
  return towards > kept ? -Math.log1p(-(kept - start) / (towards - start)) / recovery : null;
};

/** When somebody more tired than this work can make them has come down to where the force is there again. */
const backAfter = (start: number, load: number, { fatigue, recovery }: FatigueConstants): number | null => {
  const most = fatigue / (fatigue + recovery);
  const kept = 1 - load;
  return most < kept ? Math.log((start - most) / (kept - most)) / (fatigue + recovery) : null;
};

/** One contraction from any state, without a look at its inputs: for marches that have looked. */
export const contraction = (start: number, load: number, after: number, constants: FatigueConstants): WorkPhase => {
  const kept = 1 - load;
  if (start > kept) {
    const back = backAfter(start, load, constants);
    const tiredNow =
      back !== null && back < after ? held(kept, load, after - back, constants) : spent(start, after, constants);
    return { tired: tiredNow as Fraction, failedAfter: 0 as Seconds };
  }
  const lost = lostAfter(start, load, constants);
  return lost === null || lost >= after
    ? { tired: held(start, load, after, constants) as Fraction, failedAfter: null }
    : { tired: spent(kept, after - lost, constants) as Fraction, failedAfter: lost as Seconds };
};

export type WorkPhaseResult =
  (WorkPhase & { readonly kind: 'estimate'; readonly cautions: readonly string[] }) | Refused;

/** A contraction of one force: what is tired at its end, and when the force was lost. */
export const workPhase = method(
  {
    id: 'three-compartments/work-phase',
    revision: 1,
    title: 'One contraction in the three compartments',
    equations: [
      'M_I = F I / R',
      'M_F = M_I + (M_0 − M_I) exp(−R t) while M_F ≤ 1 − I',
      't_lost = −ln((M_I − (1 − I)) / (M_I − M_0)) / R if M_I > 1 − I',
      'M_S = F / (F + R)',
      'M_F = M_S + (M_1 − M_S) exp(−(F + R) (t − t_lost)) afterwards, M_1 = 1 − I',
    ],
    inputs: [tired, target, time('length of the contraction', 't'), fatigueRate, recoveryRate],
    outputs: [
      { name: 'tired share', symbol: 'M_F', unit: '1' },
      { name: 'time until the force is lost', symbol: 't_lost', unit: 's' },
    ],
    refuses: [
      'A share outside 0 to 1; a force of 0, which is rest; a time below 0.',
      'Constants outside what is possible.',
    ],
    source: XIA_FREY_LAW_2008,
    restsOn: [OUR_OWN_DESIGN],
    doesNotKnow:
      'The tenth of a second in which the force comes up; what somebody does once the force is lost: all that is left is taken to be used.',
  },
  (start: Fraction, load: Fraction, after: Seconds, constants: FatigueConstants): WorkPhaseResult => {
    const reason = impossibleConstant(constants);
    if (reason !== undefined) return { kind: 'refused', reason };
    if (!inRange(start, [0, 1]))
      return { kind: 'refused', reason: `The tired share must lie in 0 to 1; it is ${start}.` };
    if (!(load > 0 && load <= 1))
      return { kind: 'refused', reason: `A force must lie above 0 and at most at 1 of the maximum; it is ${load}.` };
    if (!inRange(after, time('', '').possible))
      return { kind: 'refused', reason: `A contraction must last 0 to 36000 s; it lasts ${after}.` };
    const { tired: now, failedAfter } = contraction(start, load, after, constants);
    return {
      kind: 'estimate',
      tired: fraction(now),
      failedAfter,
      cautions: failedAfter === null ? [] : ['The force is lost within this contraction.'],
    };
  },
);
