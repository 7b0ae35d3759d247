import type { Figure } from '#science/body/planar-model.ts';
import { limbOutline } from './limb-outline.ts';
import { middle, type Screen, type Spot } from './screen.ts';

/** Half widths of the drawn body as fractions of stature: our own choice; no number rests on them. */
const HALF_WIDTH = {
  ankle: 0.019,
  knee: 0.031,
  hip: 0.056,
  waist: 0.05,
  chest: 0.06,
  neck: 0.026,
  elbow: 0.02,
  wrist: 0.014,
  upperArm: 0.024,
  head: 0.047,
};

export interface BodyShape {
  /** Drawn as one silhouette: their union. */
  readonly body: readonly (readonly Spot[])[];
  readonly head: { readonly centre: Spot; readonly across: number; readonly upright: number };
  readonly arm: readonly (readonly Spot[])[];
}

/** The outlines of a figure from the side. */
export const bodyShape = ({ joints }: Figure, screen: Screen): BodyShape => {
  const at = screen.spot;
  const width = (part: keyof typeof HALF_WIDTH): number => HALF_WIDTH[part] * screen.perStature;
  const [ankle, knee, hip, shoulder, c7] = [joints.ankle, joints.knee, joints.hip, joints.shoulder, joints.c7].map(
    at,
  ) as [Spot, Spot, Spot, Spot, Spot];
  const waist = middle(hip, shoulder, 0.42);
  const chest = middle(hip, shoulder, 0.86);
  const top = at(joints.headTop);
  const head = { x: c7.x + 0.02 * screen.perStature, y: middle(c7, top, 0.58).y };
  return {
    body: [
      footOutline(at(joints.heel), at(joints.toe), ankle, screen.perStature),
      limbOutline(knee, width('knee'), ankle, width('ankle')),
      limbOutline(hip, width('hip'), knee, width('knee')),
      limbOutline(hip, width('hip'), waist, width('waist')),
      limbOutline(waist, width('waist'), chest, width('chest')),
      limbOutline(chest, width('chest'), middle(chest, c7, 0.75), width('neck') * 1.5),
      limbOutline(c7, width('neck'), head, width('neck')),
    ],
    head: { centre: head, across: width('head') * 0.9, upright: head.y - top.y },
    arm: armOutline(shoulder, at(joints.bar), at(joints.hangingHand), width),
  };
};

const footOutline = (heel: Spot, toe: Spot, ankle: Spot, perStature: number): readonly Spot[] => {
  const instep = middle(ankle, toe, 0.45);
  return [
    { x: heel.x, y: heel.y - 0.018 * perStature },
    { x: ankle.x - 0.017 * perStature, y: ankle.y },
    { x: ankle.x + 0.017 * perStature, y: ankle.y },
    { x: instep.x, y: instep.y - 0.004 * perStature },
    { x: toe.x, y: toe.y - 0.012 * perStature },
    toe,
    heel,
  ];
};

/** Hanging where the bar hangs; folded up to the bar where it lies on the shoulders, seen short because elbows point out. */
const armOutline = (
  shoulder: Spot,
  bar: Spot,
  hangingHand: Spot,
  width: (part: 'upperArm' | 'elbow' | 'wrist') => number,
): readonly (readonly Spot[])[] => {
  const length = hangingHand.y - shoulder.y;
  const hangs = bar.y - shoulder.y > length / 2;
  const elbow = hangs ? middle(shoulder, bar, 0.47) : { x: shoulder.x - 0.1 * length, y: shoulder.y + 0.34 * length };
  const hand = hangs ? bar : { x: shoulder.x + 0.07 * length, y: shoulder.y + 0.01 * length };
  return [
    limbOutline(shoulder, width('upperArm'), elbow, width('elbow')),
    limbOutline(elbow, width('elbow'), hand, width('wrist')),
  ];
};
