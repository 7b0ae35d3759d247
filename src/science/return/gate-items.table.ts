import { shownTable, type SourcedTable } from '../sourced-table.ts';
import { COMMON_PRACTICE, OUR_OWN_DESIGN } from '../sources.ts';

/**
 * What each gate of the return asks for. All lines are our own design, practice defaults that the specialist edits;
 * release by the physician is always separate. No line of the last gate lies closer to full recovery than one typical
 * error: closer, and the test could not tell it from 100 %, and a recovered person would wait on luck.
 */

/** From stage 1 to 2, from stage 2 to 3, and out of stage 3. */
export type Gate = 'first' | 'second' | 'last';
export const GATES: readonly Gate[] = ['first', 'second', 'last'];

/** Days that a person is at least in the stage before its gate. */
export const DWELL: Readonly<Record<Gate, number>> = { first: 3, second: 7, last: 14 };

export type Requirement =
  /** True value over a line [% of before flight]; the newest test not older than so many days. */
  | { readonly kind: 'over'; readonly line: number; readonly maxAge: number }
  /** Reported values, 0 to 10, none above, each of the last so many hours’ days reported. */
  | { readonly kind: 'at most'; readonly line: number; readonly hours: number }
  /** Normal stand tests on so many days. */
  | { readonly kind: 'normal'; readonly days: number; readonly maxAge: number }
  /** No fall in these conditions of standing balance. */
  | { readonly kind: 'no fall'; readonly conditions: readonly number[]; readonly maxAge: number };

export const GATE_ITEM_KEYS = [
  'stand',
  'sickness',
  'balance',
  'falls',
  'tandemOpen',
  'tandemClosed',
  'sitToStand',
  'agility',
  'heelRaiseLeft',
  'heelRaiseRight',
  'legStrength',
  'legSymmetry',
  'jump',
  'oxygenUptake',
  'pain',
] as const;
export type GateItemKey = (typeof GATE_ITEM_KEYS)[number];

export interface GateItem {
  readonly key: GateItemKey;
  readonly name: string;
  /** Tests that may stand for the item, the first choice first. */
  readonly accepted: readonly string[];
  /** Needs a laboratory: missing, it blocks only where the physician asked for it. */
  readonly laboratory: boolean;
  /** Standard deviation of one test from the person's true value [%]; null where the item is yes or no. */
  readonly typicalError: number | null;
  /** Tests without which nothing is said. */
  readonly fewest: number;
  /** Items that must pass before this one may be tested. */
  readonly onlyAfter: readonly GateItemKey[];
  readonly gates: Readonly<Record<Gate, Requirement | null>>;
}

const over = (line: number, maxAge: number): Requirement => ({ kind: 'over', line, maxAge });
const atMost = (line: number, hours: number): Requirement => ({ kind: 'at most', line, hours });
const normal = (on: number, maxAge: number): Requirement => ({ kind: 'normal', days: on, maxAge });
const noFall = (conditions: readonly number[], maxAge: number): Requirement => ({
  kind: 'no fall',
  conditions,
  maxAge,
});

type Told = Pick<GateItem, 'key' | 'name' | 'gates'> & Partial<GateItem>;

const yesOrNo = (told: Told): GateItem => ({
  accepted: [told.name],
  laboratory: false,
  typicalError: null,
  fewest: 1,
  onlyAfter: [],
  ...told,
});

const scored = (typicalError: number, told: Told): GateItem => ({ ...yesOrNo(told), typicalError, fewest: 2, ...told });

const lines = (first: Requirement | null, second: Requirement, last: Requirement): GateItem['gates'] => ({
  first,
  second,
  last,
});

export const GATE_ITEMS: readonly GateItem[] = [
  yesOrNo({ key: 'stand', name: 'Stand test', gates: lines(normal(2, 3), normal(1, 7), normal(1, 14)) }),
  yesOrNo({ key: 'sickness', name: 'Motion sickness', gates: lines(atMost(1, 24), atMost(0, 72), atMost(0, 24)) }),
  scored(5, {
    key: 'balance',
    name: 'Standing balance, six conditions',
    laboratory: true,
    gates: lines(over(80, 3), over(95, 7), over(95, 14)),
  }),
  yesOrNo({
    key: 'falls',
    name: 'Falls in standing balance',
    laboratory: true,
    gates: lines(noFall([1, 2, 3, 4], 3), noFall([1, 2, 3, 4, 5], 7), noFall([1, 2, 3, 4, 5], 14)),
  }),
  scored(5, {
    key: 'tandemOpen',
    name: 'Tandem walk, eyes open',
    gates: lines(over(90, 3), over(95, 7), over(95, 14)),
  }),
  scored(10, {
    key: 'tandemClosed',
    name: 'Tandem walk, eyes closed',
    gates: lines(over(50, 3), over(80, 7), over(90, 14)),
  }),
  scored(6, { key: 'sitToStand', name: 'Sit to stand', gates: lines(over(70, 3), over(90, 7), over(94, 14)) }),
  scored(3, {
    key: 'agility',
    name: 'Agility',
    accepted: ['Agility course', 'Obstacle course'],
    gates: lines(null, over(90, 7), over(95, 14)),
  }),
  scored(8, { key: 'heelRaiseLeft', name: 'Heel raise, left', gates: lines(null, over(80, 7), over(90, 14)) }),
  scored(8, { key: 'heelRaiseRight', name: 'Heel raise, right', gates: lines(null, over(80, 7), over(90, 14)) }),
  scored(5, {
    key: 'legStrength',
    name: 'Leg strength',
    accepted: ['Isokinetic knee extension', 'One-repetition maximum of a leg lift'],
    gates: lines(null, over(85, 10), over(95, 14)),
  }),
  scored(5, {
    key: 'legSymmetry',
    name: 'Symmetry of leg strength',
    accepted: ['Isokinetic knee extension, left and right', 'Heel raise, left and right'],
    gates: lines(null, over(85, 10), over(90, 14)),
  }),
  scored(4, {
    key: 'jump',
    name: 'Jump height',
    onlyAfter: ['stand', 'tandemOpen', 'tandemClosed'],
    gates: lines(null, over(80, 10), over(90, 14)),
  }),
  scored(5, {
    key: 'oxygenUptake',
    name: 'Peak oxygen uptake',
    accepted: ['Peak oxygen uptake', 'Heart rate at 75 % of the load'],
    laboratory: true,
    fewest: 1,
    gates: lines(null, over(85, 14), over(95, 14)),
  }),
  yesOrNo({ key: 'pain', name: 'Pain at any site', gates: lines(atMost(3, 24), atMost(2, 24), atMost(1, 24)) }),
];

/** A requirement in words: "over 90 %, newest test at most 7 days old". */
export const requirementText = (requirement: Requirement | null): string => {
  switch (requirement?.kind) {
    case undefined:
      return 'not asked';
    case 'over':
      return `over ${requirement.line} %, newest test at most ${requirement.maxAge} days old`;
    case 'at most':
      return `at most ${requirement.line} of 10 for ${requirement.hours} h`;
    case 'normal':
      return `normal on ${requirement.days} day${requirement.days > 1 ? 's' : ''}, newest at most ${requirement.maxAge} days old`;
    case 'no fall':
      return `no fall in conditions 1 to ${Math.max(...requirement.conditions)}, at most ${requirement.maxAge} days ago`;
  }
};

const table: SourcedTable<GateItem> = {
  record: {
    id: 'return/gate-items',
    revision: 1,
    title: 'What each gate of the return asks for (practice defaults, editable)',
    source: OUR_OWN_DESIGN,
    restsOn: [COMMON_PRACTICE],
    doesNotKnow:
      'Whether these are the right lines: they are our own, no study set them, and the specialist edits them. Typical errors are round figures from practice; measure your own. Symmetry is the smaller side over the larger: at a true 100 % and an error of 5 % on each side it averages about 94.6 %, which its probability of being over a line takes at face value, on the safe side. Bone density is no item: it recovers over years.',
  },
  columns: [
    { name: 'item', unit: '' },
    { name: `first gate, after ${DWELL.first} days or more`, unit: '' },
    { name: `second gate, after ${DWELL.second} days or more`, unit: '' },
    { name: `last gate, after ${DWELL.last} days or more`, unit: '' },
    { name: 'typical error', unit: '%' },
    { name: 'fewest tests', unit: 'tests' },
    { name: 'accepted', unit: '' },
  ],
  rows: GATE_ITEMS,
  cells: ({ name, gates, typicalError, fewest, accepted, laboratory }) => [
    name,
    ...GATES.map((gate) => requirementText(gates[gate])),
    typicalError,
    fewest,
    `${accepted.join(', or ')}${laboratory ? ' (laboratory: missing, it blocks only where the physician asked for it)' : ''}`,
  ],
};

export const gateItems = shownTable(table);
