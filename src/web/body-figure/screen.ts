import { ANKLE_HEIGHT, type Point } from '#science/body/planar-model.ts';

/** A place in the drawing: x to the right, y downward, in units of the view box. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

/** Brings points of the model (fractions of stature, the ankle at the origin) into the drawing. */
export interface Screen {
  /** Units of the drawing for one whole stature. */
  readonly perStature: number;
  readonly spot: (point: Point) => Spot;
}

/** Puts the ankle of a figure at `x` and its sole at `floor`. */
export const screenFor = (stature: number, perMetre: number, x: number, floor: number): Screen => {
  const perStature = stature * perMetre;
  return {
    perStature,
    spot: (point) => ({ x: x + point.x * perStature, y: floor - (point.y + ANKLE_HEIGHT) * perStature }),
  };
};

export const middle = (from: Spot, to: Spot, part: number): Spot => ({
  x: from.x + part * (to.x - from.x),
  y: from.y + part * (to.y - from.y),
});

/** Points of a polygon as SVG writes them, to a hundredth. */
export const pointsOf = (spots: readonly Spot[]): string =>
  spots.map(({ x, y }) => `${x.toFixed(2)},${y.toFixed(2)}`).join(' ');
