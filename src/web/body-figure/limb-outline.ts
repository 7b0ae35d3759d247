import type { Spot } from './screen.ts';

const ARC_STEPS = 10;

const along = (centre: Spot, radius: number, angle: number): Spot => ({
  x: centre.x + radius * Math.cos(angle),
  y: centre.y + radius * Math.sin(angle),
});

const arc = (centre: Spot, radius: number, from: number, to: number): readonly Spot[] =>
  Array.from({ length: ARC_STEPS + 1 }, (_, step) => along(centre, radius, from + ((to - from) * step) / ARC_STEPS));

/** Two round ends and their outer tangents: a limb that tapers from one joint to the next. */
export const limbOutline = (from: Spot, fromRadius: number, to: Spot, toRadius: number): readonly Spot[] => {
  const distance = Math.hypot(to.x - from.x, to.y - from.y);
  // One end inside the other: only the larger circle is seen.
  if (distance <= Math.abs(fromRadius - toRadius)) {
    const [centre, radius] = fromRadius > toRadius ? [from, fromRadius] : [to, toRadius];
    return arc(centre, radius, 0, 2 * Math.PI);
  }
  const heading = Math.atan2(to.y - from.y, to.x - from.x);
  const tangent = Math.acos((fromRadius - toRadius) / distance);
  return [
    ...arc(to, toRadius, heading - tangent, heading + tangent),
    ...arc(from, fromRadius, heading + tangent, heading + 2 * Math.PI - tangent),
  ];
};
