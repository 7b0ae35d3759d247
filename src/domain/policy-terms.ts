import type { Policies } from './policies.ts';

/** What a policy is counted in. */
export type PolicyUnit = 'days' | 'sessions' | 'flight day' | 'RPE' | 'of 10' | '%' | 'steps';

export interface PolicyTerm {
  readonly unit: PolicyUnit;
  /** Of a ramp: of each of its steps. */
  readonly least: number;
  readonly most: number;
  readonly isWhole: boolean;
  /** Why nothing beyond the bounds is taken. */
  readonly bounded: string;
  /** What the default rests on. */
  readonly restsOn: string;
}

const OUR_DESIGN = 'Our own design.';
const COMMON_PRACTICE = 'Common practice, no source.';

const days = (least: number, most: number, bounded: string, restsOn: string): PolicyTerm => ({
  unit: 'days',
  least,
  most,
  isWhole: true,
  bounded,
  restsOn,
});

/** What every card prints; a policy may be stricter than the card, never laxer. */
const ratingOfPain = (most: number, printed: string): PolicyTerm => ({
  unit: 'of 10',
  least: 1,
  most,
  isWhole: false,
  bounded: `Every card says: ${printed}. A policy may be stricter than the card, never laxer.`,
  restsOn: `${COMMON_PRACTICE} The physician may set other limits for one person.`,
});

const highestRpe = (restsOn: string): PolicyTerm => ({
  unit: 'RPE',
  least: 5,
  most: 9,
  isWhole: false,
  bounded: 'At RPE 10 nothing was left: such a session is no ground for more.',
  restsOn,
});

const share = (least: number, most: number, bounded: string, restsOn: string): PolicyTerm => ({
  unit: '%',
  least,
  most,
  isWhole: false,
  bounded,
  restsOn,
});

const HARNESS = "Under 40 % nobody runs, and a harness at more than body weight is nobody's practice.";

const ramp = (restsOn: string): PolicyTerm => ({
  unit: 'steps',
  least: 0.1,
  most: 1,
  isWhole: false,
  bounded: 'A ramp is the way up to the full load: it never goes down and never over the full load.',
  restsOn,
});

/** Of every policy: its unit, its bounds and what its default rests on. Bounds are our own design where nothing else is said. */
export const POLICY_TERMS: Readonly<Record<keyof Policies, PolicyTerm>> = {
  horizonDays: days(1, 28, 'Cards are worked out for four weeks and no farther.', OUR_DESIGN),
  firstResistiveFlightDay: {
    unit: 'flight day',
    least: 1,
    most: 60,
    isWhole: true,
    bounded: 'Two months without a load are no start of a programme.',
    restsOn: `${COMMON_PRACTICE} The first days go to docking, sickness and setting up.`,
  },
  firstEnduranceFlightDay: {
    unit: 'flight day',
    least: 1,
    most: 60,
    isWhole: true,
    bounded: 'Two months without endurance are no start of a programme.',
    restsOn: `${COMMON_PRACTICE} The first day goes to docking and sickness.`,
  },
  firstAllOutFlightDay: {
    unit: 'flight day',
    least: 1,
    most: 120,
    isWhole: true,
    bounded: 'Later than four months is never for most flights.',
    restsOn: `${COMMON_PRACTICE} None before about the fourth week.`,
  },
  effortSteps: ramp(`${OUR_DESIGN} Five steps to the full bar part.`),
  shareSteps: ramp(`${OUR_DESIGN} It is there for shoulders that have never carried the body's weight all at once.`),
  sessionsPerStep: {
    unit: 'sessions',
    least: 1,
    most: 20,
    isWhole: true,
    bounded: 'A step is earned by sessions, and a ramp that takes longer than the flight is none.',
    restsOn: OUR_DESIGN,
  },
  rampRpeAtMost: highestRpe(OUR_DESIGN),
  ruleRpeAtMost: highestRpe(COMMON_PRACTICE),
  daysBetweenRaises: days(1, 60, 'Two raises on one day could not be told apart.', COMMON_PRACTICE),
  raiseAtMost: share(0.01, 0.25, 'More than a quarter at once is no raise but another load.', COMMON_PRACTICE),
  estimateBand: share(0.01, 0.3, 'Inside 1 % every test would ask; outside 30 % none would.', OUR_DESIGN),
  backOff: share(0.02, 0.5, 'Less than 2 % is less than a step of most machines.', COMMON_PRACTICE),
  discomfortHolds: ratingOfPain(3, 'pain of 3 to 4 holds the load'),
  discomfortStops: ratingOfPain(5, 'pain of 5 to 6 stops that exercise'),
  discomfortEndsSession: ratingOfPain(7, 'pain of 7 or more stops the session'),
  shoulderRuleFlightDays: days(0, 60, 'It is a rule of the first weeks; 0 switches it off.', OUR_DESIGN),
  shoulderEvidenceDaysBeforeLaunch: days(
    7,
    365,
    'A bar carried longer than a year before says nothing of the shoulders at launch.',
    OUR_DESIGN,
  ),
  cardValidDays: days(0, 28, 'A card a month old was made for another week.', OUR_DESIGN),
  evidenceFloor: share(0, 0.5, 'It is a part of body mass.', OUR_DESIGN),
  daysWithoutLiftThatWidens: days(7, 90, 'A week off is no time without the lift.', OUR_DESIGN),
  harnessStart: share(0.4, 1, HARNESS, 'About 65 % is typical (Petersen 2016, Extrem Physiol Med 5:9, seen).'),
  harnessStep: share(
    0.01,
    0.1,
    'More than a tenth at once is no step.',
    `${OUR_DESIGN} 2 to 5 % a week, as it is borne.`,
  ),
  harnessMost: share(0.5, 1, HARNESS, 'Late in a flight 75 to 90 %, from memory with low confidence.'),
  daysHandsRest: days(
    0,
    14,
    'Two weeks without grip cost more than they spare.',
    `${COMMON_PRACTICE} Two to three days.`,
  ),
  blackoutDaysFromLanding: days(
    0,
    14,
    'A fortnight without training after landing is a restriction, and a physician’s to set.',
    `${COMMON_PRACTICE} The day of landing goes to the vehicle, the physicians and the way home.`,
  ),
};

/** Pairs of which the first is never above the second, and what that means. */
export const POLICIES_IN_ORDER: readonly {
  readonly names: readonly Exclude<keyof Policies, 'effortSteps' | 'shareSteps'>[];
  readonly because: string;
}[] = [
  {
    names: ['discomfortHolds', 'discomfortStops', 'discomfortEndsSession'],
    because: 'A worse pain never has the milder rule.',
  },
  { names: ['harnessStart', 'harnessMost'], because: 'The pull of the harness climbs from the first to the second.' },
];

/** More steps than this cannot be told apart on a card. */
export const MOST_RAMP_STEPS = 12;
