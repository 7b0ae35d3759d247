import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { acuteChronic, exponentialAverages } from './acute-chronic.ts';
import { impulseOfMan, impulseOfWoman } from './heart-rate-impulse.ts';
import { questionnaireDeviation } from './questionnaire.ts';
import { weeklyLoad } from './weekly-load.ts';
import { zoneMinutes, type HeartRateTrace } from './zone-minutes.ts';

/** Scores of load against the same equations typed a second time. */

interface Fixture {
  readonly made: Readonly<Record<string, string | number>>;
  readonly weeks: readonly {
    readonly loads: readonly number[];
    readonly total: number;
    readonly mean: number;
    readonly sd: number;
    readonly monotony: number;
    readonly strain: number;
  }[];
  readonly otherConvention: Readonly<Record<'sd' | 'monotony' | 'strain', number>>;
  readonly ratios: readonly {
    readonly loads: readonly number[];
    readonly coupled: number;
    readonly uncoupled: number;
    readonly acute: number;
    readonly chronic: number;
  }[];
  readonly hearts: readonly {
    readonly time: number;
    readonly heart: number;
    readonly rest: number;
    readonly top: number;
    readonly man: number;
    readonly woman: number;
  }[];
  readonly traces: readonly (HeartRateTrace & { readonly zones: readonly number[] })[];
  readonly questionnaire: {
    readonly before: readonly number[];
    readonly today: number;
    readonly mean: number;
    readonly sd: number;
    readonly value: number;
  };
}

const FILE = join(import.meta.dirname, '../../../test/fixtures/science/load.json');
// Written by the script that stands beside the file.
const fixture = JSON.parse(readFileSync(FILE, 'utf8')) as Fixture;

/** Short sums of doubles. */
const isAs = (ours: number | undefined, theirs: number): boolean =>
  ours !== undefined && Math.abs(ours - theirs) <= 1e-10 * Math.max(1, Math.abs(theirs));

test('the reference says what made it', () => {
  expect(Object.keys(fixture.made)).toEqual(expect.arrayContaining(['by', 'seed', 'numpy']));
});

test('weeks are as recomputed', () => {
  const off = fixture.weeks.filter((each) => {
    const week = weeklyLoad(each.loads);
    return (
      week.kind !== 'estimate' ||
      week.monotony.kind !== 'estimate' ||
      week.strain.kind !== 'estimate' ||
      !isAs(week.total, each.total) ||
      !isAs(week.mean, each.mean) ||
      !isAs(week.sd, each.sd) ||
      !isAs(week.monotony.value, each.monotony) ||
      !isAs(week.strain.value, each.strain)
    );
  });
  expect(off).toEqual([]);
});

test('the other standard deviation gives the other monotony, which is not used', () => {
  const [first] = fixture.weeks;
  const { sd, monotony, strain } = fixture.otherConvention;
  expect(sd).toBeCloseTo(199.834115, 6);
  expect(monotony).toBeCloseTo(1.658518, 6);
  expect(strain).toBeCloseTo(3847.762862, 6);
  expect(monotony / (first?.monotony ?? 0)).toBeCloseTo(Math.sqrt(7 / 6), 12);
});

test('ratios are as recomputed, the exponential one where it is not hidden', () => {
  const off = fixture.ratios.filter((each) => {
    const found = acuteChronic(each.loads);
    if (found.kind !== 'estimate' || found.coupled.kind !== 'estimate' || found.uncoupled.kind !== 'estimate')
      return true;
    const hidden = each.loads.length <= 28;
    return (
      !isAs(found.coupled.value, each.coupled) ||
      !isAs(found.uncoupled.value, each.uncoupled) ||
      !isAs(exponentialAverages(each.loads, 7).at(-1) ?? undefined, each.acute) ||
      !isAs(exponentialAverages(each.loads, 28).at(-1) ?? undefined, each.chronic) ||
      (hidden
        ? found.exponential.kind !== 'none'
        : found.exponential.kind !== 'estimate' || !isAs(found.exponential.value, each.acute / each.chronic))
    );
  });
  expect(off).toEqual([]);
});

test('training impulses are as recomputed', () => {
  const off = fixture.hearts.filter(
    ({ time, heart, rest, top, man, woman }) =>
      !isAs(impulseOfMan(time, heart, rest, top), man) || !isAs(impulseOfWoman(time, heart, rest, top), woman),
  );
  expect(off).toEqual([]);
});

test('minutes in zones are those of NumPy’s histogram', () => {
  const off = fixture.traces.filter((trace) => {
    const found = zoneMinutes(trace);
    return found.kind !== 'estimate' || !trace.zones.every((theirs, place) => isAs(found.zones[place], theirs));
  });
  expect(off).toEqual([]);
});

test('the deviation of a sum of questions is as recomputed', () => {
  const { before, today, mean, sd, value } = fixture.questionnaire;
  const found = questionnaireDeviation(today, before);
  expect(found.kind === 'estimate' && isAs(found.value, value) && isAs(found.mean, mean) && isAs(found.sd, sd)).toBe(
    true,
  );
});
