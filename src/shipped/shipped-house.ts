import type { Machine, Site } from '#domain/catalogue.ts';
import type { FactBody } from '#domain/fact.ts';
import { idOf } from '#domain/identity.ts';
import { SHIPPED_EXERCISES } from './exercises/shipped-exercises.ts';
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

/** Nothing about it is a lift: increments, least and ceiling only fill the entry of what is set in watts or km/h. */
const NO_LIFT = { unit: 'kg', increment: '1', least: '0', ceiling: '1', limits: [] } as const;
const IN_SERVICE = { groundUnitOf: null, outOfService: null } as const;

/** A belt with a harness that pulls a person down to it; pull, speed and minutes are invented. */
export const HARNESS_TREADMILL: Machine = {
  ...IN_SERVICE,
  id: idOf('harness-treadmill'),
  name: 'Harness treadmill',
  site: ABOARD.id,
  kind: 'treadmill',
  gravity: '0 g',
  unit: 'lb',
  increment: '1',
  least: '40',
  ceiling: '220',
  limits: [],
  mostWatts: null,
  mostSpeed: 19,
  minutes: { setUp: 6, stow: 5, changeExercise: 0, changeLoad: 1 },
};

/** Watts and minutes of both cycles are invented. */
export const FLIGHT_CYCLE: Machine = {
  ...IN_SERVICE,
  ...NO_LIFT,
  id: idOf('flight-cycle'),
  name: 'Cycle ergometer',
  site: ABOARD.id,
  kind: 'cycle',
  gravity: '0 g',
  mostWatts: 350,
  mostSpeed: null,
  minutes: { setUp: 4, stow: 3, changeExercise: 0, changeLoad: 0 },
};

export const GROUND_CYCLE: Machine = {
  ...FLIGHT_CYCLE,
  id: idOf('ground-cycle'),
  name: 'Cycle ergometer, ground',
  site: GROUND_GYM.id,
  gravity: '1 g',
  mostWatts: 600,
  minutes: { setUp: 2, stow: 1, changeExercise: 0, changeLoad: 0 },
};

/** A belt as gyms have it: common practice; minutes are invented. */
export const GROUND_TREADMILL: Machine = {
  ...IN_SERVICE,
  ...NO_LIFT,
  id: idOf('ground-treadmill'),
  name: 'Treadmill, ground',
  site: GROUND_GYM.id,
  kind: 'treadmill',
  gravity: '1 g',
  mostWatts: null,
  mostSpeed: 20,
  minutes: { setUp: 1, stow: 1, changeExercise: 0, changeLoad: 0 },
};

/** Pairs from 2 to 40 kg, the number of one of them: common practice; minutes are invented. */
export const DUMBBELLS: Machine = {
  ...IN_SERVICE,
  id: idOf('ground-dumbbells'),
  name: 'Dumbbells',
  site: GROUND_GYM.id,
  kind: 'dumbbells',
  gravity: '1 g',
  unit: 'kg',
  increment: '2',
  least: '2',
  ceiling: '40',
  limits: [],
  mostWatts: null,
  mostSpeed: null,
  minutes: { setUp: 1, stow: 1, changeExercise: 0.5, changeLoad: 0.5 },
};

/** What stands in an empty start. */
export const SHIPPED_MACHINES: readonly Machine[] = [
  RESISTIVE_MACHINE,
  FREE_BAR,
  HARNESS_TREADMILL,
  FLIGHT_CYCLE,
  GROUND_TREADMILL,
  GROUND_CYCLE,
  DUMBBELLS,
];

/** Exercises and the set programme, for every kind of start. */
export const catalogueFacts = (): readonly FactBody[] => [
  ...SHIPPED_EXERCISES.map((exercise) => catalogued({ kind: 'exercise', exercise })),
  catalogued({ kind: 'programme', version: SET_PROGRAMME }),
];

/** All that an empty start holds: exercises, programme, machines aboard and in a gym on the ground; no people. */
export const shippedFacts = (): readonly FactBody[] => [
  ...catalogueFacts(),
  ...[ABOARD, GROUND_GYM].map((site) => catalogued({ kind: 'site', site })),
  ...SHIPPED_MACHINES.map((machine) => catalogued({ kind: 'machine', machine })),
];

type Catalogued = Extract<FactBody, { readonly kind: 'catalogued' }>;

export const catalogued = (entry: Catalogued['entry']): FactBody => ({ kind: 'catalogued', entry });
