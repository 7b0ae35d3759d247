import { fraction, heartRate, oxygenUptake } from '#units/quantity.ts';
import type { CardBout } from '#domain/card.ts';
import type { Origin } from '#domain/working.ts';
import { askedBy, nothing, type BoutAt, type ByShare, type Reckoned } from './bout-at.ts';
import { GREATEST_RATE_OF_AGE, RATE_OF_GREATEST, RATE_OF_RESERVE, RATE_OF_UPTAKE } from './bout-reckonings.ts';
import { fillReckoning, fromReckoning, valueOf, type FilledReckoning, type Filling } from './filled-reckoning.ts';

/** The greatest heart rate of a person: tested, else by age. */
export interface GreatestRate {
  readonly value: number;
  readonly from: Origin;
}

export const greatestRate = ({ person: { maximalRate, age } }: BoutAt): Reckoned<GreatestRate | null> => {
  if (maximalRate) return nothing(maximalRate);
  if (!age) return nothing(null, 'No greatest heart rate and no birth date are known: effort leads.');
  const ofAge = fillReckoning(GREATEST_RATE_OF_AGE, { age: [age.value, age.from] });
  if (ofAge.kind === 'refused') return nothing(null, ...ofAge.reasons);
  return {
    value: { value: valueOf(ofAge, 'greatest heart rate'), from: fromReckoning(ofAge, 'greatest heart rate') },
    reckonings: [ofAge],
    says: ['Greatest heart rate by age, ± 10/min: where the band does not fit, effort leads.'],
  };
};

/** Heart rate that a bout aims at: the ends of its target, and the band that is held. */
export interface RateTarget {
  readonly filled: FilledReckoning;
  /** Of the two ends of the target [1/min]. */
  readonly middle: number;
}

/** Heart rate by an intensity, less a part that was backed off. */
export const rateTarget = (intensity: ByShare, at: BoutAt, backedOff: number | null): Reckoned<RateTarget | null> => {
  const greatest = greatestRate(at);
  if (!greatest.value) return nothing(null, ...greatest.says);
  const filling = fillRate(intensity, at, greatest.value, backedOff);
  if (typeof filling === 'string') return nothing(null, filling);
  if (filling.kind === 'refused') return nothing(null, ...filling.reasons, 'Effort leads.');
  return {
    value: { filled: filling, middle: (valueOf(filling, 'from') + valueOf(filling, 'to')) / 2 },
    reckonings: [...greatest.reckonings, filling],
    says: greatest.says,
  };
};

const fillRate = (
  intensity: ByShare,
  at: BoutAt,
  greatest: GreatestRate,
  backedOff: number | null,
): Filling | string => {
  const { restingRate, maximalUptake } = at.person;
  const off = 1 - (backedOff ?? 0);
  const from = askedBy(
    at,
    intensity,
    backedOff === null ? '' : `, ${Math.round(backedOff * 100)} % off by the back-off`,
  );
  const ends = {
    'target, low': [fraction(off * intensity.of.least), from],
    'target, high': [fraction(off * intensity.of.most), from],
    'greatest heart rate': [heartRate(greatest.value), greatest.from],
  } as const;
  if (intensity.kind === 'of greatest heart rate') return fillReckoning(RATE_OF_GREATEST, ends);
  if (!restingRate) return 'No resting heart rate is known: effort leads.';
  const rates = { ...ends, 'resting heart rate': [heartRate(restingRate.value), restingRate.from] } as const;
  if (intensity.kind === 'of heart-rate reserve') return fillReckoning(RATE_OF_RESERVE, rates);
  return maximalUptake
    ? fillReckoning(RATE_OF_UPTAKE, {
        ...rates,
        'greatest oxygen uptake': [oxygenUptake(maximalUptake.value), maximalUptake.from],
      })
    : 'No greatest oxygen uptake is known: effort leads.';
};

/** Whole beats, never over the greatest heart rate. */
export const rateBand = ({ filled }: RateTarget): NonNullable<CardBout['heartRate']> => [
  Math.round(valueOf(filled, 'lowest beat')),
  Math.floor(valueOf(filled, 'highest beat') + ROUNDING),
];

/** A sum of binary fractions that ought to be whole. */
const ROUNDING = 1e-6;
