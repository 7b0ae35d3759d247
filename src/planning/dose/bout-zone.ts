import { fraction } from '#units/quantity.ts';
import { enduranceOn } from '#assessing/endurance.ts';
import type { CardBout } from '#domain/card.ts';
import type { Known } from '#domain/known.ts';
import type { Day } from '#units/day.ts';
import { intensityZone } from '#science/aerobic/intensity-zone.ts';
import { ZONE_NAMES, type ZoneName } from '#science/aerobic/intensity-zones.table.ts';

/** Of 10: where light, moderate, vigorous and near maximal begin (5 to 6 moderate, 7 to 8 vigorous: common practice). */
const EFFORT_BEGINS = [3, 5, 7, 9] as const;

/** The zone of a bout: by its heart rate where the person's greatest one is tested, else by how it should feel. */
export type ZoneOfBout = (bout: CardBout) => ZoneName;

export const zoneReader = (known: Known, on: Day): ZoneOfBout => {
  const { maximalRate, restingRate } = enduranceOn(known, on);
  return (bout) => {
    if (bout.heartRate && maximalRate) {
      const rate = middle(bout.heartRate);
      const found =
        restingRate && maximalRate.value > restingRate.value
          ? intensityZone(
              'heartRateReserve',
              fraction((rate - restingRate.value) / (maximalRate.value - restingRate.value)),
            )
          : intensityZone('maximalHeartRate', fraction(rate / maximalRate.value));
      if (found.kind === 'zone') return found.name;
    }
    const effort = middle(bout.rpe);
    return ZONE_NAMES[EFFORT_BEGINS.filter((edge) => effort >= edge).length] ?? 'moderate';
  };
};

const middle = ([low, high]: readonly [number, number]): number => (low + high) / 2;
