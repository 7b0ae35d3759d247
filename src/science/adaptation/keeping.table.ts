import { authorsAndYear } from '../cited.ts';
import type { Source } from '../formula.ts';
import type { Cell, Column, SourcedTable } from '../sourced-table.ts';
import {
  BICKEL_2011,
  BOSQUET_2013,
  COMMON_PRACTICE,
  MUJIKA_PADILLA_2000,
  OUR_OWN_DESIGN,
  SPIERING_2021,
} from '../sources.ts';
import { DELOAD_INTERVIEWS, MCMASTER_2013, PRITCHARD_2015, TRAVIS_2020 } from './sources.ts';

/** What it takes to keep strength, what stopping costs, and how work is eased before a test. */

interface Finding {
  readonly what: string;
  readonly found: string;
  readonly source: Source;
}

const FINDING_COLUMNS: readonly Column[] = [
  { name: 'what', unit: '' },
  { name: 'found or done', unit: '' },
  { name: 'source', unit: '' },
  { name: 'checked', unit: '' },
];

const findingCells = ({ what, found, source }: Finding): readonly Cell[] => [
  what,
  found,
  authorsAndYear(source),
  source.status,
];

const remembered = (source: Source): Source => ({ ...source, status: 'from memory' });

export const LEAST_DOSE: SourcedTable<Finding> = {
  record: {
    id: 'keeping/least-dose',
    revision: 1,
    title: 'Least work that keeps strength',
    source: SPIERING_2021,
    restsOn: [BICKEL_2011],
    doesNotKnow:
      'Weightlessness: all findings are of people who walked about in 1 g the rest of the day. They are no minimum for a flight; the floors for a flight are our own and editable.',
  },
  columns: FINDING_COLUMNS,
  rows: [
    {
      what: 'One third or one ninth of the sets, 32 weeks, 20 to 35 years',
      found: 'muscle size kept, at one third some fibres still grew; strength kept',
      source: BICKEL_2011,
    },
    { what: 'The same, 60 to 75 years', found: 'muscle size not kept; strength largely kept', source: BICKEL_2011 },
    { what: 'No training, 32 weeks', found: 'strength largely kept', source: BICKEL_2011 },
    {
      what: 'One third is one day a week of three sets, one ninth one day of one set',
      found: 'after 16 weeks of three days a week',
      source: remembered(BICKEL_2011),
    },
    {
      what: 'Strength, younger people',
      found: 'one session a week, one set of an exercise, up to 32 weeks, if the relative load is kept',
      source: SPIERING_2021,
    },
    {
      what: 'Size, older people',
      found: 'up to two sessions a week of two or three sets, if the relative load is kept',
      source: SPIERING_2021,
    },
    {
      what: 'Endurance',
      found: 'two sessions a week, or a third to two thirds less volume, up to 15 weeks, if the heart rate is kept',
      source: SPIERING_2021,
    },
    { what: 'In flight: planned', found: 'at least three heavy sessions a week', source: OUR_OWN_DESIGN },
    {
      what: 'In flight: floor in a bad week',
      found:
        'two resistive sessions, lower body in each, two sets of an exercise at 80 % or more; three aerobic sessions, one of them intervals at 90 % of the maximal heart rate or more',
      source: OUR_OWN_DESIGN,
    },
  ],
  cells: findingCells,
};

export const STOPPING: SourcedTable<Finding> = {
  record: {
    id: 'keeping/stopping',
    revision: 1,
    title: 'What stopping costs',
    source: BOSQUET_2013,
    restsOn: [MUJIKA_PADILLA_2000, MCMASTER_2013],
    doesNotKnow: 'Percentages of a person: effect sizes are in standard deviations between people.',
  },
  columns: FINDING_COLUMNS,
  rows: [
    { what: 'Maximal force', found: 'effect size −0.46 (−0.54 to −0.37)', source: BOSQUET_2013 },
    { what: 'Submaximal strength', found: 'effect size −0.62', source: BOSQUET_2013 },
    { what: 'Maximal power', found: 'effect size −0.20', source: BOSQUET_2013 },
    { what: 'Longer, over 65 years, inactive', found: 'more', source: BOSQUET_2013 },
    { what: 'Strength within four weeks, highly trained', found: 'falls little', source: MUJIKA_PADILLA_2000 },
    { what: 'Trained people, up to two or three weeks', found: 'usually less than 5 %', source: MCMASTER_2013 },
    {
      what: 'Maximal oxygen uptake',
      found: '−4 to −14 % within four weeks, −6 to −20 % beyond',
      source: remembered(MUJIKA_PADILLA_2000),
    },
  ],
  cells: findingCells,
};

export const EASING: SourcedTable<Finding> = {
  record: {
    id: 'keeping/easing',
    revision: 1,
    title: 'Easing off: deloads, and tapers before a test',
    source: TRAVIS_2020,
    restsOn: [PRITCHARD_2015, DELOAD_INTERVIEWS],
    doesNotKnow: 'How tired this person is.',
  },
  columns: FINDING_COLUMNS,
  rows: [
    { what: 'Deload', found: '5 to 7 days every 4 to 6 weeks, less volume and less effort', source: DELOAD_INTERVIEWS },
    {
      what: 'Deload of the shipped flight programme',
      found: 'every fifth week, one set less and 10 % less load',
      source: OUR_OWN_DESIGN,
    },
    {
      what: 'Taper for maximal strength',
      found: '1 to 3 weeks, volume 30 to 70 % less, loads kept at 85 % or more',
      source: remembered(TRAVIS_2020),
    },
    {
      what: 'Taper for maximal strength',
      found: 'less volume, loads kept or a little higher',
      source: PRITCHARD_2015,
    },
    {
      what: 'Complete rest before a test',
      found: 'less than a week; 2 to 4 days seem best',
      source: PRITCHARD_2015,
    },
    { what: 'Last heavy squat before a test of the squat', found: '3 to 5 days', source: COMMON_PRACTICE },
  ],
  cells: findingCells,
};
