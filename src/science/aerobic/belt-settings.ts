import { formula } from '../formula.ts';
import { COMMON_PRACTICE, OUR_OWN_DESIGN, PETERSEN_2016 } from '../sources.ts';
import { beltSpeed, share } from './inputs.ts';
import { metresPerMinute, type Fraction, type MetresPerMinute, type Quantity } from '#units/quantity.ts';

/** From a speed that is reckoned to the one that is set: the cap of the day, and the unit of the belt. */

export type KilometresPerHour = Quantity<'km/h'>;

const onEarth = beltSpeed('speed on the level in 1 g', 'S_1', [50, 300], [20, 450]);
const capped = {
  revision: 1,
  source: OUR_OWN_DESIGN,
  restsOn: [PETERSEN_2016],
  doesNotKnow: "This person's shoulders and this harness. The load is raised before the speed.",
} as const;

/** Highest speed of a session under a harness [m/min]. */
export const cappedSpeed = formula(
  {
    ...capped,
    id: 'harness/speed-cap',
    title: 'Highest speed of a session under a harness [m/min]',
    equation: 'c · S_1',
    inputs: [share('cap of the day over the speed on the ground', 'c', [1, 1.15], [0.5, 1.5]), onEarth],
    output: { name: 'highest speed allowed', symbol: 'S_cap', unit: 'm/min' },
  },
  (factor: Fraction, ground: MetresPerMinute): MetresPerMinute => metresPerMinute(factor * ground),
);

/** Speed to start with under a harness [m/min]. */
export const startSpeed = formula(
  {
    ...capped,
    id: 'harness/start-speed',
    title: 'Speed to start with under a harness [m/min]',
    equation: 'min(S_h, S_cap)',
    inputs: [
      beltSpeed('speed of the same effort', 'S_h', [50, 300], [20, 600]),
      beltSpeed('highest speed allowed', 'S_cap', [50, 300], [20, 600]),
    ],
    output: { name: 'speed to start with', symbol: 'S', unit: 'm/min' },
  },
  (same: MetresPerMinute, most: MetresPerMinute): MetresPerMinute => metresPerMinute(Math.min(same, most)),
);

/** Belt speed in kilometres per hour. */
export const beltKilometresPerHour = formula(
  {
    id: 'belt/kilometres-per-hour',
    revision: 1,
    title: 'Belt speed in kilometres per hour',
    equation: '0.06 · S',
    inputs: [beltSpeed('belt speed', 'S', [0, 600], [0, 600])],
    output: { name: 'belt speed', symbol: 'v', unit: 'km/h' },
    source: COMMON_PRACTICE,
    doesNotKnow: 'Whether the display of this belt is right.',
  },
  (speed: MetresPerMinute): KilometresPerHour => (0.06 * speed) as KilometresPerHour,
);
