import { printedResults, printedRows, type Check } from '../check.ts';
import { RECOMPUTED } from '../sources.ts';
import { headacheOdds, levelAfter, levelOfPressure, partialPressure, steadyLevel } from './carbon-dioxide-level.ts';
import { carbonDioxideFlow, carbonDioxideMass, flowInCabin, heatToCabin, metabolicHeat } from './exercise-output.ts';
import { levelAlong, type Cabin, type Exerciser } from './level-along.ts';
import { LAW_2014 } from './sources.ts';

const half = (digits: number): number => 0.5 * 10 ** -digits + 1e-9;
const THREE = 'written to three decimals';

export const outputChecks: readonly Check[] = [
  ...printedRows(RECOMPUTED, 1e-12, 'a product of two tenths', [[carbonDioxideFlow, [0.9, 2], 1.8]]),
  ...printedRows(RECOMPUTED, half(6), 'written to six decimals', [
    [carbonDioxideMass, [1.8], 3.534269],
    [flowInCabin, [1.8, 22, 101.325], 1.944975],
    [flowInCabin, [1.8, 22, 70.3], 2.803337],
  ]),
  ...printedRows(RECOMPUTED, half(3), THREE, [
    [metabolicHeat, [2], 696.667],
    [heatToCabin, [696.667, 150], 546.667],
    [heatToCabin, [871.667, 180], 691.667],
  ]),
  {
    kind: 'series',
    title: 'Carbon dioxide of 45 minutes at 2 L/min [g]',
    compute: () => 45 * carbonDioxideMass(carbonDioxideFlow(0.9, 2 as never)),
    printed: 159.042,
    within: half(3),
    because: THREE,
    source: RECOMPUTED,
  },
];

const CABIN: Cabin = { volume: 100, cleanAir: 1.8, background: 2600 };
const session = (from: number, until: number): Exerciser => ({ from, until, flow: 0.0018 });

const highest = (sessions: readonly Exerciser[]) => (): number => {
  const along = levelAlong(CABIN, sessions);
  if (along.kind === 'refused') throw new RangeError(along.reason);
  return along.highest.level;
};

export const levelChecks: readonly Check[] = [
  ...printedRows(RECOMPUTED, half(3), THREE, [
    [levelAfter, [0.0018, 1.8, 100, 45, 0], 555.142],
    [levelAfter, [0, 1.8, 100, 45, 555.142], 246.959],
    [levelOfPressure, [2.5, 760], 3289.474],
  ]),
  ...printedRows(RECOMPUTED, half(2), 'written to two decimals', [[levelOfPressure, [1, 760], 1315.79]]),
  ...printedRows(RECOMPUTED, half(4), 'written to four decimals', [[partialPressure, [555.142, 760], 0.4219]]),
  ...printedRows(RECOMPUTED, 1e-9, 'a thousandth, exact but for rounding in doubles', [
    [steadyLevel, [0.0018, 1.8], 1000],
  ]),
  ...printedRows(LAW_2014, 1e-12, 'the abstract says that the odds doubled', [[headacheOdds, [1], 2]]),
  ...printedResults(levelAlong, RECOMPUTED, half(3), THREE, [
    ['One person for 45 minutes', highest([session(0, 45)]), 3155.142],
    ['Two at once', highest([session(0, 45), session(0, 45)]), 3710.284],
    ['One after the other', highest([session(0, 45), session(45, 90)]), 3402.101],
  ]),
];
