import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { adherenceBelow, adherenceQuantile, adherenceSd, expectedAdherence } from './adherence.ts';
import { halfLifeBetween, partLeft } from '../recovery/halving.ts';
import { amplitudeOfChange, amplitudeOfStudies } from './amplitude.ts';
import { boneChange, boneChangeSd, densityAfterChange, measuredChangeSd } from './bone-change.ts';
import { boneRatePosterior, boneRatePrior, type EarlierMission } from './bone-rate.ts';
import { boneCourse, boneCourseSaturating, oxygenUptakeCourse, strengthCourse } from './course.ts';
import { amplitudeAtDose, amplitudeSdAtDose } from './dose.ts';
import { chanceUnderLine, ownLine } from './line.ts';
import { mixtureQuantile, type Component } from './mixture.ts';
import { projectedValue, type Asked, type Prediction } from './prediction.ts';
import { FEMORAL_NECK, OXYGEN_UPTAKE, OXYGEN_UPTAKE_CHANGES } from './quantities.table.ts';
import { twoStateFilter, type Test, type TwoState, type TwoStateResult } from './two-state.ts';

/** Everything against NumPy, SciPy and statsmodels, which share no line with this program. */

interface Predicted {
  readonly day: number;
  readonly median: number;
  readonly low: number;
  readonly high: number;
  readonly testSd: number;
  readonly ratioMedian: number;
  readonly ratioLow: number;
  readonly ratioHigh: number;
  readonly ratioUnder: readonly (readonly [number, number])[];
  readonly valueUnder: readonly (readonly [number, number])[];
}
interface State {
  readonly level: number;
  readonly amplitude: number;
  readonly levelVariance: number;
  readonly covariance: number;
  readonly amplitudeVariance: number;
}
interface Followed {
  readonly course: 'oxygen' | 'strength';
  readonly pre: number;
  readonly preSd: number;
  readonly amplitude: number;
  readonly amplitudeSd: number;
  readonly drift: number;
  readonly tests: readonly Test[];
  readonly testSd: number;
  readonly before: Predicted;
  readonly after: Predicted;
  readonly joint: State & { readonly logLikelihood: number };
  readonly filter: {
    readonly steps: readonly (State & { readonly innovation: number; readonly innovationVariance: number })[];
    readonly logLikelihood: number;
  };
  readonly oneWalk: { readonly median: number; readonly sd: number };
}
interface BoneOutcome {
  readonly rate: number;
  readonly sd: number;
  readonly months: number;
  readonly change: number;
  readonly changeSd: number;
  readonly measuredSd: number;
  readonly underMinus5: number;
  readonly underMinus10: number;
  readonly density: number;
  readonly t: number;
  readonly underMinus2T: number;
}
interface Rate {
  readonly rate: number;
  readonly sd: number;
}
interface EvidenceOfRate {
  readonly rate: number;
  readonly error: number;
}
interface Fixture {
  readonly made: Readonly<Record<string, string | number>>;
  readonly courses: readonly Readonly<Record<'day' | 'oxygen' | 'strength' | 'bone' | 'boneSaturating', number>>[];
  readonly doses: readonly {
    readonly dose: number;
    readonly oxygen: readonly [number, number];
    readonly bone: readonly [number, number];
  }[];
  readonly studies: Readonly<Record<'mean' | 'between' | 'total' | 'strength', number>>;
  readonly worked: Followed;
  readonly drawn: readonly Followed[];
  readonly boneWorked: { readonly before: BoneOutcome; readonly after: BoneOutcome; readonly left180: number };
  readonly boneDrawn: readonly {
    readonly dose: number;
    readonly prior: Rate;
    readonly evidence: readonly EvidenceOfRate[];
    readonly posterior: Rate;
  }[];
  readonly adherence: readonly {
    readonly done: number;
    readonly missed: number;
    readonly mean: number;
    readonly sd: number;
    readonly quantiles: readonly (readonly [number, number])[];
    readonly cdf: readonly (readonly [number, number])[];
  }[];
  readonly mixtures: readonly {
    readonly components: readonly Component[];
    readonly quantiles: readonly (readonly [number, number])[];
  }[];
  readonly left: readonly (readonly [number, number, number])[];
  readonly halfLives: { readonly oxygen: number; readonly strength: number };
}

const FILE = join(import.meta.dirname, '../../../test/fixtures/science/projection.json');
// Written by the script that stands beside the file.
const fixture = JSON.parse(readFileSync(FILE, 'utf8')) as Fixture;

/** Both use doubles: what is left is the order of a few dozen operations. */
const RELATIVE = 1e-10;
type Near = (ours: number, theirs: number) => void;

/** The pairs that are not alike. */
const apart = (compare: (near: Near) => void): readonly (readonly [ours: number, theirs: number])[] => {
  const pairs: (readonly [number, number])[] = [];
  compare((ours, theirs) => pairs.push([ours, theirs]));
  expect(pairs.length).toBeGreaterThan(0);
  return pairs.filter(([ours, theirs]) => !(Math.abs(ours - theirs) <= RELATIVE * Math.max(1e-3, Math.abs(theirs))));
};

const COURSES = { oxygen: oxygenUptakeCourse, strength: strengthCourse };

test('the reference says what made it', () => {
  expect(Object.keys(fixture.made)).toEqual(expect.arrayContaining(['by', 'seed', 'numpy', 'scipy', 'statsmodels']));
});

test.each(fixture.courses)('courses on day $day', ({ day, oxygen, strength, bone, boneSaturating }) => {
  expect(
    apart((near) => {
      near(oxygenUptakeCourse(day), oxygen);
      near(strengthCourse(day), strength);
      near(boneCourse(day), bone);
      near(boneCourseSaturating(day), boneSaturating);
    }),
  ).toEqual([]);
});

test.each(fixture.doses)('amplitude and rate at a dose of $dose', ({ dose, oxygen, bone }) => {
  expect(
    apart((near) => {
      const { amplitude, amplitudeSd, doseSlope, doseSlopeSd } = OXYGEN_UPTAKE;
      near(amplitudeAtDose(dose, amplitude, doseSlope), oxygen[0]);
      near(amplitudeSdAtDose(dose, amplitude, amplitudeSd, doseSlope, doseSlopeSd), oxygen[1]);
      const rate = boneRatePrior(FEMORAL_NECK, dose);
      near(rate.mean, bone[0]);
      near(rate.sd, bone[1]);
    }),
  ).toEqual([]);
});

test('amplitudes of the published studies', () => {
  expect(
    apart((near) => {
      const { mean, between, total, strength } = fixture.studies;
      const studied = amplitudeOfStudies(OXYGEN_UPTAKE_CHANGES.rows, oxygenUptakeCourse, 0.1);
      if (studied.kind === 'none') throw new Error(studied.reason);
      near(studied.mean, mean);
      near(studied.betweenStudies, between);
      near(studied.sd, total);
      near(amplitudeOfChange(-0.058, strengthCourse(165)), strength);
    }),
  ).toEqual([]);
});

const followed = [
  { name: 'the worked example', ...fixture.worked },
  ...fixture.drawn.map((each, place) => ({ name: `case ${place + 1}, ${each.tests.length} tests`, ...each })),
];

const filter = (
  { course, pre, preSd, amplitude, amplitudeSd, drift }: Followed,
  tests: readonly Test[],
): Extract<TwoStateResult, { kind: 'state' }> => {
  const result = twoStateFilter({
    pre: { value: pre, sd: preSd },
    amplitude: { mean: amplitude, sd: amplitudeSd },
    course: COURSES[course],
    driftPerDay: drift,
    tests,
  });
  if (result.kind === 'refused') throw new Error(result.reason);
  return result;
};

const sameState = (near: Near, { level, amplitude, covariance }: TwoState, theirs: State): void => {
  near(level, theirs.level);
  near(amplitude, theirs.amplitude);
  near(covariance[0], theirs.levelVariance);
  near(covariance[1], theirs.covariance);
  near(covariance[2], theirs.covariance);
  near(covariance[3], theirs.amplitudeVariance);
};

test.each(followed)('step by step as statsmodels has it: $name', (each) => {
  expect(
    apart((near) => {
      const { steps, logLikelihood } = filter(each, each.tests);
      for (const [place, theirs] of each.filter.steps.entries()) {
        const step = steps[place];
        if (!step) throw new Error('A step is missing.');
        near(step.innovation, theirs.innovation);
        near(step.innovationVariance, theirs.innovationVariance);
        sameState(near, step.state, theirs);
      }
      near(logLikelihood, each.filter.logLikelihood);
    }),
  ).toEqual([]);
  expect(filter(each, each.tests).steps).toHaveLength(each.filter.steps.length);
});

test.each(followed)('all at once as one joint normal distribution has it: $name', (each) => {
  expect(
    apart((near) => {
      const { state, logLikelihood } = filter(each, each.tests);
      sameState(near, state, each.joint);
      near(logLikelihood, each.joint.logLikelihood);
    }),
  ).toEqual([]);
});

const predict = (state: TwoState, { course, drift }: Followed, day: number, of: Asked, testSd = 0): Prediction => {
  const ahead = { day, course: COURSES[course], driftPerDay: drift, longestFlight: 219 };
  const result = projectedValue(state, ahead, of, testSd);
  if (result.kind === 'refused') throw new Error(result.reason);
  return result;
};

const under = ({ mean, sd }: Prediction, at: number): number => {
  const result = chanceUnderLine([{ weight: 1, mean, sd }], 'log', ownLine('a line', at));
  if (result.kind === 'refused') throw new Error(result.reason);
  return result.value;
};

const samePrediction = (near: Near, state: TwoState, each: Followed, theirs: Predicted): void => {
  const value = predict(state, each, theirs.day, 'value');
  const ratio = predict(state, each, theirs.day, 'ratio to own pre');
  near(value.median, theirs.median);
  near(value.low, theirs.low);
  near(value.high, theirs.high);
  near(predict(state, each, theirs.day, 'test', each.testSd).sd, theirs.testSd);
  near(ratio.median, theirs.ratioMedian);
  near(ratio.low, theirs.ratioLow);
  near(ratio.high, theirs.ratioHigh);
  for (const [line, chance] of theirs.ratioUnder) near(under(ratio, line), chance);
  for (const [line, chance] of theirs.valueUnder) near(under(value, line), chance);
};

test.each(followed)('medians, bands and probabilities as SciPy has them: $name', (each) => {
  expect(
    apart((near) => {
      samePrediction(near, filter(each, []).state, each, each.before);
      samePrediction(near, filter(each, each.tests).state, each, each.after);
    }),
  ).toEqual([]);
});

test('drift counted as new at each test costs what the record says it costs', () => {
  const { oneWalk, after } = fixture.worked;
  const { median, sd } = predict(
    filter(fixture.worked, fixture.worked.tests).state,
    fixture.worked,
    after.day,
    'value',
  );
  expect(Math.abs(median / oneWalk.median - 1)).toBeLessThan(0.0035);
  expect(sd / oneWalk.sd).toBeGreaterThan(1);
  expect(sd / oneWalk.sd).toBeLessThan(1.105);
});

test('bone as in the worked example', () => {
  expect(
    apart((near) => {
      const { before, after, left180 } = fixture.boneWorked;
      const posterior = boneRatePosterior(
        boneRatePrior(FEMORAL_NECK, 0.8),
        [{ change: -4, months: 6, scanSd: 1.8 }],
        0.2,
      );
      if (posterior.kind === 'refused') throw new Error(posterior.reason);
      near(posterior.mean, after.rate);
      near(posterior.sd, after.sd);
      for (const {
        rate,
        sd,
        months,
        change,
        changeSd,
        measuredSd,
        underMinus5,
        underMinus10,
        density,
        t,
        underMinus2T,
      } of [before, after]) {
        near(boneChange(rate, months), change);
        near(boneChangeSd(months, sd, 0.25), changeSd);
        near(measuredChangeSd(changeSd, 1.8), measuredSd);
        near(densityAfterChange(0.88, change), density);
        near((densityAfterChange(0.88, change) - 0.934) / 0.137, t);
        const atMinus2 = 100 * ((0.934 - 2 * 0.137) / 0.88 - 1);
        for (const [at, chance] of [
          [-5, underMinus5] as const,
          [-10, underMinus10] as const,
          [atMinus2, underMinus2T] as const,
        ]) {
          const result = chanceUnderLine([{ weight: 1, mean: change, sd: changeSd }], 'percent', ownLine('a line', at));
          near(result.kind === 'estimate' ? result.value : Number.NaN, chance);
        }
      }
      near(after.change * partLeft(180, 211), left180);
    }),
  ).toEqual([]);
});

/** A mission whose scans have the standard error that the reference drew. */
const missionOf = ({ rate, error }: EvidenceOfRate): EarlierMission => ({
  change: rate * 6,
  months: 6,
  scanSd: (error * 6) / Math.SQRT2,
});

test.each(fixture.boneDrawn)('a rate of bone loss at a dose of $dose', ({ dose, prior, evidence, posterior }) => {
  expect(
    apart((near) => {
      const given = boneRatePrior(FEMORAL_NECK, dose);
      near(given.mean, prior.rate);
      near(given.sd, prior.sd);
      const result = boneRatePosterior(given, evidence.map(missionOf), 0.2);
      if (result.kind === 'refused') throw new Error(result.reason);
      near(result.mean, posterior.rate);
      near(result.sd, posterior.sd);
      near(result.ownMeasurements, evidence.length);
    }),
  ).toEqual([]);
});

test.each(fixture.adherence)('adherence after $done done and $missed missed', (each) => {
  expect(
    apart((near) => {
      const { done, missed, mean, sd, quantiles, cdf } = each;
      near(expectedAdherence(done, missed), mean);
      near(adherenceSd(done, missed), sd);
      for (const [share, value] of quantiles) {
        const result = adherenceQuantile(done, missed, share);
        near(result.kind === 'estimate' ? result.value : Number.NaN, value);
      }
      // SciPy itself is right to about twelve digits here; probabilities below 1e-15 are nothing to either.
      for (const [value, chance] of cdf) near(adherenceBelow(done, missed, value), chance);
    }),
  ).toEqual([]);
});

test.each(fixture.mixtures)('quantiles of a mixture of $components.length', ({ components, quantiles }) => {
  expect(
    apart((near) => {
      for (const [share, value] of quantiles) near(mixtureQuantile(components, share), value);
    }),
  ).toEqual([]);
});

test.each(fixture.left)('%d days after landing at a half-life of %d', (days, half, left) => {
  expect(
    apart((near) => {
      near(partLeft(days, half), left);
    }),
  ).toEqual([]);
});

test('half-lives of the table are those of the published deficits', () => {
  expect(
    apart((near) => {
      const knee = (control: number, intervals: number): number =>
        (100 * (17 * (1 - control / 208) + 9 * (1 - intervals / 191))) / 26;
      near(halfLifeBetween(100 * (0.35 / 2.98), 100 * (0.12 / 2.98), 9), fixture.halfLives.oxygen);
      near(halfLifeBetween(knee(194, 177), knee(195, 188), 25), fixture.halfLives.strength);
    }),
  ).toEqual([]);
  expect(Math.round(fixture.halfLives.oxygen)).toBe(OXYGEN_UPTAKE.halfLife);
});
