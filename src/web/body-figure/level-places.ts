import type { LevelLoad } from '#contract/windows/crossing-window.ts';
import type { Joints } from '#science/body/planar-model.ts';
import { middle, type Screen, type Spot } from './screen.ts';

export type Level = LevelLoad['level'];

/** L5/S1 above the hip as a part of the trunk's length: our own choice for the drawing. */
const L5_S1_UP_THE_TRUNK = 0.18;

/** Where each level of the body is pointed at. */
export const levelPlaces = (joints: Joints, { spot }: Screen): Readonly<Record<Level, Spot>> => ({
  shoulders: spot(joints.shoulder),
  'L5/S1': middle(spot(joints.hip), spot(joints.shoulder), L5_S1_UP_THE_TRUNK),
  hips: spot(joints.hip),
  knees: spot(joints.knee),
  ankles: spot(joints.ankle),
  feet: middle(spot(joints.heel), spot(joints.toe), 0.6),
});
