import type { Fraction, HeartRate, Kilograms, MachineLoad, MetresPerMinute, OxygenUptake } from '#units/quantity.ts';
import { beltKilometresPerHour, cappedSpeed, startSpeed } from '#science/aerobic/belt-settings.ts';
import { highestBeat, lowestBeat, rateOfGreatest, uptakeOfGreatest } from '#science/aerobic/bout-targets.ts';
import { legPower } from '#science/aerobic/cycling.ts';
import {
  heartRateReserve,
  reserveOfMaximumFraction,
  targetHeartRate,
  targetUptake,
} from '#science/aerobic/effort-reserve.ts';
import { runningCostFactor, sameEffortSpeed, walkingCostFactor } from '#science/aerobic/harness-cost.ts';
import { effectiveLoad, harnessPull, loadForSpeed, loadOfPull, timeForSpeed } from '#science/aerobic/harness-limits.ts';
import { maximalRateTanaka } from '#science/aerobic/maximal-rate-of-age.ts';
import {
  powerAtRate,
  powerAtUptake,
  speedAtRate,
  speedAtUptake,
  speedOfStageReserve,
  speedOfStageUptake,
  type Intercept,
  type Slope,
} from '#science/aerobic/own-settings.ts';
import { runningSpeed, walkingSpeed } from '#science/aerobic/walking-and-running.ts';
import { reckoning } from '#science/reckoning.ts';

/** What is held and set in a bout of endurance, each small reckoning by itself: which of them stand depends on the tests. */

type Ends = { readonly 'target, low': Fraction; readonly 'target, high': Fraction };
type Rates = { readonly 'resting heart rate': HeartRate; readonly 'greatest heart rate': HeartRate };

// Heart rate

export const GREATEST_RATE_OF_AGE = reckoning<{ readonly age: number }>('greatest heart rate by age', ['age']).cell(
  'greatest heart rate',
  maximalRateTanaka,
  'age',
);

export const RATE_OF_RESERVE = reckoning<Ends & Rates>('heart rate by its reserve', [
  'target, low',
  'target, high',
  'resting heart rate',
  'greatest heart rate',
])
  .cell('from', targetHeartRate, 'target, low', 'resting heart rate', 'greatest heart rate')
  .cell('to', targetHeartRate, 'target, high', 'resting heart rate', 'greatest heart rate')
  .cell('lowest beat', lowestBeat, 'from', 'to')
  .cell('highest beat', highestBeat, 'from', 'to', 'greatest heart rate');

export const RATE_OF_GREATEST = reckoning<Ends & Pick<Rates, 'greatest heart rate'>>('heart rate by the greatest', [
  'target, low',
  'target, high',
  'greatest heart rate',
])
  .cell('from', rateOfGreatest, 'target, low', 'greatest heart rate')
  .cell('to', rateOfGreatest, 'target, high', 'greatest heart rate')
  .cell('lowest beat', lowestBeat, 'from', 'to')
  .cell('highest beat', highestBeat, 'from', 'to', 'greatest heart rate');

export const RATE_OF_UPTAKE = reckoning<Ends & Rates & { readonly 'greatest oxygen uptake': OxygenUptake }>(
  'heart rate by oxygen uptake',
  ['target, low', 'target, high', 'resting heart rate', 'greatest heart rate', 'greatest oxygen uptake'],
)
  .cell('reserve, low', reserveOfMaximumFraction, 'target, low', 'greatest oxygen uptake')
  .cell('reserve, high', reserveOfMaximumFraction, 'target, high', 'greatest oxygen uptake')
  .cell('from', targetHeartRate, 'reserve, low', 'resting heart rate', 'greatest heart rate')
  .cell('to', targetHeartRate, 'reserve, high', 'resting heart rate', 'greatest heart rate')
  .cell('lowest beat', lowestBeat, 'from', 'to')
  .cell('highest beat', highestBeat, 'from', 'to', 'greatest heart rate');

// Oxygen uptake: what watts and speeds are made from

type Target = { readonly target: Fraction };
type Greatest = { readonly 'greatest oxygen uptake': OxygenUptake };

export const UPTAKE_OF_RESERVE = reckoning<Target & Greatest>('oxygen uptake by its reserve', [
  'target',
  'greatest oxygen uptake',
]).cell('oxygen uptake', targetUptake, 'target', 'greatest oxygen uptake');

export const UPTAKE_OF_GREATEST = reckoning<Target & Greatest>('oxygen uptake by the greatest', [
  'target',
  'greatest oxygen uptake',
]).cell('oxygen uptake', uptakeOfGreatest, 'target', 'greatest oxygen uptake');

export const UPTAKE_OF_RATE = reckoning<Target & Rates & Greatest>('oxygen uptake by heart rate', [
  'target',
  'resting heart rate',
  'greatest heart rate',
  'greatest oxygen uptake',
])
  .cell('heart rate', rateOfGreatest, 'target', 'greatest heart rate')
  .cell('fraction of the reserve', heartRateReserve, 'heart rate', 'resting heart rate', 'greatest heart rate')
  .cell('oxygen uptake', targetUptake, 'fraction of the reserve', 'greatest oxygen uptake');

// Watts

type Uptake = { readonly 'oxygen uptake': OxygenUptake };
type LineGiven = { readonly intercept: Intercept; readonly slope: Slope };
type Rate = { readonly 'heart rate': HeartRate };

export const WATTS_OF_HANDBOOK = reckoning<Uptake & { readonly 'body mass': Kilograms }>('watts by the handbook', [
  'oxygen uptake',
  'body mass',
]).cell('power', legPower, 'oxygen uptake', 'body mass');

export const WATTS_OF_OWN_UPTAKE = reckoning<Uptake & LineGiven>('watts by the own line of uptake', [
  'oxygen uptake',
  'intercept',
  'slope',
]).cell('power', powerAtUptake, 'oxygen uptake', 'intercept', 'slope');

export const WATTS_OF_OWN_RATE = reckoning<Rate & LineGiven>('watts by the own line of heart rate', [
  'heart rate',
  'intercept',
  'slope',
]).cell('power', powerAtRate, 'heart rate', 'intercept', 'slope');

// Speed on the level in 1 g

type Level = Uptake & { readonly grade: Fraction };

export const RUN_OF_HANDBOOK = reckoning<Level>('running speed by the handbook', ['oxygen uptake', 'grade'])
  .cell('speed on the ground', runningSpeed, 'oxygen uptake', 'grade')
  .cell('belt on the ground', beltKilometresPerHour, 'speed on the ground');

export const WALK_OF_HANDBOOK = reckoning<Level>('walking speed by the handbook', ['oxygen uptake', 'grade'])
  .cell('speed on the ground', walkingSpeed, 'oxygen uptake', 'grade')
  .cell('belt on the ground', beltKilometresPerHour, 'speed on the ground');

export const RUN_OF_OWN_UPTAKE = reckoning<Uptake & LineGiven>('running speed by the own line of uptake', [
  'oxygen uptake',
  'intercept',
  'slope',
])
  .cell('speed on the ground', speedAtUptake, 'oxygen uptake', 'intercept', 'slope')
  .cell('belt on the ground', beltKilometresPerHour, 'speed on the ground');

export const RUN_OF_OWN_RATE = reckoning<Rate & LineGiven>('running speed by the own line of heart rate', [
  'heart rate',
  'intercept',
  'slope',
])
  .cell('speed on the ground', speedAtRate, 'heart rate', 'intercept', 'slope')
  .cell('belt on the ground', beltKilometresPerHour, 'speed on the ground');

export const RUN_OF_STAGE_UPTAKE = reckoning<
  Uptake & { readonly 'own speed': MetresPerMinute; readonly 'own uptake': OxygenUptake }
>('running speed in proportion to an own stage', ['oxygen uptake', 'own speed', 'own uptake'])
  .cell('speed on the ground', speedOfStageUptake, 'own speed', 'oxygen uptake', 'own uptake')
  .cell('belt on the ground', beltKilometresPerHour, 'speed on the ground');

export const RUN_OF_STAGE_RATE = reckoning<
  Rate & Rates & { readonly 'own speed': MetresPerMinute; readonly 'own heart rate': HeartRate }
>('running speed in proportion to the heart rate of an own stage', [
  'heart rate',
  'resting heart rate',
  'greatest heart rate',
  'own speed',
  'own heart rate',
])
  .cell('fraction of the reserve', heartRateReserve, 'heart rate', 'resting heart rate', 'greatest heart rate')
  .cell('fraction in the own stage', heartRateReserve, 'own heart rate', 'resting heart rate', 'greatest heart rate')
  .cell('speed on the ground', speedOfStageReserve, 'own speed', 'fraction of the reserve', 'fraction in the own stage')
  .cell('belt on the ground', beltKilometresPerHour, 'speed on the ground');

// Under the harness

export type HarnessGivens = {
  readonly 'set load': Fraction;
  readonly 'speed on the ground': MetresPerMinute;
  readonly 'cap of the day': Fraction;
  readonly 'slope of the factor': Fraction;
};
const HARNESS_GIVENS = ['set load', 'speed on the ground', 'cap of the day', 'slope of the factor'] as const;

/** Running and walking under a harness are reckoned alike; only the share of their cost that is left differs. */
const underHarness = (name: string, costFactor: typeof runningCostFactor | typeof walkingCostFactor) =>
  reckoning<HarnessGivens>(name, HARNESS_GIVENS)
    .cell('effective load', effectiveLoad, 'set load')
    .cell('share of the net cost left', costFactor, 'effective load')
    .cell('speed of the same effort', sameEffortSpeed, 'speed on the ground', 'share of the net cost left')
    .cell('highest speed allowed', cappedSpeed, 'cap of the day', 'speed on the ground')
    .cell('speed to start with', startSpeed, 'speed of the same effort', 'highest speed allowed')
    .cell('belt to start with', beltKilometresPerHour, 'speed to start with')
    .cell(
      'load that keeps the effort',
      loadForSpeed,
      'speed on the ground',
      'speed to start with',
      'slope of the factor',
    )
    .cell(
      'time that keeps the effort',
      timeForSpeed,
      'speed on the ground',
      'share of the net cost left',
      'speed to start with',
    );

export const RUN_UNDER_HARNESS = underHarness('running speed under the harness', runningCostFactor);
export const WALK_UNDER_HARNESS = underHarness('walking speed under the harness', walkingCostFactor);

/** `set pull` is what was chosen after limits and rounding. */
export const HARNESS_PULL = reckoning<{
  readonly 'share in force': Fraction;
  readonly 'body mass': Kilograms;
  readonly 'set pull': MachineLoad;
}>('pull of the harness', ['share in force', 'body mass', 'set pull'])
  .cell('pull', harnessPull, 'share in force', 'body mass')
  .cell('set load', loadOfPull, 'set pull', 'body mass')
  .cell('effective load', effectiveLoad, 'set load');
