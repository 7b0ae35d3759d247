import fc from 'fast-check';
import { expect, test } from 'vitest';
import { barLoad, fraction, kilograms, machineLoad } from '#units/quantity.ts';
import { stepsNearest } from '#units/rounding.ts';
import { SEXES } from '../body/segments.ts';
import { bodyWeightShare } from '../body/work-share.ts';
import { deliveredLoad, IDENTITY_CALIBRATION, loadToCommand, commandedLoad } from './calibration.ts';
import { evaluate } from '../evaluate.ts';
import type { Plot } from '../plot.ts';
import { axialExcess } from './axial-load.ts';
import { barEquivalent, carriesEvidence, machineTarget, programmeFractionOf, trueFraction } from './crossing.ts';
import { flightLoad, flightTarget } from './flight-reckonings.setup.ts';
import {
  barFractionOfSystemFraction,
  machineLoadByBar,
  machineLoadBySystem,
  systemFractionOfBarFraction,
} from './percent-of-system.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const anyGivens = fc.record({
  maximum: between(20, 300).map(barLoad),
  programmeFraction: between(0.3, 1).map(fraction),
  effortStep: fc.constantFrom(0.8, 0.85, 0.9, 0.95, 1).map(fraction),
  shareStep: fc.constantFrom(0.6, 0.7, 0.8, 0.9, 1).map(fraction),
  share: between(0.02, 1).map(fraction),
  bodyMass: between(40, 130).map(kilograms),
});

test('there and back through both ramps is the programme fraction again', () => {
  fc.assert(
    fc.property(anyGivens, (givens) => {
      const { maximum, effortStep, shareStep, share, bodyMass, programmeFraction } = givens;
      const { target } = flightTarget.reckon(givens);
      const back = programmeFractionOf(target, shareStep, share, bodyMass, effortStep, maximum);
      // The share is added and taken off again: a few last places of the largest number on the way.
      expect(Math.abs(back - programmeFraction)).toBeLessThan(1e-12);
    }),
  );
});

test('a bar carried over and taken back is the same bar', () => {
  fc.assert(
    fc.property(between(1, 300), between(0, 1), between(40, 130), (bar, share, mass) => {
      const pull = machineTarget(barLoad(bar), kilograms(share * mass));
      expect(Math.abs(barEquivalent(pull, fraction(share), kilograms(mass)) - bar)).toBeLessThan(1e-12 * (bar + mass));
    }),
  );
});

test('more of anything asks for no smaller target', () => {
  fc.assert(
    fc.property(
      anyGivens,
      fc.constantFrom(...Object.keys(flightTarget.reckon(EXAMPLE)).slice(0, 6)),
      (givens, name) => {
        const more = { ...givens, [name]: ((givens as Readonly<Record<string, number>>)[name] as number) * 1.01 };
        expect(flightTarget.reckon(more).target).toBeGreaterThanOrEqual(flightTarget.reckon(givens).target);
      },
    ),
  );
});

test('the two readings of a percent translate into each other', () => {
  fc.assert(
    fc.property(between(0.3, 1), between(20, 300), between(0.02, 1), between(40, 130), (p, maximum, s, mass) => {
      const rest = [barLoad(maximum), fraction(s), kilograms(mass)] as const;
      const system = machineLoadBySystem(fraction(p), ...rest);
      expect(machineLoadByBar(barFractionOfSystemFraction(fraction(p), ...rest), ...rest)).toBeCloseTo(system, 9);
      const bar = machineLoadByBar(fraction(p), ...rest);
      expect(machineLoadBySystem(systemFractionOfBarFraction(fraction(p), ...rest), ...rest)).toBeCloseTo(bar, 9);
    }),
  );
});

const EXAMPLE = {
  maximum: barLoad(104.714),
  programmeFraction: fraction(0.78),
  effortStep: fraction(0.85),
  shareStep: fraction(0.7),
  share: fraction(0.717),
  bodyMass: kilograms(71.4),
};

/** 225 lb and the other loads of the ladder, by the pound of 0.45359237 kg. */
const POUND = 0.45359237;

// Printed to three decimals: a ladder of both ramps, computed by a separate program.
test.each([
  { effort: 0.8, step: 0.6, target: 96.058, pounds: 210, takenOff: 0.8, worth: 0.421 },
  { effort: 0.85, step: 0.7, target: 105.261, pounds: 225, takenOff: 3.2, worth: 0.486 },
  { effort: 0.9, step: 0.8, target: 114.464, pounds: 250, takenOff: 1.07, worth: 0.594 },
  { effort: 0.95, step: 0.9, target: 123.667, pounds: 275, takenOff: -1.07, worth: 0.702 },
  { effort: 1, step: 1, target: 132.871, pounds: 295, takenOff: -0.94, worth: 0.789 },
])('steps $effort and $step give $target kg, and $pounds lb are worth $worth', (row) => {
  const { bar, target } = flightTarget.reckon({
    ...EXAMPLE,
    effortStep: fraction(row.effort),
    shareStep: fraction(row.step),
  });
  expect(Math.abs(target - row.target)).toBeLessThanOrEqual(0.0005);
  const done = flightLoad.reckon({
    load: machineLoad(row.pounds * POUND),
    target,
    bar,
    workShare: EXAMPLE.share,
    bodyMass: EXAMPLE.bodyMass,
    maximum: EXAMPLE.maximum,
  });
  expect(Math.abs(done.trueFraction - row.worth)).toBeLessThanOrEqual(0.0005);
  expect(Math.abs(done.cappedOff - row.takenOff)).toBeLessThanOrEqual(0.005);
});

test('a filled row is spelled out with its formulas and with what lies outside its range', () => {
  const row = flightTarget.row({ ...EXAMPLE, bodyMass: kilograms(160) });
  const cells = flightTarget.spell(row, 0);
  expect(cells.map(({ name }) => name)).toEqual(['bar', 'added', 'target']);
  expect(cells[1]).toMatchObject({ of: ['shareStep', 'share', 'bodyMass'], equation: 'a · s · W' });
  expect(cells[1]?.outsideRange).toEqual(['body mass 160 kg is outside 40 to 150']);
});

test('rows stand one behind another', () => {
  const { width } = flightTarget;
  const rows = new Float64Array(2 * width);
  rows.set(flightTarget.row(EXAMPLE).slice(0, 6), width);
  flightTarget.fill(rows, width);
  expect(rows.slice(width)).toEqual(flightTarget.row(EXAMPLE));
  expect(rows.slice(0, width).every((value) => value === 0)).toBe(true);
});

test('a load that hardly exceeds the share is no evidence', () => {
  const [share, mass] = [fraction(0.7175), kilograms(80)];
  const floor = 0.7675 * 80;
  expect(carriesEvidence(machineLoad(floor), share, mass)).toBe(false);
  expect(carriesEvidence(machineLoad(floor + 0.01), share, mass)).toBe(true);
});

test('what is commanded for a delivered load delivers it', () => {
  fc.assert(
    fc.property(between(0, 300), between(0.8, 1.25), between(-20, 20), (delivered, factor, offset) => {
      const set = loadToCommand(machineLoad(delivered), fraction(factor), kilograms(offset));
      expect(deliveredLoad(set, fraction(factor), kilograms(offset))).toBeCloseTo(delivered, 9);
    }),
  );
  const { factor, offset } = IDENTITY_CALIBRATION;
  expect(deliveredLoad(commandedLoad(122.5), factor, offset)).toBe(122.5);
});

test('the share in full gives the same steps of five pounds as the share of four decimals', () => {
  const full = bodyWeightShare('back squat, parallel', 'female').work;
  expect(Math.abs(full - EXAMPLE.share)).toBeLessThan(0.00005);
  const pounds = ({ target }: { readonly target: number }): number => stepsNearest(target / POUND, 5) * 5;
  for (const [effort, step] of [
    [0.8, 0.6],
    [0.9, 0.8],
    [0.95, 0.9],
    [1, 1],
  ] as const) {
    const givens = { ...EXAMPLE, effortStep: fraction(effort), shareStep: fraction(step) };
    expect(pounds(flightTarget.reckon({ ...givens, share: full }))).toBe(pounds(flightTarget.reckon(givens)));
  }
});

test.each(SEXES)('the share of a %s squat is shown as 0.72', (sex) => {
  expect(bodyWeightShare('back squat, parallel', sex).work.toFixed(2)).toBe('0.72');
});

// @ts-expect-error a bar is no pull in 0 g: carry it over first
export const swapped = () => barEquivalent(barLoad(100), fraction(0.7), kilograms(80));

test('a pull of exactly the floor is no evidence', () => {
  // 0.45 + 0.05 of 64 kg is 32 kg, exactly.
  expect(carriesEvidence(machineLoad(32), fraction(0.45), kilograms(64))).toBe(false);
  expect(carriesEvidence(machineLoad(32.001), fraction(0.45), kilograms(64))).toBe(true);
});

test('an excess over nothing is refused, and one over a body without a bar is not', () => {
  expect(evaluate(axialExcess, [100, 0, 0, 80])).toMatchObject({ kind: 'refused' });
  expect(evaluate(axialExcess, [100, 0.1, 0, 80])).toMatchObject({ kind: 'value' });
  expect(evaluate(axialExcess, [100, 0, 0.5, 80])).toEqual({
    kind: 'value',
    value: 1.5,
    cautions: ['bar 0 kg is outside 1 to 400'],
  });
});

const endsOf = (record: { readonly plot?: Plot }) =>
  (record.plot?.curves() ?? []).map(({ points }) =>
    [points[0], points.at(-1)].map((point) => point?.map((value) => Number(value.toFixed(3)))),
  );

test('excesses are drawn from the shoulders to the feet', () => {
  // 0.72 / 1.5, 0.72 / 1.05, 1 / 1.5 at the shoulders; 2.22 / 2.5, 1.77 / 2.05 and 2.5 / 2.5 at the feet.
  expect(endsOf(axialExcess.record)).toEqual([
    [
      [0, 0.48],
      [1, -0.112],
    ],
    [
      [0, 0.686],
      [1, -0.137],
    ],
    [
      [0, 0.667],
      [1, 0],
    ],
  ]);
});

test('ramps are drawn from the first step to the fifth', () => {
  // 0.8 · 0.78 · 105 and 0.78 · 105; 0.6 · 0.717 · 71 and 0.717 · 71; their sums.
  expect(endsOf(machineTarget.record)).toEqual([
    [
      [1, 65.52],
      [5, 81.9],
    ],
    [
      [1, 30.544],
      [5, 50.907],
    ],
    [
      [1, 96.064],
      [5, 132.807],
    ],
  ]);
  // (65.52 − 0.4 · 50.907) / 105, and of the other person (0.624 · 80 − 0.4 · 0.717 · 88) / 80.
  expect(endsOf(trueFraction.record)).toEqual([
    [
      [1, 0.43],
      [5, 0.78],
    ],
    [
      [1, 0.309],
      [5, 0.78],
    ],
  ]);
});
