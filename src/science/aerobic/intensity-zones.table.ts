import type { SourcedTable } from '../sourced-table.ts';
import { ACSM_HANDBOOK, GARBER_2011 } from './sources.ts';

/**
 * Words for effort, by seven measures of it. A zone reaches from its own lower edge up to, but not into, the next one's,
 * so that every value has one zone: the printed 30–39 % is 0.30 up to 0.40.
 */

export const ZONE_NAMES = ['very light', 'light', 'moderate', 'vigorous', 'near maximal to maximal'] as const;
export type ZoneName = (typeof ZONE_NAMES)[number];

export interface IntensityMeasure {
  readonly measure: string;
  readonly unit: string;
  /** Lowest and highest value that can be. */
  readonly possible: readonly [number, number];
  /** Where light, moderate, vigorous and near maximal begin. */
  readonly begins: readonly [light: number, moderate: number, vigorous: number, nearMaximal: number];
}

const reserve = { unit: '1', possible: [-0.2, 1.3], begins: [0.3, 0.4, 0.6, 0.9] } as const;

export const INTENSITY_MEASURES = {
  heartRateReserve: { measure: 'fraction of the heart-rate reserve', ...reserve },
  uptakeReserve: { measure: 'fraction of the uptake reserve', ...reserve },
  maximalHeartRate: {
    measure: 'fraction of the maximal heart rate',
    unit: '1',
    possible: [0.1, 1.3],
    begins: [0.57, 0.64, 0.77, 0.96],
  },
  maximalUptake: {
    measure: 'fraction of the maximal uptake',
    unit: '1',
    possible: [0, 1.3],
    begins: [0.37, 0.46, 0.64, 0.91],
  },
  exertion: { measure: 'perceived exertion, 6 to 20', unit: 'points', possible: [6, 20], begins: [9, 12, 14, 18] },
  equivalentsTwenties: {
    measure: 'metabolic equivalents, 20 to 39 years',
    unit: 'MET',
    possible: [0, 29],
    begins: [2.4, 4.8, 7.2, 10.2],
  },
  equivalents: {
    measure: 'metabolic equivalents, adults in general',
    unit: 'MET',
    possible: [0, 29],
    begins: [2, 3, 6, 8.8],
  },
} as const satisfies Record<string, IntensityMeasure>;
export type IntensityMetric = keyof typeof INTENSITY_MEASURES;

const edges = ({ begins }: IntensityMeasure): readonly (string | number)[] => [
  `below ${begins[0]}`,
  `${begins[0]} up to ${begins[1]}`,
  `${begins[1]} up to ${begins[2]}`,
  `${begins[2]} up to ${begins[3]}`,
  `from ${begins[3]}`,
];

export const INTENSITY_ZONES: SourcedTable<IntensityMeasure> = {
  record: {
    id: 'intensity/zones',
    revision: 1,
    title: 'Zones of effort by seven measures',
    source: GARBER_2011,
    restsOn: [ACSM_HANDBOOK],
    doesNotKnow:
      'This person. The measures do not agree with each other at the edges, so a zone is told by one of them, never by a mean of several. Metabolic equivalents are the least sure: they ignore fitness.',
  },
  columns: [{ name: 'measure', unit: '' }, { name: 'in', unit: '' }, ...ZONE_NAMES.map((name) => ({ name, unit: '' }))],
  rows: Object.values(INTENSITY_MEASURES),
  cells: (row) => [row.measure, row.unit, ...edges(row)],
};
