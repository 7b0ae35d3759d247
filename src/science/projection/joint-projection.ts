import { method } from '../method.ts';
import type { Curve } from '../plot.ts';
import { randomStream } from '../random.ts';
import { BLACKMAN_VIGNA_2021, OUR_OWN_DESIGN } from '../sources.ts';
import type { Refused } from './adherence.ts';
import { oxygenUptakeCourse } from './course.ts';
import { drawPeople, startWalk, walkOn, type DrawnPeople, type Walk } from './joint-draws.ts';
import { cautionsOn, faultOfLandings, landingWindow, weighedLandings, type LandingDay } from './landing.ts';
import { faultOfLine, type Line } from './line.ts';
import { logModel, readOff, type ProjectionModel } from './model.ts';
import { fillNormals } from './normal-draws.ts';
import { quantilesOf } from './order-statistics.ts';
import { OXYGEN_UPTAKE } from './quantities.table.ts';
import type { Asked } from './prediction.ts';
import { DOORNIK_2005, HYNDMAN_FAN_1996, MARSAGLIA_TSANG_2000 } from './sources.ts';

/** Everything unknown at once, through flight, landing and after it: drawn, because no closed form has all of it. */

export interface JointGiven {
  readonly model: ProjectionModel;
  readonly of: Exclude<Asked, 'test'>;
  readonly landings: readonly LandingDay[];
  /** Ascending, from launch on; they may go past the last landing. */
  readonly days: readonly number[];
  readonly draws: number;
  readonly seed: number;
  /** Ascending, from 0 to 1. */
  readonly levels: readonly number[];
  readonly line?: Line;
}

export interface JointDay {
  readonly day: number;
  /** One for each level. */
  readonly values: readonly number[];
}

/** Shares of the draws that lie under a line. */
export type SharesUnder =
  | {
      readonly kind: 'estimate';
      readonly line: Line;
      readonly byDay: readonly number[];
      /** On any of the days. */
      readonly ever: number;
    }
  | Refused;

export type JointResult =
  | {
      readonly kind: 'bands';
      readonly levels: readonly number[];
      readonly days: readonly JointDay[];
      /** Quantiles of the lowest value of each draw over all days. */
      readonly lowest: readonly number[];
      readonly under: SharesUnder | null;
      readonly cautions: readonly string[];
    }
  | Refused;

const [FEWEST_DRAWS, MOST_DRAWS, LAST_DAY] = [100, 1_000_000, 36_500] as const;

const isAscending = (values: readonly number[], low: number, high: number): boolean =>
  values.length > 0 &&
  values.every(
    (value, place) => value >= low && value <= high && (place === 0 || value > (values[place - 1] ?? value)),
  );

const faultOf = ({ landings, days, draws, levels, model }: JointGiven): Refused | null => {
  const reason = !(Number.isInteger(draws) && draws >= FEWEST_DRAWS && draws <= MOST_DRAWS)
    ? `Draws must be a whole number from ${FEWEST_DRAWS} to ${MOST_DRAWS}; they are ${draws}.`
    : !isAscending(days, 0, LAST_DAY)
      ? `Days must ascend, from 0 to ${LAST_DAY}.`
      : !isAscending(levels, 0, 1)
        ? 'Levels must ascend, from 0 to 1.'
        : model.slices.length === 0
          ? 'The model holds nothing to draw from.'
          : null;
  return reason === null ? faultOfLandings(landings) : { kind: 'refused', reason };
};

const countBelow = (values: Float64Array, at: number): number => {
  let count = 0;
  for (let place = 0; place < values.length; place += 1) if ((values[place] as number) < at) count += 1;
  return count;
};

/** Looks at everybody on each of the days, in order. */
const walkThrough = (
  { model, days, draws, seed }: JointGiven,
  people: DrawnPeople,
  lastLanding: number,
  look: (day: number, walk: Walk) => void,
): Walk => {
  const walk = startWalk(draws);
  const chance = new Float64Array(draws);
  let from = 0;
  for (const to of days) {
    // After the last landing nothing drifts any more. The stream has the name of its day: more days, the same days before.
    if (from < lastLanding) fillNormals(randomStream(seed, `drift until day ${to}`), chance);
    walkOn(people, walk, { from, to, course: model.course(to), driftPerDay: model.driftPerDay }, chance);
    look(to, walk);
    from = to;
  }
  return walk;
};

interface Aim {
  readonly kind: 'aim';
  readonly line: Line;
  /** On the scale of the model. */
  readonly at: number;
}

/** Where a line lies on the scale of the model, or why nothing is said against it. */
const aimAt = (model: ProjectionModel, line: Line): Aim | Refused => {
  const fault = faultOfLine(line);
  if (fault) return fault;
  if (model.scale === 'percent') return { kind: 'aim', line, at: line.at };
  return line.at > 0
    ? { kind: 'aim', line, at: Math.log(line.at) }
    : { kind: 'refused', reason: `"${line.name}" must lie above zero; it is ${line.at}.` };
};

const PLOTTED_DAYS = [
  0, 1, 2, 3, 5, 7, 10, 14, 21, 30, 45, 60, 80, 100, 120, 140, 150, 160, 170, 180, 190, 195, 200, 210, 220,
];
const PLOTTED_TESTS = [
  { day: 15, value: 36.5, sd: 0.06 },
  { day: 45, value: 37.5, sd: 0.06 },
];

/** A person with two tests in flight, whose landing lies between days 150 and 190. */
const exampleCurves = (): readonly Curve[] => {
  const made = logModel({
    quantity: OXYGEN_UPTAKE,
    course: oxygenUptakeCourse,
    pre: { value: 42, sd: 0.03 },
    tests: PLOTTED_TESTS,
    training: { planned: 540, reference: 600, done: 19, missed: 5 },
  });
  if (made.kind === 'refused') return [];
  const drawn = jointProjection({
    model: made.model,
    of: 'value',
    landings: landingWindow(150, 190),
    days: PLOTTED_DAYS,
    draws: 1000,
    seed: 1,
    levels: [0.05, 0.25, 0.5, 0.75, 0.95],
  });
  if (drawn.kind === 'refused') return [];
  const fan = (label: string, low: number, high: number): Curve => ({
    label,
    points: drawn.days.map(({ day, values }) => [day, values[2] ?? 0] as const),
    band: drawn.days.map(({ values }) => [values[low] ?? 0, values[high] ?? 0] as const),
  });
  return [fan('nine tenths', 0, 4), fan('one half', 1, 3)];
};

/** Bands through flight, landing and after it, with everything unknown at once. */
export const jointProjection = method(
  {
    id: 'projection/joint-projection',
    revision: 1,
    title: 'Bands through flight, landing and after it, with everything unknown at once',
    equations: [
      'adherence from its posterior, weighed by what the tests say of it; (L_0, A) from the two states at that dose',
      'drift(t) = drift(s) + √(q · (t − s)) · N(0, 1) until landing',
      'in flight: z(t) = L_0 − A · g(t) − drift(t)',
      'after landing on day T: z(t) = L_0 − (A · g(T) + drift(T)) · 2^(−(t − T) / h), ln h ~ N(ln h_median, SD_h^2)',
      'bands: quantiles of z over all draws on each day, straight between neighbours; then exp(z) where the scale is logarithmic',
    ],
    inputs: [
      { name: 'draws', symbol: 'n', unit: '1', possible: [FEWEST_DRAWS, MOST_DRAWS], valid: [1000, MOST_DRAWS] },
      { name: 'day', symbol: 't', unit: 'd', possible: [0, LAST_DAY], valid: [0, 1500] },
      { name: 'landing day', symbol: 'T', unit: 'd', possible: [1, 3650], valid: [1, 365] },
      { name: 'level', symbol: 'p', unit: '1', possible: [0, 1], valid: [0.01, 0.99] },
      { name: 'half-life after landing', symbol: 'h', unit: 'd', possible: [0.1, 36500], valid: [1, 1500] },
    ],
    outputs: [
      { name: 'value at each level on each day', symbol: 'Q_p(t)', unit: 'as measured, or %' },
      { name: 'lowest value over all days, at each level', symbol: 'Q_min', unit: 'as measured, or %' },
      { name: 'share of draws under a verified line', symbol: 'P', unit: '1' },
    ],
    refuses: [
      'Draws must be a whole number from 100 to 1000000.',
      'Days and levels must ascend.',
      'No landing day that could happen.',
      'A line that has not been compared with the rule as printed: bands are given, no probability.',
    ],
    source: OUR_OWN_DESIGN,
    restsOn: [BLACKMAN_VIGNA_2021, MARSAGLIA_TSANG_2000, DOORNIK_2005, HYNDMAN_FAN_1996],
    doesNotKnow:
      'A quantile from n draws lies at its level only to within √(p · (1 − p) / n): 0.002 at p = 0.05 and 10,000 draws. Adherence, amplitude, drift, landing and recovery count as independent of one another.',
    plot: {
      says: 'Two tests in flight, a landing between days 150 and 190, recovery after it: the band is widest where some have landed and some have not.',
      x: { name: 'days after launch', unit: 'd' },
      y: { name: 'maximal oxygen uptake', unit: 'mL/(kg min)' },
      curves: exampleCurves,
    },
  },
  (given: JointGiven): JointResult => {
    const fault = faultOf(given);
    if (fault) return fault;
    const { model, of, days, draws, levels, line } = given;
    const landings = weighedLandings(given.landings);
    const lastLanding = landings.at(-1)?.day ?? 0;
    const people = drawPeople(model, landings, of, given);
    const aim = line ? aimAt(model, line) : null;
    const read = (values: Float64Array): readonly number[] =>
      quantilesOf(values, levels).map((value) => readOff(model, value));
    const rows: JointDay[] = [];
    const byDay: number[] = [];
    const walk = walkThrough(given, people, lastLanding, (day, { now }) => {
      if (aim?.kind === 'aim') byDay.push(countBelow(now, aim.at) / draws);
      rows.push({ day, values: read(now) });
    });
    const sharesUnder = ({ line: of, at }: Aim): SharesUnder => ({
      kind: 'estimate',
      line: of,
      byDay,
      ever: countBelow(walk.lowest, at) / draws,
    });
    return {
      kind: 'bands',
      levels,
      days: rows,
      lowest: read(walk.lowest),
      under: aim?.kind === 'aim' ? sharesUnder(aim) : aim,
      cautions: cautionsOn(model, Math.min(days.at(-1) ?? 0, lastLanding)),
    };
  },
);
