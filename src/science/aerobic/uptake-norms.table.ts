import type { SourcedTable } from '../sourced-table.ts';
import type { Sex } from '../body/segments.ts';
import { KAMINSKY_2015, KAMINSKY_2022, PETERMAN_2020 } from './sources.ts';

/** Maximal oxygen uptake on a treadmill by sex and decade of age: 7783 tests of people without heart disease. */

export const PERCENTILES = [5, 10, 25, 50, 75, 90, 95] as const;

export interface UptakeNorm {
  readonly sex: Sex;
  /** First year of the decade. */
  readonly from: number;
  /** At each of the percentiles [mL/(kg min)]. */
  readonly uptakes: readonly [number, number, number, number, number, number, number];
}

export const UPTAKE_NORMS: SourcedTable<UptakeNorm> = {
  record: {
    id: 'norm/treadmill',
    revision: 1,
    title: 'Maximal oxygen uptake on a treadmill, percentiles by sex and age',
    source: KAMINSKY_2015,
    restsOn: [PETERMAN_2020, KAMINSKY_2022],
    doesNotKnow:
      'Crews: nobody is drawn from this population for one, and a percentile describes, it sets no target. A cycle reads 10 to 20 % lower: compare a cycle test with cycle figures or with the person’s own. A later edition (22 379 tests) lies 1.5 to 4.6 lower; an international one has medians of 49.5 and 40.6 in the twenties. Only the medians of the first and last decade were seen.',
  },
  columns: [
    { name: 'sex', unit: '' },
    { name: 'age', unit: 'years' },
    ...PERCENTILES.map((percentile) => ({ name: `percentile ${percentile}`, unit: 'mL/(kg min)' })),
  ],
  rows: [
    { sex: 'male', from: 20, uptakes: [29.0, 32.1, 40.1, 48.0, 55.2, 61.8, 66.3] },
    { sex: 'male', from: 30, uptakes: [27.2, 30.2, 35.9, 42.4, 49.2, 56.5, 59.8] },
    { sex: 'male', from: 40, uptakes: [24.2, 26.8, 31.9, 37.8, 45.0, 52.1, 55.6] },
    { sex: 'male', from: 50, uptakes: [20.9, 22.8, 27.1, 32.6, 39.7, 45.6, 50.7] },
    { sex: 'male', from: 60, uptakes: [17.4, 19.8, 23.7, 28.2, 34.5, 40.3, 43.0] },
    { sex: 'male', from: 70, uptakes: [16.3, 17.1, 20.4, 24.4, 30.4, 36.6, 39.7] },
    { sex: 'female', from: 20, uptakes: [21.7, 23.9, 30.5, 37.6, 44.7, 51.3, 56.0] },
    { sex: 'female', from: 30, uptakes: [19.0, 20.9, 25.3, 30.2, 36.1, 41.4, 45.8] },
    { sex: 'female', from: 40, uptakes: [17.0, 18.8, 22.1, 26.7, 32.4, 38.4, 41.7] },
    { sex: 'female', from: 50, uptakes: [16.0, 17.3, 19.9, 23.4, 27.6, 32.0, 35.9] },
    { sex: 'female', from: 60, uptakes: [13.4, 14.6, 17.2, 20.0, 23.8, 27.0, 29.4] },
    { sex: 'female', from: 70, uptakes: [13.1, 13.6, 15.6, 18.3, 20.8, 23.1, 24.1] },
  ],
  cells: ({ sex, from, uptakes }) => [sex, `${from} to ${from + 9}`, ...uptakes],
};
