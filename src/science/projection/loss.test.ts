import fc from 'fast-check';
import { expect, test } from 'vitest';
import { MEASURED_LOSSES } from '../bone/loss-rates.table.ts';
import { RECOVERY_HALF_LIVES } from '../bone/recovery-half-lives.table.ts';
import { impossibilities } from '../evaluate.ts';
import { halfLifeBetween, partLeft } from '../recovery/halving.ts';
import { amplitudeOfChange, amplitudeOfStudies } from './amplitude.ts';
import { boneRatePosterior, boneRatePrior, type BoneRate, type EarlierMission } from './bone-rate.ts';
import { boneCourse, boneCourseSaturating, oxygenUptakeCourse, strengthCourse } from './course.ts';
import { amplitudeAtDose, amplitudeSdAtDose, boneRateAtDose, boneRateSdAtDose, effectiveDose } from './dose.ts';
import { logValueVariance } from './prediction.ts';
import { FEMORAL_NECK, OXYGEN_UPTAKE_CHANGES } from './quantities.table.ts';

const flightDay = fc.double({ min: 0, max: 3650, noNaN: true });
const dose = fc.double({ min: 0, max: 3, noNaN: true });

test('every course begins with nothing and never turns into a gain', () => {
  for (const course of [oxygenUptakeCourse, strengthCourse, boneCourse, boneCourseSaturating]) {
    expect(course(0)).toBe(0);
    fc.assert(
      fc.property(flightDay, (day) => {
        expect(course(day)).toBeGreaterThanOrEqual(0);
      }),
    );
  }
});

test('oxygen uptake falls for some four weeks, then half of it comes back and no more', () => {
  const days = Array.from({ length: 365 }, (_, day) => oxygenUptakeCourse(day));
  const worst = days.indexOf(Math.max(...days));
  expect(worst).toBeGreaterThan(20);
  expect(worst).toBeLessThan(35);
  expect(oxygenUptakeCourse(3650)).toBeCloseTo(0.5, 9);
});

test('strength and bone only fall, and the saturating course lags behind the steady one', () => {
  fc.assert(
    fc.property(flightDay, fc.double({ min: 0.5, max: 100, noNaN: true }), (day, later) => {
      for (const course of [strengthCourse, boneCourse, boneCourseSaturating])
        expect(course(day + later)).toBeGreaterThanOrEqual(course(day));
      expect(boneCourseSaturating(day)).toBeLessThanOrEqual(boneCourse(day) + 1e-12);
    }),
  );
  expect(boneCourseSaturating(0.01) / boneCourse(0.01)).toBeCloseTo(1, 5);
});

test('an amplitude gives back the change that it was read from', () => {
  fc.assert(
    fc.property(
      fc.double({ min: -0.9, max: 0.9, noNaN: true }),
      fc.double({ min: 0.05, max: 10, noNaN: true }),
      (change, course) => {
        expect(Math.expm1(-amplitudeOfChange(change, course) * course)).toBeCloseTo(change, 10);
      },
    ),
  );
});

test('one study alone is its own mean, and nothing lies between studies', () => {
  const [only] = OXYGEN_UPTAKE_CHANGES.rows;
  const result = amplitudeOfStudies(only ? [only] : [], oxygenUptakeCourse, 0.1);
  expect(result).toMatchObject({ kind: 'estimate', betweenStudies: 0, sd: 0.1 });
});

test('no study, or one on launch day, says nothing', () => {
  expect(amplitudeOfStudies([], oxygenUptakeCourse, 0.1)).toEqual({ kind: 'none', reason: 'No study was given.' });
  const early = { study: 'on launch day', people: 5, day: 0, change: -0.1 };
  expect(amplitudeOfStudies([...OXYGEN_UPTAKE_CHANGES.rows, early], oxygenUptakeCourse, 0.1)).toEqual({
    kind: 'none',
    reason: 'A study from a day on which nothing is lost yet says nothing of an amplitude.',
  });
});

test('less training never loses less, and more than the reference earns nothing', () => {
  fc.assert(
    fc.property(dose, dose, (one, other) => {
      const [less, more] = [Math.min(one, other), Math.max(one, other)];
      expect(amplitudeAtDose(less, 0.144, 1)).toBeGreaterThanOrEqual(amplitudeAtDose(more, 0.144, 1));
      expect(boneRateAtDose(less, -0.3, -1.15)).toBeLessThanOrEqual(boneRateAtDose(more, -0.3, -1.15) + 1e-12);
      expect(amplitudeAtDose(1 + less, 0.144, 1)).toBe(0.144);
      expect(amplitudeSdAtDose(1 + less, 0.144, 0.117, 1, 0.5)).toBe(0.117);
      expect(boneRateAtDose(1 + less, -0.3, -1.15)).toBe(-0.3);
      expect(boneRateSdAtDose(1 + less, -0.3, -1.15, 0.35, 0.84, 0)).toBe(0.35);
    }),
  );
});

test('a dose is what is planned over the reference, times what is done of it', () => {
  expect(effectiveDose(300, 600, 0.8)).toBeCloseTo(0.4, 12);
});

const PRIOR: BoneRate = boneRatePrior(FEMORAL_NECK, 0.8);
const mission: fc.Arbitrary<EarlierMission> = fc.record({
  change: fc.double({ min: -20, max: 5, noNaN: true }),
  months: fc.double({ min: 1, max: 14, noNaN: true }),
  scanSd: fc.double({ min: 0.3, max: 4, noNaN: true }),
});
const missions = fc.array(mission, { minLength: 1, maxLength: 4 });

const posteriorOf = (given: readonly EarlierMission[], transferSd = 0.2) => {
  const result = boneRatePosterior(PRIOR, given, transferSd);
  if (result.kind === 'refused') throw new Error(result.reason);
  return result;
};

test('without an earlier mission the rate is other people’s', () => {
  expect(posteriorOf([])).toEqual({ kind: 'estimate', ...PRIOR, ownMeasurements: 0, logLikelihood: 0 });
});

test('a mission narrows the rate and draws it towards itself, in whatever order', () => {
  fc.assert(
    fc.property(missions, (given) => {
      const there = posteriorOf(given);
      const back = posteriorOf(given.toReversed());
      expect(there.sd).toBeLessThan(PRIOR.sd);
      expect(back.mean).toBeCloseTo(there.mean, 10);
      expect(back.sd).toBeCloseTo(there.sd, 10);
      expect(back.logLikelihood).toBeCloseTo(there.logLikelihood, 6);
      const rates = [PRIOR.mean, ...given.map(({ change, months }) => change / months)];
      expect(there.mean).toBeGreaterThanOrEqual(Math.min(...rates) - 1e-12);
      expect(there.mean).toBeLessThanOrEqual(Math.max(...rates) + 1e-12);
    }),
  );
});

test('where missions differ much, one says little', () => {
  const one = [{ change: -4, months: 6, scanSd: 1.8 }];
  expect(posteriorOf(one, 5).sd).toBeGreaterThan(posteriorOf(one, 0.2).sd);
  expect(posteriorOf(one, 1e6).mean).toBeCloseTo(PRIOR.mean, 6);
});

const SCANNED: EarlierMission = { change: -4, months: 6, scanSd: 1.8 };

test.each([
  [{ change: -100 }, /A change lies between −100 and 100 %; it is -100/],
  [{ change: 100 }, /A change lies/],
  [{ change: Number.NaN }, /A change lies/],
  [{ months: 0 }, /lasts 0.1 to 120 months; it is 0/],
  [{ months: 121 }, /lasts 0.1 to 120 months/],
  [{ scanSd: 0 }, /precision of a scan lies above 0 and up to 20 %; it is 0/],
  [{ scanSd: 20.1 }, /precision of a scan/],
])('a mission with %j is refused', (change, says) => {
  const result = boneRatePosterior(PRIOR, [SCANNED, { ...SCANNED, ...change }], 0.2);
  expect(result.kind).toBe('refused');
  if (result.kind === 'refused') expect(result.reason).toMatch(says);
});

test('the ends of what is possible are taken', () => {
  for (const change of [{ months: 0.1 }, { months: 120 }, { scanSd: 20 }])
    expect(boneRatePosterior(PRIOR, [{ ...SCANNED, ...change }], 0).kind).toBe('estimate');
});

test.each([
  [{ mean: Number.NaN, sd: 0.3 }, 0.2],
  [{ mean: -0.5, sd: 0 }, 0.2],
  [{ mean: -0.5, sd: Infinity }, 0.2],
  [{ mean: -0.5, sd: 0.3 }, -0.1],
  [{ mean: -0.5, sd: 0.3 }, Number.NaN],
])('other people’s rate %j with a spread between missions of %d is refused', (prior, transferSd) => {
  expect(boneRatePosterior(prior, [SCANNED], transferSd)).toEqual({
    kind: 'refused',
    reason: 'The rate of other people needs a mean and a spread above zero.',
  });
});

test('figures of the femoral neck are those of the chapters on bone', () => {
  const leblanc = MEASURED_LOSSES.rows.find(
    ({ site, study }) => site === 'femoral neck' && study.text.startsWith('LeBlanc'),
  );
  expect([leblanc?.value, leblanc?.sd]).toEqual([FEMORAL_NECK.rateAtNoDose, FEMORAL_NECK.sdAtNoDose]);
  const recovery = RECOVERY_HALF_LIVES.rows.find(({ site }) => site === 'femoral neck');
  expect(recovery?.halfLife).toBe(FEMORAL_NECK.halfLife);
});

test('a half-life gives back the deficits that it was read from', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1, max: 50, noNaN: true }),
      fc.double({ min: 0.1, max: 0.9, noNaN: true }),
      fc.double({ min: 1, max: 500, noNaN: true }),
      (first, left, days) => {
        const half = halfLifeBetween(first, first * left, days);
        expect(partLeft(days, half)).toBeCloseTo(left, 10);
      },
    ),
  );
});

test('a deficit that has grown has no half-life', () => {
  expect(impossibilities(halfLifeBetween.record, [5, 5, 9])).toEqual([
    'The second deficit is smaller than the first, by a thousandth of itself or more.',
  ]);
});

test('a covariance larger than its variances allow is no covariance', () => {
  expect(impossibilities(logValueVariance.record, [0.01, 0.02, 0.01, 0.5, 0, 10])).toEqual([
    'A covariance is no larger than the two standard deviations multiplied.',
  ]);
  expect(impossibilities(logValueVariance.record, [0.01, 0.01, 0.01, 0.5, 0, 10])).toEqual([]);
  expect(impossibilities(logValueVariance.record, [0.25, 0.03, 0.01, 0.5, 0, 10])).toEqual([]);
  expect(logValueVariance(0.01, 0.01, 0.01, 1, 0, 10)).toBe(0);
});
