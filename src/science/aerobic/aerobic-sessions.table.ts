import type { Source } from '../formula.ts';
import type { SourcedTable } from '../sourced-table.ts';
import {
  COMMON_PRACTICE,
  ENGLISH_2020,
  MOORE_2014,
  PETERSEN_2016,
  PLOUTZ_SNYDER_2018,
  SCOTT_2023,
} from '../sources.ts';
import { HACKNEY_2011, HEDGE_2022 } from './sources.ts';

/** Interval and continuous sessions of flight and bed-rest studies, with how far each was seen. */

/** What an intensity is a fraction of. */
export type SessionMetric = 'peak uptake' | 'heart-rate reserve' | 'all-out';

export interface AerobicSession {
  readonly name: string;
  readonly machine: 'cycle' | 'cycle or treadmill';
  readonly bouts: number;
  readonly boutSeconds: number;
  /** Between bouts; 0 for a continuous session. */
  readonly restSeconds: number;
  readonly metric: SessionMetric;
  /** One for all bouts, or one for each, as fractions; empty where all-out. */
  readonly intensities: readonly number[];
  readonly says: string;
  readonly source: Source;
  readonly sure: string;
}

const minutes = (seconds: number): string => (seconds < 120 ? `${seconds} s` : `${seconds / 60} min`);
const percents = (fractions: readonly number[]): string =>
  fractions.length === 0 ? 'all-out' : `${fractions.map((each) => Math.round(100 * each)).join('–')} %`;

export const AEROBIC_SESSIONS: SourcedTable<AerobicSession> = {
  record: {
    id: 'prescription/sessions',
    revision: 1,
    title: 'Interval and continuous sessions of flight and bed-rest studies',
    source: PLOUTZ_SNYDER_2018,
    restsOn: [HACKNEY_2011, HEDGE_2022, ENGLISH_2020],
    doesNotKnow:
      'Which of them is better in flight: two programmes differed in few results. Rest lengths and the intensity of the four-minute bouts are the least sure figures. Short all-out bouts only on the cycle, and none before about the fourth week (common practice).',
  },
  columns: [
    { name: 'session', unit: '' },
    { name: 'machine', unit: '' },
    { name: 'bouts', unit: '' },
    { name: 'rest', unit: '' },
    { name: 'intensity', unit: '' },
    { name: 'of', unit: '' },
    { name: 'in words', unit: '' },
    { name: 'how sure', unit: '' },
  ],
  rows: [
    {
      name: 'short intervals',
      machine: 'cycle',
      bouts: 8,
      boutSeconds: 30,
      restSeconds: 15,
      metric: 'all-out',
      intensities: [],
      says: 'Only on the cycle; none before about the fourth week.',
      source: PLOUTZ_SNYDER_2018,
      sure: 'lengths seen, pattern from memory, rest with low confidence',
    },
    {
      name: 'two-minute intervals',
      machine: 'cycle or treadmill',
      bouts: 6,
      boutSeconds: 120,
      restSeconds: 120,
      metric: 'peak uptake',
      intensities: [0.7, 0.8, 0.9, 1, 0.9, 0.8],
      says: 'Active rest.',
      source: PLOUTZ_SNYDER_2018,
      sure: 'lengths seen, pattern from memory, rest with low confidence',
    },
    {
      name: 'four-minute intervals',
      machine: 'cycle or treadmill',
      bouts: 4,
      boutSeconds: 240,
      restSeconds: 180,
      metric: 'peak uptake',
      intensities: [0.9],
      says: 'About 90 % of the peak uptake or of the maximal heart rate; active rest.',
      source: PLOUTZ_SNYDER_2018,
      sure: 'lengths seen, pattern from memory, intensity and rest with low confidence',
    },
    {
      name: 'continuous',
      machine: 'cycle or treadmill',
      bouts: 1,
      boutSeconds: 1800,
      restSeconds: 0,
      metric: 'peak uptake',
      intensities: [0.75],
      says: 'On the days between the intervals.',
      source: HACKNEY_2011,
      sure: 'intensity seen, length from memory',
    },
    {
      name: 'half-minute intervals of older adults',
      machine: 'cycle',
      bouts: 11,
      boutSeconds: 30,
      restSeconds: 90,
      metric: 'heart-rate reserve',
      intensities: [0.85],
      says: '80 to 90 % of the reserve; five minutes at 40 % before, five easy after; easy cycling between.',
      source: HEDGE_2022,
      sure: 'seen',
    },
    {
      name: 'continuous of older adults',
      machine: 'cycle',
      bouts: 1,
      boutSeconds: 1200,
      restSeconds: 0,
      metric: 'heart-rate reserve',
      intensities: [0.65],
      says: '60 to 70 % of the reserve; five minutes at 40 to 50 % before and after.',
      source: HEDGE_2022,
      sure: 'seen',
    },
  ],
  cells: ({ name, machine, bouts, boutSeconds, restSeconds, metric, intensities, says, sure }) => [
    name,
    machine,
    `${bouts} × ${minutes(boutSeconds)}`,
    restSeconds === 0 ? 'none' : minutes(restSeconds),
    percents(intensities),
    metric,
    says,
    sure,
  ],
};

export interface WholeProgramme {
  readonly what: string;
  readonly says: string;
  readonly people: number | null;
  readonly source: Source;
}

export const WHOLE_PROGRAMMES: SourcedTable<WholeProgramme> = {
  record: {
    id: 'prescription/programmes',
    revision: 1,
    title: 'Whole programmes of flight and bed-rest studies',
    source: ENGLISH_2020,
    restsOn: [SCOTT_2023, PETERSEN_2016, HACKNEY_2011, MOORE_2014, COMMON_PRACTICE],
    doesNotKnow:
      'What was done of what was planned: feet carried a load for only 30 % of assigned exercise time in four men. Time on a machine is not time that exercises.',
  },
  columns: [
    { name: 'programme', unit: '' },
    { name: 'in words', unit: '' },
    { name: 'people', unit: '' },
    { name: 'source', unit: '' },
  ],
  rows: [
    {
      what: 'high intensity, lower volume',
      says: 'Resistance on three days a week; intervals on three and continuous work on three, alternating.',
      people: 9,
      source: ENGLISH_2020,
    },
    {
      what: 'comparison',
      says: 'Resistance and aerobic work daily.',
      people: 17,
      source: ENGLISH_2020,
    },
    {
      what: 'bed rest before it',
      says: 'Resistance on three days a week, 3 × 12; aerobic on six, continuous at 75 % of the peak and intervals of 30 s, 2 min and 4 min in turn.',
      people: 9,
      source: HACKNEY_2011,
    },
    {
      what: 'usual whole',
      says: 'About 600 minutes a week of aerobic and resistance work truly done.',
      people: 46,
      source: SCOTT_2023,
    },
    {
      what: 'share of machines late in a flight',
      says: 'Resistance 46 %, treadmill 33 %, cycle 20 %.',
      people: 8,
      source: PETERSEN_2016,
    },
    {
      what: 'scheduled time',
      says: 'About two and a half hours a day on six days, with setting up, stowing and washing.',
      people: null,
      source: COMMON_PRACTICE,
    },
    {
      what: 'cycle test in flight',
      says: 'Three stages of five minutes at 25, 50 and 75 % of the peak before flight; a maximal test goes on by 25 W a minute.',
      people: 14,
      source: MOORE_2014,
    },
  ],
  cells: ({ what, says, people, source }) => [what, says, people, source.text.split(' (')[0] ?? source.text],
};
