import { expect, test } from 'vitest';
import { WORKED_GATE } from './gate-example.ts';
import { latestTestRule } from './latest-test-rule.ts';
import { stageRegression } from './stage-regression.ts';

const agility = (...tests: readonly (readonly [on: number, score: number])[]) => ({
  ...WORKED_GATE,
  scores: { agility: tests.map(([on, score]) => ({ on, score })) },
});

test('nobody goes back for a good test or for none', () => {
  expect(stageRegression(WORKED_GATE)).toEqual({ kind: 'stay' });
  expect(stageRegression({ ...WORKED_GATE, scores: {} })).toEqual({ kind: 'stay' });
});

test('two typical errors below the line of the passed gate send back, with the reason', () => {
  expect(stageRegression(agility([20, 84.01]))).toEqual({ kind: 'stay' });
  expect(stageRegression(agility([20, 84]))).toEqual({
    kind: 'go back',
    reasons: ['Agility: 84.0 %, two typical errors or more below the line of 90 %.'],
  });
});

test('the newest test since the gate decides', () => {
  expect(stageRegression(agility([20, 95], [18, 60])).kind).toBe('stay');
  expect(stageRegression(agility([18, 95], [20, 60])).kind).toBe('go back');
  expect(stageRegression(agility([11.9, 60])).kind).toBe('stay');
  expect(stageRegression(agility([12, 60])).kind).toBe('go back');
});

test('what the passed gate did not ask for sends nobody back', () => {
  expect(stageRegression({ ...agility([20, 60]), gate: 'first' }).kind).toBe('stay');
});

test('a red flag sends back', () => {
  expect(stageRegression({ ...WORKED_GATE, redFlags: [{ on: 20, what: 'near fainting' }] })).toEqual({
    kind: 'go back',
    reasons: ['Red flag on day 20: near fainting.'],
  });
});

test('evidence that cannot be is refused', () => {
  expect(stageRegression(agility([40, 90])).kind).toBe('refused');
});

test('the older rule: far over the line once, near it twice', () => {
  const rule = (latest: number, previous: number) =>
    latestTestRule({ latest, previous, typicalError: 3, line: 90 }).kind;
  expect(rule(93, 10)).toBe('passes');
  expect(rule(92.9, 89.9)).toBe('fails');
  expect(rule(92.9, 90)).toBe('passes');
  expect(rule(90, 90)).toBe('passes');
  expect(rule(89.9, 99)).toBe('fails');
  expect(rule(Number.NaN, 99)).toBe('refused');
  expect(rule(95, Number.NaN)).toBe('refused');
});
