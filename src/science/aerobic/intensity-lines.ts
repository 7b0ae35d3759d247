import { curveOf, type Curve } from '../plot.ts';
import { formula, type FormulaRecord } from '../formula.ts';
import { SWAIN_1994, SWAIN_1998, SWAIN_LEUTHOLTZ_1997 } from './sources.ts';

/** Lines measured between one percent of effort and another. For comparison: no target is made from them. */

const percent = (name: string, symbol: string, valid: readonly [number, number] = [30, 100]) =>
  ({ name, symbol, unit: '%', possible: [0, 100], valid }) as const;
const ofMaximum = percent('percent of the maximal uptake', '%VO2_max');
const ofReserve = percent('percent of the uptake reserve', '%VO2R', [20, 100]);

const shared = {
  revision: 1,
  output: { name: 'percent of the heart-rate reserve', symbol: '%HRR', unit: '%' },
  doesNotKnow: 'Ages, fitness and machines other than those of the people measured; the scatter of one person.',
} as const satisfies Partial<FormulaRecord>;

/** Heart-rate reserve of a percent of the maximal uptake, cycling [%]. */
export const heartRateReserveCycling = formula(
  {
    id: 'intensity-regression/cycling-maximum',
    title: 'Heart-rate reserve of a percent of the maximal uptake, cycling [%]',
    equation: '1.12 · %VO2_max − 11.6',
    inputs: [ofMaximum],
    source: SWAIN_LEUTHOLTZ_1997,
    ...shared,
    plot: {
      says: 'Against the maximal uptake both lines miss the diagonal; against the uptake reserve they lie on it.',
      x: { name: 'percent of the maximal uptake, or of its reserve', unit: '%' },
      y: { name: 'percent of the heart-rate reserve', unit: '%' },
      curves: (): readonly Curve[] => [
        curveOf('cycling, of the maximum', heartRateReserveCycling, [30, 100], (x) => [x]),
        curveOf('running, of the maximum', heartRateReserveTreadmill, [30, 100], (x) => [x]),
        curveOf('cycling, of the reserve', heartRateReserveCyclingOfReserve, [30, 100], (x) => [x]),
        curveOf('running, of the reserve', heartRateReserveTreadmillOfReserve, [30, 100], (x) => [x]),
      ],
    },
  },
  (x: number): number => 1.12 * x - 11.6,
);

/** Heart-rate reserve of a percent of the uptake reserve, cycling [%]. */
export const heartRateReserveCyclingOfReserve = formula(
  {
    id: 'intensity-regression/cycling-reserve',
    title: 'Heart-rate reserve of a percent of the uptake reserve, cycling [%]',
    equation: '1.00 · %VO2R − 0.1',
    inputs: [ofReserve],
    source: SWAIN_LEUTHOLTZ_1997,
    ...shared,
  },
  (x: number): number => 1 * x - 0.1,
);

/** Heart-rate reserve of a percent of the maximal uptake, treadmill [%]. */
export const heartRateReserveTreadmill = formula(
  {
    id: 'intensity-regression/treadmill-maximum',
    title: 'Heart-rate reserve of a percent of the maximal uptake, treadmill [%]',
    equation: '1.10 · %VO2_max − 6.1',
    inputs: [ofMaximum],
    source: SWAIN_1998,
    ...shared,
  },
  (x: number): number => 1.1 * x - 6.1,
);

/** Heart-rate reserve of a percent of the uptake reserve, treadmill [%]. */
export const heartRateReserveTreadmillOfReserve = formula(
  {
    id: 'intensity-regression/treadmill-reserve',
    title: 'Heart-rate reserve of a percent of the uptake reserve, treadmill [%]',
    equation: '1.03 · %VO2R + 1.5',
    inputs: [ofReserve],
    source: SWAIN_1998,
    ...shared,
  },
  (x: number): number => 1.03 * x + 1.5,
);

/** Maximal heart rate reached at a percent of the maximal uptake [%]. */
export const maximalRateReached = formula(
  {
    id: 'intensity-regression/of-maximal-rate',
    title: 'Maximal heart rate reached at a percent of the maximal uptake [%]',
    equation: '0.64 · %VO2_max + 37',
    inputs: [percent('percent of the maximal uptake', '%VO2_max', [40, 85])],
    source: SWAIN_1994,
    equationFromMemory: true,
    ...shared,
    output: { name: 'percent of the maximal heart rate', symbol: '%HR_max', unit: '%' },
  },
  (x: number): number => 0.64 * x + 37,
);
