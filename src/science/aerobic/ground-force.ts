import { curveOf, spaced, type Curve } from '../plot.ts';
import { callWith, formula } from '../formula.ts';
import { CAVANAGH_2010, COMMON_PRACTICE, OUR_OWN_DESIGN } from '../sources.ts';
import { harnessLoad, minutesInput } from './inputs.ts';
import { CHANG_2001, GENC_2010, MUNRO_1987 } from './sources.ts';
import { fraction, type Fraction, type MetresPerSecond, type Minutes } from '#units/quantity.ts';

/** The push of the ground under a harness, in body weights: what bone is paid with. */

/** Standard deviation of a peak on the log scale; our own setting. */
export const PEAK_LOG_SD = 0.15;
/** Peak of walking at 1.0 to 1.5 m/s in 1 g [body weights]; common practice. */
const WALKING_PEAK = 1.1;
/** Steps each minute where nobody counted; common practice. */
export const CADENCE = { running: 160, walking: 110 } as const;

const load = harnessLoad();
const speed = {
  name: 'running speed',
  symbol: 'v',
  unit: 'm/s',
  possible: [0.5, 8],
  valid: [2.5, 5],
} as const;
const peak = { name: 'highest push of one leg', symbol: 'F_peak', unit: 'body weights' } as const;

/** Active peak of running in 1 g [body weights]. */
export const runningPeakOnEarth = formula(
  {
    id: 'ground-force/running-on-earth',
    revision: 1,
    title: 'Active peak of running in 1 g [body weights]',
    equation: '2.51 + 0.16 · (v − 3.0)',
    inputs: [speed],
    output: peak,
    source: MUNRO_1987,
    doesNotKnow: 'Footwear, slope and style; the line joins the printed values at 3 and 5 m/s.',
  },
  (pace: MetresPerSecond): Fraction => fraction(2.51 + 0.16 * (pace - 3)),
);

/** Active peak of running under a harness [body weights]. */
export const runningPeakUnderHarness = formula(
  {
    id: 'ground-force/running',
    revision: 1,
    title: 'Active peak of running under a harness [body weights]',
    equation: 'f · (2.51 + 0.16 · (v − 3.0))',
    inputs: [load, speed],
    output: peak,
    source: OUR_OWN_DESIGN,
    restsOn: [MUNRO_1987, CAVANAGH_2010, GENC_2010, CHANG_2001],
    standardError: { value: PEAK_LOG_SD, unit: 'ln', of: 'our own setting' },
    doesNotKnow:
      'Insoles: a measured force replaces it. In flight four men’s running peaks were 46 % below Earth’s, which this reads slightly high. A forward pull raises the impact (20 % of weight: by 74 %), not this peak.',
    plot: {
      says: 'In proportion to the load, with one standard deviation; the highest peak seen in flight, 1.77 at 3.58 m/s, matches a load of 0.68.',
      x: { name: 'running speed', unit: 'm/s' },
      y: { name: 'highest push of one leg', unit: 'body weights' },
      curves: (): readonly Curve[] => [
        curveOf('in 1 g', runningPeakOnEarth, [2.5, 5], (pace) => [pace]),
        withBand(0.7),
        curveOf('load 0.5', runningPeakUnderHarness, [2.5, 5], (pace) => [0.5, pace]),
        {
          label: 'printed in 1 g',
          points: [
            [3, 2.51],
            [5, 2.83],
          ],
          scattered: true,
        },
        { label: 'highest in flight', points: [[3.58, 1.77]], scattered: true },
      ],
    },
  },
  (part: Fraction, pace: MetresPerSecond): Fraction => fraction(part * runningPeakOnEarth(pace)),
);

/** Peak of walking under a harness [body weights]. */
export const walkingPeakUnderHarness = formula(
  {
    id: 'ground-force/walking',
    revision: 1,
    title: 'Peak of walking under a harness [body weights]',
    equation: '1.10 · f',
    inputs: [load],
    output: peak,
    source: COMMON_PRACTICE,
    restsOn: [CAVANAGH_2010],
    standardError: { value: PEAK_LOG_SD, unit: 'ln', of: 'our own setting' },
    doesNotKnow: 'Speeds other than 1.0 to 1.5 m/s. In flight four men’s walking peaks were 25 % below Earth’s.',
  },
  (part: Fraction): Fraction => fraction(WALKING_PEAK * part),
);

/** Peak of a half-sine contact that carries the harness load [body weights]. */
export const halfSinePeak = formula(
  {
    id: 'ground-force/half-sine',
    revision: 1,
    title: 'Peak of a half-sine contact that carries the harness load [body weights]',
    equation: 'π / 2 · f / (2 · t_c / t_s)',
    inputs: [
      load,
      { name: 'contact time of one foot', symbol: 't_c', unit: 's', possible: [0.05, 1], valid: [0.15, 0.4] },
      { name: 'time of a stride, both feet', symbol: 't_s', unit: 's', possible: [0.3, 2], valid: [0.55, 1] },
    ],
    conditions: [
      {
        says: 'A foot is on the ground for at most half of a run’s stride.',
        holds: (_, contact = 0, stride = 0) => contact <= stride / 2,
      },
    ],
    output: peak,
    source: OUR_OWN_DESIGN,
    restsOn: [MUNRO_1987],
    doesNotKnow:
      'The impact peak, and that the pull of a bungee changes within the stride. Over whole strides the ground pushes back exactly the mean load.',
  },
  (part: Fraction, contact: number, stride: number): Fraction =>
    fraction(((Math.PI / 2) * part) / ((2 * contact) / stride)),
);

/** Loading cycles of each leg. */
export const loadingCycles = formula(
  {
    id: 'ground-force/loading-cycles',
    revision: 1,
    title: 'Loading cycles of each leg',
    equation: 'cadence · t / 2',
    inputs: [
      { name: 'cadence', symbol: 'cadence', unit: 'steps/min', possible: [0, 300], valid: [80, 210] },
      minutesInput('minutes on the belt', 't', [0, 180]),
    ],
    output: { name: 'loadings of each leg', symbol: 'n', unit: 'loadings' },
    source: COMMON_PRACTICE,
    doesNotKnow: 'Cadence where nobody counted: 160 running and 110 walking are taken.',
  },
  (cadence: number, time: Minutes): number => (cadence * time) / 2,
);

const withBand = (part: number): Curve => {
  const paces = spaced(2.5, 5, 26);
  const at = (pace: number): number => callWith(runningPeakUnderHarness, [part, pace]);
  return {
    label: `load ${part}`,
    points: paces.map((pace) => [pace, at(pace)] as const),
    band: paces.map((pace) => [at(pace) * Math.exp(-PEAK_LOG_SD), at(pace) * Math.exp(PEAK_LOG_SD)] as const),
  };
};
