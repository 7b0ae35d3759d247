import type { BodyModel } from './body-model.ts';
import { degrees, type Degrees, type StatureFraction } from '#units/quantity.ts';

/**
 * A person from the side: feet fixed, both legs alike, the head upright. The origin is the ankle, x points forward,
 * y up, and every length is a fraction of stature. Pure geometry: the drawn figure and the shares use the same points.
 */

/** Leans from the vertical. */
export interface Posture {
  /** Forward: the knee stands in front of the ankle. */
  readonly shankLean: Degrees;
  /** Backward: the hip stands behind the knee. */
  readonly thighLean: Degrees;
  /** Forward: the shoulder stands in front of the hip. */
  readonly trunkLean: Degrees;
}

export interface Point {
  readonly x: StatureFraction;
  readonly y: StatureFraction;
}

/** Where the bar is: on the shoulders, in hands hanging under them, or nowhere. */
export type BarPlace = 'shoulders' | 'hanging hands' | 'none';

export interface Joints {
  readonly heel: Point;
  readonly toe: Point;
  readonly ankle: Point;
  readonly knee: Point;
  readonly hip: Point;
  readonly shoulder: Point;
  readonly c7: Point;
  readonly headTop: Point;
  /** Where the arms end when they hang. */
  readonly hangingHand: Point;
  readonly bar: Point;
}

export interface Centres {
  readonly foot: Point;
  readonly shank: Point;
  readonly thigh: Point;
  readonly trunk: Point;
  readonly head: Point;
  /** The arms move with the bar; without a bar they hang and this is the shoulder. */
  readonly arms: Point;
}

export interface Figure {
  readonly joints: Joints;
  readonly centres: Centres;
}

/** Ankle above the sole, after Drillis and Contini, from memory. */
export const ANKLE_HEIGHT = 0.039 as StatureFraction;
/** Where the sole stands, seen from the ankle. */
export const SOLE = (0 - ANKLE_HEIGHT) as StatureFraction; // a height with its sign turned
/** Of the foot's length, from the heel: the ankle, the ball of the foot. Our own choice. */
export const ANKLE_ALONG_FOOT = 0.25;
export const BALL_ALONG_FOOT = 0.73;

export const STANDING: Posture = { shankLean: degrees(0), thighLean: degrees(0), trunkLean: degrees(0) };

const RADIANS_PER_DEGREE = Math.PI / 180;
export const sine = (angle: Degrees): number => Math.sin(angle * RADIANS_PER_DEGREE);
export const cosine = (angle: Degrees): number => Math.cos(angle * RADIANS_PER_DEGREE);

// Sums of fractions of stature are fractions of stature.
const point = (x: number, y: number): Point => ({ x: x as StatureFraction, y: y as StatureFraction });
const moved = (from: Point, x: number, y: number): Point => point(from.x + x, from.y + y);
const between = (from: Point, to: Point, part: number): Point =>
  moved(from, part * (to.x - from.x), part * (to.y - from.y));

/** Joints and centres of mass of a body in a posture. */
export const figure = (body: BodyModel, posture: Posture, bar: BarPlace = 'shoulders'): Figure => {
  const joints = jointsOf(body, posture, bar);
  return { joints, centres: centresOf(body, joints) };
};

const jointsOf = (body: BodyModel, { shankLean, thighLean, trunkLean }: Posture, place: BarPlace): Joints => {
  const ankle = point(0, 0);
  const knee = moved(ankle, body.shank.length * sine(shankLean), body.shank.length * cosine(shankLean));
  const hip = moved(knee, body.thigh.length * -sine(thighLean), body.thigh.length * cosine(thighLean));
  const along = (distance: number): Point => moved(hip, distance * sine(trunkLean), distance * cosine(trunkLean));
  const [shoulder, c7] = [along(body.trunk.length), along(body.hipToC7)];
  const hangingHand = moved(shoulder, 0, -(body.upperArm.length + body.forearm.length + body.hand.length));
  return {
    heel: moved(ankle, -ANKLE_ALONG_FOOT * body.foot.length, SOLE),
    toe: moved(ankle, (1 - ANKLE_ALONG_FOOT) * body.foot.length, SOLE),
    ankle,
    knee,
    hip,
    shoulder,
    c7,
    headTop: moved(c7, 0, body.headAboveC7),
    hangingHand,
    bar: place === 'hanging hands' ? hangingHand : shoulder,
  };
};

const centresOf = (body: BodyModel, { ankle, knee, hip, shoulder, c7, heel, bar }: Joints): Centres => ({
  foot: moved(heel, body.foot.centre * body.foot.length, ANKLE_HEIGHT / 2),
  shank: between(knee, ankle, body.shank.centre),
  thigh: between(hip, knee, body.thigh.centre),
  trunk: between(shoulder, hip, body.trunk.centre),
  head: moved(c7, 0, body.headCentreAboveC7),
  arms: bar,
});
