import type { Source } from '../formula.ts';
import { shownTable, type SourcedTable } from '../sourced-table.ts';
import { OUR_OWN_DESIGN } from '../sources.ts';
import {
  BARGER_2014,
  FOSTER_2001,
  HELLARD_2006,
  IMPELLIZZERI_2020,
  IMPELLIZZERI_2021,
  LOLLI_2019_COUPLING,
  LOLLI_2019_SCALING,
  MARCHAL_2025,
} from './sources.ts';

/** What is published against scores of load, and what follows from it here. */

interface Critique {
  readonly against: string;
  readonly found: string;
  readonly so: string;
  readonly source: Source;
}

const CRITIQUES: readonly Critique[] = [
  {
    against: 'acute:chronic ratio',
    found: 'the week stands in its own divisor: unrelated weeks correlate by 0.5',
    so: 'both ways are shown, with the arithmetic beside them',
    source: LOLLI_2019_COUPLING,
  },
  {
    against: 'acute:chronic ratio',
    found: 'dividing does not take the chronic load out of the acute one',
    so: 'weekly load and its change come first',
    source: LOLLI_2019_SCALING,
  },
  {
    against: 'acute:chronic ratio',
    found:
      'odds ratio 2.45 (1.28 to 4.71); 1.95 (1.18 to 3.52) with a constant and 1.53 on average with random numbers for the chronic load; c-statistic 0.574, where 0.5 is no model',
    so: 'no zone of colours, no probability of injury',
    source: IMPELLIZZERI_2021,
  },
  {
    against: 'acute:chronic ratio',
    found: 'no evidence that steering it changes injury',
    so: 'no plan is changed by it',
    source: IMPELLIZZERI_2020,
  },
  {
    against: 'session load',
    found: 'within one person it follows heart-rate scores, with larger numbers; it cannot be exchanged for them',
    so: 'never compared between people',
    source: FOSTER_2001,
  },
  {
    against: 'gain and fatigue',
    found: 'wide bootstrap intervals and strongly correlated constants, although R² is 0.79 ± 0.13 (nine swimmers)',
    so: 'the whole region is shown, never one pair',
    source: HELLARD_2006,
  },
  {
    against: 'gain and fatigue',
    found: 'ill-conditioned; with fatigue it foretold no better than without (p > 0.40)',
    so: 'it must beat the last value and the mean, or it is off',
    source: MARCHAL_2025,
  },
  {
    against: 'daily questions and sleep',
    found: 'measured sleep on long flights is about six hours on average',
    so: 'no daily form and no rule on sleep',
    source: BARGER_2014,
  },
];

const table: SourcedTable<Critique> = {
  record: {
    id: 'load/critique',
    revision: 1,
    title: 'What is published against scores of load, and what follows',
    source: OUR_OWN_DESIGN,
    restsOn: CRITIQUES.map(({ source }) => source),
    doesNotKnow: 'Studies that appeared since, and whether any of this was looked at in weightless people: it was not.',
  },
  columns: [
    { name: 'score', unit: '' },
    { name: 'found', unit: '' },
    { name: 'so here', unit: '' },
    { name: 'source', unit: '' },
  ],
  rows: CRITIQUES,
  cells: ({ against, found, so, source }) => [against, found, so, source.text.split(')')[0] + ')'],
};

export const loadCritique = shownTable(table);
