import type { Source } from '../formula.ts';
import { timeConstantOfHalfLife, timeConstantOfLogTime, timeConstantOfTwo } from './recovery-curve.ts';
import { shownTable, type SourcedTable } from '../sourced-table.ts';
import { ENGLISH_2015, ENGLISH_2020, MOORE_2014, OUR_OWN_DESIGN, SCOTT_2023, SIBONGA_2007 } from '../sources.ts';
import { BALANCE_2023, MECK_2001, MULAVARA_2010, PALOSKI_1999, PETERSEN_2017 } from './sources.ts';

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
  /** Whose means the fact is. */
  readonly people: number;
  /** What else stands in this book for the same, and why it differs. */
  readonly elsewhere: string;
}

type Whose = Pick<RecoveryConstant, 'people'> & Partial<Pick<RecoveryConstant, 'elsewhere'>>;

const computed = (
  quality: string,
  fact: string,
  timeConstant: number,
  logSd: number,
  source: Source,
  { people, elsewhere = 'Nothing.' }: Whose,
): RecoveryConstant => ({
  quality,
  fact,
  timeConstant,
  logSd,
  made: 'computed from the fact',
  source,
  people,
  elsewhere,
});

const chosen = (...written: Parameters<typeof computed>): RecoveryConstant => ({
  ...computed(...written),
  made: 'our own design',
});

export const RECOVERY_CONSTANTS: readonly RecoveryConstant[] = [
  chosen(
    'Standing without fainting',
    'five of six could not finish a tilt on landing day; normal within days',
    2,
    0.5,
    MECK_2001,
    { people: 6 },
  ),
  chosen(
    'Standing balance, six conditions',
    'hardest condition −27 % after about six months; after short flights two phases of about 2.7 and 100 hours',
    4,
    0.5,
    BALANCE_2023,
    { people: 33 },
  ),
  computed(
    'Obstacle course',
    'time 48 % longer; 95 % recovered at about day 15',
    timeConstantOfLogTime(15, 1.48, 0.95),
    0.5,
    MULAVARA_2010,
    { people: 18 },
  ),
  computed(
    'Peak oxygen uptake',
    '−15 % on day 1, −2 % on day 30 (95 % interval −6 to +3)',
    timeConstantOfTwo(15, 2, 1, 30),
    0.4,
    MOORE_2014,
    {
      people: 14,
      elsewhere:
        'This is a half-life of 10.0 d. 6 d in projection/quantities: five people (Moore 2010) tested on days 1 and 10, in litres. Two small groups, and a second test after ten days against one after thirty: where the first days bring most back, the later test reads slower.',
    },
  ),
  computed(
    'Isokinetic strength, overall',
    '−8 to −17 % after landing, −1 to −9 % at one month: middles of 12.5 and 5 %, days 5 and 30',
    timeConstantOfTwo(12.5, 5, 5, 30),
    0.5,
    ENGLISH_2015,
    { people: 37, elsewhere: 'This is a half-life of 18.9 d. 21 d in recovery/half-lives, our own and rounded.' },
  ),
  computed(
    'Ankle plantar flexion',
    '134 N m before flight; 120, 123, 132 on days 5, 14, 30',
    timeConstantOfTwo((100 * 14) / 134, (100 * 2) / 134, 5, 30),
    0.5,
    ENGLISH_2020,
    { people: 17, elsewhere: 'This is a half-life of 8.9 d. 14 d in recovery/half-lives, our own and rounded up.' },
  ),
  computed(
    'Knee flexion, 60°/s',
    '113 N m before flight; 102, 103, 107 on days 5, 14, 30',
    timeConstantOfTwo((100 * 11) / 113, (100 * 6) / 113, 5, 30),
    0.6,
    ENGLISH_2020,
    {
      people: 17,
      elsewhere:
        'This is a half-life of 28.6 d. 28 d for the knee in recovery/half-lives; 43 d for its extension in projection/quantities.',
    },
  ),
  chosen(
    'Knee extension, 60°/s',
    '208 N m before flight; 194, 191, 195: flat to day 30, so nothing can be read from it',
    40,
    0.7,
    ENGLISH_2020,
    {
      people: 17,
      elsewhere:
        'This is a half-life of 27.7 d. 43 d in projection/quantities, from 26 people: the 9 who trained heavy and short are in it, of whom something can be read; 28 d in recovery/half-lives, our own.',
    },
  ),
  chosen('Jump power', 'not back on day 21 in one person', 25, 0.6, PETERSEN_2017, { people: 1 }),
  computed(
    'Bone density of the hip',
    'about half recovered by nine months (270 days)',
    timeConstantOfHalfLife(270),
    0.5,
    SIBONGA_2007,
    {
      people: 45,
      elsewhere:
        'This is a half-life of 270 d, of what was printed over all. 211 d for the femoral neck and 255 d for the trochanter in bone/recovery-half-lives: fits of the same study to single sites.',
    },
  ),
];

const table: SourcedTable<RecoveryConstant> = {
  record: {
    id: 'return/recovery-constants',
    revision: 2,
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
      'This person: changes over a flight ran from −30 to +5 % among 46 people who trained much alike. Most constants rest on two or three means of a group, and the spread of each is our own. A prior is no promise. A half-life is the time constant times ln(2); the law is recovery/part-left.',
  },
  columns: [
    { name: 'quality', unit: '' },
    { name: 'published', unit: '' },
    { name: 'time constant', unit: 'd' },
    { name: 'log standard deviation', unit: 'ln' },
    { name: 'constant is', unit: '' },
    { name: 'fact is', unit: '' },
    { name: 'people', unit: 'people' },
    { name: 'elsewhere in this book', unit: '' },
  ],
  rows: RECOVERY_CONSTANTS,
  cells: ({ quality, fact, timeConstant, logSd, made, source, people, elsewhere }) => [
    quality,
    fact,
    Number(timeConstant.toFixed(1)),
    logSd,
    made,
    source.status,
    people,
    elsewhere,
  ],
};

export const recoveryConstants = shownTable(table);
