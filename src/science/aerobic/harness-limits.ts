import { formula } from '../formula.ts';
import { OUR_OWN_DESIGN, COMMON_PRACTICE } from '../sources.ts';
import { bodyMass } from '../inputs.ts';
import { beltSpeed, harnessLoad, share } from './inputs.ts';
import { TEUNISSEN_2007 } from './sources.ts';
import {
  fraction,
  machineLoad,
  type Fraction,
  type Kilograms,
  type MachineLoad,
  type MetresPerMinute,
} from '#units/quantity.ts';

/** What makes up for a speed that may not be run: more load, or more time; and the load that a harness truly gives. */

/** Effective over set load where nobody measured it standing on the belt; our own setting. */
export const EFFECTIVE_OF_SET = 0.9;

const onEarth = beltSpeed('speed on the level in 1 g', 'S_1', [50, 300], [20, 450]);
const allowed = beltSpeed('highest speed allowed', 'S_cap', [50, 300], [20, 450]);

/** Harness load that keeps the effort at the highest speed allowed. */
export const loadForSpeed = formula(
  {
    id: 'harness/load-for-speed',
    revision: 1,
    title: 'Harness load that keeps the effort at the highest speed allowed',
    equation: '1 − (1 − S_1 / S_cap) / c',
    inputs: [
      onEarth,
      allowed,
      {
        name: 'slope of the factor (running 0.77, walking 0.44)',
        symbol: 'c',
        unit: '1',
        possible: [0.2, 1],
        valid: [0.4, 0.96],
      },
    ],
    output: { name: 'effective harness load needed', symbol: 'f*', unit: '1' },
    source: OUR_OWN_DESIGN,
    restsOn: [TEUNISSEN_2007],
    doesNotKnow: 'Whether shoulders and hips carry that load, or the harness gives it.',
  },
  (ground: MetresPerMinute, most: MetresPerMinute, slope: Fraction): Fraction =>
    fraction(1 - (1 - ground / most) / slope),
);

/** Time that keeps the oxygen of a session at the highest speed allowed, as a multiple. */
export const timeForSpeed = formula(
  {
    id: 'harness/time-for-speed',
    revision: 1,
    title: 'Time that keeps the oxygen of a session at the highest speed allowed, as a multiple',
    equation: 'S_1 / (k · S_cap)',
    inputs: [
      onEarth,
      { name: 'share of the net cost', symbol: 'k', unit: '1', possible: [0.2, 1.5], valid: [0.5, 1.1] },
      allowed,
    ],
    output: { name: 'multiple of the time', symbol: 't*', unit: '1' },
    source: OUR_OWN_DESIGN,
    doesNotKnow: 'That an easier session made longer is not the same training: only its net oxygen is. On the level.',
  },
  (ground: MetresPerMinute, part: Fraction, most: MetresPerMinute): Fraction => fraction(ground / (part * most)),
);

const effective = {
  source: OUR_OWN_DESIGN,
  doesNotKnow:
    'This harness: bungees give different pulls low and high in the stride. The mean pull measured standing on the belt replaces it. 0.9 is our own setting.',
} as const;

/** Effective harness load of a set one. */
export const effectiveLoad = formula(
  {
    id: 'harness/effective-load',
    revision: 1,
    title: 'Effective harness load of a set one',
    equation: '0.9 · f_set',
    inputs: [{ ...harnessLoad([0.3, 1.2]), name: 'set harness load over body weight', symbol: 'f_set' }],
    output: { name: 'effective harness load over body weight', symbol: 'f', unit: '1' },
    ...effective,
  },
  (set: Fraction): Fraction => fraction(EFFECTIVE_OF_SET * set),
);

/** Harness load to set for an effective one. */
export const setLoad = formula(
  {
    id: 'harness/set-load',
    revision: 1,
    title: 'Harness load to set for an effective one',
    equation: 'f / 0.9',
    inputs: [harnessLoad()],
    output: { name: 'set harness load over body weight', symbol: 'f_set', unit: '1' },
    ...effective,
  },
  (part: Fraction): Fraction => fraction(part / EFFECTIVE_OF_SET),
);

/** Pull of a harness load [kg]. */
export const harnessPull = formula(
  {
    id: 'harness/pull',
    revision: 1,
    title: 'Pull of a harness load [kg]',
    equation: 'f · M',
    inputs: [harnessLoad(), bodyMass('M')],
    output: { name: 'pull of both sides together', symbol: 'L', unit: 'kg' },
    source: COMMON_PRACTICE,
    doesNotKnow: 'How it is split over the two sides, and between shoulders and hips.',
  },
  (part: Fraction, body: Kilograms): MachineLoad => machineLoad(part * body),
);

/** Harness load of a pull. */
export const loadOfPull = formula(
  {
    id: 'harness/load-of-pull',
    revision: 1,
    title: 'Harness load of a pull',
    equation: 'L / M',
    inputs: [
      { ...share('pull of both sides together', 'L'), unit: 'kg', possible: [0, 300], valid: [15, 120] },
      bodyMass('M'),
    ],
    output: { name: 'harness load over body weight', symbol: 'f', unit: '1' },
    source: COMMON_PRACTICE,
    doesNotKnow: 'Whether the pull was read standing on the belt (effective) or off a dial (set).',
  },
  (pull: MachineLoad, body: Kilograms): Fraction => fraction(pull / body),
);
