import { printedResults, type Check } from '../check.ts';
import { COUNTED_BY_HAND, RECOMPUTED, SCIPY } from '../sources.ts';
import { boneCourse, DAYS_PER_MONTH, oxygenUptakeCourse } from './course.ts';
import { forecast } from './forecast.ts';
import { jointProjection } from './joint-projection.ts';
import { valueAtLanding } from './landing.ts';
import { logModel, type ProjectionModel } from './model.ts';
import { whatWasNotMeasured } from './not-measured.ts';
import { OXYGEN_UPTAKE } from './quantities.table.ts';

const ratioAtLanding = (done: number, missed: number, part: 'low' | 'median' | 'high') => (): number => {
  const made = logModel({
    quantity: OXYGEN_UPTAKE,
    course: oxygenUptakeCourse,
    pre: { value: 42, sd: 0.03 },
    tests: [],
    training: { planned: 0.9, reference: 1, done, missed },
  });
  if (made.kind === 'refused') return Number.NaN;
  const landed = valueAtLanding(made.model, [{ day: 165, weight: 1 }], 'ratio to own pre');
  return landed.kind === 'estimate' ? landed[part] : Number.NaN;
};

/** Somebody of whom everything is known: no draw differs from another. */
const KNOWN: ProjectionModel = {
  scale: 'percent',
  course: boneCourse,
  driftPerDay: 0,
  longestFlight: 438,
  courseHolds: null,
  halfLife: 211,
  halfLifeLogSd: 0,
  ownMeasurements: 1,
  slices: [
    {
      weight: 1,
      adherence: 1,
      dose: 1,
      state: { level: 0, amplitude: 0.540480726628806, covariance: [0, 0, 0, 0] },
    },
  ],
};
const SIX_MONTHS = 6 * DAYS_PER_MONTH;
const LANDING = Math.ceil(SIX_MONTHS);
const GIVEN = { model: KNOWN, landings: [{ day: LANDING, weight: 1 }], days: [SIX_MONTHS, LANDING, LANDING + 211] };
const DRAWN = { draws: 100, seed: 1 };

const joint = (place: number) => (): number => {
  const result = jointProjection({ ...GIVEN, ...DRAWN, of: 'value', levels: [0.5] });
  return result.kind === 'bands' ? (result.days[place]?.values[0] ?? Number.NaN) : Number.NaN;
};

const EVIDENCE = {
  quantity: 'bone mineral density of the femoral neck',
  measurableInFlight: false,
  preAge: 30,
  tests: [],
  today: 0,
  sessionsCounted: 0,
  earlierMissions: 1,
  landingRange: 0,
};

const forecasted = (): number => {
  const result = forecast({ ...GIVEN, ...DRAWN, evidence: EVIDENCE, lines: [] });
  return result.kind === 'forecast' ? (result.days[0]?.values[2] ?? Number.NaN) : Number.NaN;
};

const BY_HALVES = 'half of what was missing at landing, to rounding';

export const jointChecks: readonly Check[] = [
  ...printedResults(
    valueAtLanding,
    SCIPY,
    2e-4,
    '64 slices against SciPy’s integral over the whole posterior of the adherence',
    [
      ['ratio after 165 days, 19 of 24 sessions done, share 0.05', ratioAtLanding(19, 5, 'low'), 0.741267],
      ['ratio after 165 days, 19 of 24 sessions done, median', ratioAtLanding(19, 5, 'median'), 0.890712],
      ['ratio after 165 days, 19 of 24 sessions done, share 0.95', ratioAtLanding(19, 5, 'high'), 1.069102],
      ['ratio after 165 days, 120 of 180 sessions done, share 0.05', ratioAtLanding(120, 60, 'low'), 0.72553],
    ],
  ),
  ...printedResults(jointProjection, RECOMPUTED, 5e-7, 'printed to six decimals; nothing is left to chance', [
    ['change after six months, everything known [%]', joint(0), -3.242884],
  ]),
  ...printedResults(jointProjection, RECOMPUTED, 1e-12, BY_HALVES, [
    ['a half-life after landing', () => joint(2)() / joint(1)(), 0.5],
  ]),
  ...printedResults(forecast, RECOMPUTED, 5e-7, 'printed to six decimals; nothing is left to chance', [
    ['change after six months, everything known [%]', forecasted, -3.242884],
  ]),
  ...printedResults(whatWasNotMeasured, COUNTED_BY_HAND, 0, 'three things: in flight, sessions, dose', [
    ['sentences before launch for bone after one mission', () => whatWasNotMeasured(EVIDENCE).length, 3],
  ]),
];
