import type { SourcedTable } from '../sourced-table.ts';
import type { Source, SourceStatus } from '../formula.ts';
import { FREY_LAW_2012, LOOFT_2018, LOOFT_2020, RAKSHIT_2021 } from './sources.ts';

/** What the three compartments need to know of a muscle. */
export interface FatigueConstants {
  /** How fast active muscle tires [1/s]. */
  readonly fatigue: number;
  /** How fast tired muscle comes back under load [1/s]. */
  readonly recovery: number;
  /** How many times faster it comes back at rest. */
  readonly restMultiplier: number;
}

interface PublishedConstants extends FatigueConstants {
  readonly of: string;
  readonly source: Source;
  readonly status: SourceStatus;
}

const row = (
  of: string,
  fatigue: number,
  recovery: number,
  restMultiplier: number,
  source: Source,
): PublishedConstants => ({ of, fatigue, recovery, restMultiplier, source, status: source.status });

/** Grip, fitted to sustained work; its rest multiplier was chosen later, for intermittent work of other joints. */
export const SUSTAINED_GRIP = row('grip, from sustained work', 0.0098, 0.00064, 30, FREY_LAW_2012);
/** Grip of men and women together. */
export const POOLED_GRIP = row('grip, all', 0.01235, 0.00135, 12.51, RAKSHIT_2021);

export const fatigueConstants: SourcedTable<PublishedConstants> = {
  record: {
    id: 'three-compartments/constants',
    revision: 1,
    title: 'Published constants of the three compartments',
    source: RAKSHIT_2021,
    restsOn: [FREY_LAW_2012, LOOFT_2018, LOOFT_2020],
    doesNotKnow:
      'Anybody in particular: fits to means of studies. The two sets for grip give limits of 0.48 and 0.41 at 7 s on and 3 s off. A rest multiplier of 30 for the hand comes from a note; other joints got 15.',
  },
  columns: [
    { name: 'Of', unit: '' },
    { name: 'F', unit: '1/s' },
    { name: 'R', unit: '1/s' },
    { name: 'r', unit: '1' },
    { name: 'Source', unit: '' },
    { name: 'How far checked', unit: '' },
  ],
  rows: [
    SUSTAINED_GRIP,
    POOLED_GRIP,
    row('grip, men', 0.01238, 0.00178, 8, RAKSHIT_2021),
    row('grip, women', 0.01159, 0.00217, 7.39, RAKSHIT_2021),
    row('all muscles of the hand', 0.01227, 0.00134, 9.1, RAKSHIT_2021),
    row('muscle in general', 0.0097, 0.00091, 15, FREY_LAW_2012),
  ],
  cells: ({ of, fatigue, recovery, restMultiplier, source, status }) => [
    of,
    fatigue,
    recovery,
    restMultiplier,
    source.text.slice(0, source.text.indexOf(')') + 1),
    status,
  ],
};
