import type { Source } from '../formula.ts';
import { timeConstantOfHalfLife, timeConstantOfLogTime, timeConstantOfTwo } from './recovery-curve.ts';
import { shownTable, type SourcedTable } from '../sourced-table.ts';
import { ENGLISH_2020, MOORE_2014, OUR_OWN_DESIGN, SCOTT_2023, SIBONGA_2007 } from '../sources.ts';
import { BALANCE_2023, ENGLISH_2015, MECK_2001, MULAVARA_2010, PALOSKI_1999, PETERSEN_2017 } from './sources.ts';

/** What is published of recovery, and the time constant that is taken from it as the middle of a prior. */

export interface RecoveryConstant {
  readonly quality: string;
  readonly fact: string;
  /** Middle of the prior of the time constant [d]. */
  readonly timeConstant: number;
  /** Standard deviation of its logarithm: our own design throughout. */
  readonly logSd: number;
  /** How the constant came about. */
  readonly made: 'computed from the fact' | 'our own design';
  readonly source: Source;
}

const computed = (
  quality: string,
  fact: string,
  timeConstant: number,
  logSd: number,
  source: Source,
): RecoveryConstant => ({
  quality,
  fact,
  timeConstant,
  logSd,
  made: 'computed from the fact',
  source,
});

const chosen = (
  quality: string,
  fact: string,
  timeConstant: number,
  logSd: number,
  source: Source,
): RecoveryConstant => ({
  ...computed(quality, fact, timeConstant, logSd, source),
  made: 'our own design',
});

export const RECOVERY_CONSTANTS: readonly RecoveryConstant[] = [
  chosen(
    'Standing without fainting',
    'five of six could not finish a tilt on landing day; normal within days',
    2,
    0.5,
    MECK_2001,
  ),
  chosen(
    'Standing balance, six conditions',
    'hardest condition −27 % after about six months; after short flights two phases of about 2.7 and 100 hours',
    4,
    0.5,
    BALANCE_2023,
  ),
  computed(
    'Obstacle course',
    'time 48 % longer; 95 % recovered at about day 15',
    timeConstantOfLogTime(15, 1.48, 0.95),
    0.5,
    MULAVARA_2010,
  ),
  computed(
    'Peak oxygen uptake',
    '−15 % on day 1, −2 % on day 30 (95 % interval −6 to +3)',
    timeConstantOfTwo(15, 2, 1, 30),
    0.4,
    MOORE_2014,
  ),
  computed(
    'Isokinetic strength, overall',
    '−8 to −17 % after landing, −1 to −9 % at one month: middles of 12.5 and 5 %, days 5 and 30',
    timeConstantOfTwo(12.5, 5, 5, 30),
    0.5,
    ENGLISH_2015,
  ),
  computed(
    'Ankle plantar flexion',
    '134 N m before flight; 120, 123, 132 on days 5, 14, 30',
    timeConstantOfTwo((100 * 14) / 134, (100 * 2) / 134, 5, 30),
    0.5,
    ENGLISH_2020,
  ),
  computed(
    'Knee flexion, 60°/s',
    '113 N m before flight; 102, 103, 107 on days 5, 14, 30',
    timeConstantOfTwo((100 * 11) / 113, (100 * 6) / 113, 5, 30),
    0.6,
    ENGLISH_2020,
  ),
  chosen(
    'Knee extension, 60°/s',
    '208 N m before flight; 194, 191, 195: flat to day 30, so nothing can be read from it',
    40,
    0.7,
    ENGLISH_2020,
  ),
  chosen('Jump power', 'not back on day 21 in one person', 25, 0.6, PETERSEN_2017),
  computed(
    'Bone density of the hip',
    'about half recovered by nine months (270 days)',
    timeConstantOfHalfLife(270),
    0.5,
    SIBONGA_2007,
  ),
];

const table: SourcedTable<RecoveryConstant> = {
  record: {
    id: 'return/recovery-constants',
    revision: 1,
    title: 'Time constants of recovery, as priors',
    source: OUR_OWN_DESIGN,
    restsOn: [
      ENGLISH_2015,
      ENGLISH_2020,
      MOORE_2014,
      MULAVARA_2010,
      BALANCE_2023,
      PALOSKI_1999,
      MECK_2001,
      PETERSEN_2017,
      SIBONGA_2007,
      SCOTT_2023,
    ],
    doesNotKnow:
      'This person: changes over a flight ran from −30 to +5 % among 46 people who trained much alike. Most constants rest on two or three means of a group, and the spread of each is our own. A prior is no promise.',
  },
  columns: [
    { name: 'quality', unit: '' },
    { name: 'published', unit: '' },
    { name: 'time constant', unit: 'd' },
    { name: 'log standard deviation', unit: 'ln' },
    { name: 'constant is', unit: '' },
    { name: 'fact is', unit: '' },
  ],
  rows: RECOVERY_CONSTANTS,
  cells: ({ quality, fact, timeConstant, logSd, made, source }) => [
    quality,
    fact,
    Number(timeConstant.toFixed(1)),
    logSd,
    made,
    source.status,
  ],
};

export const recoveryConstants = shownTable(table);
