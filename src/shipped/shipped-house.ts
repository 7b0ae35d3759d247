import type { Machine, Site } from '#domain/catalogue.ts';
import type { FactBody } from '#domain/fact.ts';
import { idOf } from '#domain/identity.ts';
import { SHIPPED_EXERCISES } from './exercises/shipped-exercises.ts';
import { PREPARATION_PROGRAMME } from './preparation-programme.ts';
import { SET_PROGRAMME } from './set-programme.ts';

const ABOARD: Site = { id: idOf('aboard'), name: 'Aboard', place: 'aboard' };
const GROUND_GYM: Site = { id: idOf('ground-gym'), name: 'Ground gym', place: 'ground' };

/**
 * A resistive machine of no particular make. Its ceiling of 600 lb is that of the stronger kind that was flown (Smith 2012,
 * J Bone Miner Res, seen); increments, least load and minutes are invented and stand until a team enters its own machine.
 */
export const RESISTIVE_MACHINE: Machine = {
  id: idOf('resistive-machine'),
  name: 'Resistive machine',
  site: ABOARD.id,
  kind: 'resistive machine',
  gravity: '0 g',
  groundUnitOf: null,
  unit: 'lb',
  increment: '1',
  least: '20',
  ceiling: '600',
  mostWatts: null,
  mostSpeed: null,
  limits: [],
  minutes: { setUp: 8, stow: 8, changeExercise: 2, changeLoad: 0.5 },
  outOfService: null,
};

/** A 20 kg bar with plates down to 1.25 kg a side: common practice; minutes are invented. */
export const FREE_BAR: Machine = {
  id: idOf('ground-free-bar'),
  name: 'Free bar',
  site: GROUND_GYM.id,
  kind: 'free bar',
  gravity: '1 g',
  groundUnitOf: null,
  unit: 'kg',
  increment: '2.5',
  least: '20',
  ceiling: '400',
  mostWatts: null,
  mostSpeed: null,
  limits: [],
  minutes: { setUp: 3, stow: 3, changeExercise: 2, changeLoad: 1 },
  outOfService: null,
};

/** Exercises and the set programmes, for every kind of start. */
export const catalogueFacts = (): readonly FactBody[] => [
  ...SHIPPED_EXERCISES.map((exercise) => catalogued({ kind: 'exercise', exercise })),
  ...[SET_PROGRAMME, PREPARATION_PROGRAMME].map((version) => catalogued({ kind: 'programme', version })),
];

/** All that an empty start holds: exercises, programme, one machine aboard, one free bar on the ground; no people. */
export const shippedFacts = (): readonly FactBody[] => [
  ...catalogueFacts(),
  ...[ABOARD, GROUND_GYM].map((site) => catalogued({ kind: 'site', site })),
  ...[RESISTIVE_MACHINE, FREE_BAR].map((machine) => catalogued({ kind: 'machine', machine })),
];

type Catalogued = Extract<FactBody, { readonly kind: 'catalogued' }>;

export const catalogued = (entry: Catalogued['entry']): FactBody => ({ kind: 'catalogued', entry });
