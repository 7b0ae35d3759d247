import { ratingOf } from '#domain/effort.ts';
import { kilogramsOf } from '#units/entered.ts';
import type { BringInContext } from './context.ts';
import type { MeasurementReading } from './read-measurements.ts';
import { kilogramsIn, type TestReading } from './test-reading.ts';

/** What a test could be compared with. */
export type Comparison =
  | { readonly kind: 'own estimate'; readonly expected: number; readonly found: number }
  | {
      readonly kind: 'median';
      readonly expected: number;
      readonly found: number;
      readonly of: number;
      readonly bodyMass: number;
    }
  | { readonly kind: 'body mass'; readonly bodyMass: number; readonly found: number }
  | { readonly kind: 'nothing' };

export type CompareTest = (test: TestReading) => Comparison;

/** Fewer values give no median worth asking by. */
const FEWEST_FOR_MEDIAN = 5;
const TOP_RATING = 10;

/** The one-repetition maximum that a test stands for [kg]; repetitions in reserve count as lifted. */
const maximumOf = (test: TestReading, { oneRepMax }: BringInContext): number => {
  const reserve = test.effort === null ? 0 : TOP_RATING - ratingOf(test.effort);
  const kilograms = kilogramsIn(test);
  return oneRepMax(kilograms, test.repetitions + reserve) ?? kilograms;
};

/** Values of one column, or of one exercise where the rows name it, of people of one sex. */
const groupOf = ({ column, exercise, someone }: TestReading): string =>
  `${column.index} ${exercise.id} ${someone.sex ?? 'unknown'}`;

const median = (values: readonly number[]): number => {
  const sorted = values.toSorted((one, other) => one - other);
  const middle = sorted.length / 2;
  const [low, high] = [sorted[Math.ceil(middle) - 1] ?? 0, sorted[Math.floor(middle)] ?? 0];
  return (low + high) / 2;
};

/** The body mass of a person nearest to a day [kg]: of this file, else the last on record; null where there is none. */
const bodyMasses = (measurements: readonly MeasurementReading[]) => {
  const byPerson = new Map<string, { readonly day: number; readonly kilograms: number }[]>();
  for (const { someone, day, measured } of measurements) {
    if (measured.what !== 'body mass') continue;
    const masses = byPerson.get(someone.id) ?? [];
    masses.push({ day, kilograms: kilogramsOf(measured.value) });
    byPerson.set(someone.id, masses);
  }
  return ({ someone, day }: TestReading): number | null => {
    const [nearest] = (byPerson.get(someone.id) ?? []).toSorted(
      (one, other) => Math.abs(one.day - day) - Math.abs(other.day - day) || one.day - other.day,
    );
    return nearest?.kilograms ?? someone.onRecord?.bodyMass ?? null;
  };
};

/** Compares each test with the person's own estimate, else with the median of its column, else with body mass. */
export const comparisons = (
  tests: readonly TestReading[],
  measurements: readonly MeasurementReading[],
  context: BringInContext,
): CompareTest => {
  const bodyMassOf = bodyMasses(measurements);
  const ratios = new Map<string, number[]>();
  for (const test of tests) {
    const bodyMass = bodyMassOf(test);
    if (bodyMass === null) continue;
    const group = ratios.get(groupOf(test)) ?? [];
    group.push(maximumOf(test, context) / bodyMass);
    ratios.set(groupOf(test), group);
  }
  const medians = new Map([...ratios].map(([key, values]) => [key, { median: median(values), of: values.length }]));
  return (test) => {
    const { onRecord } = test.someone;
    const found = maximumOf(test, context);
    const own = onRecord ? context.ownEstimate(onRecord.id, test.exercise.id) : null;
    if (own !== null && own > 0) return { kind: 'own estimate', expected: own, found };
    const bodyMass = bodyMassOf(test);
    if (bodyMass === null) return { kind: 'nothing' };
    const group = medians.get(groupOf(test));
    if (!group || group.of < FEWEST_FOR_MEDIAN) return { kind: 'body mass', bodyMass, found };
    return { kind: 'median', expected: group.median * bodyMass, found, of: group.of, bodyMass };
  };
};
