import { expect, test } from 'vitest';
import { adherenceAt } from './adherence.ts';
import { boneCourseSaturating, oxygenUptakeCourse } from './course.ts';
import { basisOf, forecast, FORECAST_LEVELS, type ForecastGiven, type ForecastResult } from './forecast.ts';
import { landingWindow, valueAtLanding } from './landing.ts';
import { chanceUnder, chanceUnderLine, lineOfRule, ownLine } from './line.ts';
import {
  boneModel,
  componentsOn,
  logModel,
  type LogModelGiven,
  type ModelResult,
  type ProjectionModel,
} from './model.ts';
import { mixtureMoments } from './mixture.ts';
import { whatWasNotMeasured, type Evidence } from './not-measured.ts';
import { FEMORAL_NECK, OXYGEN_UPTAKE } from './quantities.table.ts';
import type { LimitRule } from '../standards/rule.ts';

const modelOf = (made: ModelResult): ProjectionModel => {
  if (made.kind === 'refused') throw new Error(made.reason);
  return made.model;
};

const TRAINING = { planned: 540, reference: 600, done: 19, missed: 5 };
const TESTS = [
  { day: 15, value: 36.5, sd: 0.06 },
  { day: 45, value: 37.5, sd: 0.06 },
];
const LOG: LogModelGiven = {
  quantity: OXYGEN_UPTAKE,
  course: oxygenUptakeCourse,
  pre: { value: 42, sd: 0.03 },
  tests: TESTS,
  training: TRAINING,
};
/** Made in each test: a fault in the making is a fault of that test. */
const uptake = (): ProjectionModel => modelOf(logModel(LOG));
const bone = (): ProjectionModel => modelOf(boneModel({ site: FEMORAL_NECK, missions: [], training: TRAINING }));

const EVIDENCE: Evidence = {
  quantity: 'maximal oxygen uptake',
  measurableInFlight: true,
  preAge: 60,
  tests: [
    { day: 15, maximal: false },
    { day: 45, maximal: true },
  ],
  today: 60,
  sessionsCounted: 24,
  earlierMissions: 1,
  landingRange: 0,
};

const UNVERIFIED: LimitRule = {
  id: 'from-memory',
  number: null,
  quantity: 'maximal oxygen uptake',
  phase: 'after flight',
  status: 'unverified',
  note: 'for this test',
  kind: 'limit',
  comparator: 'at least',
  limit: 36,
  basis: 'absolute',
  unit: 'mL/(kg min)',
};

const GIVEN: ForecastGiven = {
  get model() {
    return uptake();
  },
  evidence: EVIDENCE,
  landings: landingWindow(150, 190),
  days: [60, 90, 150, 190, 220],
  lines: [ownLine('the lower line', 33), lineOfRule(UNVERIFIED, 36)],
  seed: 3,
  draws: 2000,
};

const told = (given: ForecastGiven): Extract<ForecastResult, { kind: 'forecast' }> => {
  const result = forecast(given);
  if (result.kind === 'refused') throw new Error(result.reason);
  return result;
};

test('what was not measured comes first', () => {
  expect(Object.keys(told(GIVEN)).slice(0, 2)).toEqual(['kind', 'notMeasured']);
});

test('a forecast has bands on each day, a range at landing, and a chance for each verified line only', () => {
  const result = told(GIVEN);
  expect(result.days.map(({ day }) => day)).toEqual(GIVEN.days);
  expect(result.days.every(({ values }) => values.length === FORECAST_LEVELS.length)).toBe(true);
  expect(result.of).toBe('value');
  const landed = valueAtLanding(uptake(), GIVEN.landings, 'value');
  expect(result.atLanding).toEqual(landed);
  expect(result.chances.map(({ kind }) => kind)).toEqual(['estimate', 'refused']);
});

test.each([
  [0, 'population estimate'],
  [1, 'population estimate'],
  [2, 'own measurements'],
  [9, 'own measurements'],
] as const)('%d own measurements make a %s', (count, basis) => {
  expect(basisOf(count)).toBe(basis);
});

test('tests in flight and earlier missions count as own measurements, the one before flight does not', () => {
  expect(uptake().ownMeasurements).toBe(2);
  expect(told(GIVEN)).toMatchObject({ basis: 'own measurements', ownMeasurements: 2 });
  expect(modelOf(logModel({ ...LOG, tests: [] })).ownMeasurements).toBe(0);
  const once = boneModel({
    site: FEMORAL_NECK,
    missions: [{ change: -4, months: 6, scanSd: 1.8 }],
    training: TRAINING,
  });
  expect(modelOf(once).ownMeasurements).toBe(1);
});

test('bone, and whatever was not measured before flight, is forecast as a change', () => {
  const [first] = told({ ...GIVEN, model: bone(), lines: [] }).days;
  expect(first?.values[4]).toBeLessThan(5);
  expect(told({ ...GIVEN, model: bone(), lines: [] }).of).toBe('ratio to own pre');
  expect(told({ ...GIVEN, evidence: { ...EVIDENCE, preAge: null }, lines: [] }).of).toBe('ratio to own pre');
});

test('a band becomes a warning beyond half as long again as the longest mission, if the landing may lie there', () => {
  expect(told(GIVEN).warningFrom).toBeNull();
  expect(told({ ...GIVEN, landings: landingWindow(300, 328) }).warningFrom).toBeNull();
  // Half as long again as 438 days is a whole day: the day itself is no warning yet.
  expect(told({ ...GIVEN, model: bone(), lines: [], landings: [{ day: 657, weight: 1 }] }).warningFrom).toBeNull();
  expect(told({ ...GIVEN, model: bone(), lines: [], landings: [{ day: 658, weight: 1 }] }).warningFrom).toBe(657);
  const late = told({ ...GIVEN, landings: landingWindow(320, 340) });
  expect(late.warningFrom).toBe(1.5 * 219);
  expect(late.cautions).toEqual([expect.stringMatching(/Day 340 .* nobody knows/)]);
});

test('a steady rate of bone loss is doubted beyond seven months, the saturating course is not', () => {
  const saturating = modelOf(
    boneModel({ site: FEMORAL_NECK, course: boneCourseSaturating, missions: [], training: TRAINING }),
  );
  const cautionsOf = (model: ProjectionModel, day: number): readonly string[] =>
    told({ ...GIVEN, model, landings: [{ day, weight: 1 }], lines: [] }).cautions;
  expect(cautionsOf(bone(), 213)).toEqual([]);
  expect(cautionsOf(bone(), 214)).toEqual([
    'Beyond about seven months a steady rate of bone loss overstates it: look at the saturating course beside it.',
  ]);
  expect(cautionsOf(saturating, 214)).toEqual([]);
  expect(cautionsOf(saturating, 439)).toHaveLength(1);
});

test('what the joint projection refuses, a forecast refuses', () => {
  expect(forecast({ ...GIVEN, days: [] })).toMatchObject({
    kind: 'refused',
    reason: expect.stringMatching(/Days/) as string,
  });
  expect(forecast({ ...GIVEN, landings: [] })).toMatchObject({ kind: 'refused' });
});

test('a range of landings is at least as wide as its middle day alone', () => {
  const wide = valueAtLanding(bone(), landingWindow(90, 270), 'value');
  const narrow = valueAtLanding(bone(), [{ day: 180, weight: 1 }], 'value');
  if (wide.kind === 'refused' || narrow.kind === 'refused') throw new Error('Both can be.');
  expect(wide.high - wide.low).toBeGreaterThan(narrow.high - narrow.low);
});

test('a window holds every day from the first to the last, each alike', () => {
  expect(landingWindow(178, 180)).toEqual([178, 179, 180].map((day) => ({ day, weight: 1 / 3 })));
  expect(landingWindow(180, 180)).toEqual([{ day: 180, weight: 1 }]);
  expect(landingWindow(181, 180)).toEqual([]);
});

test.each([0, -1, Number.NaN])('no probability is given under a value of %d', (at) => {
  const line = ownLine('a line', at);
  expect(chanceUnderLine([{ weight: 1, mean: 3, sd: 0.1 }], 'log', line).kind).toBe('refused');
});

test('one normal distribution alone: the formula and the mixture agree, also where nothing is left', () => {
  for (const [at, mean, sd] of [
    [32.9, 3.64, 0.0666],
    [45, 3.64, 0.0666],
    [1e-6, 3.64, 0.01],
    [1e6, 3.64, 0.01],
  ] as const) {
    const chance = chanceUnderLine([{ weight: 1, mean, sd }], 'log', ownLine('a line', at));
    // Beyond 38 standard deviations one of the two says zero, the other a number that is hardly one.
    expect(chance.kind === 'estimate' ? chance.value : Number.NaN).toBeCloseTo(chanceUnder(at, mean, sd), 15);
  }
  expect(chanceUnder(1e-6, 3.64, 0.01)).toBeLessThan(1e-300);
  expect(chanceUnder(1e6, 3.64, 0.01)).toBe(1);
});

test('percent may lie below zero', () => {
  const line = ownLine('a line', -2);
  expect(chanceUnderLine([{ weight: 1, mean: -2, sd: 1 }], 'percent', line)).toEqual({
    kind: 'estimate',
    value: 0.5,
    line,
  });
});

test('slices weigh the same before a test, and less where a test speaks against them', () => {
  const before = modelOf(logModel({ ...LOG, tests: [] })).slices;
  expect(before.every(({ weight }) => Math.abs(weight - 1 / before.length) < 1e-15)).toBe(true);
  const good = modelOf(logModel({ ...LOG, tests: [{ day: 60, value: 42, sd: 0.01 }] })).slices;
  expect(good.reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(1, 12);
  // Nothing lost: that speaks for much training.
  expect(good.at(-1)?.weight).toBeGreaterThan(good[0]?.weight ?? 1);
  const [first, last] = [good[0], good.at(-1)];
  expect(first?.adherence).toBeLessThan(last?.adherence ?? 0);
  expect(first?.dose).toBeCloseTo(0.9 * (first?.adherence ?? 0), 12);
});

test('bone of somebody who misses nothing changes at the rate of that dose', () => {
  const training = { planned: 0.8, reference: 1, done: 10_000, missed: 0 };
  const missions = [{ change: -4, months: 6, scanSd: 1.8 }];
  const { mean } = mixtureMoments(
    componentsOn(modelOf(boneModel({ site: FEMORAL_NECK, missions, training })), 180, 'value'),
  );
  // The worked example at a dose of 0.8; two invented sessions missed of ten thousand move it by a few parts in ten thousand.
  expect(mean / ((-0.540480726628806 * 180) / 30.4375)).toBeCloseTo(1, 3);
});

test('slices lie in the middles of equal shares of the adherence', () => {
  const { slices } = modelOf(logModel({ ...LOG, tests: [] }));
  expect(slices[0]?.adherence).toBeCloseTo(adherenceAt(19, 5, 0.5 / slices.length), 10);
  expect(slices.at(-1)?.adherence).toBeCloseTo(adherenceAt(19, 5, 1 - 0.5 / slices.length), 10);
});

test('an earlier mission weighs slices of bone as well', () => {
  const missions = [{ change: 0, months: 6, scanSd: 0.1 }];
  const slices = modelOf(boneModel({ site: FEMORAL_NECK, missions, training: TRAINING })).slices;
  expect(slices.at(-1)?.weight).toBeGreaterThan(slices[0]?.weight ?? 1);
});

test('the saturating course is taken where it is asked for', () => {
  const model = modelOf(
    boneModel({ site: FEMORAL_NECK, course: boneCourseSaturating, missions: [], training: TRAINING }),
  );
  expect(model.course(365)).toBe(boneCourseSaturating(365));
});

test.each([
  [{ planned: -1 }, /A dose needs what is planned/],
  [{ planned: Number.NaN }, /A dose needs what is planned/],
  [{ reference: 0 }, /A dose needs what is planned/],
  [{ planned: Infinity }, /A dose needs what is planned/],
  [{ reference: -1 }, /A dose needs what is planned/],
  [{ planned: 1e300, reference: 1e-300 }, /A dose needs what is planned/],
  [{ done: -1 }, /must be whole numbers from 0 to 10000/],
  [{ missed: 0.5 }, /must be whole numbers from 0 to 10000/],
])('training with %j is refused', (change, says) => {
  const training = { ...TRAINING, ...change };
  for (const made of [logModel({ ...LOG, training }), boneModel({ site: FEMORAL_NECK, missions: [], training })]) {
    expect(made.kind).toBe('refused');
    if (made.kind === 'refused') expect(made.reason).toMatch(says);
  }
});

test('nothing planned is a dose of nothing, not a fault', () => {
  const model = modelOf(logModel({ ...LOG, training: { ...TRAINING, planned: 0 } }));
  expect(model.slices.every(({ dose }) => dose === 0)).toBe(true);
});

test('what the filter or a mission refuses, the model refuses', () => {
  expect(logModel({ ...LOG, pre: { value: 0, sd: 0.03 } }).kind).toBe('refused');
  const missions = [{ change: -4, months: 0, scanSd: 1.8 }];
  expect(boneModel({ site: FEMORAL_NECK, missions, training: TRAINING }).kind).toBe('refused');
});

const DOSE = 'How much more is lost with less training has been measured in nobody in flight: it is an assumption.';

test('with everything at hand only the dose was never measured', () => {
  expect(whatWasNotMeasured(EVIDENCE)).toEqual([DOSE]);
});

test.each<readonly [Partial<Evidence>, readonly string[]]>([
  [
    { preAge: null },
    ['The maximal oxygen uptake was not measured before flight: only a change can be forecast, not a value.'],
  ],
  [{ preAge: 90 }, []],
  [{ preAge: 91 }, ['The last measurement before flight was 91 days before launch.']],
  [
    { tests: [], today: 12 },
    ['The maximal oxygen uptake has not been tested in flight: day 12 is forecast from other people.'],
  ],
  [{ tests: [], today: 0 }, ['The maximal oxygen uptake has not been tested in flight: the flight has not begun.']],
  [
    { tests: [{ day: 45, maximal: false }] },
    ['No test in flight went to the maximum: the maximal oxygen uptake was read from easier work.'],
  ],
  [{ today: 90 }, []],
  [{ today: 91 }, ['The newest test is 46 days old.']],
  [
    { measurableInFlight: false, tests: [] },
    ['In flight nobody measures the maximal oxygen uptake: what happens there is inferred.'],
  ],
  [
    { earlierMissions: 0 },
    ['No earlier mission of this person is known: how they lose and regain maximal oxygen uptake is other people’s.'],
  ],
  [{ sessionsCounted: 0 }, ['No session is counted yet: that eight of ten are done is an assumption.']],
  [{ landingRange: 40 }, ['The landing has no fixed day: it is a range of 40 days.']],
])('%j is said', (change, says) => {
  expect(whatWasNotMeasured({ ...EVIDENCE, ...change })).toEqual([...says, DOSE]);
});

test('where nothing at all was measured, everything is said, the most important first', () => {
  const nothing: Evidence = {
    ...EVIDENCE,
    preAge: null,
    tests: [],
    today: 10,
    sessionsCounted: 0,
    earlierMissions: 0,
    landingRange: 40,
  };
  expect(whatWasNotMeasured(nothing)).toHaveLength(6);
  expect(whatWasNotMeasured(nothing)[0]).toMatch(/not measured before flight/);
});
