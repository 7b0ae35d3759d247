import type { Source } from '../formula.ts';
import type { SourcedTable } from '../sourced-table.ts';
import { BALAS_2024, GILES_2019, GILES_2021, KELLAWAN_TSCHAKOVSKY_2014, KWAK_2023, MCCLEAN_2023 } from './sources.ts';

interface Finding {
  readonly what: string;
  readonly found: string;
  readonly people: string;
  readonly source: Source;
}

/** What is published on how well critical force of a hand is known. */
export const criticalForceFindings: SourcedTable<Finding> = {
  record: {
    id: 'critical-force/findings',
    revision: 1,
    title: 'How well the critical force of a hand is known, as published',
    source: MCCLEAN_2023,
    restsOn: [KELLAWAN_TSCHAKOVSKY_2014, BALAS_2024, KWAK_2023, GILES_2021, GILES_2019],
    doesNotKnow: 'People who do not climb, and the whole hand in a suit: most of it is fingers on an edge.',
  },
  columns: [
    { name: 'What', unit: '' },
    { name: 'Found', unit: '' },
    { name: 'People', unit: '' },
    { name: 'Source', unit: '' },
  ],
  rows: [
    {
      what: 'Critical force, test and retest, 24 × (7 s on, 3 s off)',
      found: 'ICC 0.85, CV 21.0 %, limits of agreement −62.6 to +58.1 %',
      people: '13 climbers',
      source: MCCLEAN_2023,
    },
    {
      what: 'Impulse above it, test and retest',
      found: 'ICC 0.82, CV 13.2 %, limits of agreement −40.5 to +30.9 %',
      people: '13 climbers',
      source: MCCLEAN_2023,
    },
    {
      what: 'Peak force, test and retest',
      found: 'ICC 0.94, CV 5.6 %, limits of agreement −17.2 to +14.6 %',
      people: '13 climbers',
      source: MCCLEAN_2023,
    },
    {
      what: 'Critical force of grip, 1 s on and 2 s off for 600 s',
      found: 'typical error 15.3 N or 5.5 %, ICC 0.94',
      people: '10 men',
      source: KELLAWAN_TSCHAKOVSKY_2014,
    },
    {
      what: 'Time to exhaustion predicted from it',
      found: 'r = 0.97, typical error 12 %',
      people: '10 men',
      source: KELLAWAN_TSCHAKOVSKY_2014,
    },
    {
      what: 'Grip maximum as a predictor of critical force',
      found: 'none: it has to be measured',
      people: '10 men',
      source: KELLAWAN_TSCHAKOVSKY_2014,
    },
    {
      what: 'Time held at the mean of the last three contractions',
      found: '440 ± 140 s; one of 12 reached 12 minutes; 38, 69 and 92 % did at 2, 4 and 6 kg less',
      people: '12 climbers',
      source: BALAS_2024,
    },
    {
      what: 'Critical force of a grip held without a break',
      found: '18.9 ± 2.5 % of the maximum, held for 10.1 ± 2.7 minutes',
      people: '10 women',
      source: KWAK_2023,
    },
    {
      what: 'Critical force in trained climbers',
      found: 'about 40 % of the maximum (from memory)',
      people: 'climbers',
      source: GILES_2019,
    },
    {
      what: 'The test of 24 contractions in one hand',
      found: 'feasible in one visit',
      people: '129 climbers',
      source: GILES_2021,
    },
  ],
  cells: ({ what, found, people, source: { text } }) => [what, found, people, text.slice(0, text.indexOf(')') + 1)],
};
