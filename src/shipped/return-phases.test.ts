import { expect, test } from 'vitest';
import type { Pattern } from '#domain/catalogue.ts';
import { isLiftItem, type PhaseName, type ProgrammeItem, type ProgrammePhase } from '#domain/programme.ts';
import { SHIPPED_EXERCISES } from './exercises/shipped-exercises.ts';
import { RETURN_PHASES } from './return-phases.ts';

const [first, second, third] = RETURN_PHASES as readonly [ProgrammePhase, ProgrammePhase, ProgrammePhase];
const itemsOf = ({ sessions }: ProgrammePhase): readonly ProgrammeItem[] => sessions.flatMap(({ items }) => items);
const patternOf = ({ exercise }: ProgrammeItem): Pattern | undefined =>
  SHIPPED_EXERCISES.find(({ id }) => id === exercise)?.pattern;
const patterns = (phase: ProgrammePhase): ReadonlySet<Pattern | undefined> => new Set(itemsOf(phase).map(patternOf));

test('about six weeks in three stages, a session on every day, the last stage the longest', () => {
  const lengths = RETURN_PHASES.map(({ span: { first: from, last } }) => (last?.days ?? 0) - from.days + 1);
  expect(lengths.reduce((sum, days) => sum + days, 0)).toBe(45);
  expect(Math.max(...lengths)).toBe(lengths[2]);
  for (const { sessions } of RETURN_PHASES)
    expect(sessions.map(({ weekday }) => weekday)).toEqual([1, 2, 3, 4, 5, 6, 7]);
  for (const { span } of RETURN_PHASES) expect(span.first.from).toBe('landing');
});

test('blocks are two and a half hours at most, as long as that on most days', () => {
  const blocks = RETURN_PHASES.flatMap(({ sessions }) => sessions.map(({ blockMinutes }) => blockMinutes));
  expect(Math.max(...blocks)).toBe(150);
  expect(blocks.filter((minutes) => minutes === 150).length).toBe(18);
});

test('first stage: walking, mobility, balance and light strength; no free bar, no bouts, effort 5 at most', () => {
  for (const pattern of ['walking', 'mobility', 'balance'] as const) expect(patterns(first)).toContain(pattern);
  for (const item of itemsOf(first)) {
    expect(item.machineKind).not.toBe('free bar');
    expect(item.kind).not.toBe('bouts');
    expect(item.shouldFeel[1]).toBeLessThanOrEqual(5);
  }
});

test('second stage: work of the heart and body sense; no free bar, nothing run, no lift over RPE 6 nor under 8 repetitions', () => {
  for (const pattern of ['cycling', 'walking', 'balance'] as const) expect(patterns(second)).toContain(pattern);
  expect(patterns(second)).not.toContain('running');
  for (const item of itemsOf(second)) expect(item.machineKind).not.toBe('free bar');
  for (const item of itemsOf(second).filter(isLiftItem)) {
    expect(item.shouldFeel[1]).toBeLessThanOrEqual(6);
    expect(item.basis.kind).toBe('effort');
    for (const { repetitions } of item.sets) expect(repetitions).toBeGreaterThanOrEqual(8);
  }
});

test('third stage: running, steps and carries; every bar is found by feel, behind the squat gates, and stays at RPE 6', () => {
  for (const pattern of ['running', 'carry', 'squat', 'hip hinge'] as const) expect(patterns(third)).toContain(pattern);
  const bars = itemsOf(third)
    .filter(isLiftItem)
    .filter(({ machineKind }) => machineKind === 'free bar');
  expect(bars.length).toBeGreaterThan(4);
  for (const { basis, shouldFeel } of bars) {
    expect(basis).toMatchObject({ kind: 'from last', start: 'effort' });
    expect(shouldFeel[1]).toBeLessThanOrEqual(6);
  }
});

test('no stage has a jump, nothing all-out, and no grip or press from the weeks before launch', () => {
  const names: readonly PhaseName[] = RETURN_PHASES.map(({ name }) => name);
  expect(names).toEqual(['first return stage', 'second return stage', 'third return stage']);
  for (const phase of RETURN_PHASES) {
    expect(patterns(phase)).not.toContain('jump');
    expect(patterns(phase)).not.toContain('vertical press');
    for (const item of itemsOf(phase))
      if (item.kind === 'bouts') for (const { intensity } of item.bouts) expect(intensity?.kind).not.toBe('all-out');
  }
});
