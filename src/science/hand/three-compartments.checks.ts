import type { Check } from '../check.ts';
import { printedResults, printedRows } from '../check.ts';
import { RECOMPUTED, SCIPY } from '../sources.ts';
import { simulateCompartments } from './compartment-simulation.ts';
import { POOLED_GRIP, SUSTAINED_GRIP, type FatigueConstants } from './fatigue-constants.table.ts';
import { FREY_LAW_AVIN_2010, PUBLIC_FATIGUE_TABLE } from './sources.ts';
import {
  allOutTimeConstant,
  cycleRecovery,
  handMargin,
  intermittentLimit,
  sustainableForce,
  tiredAfterRest,
  tiredAfterWork,
  tiredAllOut,
  tiredInTheLongRun,
  tiredWhenSpent,
} from './three-compartments.ts';
import { sustainedEndurance, workPhase } from './work-phases.ts';
import { enduranceTimeFreyLawAvin } from './endurance-time.ts';
import { fraction, seconds } from '#units/quantity.ts';

const [F, R, r] = [0.0098, 0.00064, 30];

const endurance = (share: number): number => {
  const found = sustainedEndurance(fraction(share), SUSTAINED_GRIP);
  return found.kind === 'estimate' ? found.value : Number.NaN;
};
const phase = (lasts: number) => workPhase(fraction(0.2), fraction(0.5), seconds(lasts), SUSTAINED_GRIP);
const end = (lasts: number): number => {
  const found = phase(lasts);
  return found.kind === 'estimate' ? found.tired : Number.NaN;
};
const lost = (): number => {
  const found = phase(200);
  return found.kind === 'estimate' ? (found.failedAfter ?? Number.NaN) : Number.NaN;
};
/** In steps of a twentieth of a second, which is enough for a tenth. */
const fullEndurance = (share: number, constants: FatigueConstants, lasts: number): number => {
  const found = simulateCompartments([{ target: fraction(share), seconds: seconds(lasts) }], constants, 0.05);
  return found.kind === 'estimate' ? (found.failedAt ?? Number.NaN) : Number.NaN;
};

const EVERY_TENTH = [1385, 473, 258, 161, 106] as const;
const ABOVE_HALF = [69.6, 44.4, 25.8, 11.4] as const;

export const closedFormChecks: readonly Check[] = [
  ...printedRows(RECOMPUTED, 5e-10, 'written with nine decimals', [
    [tiredAfterWork, [0.2, 0.5, 30, F, R], 0.341794418],
    [tiredAfterRest, [0.5, 60, R, r], 0.158002064],
    [tiredWhenSpent, [0.5, 200 - 64.166415975, F, R], 0.832456639],
  ]),
  ...printedRows(RECOMPUTED, 5e-5, 'written with four decimals', [
    [intermittentLimit, [0.7, F, R, r], 0.4751],
    [intermittentLimit, [0.7, 0.01235, 0.00135, 12.51], 0.4102],
    [intermittentLimit, [0.7, 0.01238, 0.00178, 8], 0.389],
    [intermittentLimit, [0.7, 0.01159, 0.00217, 7.39], 0.4383],
    [intermittentLimit, [0.5, 0.01235, 0.00135, 12.51], 0.5963],
    [intermittentLimit, [1, 0.01235, 0.00135, 12.51], 0.0985],
    [sustainableForce, [0.01235, 0.00135], 0.0985],
    [tiredAllOut, [0.01235, 0.00135], 0.9015],
    [tiredInTheLongRun, [0.5, F, R], 7.65625],
    [handMargin, [0.375195, 0.37931], 0.2455],
  ]),
  ...printedRows(RECOMPUTED, 5e-9, 'written with eight decimals', [
    [allOutTimeConstant, [0.7, 0.012244897959183673, 0.0012832440409354848, 12.51], 70],
    [cycleRecovery, [0.7, 0.0012832440409354848, 12.51], 0.00571429],
  ]),
  ...printedResults(workPhase, RECOMPUTED, 5e-7, 'written with six decimals', [
    ['from 0.2 tired, half of the maximum for 30 s: tired share', () => end(30), 0.341794],
    ['from 0.2 tired, half of the maximum for 200 s: tired share', () => end(200), 0.832457],
    ['from 0.2 tired, half of the maximum: force lost after [s]', lost, 64.166416],
  ]),
  ...printedResults(sustainedEndurance, RECOMPUTED, 5e-7, 'written with six decimals', [
    ['grip, half of the maximum [s]', () => endurance(0.5), 105.525323],
  ]),
  ...printedResults(
    sustainedEndurance,
    PUBLIC_FATIGUE_TABLE,
    0.65,
    'tabulated to whole seconds, from steps that bring the force up in a tenth of a second',
    EVERY_TENTH.map((printed, place) => {
      const share = (place + 1) / 10;
      return [`grip, ${share} of the maximum [s]`, () => endurance(share), printed] as const;
    }),
  ),
  ...printedResults(
    sustainedEndurance,
    PUBLIC_FATIGUE_TABLE,
    0.2,
    'tabulated to tenths of a second, from steps that bring the force up in a tenth of a second',
    ABOVE_HALF.map((printed, place) => {
      const share = (place + 6) / 10;
      return [`grip, ${share} of the maximum [s]`, () => endurance(share), printed] as const;
    }),
  ),
  ...[0.2, 0.3, 0.4, 0.5, 0.6].map((share): Check => ({
    kind: 'series',
    title: `Three compartments over the grip curve at ${share} of the maximum`,
    compute: () => endurance(share) / enduranceTimeFreyLawAvin(fraction(share)),
    printed: 1,
    within: 0.13,
    because: 'the model was fitted to that curve; up to 0.6 it keeps within an eighth of it, above it falls short',
    source: FREY_LAW_AVIN_2010,
  })),
];

export const fullEquationChecks: readonly Check[] = printedResults(
  simulateCompartments,
  SCIPY,
  0.01,
  'fixed steps of 0.05 s against an adaptive stiff solver; a hundredth of a second is more than either is off',
  [
    ['grip, half of the maximum, force lost after [s]', () => fullEndurance(0.5, SUSTAINED_GRIP, 110), 105.73222],
    ['grip, 0.8 of the maximum, force lost after [s]', () => fullEndurance(0.8, SUSTAINED_GRIP, 30), 25.84607],
    ['pooled constants, half of the maximum [s]', () => fullEndurance(0.5, POOLED_GRIP, 90), 85.9609],
    ['pooled constants, 0.6 of the maximum [s]', () => fullEndurance(0.6, POOLED_GRIP, 60), 56.22093],
  ],
);
