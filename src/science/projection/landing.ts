import { method } from '../method.ts';
import { OUR_OWN_DESIGN } from '../sources.ts';
import type { Refused } from './adherence.ts';
import { mixtureQuantile, type Component } from './mixture.ts';
import { componentsOn, readOff, type ProjectionModel } from './model.ts';
import { beyondTheData, type Asked } from './prediction.ts';

/** A landing that has no fixed day: a range of days, each with its weight. */
export interface LandingDay {
  /** Days after launch, a whole number. */
  readonly day: number;
  readonly weight: number;
}

/** Every day of a window counts alike where nothing more is known. */
export const landingWindow = (earliest: number, latest: number): readonly LandingDay[] =>
  Array.from({ length: Math.max(0, latest - earliest + 1) }, (_, place) => ({
    day: earliest + place,
    weight: 1 / (latest - earliest + 1),
  }));

const LONGEST_ASKED = 3650;

/** Why landing days cannot be, or nothing. */
export const faultOfLandings = (landings: readonly LandingDay[]): Refused | null => {
  const total = landings.reduce((sum, { weight }) => sum + weight, 0);
  const odd = landings.find(
    ({ day, weight }) => !(Number.isInteger(day) && day >= 1 && day <= LONGEST_ASKED && weight >= 0),
  );
  if (odd)
    return {
      kind: 'refused',
      reason: `A landing lies on a whole day, 1 to ${LONGEST_ASKED} after launch, with a weight of zero or more; this is day ${odd.day} with weight ${odd.weight}.`,
    };
  return total > 0 && Number.isFinite(total)
    ? null
    : { kind: 'refused', reason: 'No landing day was given that could happen.' };
};

/** Landing days in order, their weights made to add up to 1. */
export const weighedLandings = (landings: readonly LandingDay[]): readonly LandingDay[] => {
  const total = landings.reduce((sum, { weight }) => sum + weight, 0);
  return landings
    .filter(({ weight }) => weight > 0)
    .map(({ day, weight }) => ({ day, weight: weight / total }))
    .toSorted((a, b) => a.day - b.day);
};

/** What to say of a flight day that lies beyond the data, or beyond what the course is good for. */
export const cautionsOn = ({ longestFlight, courseHolds }: ProjectionModel, day: number): readonly string[] => [
  ...beyondTheData(day, longestFlight),
  ...(courseHolds && day > courseHolds.until ? [courseHolds.beyond] : []),
];

export type AtLanding =
  | {
      readonly kind: 'estimate';
      readonly median: number;
      readonly low: number;
      readonly high: number;
      readonly components: readonly Component[];
      readonly cautions: readonly string[];
    }
  | Refused;

/** The value at landing, whichever day that is. */
export const valueAtLanding = method(
  {
    id: 'projection/value-at-landing',
    revision: 1,
    title: 'Value at a landing that has no fixed day',
    equations: [
      'P(Q < c) = sum_i sum_j w_i · p_j · Φ((ln(c) − μ_ij) / SD_ij)',
      'i runs over slices of the adherence, j over landing days',
      'median and band: c with P = 0.5, 0.05, 0.95',
    ],
    inputs: [
      { name: 'landing day', symbol: 't_j', unit: 'd', possible: [1, LONGEST_ASKED], valid: [1, 365] },
      { name: 'its weight', symbol: 'p_j', unit: '1', possible: [0, 1e6], valid: [0, 1e6] },
    ],
    outputs: [
      { name: 'median', symbol: 'Q', unit: 'as measured, or %' },
      { name: 'lower and upper end of nine tenths', symbol: 'band', unit: 'as measured, or %' },
    ],
    refuses: [
      'A landing on no whole day after launch, or with a weight below zero.',
      'No landing day that could happen.',
    ],
    source: OUR_OWN_DESIGN,
    doesNotKnow: 'Whether the landing is moved because of how the person is: the day counts as chance.',
  },
  (model: ProjectionModel, landings: readonly LandingDay[], of: Asked): AtLanding => {
    const fault = faultOfLandings(landings);
    if (fault) return fault;
    const weighed = weighedLandings(landings);
    const components = weighed.flatMap(({ day, weight }) =>
      componentsOn(model, day, of).map((each) => ({ ...each, weight: each.weight * weight })),
    );
    const at = (share: number): number => readOff(model, mixtureQuantile(components, share));
    const last = weighed.at(-1);
    return {
      kind: 'estimate',
      median: at(0.5),
      low: at(0.05),
      high: at(0.95),
      components,
      cautions: last ? cautionsOn(model, last.day) : [],
    };
  },
);
