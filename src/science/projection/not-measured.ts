import { method } from '../method.ts';
import { OUR_OWN_DESIGN } from '../sources.ts';

/** What a forecast says first: what nobody measured. */

export interface Evidence {
  /** As it stands in a sentence: 'maximal oxygen uptake'. */
  readonly quantity: string;
  /** Whether it can be measured in flight at all: bone density cannot. */
  readonly measurableInFlight: boolean;
  /** Days before launch of the newest test on the ground; null where there is none. */
  readonly preAge: number | null;
  /** In flight: day of each test, and whether it went to the maximum. */
  readonly tests: readonly { readonly day: number; readonly maximal: boolean }[];
  /** Flight day on which the forecast is made; 0 or less before launch. */
  readonly today: number;
  readonly sessionsCounted: number;
  readonly earlierMissions: number;
  /** Days between the earliest and the latest landing that is possible. */
  readonly landingRange: number;
}

/** Older than this a test says little of today; our own. */
const OLD_IN_FLIGHT = 45;
const OLD_ON_GROUND = 90;

const ofTests = ({ quantity, measurableInFlight, tests, today }: Evidence): readonly string[] => {
  if (!measurableInFlight) return [`In flight nobody measures the ${quantity}: what happens there is inferred.`];
  const newest = Math.max(...tests.map(({ day }) => day));
  if (tests.length === 0)
    return today > 0
      ? [`The ${quantity} has not been tested in flight: day ${today} is forecast from other people.`]
      : [`The ${quantity} has not been tested in flight: the flight has not begun.`];
  return [
    ...(tests.some(({ maximal }) => maximal)
      ? []
      : [`No test in flight went to the maximum: the ${quantity} was read from easier work.`]),
    ...(today - newest > OLD_IN_FLIGHT ? [`The newest test is ${today - newest} days old.`] : []),
  ];
};

const ofGround = ({ quantity, preAge }: Evidence): readonly string[] => {
  if (preAge === null)
    return [`The ${quantity} was not measured before flight: only a change can be forecast, not a value.`];
  return preAge > OLD_ON_GROUND ? [`The last measurement before flight was ${preAge} days before launch.`] : [];
};

/** What was not measured, most important first. */
export const whatWasNotMeasured = method(
  {
    id: 'projection/not-measured',
    revision: 1,
    title: 'What was not measured',
    equations: ['a sentence for each thing that a forecast would need and does not have, most important first'],
    inputs: [
      { name: 'age of the measurement before flight', symbol: 'pre', unit: 'd', possible: [0, 3650], valid: [0, 90] },
      { name: 'days since the newest test in flight', symbol: 'age', unit: 'd', possible: [0, 3650], valid: [0, 45] },
      { name: 'sessions counted', symbol: 'n', unit: 'sessions', possible: [0, 10000], valid: [1, 10000] },
    ],
    outputs: [{ name: 'sentences', symbol: 'list', unit: '1' }],
    refuses: ['Nothing: there is always something that was not measured.'],
    source: OUR_OWN_DESIGN,
    doesNotKnow:
      'What else was not measured. When a test is old, 45 days in flight and 90 before it, is our own choice.',
  },
  (evidence: Evidence): readonly string[] => {
    const { quantity, sessionsCounted, earlierMissions, landingRange } = evidence;
    return [
      ...ofGround(evidence),
      ...ofTests(evidence),
      ...(earlierMissions === 0
        ? [`No earlier mission of this person is known: how they lose and regain ${quantity} is other people’s.`]
        : []),
      ...(sessionsCounted === 0 ? ['No session is counted yet: that eight of ten are done is an assumption.'] : []),
      ...(landingRange > 0 ? [`The landing has no fixed day: it is a range of ${landingRange} days.`] : []),
      'How much more is lost with less training has been measured in nobody in flight: it is an assumption.',
    ];
  },
);
