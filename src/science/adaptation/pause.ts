import { formula, type FormulaInput, type FormulaOutput } from '../formula.ts';
import { curveOf, spaced, type Curve, type Plot } from '../plot.ts';
import { BOSQUET_2013, COMMON_PRACTICE, COYLE_1984, MUJIKA_PADILLA_2000, OUR_OWN_DESIGN } from '../sources.ts';
import { BED_REST_LOSSES, ONE_LEG_LOSSES } from './losses.table.ts';
import { DE_BOER_2007, MARUSIC_2021, MCMASTER_2013 } from './sources.ts';
import { daySpan, fraction, type DaySpan, type Fraction } from '#units/quantity.ts';

/**
 * What is left after days without training. Where the legs still carry a body, strength stays for a fortnight and then
 * falls slowly; unloaded, it falls from the first day on.
 */

type Range = readonly [number, number];

const pause = (valid: Range): FormulaInput => ({
  name: 'days without training',
  symbol: 'D',
  unit: 'd',
  possible: [0, 365],
  valid,
});
const left = (possible: Range, valid: Range): FormulaInput => ({
  name: 'strength left',
  symbol: 'S',
  unit: '1',
  possible,
  valid,
});
const strengthLeft: FormulaOutput = { name: 'strength left', symbol: 'S', unit: '1' };
const longestPause: FormulaOutput = { name: 'days without training', symbol: 'D', unit: 'd' };

/** Knee extension of people who did not train: days and what was left. */
const kneeExtensors = ({ rows }: typeof BED_REST_LOSSES): readonly (readonly [number, number])[] =>
  rows
    .filter(({ measure, training }) => measure.startsWith('knee extension') && training === 'none')
    .map(({ days: [, last], change }) => [last, 1 + change / 100]);

const DRAWN: Range = [0, 120];

const ruleOfThumb = (): Curve => {
  const at = (days: number, weekly: number): number => strengthByRuleOfThumb(daySpan(days), fraction(weekly));
  const days = spaced(...DRAWN);
  return {
    label: 'rule of thumb, 0.5 to 1 % a week after a fortnight',
    points: days.map((on) => [on, at(on, 0.0075)]),
    band: days.map((on) => [at(on, 0.01), at(on, 0.005)]),
  };
};

const oneLeg = (): Curve => ({
  label: 'one leg unloaded, ± standard deviation',
  scattered: true,
  points: kneeExtensors(ONE_LEG_LOSSES),
  band: ONE_LEG_LOSSES.rows.map(({ change, sd }) => [1 + (change - (sd ?? 0)) / 100, 1 + (change + (sd ?? 0)) / 100]),
});

const leftAfterPause: Plot = {
  says: 'Under a body’s weight almost everything is kept for weeks; unloaded, a fortnight costs a seventh. Beyond 23 days the unloaded curve runs below what bed rest took: it is used with care there.',
  x: { name: 'days without training', unit: 'd' },
  y: { name: 'strength left', unit: '1' },
  curves: (): readonly Curve[] => [
    curveOf('still carrying a body', strengthCarried, DRAWN, (days) => [days]),
    ruleOfThumb(),
    curveOf('unloaded', strengthUnloaded, DRAWN, (days) => [days]),
    {
      label: 'bed rest, logarithmic',
      points: spaced(...DRAWN).map((days) => [days, 1 - kneeExtensorLoss(daySpan(days)) / 100]),
    },
    oneLeg(),
    { label: 'bed rest, studies', scattered: true, points: kneeExtensors(BED_REST_LOSSES) },
  ],
};

/** Most that a pause takes while the body is still carried, and what it takes unloaded. */
const MOST_CARRIED = 0.15;
const MOST_UNLOADED = 0.368514;
/** A fortnight costs nothing [d]; then the loss grows with this time constant [d]. */
const FREE_DAYS = 14;
const CARRIED_DAYS = 60;
const UNLOADED_DAYS = 27.262923;

/** Strength left after a pause while the legs still carry a body. */
export const strengthCarried = formula(
  {
    id: 'pause/strength-carried',
    revision: 1,
    title: 'Strength left after a pause while the legs still carry a body',
    equation: '1 − 0.15 (1 − exp(−max(0, D − 14) / 60))',
    inputs: [pause([0, 84])],
    output: strengthLeft,
    source: OUR_OWN_DESIGN,
    restsOn: [MUJIKA_PADILLA_2000, BOSQUET_2013, MCMASTER_2013],
    doesNotKnow:
      'This person. Published losses are effect sizes, not percentages; people over 65 and the inactive lose more. The numbers are our own and editable.',
    plot: leftAfterPause,
  },
  (days: DaySpan): Fraction =>
    fraction(1 - MOST_CARRIED * (1 - Math.exp(-Math.max(0, days - FREE_DAYS) / CARRIED_DAYS))),
);

/** Longest pause [d] that leaves a part of strength while the legs still carry a body. */
export const longestPauseCarried = formula(
  {
    id: 'pause/longest-carried',
    revision: 1,
    title: 'Longest pause [d] that leaves a part of strength while the legs still carry a body',
    equation: '14 − 60 ln(1 − (1 − S) / 0.15)',
    inputs: [left([0.86, 1], [0.9, 1])],
    output: longestPause,
    source: OUR_OWN_DESIGN,
    restsOn: [MUJIKA_PADILLA_2000, BOSQUET_2013],
    doesNotKnow: 'This person; the numbers are our own and editable.',
  },
  (part: Fraction): DaySpan => daySpan(FREE_DAYS - CARRIED_DAYS * Math.log(1 - (1 - part) / MOST_CARRIED)),
);

/** Strength of the knee extensors left after days unloaded and untrained. */
export const strengthUnloaded = formula(
  {
    id: 'pause/strength-unloaded',
    revision: 1,
    title: 'Strength of the knee extensors left after days unloaded and untrained',
    equation: '1 − 0.368514 (1 − exp(−D / 27.262923))',
    inputs: [pause([0, 23])],
    output: strengthLeft,
    source: OUR_OWN_DESIGN,
    restsOn: [DE_BOER_2007, MARUSIC_2021],
    standardError: {
      value: 0.071,
      unit: '1',
      of: 'the nine men of the study after 23 days (standard deviation between them)',
    },
    doesNotKnow:
      'Anything beyond 23 days, other muscles, women. It passes through what one leg of nine young men lost by 14 and by 23 days; the form is our own.',
    plot: leftAfterPause,
  },
  (days: DaySpan): Fraction => fraction(1 - MOST_UNLOADED * (1 - Math.exp(days / -UNLOADED_DAYS))),
);

/** Days unloaded and untrained that leave a part of strength. */
export const longestPauseUnloaded = formula(
  {
    id: 'pause/longest-unloaded',
    revision: 1,
    title: 'Days unloaded and untrained that leave a part of strength',
    equation: '−27.262923 ln(1 − (1 − S) / 0.368514)',
    inputs: [left([0.64, 1], [0.79, 1])],
    output: longestPause,
    source: OUR_OWN_DESIGN,
    restsOn: [DE_BOER_2007],
    doesNotKnow: 'Anything beyond 23 days, other muscles, women.',
  },
  (part: Fraction): DaySpan => daySpan(-UNLOADED_DAYS * Math.log(1 - (1 - part) / MOST_UNLOADED)),
);

/** Strength left after a pause by the rule of thumb. */
export const strengthByRuleOfThumb = formula(
  {
    id: 'pause/rule-of-thumb',
    revision: 1,
    title: 'Strength left after a pause by the rule of thumb',
    equation: '1 − r max(0, D − 14) / 7',
    inputs: [
      pause([0, 84]),
      { name: 'loss of a week', symbol: 'r', unit: '1', possible: [0, 0.015], valid: [0.005, 0.01] },
    ],
    output: strengthLeft,
    source: COMMON_PRACTICE,
    restsOn: [MCMASTER_2013],
    doesNotKnow: 'Where the loss ends; no load is made from it.',
  },
  (days: DaySpan, weekly: Fraction): Fraction => fraction(1 - (weekly * Math.max(0, days - FREE_DAYS)) / 7),
);

/** Loss of the knee extensors [%] in bed without training. */
export const kneeExtensorLoss = formula(
  {
    id: 'pause/knee-extensor-loss',
    revision: 1,
    title: 'Loss of the knee extensors [%] in bed without training',
    equation: '7.5 ln(1 + D / 3)',
    inputs: [pause([5, 120])],
    output: { name: 'loss', symbol: 'loss', unit: '%' },
    source: OUR_OWN_DESIGN,
    restsOn: [MARUSIC_2021],
    doesNotKnow:
      'The fit of the paper, of which only the form was seen: that the loss grows with the logarithm of time. The two numbers are our own and illustrate it.',
    plot: leftAfterPause,
  },
  (days: DaySpan): number => 7.5 * Math.log(1 + days / 3),
);

/** Loss of maximal oxygen uptake [%] after the end of endurance training. */
export const oxygenUptakeLost = formula(
  {
    id: 'pause/oxygen-uptake-lost',
    revision: 1,
    title: 'Loss of maximal oxygen uptake [%] after the end of endurance training',
    equation: '16 (1 − exp(−D / 20.856357))',
    inputs: [pause([0, 84])],
    output: { name: 'loss', symbol: 'loss', unit: '%' },
    source: OUR_OWN_DESIGN,
    restsOn: [COYLE_1984, MUJIKA_PADILLA_2000],
    doesNotKnow:
      'This person, and anybody unloaded. It passes through 7 % at 12 days and runs to 16 %; the seven well-trained people of the study still stood at 7 % after 21 days, where it says 10 %.',
    plot: {
      says: 'Endurance goes sooner than strength. The study printed 7 % for 12 to 21 days and 16 % from 56 days on; the curve is too dark in between.',
      x: { name: 'days without training', unit: 'd' },
      y: { name: 'loss of maximal oxygen uptake', unit: '%' },
      curves: (): readonly Curve[] => [
        curveOf('curve', oxygenUptakeLost, [0, 84], (days) => [days]),
        {
          label: 'study',
          scattered: true,
          points: [
            [12, 7],
            [21, 7],
            [56, 16],
            [84, 16],
          ],
        },
      ],
    },
  },
  (days: DaySpan): number => 16 * (1 - Math.exp(days / -20.856357)),
);
