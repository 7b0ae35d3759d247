import type { Machine, MachineKind } from '#domain/catalogue.ts';
import { idOf, type SiteId } from '#domain/identity.ts';

interface Gear {
  readonly place: string;
  readonly site: SiteId;
}

const ON_THE_GROUND = { gravity: '1 g', groundUnitOf: null, limits: [], outOfService: null } as const;

const named = ({ place, site }: Gear, kind: MachineKind, name: string) => ({
  ...ON_THE_GROUND,
  id: idOf<'machine'>(`${place.toLowerCase().replace(' ', '-')}-${kind.replace(' ', '-')}`),
  name: `${name}, ${place}`,
  site,
  kind,
});

/** Nothing about it is a lift: increments, least and ceiling only fill the entry. */
const NO_LIFT = { unit: 'kg', increment: '1', least: '0', ceiling: '1' } as const;

const treadmill = (gear: Gear, mostSpeed: number): Machine => ({
  ...named(gear, 'treadmill', 'Treadmill'),
  ...NO_LIFT,
  mostWatts: null,
  mostSpeed,
  minutes: { setUp: 1, stow: 1, changeExercise: 0, changeLoad: 0 },
});

const pedalled = (gear: Gear, kind: 'cycle' | 'rower', name: string, mostWatts: number): Machine => ({
  ...named(gear, kind, name),
  ...NO_LIFT,
  mostWatts,
  mostSpeed: null,
  minutes: { setUp: 2, stow: 1, changeExercise: 0, changeLoad: 0 },
});

/** Pairs; the number is that of one of them. */
const dumbbells = (gear: Gear, increment: string, ceiling: string): Machine => ({
  ...named(gear, 'dumbbells', 'Dumbbells'),
  unit: 'kg',
  increment,
  least: increment,
  ceiling,
  mostWatts: null,
  mostSpeed: null,
  minutes: { setUp: 1, stow: 1, changeExercise: 0.5, changeLoad: 0.5 },
});

const cable = (gear: Gear): Machine => ({
  ...named(gear, 'cable column', 'Cable column'),
  unit: 'kg',
  increment: '2.5',
  least: '2.5',
  ceiling: '80',
  mostWatts: null,
  mostSpeed: null,
  minutes: { setUp: 1, stow: 1, changeExercise: 1, changeLoad: 0.25 },
});

/** Brae House has everything, Lindqvist Hall a rower and light dumbbells, Cedar Field what a return asks for. */
export const groundGear = (sites: {
  readonly brae: SiteId;
  readonly lindqvist: SiteId;
  readonly cedar: SiteId;
}): readonly Machine[] => {
  const brae = { place: 'Brae House', site: sites.brae };
  const lindqvist = { place: 'Lindqvist Hall', site: sites.lindqvist };
  const cedar = { place: 'Cedar Field', site: sites.cedar };
  return [
    treadmill(brae, 22),
    pedalled(brae, 'cycle', 'Cycle ergometer', 800),
    pedalled(brae, 'rower', 'Rower', 500),
    dumbbells(brae, '2', '50'),
    cable(brae),
    pedalled(lindqvist, 'rower', 'Rower', 500),
    dumbbells(lindqvist, '1', '20'),
    treadmill(cedar, 18),
    pedalled(cedar, 'cycle', 'Cycle ergometer', 600),
    dumbbells(cedar, '2', '30'),
  ];
};
