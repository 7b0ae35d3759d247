import type { Machine, Site } from '#domain/catalogue.ts';
import type { FactBody } from '#domain/fact.ts';
import { idOf } from '#domain/identity.ts';
import { catalogueFacts, catalogued } from '#shipped/shipped-house.ts';
import { groundGear } from './ground-gear.ts';

/*
 * Skerry Station, a small laboratory in low orbit, and its three places on the ground. All of it is invented: no place,
 * machine, person or number here stands for a real one.
 */

export const SKERRY_STATION: Site = { id: idOf('skerry-station'), name: 'Skerry Station', place: 'aboard' };
export const BRAE_HOUSE: Site = { id: idOf('brae-house'), name: 'Brae House', place: 'ground' };
export const LINDQVIST_HALL: Site = { id: idOf('lindqvist-hall'), name: 'Lindqvist Hall', place: 'ground' };
export const CEDAR_FIELD: Site = { id: idOf('cedar-field'), name: 'Cedar Field', place: 'ground' };

const FREE_BAR = {
  kind: 'free bar',
  gravity: '1 g',
  groundUnitOf: null,
  limits: [],
  minutes: { setUp: 3, stow: 3, changeExercise: 2, changeLoad: 1 },
  outOfService: null,
} as const;

/** What hangs on the cable rather than on the bar gives less. */
const CABLE_LIMITS: Machine['limits'] = [
  { exercise: idOf('pull-down'), attachment: 'cable', most: '220' },
  { exercise: idOf('seated-row'), attachment: 'cable', most: '220' },
  { exercise: idOf('triceps-extension'), attachment: 'cable', most: '110' },
];

export const STATION_MACHINE: Machine = {
  id: idOf('skerry-resistive-machine'),
  name: 'Resistive machine',
  site: SKERRY_STATION.id,
  kind: 'resistive machine',
  gravity: '0 g',
  groundUnitOf: null,
  unit: 'lb',
  increment: '1',
  least: '20',
  ceiling: '600',
  mostWatts: null,
  mostSpeed: null,
  limits: CABLE_LIMITS,
  minutes: { setUp: 8, stow: 8, changeExercise: 2, changeLoad: 0.5 },
  outOfService: null,
};

export const GROUND_UNIT: Machine = {
  ...STATION_MACHINE,
  id: idOf('brae-ground-unit'),
  name: 'Ground unit of the resistive machine',
  site: BRAE_HOUSE.id,
  gravity: '1 g',
  groundUnitOf: STATION_MACHINE.id,
};

export const BRAE_BAR: Machine = {
  ...FREE_BAR,
  id: idOf('brae-free-bar'),
  name: 'Free bar, Brae House',
  site: BRAE_HOUSE.id,
  unit: 'kg',
  increment: '2.5',
  least: '20',
  ceiling: '400',
  mostWatts: null,
  mostSpeed: null,
};

export const LINDQVIST_BAR: Machine = {
  ...FREE_BAR,
  id: idOf('lindqvist-free-bar'),
  name: 'Light bar, Lindqvist Hall',
  site: LINDQVIST_HALL.id,
  unit: 'kg',
  increment: '1',
  least: '10',
  ceiling: '90',
  mostWatts: null,
  mostSpeed: null,
};

export const CEDAR_BAR: Machine = {
  ...FREE_BAR,
  id: idOf('cedar-free-bar'),
  name: 'Free bar, Cedar Field',
  site: CEDAR_FIELD.id,
  unit: 'lb',
  increment: '5',
  least: '45',
  ceiling: '700',
  mostWatts: null,
  mostSpeed: null,
};

const AEROBIC = {
  site: SKERRY_STATION.id,
  gravity: '0 g',
  groundUnitOf: null,
  unit: 'lb',
  increment: '1',
  limits: [],
  outOfService: null,
} as const;

/** Harness loads of the treadmill are set like loads. */
export const TREADMILL: Machine = {
  ...AEROBIC,
  id: idOf('skerry-treadmill'),
  name: 'Harness treadmill',
  kind: 'treadmill',
  least: '40',
  ceiling: '220',
  mostWatts: null,
  mostSpeed: 19,
  minutes: { setUp: 6, stow: 5, changeExercise: 0, changeLoad: 1 },
};

/** A cycle is set in watts, not in loads; least and ceiling only fill the entry. */
export const CYCLE: Machine = {
  ...AEROBIC,
  id: idOf('skerry-cycle'),
  name: 'Cycle ergometer',
  kind: 'cycle',
  least: '0',
  ceiling: '1',
  mostWatts: 350,
  mostSpeed: null,
  minutes: { setUp: 4, stow: 3, changeExercise: 0, changeLoad: 0 },
};

/** What stands beside the bars on the ground. */
const GROUND_GEAR = groundGear({ brae: BRAE_HOUSE.id, lindqvist: LINDQVIST_HALL.id, cedar: CEDAR_FIELD.id });

export const SKERRY_SITES: readonly Site[] = [SKERRY_STATION, BRAE_HOUSE, LINDQVIST_HALL, CEDAR_FIELD];
export const SKERRY_MACHINES: readonly Machine[] = [
  STATION_MACHINE,
  GROUND_UNIT,
  BRAE_BAR,
  LINDQVIST_BAR,
  CEDAR_BAR,
  TREADMILL,
  CYCLE,
  ...GROUND_GEAR,
];

/** The shipped catalogue in the scenario's own house: its sites and machines instead of the empty start's. No people. */
export const scenarioHouse = (): readonly FactBody[] => [
  ...catalogueFacts(),
  ...SKERRY_SITES.map((site) => catalogued({ kind: 'site', site })),
  ...SKERRY_MACHINES.map((machine) => catalogued({ kind: 'machine', machine })),
];
