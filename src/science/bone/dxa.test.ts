import fc from 'fast-check';
import { expect, test } from 'vitest';
import { boneDensity, type BoneDensity } from '#units/quantity.ts';
import { boneScore, youngReference, type BoneReference, type YoungReference } from './bone-score.ts';
import { percentChange } from '../adaptation/change.ts';
import { leastSignificantChange, precisionOfScans } from './dxa-precision.ts';
import { acceptablePrecision, scanChange, type TwoScans } from './scan-change.ts';
import { densityAtScore, scoreSd, standardScore } from './standard-score.ts';

const density = fc.double({ min: 0.4, max: 1.6, noNaN: true }).map(boneDensity);
const precision = fc.double({ min: 0.001, max: 0.05, noNaN: true }).map(boneDensity);
const machines = fc.constantFrom('same' as const, 'cross-calibrated' as const);
const study = (people: readonly (readonly number[])[]) =>
  precisionOfScans(people.map((scans) => scans.map(boneDensity)));

const twoScans = (before: number, after: number, of: number, on: TwoScans['machines'] = 'same') =>
  scanChange({
    before: before as BoneDensity,
    after: after as BoneDensity,
    precision: of as BoneDensity,
    machines: on,
  });

// Precision

test('a wider spread of every repeat widens the precision by as much', () => {
  const pairs = fc.array(fc.tuple(density, fc.double({ min: -0.02, max: 0.02, noNaN: true })), {
    minLength: 2,
    maxLength: 40,
  });
  fc.assert(
    fc.property(pairs, fc.double({ min: 0.1, max: 3, noNaN: true }), (found, factor) => {
      const of = (scale: number) => study(found.map(([mean, off]) => [mean + scale * off, mean - scale * off]));
      const [once, wider] = [of(1), of(factor)];
      if (once.kind !== 'estimate' || wider.kind !== 'estimate') throw new Error('refused');
      expect(wider.value).toBeCloseTo(factor * once.value, 9);
    }),
  );
});

test('what people differ by among themselves does not enter the precision', () => {
  const one = study([
    [0.9, 0.91],
    [0.9, 0.91],
  ]);
  const other = study([
    [0.5, 0.51],
    [1.4, 1.41],
  ]);
  expect(one.kind === 'estimate' && other.kind === 'estimate' && Math.abs(one.value - other.value) < 1e-12).toBe(true);
});

test('the precision is known the better the more repeats there are', () => {
  const pair = [0.9, 0.91];
  const [few, many] = [study(Array.from({ length: 8 }, () => pair)), study(Array.from({ length: 32 }, () => pair))];
  if (few.kind !== 'estimate' || many.kind !== 'estimate') throw new Error('refused');
  expect(few.sd).toBeCloseTo(few.value / 4, 12);
  expect(many.sd).toBeCloseTo(few.sd / 2, 12);
});

test('a study says what it lacks', () => {
  const small = study([
    [0.9, 0.91],
    [1, 1.01, 1.02],
  ]);
  expect(small).toMatchObject({ kind: 'estimate', degreesOfFreedom: 3 });
  expect(small.kind === 'estimate' && small.cautions.join(' ')).toMatch(/3 degrees of freedom.*Not everybody/);
  const full = study(Array.from({ length: 15 }, () => [0.9, 0.91, 0.905]));
  expect(full).toMatchObject({ kind: 'estimate', degreesOfFreedom: 30, cautions: [] });
  const copied = study(Array.from({ length: 30 }, () => [0.9, 0.9]));
  expect(copied).toMatchObject({
    value: 0,
    cautions: ['Every repeat gave the same value: copied rather than repeated?'],
  });
});

test('all that is wrong with a study is said at once', () => {
  const found = precisionOfScans([[boneDensity(0.9)]]);
  expect(found).toEqual({
    kind: 'refused',
    reason: 'Precision needs at least two people; there are 1. Person 1 was scanned once; twice is the least.',
  });
  const wrong = precisionOfScans([
    [boneDensity(0.9), 5 as BoneDensity],
    [],
    [boneDensity(1), Number.NaN as BoneDensity],
  ]);
  expect(wrong.kind === 'refused' && wrong.reason).toBe(
    'Person 2 was scanned never; twice is the least. Person 1: density of one scan must lie in 0.05 to 3 g/cm²; it is 5. Person 3: density of one scan must lie in 0.05 to 3 g/cm²; it is NaN.',
  );
});

// A change

test('a finer precision never makes a change count for less', () => {
  fc.assert(
    fc.property(density, density, precision, precision, machines, (before, after, a, b, on) => {
      const [fine, coarse] = a <= b ? [a, b] : [b, a];
      const kinds = [coarse, fine].map((of) => twoScans(before, after, of, on).kind);
      expect(kinds).not.toEqual(['counts', 'within the noise']);
    }),
  );
});

test('a change counts the same way round and back', () => {
  fc.assert(
    fc.property(density, density, precision, (before, after, of) => {
      const [there, back] = [twoScans(before, after, of), twoScans(after, before, of)];
      expect(back.kind).toBe(there.kind);
      if (!('change' in there && 'change' in back)) throw new Error('two changes');
      expect(back.change + there.change).toBe(0);
    }),
  );
});

test('a loss counts from the least significant change on, exactly', () => {
  expect(twoScans(1, 0.9723, 0.01).kind).toBe('counts');
  expect(twoScans(1, 0.9724, 0.01).kind).toBe('within the noise');
  expect(twoScans(0.9723, 1, 0.01).kind).toBe('counts');
});

test('a change is said in a sentence', () => {
  expect(twoScans(0.934, 0.9, 0.0063560994)).toMatchObject({
    kind: 'counts',
    says: '−0.034 g/cm² (−3.6 %) against a least significant change of 0.018: it counts.',
    cautions: [],
  });
  expect(twoScans(0.9, 0.905, 0.01)).toMatchObject({
    says: '+0.005 g/cm² (+0.6 %) against a least significant change of 0.028: within the noise of the scans.',
  });
  expect(twoScans(0.9, 0.9, 0.01)).toMatchObject({ kind: 'within the noise', change: 0, percent: 0 });
  expect(twoScans(0.9, 0.9, 0.01)).toHaveProperty('says', expect.stringMatching(/^0\.000 g\/cm² \(0\.0 %\)/));
});

test('two machines give no change unless they were cross-calibrated', () => {
  expect(twoScans(1, 0.9, 0.01, 'different')).toMatchObject({
    kind: 'none',
    reason: expect.stringMatching(/cross-calibrated/) as string,
  });
  expect(twoScans(1, 0.9, 0.01, 'cross-calibrated')).toMatchObject({
    kind: 'counts',
    cautions: [expect.stringMatching(/Cross-calibration/)],
  });
});

test('a scan without noise is doubted, an impossible one refused', () => {
  expect(twoScans(1, 0.9, 0)).toMatchObject({ kind: 'counts', cautions: [expect.stringMatching(/without error/)] });
  const wrong = twoScans(Number.NaN, 9, 0.9);
  expect(wrong.kind === 'refused' && wrong.reason).toMatch(/density before.*density after.*precision of repeat scans/);
});

test('the percentage of a change is that of what it began with', () => {
  fc.assert(
    fc.property(density, density, (before, after) => {
      expect(before * (1 + percentChange(before, after) / 100)).toBeCloseTo(after, 12);
    }),
  );
});

test('the least significant change is proportional to the precision', () => {
  fc.assert(
    fc.property(precision, (of) => {
      expect(leastSignificantChange(of) / of).toBeCloseTo(2.77, 12);
    }),
  );
});

test('a precision is acceptable up to the printed worst, and no further', () => {
  const at = (region: Parameters<typeof acceptablePrecision>[0], of: number) =>
    acceptablePrecision(region, boneDensity(of), boneDensity(1));
  expect(at('femoral neck', 0.025)).toMatchObject({ kind: 'acceptable', worst: 2.5 });
  expect(at('femoral neck', 0.0251)).toMatchObject({
    kind: 'too coarse',
    says: 'Precision at the femoral neck 2.5 %, at worst 2.5 %: too coarse.',
  });
  expect(at('total hip', 0.018)).toMatchObject({ kind: 'acceptable' });
  expect(at('trochanter', 0.01)).toMatchObject({ kind: 'none' });
  expect(acceptablePrecision('lumbar spine', boneDensity(0.02), boneDensity(0.8))).toMatchObject({ percent: 2.5 });
  expect(acceptablePrecision('total hip', boneDensity(0.6), 9 as BoneDensity)).toMatchObject({
    kind: 'refused',
    reason: expect.stringMatching(/precision of repeat scans.*mean density/) as string,
  });
});

// Scores

const reference = fc.record({
  mean: fc.double({ min: 0.5, max: 1.5, noNaN: true }).map(boneDensity),
  sd: fc.double({ min: 0.08, max: 0.2, noNaN: true }).map(boneDensity),
});

test('density and score undo each other', () => {
  fc.assert(
    fc.property(fc.double({ min: -4, max: 4, noNaN: true }), reference, (score, { mean, sd }) => {
      expect(standardScore(densityAtScore(score, mean, sd), mean, sd)).toBeCloseTo(score, 10);
    }),
  );
});

test('a denser bone scores higher, and one SD of the reference is one of the score', () => {
  fc.assert(
    fc.property(density, reference, (measured, { mean, sd }) => {
      const higher = standardScore(boneDensity(measured + sd), mean, sd);
      expect(higher - standardScore(measured, mean, sd)).toBeCloseTo(1, 10);
    }),
  );
});

test('a score carries what it was counted from, and says it', () => {
  const of = (kind: YoungReference) =>
    boneScore(boneDensity(0.98), youngReference('total hip', 'male', kind), boneDensity(0.0144));
  const [own, women] = [of('sex-matched'), of('young female')];
  expect(own).toMatchObject({
    kind: 'estimate',
    score: 'T',
    says: 'T −0.42 against men of 20 to 29 years (sex-matched)',
    reference: { kind: 'sex-matched', mean: 1.041, sd: 0.144 },
    cautions: [],
  });
  expect(own.kind === 'estimate' && own.sd).toBeCloseTo(0.1, 12);
  expect(women).toMatchObject({ says: 'T 0.31 against women of 20 to 29 years (young female)' });
  expect(women.kind === 'estimate' && women.sd).toBeCloseTo(0.0144 / 0.122, 12);
});

test('for a woman both kinds of reference are the same numbers', () => {
  for (const region of ['total hip', 'femoral neck'] as const) {
    const { kind: _own, ...own } = youngReference(region, 'female', 'sex-matched');
    const { kind: _young, ...young } = youngReference(region, 'female', 'young female');
    expect(own).toEqual(young);
  }
});

test('against people of the same age the score is a Z, and without a precision it is not known how sure', () => {
  const peers: BoneReference = {
    kind: 'age-matched',
    people: 'men of 45 years',
    mean: boneDensity(0.9),
    sd: boneDensity(0.12),
    from: 'the report',
  };
  expect(boneScore(boneDensity(0.84), peers)).toMatchObject({
    score: 'Z',
    says: 'Z −0.50 against men of 45 years (age-matched)',
    cautions: [expect.stringMatching(/precision of the scan is not known/)],
  });
  expect(boneScore(boneDensity(0.84), peers)).not.toHaveProperty('sd');
  const wrong = boneScore(
    9 as BoneDensity,
    { ...peers, mean: 0 as BoneDensity, sd: 0 as BoneDensity },
    boneDensity(0.6),
  );
  expect(wrong.kind === 'refused' && wrong.reason).toMatch(
    /density must.*mean of the reference.*standard deviation of the reference.*precision of repeat scans/,
  );
});

test('the spread of a score is the precision in standard deviations of the reference', () => {
  expect(scoreSd(boneDensity(0.012), boneDensity(0.12))).toBeCloseTo(0.1, 12);
});
