import { normalDensity, normalQuantile } from '#science/numeric/normal.ts';
import { oxygenUptakeCourse } from '#science/projection/course.ts';
import { jointProjection } from '#science/projection/joint-projection.ts';
import { landingWindow } from '#science/projection/landing.ts';
import { componentsOn, logModel, type ProjectionModel } from '#science/projection/model.ts';
import { mixtureMoments } from '#science/projection/mixture.ts';
import { OXYGEN_UPTAKE } from '#science/projection/quantities.table.ts';
import { measure, measured, present, ratioOf } from './measure.ts';
import { askReference, sayAgreement } from './python-reference.ts';

/** Ten thousand draws over a thousand days: adherence, amplitude, drift, landing and recovery at once. */
const [DRAWS, DAYS, SEED, RUNS] = [10_000, 1000, 20_270_301, 9];
const [EARLIEST, LATEST] = [900, 960];
const LEVELS = [0.05, 0.25, 0.5, 0.75, 0.95];
const PERSON = {
  pre: { value: 42, sd: 0.03 },
  tests: [
    { day: 15, value: 36.5, sd: 0.06 },
    { day: 45, value: 37.5, sd: 0.06 },
  ],
  training: { planned: 540, reference: 600, done: 19, missed: 5 },
};
const SAMPLED_DAYS = Array.from({ length: DAYS }, (_, day) => day + 1);

const modelOfPerson = (): ProjectionModel => {
  const made = logModel({ ...PERSON, quantity: OXYGEN_UPTAKE, course: oxygenUptakeCourse });
  if (made.kind === 'refused') throw new Error(made.reason);
  return made.model;
};

const project = () => {
  const result = jointProjection({
    model: modelOfPerson(),
    of: 'value',
    landings: landingWindow(EARLIEST, LATEST),
    days: SAMPLED_DAYS,
    draws: DRAWS,
    seed: SEED,
    levels: LEVELS,
  });
  if (result.kind === 'refused') throw new Error(result.reason);
  return result;
};

const reference = askReference<{ readonly rows: readonly (readonly number[])[]; readonly lowest: readonly number[] }>(
  'joint_projection.py',
  {
    ...PERSON,
    quantity: OXYGEN_UPTAKE,
    slices: modelOfPerson().slices.length,
    earliest: EARLIEST,
    latest: LATEST,
    days: DAYS,
    draws: DRAWS,
    seed: SEED,
    levels: LEVELS,
    runs: RUNS,
  },
);
const ours = await measure(`${DRAWS} draws × ${DAYS} days, with the model`, project, { runs: RUNS, warmUp: 2 });

/** Spread of the difference of two quantiles of so many draws each, for a nearly normal logarithm. */
const errorOfDifference = (sd: number, level: number): number =>
  (sd * Math.SQRT2 * Math.sqrt((level * (1 - level)) / DRAWS)) / normalDensity(normalQuantile(level));

const title = 'Forecast with everything unknown at once';
if (reference.kind === 'missing') {
  present(title, [ours]);
  console.log(`  ${reference.why}`);
} else {
  const { answer } = reference;
  present(title, [
    ratioOf(
      `${answer.versions} against ours`,
      measured('NumPy, rows of all draws, day by day', answer.times['NumPy'] ?? []),
      ours,
    ),
  ]);
  const { days } = project();
  const distances = days.flatMap(({ day, values }, row) => {
    // After the first landing the band is no wider than before: its last spread in flight stands for it.
    const { sd } = mixtureMoments(componentsOn(modelOfPerson(), Math.min(day, EARLIEST), 'value'));
    return values.map((value, place) => {
      const theirs = answer.result.rows[row]?.[place] ?? Number.NaN;
      return Math.abs(Math.log(value / theirs)) / errorOfDifference(sd, LEVELS[place] ?? Number.NaN);
    });
  });
  // Two generators of chance: bands differ by chance alone. Five spreads of a difference, over 5,000 that hang together.
  sayAgreement(`${distances.length} quantiles, in standard errors of chance`, Math.max(...distances), 5);
}
