import { printedResults, printedRows, type Check } from '../check.ts';
import { halfLifeBetween, partLeft } from '../recovery/halving.ts';
import { MOORE_2010, RECOMPUTED } from '../sources.ts';
import { capacityIndex, capacityRatio } from './capacity-index.ts';
import { expectedMaximumDeSouza, expectedMaximumMyers } from './expected-maximum.ts';
import { DOUBLES, valueOf } from './read-estimate.ts';
import { KAMINSKY_2015 } from './sources.ts';
import { uptakeOfPercentile, uptakePercentile, type UptakeStanding } from './uptake-percentile.ts';

const test = (...rates: readonly number[]) =>
  rates.map((heartRate, place) => ({ heartRate, uptake: 10.5 * (place + 1) }));
const before = test(95, 118, 142);
const flight = test(101, 128, 154);

export const capacityChecks: readonly Check[] = [
  ...printedResults(capacityIndex, RECOMPUTED, 1e-9, DOUBLES, [
    ['before flight', () => valueOf(capacityIndex(before, 178)), 47.65555220277611],
    ['flight day 15', () => valueOf(capacityIndex(flight, 178)), 40.941029900332225],
  ]),
  ...printedResults(capacityRatio, RECOMPUTED, 1e-9, DOUBLES, [
    ['flight day 15 over before', () => valueOf(capacityRatio(before, flight, 178, 15)), 0.8591030427289281],
  ]),
  ...printedRows(RECOMPUTED, 1e-9, DOUBLES, [
    [halfLifeBetween, [11.745, 4.027, 9], 5.827998905670962],
    [partLeft, [12, 6], 0.25],
  ]),
  {
    kind: 'series',
    title: 'Deficit of oxygen uptake of five people ten days after landing, from the day after it [1]',
    compute: () => 0.117 * partLeft(9, 6),
    printed: 0.04,
    within: 0.005,
    because: 'five people, printed to a tenth of a percent; the half-life is rounded to 6 days',
    source: MOORE_2010,
  },
];

const standing = (found: UptakeStanding): number => (found.kind === 'percentile' ? found.value : Number.NaN);
const at = (sex: 'female' | 'male', age: number, percentile: number): number => {
  const found = uptakeOfPercentile(sex, age, percentile);
  return found.kind === 'uptake' ? found.value : Number.NaN;
};

export const normChecks: readonly Check[] = [
  ...printedResults(uptakePercentile, RECOMPUTED, 1e-9, DOUBLES, [
    ['man of 45 years with 42.0', () => standing(uptakePercentile('male', 45, 42)), 64.58333333333333],
  ]),
  ...printedResults(uptakeOfPercentile, KAMINSKY_2015, 0, 'a cell as printed in the abstract', [
    ['median of men of 25 years', () => at('male', 25, 50), 48],
    ['median of women of 25 years', () => at('female', 25, 50), 37.6],
    ['median of men of 75 years', () => at('male', 75, 50), 24.4],
    ['median of women of 75 years', () => at('female', 75, 50), 18.3],
  ]),
  ...printedRows(RECOMPUTED, 1e-9, DOUBLES, [
    [expectedMaximumMyers, [45, 0, 80], 39.95103416201645],
    [expectedMaximumDeSouza, [45, 1, 80, 1.778, 1], 39.2345285378147],
  ]),
];
