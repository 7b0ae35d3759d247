import { authorsAndYear } from '../cited.ts';
import type { Source } from '../formula.ts';
import type { SourcedTable } from '../sourced-table.ts';
import { HELMS_2017 } from '../sources.ts';
import { BANYARD_2017, BENCH_PRESS_2021, FAHS_2019, GENERIC_THRESHOLDS, HUGHES_2019 } from './sources.ts';
import { metresPerSecond, type MetresPerSecond } from '#units/quantity.ts';

/** Velocities at which people lift their one-repetition maximum, and how far the method was off. */

export interface MinimalVelocity {
  readonly lift: string;
  readonly people: string;
  /** Mean of the rise at the maximum. */
  readonly velocity: MetresPerSecond;
  /** Between people; null where none was printed. */
  readonly sd: MetresPerSecond | null;
  readonly count: number | null;
  readonly source: Source;
}

const row = (
  lift: string,
  people: string,
  velocity: number,
  sd: number | null,
  count: number | null,
  source: Source,
): MinimalVelocity => ({
  lift,
  people,
  velocity: metresPerSecond(velocity),
  sd: sd === null ? null : metresPerSecond(sd),
  count,
  source,
});

export const MINIMAL_VELOCITIES: SourcedTable<MinimalVelocity> = {
  record: {
    id: 'load-velocity/minimal-velocities',
    revision: 1,
    title: 'Mean velocity of the rise at the one-repetition maximum',
    source: HELMS_2017,
    restsOn: [BANYARD_2017, BENCH_PRESS_2021, FAHS_2019],
    doesNotKnow:
      'The velocity of this person, which repeats only poorly from day to day in the full squat (intraclass correlation 0.42); stronger people are slower at their maximum. Nothing weightless.',
  },
  columns: [
    { name: 'lift', unit: '' },
    { name: 'people', unit: '' },
    { name: 'mean velocity', unit: 'm/s' },
    { name: 'standard deviation', unit: 'm/s' },
    { name: 'number of people', unit: '' },
    { name: 'source', unit: '' },
  ],
  rows: [
    row('back squat', 'power lifters', 0.23, 0.05, 15, HELMS_2017),
    row('back squat, full depth', 'trained', 0.24, 0.06, 17, BANYARD_2017),
    row('back squat', 'recreational', 0.3, null, null, GENERIC_THRESHOLDS),
    row('bench press', 'power lifters', 0.1, 0.04, 15, HELMS_2017),
    row('bench press', 'as a general value', 0.17, null, 16, BENCH_PRESS_2021),
    row('deadlift', 'power lifters', 0.14, 0.05, 15, HELMS_2017),
    row('shoulder press', 'as a general value', 0.195, null, null, GENERIC_THRESHOLDS),
    row('prone row', 'as a general value', 0.5, null, null, GENERIC_THRESHOLDS),
  ],
  cells: ({ lift, people, velocity, sd, count, source }) => [lift, people, velocity, sd, count, authorsAndYear(source)],
};

interface PublishedAccuracy {
  readonly lift: string;
  readonly how: string;
  readonly found: string;
  readonly source: Source;
}

export const PUBLISHED_ACCURACY: SourcedTable<PublishedAccuracy> = {
  record: {
    id: 'load-velocity/published-accuracy',
    revision: 1,
    title: 'How far maxima read from velocity were off',
    source: BANYARD_2017,
    restsOn: [HUGHES_2019, BENCH_PRESS_2021],
    doesNotKnow: 'People who have never tried to lift as fast as possible.',
  },
  columns: [
    { name: 'lift', unit: '' },
    { name: 'method', unit: '' },
    { name: 'found', unit: '' },
    { name: 'source', unit: '' },
  ],
  rows: [
    {
      lift: 'back squat, full depth',
      how: 'minimal velocity, loads up to 90 %',
      found:
        'standard error 10.6 kg (7.4 %), too high on the whole, −5.5 to +27.8 % in single people; a tested maximum repeats within 2.9 kg',
      source: BANYARD_2017,
    },
    {
      lift: 'squat and others',
      how: 'minimal velocity',
      found: 'intraclass correlation 0.92 to 0.96, coefficient of variation 3.6 to 5.0 %',
      source: HUGHES_2019,
    },
    {
      lift: 'squat and others',
      how: 'load at zero velocity',
      found: 'intraclass correlation 0.78 to 0.82, coefficient of variation 8.2 to 8.6 %',
      source: HUGHES_2019,
    },
    {
      lift: 'bench press',
      how: 'minimal velocity, general or own',
      found: 'mean absolute error 2.7 to 3.7 %',
      source: BENCH_PRESS_2021,
    },
  ],
  cells: ({ lift, how, found, source }) => [lift, how, found, authorsAndYear(source)],
};
