import { formula } from '../formula.ts';
import { method } from '../method.ts';
import { OUR_OWN_DESIGN } from '../sources.ts';
import { QUALITIES, substitute, type Quality, type SubstituteId } from './substitutes.table.ts';
import { fraction, type Fraction } from '#units/quantity.ts';

/** How much of what was planned was covered, quality by quality, and what was not. */

const sessions = (name: string, symbol: string, from = 0) => ({
  name,
  symbol,
  unit: 'sessions',
  possible: [from, 1000] as const,
  valid: [from, 100] as const,
});

const DEFAULTS = 'How well a substitute keeps anything in flight: coverages are our own practice defaults.';

/** Part of planned sessions that was covered. */
export const coverage = formula(
  {
    id: 'resuming/coverage',
    revision: 1,
    title: 'Part of planned sessions that was covered',
    equation: '(n_done + c · n_substituted) / n_planned',
    inputs: [
      sessions('sessions done', 'n_done'),
      sessions('sessions substituted', 'n_substituted'),
      { name: 'coverage of a substitute', symbol: 'c', unit: '1', possible: [0, 1], valid: [0, 1] },
      sessions('sessions planned', 'n_planned', 1),
    ],
    output: { name: 'coverage', symbol: 'C', unit: '1' },
    conditions: [
      {
        says: 'No more sessions were done and substituted than were planned: more of one kind is no credit for another.',
        holds: (done = 0, substituted = 0, _each = 0, planned = 0) => done + substituted <= planned,
      },
    ],
    source: OUR_OWN_DESIGN,
    doesNotKnow: DEFAULTS,
  },
  (done: number, substituted: number, each: Fraction, planned: number): Fraction =>
    fraction((done + each * substituted) / planned),
);

export interface PlannedQualities {
  readonly qualities: readonly Quality[];
  readonly outcome:
    { readonly kind: 'done' } | { readonly kind: 'substituted'; readonly by: SubstituteId } | { readonly kind: 'lost' };
}

export interface QualityCoverage {
  readonly quality: Quality;
  readonly planned: number;
  readonly covered: number;
  readonly coverage: Fraction;
  /** In planned sessions. */
  readonly uncovered: number;
  /** Substitutes that are not rated for this quality, and counted as nothing. */
  readonly notRated: readonly SubstituteId[];
}

export type CoverageOfPlan =
  | { readonly kind: 'coverage'; readonly qualities: readonly QualityCoverage[] }
  | { readonly kind: 'none'; readonly reason: string };

/** Coverage that somebody has set in place of a default. */
export type CoverageOverride = (by: SubstituteId, quality: Quality) => number | undefined;

const DEFAULT_COVERAGE: CoverageOverride = (by, quality) => substitute(by).covers[quality];

const ofQuality = (quality: Quality, plan: readonly PlannedQualities[], covers: CoverageOverride): QualityCoverage => {
  const wanting = plan.filter(({ qualities }) => qualities.includes(quality));
  const used = wanting.flatMap(({ outcome }) => (outcome.kind === 'substituted' ? [outcome.by] : []));
  const done = wanting.filter(({ outcome }) => outcome.kind === 'done').length;
  const covered = used.reduce((sum, by) => sum + (covers(by, quality) ?? 0), done);
  return {
    quality,
    planned: wanting.length,
    covered,
    coverage: fraction(covered / wanting.length),
    uncovered: wanting.length - covered,
    notRated: [...new Set(used.filter((by) => covers(by, quality) === undefined))],
  };
};

/** What of a plan was covered, and what was not, quality by quality. */
export const coverageOfPlan = method(
  {
    id: 'resuming/coverage-of-plan',
    revision: 1,
    title: 'What of a plan was covered, and what was not, quality by quality',
    equations: [
      'covered = n_done + sum of c over substituted sessions',
      'C = covered / n_planned',
      'uncovered = n_planned − covered',
    ],
    inputs: [{ name: 'coverage of a substitute', symbol: 'c', unit: '1', possible: [0, 1], valid: [0, 1] }],
    outputs: [
      { name: 'coverage', symbol: 'C', unit: '1' },
      { name: 'uncovered', symbol: 'u', unit: 'sessions' },
    ],
    refuses: ['a plan without a session', 'a coverage below 0 or above 1'],
    source: OUR_OWN_DESIGN,
    doesNotKnow: `${DEFAULTS} A substitute that is not rated for a quality covers nothing of it, and is named.`,
  },
  (plan: readonly PlannedQualities[], covers: CoverageOverride = DEFAULT_COVERAGE): CoverageOfPlan => {
    const qualities = QUALITIES.filter((quality) => plan.some((session) => session.qualities.includes(quality)));
    if (qualities.length === 0) return { kind: 'none', reason: 'No session was planned for any quality.' };
    const impossible = plan.some(
      ({ qualities: wanted, outcome }) =>
        outcome.kind === 'substituted' && wanted.some((quality) => !isCoverage(covers(outcome.by, quality))),
    );
    if (impossible) return { kind: 'none', reason: 'A coverage must lie in 0 to 1.' };
    return { kind: 'coverage', qualities: qualities.map((quality) => ofQuality(quality, plan, covers)) };
  },
);

const isCoverage = (value: number | undefined): boolean => value === undefined || (value >= 0 && value <= 1);
