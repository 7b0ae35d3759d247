import type { FormulaInput } from '../formula.ts';
import { method } from '../method.ts';
import type { SourcedTable } from '../sourced-table.ts';
import { CAVANAGH_2010, OUR_OWN_DESIGN, PETERSEN_2016, SCOTT_2023 } from '../sources.ts';
import { figure } from './figures.ts';
import { impossible, refused, type Refused } from './impossible.ts';

/** What a week should at least do to the skeleton, in things that a card counts. A floor, never a dose. */

export type Loading = 'loaded minutes' | 'steps' | 'heavy sets';

export interface LoadingFloor {
  readonly loading: Loading;
  /** In a week. */
  readonly least: number;
  /** What is counted, as the person who records it is told. */
  readonly counts: string;
  readonly why: string;
}

/** Practice defaults: whoever prepares the flight edits them, and a physician’s word goes before them. */
export const LOADING_FLOORS: SourcedTable<LoadingFloor> = {
  record: {
    id: 'bone/loading-floors',
    revision: 1,
    title: 'Least loading of the skeleton in a week',
    source: OUR_OWN_DESIGN,
    restsOn: [CAVANAGH_2010, PETERSEN_2016, SCOTT_2023],
    doesNotKnow:
      'Whether a week over every floor keeps bone: no dose has been shown to. The thresholds are our own practice defaults, and editable; none was measured.',
  },
  columns: [
    { name: 'loading', unit: '' },
    { name: 'least', unit: 'a week' },
    { name: 'what counts', unit: '' },
    { name: 'why', unit: '' },
  ],
  rows: [
    {
      loading: 'loaded minutes',
      least: 90,
      counts: 'Minutes on the belt under the harness, walking or running; not set-up, not rests.',
      why: 'Three sessions of half an hour: under half of the treadmill’s third of some 600 minutes a week. Minutes worked, because feet were loaded in only 30 % of scheduled time where it was measured.',
    },
    {
      loading: 'steps',
      least: 10_000,
      counts: 'Steps of both feet under the harness.',
      why: 'About what ninety minutes give when all of them are walked, at 110 steps a minute.',
    },
    {
      loading: 'heavy sets',
      least: 8,
      counts: 'Work sets of the lower body at 75 % or more of the maximum, the body’s share taken off.',
      why: 'The lower edge of eight to twelve weekly sets that are usual for the lower body, and two sessions of two lifts of two sets.',
    },
  ],
  cells: ({ loading, least, counts, why }) => [loading, least, counts, why],
};

/** What is known of one week. A session without a result adds nothing and is not a nought. */
export type WeekFigure =
  | { readonly kind: 'reported'; readonly value: number; readonly sessionsUnreported: number }
  | { readonly kind: 'unreported' };

export type Week = Readonly<Record<Loading, WeekFigure>>;

export type FloorVerdict =
  | { readonly kind: 'met'; readonly loading: Loading; readonly says: string }
  | { readonly kind: 'short'; readonly loading: Loading; readonly by: number; readonly says: string }
  | { readonly kind: 'not known'; readonly loading: Loading; readonly atMostShortBy: number; readonly says: string };

export type FloorsOfWeek = { readonly kind: 'compared'; readonly floors: readonly FloorVerdict[] } | Refused;

const amount: FormulaInput = {
  name: 'loading of a week',
  symbol: 'x',
  unit: 'a week',
  possible: [0, 500_000],
  valid: [0, 150_000],
};
const floorInput: FormulaInput = {
  name: 'floor',
  symbol: 'x_least',
  unit: 'a week',
  possible: [1, 500_000],
  valid: [1, 150_000],
};
const unreportedInput: FormulaInput = {
  name: 'sessions unreported',
  symbol: 'u',
  unit: 'sessions',
  possible: [0, 100],
  valid: [0, 20],
};

/** Whether a week reached its loading floors, and by how much it is short. */
export const weekAgainstFloors = method(
  {
    id: 'bone/week-against-floors',
    revision: 1,
    title: 'Whether a week reached its loading floors',
    equations: [
      'met where x ≥ x_least',
      'short by x_least − x where x < x_least and every session is reported',
      'else not known: short by x_least − x at most',
    ],
    inputs: [amount, floorInput, unreportedInput],
    outputs: [{ name: 'short by', symbol: 'd', unit: 'a week' }],
    refuses: ['A figure or a floor that cannot be.', 'The same loading with two floors.'],
    source: OUR_OWN_DESIGN,
    restsOn: [CAVANAGH_2010],
    doesNotKnow:
      'Whether the floors protect bone. What was not reported is not taken as nought. The floors are our own practice defaults, and editable.',
  },
  (week: Week, floors: readonly LoadingFloor[]): FloorsOfWeek => {
    const reasons = [...impossible(floors.flatMap((floor) => checked(floor, week[floor.loading]))), ...twice(floors)];
    if (reasons.length > 0) return refused(reasons);
    return { kind: 'compared', floors: floors.map((floor) => verdict(floor, week[floor.loading])) };
  },
);

const checked = ({ loading, least }: LoadingFloor, found: WeekFigure): readonly (readonly [FormulaInput, number])[] => [
  [{ ...floorInput, name: `floor of ${loading}` }, least],
  ...(found.kind === 'unreported'
    ? []
    : [
        [{ ...amount, name: loading }, found.value] as const,
        [{ ...unreportedInput, name: `sessions without ${loading}` }, found.sessionsUnreported] as const,
      ]),
];

const twice = (floors: readonly LoadingFloor[]): readonly string[] => {
  const names = floors.map(({ loading }) => loading);
  return [...new Set(names.filter((name, place) => names.indexOf(name) !== place))].map(
    (name) => `There are two floors for ${name}: keep one.`,
  );
};

const verdict = ({ loading, least }: LoadingFloor, found: WeekFigure): FloorVerdict => {
  if (found.kind === 'unreported')
    return { kind: 'not known', loading, atMostShortBy: least, says: `${named(loading)} were not reported this week.` };
  const by = least - found.value;
  const counted = `${shown(found.value)} of at least ${shown(least)} ${loading} this week`;
  if (by <= 0) return { kind: 'met', loading, says: `${counted}: met.` };
  return found.sessionsUnreported > 0
    ? { kind: 'not known', loading, atMostShortBy: by, says: notKnown(counted, by, found.sessionsUnreported) }
    : { kind: 'short', loading, by, says: `${counted}: short by ${shown(by)}.` };
};

const notKnown = (counted: string, by: number, sessions: number): string =>
  `${counted} are reported, ${sessions === 1 ? 'one session is' : `${sessions} sessions are`} not: short by ${shown(by)} at most.`;

const shown = (value: number): string => figure(value, Number.isInteger(value) ? 0 : 1);

const named = (loading: Loading): string => loading.charAt(0).toUpperCase() + loading.slice(1);
