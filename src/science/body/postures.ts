import type { BarPlace, Posture } from './planar-model.ts';
import { degrees } from '#units/quantity.ts';

/** Bottom positions as usually coached: our own choice, common practice. The top of every lift is standing. */

const posture = (shankLean: number, thighLean: number, trunkLean: number): Posture => ({
  shankLean: degrees(shankLean),
  thighLean: degrees(thighLean),
  trunkLean: degrees(trunkLean),
});

export const BOTTOM_POSTURES = {
  'back squat, half': posture(25, 60, 30),
  /** Thighs level: the standard depth. */
  'back squat, parallel': posture(30, 90, 40),
  'back squat, deep': posture(35, 105, 40),
  'single-leg squat': posture(25, 70, 35),
  'split squat': posture(10, 85, 10),
  deadlift: posture(15, 70, 65),
  'Romanian deadlift': posture(0, 25, 75),
} as const satisfies Readonly<Record<string, Posture>>;

export type LegLift = keyof typeof BOTTOM_POSTURES;

export const barPlaceOf = (lift: LegLift): BarPlace =>
  lift === 'deadlift' || lift === 'Romanian deadlift' ? 'hanging hands' : 'shoulders';
