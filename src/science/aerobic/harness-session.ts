import type { Gait } from './treadmill.ts';

/** What is asked of a harness and what is answered. */

export interface HarnessSession {
  readonly gait: Gait;
  /** The session on the ground, level belt [m/min]. */
  readonly groundSpeed: number;
  /** Effective, over body weight. */
  readonly load: number;
  /** Decides the cap by rule; the first is 1. */
  readonly flightDay: number;
  /** Fastest belt of the machine [m/min]. */
  readonly beltLimit?: number;
  /** The effective load that may be set now, by programme, shoulders and machine. */
  readonly highestLoad?: number;
}

export interface PersonNow {
  /** Of today, not of before the flight [mL/(kg min)]. */
  readonly maximalUptake: number;
  readonly restingRate: number;
  readonly maximalRate: number;
}

export interface UptakeView {
  readonly speed: number;
  readonly uptake: number;
  /** Of the harness's factor alone. */
  readonly sd: number;
  /** With the difference between people about the equation in 1 g. */
  readonly sdOfPeople: number;
  /** Only where the person's rates and maximum are known. */
  readonly heartRate?: number;
}

export type SpeedLimit =
  | { readonly kind: 'limit'; readonly speed: number; readonly because: string }
  | { readonly kind: 'no limit'; readonly because: string };

/** Three ways to make up for a cap, in the order in which they are taken. */
export interface WaysUnderCap {
  readonly raiseLoad: { readonly load: number; readonly allowed: boolean };
  readonly lengthen: { readonly multiple: number };
  readonly acceptLess: { readonly uptake: number; readonly shortfall: number };
}

export interface UnderHarness {
  readonly kind: 'under harness';
  readonly onEarth: UptakeView;
  readonly factor: number;
  readonly factorSd: number;
  readonly sameSpeed: UptakeView;
  readonly sameEffortSpeed: number;
  readonly cap: SpeedLimit;
  /** What to start with: the speed of the same effort, or the cap. */
  readonly start: UptakeView;
  /** Only where the cap lies below the speed of the same effort. */
  readonly ways?: WaysUnderCap;
  readonly cautions: readonly string[];
}
