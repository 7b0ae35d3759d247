import type { SourcedTable } from '../sourced-table.ts';
import {
  BJORKMAN_2016,
  CINK_THOMAS_1981,
  GEORGE_1993,
  KLINE_1987,
  LEGER_1988,
  SPREAD_OF_ESTIMATES,
} from './sources.ts';

/** How far each way of knowing the maximal uptake lies from a measurement. */

export interface EstimatorSpread {
  readonly way: string;
  /** [mL/(kg min)] */
  readonly sd: number;
  readonly says: string;
}

/** Measured by gas exchange: about 3 %, between 1.2 and 2 [fraction of the value]. */
export const MEASURED_FRACTION = 0.03;

export const ESTIMATOR_SPREAD: SourcedTable<EstimatorSpread> = {
  record: {
    id: 'submaximal/spread',
    revision: 1,
    title: 'Spread of a maximal oxygen uptake by how it was found',
    source: SPREAD_OF_ESTIMATES,
    restsOn: [CINK_THOMAS_1981, BJORKMAN_2016, KLINE_1987, GEORGE_1993, LEGER_1988],
    doesNotKnow:
      'How well the test went. A line through stages carries its own standard deviation where that is larger.',
  },
  columns: [
    { name: 'way', unit: '' },
    { name: 'standard deviation', unit: 'mL/(kg min)' },
    { name: 'in words', unit: '' },
  ],
  rows: [
    { way: 'gas exchange at a maximal test', sd: 1.5, says: '1.2 to 2, about 3 % of the value' },
    { way: 'three or more stages, measured maximal heart rate', sd: 3.5, says: '3 to 4' },
    { way: 'mile and a half run', sd: 3.9, says: '47 students' },
    { way: 'stages, predicted maximal heart rate', sd: 4.5, says: '4 to 5' },
    { way: 'shuttle run', sd: 4.7, says: 'adults' },
    { way: 'mile walked', sd: 5, says: 'adults of 30 to 69 years' },
    { way: 'single stage', sd: 5.7, says: '5 to 6; 0.42 to 0.48 L/min' },
  ],
  cells: ({ way, sd, says }) => [way, sd, says],
};
