import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { daySpan, fraction } from '#units/quantity.ts';
import { evaluate } from '../evaluate.ts';
import { partLeft } from '../recovery/halving.ts';
import { percentChange } from './change.ts';
import { strengthOfMinimalDose } from './gain.ts';
import { ISOKINETIC_CHANGES } from './isokinetic-change.table.ts';
import { BED_REST_LOSSES, FLIGHT_LOSSES, ONE_LEG_LOSSES } from './losses.table.ts';
import {
  kneeExtensorLoss,
  longestPauseCarried,
  longestPauseUnloaded,
  oxygenUptakeLost,
  strengthByRuleOfThumb,
  strengthCarried,
  strengthUnloaded,
} from './pause.ts';
import { remainingStrength, type DaysMissed } from './remaining-strength.ts';

interface Row {
  readonly days: number;
  readonly carried: number;
  readonly unloaded: number;
  readonly kneeExtensorLoss: number;
  readonly oxygenUptakeLost: number;
  readonly ruleOfThumb: number;
  readonly deficitLeft: number;
}

interface Fixture {
  readonly rows: readonly Row[];
  readonly minimalDose: readonly { readonly weeks: number; readonly strength: number }[];
}

const FILE = join(import.meta.dirname, '../../../test/fixtures/science/adaptation.json');
// Written by the script that stands beside the file.
const { rows, minimalDose } = JSON.parse(readFileSync(FILE, 'utf8')) as Fixture;

/** The printed numbers of two curves were rounded to six decimals after they were solved for. */
const SOLVED = 1e-6;
const EXACT = 1e-12;

test.each(rows)('$days days cost what a second program says', (row) => {
  const days = daySpan(row.days);
  const off = (ours: number, theirs: number): number => Math.abs(ours - theirs);
  expect(off(strengthCarried(days), row.carried)).toBeLessThan(EXACT);
  expect(off(strengthUnloaded(days), row.unloaded)).toBeLessThan(SOLVED);
  expect(off(kneeExtensorLoss(days), row.kneeExtensorLoss)).toBeLessThan(EXACT * 100);
  expect(off(oxygenUptakeLost(days), row.oxygenUptakeLost)).toBeLessThan(SOLVED);
  expect(off(strengthByRuleOfThumb(days, fraction(0.01)), row.ruleOfThumb)).toBeLessThan(EXACT);
  expect(off(0.1 * partLeft(days, 28), row.deficitLeft)).toBeLessThan(EXACT);
});

test.each(minimalDose)('$weeks weeks bring what a second program says', ({ weeks, strength }) => {
  expect(strengthOfMinimalDose(weeks)).toBeCloseTo(strength, 12);
});

const anyDays = fc.double({ min: 0, max: 365, noNaN: true }).map(daySpan);

test('a longer pause never leaves more strength, and always some', () => {
  fc.assert(
    fc.property(anyDays, anyDays, (a, b) => {
      const [short, long] = a <= b ? [a, b] : [b, a];
      for (const left of [strengthCarried, strengthUnloaded]) {
        expect(left(long)).toBeLessThanOrEqual(left(short));
        expect(left(long)).toBeGreaterThan(0.6);
        expect(left(short)).toBeLessThanOrEqual(1);
      }
      for (const lost of [kneeExtensorLoss, oxygenUptakeLost]) expect(lost(long)).toBeGreaterThanOrEqual(lost(short));
    }),
  );
});

test('legs that carry a body keep more than legs that do not', () => {
  fc.assert(
    fc.property(anyDays, (days) => {
      expect(strengthCarried(days)).toBeGreaterThanOrEqual(strengthUnloaded(days));
    }),
  );
});

test('the longest pause that leaves what a pause left is that pause', () => {
  fc.assert(
    fc.property(fc.double({ min: 14, max: 170, noNaN: true }), (days) => {
      expect(longestPauseCarried(strengthCarried(daySpan(days)))).toBeCloseTo(days, 8);
    }),
  );
  fc.assert(
    fc.property(fc.double({ min: 0, max: 100, noNaN: true }), (days) => {
      expect(longestPauseUnloaded(strengthUnloaded(daySpan(days)))).toBeCloseTo(days, 8);
    }),
  );
  expect(longestPauseCarried(fraction(1))).toBe(14);
});

test('every doubling of weeks brings the same, in the long run', () => {
  fc.assert(
    fc.property(fc.double({ min: 50, max: 250, noNaN: true }), (weeks) => {
      const step = strengthOfMinimalDose(2 * weeks) - strengthOfMinimalDose(weeks);
      // 0.10075 ln 2, less what the one week inside the logarithm takes off.
      expect(step).toBeGreaterThan(0.0688);
      expect(step).toBeLessThan(0.10075 * Math.LN2);
    }),
  );
});

test('a change of a percentage undone is no change', () => {
  const anyValue = fc.double({ min: 0.01, max: 10_000, noNaN: true });
  fc.assert(
    fc.property(anyValue, anyValue, (before, after) => {
      const change = percentChange(before, after);
      expect(before * (1 + change / 100)).toBeCloseTo(after, 6);
    }),
  );
});

const missed = (more: Partial<DaysMissed>): DaysMissed => ({ days: 10, legs: 'still loaded', ill: false, ...more });

test.each([
  { given: missed({ days: 3 }), firstSession: { kind: 'as planned' }, curve: 'carried', fraction: 1, cautions: [] },
  {
    given: missed({ days: 4 }),
    firstSession: { kind: 'capped', exertion: 6 },
    curve: 'carried',
    fraction: 1,
    cautions: [],
  },
  {
    given: missed({ days: 2, ill: true, legs: 'unloaded' }),
    firstSession: { kind: 'capped', exertion: 6 },
    curve: 'unloaded',
    fraction: strengthUnloaded(daySpan(2)),
    cautions: ['After illness the physician says when.'],
  },
  {
    given: missed({ days: 23, legs: 'unloaded' }),
    firstSession: { kind: 'capped', exertion: 6 },
    curve: 'unloaded',
    fraction: strengthUnloaded(daySpan(23)),
    cautions: [],
  },
  {
    given: missed({ days: 24, legs: 'unloaded' }),
    firstSession: { kind: 'capped', exertion: 6 },
    curve: 'unloaded',
    fraction: strengthUnloaded(daySpan(24)),
    cautions: ['Unloaded strength was measured for 23 days only; beyond, the curve says more than bed rest took.'],
  },
  {
    given: missed({ days: 28 }),
    firstSession: { kind: 'capped', exertion: 6 },
    curve: 'carried',
    fraction: strengthCarried(daySpan(28)),
    cautions: [],
  },
  {
    given: missed({ days: 29 }),
    firstSession: { kind: 'capped', exertion: 6 },
    curve: 'carried',
    fraction: strengthCarried(daySpan(29)),
    cautions: ['After more than four weeks, test again before loading.'],
  },
])('$given.days days missed, legs $given.legs, ill $given.ill: $firstSession.kind', ({ given, ...found }) => {
  expect(remainingStrength(given)).toEqual({ kind: 'remaining', ...found });
});

test.each([-1, 366, Number.NaN, Number.POSITIVE_INFINITY])('%s days missed are refused in a sentence', (days) => {
  const found = remainingStrength(missed({ days }));
  expect(found.kind === 'refused' && found.reason).toBe(`days missed must lie in 0 to 365 d; it is ${days}.`);
});

test('a pause beyond what was measured is flagged', () => {
  expect(evaluate(strengthUnloaded, [40])).toMatchObject({
    kind: 'value',
    cautions: ['days without training 40 d is outside 0 to 23'],
  });
});

const ALL_LOSSES = [FLIGHT_LOSSES, BED_REST_LOSSES, ONE_LEG_LOSSES];

test('every loss names a source of its table, and a range runs from the smaller to the larger loss', () => {
  for (const { record, rows: losses } of ALL_LOSSES) {
    const named = new Set([record.source, ...(record.restsOn ?? [])].map(({ text }) => text));
    for (const { source, change, upTo, days } of losses) {
      expect(named).toContain(source.text);
      expect(upTo ?? change).toBeLessThanOrEqual(change);
      expect(days[0]).toBeLessThanOrEqual(days[1]);
    }
  }
});

test('whoever trained in bed lost less of everything', () => {
  const [none, trained] = ['none', 'resistive and aerobic'].map((training) =>
    BED_REST_LOSSES.rows.filter((row) => row.training === training && row.days[0] === 70),
  );
  expect(none).toHaveLength(4);
  for (const { measure, change } of none ?? [])
    expect(trained?.find((row) => row.measure === measure)?.change).toBeGreaterThan(change);
});

test('nobody was tested at the trunk on the fifth day, and everybody else was', () => {
  const untested = ISOKINETIC_CHANGES.rows.filter(({ after }) => after[5] === null);
  expect(untested.map(({ test: name }) => name).every((name) => name.startsWith('trunk'))).toBe(true);
  expect(untested).toHaveLength(4);
});

const curves = strengthUnloaded.record.plot?.curves() ?? [];
const drawn = (label: string) => curves.find((curve) => curve.label.startsWith(label));
const closeTo = (pairs: readonly (readonly number[])[]) =>
  pairs.map((pair) => pair.map((value) => expect.closeTo(value, 10) as number));

test('studies of bed rest are drawn where they stand: untrained knee extension, what was left', () => {
  const studies = drawn('bed rest, studies');
  expect(studies?.scattered).toBe(true);
  expect(studies?.points).toEqual(
    closeTo([
      [5, 0.914],
      [5, 0.959],
      [10, 0.855],
      [14, 0.855],
      [70, 0.797],
      [90, 81 / 109],
    ]),
  );
});

test('the unloaded leg is drawn with a standard deviation each way', () => {
  const leg = drawn('one leg unloaded');
  expect(leg?.points).toEqual(
    closeTo([
      [14, 0.852],
      [23, 0.79],
    ]),
  );
  expect(leg?.band).toEqual(
    closeTo([
      [0.797, 0.907],
      [0.719, 0.861],
    ]),
  );
});

test('bed rest is drawn as what is left, and the rule of thumb between its two rates', () => {
  expect(drawn('bed rest, logarithmic')?.points.at(-1)).toEqual([120, expect.closeTo(1 - 0.2785179, 6) as number]);
  const rule = drawn('rule of thumb');
  expect(rule?.points.at(-1)).toEqual([120, expect.closeTo(1 - (0.0075 * 106) / 7, 10) as number]);
  expect(rule?.band?.at(-1)).toEqual(closeTo([[1 - (0.01 * 106) / 7, 1 - (0.005 * 106) / 7]])[0]);
});
