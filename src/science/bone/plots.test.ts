import { expect, test } from 'vitest';
import type { EntryRecord } from '../formula.ts';
import { normalCdf } from '../numeric/normal.ts';
import { chanceAtLeast } from '../standards/chance.ts';
import { leastSignificantChange } from './dxa-precision.ts';
import { equalCycles } from './load-stimulus.ts';
import { osteogenicIndex, sensitivityAfterRest } from './osteogenic-index.ts';
import { remainingDeficit } from './recovery.ts';
import { effectiveCycles } from './rest-and-saturation.ts';
import { PUBLISHED_LOSSES } from './published-losses.table.ts';
import { saturatingLoss } from './saturating-loss.ts';
import { standardScore } from './standard-score.ts';

/** What is drawn, at ends that can be worked out by hand. */

type Ends = readonly [from: readonly [x: number, y: number], to: readonly [x: number, y: number]];

const endsOf = ({ plot }: EntryRecord): Readonly<Record<string, Ends>> =>
  Object.fromEntries(
    (plot?.curves() ?? []).map(({ label, points }) => {
      const [first, last] = [points[0], points.at(-1)];
      if (!first || !last) throw new Error(`no points of ${label}`);
      return [label, [first, last]];
    }),
  );

const rounded = (ends: readonly (readonly [number, number])[]): readonly string[] =>
  ends.map(([x, y]) => `${x.toFixed(3)} ${y.toFixed(4)}`);

/** Ends to four decimals, as the values by hand are given. */
const shown = (curves: Readonly<Record<string, Ends>>): Readonly<Record<string, readonly string[]>> =>
  Object.fromEntries(Object.entries(curves).map(([label, ends]) => [label, rounded(ends)]));

test('least significant change rises with the precision; six months of loss are level', () => {
  // 6 · 0.3 % and 6 · 1.15 % of 0.88 g/cm².
  expect(shown(endsOf(leastSignificantChange.record))).toEqual(
    shown({
      'least significant change': [
        [0.004, 0.01108],
        [0.024, 0.06648],
      ],
      'six months at 0.3 % a month': [
        [0.004, 0.01584],
        [0.024, 0.01584],
      ],
      'six months at 1.15 % a month': [
        [0.004, 0.06072],
        [0.024, 0.06072],
      ],
    }),
  );
});

test('T scores are drawn for the hips of both sexes', () => {
  expect(shown(endsOf(standardScore.record))).toEqual(
    shown({
      'against young adults, male': [
        [0.6, -3.0625],
        [1.2, 1.104167],
      ],
      'against young adults, female': [
        [0.6, -2.803279],
        [1.2, 2.114754],
      ],
      '−1': [
        [0.6, -1],
        [1.2, -1],
      ],
      '−2': [
        [0.6, -2],
        [1.2, -2],
      ],
    }),
  );
});

test('equal cycles begin at those of walking and fall with the power of the force', () => {
  const at = (exponent: number): Ends => [
    [1.1, 4500],
    [3, 4500 * (1.1 / 3) ** exponent],
  ];
  expect(shown(endsOf(equalCycles.record))).toEqual(shown({ 'm = 3': at(3), 'm = 4': at(4), 'm = 6': at(6) }));
});

test('the osteogenic index and the sensitivity begin at nought', () => {
  const at = (force: number): Ends => [
    [0, 0],
    [600, force * Math.log(601)],
  ];
  expect(shown(endsOf(osteogenicIndex.record))).toEqual(shown({ '1 BW': at(1), '2 BW': at(2), '3 BW': at(3) }));
  expect(shown(endsOf(sensitivityAfterRest.record))).toEqual(
    shown({
      sensitivity: [
        [0, 0],
        [24, 0.981684],
      ],
    }),
  );
});

test('effective cycles are drawn rested, after rest and late in a bout', () => {
  const rested = Math.log2(601);
  expect(shown(endsOf(effectiveCycles.record))).toEqual(
    shown({
      rested: [
        [0, 0],
        [600, rested],
      ],
      'after eight hours': [
        [0, 0],
        [600, 0.736403 * rested],
      ],
      'after a hundred in the same bout': [
        [0, 0],
        [600, Math.log2(701 / 101)],
      ],
    }),
  );
});

test('recovery is drawn upwards from the deficit of each site, beside the line of 2 %', () => {
  const three = (deficit: number, halfLife: number): Ends => [
    [0, -deficit],
    [1095, -deficit / 2 ** (1095 / halfLife)],
  ];
  expect(shown(endsOf(remainingDeficit.record))).toEqual(
    shown({
      'lumbar spine': three(4.9, 151),
      'femoral neck': three(6.8, 211),
      trochanter: three(7.8, 255),
      pelvis: three(7.7, 97),
      calcaneus: three(2.9, 163),
      'within 2 % of before flight': [
        [0, -2],
        [1095, -2],
      ],
    }),
  );
});

test('the bending line is drawn through the published points, which stand alone', () => {
  const [line, points] = saturatingLoss.record.plot?.curves() ?? [];
  // 68.945667 %, the plateau that SciPy finds.
  expect(line?.points.at(-1)?.[1]).toBeCloseTo(68.945667 * (1 - Math.exp(-6.371e-4 * 1100)), 4);
  expect(line?.scattered).toBeUndefined();
  expect(points?.scattered).toBe(true);
  expect(points?.points).toEqual(PUBLISHED_LOSSES.rows.map(({ days, loss }) => [days, loss]));
});

test('chances are drawn around the limit, steeper where the spread is smaller', () => {
  const at = (sd: number): Ends => [
    [-3, normalCdf(-1 / sd)],
    [-1, normalCdf(1 / sd)],
  ];
  expect(shown(endsOf(chanceAtLeast.record))).toEqual(
    shown({
      'standard deviation 0.1': at(0.1),
      'standard deviation 0.2': at(0.2),
      'standard deviation 0.4': at(0.4),
    }),
  );
});
