import { fraction, heartRate, oxygenUptake } from '#units/quantity.ts';
import { askedBy, middleOf, nothing, type BoutAt, type ByShare, type Reckoned } from './bout-at.ts';
import { greatestRate } from './bout-rate.ts';
import { UPTAKE_OF_GREATEST, UPTAKE_OF_RATE, UPTAKE_OF_RESERVE } from './bout-reckonings.ts';
import { fillReckoning, type FilledReckoning, type Filling } from './filled-reckoning.ts';

/** The oxygen uptake in the middle of an intensity, from which watts and speeds are made; null where the tests do not say it. */
export const uptakeTarget = (intensity: ByShare, at: BoutAt): Reckoned<FilledReckoning | null> => {
  const filling = fillUptake(intensity, at);
  if (filling === null) return nothing(null);
  return filling.kind === 'refused'
    ? nothing(null, ...filling.reasons)
    : { value: filling, reckonings: [filling], says: [] };
};

const fillUptake = (intensity: ByShare, at: BoutAt): Filling | null => {
  const { maximalUptake, restingRate } = at.person;
  if (!maximalUptake) return null;
  const target = {
    target: [fraction(middleOf(intensity.of)), askedBy(at, intensity, isWide(intensity) ? ', its middle' : '')],
    'greatest oxygen uptake': [oxygenUptake(maximalUptake.value), maximalUptake.from],
  } as const;
  if (intensity.kind === 'of greatest uptake') return fillReckoning(UPTAKE_OF_GREATEST, target);
  // The fraction of the heart-rate reserve is taken for that of the uptake reserve.
  if (intensity.kind === 'of heart-rate reserve') return fillReckoning(UPTAKE_OF_RESERVE, target);
  const greatest = greatestRate(at).value;
  if (!greatest || !restingRate) return null;
  return fillReckoning(UPTAKE_OF_RATE, {
    ...target,
    'resting heart rate': [heartRate(restingRate.value), restingRate.from],
    'greatest heart rate': [heartRate(greatest.value), greatest.from],
  });
};

const isWide = ({ of: { least, most } }: ByShare): boolean => least !== most;
