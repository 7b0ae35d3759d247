import { formula, type FormulaInput } from '../formula.ts';
import { method } from '../method.ts';
import type { Curve } from '../plot.ts';
import { OUR_OWN_DESIGN } from '../sources.ts';
import { MURLASITS_2017, EDDENS_2018, ROBINEAU_2016, SCHUMANN_2022, WILSON_2012 } from './sources.ts';

/** What a planner pays for strength and endurance work close together. Costs rank plans of a day; they predict nothing. */

/** From here on two sessions are two, and the loss of explosive strength was no longer seen [h]. */
export const ONE_SESSION = 3;
/** From here on nothing is paid [h]. */
export const APART = 6;
/** Paid within one session, per pair. */
export const COST_WITH_POWER = 1;
export const COST_WITHOUT_POWER = 0.3;
/** Paid from three to six hours. */
const COST_BETWEEN = 0.2;
/** Paid for endurance before strength within one session. */
const COST_OF_ORDER = 0.5;
/** Paid for the treadmill within one session before strength of the lower body. */
const COST_OF_TREADMILL = 0.5;

const THRESHOLDS =
  'Costs and hours are our own design: they set papers in an order that a planner can add up. Edit them where practice differs.';

const effectSize = (name: string, symbol: string): FormulaInput => ({
  name,
  symbol,
  unit: 'effect size',
  possible: [0, 10],
  valid: [0, 5],
});

/** Share of the effect of strength training that is left with endurance beside it. */
export const concurrentShare = formula(
  {
    id: 'scheduling/concurrent-share',
    revision: 1,
    title: 'Share of the effect of strength training that is left with endurance beside it',
    equation: 'ES_concurrent / ES_alone',
    inputs: [
      effectSize('effect with endurance', 'ES_concurrent'),
      { ...effectSize('effect of strength training alone', 'ES_alone'), possible: [0.01, 10], valid: [0.1, 5] },
    ],
    output: { name: 'share left', symbol: 's', unit: '1' },
    source: WILSON_2012,
    doesNotKnow: 'The spread of either effect; the people of the pooled studies were not the same.',
  },
  (concurrent: number, alone: number): number => concurrent / alone,
);

/** Cost of the hours between a strength and an endurance session. */
export const costOfGap = formula(
  {
    id: 'scheduling/cost-of-gap',
    revision: 1,
    title: 'Cost of the hours between a strength and an endurance session',
    equation: 'c where g < 3, 0.2 where 3 ≤ g < 6, else 0',
    inputs: [
      { name: 'hours between', symbol: 'g', unit: 'h', possible: [0, 10_000], valid: [0, 168] },
      { name: 'cost within one session', symbol: 'c', unit: 'cost', possible: [0, 10], valid: [0.3, 1] },
    ],
    output: { name: 'cost', symbol: 'C_gap', unit: 'cost' },
    source: OUR_OWN_DESIGN,
    restsOn: [SCHUMANN_2022, ROBINEAU_2016],
    doesNotKnow: THRESHOLDS,
    plot: {
      says: 'Three hours apart take most of the cost away, six hours all of it; where power is no goal little is at stake.',
      x: { name: 'hours between', unit: 'h' },
      y: { name: 'cost', unit: '' },
      curves: (): readonly Curve[] =>
        [
          ['power is a goal', COST_WITH_POWER],
          ['power is no goal', COST_WITHOUT_POWER],
        ].map(([label, within]) => ({
          label: label as string,
          points: steps.map((gap) => [gap, costOfGap(gap, within as number)] as const),
        })),
    },
  },
  (gap: number, withinOneSession: number): number =>
    gap < ONE_SESSION ? withinOneSession : gap < APART ? COST_BETWEEN : 0,
);

/** Both sides of each step, so that a line drawn through them stands upright. */
const JUST = 1e-9;
const steps: readonly number[] = [0, ONE_SESSION - JUST, ONE_SESSION, APART - JUST, APART, 12];

export interface TimedSession {
  readonly work: 'strength' | 'endurance';
  /** Minutes of one running clock. */
  readonly from: number;
  readonly until: number;
  /** Of an endurance session. */
  readonly onTreadmill?: boolean;
  /** Of a strength session. */
  readonly lowerBody?: boolean;
}

export type InterferenceCost =
  | {
      readonly kind: 'cost';
      readonly total: number;
      readonly gap: number;
      readonly order: number;
      readonly treadmill: number;
      readonly reasons: readonly string[];
    }
  | { readonly kind: 'refused'; readonly reason: string };

const MINUTES_OF_AN_HOUR = 60;
const NOTHING = { kind: 'cost', total: 0, gap: 0, order: 0, treadmill: 0, reasons: [] } as const;

const refusalOf = (sessions: readonly TimedSession[]): string | null => {
  if (sessions.some(({ from, until }) => !(until > from && from > -Infinity && until < Infinity)))
    return 'A session must end after it begins.';
  const inTurn = sessions.toSorted((a, b) => a.from - b.from);
  return inTurn.some((session, place) => session.from < (inTurn[place - 1]?.until ?? -Infinity))
    ? 'Two sessions of one person overlap; move one of them first.'
    : null;
};

/** Cost of two sessions in the order in which they are done. */
const costOf = (
  first: TimedSession,
  second: TimedSession,
  powerIsAGoal: boolean,
): InterferenceCost & { kind: 'cost' } => {
  if (first.work === second.work) return NOTHING;
  const between = (second.from - first.until) / MINUTES_OF_AN_HOUR;
  const together = between < ONE_SESSION;
  const gap = costOfGap(between, powerIsAGoal ? COST_WITH_POWER : COST_WITHOUT_POWER);
  const order = together && second.work === 'strength' ? COST_OF_ORDER : 0;
  const treadmill = order > 0 && first.onTreadmill === true && second.lowerBody === true ? COST_OF_TREADMILL : 0;
  return {
    kind: 'cost',
    total: gap + order + treadmill,
    gap,
    order,
    treadmill,
    reasons: [
      ...(gap > 0 ? [`strength and endurance ${together ? 'less than 3 hours' : '3 to 6 hours'} apart`] : []),
      ...(order > 0 ? ['endurance before strength'] : []),
      ...(treadmill > 0 ? ['treadmill before strength of the lower body'] : []),
    ],
  };
};

/** Cost of strength and endurance work close together. */
export const interferenceCost = method(
  {
    id: 'scheduling/interference-cost',
    revision: 1,
    title: 'Cost of strength and endurance sessions close together',
    equations: [
      'C = sum over pairs of (C_gap + C_order + C_treadmill)',
      'C_gap = c where g < 3, 0.2 where 3 ≤ g < 6, else 0, with c = 1 where power is a goal, else 0.3',
      'C_order = 0.5 where endurance comes before strength and g < 3, else 0',
      'C_treadmill = 0.5 where that endurance was on the treadmill and the strength is of the lower body, else 0',
    ],
    inputs: [{ name: 'hours between', symbol: 'g', unit: 'h', possible: [0, 10_000], valid: [0, 168] }],
    outputs: [{ name: 'cost', symbol: 'C', unit: 'cost' }],
    refuses: ['a session that ends before it begins', 'sessions of one person that overlap'],
    source: OUR_OWN_DESIGN,
    restsOn: [SCHUMANN_2022, ROBINEAU_2016, MURLASITS_2017, EDDENS_2018, WILSON_2012],
    doesNotKnow: `${THRESHOLDS} How hard or how long either session is counts for nothing here.`,
  },
  (sessions: readonly TimedSession[], powerIsAGoal: boolean): InterferenceCost => {
    const reason = refusalOf(sessions);
    if (reason !== null) return { kind: 'refused', reason };
    const inTurn = sessions.toSorted((a, b) => a.from - b.from);
    const pairs = inTurn.flatMap((first, place) =>
      inTurn.slice(place + 1).map((second) => costOf(first, second, powerIsAGoal)),
    );
    const sum = (of: (each: (typeof pairs)[number]) => number): number =>
      pairs.reduce((total, pair) => total + of(pair), 0);
    return {
      kind: 'cost',
      total: sum(({ total }) => total),
      gap: sum(({ gap }) => gap),
      order: sum(({ order }) => order),
      treadmill: sum(({ treadmill }) => treadmill),
      reasons: [...new Set(pairs.flatMap(({ reasons }) => reasons))],
    };
  },
);
