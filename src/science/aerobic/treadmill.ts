import { method } from '../method.ts';
import { callWith } from '../formula.ts';
import { cautionIf, cautionsOf, refusalOf, refused, type Estimated } from './estimate.ts';
import { beltSpeed, grade, uptake } from './inputs.ts';
import { BUSHMAN_2020, ACSM_HANDBOOK } from './sources.ts';
import {
  BETWEEN_PEOPLE,
  JOGGING_FROM,
  RESTING_UPTAKE,
  RUNNING_FROM,
  runningSpeed,
  uptakeOfRunning,
  uptakeOfWalking,
  walkingSpeed,
  WALKING_SPEEDS,
} from './walking-and-running.ts';

/** Which of two equations a belt speed asks for, and what is said where neither was validated. */

export type Gait = 'walking' | 'running';

const [, FASTEST_WALK] = WALKING_SPEEDS;
const GAP = `${FASTEST_WALK} to ${RUNNING_FROM} m/min`;

/** The gait of a speed where nobody declared one: a walk up to 100 m/min, a run from 134. Between them none. */
export const gaitOfSpeed = (speed: number): Gait | undefined =>
  speed <= FASTEST_WALK ? 'walking' : speed >= RUNNING_FROM ? 'running' : undefined;

const JOG_CAUTION = `Running between ${JOGGING_FROM} and ${RUNNING_FROM} m/min is estimated well only where the gait truly is a jog.`;

const speedCautions = (gait: Gait, speed: number): readonly string[] => [
  ...cautionIf(
    speed > FASTEST_WALK && speed < RUNNING_FROM,
    `Between ${GAP} neither equation was validated; the declared gait was taken.`,
  ),
  ...cautionIf(gait === 'running' && speed < RUNNING_FROM && speed >= JOGGING_FROM, JOG_CAUTION),
];

const says = {
  doesNotKnow:
    'A person’s economy, and any load but the whole body’s own weight: under a harness see the chapter on it.',
  source: BUSHMAN_2020,
  restsOn: [ACSM_HANDBOOK],
  refuses: [
    `A speed between ${GAP} without a declared gait.`,
    'A speed, grade or uptake that is not possible, and a downhill grade.',
  ],
} as const;

/** The uptake of a belt in 1 g by whichever equation fits; undeclared gaits are read off the speed. */
export const treadmillUptake = method(
  {
    id: 'metabolic/treadmill',
    revision: 1,
    title: 'Oxygen uptake on a treadmill in 1 g, gait chosen or declared',
    equations: [
      'walking, S ≤ 100: 3.5 + 0.1 · S + 1.8 · S · G',
      'running, S ≥ 134: 3.5 + 0.2 · S + 0.9 · S · G',
      '100 < S < 134: the declared gait, flagged',
      'SD = 0.07 · VO2',
    ],
    inputs: [beltSpeed('belt speed', 'S', [50, 400]), grade],
    outputs: [
      { name: 'oxygen uptake, gross', symbol: 'VO2', unit: 'mL/(kg min)' },
      { name: 'its standard deviation between people', symbol: 'SD', unit: 'mL/(kg min)' },
    ],
    ...says,
  },
  (speed: number, slope: number, declared?: Gait): Estimated => {
    const refusal = refusalOf(treadmillUptake.record, [speed, slope]);
    if (refusal) return refusal;
    const gait = declared ?? gaitOfSpeed(speed);
    if (!gait)
      return refused(
        `Between ${GAP} say whether the person walks or runs: on the level a run costs about twice a walk.`,
      );
    const equation = gait === 'walking' ? uptakeOfWalking : uptakeOfRunning;
    const value = callWith(equation, [speed, slope]);
    const cautions = [...speedCautions(gait, speed), ...cautionsOf(equation, [speed, slope])];
    return { kind: 'estimate', value, sd: BETWEEN_PEOPLE * value, cautions };
  },
);

/** The belt speed that costs an uptake in a declared gait, flagged where the equation was not validated there. */
export const treadmillSpeed = method(
  {
    id: 'metabolic/treadmill-speed',
    revision: 1,
    title: 'Belt speed of an oxygen uptake in 1 g, in a declared gait',
    equations: [
      'walking: (VO2 − 3.5) / (0.1 + 1.8 · G)',
      'running: (VO2 − 3.5) / (0.2 + 0.9 · G)',
      'SD = 0.07 · VO2 / (0.2 + 0.9 · G), walking 0.07 · VO2 / (0.1 + 1.8 · G)',
    ],
    inputs: [uptake('oxygen uptake', 'VO2', [8.5, 90], [RESTING_UPTAKE, 100]), grade],
    outputs: [{ name: 'belt speed', symbol: 'S', unit: 'm/min' }],
    ...says,
  },
  (wanted: number, slope: number, gait: Gait): Estimated => {
    const refusal = refusalOf(treadmillSpeed.record, [wanted, slope]);
    if (refusal) return refusal;
    const [equation, back] =
      gait === 'walking' ? [uptakeOfWalking, walkingSpeed] : ([uptakeOfRunning, runningSpeed] as const);
    const value = callWith(back, [wanted, slope]);
    const cautions = [...speedCautions(gait, value), ...cautionsOf(equation, [value, slope])];
    // One unit above rest has the speed that every unit has: the line is straight.
    const sd = BETWEEN_PEOPLE * wanted * callWith(back, [RESTING_UPTAKE + 1, slope]);
    return { kind: 'estimate', value, sd, cautions };
  },
);
