import { method } from '../method.ts';
import { spaced, type Curve } from '../plot.ts';
import { heartRate, fraction } from '#units/quantity.ts';
import { refused, type Refused } from './estimate.ts';
import { maximalRateTanaka } from './maximal-rate-of-age.ts';
import {
  INTENSITY_MEASURES,
  ZONE_NAMES,
  type IntensityMeasure,
  type IntensityMetric,
  type ZoneName,
} from './intensity-zones.table.ts';
import { targetHeartRate } from './effort-reserve.ts';
import { ACSM_HANDBOOK, GARBER_2011 } from './sources.ts';

/** Which zone a value is in, by one stated measure. */

export interface IntensityZone {
  readonly kind: 'zone';
  readonly name: ZoneName;
  readonly measure: string;
  /** The edge at which it begins; the lowest zone has none. */
  readonly from?: number;
  /** The edge that is no longer in it; the highest zone has none. */
  readonly upTo?: number;
}

/** The bounds of a zone by one measure. */
export const boundsOfZone = (
  { begins }: IntensityMeasure,
  zone: ZoneName,
): { readonly from?: number; readonly upTo?: number } => {
  const place = ZONE_NAMES.indexOf(zone);
  const [from, upTo] = [begins[place - 1], begins[place]];
  return { ...(from === undefined ? {} : { from }), ...(upTo === undefined ? {} : { upTo }) };
};

const REST = heartRate(60);
const [EASIEST, HARDEST] = [0, 1];

/** A zone of the heart-rate reserve as a band over the age, for a resting rate of 60. */
const bandOf = (name: ZoneName): Curve => {
  const { from = EASIEST, upTo = HARDEST } = boundsOfZone(INTENSITY_MEASURES.heartRateReserve, name);
  const at = (part: number, years: number): number => targetHeartRate(fraction(part), REST, maximalRateTanaka(years));
  const years = spaced(20, 70, 26);
  return {
    label: name,
    points: years.map((x) => [x, at((from + upTo) / 2, x)] as const),
    band: years.map((x) => [at(from, x), at(upTo, x)] as const),
  };
};

/** The zone of a value by one measure. */
export const intensityZone = method(
  {
    id: 'intensity/zone',
    revision: 1,
    title: 'Zone of effort by one stated measure',
    equations: ['the zone whose edges hold: from ≤ value < up to'],
    inputs: Object.values(INTENSITY_MEASURES).map(({ measure, unit, possible }) => ({
      name: measure,
      symbol: 'x',
      unit,
      possible,
      valid: possible,
    })),
    outputs: [{ name: 'zone', symbol: 'zone', unit: 'words' }],
    refuses: ['A value that its measure cannot have.'],
    source: GARBER_2011,
    restsOn: [ACSM_HANDBOOK],
    doesNotKnow: 'What the other measures say: they often differ by a zone at the edges.',
    plot: {
      says: 'Zones of the heart-rate reserve for a resting rate of 60 and a maximum predicted from age: one person may lie ten beats off all of it.',
      x: { name: 'age', unit: 'years' },
      y: { name: 'heart rate', unit: '1/min' },
      curves: (): readonly Curve[] => ZONE_NAMES.map(bandOf),
    },
  },
  (metric: IntensityMetric, value: number): IntensityZone | Refused => {
    const measure: IntensityMeasure = INTENSITY_MEASURES[metric];
    const [low, high] = measure.possible;
    if (!(value >= low && value <= high))
      return refused(`The ${measure.measure} must lie in ${low} to ${high} ${measure.unit}; it is ${value}.`);
    const passed = measure.begins.filter((edge) => value >= edge).length;
    const name = ZONE_NAMES[passed] as ZoneName; // four edges make five zones
    return { kind: 'zone', name, measure: measure.measure, ...boundsOfZone(measure, name) };
  },
);
