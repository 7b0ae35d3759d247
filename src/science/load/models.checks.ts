import { printedResults, printedRows, type Check } from '../check.ts';
import { EXAMPLE_FIT, EXAMPLE_LOADS, exampleFit, foretold } from './fit-example.ts';
import { holdOut } from './hold-out.ts';
import { impulseResponse, daysToBaseline, daysToPeak } from './impulse-response.ts';
import { impulseResponseFit, type ImpulseResponseFit } from './impulse-response-fit.ts';
import { NUMPY, RECOMPUTED, SCIPY } from '../sources.ts';
import { PUBLISHED_DOSE, steadyChange, steadyOptimum, variableDose } from './variable-dose.ts';

const SIX = 'printed to six decimals';
const HALF_OF_SIX = 0.5e-6;
const COUNTED = 'a count';

const LOADS = [5, 0, 7, 3, 0, 8, 2, 6, 0, 4, 9, 0, 0, 3];

const onDay = (day: number, what: 'gain' | 'fatigue' | 'performance') => (): number => {
  const model = { base: 100, gain: 0.1, fatigue: 0.25, gainFades: 42, fatigueFades: 7 };
  const course = impulseResponse(LOADS, model);
  return course.kind === 'estimate' ? (course.days[day]?.[what] ?? Number.NaN) : Number.NaN;
};

const PERFORMANCE: readonly (readonly [day: number, printed: number])[] = [
  [0, 100],
  [1, 99.404638],
  [3, 98.817726],
  [6, 98.389287],
  [9, 98.851789],
  [11, 98.249313],
  [13, 99.467127],
  [14, 99.585724],
];

export const courseChecks: readonly Check[] = [
  ...printedResults(
    impulseResponse,
    RECOMPUTED,
    HALF_OF_SIX,
    SIX,
    PERFORMANCE.map(([day, printed]) => [`performance of day ${day}`, onDay(day, 'performance'), printed]),
  ),
  ...printedResults(impulseResponse, RECOMPUTED, HALF_OF_SIX, SIX, [
    ['gain of day 9', onDay(9, 'gain'), 27.417953],
    ['fatigue of day 9', onDay(9, 'fatigue'), 15.560027],
  ]),
  ...printedRows(RECOMPUTED, HALF_OF_SIX, SIX, [
    [daysToBaseline, [42, 7, 0.1, 0.25], 7.696842],
    [daysToPeak, [42, 7, 0.1, 0.25], 22.747622],
  ]),
];

const ofFit = (pick: (fit: Extract<ImpulseResponseFit, { kind: 'estimate' }>) => number) => (): number => {
  const fit = exampleFit();
  return fit.kind === 'estimate' ? pick(fit) : Number.NaN;
};

export const fitChecks: readonly Check[] = [
  ...printedResults(impulseResponseFit, NUMPY, HALF_OF_SIX, SIX, [
    ['at 42 and 7 days: performance without training', ofFit(({ usual }) => usual.base), 100.332716],
    ['at 42 and 7 days: gain', ofFit(({ usual }) => usual.gain), 0.09481],
    ['at 42 and 7 days: fatigue', ofFit(({ usual }) => usual.fatigue), 0.246903],
    ['at 42 and 7 days: sum of squares', ofFit(({ usual }) => usual.residual), 3.078067],
    ['best pair: sum of squares', ofFit(({ best }) => best.residual), 2.619549],
    ['best pair: gain, where 0.1 is true', ofFit(({ best }) => best.gain), 0.951202],
    ['best pair: fatigue, where 0.25 is true', ofFit(({ best }) => best.fatigue), 1.049421],
    ['day 126, after a fortnight of rest, by the best pair', ofFit(({ best }) => foretold(best, 126)), 106.731663],
    ['the same by 42 and 7 days', ofFit(({ usual }) => foretold(usual, 126)), 106.827758],
  ]),
  ...printedResults(impulseResponseFit, SCIPY, HALF_OF_SIX, SIX, [
    ['sum of squares that bounds the region', ofFit(({ bound }) => bound), 4.049744],
  ]),
  ...printedResults(impulseResponseFit, NUMPY, 0, COUNTED, [
    ['best pair: time constant of the gain, where 42 is true', ofFit(({ best }) => best.gainFades), 22],
    ['best pair: time constant of the fatigue, where 7 is true', ofFit(({ best }) => best.fatigueFades), 18],
    ['pairs of the grid', ofFit(({ pairs }) => pairs), 867],
    ['pairs that fit as well', ofFit(({ region }) => region.length), 329],
  ]),
  ...printedResults(holdOut, NUMPY, HALF_OF_SIX, SIX, [
    [
      'error of the model over the last six tests',
      () => {
        const found = holdOut(EXAMPLE_LOADS, EXAMPLE_FIT.tests);
        return found.kind === 'estimate' ? found.model : Number.NaN;
      },
      0.399287,
    ],
    [
      'error of the last value over the same',
      () => {
        const found = holdOut(EXAMPLE_LOADS, EXAMPLE_FIT.tests);
        return found.kind === 'estimate' ? found.lastValue : Number.NaN;
      },
      0.556168,
    ],
  ]),
];

const DOSES = [100, 120, 0, 150, 80, 0, 0, 110, 130, 0];

/** Days are counted from 1 in print: the performance of day n is the one before its load. */
const doseOn = (day: number) => (): number => {
  const course = variableDose(DOSES, { base: 250, ...PUBLISHED_DOSE });
  return course.kind === 'estimate' ? (course.performance[day - 1] ?? Number.NaN) : Number.NaN;
};

export const doseChecks: readonly Check[] = [
  ...printedResults(variableDose, RECOMPUTED, HALF_OF_SIX, SIX, [
    ['performance of day 2', doseOn(2), 252.671192],
    ['performance of day 5', doseOn(5), 258.548769],
    ['performance of day 8', doseOn(8), 259.617958],
    ['performance of day 11', doseOn(11), 264.227544],
  ]),
  ...printedRows(RECOMPUTED, HALF_OF_SIX, SIX, [[steadyOptimum, [0.031, 0.000035, 30.8, 16.8, 2.3], 290.202392]]),
  ...printedRows(SCIPY, HALF_OF_SIX, SIX, [[steadyChange, [290.202392, 0.031, 0.000035, 30.8, 16.8, 2.3], 136.305724]]),
];
