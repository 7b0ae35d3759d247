import { remainingStrength, type DaysMissed } from '../adaptation/remaining-strength.ts';
import { strengthCarried, strengthUnloaded } from '../adaptation/pause.ts';
import { formula, type FormulaInput } from '../formula.ts';
import { load as loadInput } from '../inputs.ts';
import { method } from '../method.ts';
import { curveOf, type Curve } from '../plot.ts';
import { BOSQUET_2013, OUR_OWN_DESIGN } from '../sources.ts';
import { olderLoad } from './older-resume-rule.table.ts';
import { type Exertion, type Fraction, type Kilograms } from '#units/quantity.ts';

/** How to begin again after a lift was missed, by why it was missed. One curve for all; no table of days. */

export type MissedBecause = 'machine out' | 'busy' | 'ill';

/** What the person did meanwhile. */
export type Meanwhile = 'kept running' | 'up and about in 1 g' | 'nothing';

export interface Missed {
  readonly days: number;
  readonly because: MissedBecause;
  readonly meanwhile: Meanwhile;
  /** After illness: whether a physician has said that training may begin. */
  readonly released: boolean;
}

export type ResumeAfterMissed =
  | {
      readonly kind: 'resume';
      readonly left: Fraction;
      readonly curve: 'carried' | 'unloaded';
      /** Most effort of the first session back; null where it goes on as planned. */
      readonly mostEffort: Exertion | null;
      readonly says: readonly string[];
    }
  | {
      readonly kind: 'wait for the physician';
      /** What would be left if it began today: to see, not to load. */
      readonly left: Fraction;
      readonly reason: string;
    }
  | { readonly kind: 'refused'; readonly reason: string };

const days: FormulaInput = { name: 'days missed', symbol: 'D', unit: 'd', possible: [0, 365], valid: [0, 84] };

/** Load of the first session back, before its effort is capped [kg]. */
export const firstLoadBack = formula(
  {
    id: 'resuming/first-load',
    revision: 1,
    title: 'Load of the first session back, before its effort is capped [kg]',
    equation: 'S · L',
    inputs: [
      { name: 'strength left', symbol: 'S', unit: '1', possible: [0, 1], valid: [0.6, 1] },
      loadInput('load as planned before', 'L'),
    ],
    output: { name: 'load of the first session back', symbol: 'L_back', unit: 'kg' },
    source: OUR_OWN_DESIGN,
    doesNotKnow:
      'How the set will feel: where it feels harder than RPE 6 it is made lighter. No limit of a physician or machine is in it.',
  },
  (left: Fraction, planned: Kilograms): Kilograms => (left * planned) as Kilograms,
);

const WHY: Readonly<Record<MissedBecause, string>> = {
  'machine out': 'The machine was out. What replaced it counts for coverage, not for more load.',
  busy: 'Sessions fell out for want of time. None is made up by doubling the next.',
  ill: 'After illness strength is taken from the unloaded curve, whatever was done meanwhile.',
};

const legsOf = ({ because, meanwhile }: Missed): DaysMissed['legs'] =>
  because === 'ill' || meanwhile === 'nothing' ? 'unloaded' : 'still loaded';

const DRAWN: readonly [number, number] = [0, 60];
const OLDER_DAYS: readonly number[] = [2, 6, 11, 21, 40];

const olderPoints = (where: 'ground' | 'flight'): Curve => ({
  label: `older rule by days, ${where === 'ground' ? 'on the ground' : 'in flight'}`,
  scattered: true,
  points: OLDER_DAYS.map((on) => [on, olderLoad(on, where)] as const),
});

/** How to begin again after days missed, by their cause. */
export const resumeAfterMissed = method(
  {
    id: 'resuming/after-missed',
    revision: 1,
    title: 'How to begin again after days missed, by their cause',
    equations: [
      'machine out or busy, and still running or up and about in 1 g: S = 1 − 0.15 (1 − exp(−max(0, D − 14) / 60))',
      'ill, or nothing at all: S = 1 − 0.368514 (1 − exp(−D / 27.262923))',
      'first session back: S · L, at RPE 6 or less',
    ],
    inputs: [days],
    outputs: [
      { name: 'strength left', symbol: 'S', unit: '1' },
      { name: 'most effort of the first session back', symbol: 'RPE', unit: 'RPE' },
    ],
    refuses: ['days that cannot be, or more than a year', 'to begin after illness before a physician has said so'],
    source: OUR_OWN_DESIGN,
    restsOn: [BOSQUET_2013],
    doesNotKnow:
      'How ill somebody was, and what substitutes kept. The choice of curve, the days that are no pause and RPE 6 are our own and editable; a physician’s word goes before all of it.',
    plot: {
      says: 'One curve in place of steps: no day on which a load suddenly drops. For two weeks the unloaded curve lies under the older steps in flight, after that above them. The still loaded curve lies above them all: there the cap of effort protects.',
      x: { name: 'days missed', unit: 'd' },
      y: { name: 'part of the load', unit: '1' },
      curves: (): readonly Curve[] => [
        curveOf('still loaded', strengthCarried, DRAWN, (on) => [on]),
        curveOf('ill, or nothing at all', strengthUnloaded, DRAWN, (on) => [on]),
        olderPoints('ground'),
        olderPoints('flight'),
      ],
    },
  },
  (missed: Missed): ResumeAfterMissed => {
    const ill = missed.because === 'ill';
    const found = remainingStrength({ days: missed.days, legs: legsOf(missed), ill });
    if (found.kind === 'refused') return found;
    const { fraction: left, curve, firstSession, cautions } = found;
    if (ill && !missed.released)
      return {
        kind: 'wait for the physician',
        left,
        reason: 'After illness the physician says when. Nothing is loaded before.',
      };
    return {
      kind: 'resume',
      left,
      curve,
      mostEffort: firstSession.kind === 'capped' ? firstSession.exertion : null,
      says: [WHY[missed.because], ...cautions],
    };
  },
);
