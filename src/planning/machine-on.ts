import type { Day } from '#units/day.ts';
import type { Machine } from '#domain/catalogue.ts';
import type { SiteId } from '#domain/identity.ts';
import { ofKind, type Known } from '#domain/known.ts';

/** Is a person weightless on a day? Landing day itself is on the ground; a landing that may be later is still flight. */
export const isInFlight = ({ mission }: Known, on: Day): boolean =>
  mission !== null && on >= mission.launch && (mission.landing === null || on < mission.landing.latest);

/** Where a person trains on a day: aboard, at the site where they are said to stay, else where most bars stand. */
export const siteOn = (known: Known, on: Day): SiteId | null => {
  if (isInFlight(known, on)) return known.mission?.site ?? null;
  const stay = ofKind(known, 'stays').findLast((fact) => fact.from <= on && (fact.until === null || on <= fact.until));
  return stay?.site ?? homeSite(known);
};

/** The first site on the ground that has a free bar, in order of entry. */
const homeSite = ({ house }: Known): SiteId | null => {
  const bar = [...house.machines.values()].find(({ kind, gravity }) => kind === 'free bar' && gravity === '1 g');
  return bar?.site ?? null;
};

/** The machines where a person trains on a day, in or out of service. */
export const machinesOn = (known: Known, on: Day): readonly Machine[] => {
  const site = siteOn(known, on);
  const gravity = isInFlight(known, on) ? '0 g' : '1 g';
  const here = machinesBySite(known.house.machines);
  const name = `${gravity} ${site ?? ''}`;
  const found =
    here.get(name) ??
    [...known.house.machines.values()].filter((machine) => machine.site === site && machine.gravity === gravity);
  here.set(name, found);
  return found;
};

/** A house's catalogue never changes, and planning asks for every item of every day. */
const machinesBySite = (machines: Known['house']['machines']): Map<string, readonly Machine[]> => {
  const kept = bySite.get(machines) ?? new Map<string, readonly Machine[]>();
  bySite.set(machines, kept);
  return kept;
};

const bySite = new WeakMap<Known['house']['machines'], Map<string, readonly Machine[]>>();

/** The machine of a kind where a person trains on a day, or null where there is none. */
export const machineOn = (known: Known, kind: Machine['kind'], on: Day): Machine | null =>
  machinesOn(known, on).find((machine) => machine.kind === kind) ?? null;

/** What lifts are trained on where a person is: the resistive machine aboard, a free bar on the ground. */
export const liftingMachineOn = (known: Known, on: Day): Machine | null =>
  machineOn(known, isInFlight(known, on) ? 'resistive machine' : 'free bar', on);
