import { expect, test } from 'vitest';
import { standTest, type StandReading, type StandTest } from './stand-test.ts';
import { STAND_TEST_LIMITS } from './stand-test-limits.ts';

const steady = (minute: number): StandReading => ({ minute, systolic: 118, diastolic: 74, heartRate: 75 });
const NORMAL: StandTest = {
  lying: { systolic: 120, diastolic: 70, heartRate: 60 },
  standing: [1, 2, 3, 5, 7, 10].map(steady),
  presyncope: false,
  stood: 10,
};

const withReadings = (...changes: readonly (Partial<StandReading> & { readonly minute: number })[]): StandTest => ({
  ...NORMAL,
  standing: NORMAL.standing.map((reading) => ({
    ...reading,
    ...changes.find(({ minute }) => minute === reading.minute),
  })),
});

test('a steady stand is normal', () => {
  expect(standTest(NORMAL)).toEqual({ kind: 'judgement', normal: true, reasons: [], cautions: [] });
});

test('a fall of pressure within three minutes is not normal, and its minute is told', () => {
  expect(standTest(withReadings({ minute: 3, systolic: 100 }))).toMatchObject({
    normal: false,
    reasons: ['Systolic pressure fell by 20 mmHg at minute 3.'],
  });
  expect(standTest(withReadings({ minute: 1, systolic: 95, diastolic: 58 }))).toMatchObject({
    reasons: ['Systolic pressure fell by 25 mmHg at minute 1.', 'Diastolic pressure fell by 12 mmHg at minute 1.'],
  });
});

test('a late fall is a word for the physician, not a reason', () => {
  expect(standTest(withReadings({ minute: 7, diastolic: 60 }))).toEqual({
    kind: 'judgement',
    normal: true,
    reasons: [],
    cautions: ['Diastolic pressure fell by 10 mmHg at minute 7. That is late, and a word for the physician.'],
  });
});

test('heart rate has to stay up for two readings in a row', () => {
  const up = (...minutes: readonly number[]) =>
    standTest(withReadings(...minutes.map((minute) => ({ minute, heartRate: 95 }))));
  expect(up(2)).toMatchObject({ normal: true });
  expect(up(2, 5)).toMatchObject({ normal: true });
  expect(up(2, 3)).toMatchObject({
    normal: false,
    reasons: ['Heart rate stayed up by 30 or more from minute 2.'],
  });
  const gap = withReadings({ minute: 2, heartRate: 95 }, { minute: 3, heartRate: null }, { minute: 5, heartRate: 90 });
  expect(standTest(gap)).toMatchObject({ reasons: ['Heart rate stayed up by 30 or more from minute 2.'] });
});

test('near fainting and a short stand are told together', () => {
  expect(standTest({ ...NORMAL, presyncope: true, stood: 6 })).toMatchObject({
    normal: false,
    reasons: ['Near fainting.', 'Stood 6 of 10 minutes.'],
  });
});

test('nothing is called normal that was not looked at', () => {
  const blind = { systolic: null, diastolic: null, heartRate: null };
  expect(standTest({ ...NORMAL, lying: blind, standing: [{ minute: 1, ...blind }] })).toEqual({
    kind: 'refused',
    reasons: [
      'The systolic pressure lying was not recorded.',
      'The diastolic pressure lying was not recorded.',
      'The heart rate lying was not recorded.',
      'No blood pressure was recorded within 3 minutes of standing up.',
      'No heart rate was recorded while standing.',
    ],
  });
  const late = { ...NORMAL, standing: NORMAL.standing.filter(({ minute }) => minute > 3) };
  expect(standTest(late)).toEqual({
    kind: 'refused',
    reasons: ['No blood pressure was recorded within 3 minutes of standing up.'],
  });
  const half = withReadings(...[1, 2, 3].map((minute) => ({ minute, diastolic: null })));
  expect(standTest(half)).toMatchObject({ kind: 'refused' });
});

test('who nearly fainted is not normal, whatever was not recorded', () => {
  expect(standTest({ ...NORMAL, standing: [], presyncope: true, stood: 2 })).toMatchObject({
    kind: 'judgement',
    normal: false,
  });
});

test('readings that cannot be are refused, all at once', () => {
  const found = standTest({
    lying: { systolic: 400, diastolic: 70, heartRate: 60 },
    standing: [steady(3), { ...steady(2), heartRate: 10, diastolic: Number.NaN }],
    presyncope: false,
    stood: -1,
  });
  expect(found.kind === 'refused' && found.reasons).toEqual([
    'The systolic pressure lying must lie in 40 to 280 mmHg; it is 400.',
    'The diastolic pressure at minute 2 must lie in 20 to 200 mmHg; it is NaN.',
    'The heart rate at minute 2 must lie in 25 to 240 1/min; it is 10.',
    'The time stood must lie in 0 to 60 min; it is -1.',
    'The standing readings must be in order of their minutes, from 0.',
  ]);
});

test('the ends of what is possible are possible', () => {
  for (const stood of [0, 60]) expect(standTest({ ...NORMAL, stood }).kind).toBe('judgement');
  for (const systolic of [40, 280])
    expect(standTest({ ...NORMAL, lying: { ...NORMAL.lying, systolic } }).kind).toBe('judgement');
});

test('the physician’s limits go before these', () => {
  const strict = { ...STAND_TEST_LIMITS, systolicFall: 2, stand: 12 };
  expect(standTest(NORMAL, strict)).toMatchObject({ normal: false });
  expect(standTest(NORMAL, strict)).toMatchObject({
    reasons: expect.arrayContaining([
      'Stood 10 of 12 minutes.',
      'Systolic pressure fell by 2 mmHg at minute 1.',
    ]) as unknown,
  });
});
