import { shownTable, type SourcedTable } from '../sourced-table.ts';
import { COMMON_PRACTICE, OUR_OWN_DESIGN } from '../sources.ts';
import { FREEMAN_2011 } from './sources.ts';
import type { Source } from '../formula.ts';

/** Where a stand test stops being normal. The physician may set other limits. */
export interface StandTestLimits {
  /** Fall of systolic pressure from lying [mmHg]. */
  readonly systolicFall: number;
  /** Fall of diastolic pressure from lying [mmHg]. */
  readonly diastolicFall: number;
  /** The falls count up to here [min of standing]. */
  readonly fallsWithin: number;
  /** Rise of heart rate from lying [1/min]. */
  readonly heartRateRise: number;
  /** Readings in a row with such a rise. */
  readonly riseInRow: number;
  /** Length of the stand [min]. */
  readonly stand: number;
}

export const STAND_TEST_LIMITS: StandTestLimits = {
  systolicFall: 20,
  diastolicFall: 10,
  fallsWithin: 3,
  heartRateRise: 30,
  riseInRow: 2,
  stand: 10,
};

interface LimitRow {
  readonly limit: string;
  readonly value: number;
  readonly unit: string;
  readonly source: Source;
}

const of = (limit: string, key: keyof StandTestLimits, unit: string, source: Source): LimitRow => ({
  limit,
  value: STAND_TEST_LIMITS[key],
  unit,
  source,
});

const table: SourcedTable<LimitRow> = {
  record: {
    id: 'return/stand-test-limits',
    revision: 1,
    title: 'Limits of the stand test',
    source: FREEMAN_2011,
    restsOn: [COMMON_PRACTICE, OUR_OWN_DESIGN],
    doesNotKnow:
      'The physician’s own limits, which go before these. A normal stand test says little about a hot day, a hot shower or a long stand.',
  },
  columns: [
    { name: 'limit', unit: '' },
    { name: 'value', unit: '' },
    { name: 'unit', unit: '' },
    { name: 'status', unit: '' },
  ],
  rows: [
    of('fall of systolic pressure, at least', 'systolicFall', 'mmHg', FREEMAN_2011),
    of('fall of diastolic pressure, at least', 'diastolicFall', 'mmHg', FREEMAN_2011),
    of('the falls count within', 'fallsWithin', 'min', FREEMAN_2011),
    of('rise of heart rate, at least', 'heartRateRise', '1/min', FREEMAN_2011),
    of('in so many readings in a row', 'riseInRow', 'readings', OUR_OWN_DESIGN),
    of('length of the stand', 'stand', 'min', COMMON_PRACTICE),
  ],
  cells: ({ limit, value, unit, source }) => [limit, value, unit, source.status],
};

export const standTestLimits = shownTable(table);
