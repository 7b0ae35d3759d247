import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { evaluate } from '../evaluate.ts';
import { coverage, coverageOfPlan, type CoverageOverride, type PlannedQualities } from './coverage.ts';
import { OLDER_RESUME_RULE, olderLoad, olderSets } from './older-resume-rule.table.ts';
import {
  firstLoadBack,
  resumeAfterMissed,
  type Meanwhile,
  type Missed,
  type MissedBecause,
} from './resume-after-missed.ts';
import {
  FALLBACKS,
  fallbacksFor,
  QUALITIES,
  substitute,
  SUBSTITUTES,
  WEEK_PRIORITIES,
  type Machine,
  type SubstituteId,
} from './substitutes.table.ts';
import { fraction, kilograms } from '#units/quantity.ts';

interface Fixture {
  readonly resumes: readonly {
    readonly days: number;
    readonly because: MissedBecause;
    readonly meanwhile: Meanwhile;
    readonly left: number;
  }[];
  readonly older: readonly {
    readonly days: number;
    readonly ground: number;
    readonly flight: number;
    readonly groundSets: readonly (number | null)[];
    readonly flightSets: readonly (number | null)[];
  }[];
  readonly coverage: readonly (readonly [number, number, number, number, number])[];
}

const FILE = join(import.meta.dirname, '../../../test/fixtures/science/resuming.json');
// Written by the script that stands beside the file.
const fixture = JSON.parse(readFileSync(FILE, 'utf8')) as Fixture;

const resume = (missed: Missed) => {
  const found = resumeAfterMissed(missed);
  if (found.kind !== 'resume') throw new Error(found.kind);
  return found;
};

test('what is left is as a separate program has it, for every cause and whatever was done meanwhile', () => {
  for (const { left, ...missed } of fixture.resumes)
    expect(resume({ ...missed, released: true }).left).toBeCloseTo(left, 12);
});

const causes = fc.constantFrom<MissedBecause>('machine out', 'busy', 'ill');
const meanwhiles = fc.constantFrom<Meanwhile>('kept running', 'up and about in 1 g', 'nothing');
const daysMissed = fc.double({ min: 0, max: 365, noNaN: true });

test('more days never leave more, and what is left moves without a step', () => {
  fc.assert(
    fc.property(
      causes,
      meanwhiles,
      fc.double({ min: 0, max: 364, noNaN: true }),
      fc.double({ min: 0, max: 1, noNaN: true }),
      (because, meanwhile, days, more) => {
        const at = (on: number): number => resume({ days: on, because, meanwhile, released: true }).left;
        expect(at(days + more)).toBeLessThanOrEqual(at(days));
        // The steepest is the first unloaded day: 1.4 % of what was there.
        expect(at(days) - at(days + more)).toBeLessThanOrEqual(0.0136 * more + 1e-12);
      },
    ),
  );
});

test('illness never leaves more than anything else, and running never less than nothing', () => {
  fc.assert(
    fc.property(causes, meanwhiles, daysMissed, (because, meanwhile, days) => {
      const { left } = resume({ days, because, meanwhile, released: true });
      expect(resume({ days, because: 'ill', meanwhile, released: true }).left).toBeLessThanOrEqual(left);
      expect(resume({ days, because: 'busy', meanwhile: 'kept running', released: true }).left).toBeGreaterThanOrEqual(
        left,
      );
    }),
  );
});

test('after illness nothing begins before a physician has said so', () => {
  const ill: Missed = { days: 10, because: 'ill', meanwhile: 'kept running', released: false };
  expect(resumeAfterMissed(ill)).toMatchObject({
    kind: 'wait for the physician',
    reason: expect.stringContaining('physician') as string,
  });
  expect(resumeAfterMissed({ ...ill, released: true }).kind).toBe('resume');
  expect(resumeAfterMissed({ ...ill, because: 'busy' }).kind).toBe('resume');
});

test('the first session back is capped at RPE 6 after a pause, and after any illness', () => {
  const cap = (days: number, because: MissedBecause): number | null =>
    resume({ days, because, meanwhile: 'kept running', released: true }).mostEffort;
  expect(cap(3, 'busy')).toBeNull();
  expect(cap(4, 'busy')).toBe(6);
  expect(cap(30, 'machine out')).toBe(6);
  expect(cap(1, 'ill')).toBe(6);
});

test('what is said fits the cause, with the cautions of the curve', () => {
  const says = (missed: Partial<Missed>): string =>
    resume({ days: 30, because: 'busy', meanwhile: 'nothing', released: true, ...missed }).says.join(' ');
  expect(says({})).toMatch(/want of time.*23 days only.*four weeks/);
  expect(says({ because: 'machine out', days: 10 })).toBe(
    'The machine was out. What replaced it counts for coverage, not for more load.',
  );
  expect(says({ because: 'ill', days: 5 })).toMatch(/unloaded curve.*physician says when/);
  expect(resume({ days: 30, because: 'busy', meanwhile: 'nothing', released: true }).curve).toBe('unloaded');
  expect(resume({ days: 30, because: 'busy', meanwhile: 'kept running', released: true }).curve).toBe('carried');
});

test('days that cannot be are refused, whatever the cause', () => {
  for (const days of [-1, 366, Number.NaN])
    expect(resumeAfterMissed({ days, because: 'ill', meanwhile: 'nothing', released: false })).toMatchObject({
      kind: 'refused',
      reason: expect.stringContaining('days missed') as string,
    });
});

test('the first load back is what is left of the load, and never more than it', () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 1, noNaN: true }), fc.integer({ min: 0, max: 400 }), (left, load) => {
      const back = firstLoadBack(fraction(left), kilograms(load));
      expect(back).toBe(left * load);
      expect(back).toBeLessThanOrEqual(load);
    }),
  );
});

// The older rule, to compare with

test('the older rule is as a separate program types it, day by day', () => {
  const sets = [1, 3, 4, 10];
  for (const { days, ground, flight, groundSets, flightSets } of fixture.older) {
    expect(olderLoad(days, 'ground')).toBe(ground);
    expect(olderLoad(days, 'flight')).toBeCloseTo(flight, 14);
    expect(sets.map((each) => olderSets(days, each))).toEqual(groundSets);
    expect(sets.map((each) => olderSets(days, each))).toEqual(flightSets);
  }
  expect(() => olderLoad(-1, 'ground')).toThrow('begin at 0');
});

test('the lines of the older rule follow each other day by day, and its table shows them', () => {
  for (const [place, { days }] of OLDER_RESUME_RULE.rows.entries())
    expect(days[0]).toBe(place === 0 ? 0 : (OLDER_RESUME_RULE.rows[place - 1]?.days[1] ?? 0) + 1);
  expect(OLDER_RESUME_RULE.rows.map((row) => OLDER_RESUME_RULE.cells(row))[1]).toEqual([
    4,
    7,
    0.8,
    'fewer sets',
    1,
    'lighter, fewer sets',
    0.95,
  ]);
  const curves = resumeAfterMissed.record.plot?.curves() ?? [];
  expect(curves.map(({ scattered }) => scattered === true)).toEqual([false, false, true, true]);
  expect(curves.slice(2).map(({ label, points }) => [label, points.map(([, y]) => Number(y.toFixed(3)))])).toEqual([
    ['older rule by days, on the ground', [1, 1, 0.95, 0.9, 0.7]],
    ['older rule by days, in flight', [1, 0.95, 0.9, 0.762, 0.645]],
  ]);
});

// Substitutes

test('coverage is as a separate program has it', () => {
  for (const [done, substituted, each, planned, printed] of fixture.coverage)
    expect(coverage(done, substituted, fraction(each), planned)).toBeCloseTo(printed, 14);
});

test('more done and substituted than planned is refused, as much is not', () => {
  expect(evaluate(coverage, [3, 1, 0.5, 4])).toMatchObject({ kind: 'value', value: 0.875 });
  expect(evaluate(coverage, [3, 2, 0.5, 4])).toMatchObject({ kind: 'refused' });
});

const SUBSTITUTE_IDS = SUBSTITUTES.rows.map(({ id }) => id);
const plans = fc.array(
  fc.record({
    qualities: fc.uniqueArray(fc.constantFrom(...QUALITIES)),
    outcome: fc.oneof(
      fc.constant({ kind: 'done' as const }),
      fc.constant({ kind: 'lost' as const }),
      fc.constantFrom(...SUBSTITUTE_IDS).map((by) => ({ kind: 'substituted' as const, by })),
    ),
  }),
  { maxLength: 12 },
);

const covered = (plan: readonly PlannedQualities[], covers?: CoverageOverride) => {
  const found = coverageOfPlan(plan, covers);
  return found.kind === 'none' ? [] : found.qualities;
};

test('what is covered and what is not add up to what was planned', () => {
  fc.assert(
    fc.property(plans, (plan) => {
      for (const each of covered(plan)) {
        expect(each.covered + each.uncovered).toBeCloseTo(each.planned, 12);
        expect(each.planned).toBe(plan.filter(({ qualities }) => qualities.includes(each.quality)).length);
        expect(each.coverage * each.planned).toBeCloseTo(each.covered, 12);
        expect(each.coverage).toBeGreaterThanOrEqual(0);
        expect(each.coverage).toBeLessThanOrEqual(1);
      }
    }),
  );
});

test('a session done instead of lost never covers less', () => {
  fc.assert(
    fc.property(plans, fc.nat(), (plan, where) => {
      const lost = plan.findIndex(
        ({ outcome }, place) => outcome.kind !== 'done' && place >= where % (plan.length + 1),
      );
      const better = plan.map((each, place) =>
        place === lost ? { ...each, outcome: { kind: 'done' as const } } : each,
      );
      for (const [place, each] of covered(better).entries())
        expect(each.covered).toBeGreaterThanOrEqual(covered(plan)[place]?.covered ?? 0);
    }),
  );
});

test('a substitute that is not rated covers nothing and is named once', () => {
  const by = (id: SubstituteId): PlannedQualities => ({
    qualities: ['power', 'strength'],
    outcome: { kind: 'substituted', by: id },
  });
  expect(covered([by('elastic cords'), by('elastic cords'), by('isometric pushes')])).toEqual([
    {
      quality: 'strength',
      planned: 3,
      covered: 0.6 + 0.6 + 0.7,
      coverage: (0.6 + 0.6 + 0.7) / 3,
      uncovered: 3 - (0.6 + 0.6 + 0.7),
      notRated: [],
    },
    {
      quality: 'power',
      planned: 3,
      covered: 0,
      coverage: 0,
      uncovered: 3,
      notRated: ['elastic cords', 'isometric pushes'],
    },
  ]);
});

test('the cycle instead of the treadmill keeps the aerobic work whole and loses the impact', () => {
  const found = covered([
    { qualities: ['aerobic', 'impact'], outcome: { kind: 'substituted', by: 'cycle intervals' } },
  ]);
  expect(found.map(({ quality, coverage: part, notRated }) => [quality, part, notRated])).toEqual([
    ['aerobic', 1, []],
    ['impact', 0, []],
  ]);
});

test('somebody may set coverages of their own, within 0 to 1', () => {
  const plan: readonly PlannedQualities[] = [{ qualities: ['grip'], outcome: { kind: 'substituted', by: 'rowing' } }];
  expect(covered(plan, () => 0.9)[0]?.coverage).toBe(0.9);
  for (const wrong of [-0.1, 1.1, Number.NaN])
    expect(coverageOfPlan(plan, () => wrong)).toMatchObject({
      kind: 'none',
      reason: expect.stringContaining('0 to 1') as string,
    });
  expect(coverageOfPlan([])).toMatchObject({ kind: 'none', reason: expect.stringContaining('No session') as string });
  const two: readonly PlannedQualities[] = [
    { qualities: ['strength', 'grip'], outcome: { kind: 'substituted', by: 'rowing' } },
    { qualities: ['strength'], outcome: { kind: 'done' } },
  ];
  expect(coverageOfPlan(two, (_, quality) => (quality === 'grip' ? 2 : 1)).kind).toBe('none');
  expect(coverageOfPlan(two, () => 1).kind).toBe('coverage');
  // A coverage that nobody needs is nobody's fault.
  expect(coverageOfPlan([{ qualities: ['grip'], outcome: { kind: 'done' } }], () => 7).kind).toBe('coverage');
});

test('every substitute has a name of its own, coverages in 0 to 1, and cells', () => {
  expect(new Set(SUBSTITUTE_IDS).size).toBe(SUBSTITUTE_IDS.length);
  for (const id of SUBSTITUTE_IDS) expect(substitute(id).id).toBe(id);
  expect(() => substitute('nothing at hand' as SubstituteId)).toThrow('nothing at hand');
  const values = SUBSTITUTES.rows.flatMap(({ covers }) => Object.values<number>(covers));
  expect(values.every((value) => value >= 0 && value <= 1)).toBe(true);
  expect(SUBSTITUTES.cells(SUBSTITUTES.rows[0]).slice(0, 7)).toEqual([
    'elastic cords',
    'a bar or a resistive machine',
    0.6,
    null,
    null,
    null,
    0.2,
  ]);
});

test('fallbacks come in order, without what needs a machine that is out too', () => {
  const resistive: Machine = 'resistive machine';
  expect(fallbacksFor(resistive, [resistive])).toEqual([
    'elastic cords',
    'isometric pushes',
    'treadmill under more harness load',
    'cycle sprints',
  ]);
  expect(fallbacksFor(resistive, [resistive, 'treadmill'])).toEqual([
    'elastic cords',
    'isometric pushes',
    'cycle sprints',
  ]);
  expect(fallbacksFor('treadmill', ['treadmill'])).toEqual([
    'cycle intervals',
    'heel drops and jumps in the harness',
    'isometric heel raises',
  ]);
  expect(fallbacksFor('cycle', ['cycle'])).toEqual(['treadmill', 'rowing']);
  expect(fallbacksFor('cycle', [resistive, 'treadmill', 'cycle'])).toEqual([
    'rowing',
    'partner and self resistance',
    'elastic circuits',
  ]);
  // A machine that is asked about counts as out.
  expect(fallbacksFor('cycle', [resistive, 'treadmill'])).toContain('elastic circuits');
  expect(fallbacksFor('cycle', ['cycle', 'treadmill'])).toEqual(['rowing']);
  expect(FALLBACKS.rows.every(({ use }) => SUBSTITUTE_IDS.some((id) => id === use))).toBe(true);
});

test('tables of order show their lines', () => {
  expect(FALLBACKS.rows.map((row) => FALLBACKS.cells(row))[2]).toEqual([
    'resistive machine',
    'treadmill under more harness load',
    'treadmill',
  ]);
  expect(WEEK_PRIORITIES.rows.map((row) => WEEK_PRIORITIES.cells(row))[0]).toEqual([1, 'resistive, lower body']);
});
