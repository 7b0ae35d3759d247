import type { Policies } from '#domain/policies.ts';

const days = (value: number): string => `${value} ${value === 1 ? 'day' : 'days'}`;
const percent = (value: number): string => `${Number((value * 100).toFixed(1))} %`;
const steps = (value: readonly number[]): string => value.map((step) => Number(step.toFixed(3))).join(', ');
const plain = (value: number): string => String(value);

type Words = {
  readonly [Name in keyof Policies]: {
    readonly title: string;
    readonly means: string;
    /** Beside the field where it is typed. */
    readonly unit: string;
    readonly show: (value: Policies[Name]) => string;
  };
};

/** Every policy in the words of the trade: what it is and what it does. */
export const POLICY_WORDS: Words = {
  horizonDays: {
    title: 'Horizon',
    means: 'Days from today that are shown exactly as they can be issued.',
    unit: 'days',
    show: days,
  },
  firstResistiveFlightDay: {
    title: 'First resistive day',
    means: 'No resistive session before this flight day.',
    unit: '',
    show: (value) => `flight day ${value}`,
  },
  effortSteps: {
    title: 'Effort ramp',
    means: 'Steps of the ramp of effort: the bar part is multiplied by the step.',
    unit: '',
    show: steps,
  },
  shareSteps: {
    title: 'Body-weight ramp',
    means: 'Steps of the ramp of body weight added back: the share is multiplied by the step.',
    unit: '',
    show: steps,
  },
  sessionsPerStep: {
    title: 'Sessions for a step',
    means: 'Completed, pain-free sessions of a lift that earn the next ramp step.',
    unit: '',
    show: plain,
  },
  rampRpeAtMost: {
    title: 'Highest RPE on the ramps',
    means: 'A harder session earns no ramp step.',
    unit: '',
    show: (value) => `RPE ${value}`,
  },
  ruleRpeAtMost: {
    title: 'Highest RPE for the step rule',
    means: 'After a harder session the step rule adds nothing.',
    unit: '',
    show: (value) => `RPE ${value}`,
  },
  daysBetweenRaises: {
    title: 'Between two raises',
    means: 'One increase per lift in this time.',
    unit: 'days',
    show: days,
  },
  raiseAtMost: {
    title: 'Largest raise without a reason',
    means: 'Of bar-equivalent, outside the ramps; more needs a typed reason.',
    unit: '%',
    show: percent,
  },
  estimateBand: {
    title: 'Band around the estimate',
    means: 'A load in use that leaves it raises a proposal, and changes nothing by itself.',
    unit: '%',
    show: (value) => `± ${percent(value)}`,
  },
  backOff: { title: 'Back off', means: 'Taken off the machine load, at once.', unit: '%', show: percent },
  discomfortHolds: {
    title: 'Discomfort that holds',
    means: 'From this score (of 10) the load is held.',
    unit: '',
    show: plain,
  },
  discomfortStops: {
    title: 'Discomfort that stops',
    means: 'From this score the exercise stops.',
    unit: '',
    show: plain,
  },
  discomfortEndsSession: {
    title: 'Discomfort that ends the session',
    means: 'From this score the session ends.',
    unit: '',
    show: plain,
  },
  shoulderRuleFlightDays: {
    title: 'Shoulder rule',
    means: 'So long after launch the shoulders carry no more than they carried lately on the ground.',
    unit: 'days',
    show: days,
  },
  shoulderEvidenceDaysBeforeLaunch: {
    title: 'Evidence for the shoulder rule',
    means: 'How long before launch a bar on the shoulders still counts for it.',
    unit: 'days',
    show: days,
  },
  cardValidDays: {
    title: 'Validity of a card',
    means: 'Days after its own day on which a card may still be trained from.',
    unit: 'days',
    show: days,
  },
  evidenceFloor: {
    title: 'Floor of evidence',
    means: 'A load at or under share × body mass and this part of body mass says nothing of capacity.',
    unit: '%',
    show: percent,
  },
  daysWithoutLiftThatWidens: {
    title: 'Without the lift',
    means: 'After so long without it, the estimate is less sure.',
    unit: 'days',
    show: days,
  },
  firstEnduranceFlightDay: {
    title: 'First day of endurance',
    means: 'No bouts on treadmill or cycle before this flight day.',
    unit: '',
    show: (value) => `flight day ${value}`,
  },
  firstAllOutFlightDay: {
    title: 'First all-out bouts',
    means: 'Nothing all-out before this flight day; on the cycle only.',
    unit: '',
    show: (value) => `flight day ${value}`,
  },
  harnessStart: {
    title: 'Harness load, start',
    means: 'Of body weight, as set on the treadmill in the first two weeks.',
    unit: '%',
    show: percent,
  },
  harnessStep: {
    title: 'Harness load, step',
    means: 'Of body weight, added by an earned and signed step, at most one a week.',
    unit: '%',
    show: percent,
  },
  harnessMost: {
    title: 'Harness load, most',
    means: 'Of body weight; no step goes over it.',
    unit: '%',
    show: percent,
  },
  daysHandsRest: {
    title: 'Hands rest before a space walk',
    means: 'Days on which nobody grips or pulls hard.',
    unit: 'days',
    show: days,
  },
  blackoutDaysFromLanding: {
    title: 'Blackout from landing',
    means: 'Days from landing day on without a session, unless it is entered what is left of them.',
    unit: 'days',
    show: days,
  },
};

/** A policy as people say it: "14 days", "± 5 %". */
export const shownPolicy = <Name extends keyof Policies>(name: Name, policies: Policies): string =>
  POLICY_WORDS[name].show(policies[name]);
