import { printedResults, printedRows, type Check } from '../check.ts';
import { RECOMPUTED } from '../sources.ts';
import { coverage, coverageOfPlan, type PlannedQualities } from './coverage.ts';
import { olderLoad, olderSets } from './older-resume-rule.table.ts';
import { firstLoadBack, resumeAfterMissed, type Missed } from './resume-after-missed.ts';

const half = (digits: number): number => 0.5 * 10 ** -digits + 1e-12;
const SIX = 'written to six decimals';

const left = (missed: Missed) => (): number => {
  const found = resumeAfterMissed(missed);
  if (found.kind === 'refused') throw new RangeError(found.reason);
  return found.left;
};

const missed = (days: number, because: Missed['because'], meanwhile: Missed['meanwhile']): Missed => ({
  days,
  because,
  meanwhile,
  released: true,
});

export const resumeChecks: readonly Check[] = [
  ...printedResults(resumeAfterMissed, RECOMPUTED, half(6), SIX, [
    ['Machine out for 21 days, nothing meanwhile', left(missed(21, 'machine out', 'nothing')), 0.802066],
    ['Machine out for 28 days, kept running', left(missed(28, 'machine out', 'kept running')), 0.968783],
    ['Busy for 10 days in 1 g', left(missed(10, 'busy', 'up and about in 1 g')), 1],
    ['Ill for 10 days, however they were spent', left(missed(10, 'ill', 'kept running')), 0.886847],
  ]),
  ...printedRows(RECOMPUTED, half(4), 'written to four decimals', [[firstLoadBack, [0.802066, 100], 80.2066]]),
  {
    kind: 'series',
    title: 'Older rule in flight after 21 days: 100 kg become [kg]',
    compute: () => 100 * olderLoad(21, 'flight'),
    printed: 76.196,
    within: 5e-4,
    because: 'written to three decimals',
    source: RECOMPUTED,
  },
  {
    kind: 'series',
    title: 'Older rule in flight after 21 days: four sets become',
    compute: () => olderSets(21, 4) ?? 0,
    printed: 2,
    within: 0,
    because: 'a whole number of sets',
    source: RECOMPUTED,
  },
];

const RESISTIVE: readonly PlannedQualities[] = [
  { qualities: ['strength'], outcome: { kind: 'done' } },
  { qualities: ['strength'], outcome: { kind: 'substituted', by: 'elastic cords' } },
  { qualities: ['strength'], outcome: { kind: 'substituted', by: 'elastic cords' } },
  { qualities: ['strength'], outcome: { kind: 'lost' } },
];

const strengthOf = (of: 'coverage' | 'uncovered') => (): number => {
  const found = coverageOfPlan(RESISTIVE);
  if (found.kind === 'none') throw new RangeError(found.reason);
  return found.qualities.find(({ quality }) => quality === 'strength')?.[of] ?? 0;
};

const TENTHS = 'sums and products of tenths';

export const coverageChecks: readonly Check[] = [
  ...printedRows(RECOMPUTED, 1e-12, TENTHS, [
    [coverage, [1, 2, 0.6, 4], 0.55],
    [coverage, [0, 4, 0.7, 4], 0.7],
  ]),
  ...printedResults(coverageOfPlan, RECOMPUTED, 1e-12, TENTHS, [
    ['Four resistive sessions: one done, two with cords, one lost', strengthOf('coverage'), 0.55],
    ['Of these not covered', strengthOf('uncovered'), 1.8],
  ]),
];
