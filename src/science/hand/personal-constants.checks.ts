import type { Check } from '../check.ts';
import { printedResults, printedRows } from '../check.ts';
import { COUNTED_BY_HAND, RECOMPUTED, SCIPY } from '../sources.ts';
import { compareCriticalForces, scoreAllOutTest, type AllOutScore } from './all-out-test.ts';
import { fitFall } from './all-out-curve.ts';
import { criticalForceChange, planningCriticalForce } from './critical-force.ts';
import { constantsFromCurve, constantsFromSummary, type PersonalConstants } from './personal-constants.ts';
import { partOfForce } from './part-of-force.ts';
import { personalFatigueRate, personalRecoveryRate, timeConstantOfTest } from './personal-rates.ts';
import { BALAS_2024 } from './sources.ts';
import { WORKED_FORCES } from './worked-example.ts';
import { fraction, newtons, seconds } from '#units/quantity.ts';

const meanForces = WORKED_FORCES.map((each) => newtons(500 * each));
const cycle = { on: seconds(7), off: seconds(3) };

const scored = (of: (score: Extract<AllOutScore, { kind: 'estimate' }>) => number) => (): number => {
  const score = scoreAllOutTest({ meanForces, ...cycle, maxima: [newtons(500)] });
  return score.kind === 'estimate' ? of(score) : Number.NaN;
};

const summedUp = (of: (value: PersonalConstants) => number) => (): number => {
  const found = constantsFromSummary({
    criticalForce: newtons(200),
    maximum: newtons(500),
    impulse: 14_700,
    duty: fraction(0.7),
  });
  return found.kind === 'estimate' ? of(found.value) : Number.NaN;
};

const fitted = (of: (value: PersonalConstants) => number) => (): number => {
  const found = constantsFromCurve({ meanForces, maximum: newtons(500), ...cycle });
  return found.kind === 'estimate' ? of(found.value) : Number.NaN;
};

const change = (earlier: number, later: number): number => {
  const found = compareCriticalForces(newtons(earlier), newtons(later));
  return found.kind === 'estimate' ? found.value : Number.NaN;
};

export const allOutChecks: readonly Check[] = [
  ...printedRows(BALAS_2024, 0.1, 'the two means are printed to a tenth of a kilogram, 0.84 to two digits', [
    [planningCriticalForce, [20.1], 16.8],
  ]),
  ...printedRows(RECOMPUTED, 5e-7, 'written with six decimals', [[criticalForceChange, [210, 180], 0.166667]]),
  ...printedRows(COUNTED_BY_HAND, 1e-9, 'differs by the rounding of a double', [[partOfForce, [0.9, 210], 189]]),
  // (0.428 + 0.424 + 0.421) / 3 of 500 N; the sum of all 24 is 13.656.
  ...printedResults(scoreAllOutTest, RECOMPUTED, 5e-3, 'written with two decimals', [
    ['critical force of an invented test [N]', scored(({ criticalForce }) => criticalForce.value), 212.17],
    ['its impulse above that [N s]', scored(({ impulse }) => impulse.value), 12_152],
  ]),
  ...printedResults(compareCriticalForces, RECOMPUTED, 5e-7, 'written with six decimals', [
    ['from 180 to 210 N', () => change(180, 210), 0.166667],
  ]),
];

export const constantChecks: readonly Check[] = [
  ...printedRows(RECOMPUTED, 5e-10, 'written with ten decimals, or exact', [
    [timeConstantOfTest, [14_700, 0.7, 500, 200], 70],
    [personalFatigueRate, [0.4, 0.7, 70], 0.012244898],
    [personalRecoveryRate, [0.4, 0.7, 70, 12.51], 0.001283244],
  ]),
  ...printedResults(constantsFromSummary, RECOMPUTED, 5e-11, 'written with ten decimals', [
    ['rate of fatigue of an invented hand [1/s]', summedUp(({ fatigue }) => fatigue), 0.012244898],
    ['its rate of recovery [1/s]', summedUp(({ recovery }) => recovery), 0.001283244],
  ]),
  ...printedResults(
    constantsFromCurve,
    SCIPY,
    5e-8,
    'two least-squares searches, each stopped where it no longer moves',
    [
      ['rate of fatigue from its 24 contractions [1/s]', fitted(({ fatigue }) => fatigue), 0.01225434],
      ['rate of recovery from them [1/s]', fitted(({ recovery }) => recovery), 0.00128515],
    ],
  ),
  ...(
    [
      ['kept from one contraction to the next', () => fitFall(WORKED_FORCES).kept, 0.866747],
      ['plateau of the maximum', () => fitFall(WORKED_FORCES).plateau, 0.4000551],
    ] as const
  ).map(([title, compute, printed]): Check => ({
    kind: 'series',
    title: `Curve of an all-out test: ${title}`,
    compute,
    printed,
    within: 2e-6,
    because: 'two least-squares searches, each stopped where it no longer moves',
    source: SCIPY,
  })),
];
