import { ageInYears, isoOfDay, type Day } from '#units/day.ts';
import { numberOf } from '#units/entered.ts';
import { factsOfKind } from '#domain/log.ts';
import type { Fact } from '#domain/fact.ts';
import { ofKind, type Known } from '#domain/known.ts';
import type { Test } from '#domain/tested.ts';
import type { Origin } from '#domain/working.ts';
import { ownStages, type OwnStages } from './own-stages.ts';

/** A number about a person, with where it comes from. */
export interface Found {
  readonly value: number;
  readonly day: Day;
  readonly from: Extract<Origin, { readonly kind: 'fact' }>;
}

/** What is known of a person's endurance on a day; null where it was never tested. */
export interface Endurance {
  /** [mL/(kg min)] */
  readonly maximalUptake: Found | null;
  /** Tested [1/min]. */
  readonly maximalRate: Found | null;
  /** Completed years: stands in for a greatest heart rate that was never tested. */
  readonly age: Found | null;
  /** [1/min] */
  readonly restingRate: Found | null;
  /** Stages of the newest test of each kind: watts or m/min against uptake or heart rate. */
  readonly cycleUptake: OwnStages | null;
  readonly cycleRate: OwnStages | null;
  readonly runningUptake: OwnStages | null;
  readonly runningRate: OwnStages | null;
}

export const enduranceOn = (known: Known, on: Day): Endurance => {
  const tests = ofKind(known, 'tested').filter(({ day }) => day <= on);
  return {
    maximalUptake: newest(tests, 'greatest oxygen uptake'),
    maximalRate: newest(tests, 'greatest heart rate'),
    age: ageOn(known, on),
    restingRate: newest(tests, 'resting heart rate'),
    cycleUptake: ownStages(tests, 'cycle stage', 'uptake'),
    cycleRate: ownStages(tests, 'cycle stage', 'heartRate'),
    runningUptake: ownStages(tests, 'running stage', 'uptake'),
    runningRate: ownStages(tests, 'running stage', 'heartRate'),
  };
};

export interface EnduranceReader {
  on(day: Day): Endurance;
}

/** Reads a person's tests once for all days between two of them: a derivation asks for every item of every day. */
export const enduranceReader = (known: Known): EnduranceReader => {
  const read = new Map<string, Endurance>();
  const days = ofKind(known, 'tested').map(({ day }) => day);
  const { birthDate } = known;
  return {
    on: (day) => {
      const name = `${days.filter((each) => each <= day).length} ${birthDate === null ? '' : ageInYears(birthDate, day)}`;
      const kept = read.get(name) ?? enduranceOn(known, day);
      read.set(name, kept);
      return kept;
    },
  };
};

type OfOneValue = 'greatest oxygen uptake' | 'greatest heart rate' | 'resting heart rate';
type TestOf<What extends Test['what']> = Extract<Test, { readonly what: What }>;

const newest = (tests: readonly Fact<'tested'>[], what: OfOneValue): Found | null => {
  const fact = latest(tests.filter(({ test }) => test.what === what));
  const test = fact?.test as TestOf<OfOneValue> | undefined;
  return fact && test
    ? {
        value: numberOf(test.value),
        day: fact.day,
        from: { kind: 'fact', fact: fact.id, says: saysOf(test, fact.day) },
      }
    : null;
};

const saysOf = (test: TestOf<OfOneValue>, on: Day): string =>
  `${test.what}, ${'how' in test ? test.how : 'tested'} ${isoOfDay(on)}`;

/** The newest day counts; of one day what was entered last. */
const latest = (tests: readonly Fact<'tested'>[]): Fact<'tested'> | null =>
  tests.reduce<Fact<'tested'> | null>((last, fact) => (last && last.day > fact.day ? last : fact), null);

const ageOn = ({ facts, birthDate }: Known, on: Day): Found | null => {
  const introduced = factsOfKind(facts, 'introduced').at(-1);
  if (birthDate === null || !introduced) return null;
  const value = ageInYears(birthDate, on);
  return { value, day: on, from: { kind: 'fact', fact: introduced.id, says: `completed years on ${isoOfDay(on)}` } };
};
