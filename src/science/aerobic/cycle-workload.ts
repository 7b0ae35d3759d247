import { formula } from '../formula.ts';
import { method } from '../method.ts';
import { bodyMass } from '../inputs.ts';
import {
  fraction,
  kilograms,
  oxygenUptake,
  type Fraction,
  type Kilograms,
  type OxygenUptake,
  type Watts,
} from '#units/quantity.ts';
import { LEG_POWERS, legPower } from './cycling.ts';
import { cautionIf, refusalOf, refused, type Estimated } from './estimate.ts';
import { maximalUptake, share } from './inputs.ts';
import { ownPowerForFraction, type UptakeStage } from './personal-lines.ts';
import { BUSHMAN_2020, KOKKINOS_2018 } from './sources.ts';
import { BETWEEN_PEOPLE } from './walking-and-running.ts';

/** The watts to set on a cycle for a fraction of the maximal uptake. */

/** Unloaded pedalling, gross [mL/(kg min)]. */
const UNLOADED = 7;
const inputs = [
  share('fraction of the maximal uptake', 'p', [0.55, 1]),
  maximalUptake([25, 90]),
  bodyMass('M'),
] as const;

/** Cycle power for a fraction of the maximal uptake, handbook [W]. */
export const handbookPowerForFraction = formula(
  {
    id: 'cycle-workload/handbook',
    revision: 1,
    title: 'Cycle power for a fraction of the maximal uptake, handbook [W]',
    equation: '(p · VO2_max − 7) · M / 10.8',
    inputs,
    conditions: [
      {
        says: 'The uptake asked for lies at or above unloaded pedalling, 7 mL/(kg min).',
        holds: (part = 0, maximum = 0) => part * maximum >= UNLOADED,
      },
    ],
    output: { name: 'power', symbol: 'P', unit: 'W' },
    source: BUSHMAN_2020,
    doesNotKnow: 'That it leaves the validated 50 to 200 W: for a fit person it does from 80 % of the maximum.',
  },
  (part: Fraction, maximum: OxygenUptake, mass: Kilograms): Watts => legPower(oxygenUptake(part * maximum), mass),
);

/** The watts for a fraction of the maximal uptake: the person's own line before the handbook's. */
export const cyclePower = method(
  {
    id: 'personal-line/cycle-power',
    revision: 1,
    title: 'Cycle power for a fraction of the maximal uptake, own line before handbook',
    equations: [
      'own line: P = (p · VO2_max − a) / b',
      'else: P = (p · VO2_max − 7) · M / 10.8',
      'SD = 0.07 · p · VO2_max · M / 10.8',
    ],
    inputs,
    outputs: [
      { name: 'power', symbol: 'P', unit: 'W' },
      { name: 'its standard deviation', symbol: 'SD', unit: 'W' },
    ],
    refuses: ['An uptake below unloaded pedalling.', 'What the own line refuses, where stages are given.'],
    source: BUSHMAN_2020,
    restsOn: [KOKKINOS_2018],
    doesNotKnow:
      'The person, without stages of their own. Above 200 W the equation is outside what it was validated for. Weightless it is used as it stands: no published correction was found.',
  },
  (part: number, maximum: number, mass: number, stages?: readonly UptakeStage[]): Estimated => {
    const refusal = refusalOf(cyclePower.record, [part, maximum, mass]);
    if (refusal) return refusal;
    if (stages) return ownPowerForFraction(stages, part, maximum);
    if (part * maximum < UNLOADED)
      return refused('That uptake lies below unloaded pedalling, 7 mL/(kg min): no power is low enough.');
    const [ofMost, most, body] = [fraction(part), oxygenUptake(maximum), kilograms(mass)];
    const value = handbookPowerForFraction(ofMost, most, body);
    const sd = legPower(oxygenUptake(UNLOADED + BETWEEN_PEOPLE * part * maximum), body);
    const [lowest, highest] = LEG_POWERS;
    return {
      kind: 'estimate',
      value,
      sd,
      cautions: [
        ...cautionIf(
          value > highest,
          `Above ${highest} W the equation was not validated: take the person’s own line from a test.`,
        ),
        ...cautionIf(value < lowest, `Below ${lowest} W the equation was not validated.`),
      ],
    };
  },
);
