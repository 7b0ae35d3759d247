import { expect, test } from 'vitest';
import { readLoad } from './read-load.ts';
import { readStature } from './read-stature.ts';
import { readEffort, readRole, readSex, readSide, readTeam, readUnit } from './read-words.ts';

const plain = { unit: null, repetitions: null, effort: null };

test.each([
  ['102,5', { ...plain, number: '102.5' }],
  ['225 lb', { ...plain, number: '225', unit: 'lb' }],
  ['225lbs', { ...plain, number: '225', unit: 'lb' }],
  ['100 kg x 5', { ...plain, number: '100', unit: 'kg', repetitions: '5' }],
  ['225x5 @8', { number: '225', unit: null, repetitions: '5', effort: { kind: 'RPE', value: 8 } }],
  ['100 × 3 reps', { ...plain, number: '100', repetitions: '3' }],
  ['20 kg x 20', { ...plain, number: '20', unit: 'kg', repetitions: '20' }],
  ['100@7,5', { ...plain, number: '100', effort: { kind: 'RPE', value: 7.5 } }],
])('"%s" is read with what stands beside the number', (text, value) => {
  expect(readLoad(text, null)).toEqual({ kind: 'value', value });
});

test('a load and repetitions that may be exchanged are not guessed', () => {
  expect(readLoad('5x100', null)).toMatchObject({
    kind: 'wrong',
    said: { whatToDo: 'Write the unit beside the load, such as 20 kg x 20.' },
  });
});

test.each(['NaN', '100 stone', '2 plates', '=A1*2', '100kg100', 'BW'])('"%s" is no load', (text) => {
  expect(readLoad(text, null).kind).toBe('wrong');
});

test.each([
  ['172', null, '172', 'cm'],
  ['1.72', null, '172', 'cm'],
  ['1,725', ',', '172.5', 'cm'],
  ['68', null, '68', 'in'],
  [`5'8"`, null, '68', 'in'],
  ['5 ft 8 in', null, '68', 'in'],
  ['5′ 8½″'.replace('½', '.5'), null, '68.5', 'in'],
  [`6'`, null, '72', 'in'],
  ['1.68 m', null, '168', 'cm'],
] as const)('a stature of %s is %s %s', (text, mark, number, unit) => {
  expect(readStature(text, null, mark)).toEqual({ kind: 'value', value: { text: number, unit } });
});

test.each(['110', '240', '17.2', `3'`, '100 in', 'tall'])('%s is no stature', (text) => {
  expect(readStature(text, null, null).kind).toBe('wrong');
});

test('a stature outside the unit of its header is refused', () => {
  expect(readStature('68', 'cm', null)).toMatchObject({
    kind: 'wrong',
    said: { why: 'Statures of 120 to 230 cm are taken.' },
  });
});

test('words of sheets are known', () => {
  expect(['kg', 'KGs', 'Kilos', 'lb', 'lbs.', 'pounds', '#', 'stone'].map(readUnit)).toEqual([
    'kg',
    'kg',
    'kg',
    'lb',
    'lb',
    'lb',
    'lb',
    null,
  ]);
  expect(['L', 'left leg', 'R', 'Right', 'both', 'x'].map(readSide)).toEqual([
    'left',
    'left',
    'right',
    'right',
    'both',
    null,
  ]);
  expect(['F', 'woman', 'M', 'Male', '?'].map(readSex)).toEqual(['female', 'female', 'male', 'male', null]);
  expect(['Prime', 'back-up', 'spare'].map(readRole)).toEqual(['prime', 'backup', null]);
  expect(['ours', 'partner', '?'].map(readTeam)).toEqual(['ours', 'another team', null]);
});

test.each([
  ['8', 'RPE', { kind: 'RPE', value: 8 }],
  ['RPE 8.5', 'repetitions in reserve', { kind: 'RPE', value: 8.5 }],
  ['2 RIR', 'RPE', { kind: 'repetitions in reserve', value: 2 }],
  ['2', 'repetitions in reserve', { kind: 'repetitions in reserve', value: 2 }],
  ['hard', 'RPE', null],
] as const)('an effort of "%s" in a column of %s', (text, column, effort) => {
  expect(readEffort(text, column)).toEqual(effort);
});
