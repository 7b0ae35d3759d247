import { authorsAndYear } from '../cited.ts';
import type { Source } from '../formula.ts';
import type { SourcedTable } from '../sourced-table.ts';
import { ENGLISH_2015, PLOUTZ_SNYDER_2018, SCOTT_2023 } from '../sources.ts';
import { percentChange, sdOfStandardError } from './change.ts';
import {
  DE_BOER_2007,
  GOPALAKRISHNAN_2010,
  KOPPELMANS_2018,
  KORYAK_2017,
  KRAMER_2021,
  LEBLANC_2000_MUSCLE,
  MARUSIC_2021,
  MCNAMARA_2019,
  MUIR_2011,
  TRAPPE_2009,
} from './sources.ts';

/** What was lost, of whom, after how long. Losses are below zero. */

export interface MeasuredLoss {
  readonly measure: string;
  readonly training: string;
  readonly people: number | null;
  readonly days: readonly [first: number, last: number];
  /** Mean, or the smaller of a range [%]. */
  readonly change: number;
  /** The larger of a range [%]; null where one value was printed. */
  readonly upTo: number | null;
  /** Between people [percentage points]. */
  readonly sd: number | null;
  readonly source: Source;
}

type More = Partial<Pick<MeasuredLoss, 'upTo' | 'sd'>>;

/** Rows of one study, which share everything but what was measured. */
const study = (
  source: Source,
  training: string,
  people: number | null,
  days: MeasuredLoss['days'],
  measured: readonly (readonly [measure: string, change: number, more?: More])[],
): readonly MeasuredLoss[] =>
  measured.map(([measure, change, { upTo = null, sd = null } = {}]) => ({
    measure,
    training,
    people,
    days,
    change,
    upTo,
    sd,
    source,
  }));

const COLUMNS = [
  { name: 'measure', unit: '' },
  { name: 'training', unit: '' },
  { name: 'people', unit: '' },
  { name: 'days', unit: 'd' },
  { name: 'change', unit: '%' },
  { name: 'to', unit: '%' },
  { name: 'standard deviation', unit: '%' },
  { name: 'source', unit: '' },
  { name: 'checked', unit: '' },
] as const;

const cells: SourcedTable<MeasuredLoss>['cells'] = ({ days: [first, last], ...row }) => [
  row.measure,
  row.training,
  row.people,
  first === last ? first : `${first} to ${last}`,
  row.change,
  row.upTo,
  row.sd,
  authorsAndYear(row.source),
  row.source.status,
];

const EARLY = 'before heavy resistive machines';

export const FLIGHT_LOSSES: SourcedTable<MeasuredLoss> = {
  record: {
    id: 'loss/long-flights',
    revision: 1,
    title: 'Muscle and strength lost in flight',
    source: ENGLISH_2015,
    restsOn: [SCOTT_2023, LEBLANC_2000_MUSCLE, GOPALAKRISHNAN_2010, TRAPPE_2009, KORYAK_2017, MCNAMARA_2019],
    doesNotKnow:
      'What anybody will lose: between people the change ran from −30 to +5 % under some 600 minutes of exercise a week. How many repetitions anybody lifted in flight is no test of strength: loads rose while isokinetic strength fell.',
  },
  columns: COLUMNS,
  rows: [
    ...study(
      LEBLANC_2000_MUSCLE,
      EARLY,
      16,
      [112, 196],
      [['muscle volume, all groups but the neck', -5, { upTo: -17 }]],
    ),
    ...study(LEBLANC_2000_MUSCLE, EARLY, 4, [17, 17], [['muscle volume', -3, { upTo: -10 }]]),
    ...study(
      GOPALAKRISHNAN_2010,
      'early resistive machine',
      4,
      [166, 196],
      [
        ['calf volume', -10, { upTo: -16 }],
        ['thigh volume', -4, { upTo: -7 }],
        ['upper arm volume', 0.4, { upTo: -0.8 }],
        ['knee strength', -10.4, { upTo: -24.1 }],
        ['ankle strength', -4, { upTo: -22.3 }],
        ['elbow strength', -7.5, { upTo: -16.7 }],
        ['total work of the knee', -14],
      ],
    ),
    ...study(
      TRAPPE_2009,
      'early resistive machine',
      9,
      [180, 180],
      [
        ['calf volume (± 2 as printed)', -13],
        ['calf peak power (± 5 as printed)', -32],
        ['calf force at given velocities', -20, { upTo: -29 }],
      ],
    ),
    ...study(
      KORYAK_2017,
      'aerobic and elastic',
      7,
      [180, 180],
      [
        ['plantar flexion, voluntary', -41.7],
        ['plantar flexion, evoked', -25.6],
      ],
    ),
    ...study(
      ENGLISH_2015,
      'early and heavy machines',
      37,
      [125, 201],
      [
        ['isokinetic strength, some five days after landing', -8, { upTo: -17 }],
        ['isokinetic strength, a month after landing', -1, { upTo: -9 }],
      ],
    ),
    ...study(SCOTT_2023, 'some 600 min a week', 46, [130, 226], [['single people, several systems', 5, { upTo: -30 }]]),
    ...study(
      MCNAMARA_2019,
      'early resistive machine',
      16,
      [120, 180],
      [
        ['quadratus lumborum volume', -9.5, { sd: sdOfStandardError(2, 16) }],
        ['paraspinal volume', -5.3, { sd: sdOfStandardError(1, 16) }],
        ['psoas volume', 0],
      ],
    ),
  ],
  cells,
};

export const BED_REST_LOSSES: SourcedTable<MeasuredLoss> = {
  record: {
    id: 'loss/bed-rest',
    revision: 1,
    title: 'Strength lost in bed',
    source: MARUSIC_2021,
    restsOn: [KOPPELMANS_2018, MUIR_2011, KRAMER_2021, PLOUTZ_SNYDER_2018],
    doesNotKnow: 'Weightlessness itself: a bed still presses, and nobody in it works.',
  },
  columns: COLUMNS,
  rows: [
    ...study(
      MARUSIC_2021,
      'none',
      10,
      [5, 5],
      [
        ['knee extension, first study', -8.6],
        ['knee extensor area, first study', -2.2],
      ],
    ),
    ...study(MARUSIC_2021, 'none', 12, [5, 5], [['knee extension, second study', -4.1]]),
    ...study(
      MARUSIC_2021,
      'none',
      11,
      [10, 10],
      [
        ['knee extension, third study', -14.5],
        ['knee extensor area, third study', -3.6],
      ],
    ),
    ...study(MARUSIC_2021, 'none', 8, [14, 14], [['knee extension, fourth study', -14.5]]),
    ...study(
      KRAMER_2021,
      'none',
      8,
      [60, 60],
      [
        ['jump power', -33],
        ['plantar flexion', -48],
      ],
    ),
    ...study(
      KOPPELMANS_2018,
      'none',
      5,
      [70, 70],
      [
        ['knee extension', -20.3],
        ['leg press, total work', -20],
        ['jump over body mass', -20.1],
        ['soleus area', -24.8],
      ],
    ),
    ...study(
      KOPPELMANS_2018,
      'resistive and aerobic',
      13,
      [70, 70],
      [
        ['knee extension', -3],
        ['leg press, total work', -1.2],
        ['jump over body mass', -5.4],
        ['soleus area', -8.1],
      ],
    ),
    // Means before and after in foot-pounds.
    ...study(
      MUIR_2011,
      'none',
      null,
      [90, 90],
      [
        ['knee extension, 60°/s', percentChange(109, 81)],
        ['knee flexion, 60°/s', percentChange(64, 51)],
        ['plantar flexion, 30°/s', percentChange(72.5, 52.9)],
        ['plantar flexion, eccentric 30°/s', percentChange(108, 74.8)],
        ['back extension, 60°/s', percentChange(249, 218)],
      ],
    ),
  ],
  cells,
};

export const ONE_LEG_LOSSES: SourcedTable<MeasuredLoss> = {
  record: {
    id: 'loss/one-leg-unloaded',
    revision: 1,
    title: 'Strength lost by one leg that hung unloaded',
    source: DE_BOER_2007,
    doesNotKnow: 'Women, and anybody over thirty.',
  },
  columns: COLUMNS,
  rows: [
    ...study(DE_BOER_2007, 'none', 9, [14, 14], [['knee extension', -14.8, { sd: 5.5 }]]),
    ...study(DE_BOER_2007, 'none', 9, [23, 23], [['knee extension', -21, { sd: 7.1 }]]),
  ],
  cells,
};
