import { formula } from '../formula.ts';
import { bodyMass, load, ratio } from '../inputs.ts';
import { curveOf, type Curve } from '../plot.ts';
import { OUR_OWN_DESIGN } from '../sources.ts';
import { fraction, kilograms, type BarLoad, type Fraction, type Kilograms, type MachineLoad } from '#units/quantity.ts';

/** Where a lift is carried: in 1 g each level adds the body above it; weightless, every level carries the pull. */

const limits = {
  source: OUR_OWN_DESIGN,
  doesNotKnow: 'Muscle forces, several times larger at the low back, are not in it; standing, at the top of the lift.',
} as const;
/** Excesses do not depend on it [kg]. */
const DRAWN_MASS = 90;
const bar = load('bar', 'bar', [0, 1000], [1, 400]);
const pull = load('machine load', 'L');
const share = ratio('static share above the level', 's');

/** Load along the body at a level in 1 g [kg]. */
export const axialLoadOnGround = formula(
  {
    id: 'axial-load/on-ground',
    revision: 1,
    title: 'Load along the body at a level in 1 g [kg]',
    equation: 'bar + s · W',
    inputs: [bar, share, bodyMass()],
    output: { name: 'axial load', symbol: 'F', unit: 'kg' },
    ...limits,
  },
  (onBar: BarLoad, above: Fraction, mass: Kilograms): Kilograms => kilograms(onBar + above * mass),
);

/** Load along the body at any level weightless [kg]. */
export const axialLoadInFlight = formula(
  {
    id: 'axial-load/in-flight',
    revision: 1,
    title: 'Load along the body at any level weightless [kg]',
    equation: 'L',
    inputs: [pull],
    output: { name: 'axial load', symbol: 'F', unit: 'kg' },
    ...limits,
  },
  (machine: MachineLoad): Kilograms => kilograms(machine),
);

/** How much more a level carries weightless than in 1 g. */
export const axialExcess = formula(
  {
    id: 'axial-load/excess',
    revision: 1,
    title: 'How much more a level carries weightless than in 1 g',
    equation: 'L / (bar + s · W) − 1',
    inputs: [pull, bar, share, bodyMass()],
    conditions: [
      {
        says: 'Bar and body mass above the level must together weigh at least 0.1 kg.',
        holds: (_, onBar = 0, above = 0, mass = 0) => onBar + above * mass >= 0.1,
      },
    ],
    output: { name: 'excess', symbol: 'x', unit: '1' },
    ...limits,
    plot: {
      says: 'From the shoulders on the left to the feet on the right: matching the work overloads the shoulders and spares knees and feet, on a light day more than on a heavy one.',
      x: { name: 'part of body mass above the level', unit: '1' },
      y: { name: 'excess over 1 g', unit: '1' },
      curves: (): readonly Curve[] =>
        (
          [
            ['bar of 1.5 body weights, share 0.72', 1.5, 0.72],
            ['bar of 1.05 body weights, share 0.72', 1.05, 0.72],
            ['bar of 1.5 body weights, whole body weight', 1.5, 1],
          ] as const
        ).map(([label, bars, added]) =>
          curveOf(label, axialExcess, [0, 1], (above) => [
            (bars + added) * DRAWN_MASS,
            bars * DRAWN_MASS,
            above,
            DRAWN_MASS,
          ]),
        ),
    },
  },
  (machine: MachineLoad, onBar: BarLoad, above: Fraction, mass: Kilograms): Fraction =>
    fraction(machine / axialLoadOnGround(onBar, above, mass) - 1),
);

/** How much more the shoulders carry weightless than under the bar in 1 g. */
export const shoulderExcess = formula(
  {
    id: 'axial-load/shoulder-excess',
    revision: 1,
    title: 'How much more the shoulders carry weightless than under the bar in 1 g',
    equation: 'L / bar − 1',
    inputs: [pull, { ...bar, possible: [0.1, 1000], valid: [0.1, 1000] }],
    output: { name: 'excess at the shoulders', symbol: 'x', unit: '1' },
    ...limits,
  },
  (machine: MachineLoad, onBar: BarLoad): Fraction => fraction(machine / onBar - 1),
);
