import { authorsAndYear } from '../cited.ts';
import type { Source } from '../formula.ts';
import type { SourcedTable } from '../sourced-table.ts';
import { OUR_OWN_DESIGN } from '../sources.ts';
import {
  GRGIC_2018,
  OTTO_CARPINELLI_2006,
  PELLAND_2024,
  PETERSON_2004,
  RALSTON_2017,
  RALSTON_2018,
  RHEA_2003,
  SCHOENFELD_2017,
} from './sources.ts';

/** How much work gave how much strength and size, as published. */

export interface DoseFinding {
  readonly outcome: 'strength' | 'size' | 'counting' | 'critique';
  /** Of which dose, in words. */
  readonly dose: string;
  readonly found: number | null;
  readonly low: number | null;
  readonly high: number | null;
  readonly unit: string;
  readonly says: string;
  readonly source: Source;
}

const finding = (
  outcome: DoseFinding['outcome'],
  dose: string,
  [found, low, high]: readonly [number | null, (number | null)?, (number | null)?],
  unit: string,
  says: string,
  source: Source,
): DoseFinding => ({ outcome, dose, found, low: low ?? null, high: high ?? null, unit, says, source });

const remembered = (source: Source): Source => ({ ...source, status: 'from memory' });
const EFFECT = 'effect size';

/** Where the two points of the curve are put: the middle of "up to five" and a place in "ten and more"; our own choice. */
export const LOW_VOLUME_SETS = 3;
export const HIGH_VOLUME_SETS = 12;

export const LOW_VOLUME = finding(
  'strength',
  'up to 5 weekly sets of an exercise',
  [0.82, 0.47, 1.17],
  EFFECT,
  'before to after',
  RALSTON_2017,
);
export const HIGH_VOLUME = finding(
  'strength',
  '10 weekly sets of an exercise and more',
  [1.01, 0.7, 1.32],
  EFFECT,
  'before to after',
  RALSTON_2017,
);

export const DOSE_FINDINGS: SourcedTable<DoseFinding> = {
  record: {
    id: 'dose/findings',
    revision: 1,
    title: 'How much work gave how much, as published',
    source: RALSTON_2017,
    restsOn: [SCHOENFELD_2017, PELLAND_2024, GRGIC_2018, RALSTON_2018, RHEA_2003, PETERSON_2004, OTTO_CARPINELLI_2006],
    doesNotKnow:
      'Weightlessness, and people who have trained for years under supervision. The two oldest pooled studies are read as a ranking of doses, not as exact effects: their statistics were found wrong.',
  },
  columns: [
    { name: 'outcome', unit: '' },
    { name: 'dose', unit: '' },
    { name: 'found', unit: '' },
    { name: 'from', unit: '' },
    { name: 'to', unit: '' },
    { name: 'unit', unit: '' },
    { name: 'says', unit: '' },
    { name: 'source', unit: '' },
    { name: 'checked', unit: '' },
  ],
  rows: [
    LOW_VOLUME,
    HIGH_VOLUME,
    finding('strength', 'high over low weekly sets', [0.18, 0.06, 0.3], EFFECT, 'p = 0.003', RALSTON_2017),
    finding('strength', '1 day a week', [0.74], EFFECT, 'before to after', GRGIC_2018),
    finding('strength', '2 days a week', [0.82], EFFECT, 'before to after', GRGIC_2018),
    finding('strength', '3 days a week', [0.93], EFFECT, 'before to after', GRGIC_2018),
    finding('strength', '4 days a week and more', [1.08], EFFECT, 'before to after', GRGIC_2018),
    finding('strength', 'days a week at equal volume', [null], '', 'no effect of frequency', remembered(GRGIC_2018)),
    finding(
      'strength',
      'many over few days a week',
      [0.09, -0.06, 0.24],
      EFFECT,
      'not significant; none at equal volume',
      RALSTON_2018,
    ),
    finding(
      'strength',
      'untrained: 60 % of the maximum, 3 days a week',
      [4],
      'sets of a muscle group and session',
      'largest gain',
      RHEA_2003,
    ),
    finding(
      'strength',
      'trained: 80 % of the maximum, 2 days a week',
      [4],
      'sets of a muscle group and session',
      'largest gain',
      RHEA_2003,
    ),
    finding(
      'strength',
      'athletes: 85 % of the maximum, 2 days a week',
      [8],
      'sets of a muscle group and session',
      'largest gain',
      remembered(PETERSON_2004),
    ),
    finding('size', 'each weekly set more', [0.023], EFFECT, 'p = 0.002', SCHOENFELD_2017),
    finding('size', 'each weekly set more', [0.37], '% of muscle size', 'the same, as a gain', SCHOENFELD_2017),
    finding(
      'size',
      'higher over lower volume',
      [3.9],
      '% of muscle size',
      'effect size 0.241, p = 0.03',
      SCHOENFELD_2017,
    ),
    finding(
      'size',
      'under 5 weekly sets',
      [5.4],
      '% of muscle size',
      'trend over three classes, p = 0.074',
      remembered(SCHOENFELD_2017),
    ),
    finding(
      'size',
      '5 to 9 weekly sets',
      [6.6],
      '% of muscle size',
      'trend over three classes, p = 0.074',
      remembered(SCHOENFELD_2017),
    ),
    finding(
      'size',
      '10 weekly sets and more',
      [9.8],
      '% of muscle size',
      'trend over three classes, p = 0.074',
      remembered(SCHOENFELD_2017),
    ),
    finding(
      'counting',
      'a set that trains the muscle indirectly',
      [0.5],
      'of a direct set',
      'best supported of three ways to count',
      PELLAND_2024,
    ),
    finding(
      'strength',
      'more weekly sets',
      [null],
      '',
      'gains grow with diminishing returns, far more so for strength than for size',
      PELLAND_2024,
    ),
    finding(
      'critique',
      'early pooled studies',
      [null],
      '',
      'errors of mathematics and statistics are listed',
      OTTO_CARPINELLI_2006,
    ),
  ],
  cells: ({ outcome, dose, found, low, high, unit, says, source }) => [
    outcome,
    dose,
    found,
    low,
    high,
    unit,
    says,
    authorsAndYear(source),
    source.status,
  ],
};

export interface WeeklyTarget {
  readonly of: 'lower body' | 'upper body' | 'calf' | 'trunk' | 'grip';
  readonly sets: readonly [number, number];
  readonly days: readonly [number, number] | null;
  readonly says: string;
}

export const WEEKLY_TARGETS: SourcedTable<WeeklyTarget> = {
  record: {
    id: 'dose/weekly-targets',
    revision: 1,
    title: 'Weekly sets to plan for',
    source: OUR_OWN_DESIGN,
    restsOn: [RALSTON_2017, SCHOENFELD_2017, PELLAND_2024],
    doesNotKnow:
      'This person’s needs. The numbers are our own practice defaults and editable. To keep what is there a third of the sets is enough on the ground, if the load is kept; no such number is known for flight.',
  },
  columns: [
    { name: 'of', unit: '' },
    { name: 'sets from', unit: 'a week' },
    { name: 'sets to', unit: 'a week' },
    { name: 'days from', unit: 'a week' },
    { name: 'days to', unit: 'a week' },
    { name: 'says', unit: '' },
  ],
  rows: [
    { of: 'lower body', sets: [8, 12], days: [2, 3], says: '75 to 85 % of the maximum' },
    { of: 'upper body', sets: [6, 10], days: [2, 2], says: '75 to 85 % of the maximum' },
    { of: 'calf', sets: [8, 12], days: null, says: '' },
    { of: 'trunk', sets: [6, 8], days: null, says: '' },
    { of: 'grip', sets: [6, 10], days: null, says: 'with intervals at a part of critical force' },
  ],
  cells: ({ of, sets, days, says }) => [of, ...sets, days?.[0] ?? null, days?.[1] ?? null, says],
};
