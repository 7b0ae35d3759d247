import { formula } from '../formula.ts';
import { bodyMass } from '../inputs.ts';
import { COMMON_PRACTICE } from '../sources.ts';
import { flow, uptake } from './inputs.ts';
import { ACSM_HANDBOOK, BUSHMAN_2020, BYRNE_2005 } from './sources.ts';
import { RESTING_UPTAKE } from './walking-and-running.ts';
import { oxygenFlow, oxygenUptake, type Kilograms, type OxygenFlow, type OxygenUptake } from '#units/quantity.ts';

/** One uptake in its several units. Gross has the 3.5 mL/(kg min) of rest in it, net has not; a record says which. */

const gross = uptake('oxygen uptake, gross', 'VO2');
const mass = bodyMass('M');
const taken = flow('oxygen taken up', 'VO2_L', [0.15, 7]);
const handbook = { source: ACSM_HANDBOOK, restsOn: [BUSHMAN_2020] } as const;

/** Metabolic equivalents of an oxygen uptake [MET]. */
export const metabolicEquivalents = formula(
  {
    id: 'energy/metabolic-equivalents',
    revision: 1,
    title: 'Metabolic equivalents of an oxygen uptake [MET]',
    equation: 'VO2 / 3.5',
    inputs: [gross],
    output: { name: 'metabolic equivalents', symbol: 'MET', unit: 'MET' },
    source: ACSM_HANDBOOK,
    restsOn: [BYRNE_2005],
    doesNotKnow:
      'What this person takes up at rest: measured rest averages nearer 2.6 mL/(kg min), so a MET is a convention and no resting need.',
  },
  (used: OxygenUptake): number => used / RESTING_UPTAKE,
);

/** Oxygen taken up by the whole body [L/min]. */
export const flowOfUptake = formula(
  {
    id: 'energy/flow',
    revision: 1,
    title: 'Oxygen taken up by the whole body [L/min]',
    equation: 'VO2 · M / 1000',
    inputs: [gross, mass],
    output: { name: 'oxygen taken up', symbol: 'VO2_L', unit: 'L/min' },
    source: COMMON_PRACTICE,
    doesNotKnow: 'Nothing: it is a change of units.',
  },
  (used: OxygenUptake, body: Kilograms): OxygenFlow => oxygenFlow((used * body) / 1000),
);

/** Oxygen uptake of each kilogram [mL/(kg min)]. */
export const uptakeOfFlow = formula(
  {
    id: 'energy/uptake',
    revision: 1,
    title: 'Oxygen uptake of each kilogram [mL/(kg min)]',
    equation: 'VO2_L · 1000 / M',
    inputs: [taken, mass],
    output: { name: 'oxygen uptake', symbol: 'VO2', unit: 'mL/(kg min)' },
    source: COMMON_PRACTICE,
    doesNotKnow: 'Nothing: it is a change of units.',
  },
  (used: OxygenFlow, body: Kilograms): OxygenUptake => oxygenUptake((used * 1000) / body),
);

/** Net oxygen uptake of a gross one [mL/(kg min)]. */
export const netUptake = formula(
  {
    id: 'energy/net-uptake',
    revision: 1,
    title: 'Net oxygen uptake of a gross one [mL/(kg min)]',
    equation: 'VO2 − 3.5',
    inputs: [uptake('oxygen uptake, gross', 'VO2', [RESTING_UPTAKE, 100], [RESTING_UPTAKE, 100])],
    output: { name: 'oxygen uptake, net', symbol: 'VO2_net', unit: 'mL/(kg min)' },
    ...handbook,
    doesNotKnow: 'The person’s own resting uptake.',
  },
  (used: OxygenUptake): OxygenUptake => oxygenUptake(used - RESTING_UPTAKE),
);

/** Gross oxygen uptake of a net one [mL/(kg min)]. */
export const grossUptake = formula(
  {
    id: 'energy/gross-uptake',
    revision: 1,
    title: 'Gross oxygen uptake of a net one [mL/(kg min)]',
    equation: 'VO2_net + 3.5',
    inputs: [uptake('oxygen uptake, net', 'VO2_net', [0, 96.5], [0, 96.5])],
    output: { name: 'oxygen uptake, gross', symbol: 'VO2', unit: 'mL/(kg min)' },
    ...handbook,
    doesNotKnow: 'The person’s own resting uptake.',
  },
  (used: OxygenUptake): OxygenUptake => oxygenUptake(used + RESTING_UPTAKE),
);
