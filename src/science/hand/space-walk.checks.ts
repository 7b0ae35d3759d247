import type { Check } from '../check.ts';
import { printedResults, printedRows } from '../check.ts';
import { COMMON_PRACTICE, RECOMPUTED, SCIPY } from '../sources.ts';
import { greatestHourMean } from './hour-mean.ts';
import { balanceImpulse, impulseAfterEase, impulseAfterWork, type ImpulseBalance } from './impulse-balance.ts';
import { marchHand, type HandMarch } from './march.ts';
import { constantsFromSummary } from './personal-constants.ts';
import { rotationRatio, screenShoulders, sideDifference } from './shoulder.ts';
import { spaceWalkMargin, type SpaceWalkMargin } from './space-walk-margin.ts';
import { spaceWalkRulesBefore } from './spacewalk-rules-before.ts';
import { suitedGrip } from './suited-grip.ts';
import { WORKED_CONSTANTS, WORKED_TASKS } from './worked-example.ts';
import { fraction, newtons } from '#units/quantity.ts';

type Marched = Extract<HandMarch, { kind: 'estimate' }>;
type Balanced = Extract<ImpulseBalance, { kind: 'estimate' }>;
type Margin = Extract<SpaceWalkMargin, { kind: 'estimate' }>;

const SIX = 'written with six decimals';

const marched = (left: number, of: (march: Marched) => number) => (): number => {
  const march = marchHand(WORKED_TASKS, newtons(500 * left), WORKED_CONSTANTS);
  return march.kind === 'estimate' ? of(march) : Number.NaN;
};

const balanced = (left: number, of: (balance: Balanced) => number) => (): number => {
  const balance = balanceImpulse(WORKED_TASKS, {
    share: fraction(0.4),
    testDuty: fraction(0.7),
    suitedMaximum: newtons(500 * left),
    impulse: 14_700 * left,
  });
  return balance.kind === 'estimate' ? of(balance) : Number.NaN;
};

/** An invented hand of 500 N bare and 290 N in the suit. */
const whole = (of: (margin: Margin) => number) => (): number => {
  const suited = suitedGrip(newtons(500), { kind: 'measured', suitedMaximum: newtons(290) });
  const constants = constantsFromSummary({
    criticalForce: newtons(200),
    maximum: newtons(500),
    impulse: 14_700,
    duty: fraction(0.7),
  });
  if (suited.kind === 'refused' || constants.kind === 'refused') return Number.NaN;
  const margin = spaceWalkMargin({ side: 'right', suited, constants: constants.value, impulse: 14_700 }, WORKED_TASKS);
  return margin.kind === 'estimate' ? of(margin) : Number.NaN;
};

const taskMargins = (printed: readonly number[]) =>
  WORKED_TASKS.map(
    ({ name }, place) =>
      [
        `margin in "${name}"`,
        marched(0.58, ({ tasks }) => tasks[place]?.margin ?? Number.NaN),
        printed[place] ?? Number.NaN,
      ] as const,
  );

export const marchChecks: readonly Check[] = [
  ...printedResults(marchHand, RECOMPUTED, 5e-7, SIX, [
    ...taskMargins([0.642239, 0.220612, 0.572778, 0.162416, 0.421047, 0.465142]),
    ['tired at the end of "fasteners"', marched(0.58, ({ tasks }) => tasks[1]?.tired ?? Number.NaN), 0.375195],
    ['least margin where the glove leaves 0.45', marched(0.45, ({ value }) => value ?? Number.NaN), -0.0528],
    ['least margin where it leaves 0.40', marched(0.4, ({ value }) => value ?? Number.NaN), -0.130578],
    ['least margin where it leaves 0.485799', marched(0.485799, ({ value }) => value ?? Number.NaN), 0],
  ]),
  ...printedResults(marchHand, RECOMPUTED, 5e-4, 'written with three decimals', [
    [
      'force lost where the glove leaves 0.45 [s]',
      marched(0.45, ({ firstFailure }) => firstFailure?.at ?? Number.NaN),
      1795.953,
    ],
    [
      'force lost where it leaves 0.40 [s]',
      marched(0.4, ({ firstFailure }) => firstFailure?.at ?? Number.NaN),
      1344.824,
    ],
  ]),
  ...printedResults(
    marchHand,
    SCIPY,
    0.002,
    'closed forms leave out the tenth of a second in which the controller brings the force up',
    taskMargins([0.642651, 0.221504, 0.573243, 0.163384, 0.421702, 0.465757]).map(
      ([title, compute, printed]) => [`${title}, by the full equations`, compute, printed] as const,
    ),
  ),
];

export const marginChecks: readonly Check[] = [
  ...printedRows(RECOMPUTED, 5e-5, 'written with four decimals', [
    [impulseAfterWork, [6615, 66, 63, 1800], 1215],
    [impulseAfterEase, [1215, 6615, 3, 63, 600], 6591.6177],
  ]),
  ...printedResults(balanceImpulse, RECOMPUTED, 5e-4, 'written with three decimals', [
    ['critical force over a cycle at 0.58 [N]', balanced(0.58, ({ criticalMean }) => criticalMean), 81.2],
    ['part of the impulse left at 0.58', balanced(0.58, ({ value }) => value), 1],
    ['left after "inspect" at 0.45 [N s]', balanced(0.45, ({ left }) => left[2] ?? Number.NaN), 6591.618],
    ['spent at 0.45 [s]', balanced(0.45, ({ exhausted }) => exhausted?.at ?? Number.NaN), 4541.66],
  ]),
  ...printedResults(greatestHourMean, RECOMPUTED, 5e-7, SIX, [
    [
      'greatest mean load of an hour',
      () => {
        const found = greatestHourMean(WORKED_TASKS, newtons(290));
        return found.kind === 'estimate' ? found.value : Number.NaN;
      },
      0.201149,
    ],
  ]),
  ...printedResults(spaceWalkMargin, RECOMPUTED, 5e-7, SIX, [
    ['least margin', whole(({ value }) => value ?? Number.NaN), 0.162416],
    ['low end of its band', whole(({ band }) => band?.[0] ?? Number.NaN), 0.009452],
    ['high end of its band', whole(({ band }) => band?.[1] ?? Number.NaN), 0.262953],
    ['with a slow residual of 0.01', whole(({ sensitivity }) => sensitivity[1]?.margin ?? Number.NaN), 0.047669],
    ['with a slow residual of 0.02', whole(({ sensitivity }) => sensitivity[2]?.margin ?? Number.NaN), -0.067077],
  ]),
];

const rules = (hours: number): number => {
  const found = spaceWalkRulesBefore(hours);
  return found.kind === 'estimate' ? found.value.length : Number.NaN;
};

export const practiceChecks: readonly Check[] = [
  ...printedResults(spaceWalkRulesBefore, COMMON_PRACTICE, 0, 'a count', [
    ['rules 12 h before', () => rules(12), 4],
    ['rules 48 h before', () => rules(48), 3],
    ['rules 73 h before', () => rules(73), 0],
  ]),
];

const shoulders = (): number => {
  const screen = screenShoulders(
    { external: newtons(118), internal: newtons(164) },
    { external: newtons(130), internal: newtons(160) },
    false,
  );
  return screen.kind === 'estimate' ? screen.value : Number.NaN;
};

export const shoulderChecks: readonly Check[] = [
  ...printedRows(RECOMPUTED, 5e-7, SIX, [
    [rotationRatio, [118, 164], 0.719512],
    [sideDifference, [118, 130], 0.092308],
  ]),
  ...printedResults(screenShoulders, RECOMPUTED, 5e-7, SIX, [
    ['lower ratio of an invented person', shoulders, 0.719512],
  ]),
];
