import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { BoutIntensity, Prescription, SetGroup, SetIntensity, Span, Tempo } from '../prescription.ts';
import { readShorthand } from './read-shorthand.ts';
import { writeShorthand } from './write-shorthand.ts';

const read = (line: string): Prescription => {
  const reading = readShorthand(line);
  if (reading.kind === 'problems') throw new Error(`${line}: ${reading.problems.map(({ says }) => says).join(' ')}`);
  return reading.prescription;
};
const problemsOf = (line: string): readonly string[] => {
  const reading = readShorthand(line);
  return reading.kind === 'problems' ? reading.problems.map(({ says }) => says) : [];
};

const HOUSE_SPELLING: readonly (readonly [typed: string, written: string])[] = [
  ['4 × 6 @ 80 %, rest 2:30', '4 × 6 @ 80 %, rest 2:30'],
  ['4x6@80%, rest 150', '4 × 6 @ 80 %, rest 2:30'],
  ['4 X 6 @ 80 %, 150 s rest', '4 × 6 @ 80 %, rest 2:30'],
  ['3–4 × 6–8 @ 2 RIR', '3–4 × 6–8 @ 2 RIR'],
  ['3-4 * 6-8 @ 2 in reserve', '3–4 × 6–8 @ 2 RIR'],
  ['6, 6, 6+', '6, 6, 6+'],
  ['6, 5, rest 2:00', '6, 5, rest 2:00'],
  ['top 6 then 2 × 8 −10 %', 'top 6 then 2 × 8 −10 %'],
  ['top 6 @ RPE 8 then 2x8 -10%', 'top 6 @ RPE 8 then 2 × 8 −10 %'],
  ['3 × 8/side', '3 × 8/side'],
  ['3x8 / leg', '3 × 8/side'],
  ['3 × 10, tempo 3-1-1', '3 × 10, tempo 3-1-1'],
  ['225x5@8', '225 × 5 @ RPE 8'],
  ['102.5 kg x 3', '102.5 kg × 3'],
  ['4 × 6 @ 100 kg', '4 × 6 @ 100 kg'],
  ['w 2 × 5 @ 60 %, 4 × 6 @ 80 %', 'w 2 × 5 @ 60 %, 4 × 6 @ 80 %'],
  ['warm-up 6 @ 50 %, 3 × 10 @ RPE 6-7', 'w 6 @ 50 %, 3 × 10 @ RPE 6–7'],
  ['A1: 3 × 10 @ RPE 7, rest 1:00', 'A1: 3 × 10 @ RPE 7, rest 1:00'],
  ['3 × 30 s', '3 × 30 s'],
  ['3 × 20–30 s/side, rest 60', '3 × 20–30 s/side, rest 1:00'],
  ['4 × 4 min @ 90 % HRR, 3 min easy', '4 × 4 min @ 90 % HRR, 3 min easy'],
  ['30 min @ 130 W', '30 min @ 130 W'],
  ['30 min @ 60-70% HRR', '30 min @ 60–70 % HRR'],
  ['8 x 30 s @ all-out, 15 s rest', '8 × 30 s @ all-out, 15 s easy'],
  ['6 × 2 min @ 90 % VO2max, 2 min easy', '6 × 2 min @ 90 % VO2max, 2 min easy'],
  ['20 min @ 75 % HRmax', '20 min @ 75 % HRmax'],
  ['45 min @ RPE 4', '45 min @ RPE 4'],
];

test.each(HOUSE_SPELLING)('%s is written %s', (typed, written) => {
  expect(writeShorthand(read(typed))).toBe(written);
  expect(read(written)).toEqual(read(typed));
});

test('the parts of a line stand where they belong', () => {
  expect(read('w 2 × 5 @ 60 %, 3–4 × 6–8/side @ 2 RIR, tempo 3-1-1, rest 2:30')).toEqual({
    kind: 'sets',
    superset: null,
    groups: [
      {
        warmUp: true,
        top: false,
        sets: { least: 2, most: 2 },
        each: { kind: 'repetitions', count: { least: 5, most: 5 }, orMore: false },
        perSide: false,
        load: null,
        intensity: { kind: 'of maximum', of: { least: 0.6, most: 0.6 } },
      },
      {
        warmUp: false,
        top: false,
        sets: { least: 3, most: 4 },
        each: { kind: 'repetitions', count: { least: 6, most: 8 }, orMore: false },
        perSide: true,
        load: null,
        intensity: { kind: 'in reserve', repetitions: { least: 2, most: 2 } },
      },
    ],
    tempo: [3, 1, 1],
    rest: 150,
  });
  expect(read('4 × 4 min @ 90 % HRR, 3 min easy')).toEqual({
    kind: 'bouts',
    repeats: { least: 4, most: 4 },
    seconds: 240,
    intensity: { kind: 'of heart-rate reserve', of: { least: 0.9, most: 0.9 } },
    easy: 180,
  });
});

const REFUSED: readonly (readonly [typed: string, says: RegExp])[] = [
  ['', /stops too early: write sets and repetitions/],
  ['4 ×', /stops too early: write how many repetitions/],
  ['4 × 6 @', /stops too early: write a target/],
  ['4 × 6 @ 80', /say what 80 is/],
  ['4 × 6 @ 130 %', /fraction of the maximum lies between 0.05 and 1.2; this is 1.3/],
  ['40 × 6 kg', /not understood here: after the sets/],
  ['0 × 6', /number of sets lies between 1 and 20/],
  ['4 × 8–6', /write the smaller number first/],
  ['4 × 6.5', /repetitions is a whole number/],
  ['4 × 6, rest 2:75', /two digits after the colon/],
  ['4 × 6 @ 80 %, tempo 3', /write a tempo as three counts/],
  ['4 × 6 −10 %', /first set has nothing to come off/],
  ['squat 4 × 6', /“squat” is not understood here/],
  ['4 × 6 @ 130 W', /say how long a bout is/],
  ['4 × 4 min @ 80 %', /a bout is set by HRR/],
  ['225 × 5 @ 80 kg', /already begins with a load/],
  ['4 × 6 & 3', /“&” is not understood here/],
  ['3 × 8/knee', /after the stroke write side/],
  ['-5 × 3', /not understood here/],
  ['1e9 × 3', /not understood here/],
];

test.each(REFUSED)('“%s” is refused in a sentence', (typed, says) => {
  expect(problemsOf(typed).join(' ')).toMatch(says);
});

test('a problem stands where it was typed', () => {
  const reading = readShorthand('4 × 6 @ 80');
  expect(reading).toMatchObject({ kind: 'problems', problems: [{ from: 10, to: 10 }] });
  expect(readShorthand('4 × 6 & 3')).toMatchObject({ kind: 'problems', problems: [{ from: 6, to: 7 }] });
});

test('all numbers out of bounds are told at once', () => {
  expect(problemsOf('20 × 600 @ RPE 17, rest 1')).toHaveLength(3);
});

// Laws

const whole = (min: number, max: number): fc.Arbitrary<Span> =>
  fc
    .tuple(fc.integer({ min, max }), fc.integer({ min, max }))
    .map(([a, b]) => ({ least: Math.min(a, b), most: Math.max(a, b) }));
const percent = (min: number, max: number): fc.Arbitrary<Span> =>
  whole(min, max).map(({ least, most }) => ({ least: least / 100, most: most / 100 }));
const rating = fc.tuple(whole(2, 20)).map(([{ least, most }]) => ({ least: least / 2, most: most / 2 }));

const setIntensity: fc.Arbitrary<SetIntensity | null> = fc.oneof(
  fc.constant(null),
  percent(5, 120).map((of) => ({ kind: 'of maximum' as const, of })),
  whole(0, 10).map((repetitions) => ({ kind: 'in reserve' as const, repetitions })),
  rating.map((value) => ({ kind: 'RPE' as const, rating: value })),
);
const load = fc.record({
  text: fc.oneof(
    fc.integer({ min: 0, max: 600 }).map(String),
    fc.integer({ min: 0, max: 1200 }).map((half) => (half / 2).toFixed(1)),
  ),
  unit: fc.constantFrom('kg' as const, 'lb' as const),
});
const each: fc.Arbitrary<SetGroup['each']> = fc.oneof(
  fc.record({ kind: fc.constant('repetitions' as const), count: whole(1, 100), orMore: fc.boolean() }),
  whole(1, 60).map((seconds) => ({ kind: 'hold' as const, seconds })),
);
const group: fc.Arbitrary<SetGroup> = fc
  .record({
    warmUp: fc.boolean(),
    top: fc.boolean(),
    sets: whole(1, 20),
    each,
    perSide: fc.boolean(),
    loaded: fc.oneof({ weight: 3, arbitrary: fc.constant(null) }, { weight: 1, arbitrary: load }),
    intensity: setIntensity,
  })
  .map(({ loaded, ...rest }) => ({
    ...rest,
    sets: rest.top ? { least: 1, most: 1 } : rest.sets,
    load: loaded,
    intensity: loaded ? null : rest.intensity,
  }));
const sets: fc.Arbitrary<Prescription> = fc.record({
  kind: fc.constant('sets' as const),
  superset: fc.constantFrom(null, 'A', 'B2'),
  groups: fc.array(group, { minLength: 1, maxLength: 4 }),
  tempo: fc.option<Tempo>(fc.tuple(fc.nat(20), fc.nat(20), fc.nat(20))),
  rest: fc.option<number>(fc.integer({ min: 5, max: 1800 })),
});
const boutIntensity: fc.Arbitrary<BoutIntensity | null> = fc.oneof(
  fc.constant(null),
  percent(10, 120).map((of) => ({ kind: 'of heart-rate reserve' as const, of })),
  percent(10, 120).map((of) => ({ kind: 'of greatest heart rate' as const, of })),
  percent(10, 120).map((of) => ({ kind: 'of greatest uptake' as const, of })),
  whole(10, 1000).map((watts) => ({ kind: 'watts' as const, watts })),
  rating.map((value) => ({ kind: 'RPE' as const, rating: value })),
  fc.constant({ kind: 'all-out' as const }),
);
const bouts: fc.Arbitrary<Prescription> = fc.record({
  kind: fc.constant('bouts' as const),
  repeats: whole(1, 20),
  // Up to a minute without a target of endurance is a hold.
  seconds: fc.integer({ min: 61, max: 4 * 3600 }),
  intensity: boutIntensity,
  easy: fc.option<number>(fc.integer({ min: 5, max: 3600 })),
});

test('what is written reads back to itself', () => {
  fc.assert(
    fc.property(fc.oneof(sets, bouts), (prescription) => {
      expect(read(writeShorthand(prescription))).toEqual(prescription);
    }),
  );
});

test('whatever is typed is read or refused at a place inside the line', () => {
  const letters = fc.constantFrom(
    ...'0123456789x×@%-–−+,/: wWkgbminserporPE'.split(''),
    ' ',
    'rest ',
    'then ',
    'top ',
    ' RIR',
    '@ 80 %',
  );
  fc.assert(
    fc.property(fc.array(letters, { maxLength: 25 }), (typed) => {
      const line = typed.join('');
      const reading = readShorthand(line);
      if (reading.kind === 'prescription')
        expect(read(writeShorthand(reading.prescription))).toEqual(reading.prescription);
      else
        for (const { from, to, says } of reading.problems) {
          expect(from).toBeGreaterThanOrEqual(0);
          expect(to).toBeLessThanOrEqual(line.length);
          expect(says.length).toBeGreaterThan(10);
        }
    }),
  );
});
