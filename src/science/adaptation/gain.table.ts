import { authorsAndYear } from '../cited.ts';
import type { Source } from '../formula.ts';
import type { SourcedTable } from '../sourced-table.ts';
import { COMMON_PRACTICE, KRAEMER_2002, MAYHEW_2008, OUR_OWN_DESIGN, RATAMESS_2009 } from '../sources.ts';
import { GAINS_PREPRINT, HUBAL_2005, LATELLA_2020, STEELE_2022 } from './sources.ts';

/** How fast people gained, and by how much loads are raised. */

interface Gain {
  readonly whom: string;
  readonly people: number | null;
  readonly over: string;
  /** [unit] */
  readonly gain: number;
  readonly upTo: number | null;
  readonly sd: number | null;
  readonly unit: string;
  readonly source: Source;
}

const FROM_MEMORY = 'from memory';
/** Where a number of a paper that was seen is remembered only. */
const remembered = (source: Source): Source => ({ ...source, status: FROM_MEMORY });

const gain = (
  whom: string,
  people: number | null,
  over: string,
  [value, upTo, sd]: readonly [number, (number | null)?, (number | null)?],
  unit: string,
  source: Source,
): Gain => ({ whom, people, over, gain: value, upTo: upTo ?? null, sd: sd ?? null, unit, source });

const FOUR_WEEKS_TO_TWO_YEARS = '4 weeks to 2 years';

export const RATES_OF_GAIN: SourcedTable<Gain> = {
  record: {
    id: 'gain/rates',
    revision: 1,
    title: 'Gains of strength, as published',
    source: KRAEMER_2002,
    restsOn: [HUBAL_2005, MAYHEW_2008, STEELE_2022, LATELLA_2020, GAINS_PREPRINT],
    doesNotKnow: 'This person: twelve weeks of one and the same training brought from nothing to 250 %.',
  },
  columns: [
    { name: 'people', unit: '' },
    { name: 'number', unit: '' },
    { name: 'over', unit: '' },
    { name: 'gain', unit: '' },
    { name: 'to', unit: '' },
    { name: 'standard deviation', unit: '' },
    { name: 'unit', unit: '' },
    { name: 'source', unit: '' },
    { name: 'checked', unit: '' },
  ],
  rows: [
    gain('untrained', null, FOUR_WEEKS_TO_TWO_YEARS, [40], '%', remembered(KRAEMER_2002)),
    gain('moderately trained', null, FOUR_WEEKS_TO_TWO_YEARS, [20], '%', remembered(KRAEMER_2002)),
    gain('trained', null, FOUR_WEEKS_TO_TWO_YEARS, [16], '%', remembered(KRAEMER_2002)),
    gain('advanced', null, FOUR_WEEKS_TO_TWO_YEARS, [10], '%', remembered(KRAEMER_2002)),
    gain('elite', null, FOUR_WEEKS_TO_TWO_YEARS, [2], '%', remembered(KRAEMER_2002)),
    gain('untrained, arm curl', 585, '12 weeks', [0, 250], '%', HUBAL_2005),
    gain('untrained, arm curl, mean', 585, '12 weeks', [54], '%', remembered(HUBAL_2005)),
    gain('untrained young women, bench press', 103, '12 weeks', [28, null, 21], '%', MAYHEW_2008),
    gain('one short session a week', 14_690, '1 year', [30, 50], '%', STEELE_2022),
    gain('one short session a week', 14_690, '6 years', [50, 60], '%', STEELE_2022),
    gain('all levels, squat, bench press, deadlift', 4357, '1 week', [1.6], 'kg', GAINS_PREPRINT),
    gain('competing power lifters, men, sum of three lifts', null, '1 day', [0.15, null, 0.44], 'kg', LATELLA_2020),
    gain('competing power lifters, women, sum of three lifts', null, '1 day', [0.12, null, 0.69], 'kg', LATELLA_2020),
    gain('competing power lifters, strongest quarter', null, '1 day', [0.102], 'kg', LATELLA_2020),
    gain('competing power lifters, weakest quarter', null, '1 day', [0.211], 'kg', LATELLA_2020),
  ],
  cells: ({ whom, people, over, gain: value, upTo, sd, unit, source }) => [
    whom,
    people,
    over,
    value,
    upTo,
    sd,
    unit,
    authorsAndYear(source),
    source.status,
  ],
};

interface Progression {
  readonly rule: string;
  readonly value: string;
  readonly source: Source;
}

export const PROGRESSION_RULES: SourcedTable<Progression> = {
  record: {
    id: 'gain/progression-rules',
    revision: 1,
    title: 'How loads are raised',
    source: RATAMESS_2009,
    restsOn: [KRAEMER_2002],
    doesNotKnow: 'The person. Nothing here raises a load: a named person’s signature does.',
  },
  columns: [
    { name: 'rule', unit: '' },
    { name: 'value', unit: '' },
    { name: 'source', unit: '' },
    { name: 'checked', unit: '' },
  ],
  rows: [
    { rule: 'Step after one or two repetitions over the target', value: '2 to 10 %', source: RATAMESS_2009 },
    { rule: 'Default step, lower body', value: '5 %', source: OUR_OWN_DESIGN },
    { rule: 'Default step, upper body', value: '2.5 %', source: OUR_OWN_DESIGN },
    { rule: 'Novices: most of a week, lower body', value: '5 %', source: COMMON_PRACTICE },
    { rule: 'Novices: most of a week, upper body', value: '2.5 to 5 %', source: COMMON_PRACTICE },
    { rule: 'Novices: loads', value: '8 to 12 repetitions, 2 or 3 days a week', source: RATAMESS_2009 },
    { rule: 'Intermediate: days a week', value: '3 or 4', source: RATAMESS_2009 },
    { rule: 'Advanced: days a week', value: '4 or 5', source: RATAMESS_2009 },
  ],
  cells: ({ rule, value, source }) => [rule, value, authorsAndYear(source), source.status],
};
