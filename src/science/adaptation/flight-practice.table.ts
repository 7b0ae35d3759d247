import { authorsAndYear } from '../cited.ts';
import type { Source } from '../formula.ts';
import type { SourcedTable } from '../sourced-table.ts';
import { COMMON_PRACTICE, ENGLISH_2020, OUR_OWN_DESIGN, PETERSEN_2016, SCOTT_2023 } from '../sources.ts';
import { CHANG_2016, KERSTMAN_2012, LOEHR_2011, RYDER_2013, SCHEURING_2009, STANDARD_3001 } from './sources.ts';

/** How long flights are trained for, what the first weeks bring, and what is expected of whoever lands. */

interface Prescription {
  readonly name: string;
  readonly daysPerWeek: string;
  readonly work: string;
  readonly source: Source;
}

export const RESISTIVE_PRESCRIPTIONS: SourcedTable<Prescription> = {
  record: {
    id: 'flight/resistive-prescriptions',
    revision: 1,
    title: 'Resistive work in flight, in general terms as published',
    source: ENGLISH_2020,
    restsOn: [SCOTT_2023, LOEHR_2011],
    doesNotKnow: 'Loads: none of these papers prints how much body weight was added back.',
  },
  columns: [
    { name: 'prescription', unit: '' },
    { name: 'days a week', unit: '' },
    { name: 'work', unit: '' },
    { name: 'source', unit: '' },
    { name: 'checked', unit: '' },
  ],
  rows: [
    {
      name: 'standard of flight',
      daysPerWeek: 'most',
      work: 'resistive and aerobic, about 600 min a week together',
      source: SCOTT_2023,
    },
    {
      name: 'standard of flight, slots',
      daysPerWeek: '6',
      work: 'resistive work in slots of 1 to 1.5 h',
      source: { ...SCOTT_2023, status: 'from memory' },
    },
    {
      name: 'heavy and short',
      daysPerWeek: '3',
      work: 'resistive, in turn with three days of intervals',
      source: ENGLISH_2020,
    },
    {
      name: 'heavy and short, sessions',
      daysPerWeek: '3',
      work: 'heavy, medium and light days of about 6, 8 and 12 repetitions, 3 or 4 sets, changed every few weeks; 35 to 60 min',
      source: { ...ENGLISH_2020, status: 'from memory' },
    },
    {
      name: 'trial on the ground',
      daysPerWeek: '3',
      work: 'squat, heel raise and deadlift for 16 weeks, untrained people',
      source: LOEHR_2011,
    },
    {
      name: 'undulating, common',
      daysPerWeek: '3',
      work: '4 × 6 at 80 to 85 %, 4 × 8 at 75 to 80 %, 3 × 12 at 65 to 70 %; a deload every fourth to sixth week',
      source: COMMON_PRACTICE,
    },
    {
      name: 'as shipped here',
      daysPerWeek: '3',
      work: '4 × 6 at 78 %, 4 × 8 at 74 %, 3 × 12 at 66 %, two or three repetitions in reserve; a deload every fifth week',
      source: OUR_OWN_DESIGN,
    },
  ],
  cells: ({ name, daysPerWeek, work, source }) => [name, daysPerWeek, work, authorsAndYear(source), source.status],
};

interface FirstWeeks {
  readonly what: string;
  readonly found: string;
  readonly source: Source;
}

export const FIRST_WEEKS: SourcedTable<FirstWeeks> = {
  record: {
    id: 'flight/first-weeks',
    revision: 1,
    title: 'The first weeks of a flight',
    source: PETERSEN_2016,
    restsOn: [KERSTMAN_2012, SCHEURING_2009, CHANG_2016],
    doesNotKnow: 'How much a squat hurts the shoulders: no published number was found.',
  },
  columns: [
    { name: 'what', unit: '' },
    { name: 'found or done', unit: '' },
    { name: 'source', unit: '' },
    { name: 'checked', unit: '' },
  ],
  rows: [
    {
      what: 'Loads early in flight',
      found:
        'kept low, to become used to machine and harness; they rose through the flight in all eight people described',
      source: PETERSEN_2016,
    },
    {
      what: 'Resistive part of all exercise',
      found: 'from 33 to 46 % once a heavier machine was there',
      source: PETERSEN_2016,
    },
    { what: 'Back pain in the first days', found: 'about half of all people, mostly mild', source: KERSTMAN_2012 },
    { what: 'Pain of the spine during a long flight', found: 'more than half', source: CHANG_2016 },
    { what: 'Exercise on board', found: 'one of the main sources of injury in flight', source: SCHEURING_2009 },
  ],
  cells: ({ what, found, source }) => [what, found, authorsAndYear(source), source.status],
};

interface ReadinessThreshold {
  readonly measure: string;
  readonly threshold: number;
  readonly unit: string;
  readonly source: Source;
}

export const READINESS_THRESHOLDS: SourcedTable<ReadinessThreshold> = {
  record: {
    id: 'flight/readiness-thresholds',
    revision: 1,
    title: 'Strength below which tasks after landing became slow',
    source: RYDER_2013,
    restsOn: [STANDARD_3001],
    doesNotKnow:
      'Whether this person would fail: twenty people in weighted suits left a seat and walked. Nobody is passed or failed by these lines here, and no probability is given against them. The standard’s 80 % is unverified.',
  },
  columns: [
    { name: 'measure', unit: '' },
    { name: 'threshold', unit: '' },
    { name: 'unit', unit: '' },
    { name: 'source', unit: '' },
    { name: 'checked', unit: '' },
  ],
  rows: [
    { measure: 'leg press, isometric force', threshold: 17.8, unit: 'N/kg', source: RYDER_2013 },
    { measure: 'leg press, power', threshold: 17.6, unit: 'W/kg', source: RYDER_2013 },
    { measure: 'leg press, work', threshold: 78.8, unit: 'J/kg', source: RYDER_2013 },
    { measure: 'knee extension, isometric force', threshold: 5.9, unit: 'N/kg', source: RYDER_2013 },
    { measure: 'knee extension, isokinetic torque', threshold: 1.9, unit: 'N·m/kg', source: RYDER_2013 },
    { measure: 'strength kept in flight', threshold: 80, unit: '% of before', source: STANDARD_3001 },
  ],
  cells: ({ measure, threshold, unit, source }) => [measure, threshold, unit, authorsAndYear(source), source.status],
};

interface ExpectedLoss {
  readonly test: string;
  /** Five days after landing from six months with a heavy machine and regular work [%]. */
  readonly change: number;
  readonly sd: number;
  /** null where the group had not come half way when it was last tested, after 30 days. */
  readonly halfBackBy: string | null;
}

export const EXPECTED_LOSSES: SourcedTable<ExpectedLoss> = {
  record: {
    id: 'flight/expected-losses',
    revision: 1,
    title: 'Losses expected of six months in flight, before anybody is tested',
    source: OUR_OWN_DESIGN,
    restsOn: [ENGLISH_2020, SCOTT_2023],
    doesNotKnow:
      'This person. Means are those of a heavy machine used regularly; the standard deviations are our own, set to meet single changes of −30 to +5 %.',
  },
  columns: [
    { name: 'test, five days after landing', unit: '' },
    { name: 'change', unit: '%' },
    { name: 'standard deviation', unit: '%' },
    { name: 'half back by', unit: '' },
  ],
  rows: [
    { test: 'knee extension', change: -7, sd: 9, halfBackBy: 'day 30' },
    { test: 'plantar flexion', change: -10, sd: 10, halfBackBy: 'day 14' },
    { test: 'trunk', change: -8, sd: 9, halfBackBy: null },
  ],
  cells: ({ test, change, sd, halfBackBy }) => [test, change, sd, halfBackBy],
};
