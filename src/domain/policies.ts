/** Practice that a team may set for itself. Every entry says what it rests on where the defaults stand. */
export interface Policies {
  /** Days from today that are shown exactly as they can be issued. */
  readonly horizonDays: number;
  readonly effortSteps: readonly number[];
  readonly shareSteps: readonly number[];
  readonly sessionsPerStep: number;
  readonly daysBetweenRaises: number;
  /** Highest RPE at which a session still earns a ramp step. */
  readonly rampRpeAtMost: number;
  /** Highest RPE at which the step rule adds load. */
  readonly ruleRpeAtMost: number;
  /** Discomfort from here on holds the load; from `discomfortStops` on the exercise stops. */
  readonly discomfortHolds: number;
  readonly discomfortStops: number;
  readonly discomfortEndsSession: number;
  readonly shoulderRuleFlightDays: number;
  readonly shoulderEvidenceDaysBeforeLaunch: number;
  readonly firstResistiveFlightDay: number;
  /** Largest raise of bar-equivalent outside the ramps that needs no typed reason. */
  readonly raiseAtMost: number;
  /** A load in use that leaves this band around what a new estimate would give raises a proposal. */
  readonly estimateBand: number;
  readonly backOff: number;
  readonly cardValidDays: number;
  /** A load at or under share × W + this fraction of W is no evidence. */
  readonly evidenceFloor: number;
  readonly daysWithoutLiftThatWidens: number;
  /** No bouts of endurance before this flight day, and none all-out before the other. */
  readonly firstEnduranceFlightDay: number;
  readonly firstAllOutFlightDay: number;
  /** Harness load over body weight, as set: where it starts, what a step adds, where it ends. */
  readonly harnessStart: number;
  readonly harnessStep: number;
  readonly harnessMost: number;
  /** Days before a space walk on which nobody grips or pulls hard. */
  readonly daysHandsRest: number;
  /** Landing day and the days after it on which nobody trains, unless it is entered what is left of them. */
  readonly blackoutDaysFromLanding: number;
}

export const DEFAULT_POLICIES: Policies = {
  horizonDays: 14,
  effortSteps: [0.8, 0.85, 0.9, 0.95, 1],
  shareSteps: [0.6, 0.7, 0.8, 0.9, 1],
  sessionsPerStep: 2,
  daysBetweenRaises: 7,
  rampRpeAtMost: 7,
  ruleRpeAtMost: 8,
  discomfortHolds: 3,
  discomfortStops: 5,
  discomfortEndsSession: 7,
  shoulderRuleFlightDays: 14,
  shoulderEvidenceDaysBeforeLaunch: 56,
  firstResistiveFlightDay: 4,
  raiseAtMost: 0.1,
  estimateBand: 0.05,
  backOff: 0.1,
  cardValidDays: 7,
  evidenceFloor: 0.05,
  daysWithoutLiftThatWidens: 14,
  firstEnduranceFlightDay: 2,
  firstAllOutFlightDay: 22,
  harnessStart: 0.65,
  harnessStep: 0.03,
  harnessMost: 0.9,
  daysHandsRest: 3,
  blackoutDaysFromLanding: 1,
};
