import { randomStream } from '../random.ts';
import type { LandingDay } from './landing.ts';
import type { ProjectionModel, Slice } from './model.ts';
import { fillNormals } from './normal-draws.ts';
import type { Asked } from './prediction.ts';

/**
 * People drawn from what is known of one: each with an own value, an own amplitude, a landing day and a half-life after it.
 * Each kind of chance has its own stream, so that a longer run begins with the shorter one, and a change of one kind leaves
 * the others where they were.
 */
export interface DrawnPeople {
  readonly level: Float64Array;
  readonly amplitude: Float64Array;
  /** Days after launch. */
  readonly landing: Float64Array;
  /** Course on the landing day. */
  readonly courseAtLanding: Float64Array;
  /** Rate at which a deficit goes after landing, per day. */
  readonly recovery: Float64Array;
}

const cumulative = (weights: readonly number[]): Float64Array => {
  let sum = 0;
  return Float64Array.from(weights, (weight) => (sum += weight));
};

/** The place whose share of the whole a number from 0 to 1 falls into. */
const placeOf = (sums: Float64Array, uniform: number): number => {
  let [low, high] = [0, sums.length - 1];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((sums[middle] as number) > uniform) high = middle;
    else low = middle + 1;
  }
  return low;
};

/** A draw’s own share of two normal numbers: the lower triangle whose square is the covariance. */
const triangleOf = ({ state }: Slice): readonly [number, number, number] => {
  const [p11, p12, , p22] = state.covariance;
  const first = Math.sqrt(p11);
  const cross = first > 0 ? p12 / first : 0;
  return [first, cross, Math.sqrt(Math.max(0, p22 - cross * cross))];
};

const normals = (seed: number, name: string, count: number): Float64Array => {
  const row = new Float64Array(count);
  fillNormals(randomStream(seed, name), row);
  return row;
};

/** Draws people; landings in order, weights adding up to 1. */
export const drawPeople = (
  model: ProjectionModel,
  landings: readonly LandingDay[],
  of: Asked,
  { draws, seed }: { readonly draws: number; readonly seed: number },
): DrawnPeople => {
  const sliceSums = cumulative(model.slices.map(({ weight }) => weight));
  const landingSums = cumulative(landings.map(({ weight }) => weight));
  const triangles = model.slices.map(triangleOf);
  const courses = landings.map(({ day }) => model.course(day));
  const [ofSlice, ofLanding] = [randomStream(seed, 'adherence'), randomStream(seed, 'landing')];
  const [e1, e2] = [normals(seed, 'level', draws), normals(seed, 'amplitude', draws)];
  const pace = normals(seed, 'half-life', draws);
  const rows = (): Float64Array => new Float64Array(draws);
  const people = {
    level: rows(),
    amplitude: rows(),
    landing: rows(),
    courseAtLanding: rows(),
    recovery: rows(),
  };
  for (let draw = 0; draw < draws; draw += 1) {
    // One slice and one landing at least, and a normal number for each draw.
    const at = placeOf(sliceSums, ofSlice.uniform());
    const { state } = model.slices[at] as Slice;
    const [first, cross, second] = triangles[at] as readonly [number, number, number];
    const [one, other] = [e1[draw] as number, e2[draw] as number];
    people.level[draw] = of === 'ratio to own pre' ? 0 : state.level + first * one;
    people.amplitude[draw] = state.amplitude + cross * one + second * other;
    const landed = placeOf(landingSums, ofLanding.uniform());
    people.landing[draw] = (landings[landed] as LandingDay).day;
    people.courseAtLanding[draw] = courses[landed] as number;
    people.recovery[draw] = Math.LN2 / (model.halfLife * Math.exp(model.halfLifeLogSd * (pace[draw] as number)));
  }
  return people;
};

/** People on their way: what has drifted, what was missing at landing, where each stands now. */
export interface Walk {
  readonly drift: Float64Array;
  readonly deficit: Float64Array;
  readonly now: Float64Array;
  readonly lowest: Float64Array;
}

export const startWalk = (draws: number): Walk => ({
  drift: new Float64Array(draws),
  deficit: new Float64Array(draws),
  now: new Float64Array(draws),
  lowest: new Float64Array(draws).fill(Infinity),
});

export interface Stretch {
  readonly from: number;
  readonly to: number;
  /** Course at its end. */
  readonly course: number;
  readonly driftPerDay: number;
}

/** Takes everybody from one day to the next, each with one normal number. */
export const walkOn = (
  { level, amplitude, landing, courseAtLanding, recovery }: DrawnPeople,
  { drift, deficit, now, lowest }: Walk,
  { from, to, course, driftPerDay }: Stretch,
  chance: Float64Array,
): void => {
  const whole = Math.sqrt(driftPerDay * (to - from));
  for (let draw = 0; draw < now.length; draw += 1) {
    // All rows are as long as there are draws.
    const landed = landing[draw] as number;
    let loss: number;
    if (to <= landed) {
      const drifted = (drift[draw] as number) + whole * (chance[draw] as number);
      drift[draw] = drifted;
      loss = (amplitude[draw] as number) * course + drifted;
    } else {
      if (from <= landed) {
        const drifted = (drift[draw] as number) + Math.sqrt(driftPerDay * (landed - from)) * (chance[draw] as number);
        deficit[draw] = (amplitude[draw] as number) * (courseAtLanding[draw] as number) + drifted;
      }
      loss = (deficit[draw] as number) * Math.exp(-(recovery[draw] as number) * (to - landed));
    }
    const value = (level[draw] as number) - loss;
    now[draw] = value;
    if (value < (lowest[draw] as number)) lowest[draw] = value;
  }
};
