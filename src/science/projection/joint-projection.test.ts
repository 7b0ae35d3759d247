import { expect, test } from 'vitest';
import { normalCdf } from '../numeric/normal.ts';
import { boneCourse, oxygenUptakeCourse } from './course.ts';
import { jointProjection, type JointGiven, type JointResult } from './joint-projection.ts';
import { landingWindow, valueAtLanding } from './landing.ts';
import { mixtureBelow } from './mixture.ts';
import { boneModel, componentsOn, logModel, type ModelResult, type ProjectionModel } from './model.ts';
import { FEMORAL_NECK, OXYGEN_UPTAKE } from './quantities.table.ts';
import { lineOfRule, ownLine } from './line.ts';
import type { LimitRule } from '../standards/rule.ts';

const modelOf = (made: ModelResult): ProjectionModel => {
  if (made.kind === 'refused') throw new Error(made.reason);
  return made.model;
};

/** Made in each test: a fault in the making is a fault of that test. */
const uptake = (): ProjectionModel =>
  modelOf(
    logModel({
      quantity: OXYGEN_UPTAKE,
      course: oxygenUptakeCourse,
      pre: { value: 42, sd: 0.03 },
      tests: [
        { day: 15, value: 36.5, sd: 0.06 },
        { day: 45, value: 37.5, sd: 0.06 },
      ],
      training: { planned: 540, reference: 600, done: 19, missed: 5 },
    }),
  );
const bone = (): ProjectionModel =>
  modelOf(
    boneModel({
      site: FEMORAL_NECK,
      missions: [{ change: -4, months: 6, scanSd: 1.8 }],
      training: { planned: 540, reference: 600, done: 19, missed: 5 },
    }),
  );

const DRAWS = 20_000;
const LEVELS = [0.05, 0.25, 0.5, 0.75, 0.95];
/** Quantiles of n draws lie at their level to within √(p(1 − p)/n); four of these fail once in sixteen thousand. */
const errorAt = (level: number, draws = DRAWS): number => 4 * Math.sqrt((level * (1 - level)) / draws);

const GIVEN: JointGiven = {
  get model() {
    return uptake();
  },
  of: 'value',
  landings: landingWindow(150, 190),
  days: [5, 15, 60, 120, 150],
  draws: DRAWS,
  seed: 7,
  levels: LEVELS,
};

const bandsOf = (given: JointGiven): Extract<JointResult, { kind: 'bands' }> => {
  const result = jointProjection(given);
  if (result.kind === 'refused') throw new Error(result.reason);
  return result;
};

test.each([
  ['value of oxygen uptake', uptake, 'value'],
  ['ratio of oxygen uptake', uptake, 'ratio to own pre'],
  ['change of bone', bone, 'value'],
] as const)('in flight drawn bands lie where the closed form has them: %s', (_, make, of) => {
  const model = make();
  for (const { day, values } of bandsOf({ ...GIVEN, model, of }).days) {
    const components = componentsOn(model, day, of);
    for (const [place, level] of LEVELS.entries()) {
      const value = values[place] ?? Number.NaN;
      const exact = mixtureBelow(components, model.scale === 'log' ? Math.log(value) : value);
      expect(Math.abs(exact - level)).toBeLessThan(errorAt(level));
    }
  }
});

/** Nobody recovers, so that after landing a day shows what was there on landing. */
const still = (): ProjectionModel => ({ ...uptake(), halfLife: 1e12 });
const LANDINGS = [
  { day: 60, weight: 1 },
  { day: 150, weight: 2 },
  { day: 300, weight: 1 },
];

test('where some have landed and some have not, they lie where the mixture over landings has them', () => {
  for (const { day, values } of bandsOf({ ...GIVEN, model: still(), landings: LANDINGS, days: [30, 100, 200, 301] })
    .days) {
    const components = LANDINGS.flatMap(({ day: landing, weight }) =>
      componentsOn(still(), Math.min(day, landing), 'value').map((each) => ({
        ...each,
        weight: (each.weight * weight) / 4,
      })),
    );
    for (const [place, level] of LEVELS.entries()) {
      const exact = mixtureBelow(components, Math.log(values[place] ?? Number.NaN));
      expect(Math.abs(exact - level)).toBeLessThan(errorAt(level));
    }
  }
});

test('the mixture over landings is that of the value at landing', () => {
  const landed = valueAtLanding(still(), LANDINGS, 'value');
  if (landed.kind === 'refused') throw new Error(landed.reason);
  const [last] = bandsOf({ ...GIVEN, model: still(), landings: LANDINGS, days: [301] }).days;
  for (const [place, level] of LEVELS.entries()) {
    const exact = mixtureBelow(landed.components, Math.log(last?.values[place] ?? Number.NaN));
    expect(Math.abs(exact - level)).toBeLessThan(errorAt(level));
  }
});

test('those who fly on do not feel that somebody might have landed', () => {
  const [days, draws] = [[30, 100, 200, 299], 1000];
  const alone = bandsOf({ ...GIVEN, days, draws, landings: [{ day: 300, weight: 1 }] });
  const beside = bandsOf({
    ...GIVEN,
    days,
    draws,
    landings: [
      { day: 60, weight: 1e-12 },
      { day: 300, weight: 1 },
    ],
  });
  for (const [row, { values }] of alone.days.entries())
    for (const [place, value] of values.entries()) expect(beside.days[row]?.values[place]).toBeCloseTo(value, 9);
});

test('nobody jumps at landing: who does not recover stays where they were', () => {
  const landings = [{ day: 150, weight: 1 }];
  const { days, lowest } = bandsOf({ ...GIVEN, draws: 1000, model: still(), landings, days: [150, 151, 152] });
  for (const [place] of LEVELS.entries())
    for (const values of [days[1]?.values, days[2]?.values, lowest])
      expect(values?.[place]).toBeCloseTo(days[0]?.values[place] ?? Number.NaN, 9);
});

test('after landing half of the deficit is left after a half-life, its pace spread as said', () => {
  // One person known exactly: what is left after h days is 2^(−1/x), x log-normal with SD 0.5.
  const known: ProjectionModel = {
    ...bone(),
    driftPerDay: 0,
    slices: [
      {
        weight: 1,
        adherence: 1,
        dose: 1,
        state: { level: 0, amplitude: 1, covariance: [0, 0, 0, 0] },
      },
    ],
  };
  const lost = boneCourse(180);
  const [later] = bandsOf({ ...GIVEN, model: known, landings: [{ day: 180, weight: 1 }], days: [180 + 211] }).days;
  for (const [place, level] of LEVELS.entries()) {
    const left = -(later?.values[place] ?? Number.NaN) / lost;
    // left = 2^(−exp(−0.5 z)): a slow recovery, z high, leaves much, and much is low here.
    const z = -Math.log(-Math.log2(left)) / 0.5;
    expect(Math.abs(normalCdf(z) - (1 - level))).toBeLessThan(errorAt(level));
  }
});

test('drift is a walk: what it adds between two days is their difference, and the lowest value is below both', () => {
  const drifting: ProjectionModel = {
    ...bone(),
    course: () => 0,
    driftPerDay: 0.01,
    slices: bone().slices.map((slice) => ({ ...slice, state: { level: 0, amplitude: 0, covariance: [0, 0, 0, 0] } })),
  };
  const days = Array.from({ length: 200 }, (_, day) => day + 1);
  const walk = bandsOf({ ...GIVEN, model: drifting, landings: [{ day: 200, weight: 1 }], days });
  // By reflection, P(lowest < c) = 2 Φ(c/√(qt)) for a walk without steps; two hundred steps reach a little less far.
  const sd = Math.sqrt(0.01 * 200);
  const lowest = 2 * normalCdf((walk.lowest[2] ?? Number.NaN) / sd);
  expect(lowest).toBeGreaterThan(0.5 - errorAt(0.5));
  expect(lowest).toBeLessThan(0.5 + errorAt(0.5) + 0.03);
  const last = walk.days.at(-1)?.values[0] ?? Number.NaN;
  expect(Math.abs(normalCdf(last / sd) - 0.05)).toBeLessThan(errorAt(0.05));
});

test('the same seed gives the same answer, another seed another', () => {
  const once = bandsOf({ ...GIVEN, draws: 1000 });
  expect(bandsOf({ ...GIVEN, draws: 1000 })).toEqual(once);
  expect(bandsOf({ ...GIVEN, draws: 1000, seed: 8 }).days).not.toEqual(once.days);
});

test('more days leave the days before them as they were, in flight and after landing', () => {
  const short = bandsOf({ ...GIVEN, draws: 1001, days: [5, 15, 170] });
  const long = bandsOf({ ...GIVEN, draws: 1001, days: [5, 15, 170, 185, 200, 400] });
  expect(long.days.slice(0, 3)).toEqual(short.days);
});

/** With levels on the ranks themselves every draw is seen. */
const everyDraw = (draws: number): readonly number[] => {
  const levels = Array.from({ length: draws }, (_, rank) => rank / (draws - 1));
  const result = bandsOf({ ...GIVEN, draws, levels, days: [15, 170, 220] });
  return result.days[2]?.values ?? [];
};

test('more draws begin with the fewer', () => {
  const few = everyDraw(100);
  const many = everyDraw(250);
  const isAmong = (value: number): boolean => many.some((other) => Math.abs(other - value) < 1e-9);
  expect(few.filter((value) => !isAmong(value))).toEqual([]);
});

test('a landing that is moved leaves days before the earlier one as they were', () => {
  const early = bandsOf({ ...GIVEN, draws: 1000, days: [5, 60] });
  const late = bandsOf({ ...GIVEN, draws: 1000, days: [5, 60], landings: [{ day: 300, weight: 1 }] });
  expect(late.days).toEqual(early.days);
});

test('weights of landings need not add up to 1, nor stand in order; days without weight count for nothing', () => {
  const one = bandsOf({
    ...GIVEN,
    draws: 1000,
    days: [200],
    landings: [
      { day: 150, weight: 0.25 },
      { day: 190, weight: 0.75 },
    ],
  });
  const other = bandsOf({
    ...GIVEN,
    draws: 1000,
    days: [200],
    landings: [
      { day: 190, weight: 3 },
      { day: 3000, weight: 0 },
      { day: 150, weight: 1 },
    ],
  });
  expect(other.days).toEqual(one.days);
});

const LINE = ownLine('the lower line', 33);

test('shares under a line grow with the line, and "ever" is no smaller than on any day', () => {
  const { under } = bandsOf({ ...GIVEN, line: LINE });
  if (under?.kind !== 'estimate') throw new Error('There is a share.');
  expect(under.byDay).toHaveLength(GIVEN.days.length);
  for (const [place, day] of GIVEN.days.entries()) {
    const exact = mixtureBelow(componentsOn(uptake(), day, 'value'), Math.log(33));
    expect(Math.abs((under.byDay[place] ?? Number.NaN) - exact)).toBeLessThan(errorAt(exact));
  }
  expect(under.ever).toBeGreaterThanOrEqual(Math.max(...under.byDay));
  expect(under.ever).toBeLessThanOrEqual(under.byDay.reduce((sum, each) => sum + each, 0));
});

test('a line on the scale of percent is taken as it is', () => {
  const { under } = bandsOf({
    ...GIVEN,
    model: bone(),
    days: [150],
    line: ownLine('two percent', -2),
  });
  const exact = mixtureBelow(componentsOn(bone(), 150, 'value'), -2);
  if (under?.kind !== 'estimate') throw new Error('There is a share.');
  expect(Math.abs((under.byDay[0] ?? Number.NaN) - exact)).toBeLessThan(errorAt(exact));
});

const UNVERIFIED: LimitRule = {
  id: 'from-memory',
  number: null,
  quantity: 'maximal oxygen uptake',
  phase: 'after flight',
  status: 'unverified',
  note: 'for this test',
  kind: 'limit',
  comparator: 'at least',
  limit: 33,
  basis: 'absolute',
  unit: 'mL/(kg min)',
};

test('an unverified line gets a sentence and no number; the bands stand', () => {
  const { under, days } = bandsOf({ ...GIVEN, draws: 100, line: lineOfRule(UNVERIFIED, 33) });
  expect(days).toHaveLength(GIVEN.days.length);
  expect(under).toEqual({
    kind: 'refused',
    reason:
      '"rule from-memory (maximal oxygen uptake, after flight)" has not been compared with the rule as printed, and no probability is given against it. Look at the band beside the line, or have the rule verified.',
  });
});

test.each([0, -3, Number.NaN, Infinity])('no share is given under a line at %d', (at) => {
  expect(bandsOf({ ...GIVEN, draws: 100, line: ownLine('the lower line', at) }).under?.kind).toBe('refused');
});

test('without a line nothing is said of one', () => {
  expect(bandsOf({ ...GIVEN, draws: 100 }).under).toBeNull();
});

test.each<readonly [Partial<JointGiven>, RegExp]>([
  [{ draws: 99 }, /Draws must be a whole number from 100 to 1000000; they are 99/],
  [{ draws: 1000.5 }, /Draws must be a whole number/],
  [{ draws: 1_000_001 }, /Draws must be a whole number/],
  [{ days: [] }, /Days must ascend, from 0 to 36500/],
  [{ days: [5, 5] }, /Days must ascend/],
  [{ days: [-1, 5] }, /Days must ascend/],
  [{ days: [5, 36_501] }, /Days must ascend/],
  [{ days: [Number.NaN] }, /Days must ascend/],
  [{ levels: [] }, /Levels must ascend, from 0 to 1/],
  [{ levels: [0.9, 0.5] }, /Levels must ascend/],
  [{ levels: [1.1] }, /Levels must ascend/],
  [{ model: { ...uptake(), slices: [] } }, /holds nothing to draw from/],
  [{ landings: [] }, /No landing day was given that could happen/],
  [{ landings: [{ day: 150, weight: 0 }] }, /No landing day was given that could happen/],
  [{ landings: [{ day: 150.5, weight: 1 }] }, /whole day, 1 to 3650 after launch.*day 150.5/],
  [{ landings: [{ day: 0, weight: 1 }] }, /whole day/],
  [{ landings: [{ day: 3651, weight: 1 }] }, /whole day/],
  [{ landings: [{ day: 150, weight: -1 }] }, /weight of zero or more; this is day 150 with weight -1/],
])('%j is refused in a sentence', (change, says) => {
  const result = jointProjection({ ...GIVEN, ...change });
  expect(result.kind).toBe('refused');
  if (result.kind === 'refused') expect(result.reason).toMatch(says);
});

test('both ends of what is possible are taken', () => {
  const ends = { draws: 100, days: [0, 36_500], levels: [0, 1] };
  expect(bandsOf({ ...GIVEN, ...ends, landings: [{ day: 1, weight: 1 }] }).days).toHaveLength(2);
  expect(bandsOf({ ...GIVEN, ...ends, landings: [{ day: 3650, weight: 1 }] }).days).toHaveLength(2);
  expect(bandsOf({ ...GIVEN, days: [1], levels: [0.5], draws: 1_000_000 }).days).toHaveLength(1);
});

test('a landing that cannot happen is not warned of', () => {
  const landings = [
    { day: 180, weight: 1 },
    { day: 3000, weight: 0 },
  ];
  expect(bandsOf({ ...GIVEN, draws: 100, days: [3001], landings }).cautions).toEqual([]);
  const landed = valueAtLanding(uptake(), landings, 'value');
  expect(landed).toMatchObject({ kind: 'estimate', cautions: [] });
  expect(valueAtLanding(uptake(), [], 'value')).toEqual({
    kind: 'refused',
    reason: 'No landing day was given that could happen.',
  });
});

test('flight days beyond the data are said; days after landing are not flight days', () => {
  const late = bandsOf({ ...GIVEN, draws: 100, days: [400], landings: [{ day: 400, weight: 1 }] });
  expect(late.cautions).toHaveLength(1);
  expect(bandsOf({ ...GIVEN, draws: 100, days: [400] }).cautions).toEqual([]);
});
