import {
  balanceAfterRecovery,
  balanceAfterWork,
  deficitAfter,
  recoveryTimeConstant,
  recoveryTimeConstantOfElite,
  timeConstantOfIntegral,
} from './balance-steps.ts';
import type { PowerDuration } from './power-duration.ts';
import { joules, watts, type Joules, type Seconds, type Watts } from '#units/quantity.ts';

/** *By distance*: a time constant from the distance below critical power. *Integral*: one for the whole record. */
export type RecoveryModel = 'by distance' | 'by distance, elite cyclists' | 'integral';
export const RECOVERY_MODELS: readonly RecoveryModel[] = ['by distance', 'by distance, elite cyclists', 'integral'];

/** Which model, and how long each sample lasts [s]: one second each where nothing is said. */
export interface BalanceOptions {
  readonly model?: RecoveryModel;
  readonly lasting?: Float64Array;
}

/**
 * Balance [J] after each sample of power [W]: the fast path of a recording, which does not look at its input first. Exact for
 * power that is constant within a sample. Values below zero are left as they are. The array of durations, if given, is as
 * long as the record.
 */
export const wPrimeBalance = (
  record: Float64Array,
  person: PowerDuration,
  { model = 'by distance', lasting = new Float64Array(record.length).fill(1) }: BalanceOptions = {},
): Float64Array => {
  if (model === 'integral') return byIntegral(record, lasting, person);
  return byDistance(
    record,
    lasting,
    person,
    model === 'by distance' ? recoveryTimeConstant : recoveryTimeConstantOfElite,
  );
};

const byDistance = (
  record: Float64Array,
  lasting: Float64Array,
  { criticalPower, capacity }: PowerDuration,
  constantOf: (distance: Watts, capacity: Joules) => Seconds,
): Float64Array => {
  let balance = capacity;
  return record.map((power, place) => {
    const duration = lasting[place] as Seconds;
    balance =
      power >= criticalPower
        ? balanceAfterWork(balance, power as Watts, criticalPower, duration)
        : balanceAfterRecovery(balance, capacity, constantOf(watts(criticalPower - power), capacity), duration);
    return balance;
  });
};

const byIntegral = (
  record: Float64Array,
  lasting: Float64Array,
  { criticalPower, capacity }: PowerDuration,
): Float64Array => {
  const constant = timeConstantOfIntegral(meanDistanceBelow(record, lasting, criticalPower));
  let deficit = joules(0);
  return record.map((power, place) => {
    deficit = deficitAfter(deficit, power as Watts, criticalPower, constant, lasting[place] as Seconds);
    return capacity - deficit;
  });
};

/** Mean distance below critical power over all time below it; nothing where no time is. */
const meanDistanceBelow = (record: Float64Array, lasting: Float64Array, criticalPower: Watts): Watts => {
  let [weighted, time] = [0, 0];
  for (const [place, power] of record.entries()) {
    if (power >= criticalPower) continue;
    const duration = lasting[place] as Seconds;
    weighted += (criticalPower - power) * duration;
    time += duration;
  }
  return watts(time > 0 ? weighted / time : 0);
};
