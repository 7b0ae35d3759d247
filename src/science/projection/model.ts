import type { Refused } from './adherence.ts';
import { adherenceAt, faultOfCounts } from './adherence.ts';
import { boneRatePosterior, boneRatePrior, type EarlierMission } from './bone-rate.ts';
import { boneCourse, DAYS_PER_MONTH } from './course.ts';
import { amplitudeAtDose, amplitudeSdAtDose, effectiveDose } from './dose.ts';
import type { Component } from './mixture.ts';
import { momentsAhead, type Asked } from './prediction.ts';
import type { BoneQuantity, LogQuantity } from './quantities.table.ts';
import { twoStateFilter, type Test, type TwoState } from './two-state.ts';

/**
 * What is known of a person, with their adherence unknown: the posterior of the adherence is cut into slices of equal
 * probability, each slice has its own two states, and weighs what the tests say of it.
 */
export interface ProjectionModel {
  /** Logarithmic, or percent of the own value before flight. */
  readonly scale: 'log' | 'percent';
  readonly course: (day: number) => number;
  readonly driftPerDay: number;
  readonly longestFlight: number;
  /** Where the course itself is only good for a time: until which flight day, and what to do after it. */
  readonly courseHolds: { readonly until: number; readonly beyond: string } | null;
  readonly halfLife: number;
  readonly halfLifeLogSd: number;
  /** How often this person’s own change was measured. */
  readonly ownMeasurements: number;
  readonly slices: readonly Slice[];
}

export interface Slice {
  readonly weight: number;
  readonly adherence: number;
  readonly dose: number;
  readonly state: TwoState;
}

export interface Training {
  /** In one unit, whichever: minutes a week. */
  readonly planned: number;
  readonly reference: number;
  readonly done: number;
  readonly missed: number;
}

export type ModelResult = { readonly kind: 'model'; readonly model: ProjectionModel } | Refused;

const SLICES = 64;

type Known = { readonly kind: 'known'; readonly state: TwoState; readonly logLikelihood: number } | Refused;

/** Adherences in the middle of slices of equal probability. */
const adherences = ({ done, missed }: Training): readonly number[] =>
  Array.from({ length: SLICES }, (_, place) => adherenceAt(done, missed, (place + 0.5) / SLICES));

const faultOfTraining = ({ planned, reference, done, missed }: Training): Refused | null => {
  if (!(planned >= 0 && reference > 0 && Number.isFinite(planned / reference)))
    return { kind: 'refused', reason: 'A dose needs what is planned, zero or more, and a reference above zero.' };
  return faultOfCounts(done, missed);
};

const slicesOf = (training: Training, knownAt: (dose: number) => Known): readonly Slice[] | Refused => {
  const fault = faultOfTraining(training);
  if (fault) return fault;
  const each: { adherence: number; dose: number; state: TwoState; logLikelihood: number }[] = [];
  for (const adherence of adherences(training)) {
    const dose = effectiveDose(training.planned, training.reference, adherence);
    const known = knownAt(dose);
    if (known.kind === 'refused') return known;
    each.push({ adherence, dose, state: known.state, logLikelihood: known.logLikelihood });
  }
  const best = Math.max(...each.map(({ logLikelihood }) => logLikelihood));
  const weights = each.map(({ logLikelihood }) => Math.exp(logLikelihood - best));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  return each.map(({ adherence, dose, state }, place) => ({
    weight: (weights[place] ?? 0) / total,
    adherence,
    dose,
    state,
  }));
};

const isRefused = (result: readonly Slice[] | Refused): result is Refused => 'kind' in result;

export interface LogModelGiven {
  readonly quantity: LogQuantity;
  readonly course: (day: number) => number;
  readonly pre: { readonly value: number; readonly sd: number };
  readonly tests: readonly Test[];
  readonly training: Training;
}

/** The model of oxygen uptake or strength of one person. */
export const logModel = ({ quantity, course, pre, tests, training }: LogModelGiven): ModelResult => {
  const { amplitude, amplitudeSd, doseSlope, doseSlopeSd, driftPerDay, longestFlight, halfLife, halfLifeLogSd } =
    quantity;
  const slices = slicesOf(training, (dose) => {
    const prior = {
      mean: amplitudeAtDose(dose, amplitude, doseSlope),
      sd: amplitudeSdAtDose(dose, amplitude, amplitudeSd, doseSlope, doseSlopeSd),
    };
    const filtered = twoStateFilter({ pre, amplitude: prior, course, driftPerDay, tests });
    return filtered.kind === 'refused' ? filtered : { ...filtered, kind: 'known' };
  });
  if (isRefused(slices)) return slices;
  const ownMeasurements = tests.length;
  return {
    kind: 'model',
    model: {
      scale: 'log',
      course,
      driftPerDay,
      longestFlight,
      courseHolds: null,
      halfLife,
      halfLifeLogSd,
      ownMeasurements,
      slices,
    },
  };
};

/** About seven months. */
const STEADY_RATE = {
  until: 213,
  beyond:
    'Beyond about seven months a steady rate of bone loss overstates it: look at the saturating course beside it.',
};

export interface BoneModelGiven {
  readonly site: BoneQuantity;
  /** The steady course, unless the saturating one is asked for. */
  readonly course?: (day: number) => number;
  readonly missions: readonly EarlierMission[];
  readonly training: Training;
}

/** The model of bone mineral at one site of one person, in percent of their own value before flight. */
export const boneModel = ({ site, course = boneCourse, missions, training }: BoneModelGiven): ModelResult => {
  const slices = slicesOf(training, (dose) => {
    const rate = boneRatePosterior(boneRatePrior(site, dose), missions, site.transferSd);
    if (rate.kind === 'refused') return rate;
    const state: TwoState = { level: 0, amplitude: -rate.mean, covariance: [0, 0, 0, rate.sd ** 2] };
    return { kind: 'known', state, logLikelihood: rate.logLikelihood };
  });
  if (isRefused(slices)) return slices;
  const { driftPerMonth, longestFlight, halfLife, halfLifeLogSd } = site;
  const driftPerDay = driftPerMonth / DAYS_PER_MONTH;
  const ownMeasurements = missions.length;
  return {
    kind: 'model',
    model: {
      scale: 'percent',
      course,
      driftPerDay,
      longestFlight,
      courseHolds: course === boneCourse ? STEADY_RATE : null,
      halfLife,
      halfLifeLogSd,
      ownMeasurements,
      slices,
    },
  };
};

/** The distribution of a flight day, slice by slice, on the scale of the model. */
export const componentsOn = (model: ProjectionModel, day: number, of: Asked): readonly Component[] =>
  model.slices.map(({ weight, state }) => {
    const { mean, variance } = momentsAhead(state, { ...model, day }, of);
    return { weight, mean, sd: Math.sqrt(variance) };
  });

/** From the scale of a model to what is read: a value or ratio, or percent. */
export const readOff = ({ scale }: ProjectionModel, value: number): number =>
  scale === 'log' ? Math.exp(value) : value;
