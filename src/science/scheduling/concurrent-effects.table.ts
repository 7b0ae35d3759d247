import { authorsAndYear } from '../cited.ts';
import type { Source } from '../formula.ts';
import type { SourcedTable } from '../sourced-table.ts';
import { EDDENS_2018, HICKSON_1980, MURLASITS_2017, ROBINEAU_2016, SCHUMANN_2022, WILSON_2012 } from './sources.ts';

/** What endurance work beside strength work was found to cost. */

export interface ConcurrentEffect {
  readonly quality: string;
  readonly compared: string;
  /** Effect of strength training alone, where it was printed. */
  readonly alone: number | null;
  /** Effect with endurance work, or the difference where only that was printed. */
  readonly found: number;
  readonly low: number | null;
  readonly high: number | null;
  readonly unit: 'effect size' | 'standardised difference' | 'kg' | '% of change';
  readonly source: Source;
}

const wilson = (quality: string, alone: number, found: number): ConcurrentEffect => ({
  quality,
  compared: 'strength alone, and with endurance',
  alone,
  found,
  low: null,
  high: null,
  unit: 'effect size',
  source: WILSON_2012,
});

const schumann = (quality: string, found: number, low: number, high: number): ConcurrentEffect => ({
  quality,
  compared: 'difference made by endurance beside strength',
  alone: null,
  found,
  low,
  high,
  unit: 'standardised difference',
  source: SCHUMANN_2022,
});

export const CONCURRENT_EFFECTS: SourcedTable<ConcurrentEffect> = {
  record: {
    id: 'scheduling/concurrent-effects',
    revision: 1,
    title: 'What endurance work costs strength work',
    source: WILSON_2012,
    restsOn: [SCHUMANN_2022, MURLASITS_2017, EDDENS_2018, ROBINEAU_2016, HICKSON_1980],
    doesNotKnow:
      'Weightless training. The older pooled study found that running harms and cycling does not; the newer one, with stricter comparisons, finds no difference of running and cycling, no loss of maximal strength or size, and a loss of explosive strength where both stand in one session and not where three hours lie between.',
  },
  columns: [
    { name: 'quality', unit: '' },
    { name: 'compared', unit: '' },
    { name: 'strength alone', unit: '' },
    { name: 'found', unit: '' },
    { name: 'from', unit: '' },
    { name: 'to', unit: '' },
    { name: 'unit', unit: '' },
    { name: 'source', unit: '' },
  ],
  rows: [
    wilson('maximal strength', 1.76, 1.44),
    wilson('size', 1.23, 0.85),
    wilson('power', 0.91, 0.55),
    schumann('maximal strength', -0.06, -0.2, 0.09),
    schumann('explosive strength', -0.28, -0.48, -0.08),
    schumann('size', -0.01, -0.16, 0.18),
    {
      quality: 'lower-body maximum',
      compared: 'strength before endurance, over the other order',
      alone: null,
      found: 3.96,
      low: 0.81,
      high: 7.1,
      unit: 'kg',
      source: MURLASITS_2017,
    },
    {
      quality: 'lower-body dynamic strength',
      compared: 'strength before endurance, over the other order',
      alone: null,
      found: 6.91,
      low: null,
      high: null,
      unit: '% of change',
      source: EDDENS_2018,
    },
  ],
  cells: ({ quality, compared, alone, found, low, high, unit, source }) => [
    quality,
    compared,
    alone,
    found,
    low,
    high,
    unit,
    authorsAndYear(source),
  ],
};

export interface SeparationFinding {
  readonly says: string;
  readonly source: Source;
}

export const SEPARATION_FINDINGS: SourcedTable<SeparationFinding> = {
  record: {
    id: 'scheduling/separation-findings',
    revision: 1,
    title: 'What hours between strength and endurance work change',
    source: ROBINEAU_2016,
    restsOn: [SCHUMANN_2022, HICKSON_1980, WILSON_2012],
    doesNotKnow: 'Gaps between three and six hours, and weightless training.',
  },
  columns: [
    { name: 'finding', unit: '' },
    { name: 'source', unit: '' },
  ],
  rows: [
    {
      says: 'Maximal bench press and half squat gained less with no hour between than with 6 or 24 hours, or strength alone; oxygen uptake gained most with 24 hours.',
      source: ROBINEAU_2016,
    },
    {
      says: 'Explosive strength lost more where both stood in one session than where at least 3 hours lay between.',
      source: SCHUMANN_2022,
    },
    {
      says: 'Strength five and endurance six days a week: as strong as strength alone for seven weeks, then falling in weeks nine and ten; oxygen uptake unharmed.',
      source: HICKSON_1980,
    },
    { says: 'The cost grows with the frequency and the duration of the endurance work.', source: WILSON_2012 },
  ],
  cells: ({ says, source }) => [says, authorsAndYear(source)],
};
