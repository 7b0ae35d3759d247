import type { Policies } from '#domain/policies.ts';

const days = (value: number): string => `${value} days`;
const percent = (value: number): string => `${Number((value * 100).toFixed(1))} %`;
const steps = (value: readonly number[]): string => value.map((step) => Number(step.toFixed(3))).join(', ');
const plain = (value: number): string => String(value);

type Words = {
  readonly [Name in keyof Policies]: {
    readonly title: string;
    readonly means: string;
    readonly show: (value: Policies[Name]) => string;
  };
};

/** Every policy in the words of the trade: what it is and what it does. */
export const POLICY_WORDS: Words = {
  horizonDays: { title: 'Horizon', means: 'Days from today that are shown exactly as they can be issued.', show: days },
  firstResistiveFlightDay: {
    title: 'First resistive day',
    means: 'No resistive session before this flight day.',
    show: (value) => `flight day ${value}`,
  },
  effortSteps: {
    title: 'Effort ramp',
    means: 'Steps of the ramp of effort: the bar part is multiplied by the step.',
    show: steps,
  },
  shareSteps: {
    title: 'Body-weight ramp',
    means: 'Steps of the ramp of body weight added back: the share is multiplied by the step.',
    show: steps,
  },
  sessionsPerStep: {
    title: 'Sessions for a step',
    means: 'Completed, pain-free sessions of a lift that earn the next ramp step.',
    show: plain,
  },
  rampRpeAtMost: {
    title: 'Highest RPE on the ramps',
    means: 'A harder session earns no ramp step.',
    show: (value) => `RPE ${value}`,
  },
  ruleRpeAtMost: {
    title: 'Highest RPE for the step rule',
    means: 'After a harder session the step rule adds nothing.',
    show: (value) => `RPE ${value}`,
  },
  daysBetweenRaises: { title: 'Between two raises', means: 'One increase per lift in this time.', show: days },
  raiseAtMost: {
    title: 'Largest raise without a reason',
    means: 'Of bar-equivalent, outside the ramps; more needs a typed reason.',
    show: percent,
  },
  estimateBand: {
    title: 'Band around the estimate',
    means: 'A load in use that leaves it raises a proposal, and changes nothing by itself.',
    show: (value) => `± ${percent(value)}`,
  },
  backOff: { title: 'Back off', means: 'Taken off the machine load, at once.', show: percent },
  discomfortHolds: {
    title: 'Discomfort that holds',
    means: 'From this score (of 10) the load is held.',
    show: plain,
  },
  discomfortStops: { title: 'Discomfort that stops', means: 'From this score the exercise stops.', show: plain },
  discomfortEndsSession: {
    title: 'Discomfort that ends the session',
    means: 'From this score the session ends.',
    show: plain,
  },
  shoulderRuleFlightDays: {
    title: 'Shoulder rule',
    means: 'So long after launch the shoulders carry no more than they carried lately on the ground.',
    show: days,
  },
  shoulderEvidenceDaysBeforeLaunch: {
    title: 'Evidence for the shoulder rule',
    means: 'How long before launch a bar on the shoulders still counts for it.',
    show: days,
  },
  cardValidDays: {
    title: 'Validity of a card',
    means: 'Days after its own day on which a card may still be trained from.',
    show: days,
  },
  evidenceFloor: {
    title: 'Floor of evidence',
    means: 'A load at or under share × body mass and this part of body mass says nothing of capacity.',
    show: percent,
  },
  daysWithoutLiftThatWidens: {
    title: 'Without the lift',
    means: 'After so long without it, the estimate is less sure.',
    show: days,
  },
};
