import type { Day } from '#units/day.ts';
import { numberOf } from '#units/entered.ts';
import { metresPerMinute } from '#units/quantity.ts';
import type { Fact } from '#domain/fact.ts';
import type { FactId } from '#domain/identity.ts';
import { ofKind, type Known } from '#domain/known.ts';
import type { Test } from '#domain/tested.ts';
import type { UptakeStage } from '#science/aerobic/personal-lines.ts';
import { evaluate } from '#science/evaluate.ts';
import { maximalRateTanaka } from '#science/aerobic/maximal-rate-of-age.ts';

/** A number about a person with where it comes from, in words for who opens it. */
export interface Found {
  readonly value: number;
  readonly says: string;
  readonly facts: readonly FactId[];
}

/** What is known of a person's endurance on a day; null where it was never tested. */
export interface Endurance {
  /** [mL/(kg min)] */
  readonly maximalUptake: Found | null;
  /** [1/min]; from age where it was never tested. */
  readonly maximalRate: Found | null;
  /** [1/min] */
  readonly restingRate: Found | null;
  /** Stages with measured uptake of the newest test on a cycle. */
  readonly cycleStages: readonly UptakeStage[];
}

export const enduranceOn = (known: Known, on: Day): Endurance => {
  const tests = ofKind(known, 'tested').filter(({ day }) => day <= on);
  return {
    maximalUptake: newest(tests, 'greatest oxygen uptake'),
    maximalRate: newest(tests, 'greatest heart rate') ?? rateOfAge(known, on),
    restingRate: newest(tests, 'resting heart rate'),
    cycleStages: newestStages(tests),
  };
};

type OfOneValue = 'greatest oxygen uptake' | 'greatest heart rate' | 'resting heart rate';
type TestOf<What extends Test['what']> = Extract<Test, { readonly what: What }>;

const newest = (tests: readonly Fact<'tested'>[], what: OfOneValue): Found | null => {
  const fact = latest(tests.filter(({ test }) => test.what === what));
  const test = fact?.test as TestOf<OfOneValue> | undefined;
  return fact && test
    ? { value: numberOf(test.value), says: `${what} ${test.value.text} ${test.value.unit}, tested`, facts: [fact.id] }
    : null;
};

/** The newest day counts; of one day what was entered last. */
const latest = (tests: readonly Fact<'tested'>[]): Fact<'tested'> | null =>
  tests.reduce<Fact<'tested'> | null>((last, fact) => (last && last.day > fact.day ? last : fact), null);

const DAYS_PER_YEAR = 365.25;

const rateOfAge = ({ birthDate }: Known, on: Day): Found | null => {
  if (birthDate === null) return null;
  const years = Math.floor((on - birthDate) / DAYS_PER_YEAR);
  const rate = evaluate(maximalRateTanaka, [years]);
  return rate.kind === 'value'
    ? {
        value: rate.value,
        says: `greatest heart rate ${Math.round(rate.value)}/min from age ${years}, ± 10`,
        facts: [],
      }
    : null;
};

const newestStages = (tests: readonly Fact<'tested'>[]): readonly UptakeStage[] => {
  const stages = tests.flatMap(({ day, test }) =>
    test.what === 'cycle stage' && test.uptake
      ? [{ day, stage: { power: numberOf(test.watts), uptake: numberOf(test.uptake) } }]
      : [],
  );
  const last = Math.max(...stages.map(({ day }) => day));
  return stages.filter(({ day }) => day === last).map(({ stage }) => stage);
};

const KILOMETRES_PER_HOUR = 0.06;

/** Belt speeds are set in km/h and reckoned in m/min. */
export const kilometresPerHour = (speed: number): number => speed * KILOMETRES_PER_HOUR;
export const metresPerMinuteOf = (speed: number) => metresPerMinute(speed / KILOMETRES_PER_HOUR);
