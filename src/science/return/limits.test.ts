import { expect, test } from 'vitest';
import { evaluate } from '../evaluate.ts';
import type { GateEvidence, ScoreTest } from './gate-evidence.ts';
import { WORKED_GATE } from './gate-example.ts';
import { GATE_ITEMS } from './gate-items.table.ts';
import type { ItemReading } from './item-reading.ts';
import { normalCdf } from '../numeric/normal.ts';
import { probabilityOfMean } from './probability-over-line.ts';
import { timeConstantOfLogTime, timeConstantOfTwo } from './recovery-curve.ts';
import { posteriorQuantiles, posteriorShare } from './recovery-posterior.ts';
import { sidesAgainstThemselves } from './recovery-score.ts';
import { stageGate } from './stage-gate.ts';
import { stageRegression } from './stage-regression.ts';
import { standTest, type StandTest } from './stand-test.ts';
import { equilibriumScore, standingBalance } from './standing-balance.ts';

/** Where the rules of the return stop, and that they go up to there. */

const agilityOf = (tests: readonly ScoreTest[], changes: Partial<GateEvidence> = {}): ItemReading | undefined => {
  const reading = stageGate({ ...WORKED_GATE, scores: { ...WORKED_GATE.scores, agility: tests }, ...changes });
  return reading.kind === 'refused' ? undefined : reading.items.find(({ key }) => key === 'agility');
};

const onDays = (...scores: readonly number[]): readonly ScoreTest[] =>
  scores.map((score, place) => ({ on: 18 + place, score }));

test('one test a little under the line holds an item back, one on it asks for a second', () => {
  expect(agilityOf(onDays(89.9))).toMatchObject({ passes: false, basis: 'probability' });
  expect(agilityOf(onDays(90))).toMatchObject({ passes: false, basis: 'missing' });
});

test('a newest test a little under the line is carried by the one before', () => {
  expect(agilityOf(onDays(95, 84.5))?.basis).toBe('probability');
  expect(agilityOf(onDays(95, 89))).toMatchObject({ passes: true });
});

test('one test that is enough is told in the singular', () => {
  const reading = stageGate({
    ...WORKED_GATE,
    scores: { ...WORKED_GATE.scores, oxygenUptake: [{ on: 20, score: 88 }] },
  });
  const item = reading.kind === 'refused' ? undefined : reading.items.find(({ key }) => key === 'oxygenUptake');
  expect(item?.says).toMatch(/^Peak oxygen uptake: 88\.0 % over the last test, line 85 %/);
  const stand = reading.kind === 'refused' ? undefined : reading.items.find(({ key }) => key === 'stand');
  expect(stand?.says).toBe('Stand test: normal on 1 of 1 day in a row.');
});

const judgement = (on: number, by = 'A', reason = 'seen') => ({ item: 'agility' as const, on, by, reason });

test('a judgement counts from the day of entering the stage, and the newest is shown', () => {
  expect(agilityOf([], { judgements: [judgement(11.9)] })?.basis).toBe('missing');
  expect(agilityOf([], { judgements: [judgement(12)] })?.basis).toBe('judgement');
  const two = [judgement(20, 'new'), judgement(15, 'old')];
  expect(agilityOf([], { judgements: two })?.says).toMatch(/judgement of new: seen/);
  expect(agilityOf([], { judgements: two.toReversed() })?.says).toMatch(/judgement of new: seen/);
});

test('a test that passes by itself is not told as a judgement', () => {
  expect(agilityOf(onDays(95, 95), { judgements: [judgement(20)] })?.basis).toBe('probability');
});

test('the ends of days and scores are possible, a blank reason is none', () => {
  expect(stageGate({ ...WORKED_GATE, scores: { agility: [{ on: 21, score: 200 }] } }).kind).not.toBe('refused');
  const landing = { ...WORKED_GATE, scores: {}, standTests: [], balanceTests: [], sickness: [], pain: [] };
  expect(stageGate({ ...landing, today: 0, enteredStage: 0 }).kind).toBe('not passed');
  expect(stageGate({ ...WORKED_GATE, today: Number.NaN })).toEqual({
    kind: 'refused',
    reasons: ['The day must be days since landing; it is NaN.'],
  });
  expect(stageGate({ ...WORKED_GATE, judgements: [judgement(20, 'A', ' ')] }).kind).toBe('refused');
});

test('an item without a typical error sends nobody back', () => {
  const items = GATE_ITEMS.map((item) => ({ ...item, typicalError: null }));
  const evidence = { ...WORKED_GATE, scores: { agility: [{ on: 20, score: 10 }] } };
  expect(stageRegression(evidence, items)).toEqual({ kind: 'stay' });
  expect(stageRegression(evidence).kind).toBe('go back');
});

test('the plot of probabilities crosses one half on the line, the steeper the more tests', () => {
  const curves = probabilityOfMean.record.plot?.curves() ?? [];
  expect(curves.map(({ label }) => label)).toEqual(['1 test', '2 tests', '3 tests']);
  for (const [place, { points }] of curves.entries()) {
    expect([points[0]?.[0], points.at(-1)?.[0]]).toEqual([-3, 3]);
    const off = points.filter(([x, y]) => Math.abs(y - normalCdf(x * Math.sqrt(place + 1))) > 1e-9);
    expect(off).toEqual([]);
  }
});

test('formulas of the return refuse what cannot stand together', () => {
  expect(evaluate(equilibriumScore, [-1, 1])).toMatchObject({
    reasons: ['The furthest lean forward lies in front of the furthest lean backward.'],
  });
  expect(evaluate(equilibriumScore, [1, 1])).toMatchObject({ kind: 'value', value: 100 });
  for (const days of [
    [5, 5],
    [6, 5],
  ])
    expect(evaluate(timeConstantOfTwo, [10, 5, ...days])).toMatchObject({
      reasons: ['The second day lies after the first.'],
    });
  for (const losses of [
    [5, 5],
    [5, 6],
  ])
    expect(evaluate(timeConstantOfTwo, [...losses, 5, 30])).toMatchObject({
      reasons: ['The second loss is smaller than the first.'],
    });
  for (const share of [0.5, 0.4])
    expect(evaluate(timeConstantOfLogTime, [15, 2, share])).toMatchObject({
      reasons: ['The share lies above that of landing day.'],
    });
  expect(evaluate(timeConstantOfLogTime, [15, 2, 0.51]).kind).toBe('value');
});

test('quantiles and shares of a belief of a few values are those that one counts', () => {
  const weight = Float64Array.of(0.25, 0.5, 0.25);
  const few = { loss: weight, timeConstant: weight, weight };
  const values = Float64Array.of(30, 10, 20);
  expect(posteriorQuantiles(few, values, [0.1, 0.5, 0.51, 0.75, 0.76, 1])).toEqual([10, 10, 20, 20, 30, 30]);
  expect(posteriorShare(few, values, 20)).toBe(0.5);
  expect(posteriorShare(few, values, 20.1)).toBe(0.25);
});

test('sides and scores at the ends of what is possible are possible', () => {
  const ends = { left: 0.001, right: 100_000 };
  expect(sidesAgainstThemselves(ends, ends).kind).toBe('estimate');
  const three = [100, 0, 100] as const;
  expect(standingBalance([three, three, three, three, three, three]).kind).toBe('estimate');
});

const STAND: StandTest = {
  lying: { systolic: 120, diastolic: 70, heartRate: 60 },
  standing: [{ minute: 3, systolic: 118, diastolic: 72, heartRate: 70 }],
  presyncope: false,
  stood: 10,
};

test('a stand test with one pressure at the third minute and one heart rate is enough', () => {
  expect(standTest(STAND)).toMatchObject({ kind: 'judgement', normal: true });
  const [reading] = STAND.standing;
  const twice = [...STAND.standing, ...STAND.standing, { minute: 5, systolic: null, diastolic: null, heartRate: null }];
  expect(standTest({ ...STAND, standing: twice })).toMatchObject({ normal: true });
  for (const lacking of [{ systolic: null }, { diastolic: null }])
    expect(standTest({ ...STAND, standing: reading ? [{ ...reading, ...lacking }] : [] })).toEqual({
      kind: 'refused',
      reasons: ['No blood pressure was recorded within 3 minutes of standing up.'],
    });
});

test('a heart rate that was not taken lying gives no rise, and an hour is the longest stand', () => {
  const standing = [1, 2, 3].map((minute) => ({ minute, systolic: 118, diastolic: 72, heartRate: 95 }));
  expect(standTest({ ...STAND, lying: { ...STAND.lying, heartRate: null }, standing })).toEqual({
    kind: 'refused',
    reasons: ['The heart rate lying was not recorded.'],
  });
  expect(standTest({ ...STAND, stood: 61 })).toEqual({
    kind: 'refused',
    reasons: ['The time stood must lie in 0 to 60 min; it is 61.'],
  });
});
