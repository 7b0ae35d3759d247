import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fraction, kilograms, newtons } from '#units/quantity.ts';
import { evaluate } from '../evaluate.ts';
import { enduranceBand } from './endurance-band.ts';
import {
  ENDURANCE_AUTHORS,
  enduranceTimeFreyLawAvin,
  enduranceTimeManenica,
  enduranceTimeRohmert,
  enduranceTimeRose,
} from './endurance-time.ts';
import { gloveFactorByPressure, relativeLoad } from './glove-factor.ts';
import { gloveLosses, handSizeLosses } from './glove.table.ts';
import { gripNorms } from './grip-norms.table.ts';
import { gripScore } from './grip-score.ts';
import { suitedGrip } from './suited-grip.ts';

interface Fixture {
  readonly made: Readonly<Record<string, string | number>>;
  readonly glove: readonly { readonly kilopascals: number; readonly left: number }[];
  readonly handSizes: Readonly<Record<'small' | 'medium' | 'large' | 'extra large', number>>;
  readonly endurance: readonly {
    readonly share: number;
    readonly freyLawAvin: number;
    readonly rohmert: number | null;
    readonly rose: number;
    readonly manenica: number | null;
  }[];
  readonly norms: readonly {
    readonly age: number;
    readonly sex: 'male' | 'female';
    readonly side: 'right' | 'left';
    readonly kilograms: number;
    readonly mean: number;
    readonly sd: number;
    readonly z: number;
  }[];
}

// Written by the script that stands beside the file.
const FIXTURE = JSON.parse(
  readFileSync(join(import.meta.dirname, '../../../test/fixtures/science/hand.json'), 'utf8'),
) as Fixture;

test('the second program says what made its values', () => {
  expect(Object.keys(FIXTURE.made)).toEqual(['by', 'python', 'seed']);
});

test('the share that a glove leaves is as a second program has it', () => {
  for (const { kilopascals, left } of FIXTURE.glove)
    // The second program takes the pound on a square inch to eight digits.
    expect(gloveFactorByPressure(kilopascals)).toBeCloseTo(left, 8);
});

test('a measured maximum needs no assumption, and is labelled so', () => {
  expect(suitedGrip(newtons(500), { kind: 'measured', suitedMaximum: newtons(310) })).toEqual({
    kind: 'estimate',
    value: 310,
    factor: 0.62,
    label: 'measured in the suit',
    cautions: [],
  });
});

test('a maximum in the suit above that of the bare hand is refused, and one as great is not', () => {
  const over = suitedGrip(newtons(300), { kind: 'measured', suitedMaximum: newtons(310) });
  expect(over).toMatchObject({ kind: 'refused', reason: expect.stringContaining('which was which') as string });
  expect(suitedGrip(newtons(300), { kind: 'measured', suitedMaximum: newtons(300) })).toMatchObject({ factor: 1 });
  expect(suitedGrip(newtons(300), { kind: 'measured', suitedMaximum: newtons(0) }).kind).toBe('refused');
});

test('a published loss by pressure is labelled as assumed, and refused outside the two pressures', () => {
  const assumed = suitedGrip(newtons(500), { kind: 'by pressure', kilopascals: 29.6474551 });
  expect(assumed).toMatchObject({ kind: 'estimate', label: 'assumed glove loss' });
  if (assumed.kind === 'estimate') {
    expect(assumed.value).toBeCloseTo(290, 9);
    expect(assumed.cautions.join(' ')).toMatch(/^Assumed glove loss: mean of 16 people at 29\.6474551 kPa/);
  }
  for (const kilopascals of [3.3, 29.7, 40, Number.NaN])
    expect(suitedGrip(newtons(500), { kind: 'by pressure', kilopascals })).toMatchObject({
      kind: 'refused',
      reason: expect.stringContaining('Measure the maximum in the suit instead.') as string,
    });
});

test.each(handSizeLosses.rows)('a $size hand loses what was published for it', ({ size, atMost }) => {
  const grip = suitedGrip(newtons(400), { kind: 'by hand size', size });
  expect(grip).toMatchObject({ kind: 'estimate', label: 'assumed glove loss' });
  if (grip.kind === 'estimate') {
    expect(grip.factor).toBeCloseTo(FIXTURE.handSizes[size], 12);
    expect(grip.value).toBeCloseTo(400 * FIXTURE.handSizes[size], 9);
    expect(grip.cautions.join(' ').includes('upper bound')).toBe(atMost);
  }
});

test('a task is a share of the suited maximum, and cannot be above it', () => {
  expect(evaluate(relativeLoad, [145, 290])).toEqual({ kind: 'value', value: 0.5, cautions: [] });
  expect(evaluate(relativeLoad, [290, 290])).toMatchObject({ kind: 'value', value: 1 });
  expect(evaluate(relativeLoad, [291, 290])).toMatchObject({
    kind: 'refused',
    reasons: [expect.stringContaining('cannot be done in this suit') as string],
  });
});

test('an unknown hand size and an impossible bare maximum are refused', () => {
  // As a file from elsewhere might have it.
  const odd = suitedGrip(newtons(400), { kind: 'by hand size', size: 'tiny' as 'small' });
  expect(odd).toEqual({ kind: 'refused', reason: 'No loss is published for the hand size "tiny".' });
  for (const bare of [19, 2001])
    expect(suitedGrip(newtons(bare), { kind: 'by pressure', kilopascals: 20 })).toMatchObject({
      kind: 'refused',
      reason: expect.stringContaining('20 to 2000 N') as string,
    });
  for (const bare of [20, 2000])
    expect(suitedGrip(newtons(bare), { kind: 'by pressure', kilopascals: 20 }).kind).toBe('estimate');
});

test('more pressure never leaves more grip', () => {
  const pressure = fc.double({ min: 3.45, max: 29.64, noNaN: true });
  fc.assert(
    fc.property(pressure, pressure, (one, other) => {
      const [low, high] = one < other ? [one, other] : [other, one];
      expect(gloveFactorByPressure(low)).toBeGreaterThanOrEqual(gloveFactorByPressure(high) - 1e-12);
    }),
  );
});

test('a larger hand loses more of its grip to pressure', () => {
  const losses = handSizeLosses.rows.map(({ loss }) => loss);
  expect(losses).toEqual(losses.toSorted((a, b) => b - a));
  expect(gloveLosses.rows.every(({ source }) => source.status === 'seen')).toBe(true);
});

test.each(FIXTURE.norms)('a grip of $kilograms kg at $age, $sex, $side, is as a second program scores it', (row) => {
  const { sex, age, side } = row;
  const score = gripScore({ sex, age, side, grip: kilograms(row.kilograms), from: 'mean of three' });
  expect(score).toMatchObject({ kind: 'estimate', cautions: [] });
  if (score.kind === 'estimate') {
    expect(score.value).toBeCloseTo(row.z, 10);
    expect(score.mean).toBeCloseTo(row.mean, 10);
    expect(score.sd).toBeCloseTo(row.sd, 10);
  }
});

test('a best of three is scored with a caution, and ages and grips without a norm are refused', () => {
  const grip = { sex: 'male', age: 80, side: 'left', grip: kilograms(30), from: 'best of three' } as const;
  const score = gripScore(grip);
  expect(score).toMatchObject({ kind: 'estimate', group: 'men, left, 75 and over' });
  if (score.kind === 'estimate') expect(score.cautions).toHaveLength(1);
  expect(gripScore({ ...grip, age: 74.9 })).toMatchObject({ group: 'men, left, 70 to 74' });
  expect(gripScore({ ...grip, age: 19.9 })).toMatchObject({
    kind: 'refused',
    reason: expect.stringContaining('19.9') as string,
  });
  expect(gripScore({ ...grip, age: 20 }).kind).toBe('estimate');
  expect(gripScore({ ...grip, age: 120 }).kind).toBe('estimate');
  expect(gripScore({ ...grip, age: 120.1 })).toMatchObject({ kind: 'refused' });
  for (const impossible of [0, 151]) expect(gripScore({ ...grip, grip: kilograms(impossible) }).kind).toBe('refused');
  expect(gripScore({ ...grip, grip: kilograms(150) }).kind).toBe('estimate');
});

test('groups of the norms follow each other without a gap, and men are stronger than women in each', () => {
  for (const [place, { from, to, men, women }] of gripNorms.rows.entries()) {
    expect(gripNorms.rows[place + 1]?.from ?? null).toBe(to === null ? null : to + 1);
    for (const side of ['right', 'left'] as const) expect(men[side][0]).toBeGreaterThan(women[side][0]);
    expect(from).toBe(20 + 5 * place);
  }
});

test('times to exhaustion are as a second program has them', () => {
  for (const { share, freyLawAvin, rohmert, rose, manenica } of FIXTURE.endurance) {
    const of = fraction(share);
    expect(enduranceTimeFreyLawAvin(of)).toBeCloseTo(freyLawAvin, 8);
    expect(enduranceTimeRose(of)).toBeCloseTo(rose, 8);
    if (rohmert !== null) expect(enduranceTimeRohmert(of)).toBeCloseTo(rohmert, 8);
    if (manenica !== null) expect(enduranceTimeManenica(of)).toBeCloseTo(manenica, 8);
  }
});

test('a greater force is never held longer, whoever is asked', () => {
  const share = fc.double({ min: 0.2, max: 0.8, noNaN: true });
  fc.assert(
    fc.property(share, share, (one, other) => {
      const [low, high] = (one < other ? [one, other] : [other, one]).map(fraction) as [never, never];
      for (const author of ENDURANCE_AUTHORS) expect(author(low)).toBeGreaterThanOrEqual(author(high) - 1e-9);
    }),
  );
});

test('the band of four holds the grip curve, names who is silent, and refuses where nobody measured', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.1, max: 0.9, noNaN: true }), (share) => {
      const band = enduranceBand(fraction(share));
      if (band.kind === 'refused') throw new Error(band.reason);
      expect(band.value).toBeGreaterThanOrEqual(band.band[0]);
      expect(band.value).toBeLessThanOrEqual(band.band[1]);
      const covering = [share >= 0.15, share >= 0.2 && share <= 0.8].filter(Boolean).length;
      expect(band.cautions).toHaveLength(1 + 2 - covering);
    }),
  );
  expect(enduranceBand(fraction(0.12))).toMatchObject({
    cautions: [
      expect.stringContaining('spread') as string,
      'Time a force can be held [s], any joint, Rohmert does not cover this force.',
      'Time a force can be held [s], grip, Manenica does not cover this force.',
    ],
  });
  for (const share of [0, 0.09, 0.91, 1])
    expect(enduranceBand(fraction(share))).toMatchObject({
      kind: 'refused',
      reason: expect.stringMatching(/0\.1 to 0\.9.*test the person/) as string,
    });
});
