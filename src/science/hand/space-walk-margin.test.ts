import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fraction, newtons, seconds, type Newtons } from '#units/quantity.ts';
import type { GripTask } from './grip-task.ts';
import { constantsFromSummary, constantsOf } from './personal-constants.ts';
import { rotationRatio, screenShoulders } from './shoulder.ts';
import { spaceWalkMargin, worseHand, type SpaceWalkMargin, type SuitedHand } from './space-walk-margin.ts';
import { spaceWalkRulesBefore } from './spacewalk-rules-before.ts';
import { spaceWalkRules } from './spacewalk-rules.table.ts';
import { suitedGrip, type Glove, type SuitedGrip } from './suited-grip.ts';
import { WORKED_TASKS } from './worked-example.ts';

type Margin = Extract<SpaceWalkMargin, { kind: 'estimate' }>;

const suitedBy = (glove: Glove, bare = 500): Extract<SuitedGrip, { kind: 'estimate' }> => {
  const grip = suitedGrip(newtons(bare), glove);
  if (grip.kind === 'refused') throw new Error(grip.reason);
  return grip;
};

const measured = (maximum: number) => suitedBy({ kind: 'measured', suitedMaximum: newtons(maximum) });

const handOf = (given: Partial<SuitedHand> = {}): SuitedHand => {
  const constants = constantsFromSummary({
    criticalForce: newtons(200),
    maximum: newtons(500),
    impulse: 14_700,
    duty: fraction(0.7),
  });
  if (constants.kind === 'refused') throw new Error(constants.reason);
  return { side: 'right', suited: measured(290), constants: constants.value, impulse: 14_700, ...given };
};

const margin = (hand: SuitedHand, tasks: readonly GripTask[] = WORKED_TASKS): Margin => {
  const found = spaceWalkMargin(hand, tasks);
  if (found.kind === 'refused') throw new Error(found.reason);
  return found;
};

test('a margin goes to the specialist only, says that it is not validated, and has no classes', () => {
  const found = margin(handOf());
  expect(found).toMatchObject({
    shownTo: 'the specialist only',
    says: 'Not validated on suited crews.',
    side: 'right',
  });
  expect(JSON.stringify(found)).not.toMatch(/comfortable|tight|redesign/);
});

test('the worked hand has the band, the hour and the sensitivity that a second program has', () => {
  const found = margin(handOf());
  expect(found.value).toBeCloseTo(0.162416, 6);
  expect(found.band?.[0]).toBeCloseTo(0.009452, 6);
  expect(found.band?.[1]).toBeCloseTo(0.262953, 6);
  expect(found.sensitivity.map(({ residual }) => residual)).toEqual([0, 0.01, 0.02]);
  expect(found.sensitivity[0]?.margin).toBe(found.value);
  expect(found.sensitivity[1]?.margin).toBeCloseTo(0.047669, 6);
  expect(found.sensitivity[2]?.margin).toBeCloseTo(-0.067077, 6);
  expect(found.hourMean).toMatchObject({ aboveLimit: true });
  expect(found.secondOpinion).toMatchObject({
    kind: 'estimate',
    value: 1,
    exhausted: null,
    criticalMean: 0.4 * 290 * 0.7,
  });
  if (found.secondOpinion.kind === 'estimate')
    expect(found.secondOpinion.left).toEqual(Array.from({ length: 6 }, () => expect.closeTo(8526, 6) as number));
  expect(found.tasks).toHaveLength(6);
  expect(found.trace.length).toBeGreaterThan(700);
});

test('cautions name the assumed loss, tasks far from the test, the hour and a disagreement of the two models', () => {
  expect(margin(handOf()).cautions).toEqual([
    'The model is trusted where 0.5 to 0.8 of a cycle is under load, near the test: "inspect" lies outside.',
    expect.stringContaining('0.20 of the maximum') as string,
  ]);
  const assumed = margin(handOf({ suited: suitedBy({ kind: 'by pressure', kilopascals: 29.6 }) }));
  expect(assumed.cautions[0]).toMatch(/^Assumed glove loss/);
  const weak = margin(handOf({ suited: measured(225) }));
  expect(weak.firstFailure).toMatchObject({ task: 'fasteners' });
  expect(weak.cautions).toContain('The force is lost in "fasteners", 1796 s from the start.');
  expect(weak.cautions).toContain('The impulse above critical force is spent in "connector".');
  expect(weak.cautions.join(' ')).not.toContain('do not agree');
});

test('two models that do not agree on a failure say so, either way round', () => {
  const disagree = 'The two models do not agree on whether the force is lost.';
  // At 245 N a march fails nowhere; an impulse of almost nothing is spent at once.
  expect(margin(handOf({ suited: measured(245), impulse: 100 })).cautions).toContain(disagree);
  // A short hard grip is averaged away by the second model.
  const burst: GripTask = {
    name: 'burst',
    duration: seconds(60),
    force: newtons(270),
    duty: fraction(0.3),
    cycle: seconds(60),
  };
  const found = margin(handOf(), [burst]);
  expect(found.firstFailure).not.toBeNull();
  expect(found.secondOpinion).toMatchObject({ exhausted: null });
  expect(found.cautions).toContain(disagree);
});

test('without a usable impulse there is a margin and no second opinion', () => {
  const found = margin(handOf({ impulse: 0 }));
  expect(found.value).toBeCloseTo(0.162416, 6);
  expect(found.secondOpinion).toMatchObject({ kind: 'refused' });
  expect(found.cautions.join(' ')).toContain('No second opinion: The impulse must lie in 1 to 200000 N s');
});

test('tasks at the edges of the trusted share of a cycle are trusted, rest always', () => {
  const task = (duty: number, force = 60): GripTask => ({
    name: `at ${duty}`,
    duration: seconds(100),
    force: newtons(force),
    duty: fraction(duty),
    cycle: seconds(10),
  });
  expect(margin(handOf(), [task(0.5), task(0.8), task(0), task(0.2, 0)]).cautions).toEqual([]);
  expect(margin(handOf(), [task(0.49), task(0.81)]).cautions).toEqual([
    'The model is trusted where 0.5 to 0.8 of a cycle is under load, near the test: "at 0.49", "at 0.81" lies outside.',
  ]);
});

test('a hand that only rests has no margin, no band and no failure', () => {
  const rest: GripTask = {
    name: 'rest',
    duration: seconds(600),
    force: newtons(0),
    duty: fraction(0.5),
    cycle: seconds(10),
  };
  expect(margin(handOf(), [rest])).toMatchObject({ value: null, band: null, firstFailure: null, cautions: [] });
});

test('tasks and constants that cannot be are refused together', () => {
  const hand = handOf({ suited: measured(100) });
  const found = spaceWalkMargin({ ...hand, constants: { ...hand.constants, fatigue: 5 } }, WORKED_TASKS);
  expect(found).toMatchObject({ kind: 'refused' });
  if (found.kind === 'refused')
    expect(found.reason).toMatch(/"fasteners" asks for 110 N.*"connector" asks for 140 N.*rate of fatigue/);
});

test('the band holds the margin, and an end of it that is kept plausible is told', () => {
  const anyHand = fc.record({
    share: fc.double({ min: 0.2, max: 0.6, noNaN: true }),
    tau: fc.double({ min: 50, max: 100, noNaN: true }),
    maximum: fc.double({ min: 200, max: 450, noNaN: true }),
  });
  fc.assert(
    fc.property(anyHand, ({ share, tau, maximum }) => {
      const constants = constantsOf(fraction(share), seconds(tau), fraction(0.7));
      const found = margin(handOf({ suited: measured(maximum), constants }), WORKED_TASKS.slice(0, 2));
      const [low, high] = found.band ?? [9, -9];
      expect(low).toBeLessThanOrEqual((found.value ?? 0) + 1e-9);
      expect(high).toBeGreaterThanOrEqual((found.value ?? 0) - 1e-9);
    }),
    { numRuns: 40 },
  );
  const kept = 'An end of the band rests on constants that were kept within what is plausible.';
  const far = constantsOf(fraction(0.7), seconds(90), fraction(0.7));
  expect(margin(handOf({ constants: far })).cautions).toContain(kept);
  expect(margin(handOf()).cautions).not.toContain(kept);
});

test('more grip in the suit gives more margin, whether by glove or by hand', () => {
  const of = fc.double({ min: 200, max: 500, noNaN: true });
  fc.assert(
    fc.property(of, of, (one, other) => {
      const [weak, strong] = (one < other ? [one, other] : [other, one]).map((maximum) =>
        margin(handOf({ suited: measured(maximum) }), WORKED_TASKS.slice(0, 2)),
      );
      expect(strong?.value ?? 0).toBeGreaterThanOrEqual((weak?.value ?? 9) - 1e-9);
    }),
    { numRuns: 30 },
  );
});

test('of two hands the one with less left is the result', () => {
  const [left, right] = [margin(handOf({ side: 'left', suited: measured(270) })), margin(handOf())];
  expect(worseHand(left, right).side).toBe('left');
  expect(worseHand(right, left).side).toBe('left');
  const resting: Margin = { ...left, value: null };
  expect(worseHand(resting, right).side).toBe('right');
  expect(worseHand(right, resting).side).toBe('right');
});

test.each([
  [12, ['must', 'must', 'must', 'must']],
  [24, ['must', 'must', 'must', 'must']],
  [25, ['must', 'must', 'must']],
  [48, ['must', 'must', 'must']],
  [49, ['better', 'better', 'must']],
  [72, ['better', 'better', 'must']],
  [72.5, []],
] as const)('%s hours before a space walk as many rules hold as practice says', (hours, strengths) => {
  const found = spaceWalkRulesBefore(hours);
  if (found.kind === 'refused') throw new Error(found.reason);
  expect(found.value.map(({ strength }) => strength)).toEqual(strengths);
});

test('heavy grip and pulling are spared two days before, and looked after first when the walk is over', () => {
  const found = spaceWalkRulesBefore(40);
  const spared = found.kind === 'estimate' ? found.value.flatMap(({ rule }) => rule.spares) : [];
  expect(spared).toEqual(['new exercise', 'heavy pulling', 'heavy grip', 'heavy overhead pressing']);
  expect(spaceWalkRules.rows.filter(({ when }) => when === 'after').flatMap(({ spares }) => spares)).toEqual([
    'heavy grip',
    'heavy overhead pressing',
  ]);
  for (const hours of [-1, Number.NaN])
    expect(spaceWalkRulesBefore(hours)).toMatchObject({
      kind: 'refused',
      reason: expect.stringContaining('ahead') as string,
    });
  expect(spaceWalkRulesBefore(0).kind).toBe('estimate');
  expect(spaceWalkRulesBefore(8760).kind).toBe('estimate');
  expect(spaceWalkRulesBefore(8761)).toMatchObject({ kind: 'refused' });
});

const rotations = (external: number, internal: number) => ({
  external: external as Newtons,
  internal: internal as Newtons,
});

test('a shoulder screen holds each side to its ratio, both to their difference, and any painful arc to the physician', () => {
  const screen = screenShoulders(rotations(118, 164), rotations(130, 160), false);
  expect(screen).toMatchObject({ kind: 'estimate', cautions: [] });
  if (screen.kind !== 'estimate') throw new Error('no screen');
  expect(screen.value).toBeCloseTo(118 / 164, 12);
  expect(screen.findings.map(({ met }) => met)).toEqual([false, true, true, true]);
  expect(screen.findings[2]?.value).toBeCloseTo(12 / 130, 12);
  const sore = screenShoulders(rotations(100, 100), rotations(85, 120), true);
  if (sore.kind !== 'estimate') throw new Error('no screen');
  expect(sore.findings.map(({ met }) => met)).toEqual([true, false, false, false]);
  expect(sore.findings.map(({ what }) => what)).toEqual([
    'external over internal rotation, left',
    'external over internal rotation, right',
    'difference of the sides in external rotation',
    'painful arc',
  ]);
  expect(sore.findings[3]?.value).toBe('yes');
  expect(sore.cautions.join(' ')).toContain('physician');
  const exact = screenShoulders(rotations(75, 100), rotations(75, 100), false);
  if (exact.kind !== 'estimate') throw new Error('no screen');
  expect(exact.findings.every(({ met }) => met)).toBe(true);
  expect(exact.findings[3]?.value).toBe('no');
  const tenth = screenShoulders(rotations(90, 100), rotations(100, 100), false);
  if (tenth.kind !== 'estimate') throw new Error('no screen');
  expect(tenth.findings[2]).toMatchObject({ value: 0.1, met: true });
});

test('a shoulder screen refuses forces that cannot be, on both sides at once', () => {
  const screen = screenShoulders(rotations(1, 100), rotations(100, 2000), false);
  expect(screen).toMatchObject({
    kind: 'refused',
    reason: expect.stringMatching(/left: .*external.*right: .*internal/) as string,
  });
});

test('the ratio of rotations is turned over when the rotations are', () => {
  const anyForce = fc.double({ min: 5, max: 1000, noNaN: true }).map(newtons);
  fc.assert(
    fc.property(anyForce, anyForce, (external, internal) => {
      expect(rotationRatio(external, internal) * rotationRatio(internal, external)).toBeCloseTo(1, 12);
    }),
  );
});
