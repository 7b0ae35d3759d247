import fc from 'fast-check';
import { expect, test } from 'vitest';
import { daySpan } from '#units/quantity.ts';
import { authorsAndYear, BONE_AFTER_LANDING, MEASURED_LOSSES } from './loss-rates.table.ts';
import { daysToRecover, remainingDeficit } from './recovery.ts';
import { RECOVERY_HALF_LIVES } from './recovery-half-lives.table.ts';
import { PUBLISHED_LOSSES } from './published-losses.table.ts';
import { fitPlateau, saturatingLoss } from './saturating-loss.ts';

const deficit = fc.double({ min: 0.5, max: 25, noNaN: true });
const days = fc.double({ min: 0, max: 1500, noNaN: true }).map(daySpan);
const halfLife = fc.double({ min: 60, max: 400, noNaN: true }).map(daySpan);

test('each half-life leaves half of what was left', () => {
  fc.assert(
    fc.property(deficit, days, halfLife, (lost, after, half) => {
      const later = remainingDeficit(lost, daySpan(after + half), half);
      expect(later).toBeCloseTo(remainingDeficit(lost, after, half) / 2, 10);
      expect(remainingDeficit(lost, daySpan(0), half)).toBe(lost);
    }),
  );
});

test('after the days that a deficit takes it is down to what is taken as recovered', () => {
  fc.assert(
    fc.property(deficit, fc.double({ min: 0.01, max: 1, noNaN: true }), halfLife, (lost, part, half) => {
      const until = daysToRecover(lost, part * lost, half);
      expect(until).toBeGreaterThanOrEqual(0);
      expect(remainingDeficit(lost, until, half)).toBeCloseTo(part * lost, 10);
    }),
  );
});

test('a deficit that is already recovered is not waited for', () => {
  const [condition] = daysToRecover.record.conditions ?? [];
  expect(condition?.holds(1.9, 2, 211)).toBe(false);
  expect(condition?.holds(2, 2, 211)).toBe(true);
  expect(daysToRecover(2, 2, daySpan(211))).toBe(0);
});

test('the bending line rises, ever more slowly, and never past its plateau', () => {
  const day = fc.double({ min: 0, max: 5000, noNaN: true });
  const plateau = fc.double({ min: 1, max: 80, noNaN: true });
  fc.assert(
    fc.property(plateau, day, fc.double({ min: 1, max: 500, noNaN: true }), (most, at, more) => {
      const [first, second, third] = [0, 1, 2].map((step) => saturatingLoss(most, daySpan(at + step * more)));
      if (first === undefined || second === undefined || third === undefined) throw new Error('three points');
      expect(second).toBeGreaterThan(first);
      expect(third - second).toBeLessThan(second - first);
      expect(third).toBeLessThan(most);
    }),
  );
});

test('a plateau is found again from points on its line, however many people stand behind each', () => {
  const groups = fc.array(
    fc.record({ days: fc.integer({ min: 30, max: 400 }), people: fc.integer({ min: 1, max: 60 }) }),
    { minLength: 2, maxLength: 10 },
  );
  fc.assert(
    fc.property(groups, fc.double({ min: 5, max: 80, noNaN: true }), (of, most) => {
      const found = fitPlateau(of.map((each) => ({ ...each, loss: saturatingLoss(most, daySpan(each.days)) })));
      if (found.kind === 'refused') throw new Error(found.reason);
      expect(found.value).toBeCloseTo(most, 9);
      expect(found.sd).toBeLessThan(1e-9);
    }),
  );
});

test('the plateau says how far its data reach', () => {
  expect(fitPlateau(PUBLISHED_LOSSES.rows)).toMatchObject({
    cautions: ['The longest flight behind it lasted 181 days; the line beyond is a guess at a shape.'],
  });
});

test('one group makes no plateau, and what cannot be is refused', () => {
  expect(fitPlateau([{ days: 180, loss: 6, people: 4 }])).toEqual({
    kind: 'refused',
    reason: 'A plateau needs at least two groups; there are 1.',
  });
  const wrong = fitPlateau([
    { days: 0, loss: 6, people: 4 },
    { days: 180, loss: 200, people: 0 },
  ]);
  expect(wrong.kind === 'refused' && wrong.reason).toMatch(/days in flight.*mean loss.*people/);
});

test('a measured mean lies in its own interval, and every row names its study', () => {
  for (const { value, interval, study, people } of MEASURED_LOSSES.rows) {
    if (interval) expect(interval[0] <= value && value <= interval[1]).toBe(true);
    expect(authorsAndYear(study)).toMatch(/^\p{L}.* \(\d{4}\)$/u);
    expect(people).toBeGreaterThan(0);
  }
  expect(BONE_AFTER_LANDING.rows.map(({ study }) => authorsAndYear(study))).toContain('Gabel L. et al. (2022)');
});

test('a source names each study of the table of losses', () => {
  const named = new Set([MEASURED_LOSSES.record.source, ...(MEASURED_LOSSES.record.restsOn ?? [])]);
  expect(MEASURED_LOSSES.rows.filter(({ study }) => !named.has(study))).toEqual([]);
  const after = new Set([BONE_AFTER_LANDING.record.source, ...(BONE_AFTER_LANDING.record.restsOn ?? [])]);
  expect(BONE_AFTER_LANDING.rows.filter(({ study }) => !after.has(study))).toEqual([]);
});

test('every site of the recovery comes within 2 % in time', () => {
  const until = RECOVERY_HALF_LIVES.rows.map(
    ({ site, deficit: lost, halfLife: half }) => [site, Math.round(daysToRecover(lost, 2, daySpan(half)))] as const,
  );
  // Half-lives times the binary logarithm of half the deficit, by hand.
  expect(Object.fromEntries(until)).toEqual({
    'lumbar spine': 195,
    'femoral neck': 373,
    trochanter: 501,
    pelvis: 189,
    calcaneus: 87,
  });
});
