import type { SourcedTable } from '../sourced-table.ts';
import type { Source, SourceStatus } from '../formula.ts';
import { COMMON_PRACTICE, OUR_OWN_DESIGN } from '../sources.ts';
import { ANDERSSON_2017, LEVERNIER_LAFFAYE_2017, MCCLEAN_2023 } from './sources.ts';

interface Dose {
  readonly quality: string;
  readonly exercise: string;
  readonly dose: string;
  readonly often: string;
  readonly source: Source;
}

const status = ({ status: known }: Source): SourceStatus => known;

export const handTraining: SourcedTable<Dose> = {
  record: {
    id: 'hand/training',
    revision: 1,
    title: 'Training of hand and forearm for work in a suit',
    source: COMMON_PRACTICE,
    restsOn: [LEVERNIER_LAFFAYE_2017, MCCLEAN_2023, OUR_OWN_DESIGN],
    doesNotKnow:
      'Whether any of it carries over to a pressurised glove: only the finger holds come from a study, in climbers. All-out tests are repeated every four weeks at most, with the same hand, span of the handle and time of day.',
  },
  columns: [
    { name: 'Quality', unit: '' },
    { name: 'Exercise', unit: '' },
    { name: 'Dose', unit: '' },
    { name: 'How often', unit: '' },
    { name: 'Status', unit: '' },
  ],
  rows: [
    {
      quality: 'Grip maximum',
      exercise: 'isometric crush, or hold of a thick handle',
      dose: '3 to 5 × 5 to 10 s at 85 to 95 % of the maximum, 2 to 3 min rest',
      often: '2 a week',
      source: COMMON_PRACTICE,
    },
    {
      quality: 'Finger maximum',
      exercise: 'isometric holds, half crimp; four weeks gave +8 % in one grip in trained climbers',
      dose: '4 to 6 × 6 to 10 s',
      often: '2 to 3 a week',
      source: LEVERNIER_LAFFAYE_2017,
    },
    {
      quality: 'Critical force',
      exercise: '7 s on and 3 s off',
      dose: '4 to 6 sets of 6 to 10 at 90 to 110 % of critical force, 2 to 3 min rest',
      often: '2 a week',
      source: COMMON_PRACTICE,
    },
    {
      quality: 'Capacity below critical force',
      exercise: 'as long on as off',
      dose: '2 to 3 × 8 to 12 min at 70 to 85 % of the critical force to plan with',
      often: '1 to 2 a week',
      source: COMMON_PRACTICE,
    },
    {
      quality: 'In the suit',
      exercise: 'closing against resistance in the shape of a glove; turning tools in a glove box or suit',
      dose: '10 to 20 min at force and cycle of the task',
      often: '1 a week in the last 6 to 8 weeks',
      source: COMMON_PRACTICE,
    },
    {
      quality: 'Balance',
      exercise: 'finger extension with a band; wrist both ways; forearm both ways',
      dose: '2 to 3 × 12 to 20',
      often: '2 to 3 a week',
      source: COMMON_PRACTICE,
    },
    {
      quality: 'Taper',
      exercise: 'no heavy grip',
      dose: 'the last 48 to 72 h before a space walk or suited training',
      often: 'each time',
      source: COMMON_PRACTICE,
    },
    {
      quality: 'Progress',
      exercise: 'intervals at critical force',
      dose: '+5 % of force when all repetitions of all sets lay within 5 % of target twice running',
      often: 'as earned, by signature',
      source: OUR_OWN_DESIGN,
    },
    {
      quality: 'Retest',
      exercise: 'all-out test',
      dose: 'a change of critical force under 21 % is not distinguishable from test noise',
      often: 'every 4 weeks',
      source: MCCLEAN_2023,
    },
  ],
  cells: ({ quality, exercise, dose, often, source }) => [quality, exercise, dose, often, status(source)],
};

interface ShoulderDose {
  readonly what: string;
  readonly dose: string;
  readonly source: Source;
}

export const shoulderTraining: SourcedTable<ShoulderDose> = {
  record: {
    id: 'shoulder/training',
    revision: 1,
    title: 'Training of the shoulder for work in a suit',
    source: COMMON_PRACTICE,
    restsOn: [ANDERSSON_2017],
    doesNotKnow:
      'Suits: the evidence is from throwing. In 660 players a warm-up three times a week lowered shoulder problems from 23 to 17 %, substantial ones from 8 to 5 %.',
  },
  columns: [
    { name: 'What', unit: '' },
    { name: 'Dose', unit: '' },
    { name: 'Status', unit: '' },
  ],
  rows: [
    {
      what: 'Warm-up: range of internal rotation, strength of external rotation and shoulder blade, mobility of the upper back',
      dose: '3 a week',
      source: ANDERSSON_2017,
    },
    {
      what: 'External rotation bent over, and at 90° of abduction',
      dose: '3 × 8 to 16, 3 a week',
      source: COMMON_PRACTICE,
    },
    { what: 'Rows, Y and T of the shoulder blade', dose: '2 to 3 × 12 to 15, 3 a week', source: COMMON_PRACTICE },
    {
      what: 'Isometric external rotation in the plane of the shoulder blade, where it hurts',
      dose: '5 × 30 s',
      source: COMMON_PRACTICE,
    },
  ],
  cells: ({ what, dose, source }) => [what, dose, status(source)],
};
