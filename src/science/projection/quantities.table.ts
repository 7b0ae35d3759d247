import {
  ENGLISH_2020,
  LEBLANC_2000,
  MOORE_2010,
  MOORE_2014,
  MOORE_2015,
  OUR_OWN_DESIGN,
  SIBONGA_2007,
} from '../sources.ts';
import type { SourcedTable } from '../sourced-table.ts';

/** The longest mission in the data that a course rests on [d]. */
export const LONGEST_FLIGHT = {
  /** Moore 2015: 48 to 219 days. */
  oxygenUptake: 219,
  /** English 2020; the longest of its missions was not seen, so that the mean stands for it. */
  strength: 165,
  /** LeBlanc 2000: 4 to 14.4 months. */
  femoralNeck: 438,
} as const;

/** What is forecast on the logarithmic scale, with what is known of other people. */
export interface LogQuantity {
  readonly name: string;
  /** Amplitude of the loss, as a natural logarithm, at the full dose of training. */
  readonly amplitude: number;
  readonly amplitudeSd: number;
  /** By which part of itself the amplitude grows where no dose is left. */
  readonly doseSlope: number;
  readonly doseSlopeSd: number;
  /** Variance of what drifts, per day. */
  readonly driftPerDay: number;
  /** Spread of one good test, and of a poorer one. */
  readonly testSd: number;
  readonly poorTestSd: number;
  /** Days in which half of what was lost comes back after landing, and how people differ in it (logarithm). */
  readonly halfLife: number;
  /** Whose half-life it is, what else stands in this book for the same, and why it differs. */
  readonly halfLifeOf: string;
  readonly halfLifeLogSd: number;
  readonly longestFlight: number;
}

export const OXYGEN_UPTAKE: LogQuantity = {
  name: 'maximal oxygen uptake',
  amplitude: 0.144,
  amplitudeSd: 0.117,
  doseSlope: 1,
  doseSlopeSd: 0.5,
  driftPerDay: 2e-5,
  testSd: 0.03,
  poorTestSd: 0.06,
  halfLife: 6,
  halfLifeOf:
    'Five people (Moore 2010), tested on days 1 and 10 after landing, in litres. 10.0 d in return/recovery-constants: fourteen people (Moore 2014), days 1 and 30. Two small groups, and where the first days bring most back, the later test reads slower.',
  halfLifeLogSd: 0.5,
  longestFlight: LONGEST_FLIGHT.oxygenUptake,
};

export const STRENGTH: LogQuantity = {
  name: 'strength of the knee extensors',
  amplitude: 0.064,
  amplitudeSd: 0.06,
  doseSlope: 1,
  doseSlopeSd: 0.5,
  driftPerDay: 1.6e-5,
  testSd: 0.03,
  poorTestSd: 0.06,
  halfLife: 43,
  halfLifeOf:
    '26 people (English 2020), both ways of training, days 5 and 30 after landing. 27.7 d in return/recovery-constants and 28 d in recovery/half-lives are our own: the 17 of the usual training stayed flat to day 30, so that nothing could be read from them alone.',
  halfLifeLogSd: 0.5,
  longestFlight: LONGEST_FLIGHT.strength,
};

export const LOG_QUANTITIES: SourcedTable<LogQuantity> = {
  record: {
    id: 'projection/quantities',
    revision: 2,
    title: 'What is known of other people: oxygen uptake and strength',
    source: OUR_OWN_DESIGN,
    restsOn: [MOORE_2010, MOORE_2014, MOORE_2015, ENGLISH_2020],
    doesNotKnow:
      'Only the published changes, the length of missions and the half-lives after landing rest on papers. Slopes on the dose, drifts, the spread of half-lives and the spread of the amplitude of strength are our own and may be edited: no trial has drawn lots for the dose of training in flight.',
  },
  columns: [
    { name: 'quantity', unit: '' },
    { name: 'amplitude', unit: 'ln' },
    { name: 'SD of the amplitude', unit: 'ln' },
    { name: 'slope on the dose', unit: '1' },
    { name: 'SD of the slope', unit: '1' },
    { name: 'drift, variance per day', unit: 'ln²/d' },
    { name: 'SD of a good test', unit: 'ln' },
    { name: 'SD of a poorer test', unit: 'ln' },
    { name: 'half-life after landing', unit: 'd' },
    { name: 'whose half-life, and what stands elsewhere', unit: '' },
    { name: 'SD of its logarithm', unit: 'ln' },
    { name: 'longest mission in the data', unit: 'd' },
  ],
  rows: [OXYGEN_UPTAKE, STRENGTH],
  cells: (row) => [
    row.name,
    row.amplitude,
    row.amplitudeSd,
    row.doseSlope,
    row.doseSlopeSd,
    row.driftPerDay,
    row.testSd,
    row.poorTestSd,
    row.halfLife,
    row.halfLifeOf,
    row.halfLifeLogSd,
    row.longestFlight,
  ],
};

/** What is forecast in percent of its own value before flight. */
export interface BoneQuantity {
  readonly name: string;
  /** Change at the full dose and at the least [%/month], with how people differ. */
  readonly rateAtFullDose: number;
  readonly sdAtFullDose: number;
  readonly rateAtNoDose: number;
  readonly sdAtNoDose: number;
  /** Spread of the weight of the dose itself. */
  readonly doseSd: number;
  /** Variance of what drifts [%² per month]. */
  readonly driftPerMonth: number;
  /** How a person's rate differs from one mission to the next [%/month]. */
  readonly transferSd: number;
  readonly halfLife: number;
  /** Whose half-life it is, what else stands in this book for the same, and why it differs. */
  readonly halfLifeOf: string;
  readonly halfLifeLogSd: number;
  readonly longestFlight: number;
}

export const FEMORAL_NECK: BoneQuantity = {
  name: 'bone mineral density of the femoral neck',
  rateAtFullDose: -0.3,
  sdAtFullDose: 0.35,
  rateAtNoDose: -1.15,
  sdAtNoDose: 0.84,
  doseSd: 0.15,
  driftPerMonth: 0.25,
  transferSd: 0.2,
  halfLife: 211,
  halfLifeOf:
    '45 people (Sibonga 2007), as fitted to this site; bone/recovery-half-lives has the same. 270 d for the hip in return/recovery-constants: what that study printed over all, about half by nine months.',
  halfLifeLogSd: 0.5,
  longestFlight: LONGEST_FLIGHT.femoralNeck,
};

export const BONE_QUANTITIES: SourcedTable<BoneQuantity> = {
  record: {
    id: 'projection/bone-quantities',
    revision: 2,
    title: 'What is known of other people: bone',
    source: LEBLANC_2000,
    restsOn: [ENGLISH_2020, SIBONGA_2007, OUR_OWN_DESIGN],
    doesNotKnow:
      'The rate at no dose comes from people who exercised lightly, not from people who did nothing. The spread at the full dose, of the dose, between missions, of the drift and of the half-life are our own and may be edited.',
  },
  columns: [
    { name: 'site', unit: '' },
    { name: 'change at the full dose', unit: '%/month' },
    { name: 'SD at the full dose', unit: '%/month' },
    { name: 'change at no dose', unit: '%/month' },
    { name: 'SD at no dose', unit: '%/month' },
    { name: 'SD of the weight of the dose', unit: '1' },
    { name: 'drift, variance per month', unit: '%²/month' },
    { name: 'SD from mission to mission', unit: '%/month' },
    { name: 'half-life after landing', unit: 'd' },
    { name: 'whose half-life, and what stands elsewhere', unit: '' },
    { name: 'SD of its logarithm', unit: 'ln' },
    { name: 'longest mission in the data', unit: 'd' },
  ],
  rows: [FEMORAL_NECK],
  cells: (row) => [
    row.name,
    row.rateAtFullDose,
    row.sdAtFullDose,
    row.rateAtNoDose,
    row.sdAtNoDose,
    row.doseSd,
    row.driftPerMonth,
    row.transferSd,
    row.halfLife,
    row.halfLifeOf,
    row.halfLifeLogSd,
    row.longestFlight,
  ],
};

/** A published change from before a flight, for the size of a loss. */
export interface PublishedChange {
  readonly study: string;
  readonly people: number;
  readonly day: number;
  /** −0.17 is a fall by 17 %. */
  readonly change: number;
}

export const OXYGEN_UPTAKE_CHANGES: SourcedTable<PublishedChange> = {
  record: {
    id: 'projection/published-changes',
    revision: 1,
    title: 'Published changes of maximal oxygen uptake',
    source: MOORE_2014,
    restsOn: [ENGLISH_2020],
    doesNotKnow:
      'The first was measured in flight on a cycle, the second after landing; its flight day is the mean length of the missions.',
  },
  columns: [
    { name: 'study', unit: '' },
    { name: 'people', unit: 'people' },
    { name: 'days after launch', unit: 'd' },
    { name: 'change from before flight', unit: '1' },
  ],
  rows: [
    { study: 'Moore 2014', people: 14, day: 15, change: -0.17 },
    { study: 'English 2020', people: 26, day: 165, change: -0.061 },
  ],
  cells: ({ study, people, day, change }) => [study, people, day, change],
};
