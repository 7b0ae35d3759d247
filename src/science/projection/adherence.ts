import { formula, type FormulaInput } from '../formula.ts';
import { method } from '../method.ts';
import { bisect } from '../numeric/root.ts';
import { ABRAMOWITZ_STEGUN_1964 } from '../numeric/normal.ts';
import { spaced, type Curve } from '../plot.ts';
import { GELMAN_2013, OUR_OWN_DESIGN } from '../sources.ts';

/**
 * Which part of the sessions still to come will be done, from those done and missed: for forecasts only. What was done is
 * shown as plain counts.
 */

/** Before anything is known of a person: as if eight sessions had been done and two missed. */
const [DONE_BEFORE, MISSED_BEFORE] = [8, 2] as const;
const MOST_SESSIONS = 10_000;

const sessions = (name: string, symbol: string): FormulaInput => ({
  name,
  symbol,
  unit: 'sessions',
  possible: [0, MOST_SESSIONS],
  valid: [0, 1500],
});
const done = sessions('sessions done', 'done');
const missed = sessions('sessions missed', 'missed');

const NOT_THE_FUTURE =
  'Why sessions were missed: a machine that is repaired or a busy month make no habit. That ten invented sessions are the right weight before the first is our own choice.';

/** Expected adherence. */
export const expectedAdherence = formula(
  {
    id: 'projection/expected-adherence',
    revision: 1,
    title: 'Expected adherence',
    equation: 'c = (8 + done) / (10 + done + missed)',
    inputs: [done, missed],
    output: { name: 'adherence', symbol: 'c', unit: '1' },
    source: OUR_OWN_DESIGN,
    restsOn: [GELMAN_2013],
    doesNotKnow: NOT_THE_FUTURE,
  },
  (did: number, not: number): number => (DONE_BEFORE + did) / (DONE_BEFORE + MISSED_BEFORE + did + not),
);

/** Spread of the adherence. */
export const adherenceSd = formula(
  {
    id: 'projection/adherence-sd',
    revision: 1,
    title: 'Spread of the adherence',
    equation: 'SD = √(c · (1 − c) / (11 + done + missed))',
    inputs: [done, missed],
    output: { name: 'standard deviation', symbol: 'SD', unit: '1' },
    source: OUR_OWN_DESIGN,
    restsOn: [GELMAN_2013],
    doesNotKnow: NOT_THE_FUTURE,
  },
  (did: number, not: number): number => {
    const expected = expectedAdherence(did, not);
    return Math.sqrt((expected * (1 - expected)) / (DONE_BEFORE + MISSED_BEFORE + 1 + did + not));
  },
);

/** Probability of exactly `hits` of `trials`, each with probability x strictly between 0 and 1. */
const binomial = (trials: number, hits: number, x: number): number => {
  const few = Math.min(hits, trials - hits);
  let logarithm = hits * Math.log(x) + (trials - hits) * Math.log1p(-x);
  for (let each = 1; each <= few; each += 1) logarithm += Math.log((trials - few + each) / each);
  return Math.exp(logarithm);
};

/**
 * Probability that a Beta(a, b) value lies below x. For whole a and b it is the probability of at least a hits in
 * a + b − 1 trials; the sum runs over the tail on x’s far side, which begins with its largest term.
 */
const betaBelow = (a: number, b: number, x: number): number => {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  const trials = a + b - 1;
  const odds = x / (1 - x);
  const upper = x * trials < a;
  let hits = upper ? a : a - 1;
  let term = binomial(trials, hits, x);
  let sum = 0;
  while (term > sum * Number.EPSILON && hits >= 0 && hits <= trials) {
    sum += term;
    term *= upper ? ((trials - hits) / (hits + 1)) * odds : hits / ((trials - hits + 1) * odds);
    hits += upper ? 1 : -1;
  }
  return upper ? sum : 1 - sum;
};

export type Refused = { readonly kind: 'refused'; readonly reason: string };

export type AdherenceResult =
  | { readonly kind: 'estimate'; readonly value: number; readonly sd: number; readonly cautions: readonly string[] }
  | Refused;

const isCount = (value: number): boolean => Number.isInteger(value) && value >= 0 && value <= MOST_SESSIONS;

/** Why counts of sessions cannot be, or nothing. */
export const faultOfCounts = (did: number, not: number): Refused | null =>
  isCount(did) && isCount(not)
    ? null
    : {
        kind: 'refused',
        reason: `Sessions done and missed must be whole numbers from 0 to ${MOST_SESSIONS}; they are ${did} and ${not}.`,
      };

/** Probability that the adherence lies below a value, for counts that were looked at before. */
export const adherenceBelow = (did: number, not: number, value: number): number =>
  betaBelow(DONE_BEFORE + did, MISSED_BEFORE + not, value);

/** Far below what anybody reads. */
const WITHIN = 1e-13;

/** The adherence below which a share lies, for counts and shares that were looked at before. */
export const adherenceAt = (did: number, not: number, share: number): number => {
  const found = bisect((value) => adherenceBelow(did, not, value) - share, { low: 0, high: 1, within: WITHIN });
  // From 0 to 1 the probability climbs from 0 to 1: there is a bracket, and it is halved some forty times.
  return found.kind === 'converged' ? found.root : expectedAdherence(did, not);
};

const cumulative = (label: string, did: number, not: number): Curve => ({
  label,
  points: spaced(0, 1).map((value) => [value, adherenceBelow(did, not, value)] as const),
});

/** The adherence below which a share of the posterior lies. */
export const adherenceQuantile = method(
  {
    id: 'projection/adherence-quantile',
    revision: 1,
    title: 'Adherence below which a share of the posterior lies',
    equations: [
      'adherence ~ Beta(a, b) with a = 8 + done and b = 2 + missed',
      'P(adherence < x) = sum_(j=a)^n n! / (j! · (n − j)!) · x^j · (1 − x)^(n − j) with n = a + b − 1',
      'x with P(adherence < x) = p',
    ],
    inputs: [done, missed, { name: 'share', symbol: 'p', unit: '1', possible: [0, 1], valid: [0.001, 0.999] }],
    outputs: [
      { name: 'adherence', symbol: 'x', unit: '1' },
      { name: 'standard deviation', symbol: 'SD', unit: '1' },
    ],
    refuses: [
      'Sessions done and missed must be whole numbers from 0 to 10000.',
      'A share lies between 0 and 1, ends not included.',
    ],
    source: GELMAN_2013,
    restsOn: [ABRAMOWITZ_STEGUN_1964, OUR_OWN_DESIGN],
    doesNotKnow: NOT_THE_FUTURE,
    plot: {
      says: 'With more sessions counted the curve grows steep: what is known of the person takes over from what was assumed.',
      x: { name: 'adherence', unit: '1' },
      y: { name: 'probability that it lies below', unit: '1' },
      curves: (): readonly Curve[] => [
        cumulative('before the first session', 0, 0),
        cumulative('19 of 24 done', 19, 5),
        cumulative('140 of 156 done', 140, 16),
      ],
    },
  },
  (did: number, not: number, share: number): AdherenceResult => {
    const fault = faultOfCounts(did, not);
    if (fault) return fault;
    if (!(share > 0 && share < 1))
      return { kind: 'refused', reason: `A share lies between 0 and 1, ends not included; it is ${share}.` };
    return {
      kind: 'estimate',
      value: adherenceAt(did, not, share),
      sd: adherenceSd(did, not),
      cautions:
        did + not === 0
          ? ['No session is counted yet: this is the assumption that eight of ten sessions are done.']
          : [],
    };
  },
);
