import type { InventedPerson } from './invented-person.ts';
import { normal, type Random } from './random.ts';

/*
 * How the invented hearts and lungs work. It is not the science by which bouts are set: costs differ from body to body, the
 * harness gives back another share, the heart drifts, and effort follows a curve of its own.
 */

/** Flight takes a part of the uptake in its first weeks, of which training brings half back. */
const LOST_AT_ONCE = 0.08;
const KEPT_OFF = 0.04;
const DAYS_TO_LOSE = 12;
const DAYS_TO_REGAIN = 60;
const PER_DAY_OF_PREPARATION = 0.0003;

/** Greatest uptake on a day [mL/(kg min)]. */
export const trueUptake = ({ stamina }: InventedPerson, sinceLaunch: number): number => {
  if (sinceLaunch < 0) return stamina.uptake * Math.exp(PER_DAY_OF_PREPARATION * Math.max(sinceLaunch, -400));
  const lost = LOST_AT_ONCE * (1 - Math.exp(-sinceLaunch / DAYS_TO_LOSE));
  const regained = (LOST_AT_ONCE - KEPT_OFF) * (1 - Math.exp(-sinceLaunch / DAYS_TO_REGAIN));
  return stamina.uptake * (1 - lost + regained);
};

const PER_WATT = 11.2;
const UNLOADED = 6;

/** Uptake that a power on a cycle costs [mL/(kg min)]. */
export const costOfWatts = ({ stamina, bodyMass }: InventedPerson, watts: number): number =>
  UNLOADED + (stamina.costs * PER_WATT * watts) / bodyMass;

export const wattsOfCost = ({ stamina, bodyMass }: InventedPerson, uptake: number): number =>
  Math.max(0, ((uptake - UNLOADED) * bodyMass) / (stamina.costs * PER_WATT));

export type Gait = 'walking' | 'running';

const RESTING = 3.5;
/** mL/(kg min) for each km/h above rest. */
const PER_SPEED: Readonly<Record<Gait, number>> = { running: 3.45, walking: 1.9 };
/** Of the cost on the ground, what is left under a harness that pulls with nothing, and what its pull adds. */
const LEFT_UNDER_NOTHING: Readonly<Record<Gait, number>> = { running: 0.3, walking: 0.6 };

const leftUnder = (gait: Gait, pull: number | null): number =>
  pull === null ? 1 : LEFT_UNDER_NOTHING[gait] + (1 - LEFT_UNDER_NOTHING[gait]) * pull;

/** Uptake that a belt speed [km/h] costs, with what the harness pulls over body weight. */
export const costOfSpeed = ({ stamina }: InventedPerson, gait: Gait, speed: number, pull: number | null): number =>
  RESTING + stamina.costs * PER_SPEED[gait] * leftUnder(gait, pull) * speed;

export const speedOfCost = ({ stamina }: InventedPerson, gait: Gait, uptake: number, pull: number | null): number =>
  Math.max(0, (uptake - RESTING) / (stamina.costs * PER_SPEED[gait] * leftUnder(gait, pull)));

/** The part of what a body has above rest that some work takes. */
export const partOfReserve = (cost: number, greatest: number): number => (cost - RESTING) / (greatest - RESTING);
export const costOfPart = (part: number, greatest: number): number => RESTING + part * (greatest - RESTING);

/** Heart rate of work that takes a part of the reserve, after some minutes of it. */
export const trueRate = ({ stamina }: InventedPerson, part: number, minutes: number, random: Random): number => {
  const { greatestRate, restingRate } = stamina;
  // The heart lags behind short work and drifts up in long work.
  const settled = 1 - Math.exp(-minutes / 1.2);
  const drift = 0.001 * Math.max(0, minutes - 10);
  const reserve = Math.min(1, (part + drift) * (0.72 + 0.28 * settled));
  return Math.round(Math.min(greatestRate, restingRate + reserve * (greatestRate - restingRate) + 2 * normal(random)));
};

const EASIEST = 1.5;
const STEEPNESS = 1.35;

/** How hard work of a part of the reserve feels. */
export const feltWork = (part: number, random: Random): number => {
  const rating = EASIEST + 7.3 * Math.max(0, part) ** STEEPNESS;
  return Math.min(10, Math.max(2, Math.round(rating + 0.35 * normal(random))));
};

/** The part of the reserve that feels as hard as asked. */
export const partThatFeels = (rating: number): number => (Math.max(0.2, rating - EASIEST) / 7.3) ** (1 / STEEPNESS);

/** More than this of the reserve nobody holds through a bout of minutes. */
export const MOST_OF_RESERVE = 1.1;
