import { describe, expect, test } from 'vitest';
import { EXERCISES, exerciseId } from '../fixtures/invented-house.ts';
import { exerciseFinder, isHeldInEachHand, likelyFirst } from './exercise-names.ts';
import { meaningOfHeader } from './match-header.ts';

const find = exerciseFinder(EXERCISES);
const lift = (name: string, more: object = {}) => ({
  is: 'lift',
  exercise: exerciseId(name),
  repetitions: null,
  unit: null,
  counted: null,
  side: null,
  ...more,
});

describe('a header of a lift', () => {
  test.each([
    ['Back squat 5RM (lb)', lift('Back squat', { repetitions: 5, unit: 'lb' })],
    ['Bench 1RM kg', lift('Bench press', { repetitions: 1, unit: 'kg' })],
    ['Deadlift 3RM', lift('Deadlift', { repetitions: 3 })],
    ['1-RM BACK  SQUAT [kg]', lift('Back squat', { repetitions: 1, unit: 'kg' })],
    ['squats, back - 5 rep max', lift('Back squat', { repetitions: 5 })],
    ['Dead lift (kgs)', lift('Deadlift', { unit: 'kg' })],
    ['DL x5 lbs', lift('Deadlift', { repetitions: 5, unit: 'lb' })],
    ['BB bench press 3 reps', lift('Bench press', { repetitions: 3 })],
    ['Calf raises 12RM', lift('Heel raise', { repetitions: 12 })],
    ['RDL 5RM', lift('Romanian deadlift', { repetitions: 5 })],
    ['SLS 8RM per leg (kg)', lift('Single-leg squat', { repetitions: 8, unit: 'kg', counted: 'per side' })],
    ['1-leg squat L (kg)', lift('Single-leg squat', { unit: 'kg', side: 'left' })],
    ['Single leg squat right 8RM', lift('Single-leg squat', { repetitions: 8, side: 'right' })],
    ['Bent over row kg/hand', lift('Bent-over row', { unit: 'kg', counted: 'per hand' })],
    ['Back squat total (kg)', lift('Back squat', { unit: 'kg', counted: 'total' })],
    ['Squat max', lift('Back squat')],
  ])('%s', (header, meaning) => {
    expect(meaningOfHeader(header, find)).toEqual(meaning);
  });
});

describe('a header of something else', () => {
  test.each([
    ['Name', { is: 'name' }],
    ['LAST NAME', { is: 'family name' }],
    ['First', { is: 'given name' }],
    ['D.O.B.', { is: 'left out' }],
    ['DOB', { is: 'birth date' }],
    ['Date of test', { is: 'date' }],
    ['BW (kg)', { is: 'body mass', unit: 'kg' }],
    ['Body-weight [lbs]', { is: 'body mass', unit: 'lb' }],
    ['Height', { is: 'stature', unit: null }],
    ['Height in cm', { is: 'stature', unit: 'cm' }],
    ['Stature (m)', { is: 'stature', unit: 'm' }],
    ['Load (kg)', { is: 'load', unit: 'kg', counted: null }],
    ['Weight lifted, lb', { is: 'load', unit: 'lb', counted: null }],
    ['kg', { is: 'load', unit: 'kg', counted: null }],
    ['kg/lb', { is: 'unit' }],
    ['Load (kg or lb)', { is: 'load', unit: null, counted: null }],
    ['Reps', { is: 'repetitions' }],
    ['RIR', { is: 'repetitions in reserve' }],
    ['RPE (1-10)', { is: 'RPE' }],
    ['Sex', { is: 'sex' }],
    ['F/M', { is: 'sex' }],
    ['Training age (years)', { is: 'training age' }],
    ['Launch date', { is: 'launch' }],
    ['Landing', { is: 'landing' }],
    ['Prénom', { is: 'given name' }],
  ])('%s', (header, meaning) => {
    expect(meaningOfHeader(header, find)).toEqual(meaning);
  });
});

test.each([
  'Squat e1RM',
  'Estimated 1RM squat (kg)',
  'Back squat xBW',
  'Back squat %',
  'Squat / BW',
  'Leg press 5RM',
  'DB bench press (kg)',
  'Squat jump',
  'Comments',
  '',
])('"%s" is no test of the catalogue and is left out', (header) => {
  expect(meaningOfHeader(header, find)).toEqual({ is: 'left out' });
});

test('a name that two exercises share names none', () => {
  const [one, other] = EXERCISES;
  if (!one || !other) throw new Error('The fixture has exercises.');
  const ambiguous = exerciseFinder([one, { ...other, alsoKnownAs: ['squat'] }]);
  expect(ambiguous('squat')).toBeNull();
  expect(ambiguous('back squat')).toBe(one.id);
});

test('a list of exercises begins with those that share words', () => {
  expect(likelyFirst(EXERCISES, 'paused back squat')[0]?.name).toBe('Back squat');
});

test('weights held one in each hand are told by their name', () => {
  expect(['DB row', 'Dumbbell press', 'kettlebell squat', 'Back squat', 'Dubbel'].map(isHeldInEachHand)).toEqual([
    true,
    true,
    true,
    false,
    false,
  ]);
});
