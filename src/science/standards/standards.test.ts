import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { boneDensity } from '#units/quantity.ts';
import { youngReference } from '../bone/bone-score.ts';
import { chanceAtLeast, chanceAtLeastOfLog } from './chance.ts';
import { chanceOfMeeting, type Belief } from './chance-of-meeting.ts';
import { judgeMeasured } from './judge-measured.ts';
import { BASELINE_2007, LATER_REVISIONS, STANDARD_PROFILES } from './profiles.table.ts';
import type { LimitRule, StandardRule } from './rule.ts';
import { ALL_CHECKS } from '../textbook.ts';

const ALL_RULES: readonly StandardRule[] = STANDARD_PROFILES.flatMap(({ rules }) => rules);

const rule = (id: string): LimitRule => {
  const found = ALL_RULES.find((each) => each.id === id);
  if (found?.kind !== 'limit') throw new Error(`no limit "${id}"`);
  return found;
};

const BEFORE = rule('bone-before');
const AFTER = rule('bone-after');
const UPTAKE: LimitRule = rule('aerobic-in-flight');
/** As if somebody had held it against the document. */
const VERIFIED_UPTAKE: LimitRule = { ...UPTAKE, status: 'verified' };
const OWN_SEX = { reference: 'sex-matched' } as const;

// Data

test('the limits of bone in the first issue are verified, and nothing else is', () => {
  const verified = ALL_RULES.filter(({ status }) => status === 'verified');
  expect(verified.map(({ id }) => id)).toEqual(['bone-before', 'bone-in-flight', 'bone-after', 'bone-rehabilitation']);
  expect([BEFORE.limit, AFTER.limit]).toEqual([-1, -2]);
  expect(BASELINE_2007.rules).toEqual(expect.arrayContaining(verified));
  expect(LATER_REVISIONS.rules.every(({ note }) => /low confidence/.test(note))).toBe(true);
});

test('no two rules of any profile share an id', () => {
  const ids = ALL_RULES.map(({ id }) => id);
  expect(new Set(ids).size).toBe(ids.length);
});

// Judging

test('a value on the limit meets the rule, and one just under it does not', () => {
  expect(judgeMeasured(BEFORE, { value: -1, ...OWN_SEX })).toEqual({
    kind: 'meets',
    rule: 'bone-before',
    limit: -1,
    margin: 0,
    says: 'T score −1.00 meets rule 4.2.9 (T score, before flight): at least −1.00. A physician decides.',
    cautions: [],
  });
  expect(judgeMeasured(BEFORE, { value: -1.01, ...OWN_SEX })).toMatchObject({
    kind: 'does not meet',
    says: 'T score −1.01 does not meet rule 4.2.9 (T score, before flight): at least −1.00. A physician decides.',
  });
  expect(judgeMeasured(BEFORE, { value: -1 - 1e-12, ...OWN_SEX })).toMatchObject({ kind: 'meets' });
});

test('a relative limit needs what it is counted in, and says so', () => {
  expect(judgeMeasured(UPTAKE, { value: 34 })).toEqual({
    kind: 'none',
    reason:
      'Enter the value before flight: rule 4.2.3 (maximal oxygen uptake, in flight) is counted in fractions of it.',
  });
  expect(judgeMeasured(rule('aerobic-before'), { value: 34 })).toMatchObject({
    reason: expect.stringMatching(/^Enter the mean for age and sex/) as string,
  });
  expect(judgeMeasured(rule('deadlift-before'), { value: 100 })).toMatchObject({
    reason: expect.stringMatching(/^Enter body mass: rule deadlift-before \(deadlift, before flight\)/) as string,
  });
});

test('a relative limit is judged in the unit of the quantity, with its fraction beside it', () => {
  const found = judgeMeasured(UPTAKE, { value: 31.5, against: 42 });
  expect(found).toMatchObject({
    kind: 'meets',
    limit: 31.5,
    says: 'Maximal oxygen uptake 31.5 mL/(kg min) meets rule 4.2.3 (maximal oxygen uptake, in flight): at least 31.5 mL/(kg min), 75 % of before flight. A physician decides.',
  });
  expect(judgeMeasured(rule('deadlift-before'), { value: 103.9, against: 80 })).toMatchObject({
    kind: 'does not meet',
    limit: 104,
    says: expect.stringMatching(
      /^Deadlift 103\.9 kg does not meet .*: at least 104\.0 kg, 130 % of body weight\./,
    ) as string,
  });
  expect(judgeMeasured(rule('femoral-neck-in-flight'), { value: 0.81, against: 0.88 })).toMatchObject({
    kind: 'meets',
    says: expect.stringMatching(/density of the femoral neck 0\.810 g\/cm²/i) as string,
  });
});

test('an unverified rule is judged only with a caution, a verified one without', () => {
  const unverified = judgeMeasured(UPTAKE, { value: 34, against: 42 });
  expect(unverified).toMatchObject({
    cautions: [
      'Rule 4.2.3 (maximal oxygen uptake, in flight) is unverified: hold it against the document before anything rests on it.',
    ],
  });
  expect(judgeMeasured(VERIFIED_UPTAKE, { value: 34, against: 42 })).toMatchObject({ cautions: [] });
});

test('a T score of another or an unknown reference is judged with a caution', () => {
  expect(judgeMeasured(BEFORE, { value: 0 })).toMatchObject({ cautions: [expect.stringMatching(/is not said/)] });
  expect(judgeMeasured(BEFORE, { value: 0, reference: 'young female' })).toMatchObject({
    cautions: [expect.stringMatching(/against young women/)],
  });
});

test('where at most is asked the margin turns round', () => {
  const most: LimitRule = { ...UPTAKE, comparator: 'at most', basis: 'absolute', limit: 40 };
  expect(judgeMeasured(most, { value: 38 })).toMatchObject({ kind: 'meets', margin: 2 });
  expect(judgeMeasured(most, { value: 41 })).toMatchObject({
    kind: 'does not meet',
    margin: -1,
    says: expect.stringMatching(/at most 40\.0/) as string,
  });
});

test('a rule in words is shown, never judged', () => {
  const words = BASELINE_2007.rules.filter(({ kind }) => kind === 'words');
  expect(words.length).toBe(3);
  for (const each of words) {
    const found = judgeMeasured(each, { value: 0 });
    expect(found.kind === 'none' && found.reason).toMatch(
      /^Rule 4\.2\.[89] .* is in words: .*\. A physician decides\.$/,
    );
  }
});

test('what cannot have been measured is refused', () => {
  expect(judgeMeasured(BEFORE, { value: 12 })).toEqual({
    kind: 'refused',
    reason: 'T score must lie in -8 to 8 SD; it is 12.',
  });
  expect(judgeMeasured(UPTAKE, { value: 34, against: 400 })).toEqual({
    kind: 'refused',
    reason: 'the value before flight must lie in 5 to 100 mL/(kg min); it is 400.',
  });
  expect(judgeMeasured(rule('bench-press-before'), { value: 60, against: 10 })).toMatchObject({
    kind: 'refused',
    reason: expect.stringMatching(/body mass must lie in 25 to 300 kg/) as string,
  });
});

test('a higher value never turns meeting into not meeting', () => {
  const score = fc.double({ min: -5, max: 3, noNaN: true });
  fc.assert(
    fc.property(score, fc.double({ min: 0, max: 3, noNaN: true }), (value, more) => {
      const kinds = [value, value + more].map((each) => judgeMeasured(BEFORE, { value: each }).kind);
      expect(kinds).not.toEqual(['meets', 'does not meet']);
    }),
  );
});

// Chances

const FILE = join(import.meta.dirname, '../../../test/fixtures/science/standards.json');
type Row = readonly [limit: number, mean: number, sd: number, chance: number];
// Written by the script that stands beside the file.
const reference = JSON.parse(readFileSync(FILE, 'utf8')) as {
  readonly normal: readonly Row[];
  readonly log: readonly Row[];
  readonly worked: Readonly<Record<string, number>>;
};

/** Logarithm and division before the probability cost a few units in the last place of z, more of them far out. */
const off = (ours: number, theirs: number): boolean => !(Math.abs(ours - theirs) <= 1e-13 + 1e-10 * theirs);

test('chances are those of SciPy, on both scales', () => {
  expect(reference.normal.filter(([c, mean, sd, p]) => off(chanceAtLeast(c, mean, sd), p))).toEqual([]);
  expect(reference.log.filter(([c, mean, sd, p]) => off(chanceAtLeastOfLog(c, mean, sd), p))).toEqual([]);
  expect(reference.normal.length + reference.log.length).toBe(99);
});

const normal = (mean: number, sd: number): Belief => ({ scale: 'normal', mean, sd, ...OWN_SEX });

test('a chance stands in a sentence with its rule, and a physician decides', () => {
  expect(chanceOfMeeting(AFTER, normal(-1.5, 0.25))).toEqual({
    kind: 'estimate',
    value: expect.closeTo(reference.worked['T of -1.5 at least -2'] ?? Number.NaN, 12) as number,
    rule: 'bone-after',
    limit: -2,
    says: 'By the mean and standard deviation given, the true T score meets rule 4.2.9 (T score, after flight) with a probability of 98 %: at least −2.00. A physician decides.',
    cautions: [],
  });
});

test('nothing is sure: the ends are said as under one and over ninety-nine percent', () => {
  const said = (mean: number) => {
    const found = chanceOfMeeting(AFTER, normal(mean, 0.1));
    return found.kind === 'estimate'
      ? /probability of (?<chance>.*?):/.exec(found.says)?.groups?.['chance']
      : found.reason;
  };
  expect(said(0)).toBe('over 99 %');
  expect(said(-4)).toBe('under 1 %');
  expect(said(-2)).toBe('50 %');
  // Φ(2.3263) is 0.99, Φ(−2.3263) is 0.01: both are still said.
  expect(said(-2 + 0.23263)).toBe('99 %');
  expect(said(-2 - 0.23263)).toBe('1 %');
});

test('no printed probability lies against a limit of an unverified rule', () => {
  const limits = ALL_RULES.flatMap((each) =>
    each.kind === 'limit' && each.status === 'unverified'
      ? [each.limit, ...(each.basis === 'of before flight' ? [100 * each.limit - 100] : [])]
      : [],
  );
  const lines = ALL_CHECKS.flatMap((check) =>
    check.kind === 'formula' && /chance/.test(check.formula.record.id) ? [check.given[0] ?? 0] : [],
  );
  expect(lines.length).toBeGreaterThan(4);
  expect(lines.filter((line) => limits.some((limit) => Math.abs(limit - line) < 1e-9))).toEqual([]);
});

test('no probability is given against an unverified rule, whatever is believed', () => {
  const beliefs: readonly Belief[] = [
    normal(34, 2),
    { scale: 'log', mean: 3.5, sd: 0.05, against: 42 },
    { scale: 'log density', mean: -0.4, sd: 0.03, reference: youngReference('femoral neck', 'male', 'sex-matched') },
  ];
  const unverified = ALL_RULES.filter(({ status }) => status === 'unverified');
  expect(unverified.length).toBeGreaterThan(10);
  for (const each of unverified)
    for (const belief of beliefs) {
      const found = chanceOfMeeting(each, belief);
      expect(found.kind === 'none' && found.reason).toMatch(/is unverified: no probability is given against it\.$/);
      expect(found).not.toHaveProperty('value');
    }
});

test('a verified rule in words has no probability either', () => {
  const words = BASELINE_2007.rules.find(({ id }) => id === 'bone-in-flight');
  if (!words) throw new Error('no rule in words');
  expect(chanceOfMeeting(words, normal(0, 1))).toMatchObject({
    kind: 'none',
    reason: expect.stringMatching(/is in words/) as string,
  });
});

test('density on the log scale and the T score itself agree where the spread is small', () => {
  const young = youngReference('femoral neck', 'male', 'sex-matched');
  const found = chanceOfMeeting(AFTER, { scale: 'log density', mean: -0.38, sd: 0.03, reference: young });
  expect(found).toMatchObject({ kind: 'estimate', limit: boneDensity(0.934 - 2 * 0.137), cautions: [] });
  expect(found.kind === 'estimate' && found.value).toBeCloseTo(
    reference.worked['neck at least 0.66'] ?? Number.NaN,
    12,
  );
  expect(found.kind === 'estimate' && found.says).toMatch(/at least −2\.00/);
  const density = Math.exp(-0.38);
  const score = (density - young.mean) / young.sd;
  const near = chanceOfMeeting(AFTER, normal(score, (0.03 * density) / young.sd));
  expect(found.kind === 'estimate' && near.kind === 'estimate' && Math.abs(found.value - near.value)).toBeLessThan(
    0.01,
  );
});

test('the reference of a believed score or density is doubted as that of a measured one', () => {
  const women = youngReference('femoral neck', 'male', 'young female');
  const cautions = [expect.stringMatching(/against young women/)];
  expect(chanceOfMeeting(AFTER, { scale: 'log density', mean: -0.38, sd: 0.03, reference: women })).toMatchObject({
    cautions,
  });
  expect(chanceOfMeeting(AFTER, { scale: 'normal', mean: -1, sd: 0.1, reference: 'young female' })).toMatchObject({
    cautions,
  });
  expect(chanceOfMeeting(AFTER, { scale: 'normal', mean: -1, sd: 0.1 })).toMatchObject({
    cautions: [expect.stringMatching(/is not said/)],
  });
});

test('a rule that somebody has verified gets its probability, on the scale of the quantity or of its logarithm', () => {
  const cautions = ['What the limit is counted in (before flight) is taken as exact.'];
  expect(chanceOfMeeting(VERIFIED_UPTAKE, { scale: 'normal', mean: 33.5, sd: 2, against: 42 })).toMatchObject({
    limit: 31.5,
    value: chanceAtLeast(31.5, 33.5, 2),
    says: expect.stringMatching(
      /: at least 31\.5 mL\/\(kg min\), 75 % of before flight\. A physician decides\.$/,
    ) as string,
    cautions,
  });
  expect(chanceOfMeeting(VERIFIED_UPTAKE, { scale: 'log', mean: 3.5, sd: 0.05, against: 42 })).toMatchObject({
    value: chanceAtLeastOfLog(31.5, 3.5, 0.05),
    cautions,
  });
  expect(chanceOfMeeting(VERIFIED_UPTAKE, { scale: 'log', mean: 3.5, sd: 0.05 })).toMatchObject({ kind: 'none' });
  expect(chanceOfMeeting(VERIFIED_UPTAKE, { scale: 'log', mean: 3.5, sd: 0.05, against: 4 })).toMatchObject({
    kind: 'refused',
  });
});

test('at most and at least share what is certain', () => {
  const most: LimitRule = { ...AFTER, comparator: 'at most' };
  fc.assert(
    fc.property(
      fc.double({ min: -5, max: 3, noNaN: true }),
      fc.double({ min: 0.05, max: 2, noNaN: true }),
      (mean, sd) => {
        const [least, other] = [AFTER, most].map((each) => chanceOfMeeting(each, normal(mean, sd)));
        expect(least?.kind === 'estimate' && other?.kind === 'estimate' && least.value + other.value).toBeCloseTo(
          1,
          14,
        );
      },
    ),
  );
});

test('scales that do not go with a rule give no probability', () => {
  const young = youngReference('total hip', 'female', 'sex-matched');
  expect(chanceOfMeeting(AFTER, { scale: 'log', mean: 0.1, sd: 0.1 })).toMatchObject({
    kind: 'none',
    reason: expect.stringMatching(/has no logarithm/) as string,
  });
  expect(chanceOfMeeting(VERIFIED_UPTAKE, { scale: 'log density', mean: 0, sd: 0.1, reference: young })).toMatchObject({
    kind: 'none',
    reason: expect.stringMatching(/says nothing about maximal oxygen uptake/) as string,
  });
  expect(
    chanceOfMeeting(AFTER, { scale: 'log density', mean: 0, sd: 0.1, reference: { ...young, kind: 'age-matched' } }),
  ).toMatchObject({ kind: 'none', reason: expect.stringMatching(/young adults/) as string });
  expect(
    chanceOfMeeting({ ...VERIFIED_UPTAKE, basis: 'absolute', limit: 0 }, { scale: 'log', mean: 3, sd: 0.1 }),
  ).toMatchObject({ kind: 'none', reason: expect.stringMatching(/where no logarithm is/) as string });
  expect(
    chanceOfMeeting({ ...VERIFIED_UPTAKE, basis: 'absolute', limit: 0 }, { scale: 'normal', mean: 30, sd: 3 }),
  ).toMatchObject({ kind: 'estimate' });
});

test('a mean or a spread that cannot be is refused', () => {
  const reason = (belief: Belief, of: StandardRule = AFTER): string => {
    const found = chanceOfMeeting(of, belief);
    return found.kind === 'refused' ? found.reason : '';
  };
  expect(reason(normal(Number.NaN, 0))).toMatch(/^mean of T score must lie.* standard deviation must lie/);
  expect(reason({ scale: 'log', mean: 34, sd: 2, against: 42 }, VERIFIED_UPTAKE)).toMatch(
    /^mean of the logarithm of maximal oxygen uptake must lie/,
  );
  const young = youngReference('total hip', 'female', 'sex-matched');
  const wrong = { ...young, mean: boneDensity(0), sd: boneDensity(0) };
  expect(reason({ scale: 'log density', mean: 30, sd: 0.1, reference: wrong })).toMatch(
    /^mean of the logarithm of density must.*mean of the reference must.*standard deviation of the reference must/,
  );
});

// Words

const BARRED =
  /\b(un)?fit (for|to)\b|\bunfit\b|\bfitness for\b|\bclear(ed|s)?\b (for|to)|\bqualif|\bcertif|\bready for\b|\bsafe to\b|\bgo for\b/i;

test('no text here says of anybody that they may or may not fly or work', () => {
  const folders = [import.meta.dirname, join(import.meta.dirname, '../bone')];
  const files = folders.flatMap((folder) =>
    readdirSync(folder)
      .filter((name) => name.endsWith('.ts') && !name.endsWith('.test.ts'))
      .map((name) => join(folder, name)),
  );
  expect(files.length).toBeGreaterThan(20);
  expect(files.filter((file) => BARRED.test(readFileSync(file, 'utf8')))).toEqual([]);
  expect(BARRED.test('is fit for duty')).toBe(true);
});

test('every verdict and every probability leaves the decision to a physician', () => {
  const limits = ALL_RULES.filter((each) => each.kind === 'limit');
  for (const each of limits) {
    const value = each.quantity === 'T score' ? -1.5 : each.quantity.startsWith('density') ? 0.9 : 90;
    const found = judgeMeasured(each, { value, against: value });
    expect(found.kind === 'meets' || found.kind === 'does not meet' ? found.says : '').toMatch(
      /A physician decides\.$/,
    );
  }
});
