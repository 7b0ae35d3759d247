import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { SHIPPED_EXERCISES } from '#shipped/exercises/shipped-exercises.ts';
import { anyCharacter } from '#units/any-character.setup.ts';
import type { Exercise } from '../catalogue.ts';
import { idOf } from '../identity.ts';
import type { DrillItem, LiftItem, ProgrammeItem } from '../programme.ts';
import { anyBouts, anyDrill, anyLift } from './any-item.setup.ts';
import { exerciseOfLine, exercisesFor } from './exercise-of-line.ts';
import type { PlaceOfItem } from './new-item.ts';
import { readLine } from './read-line.ts';
import { writeLine } from './write-line.ts';

const named = (name: string): Exercise => {
  const found = SHIPPED_EXERCISES.find((each) => each.name === name);
  if (!found) throw new Error(`No exercise is called ${name}.`);
  return found;
};

const PEDALLING: Exercise = {
  ...named('Back squat'),
  id: idOf('pedalling'),
  name: 'Pedalling',
  alsoKnownAs: [],
  machineKinds: ['cycle'],
};
const HANG: Exercise = {
  ...named('Back squat'),
  id: idOf('long-hang'),
  name: 'Long hang',
  alsoKnownAs: [],
  machineKinds: ['hanging bar'],
};
const LEG_HANG: Exercise = { ...HANG, id: idOf('leg-hang'), name: 'Leg hang', perSide: true };
const EXERCISES = [...SHIPPED_EXERCISES, PEDALLING, HANG, LEG_HANG];

const PLACE: PlaceOfItem = {
  newId: (exercise) => idOf(`${exercise.id}-new`),
  trackFor: (exercise) => idOf(`${exercise.name} track`),
  isLed: () => false,
  machineKinds: ['free bar'],
  lowestPriority: 7,
};

const read = (line: string, before: ProgrammeItem | null = null) =>
  readLine(line, { exercises: EXERCISES, before, place: PLACE });
const itemOf = (line: string, before: ProgrammeItem | null = null): ProgrammeItem => {
  const reading = read(line, before);
  if (reading.kind === 'item') return reading.item;
  throw new Error(`${line}: ${reading.problems.map(({ says }) => says).join(' ')}`);
};
const liftOf = (line: string, before: ProgrammeItem | null = null): LiftItem => {
  const item = itemOf(line, before);
  if (item.kind !== 'lift') throw new Error(`${line} is no lift.`);
  return item;
};
const says = (line: string, before: ProgrammeItem | null = null): string => {
  const reading = read(line, before);
  return reading.kind === 'problems' ? reading.problems.map((problem) => problem.says).join(' ') : '';
};
const shown = (item: ProgrammeItem): string =>
  writeLine(
    item,
    EXERCISES.find(({ id }) => id === item.exercise),
  );

const anyItem: fc.Arbitrary<readonly [ProgrammeItem, ProgrammeItem]> = fc.oneof(
  ...[named('Back squat'), named('Single-leg squat')].map((lift) => fc.tuple(anyLift(lift), anyLift(lift))),
  fc.tuple(anyBouts(PEDALLING), anyBouts(PEDALLING)),
  ...[HANG, LEG_HANG].map((drill) => fc.tuple(anyDrill(drill), anyDrill(drill))),
);

/** What the line itself says of an item; the rest stands beside it. */
const saidByLine = (item: ProgrammeItem): unknown => {
  switch (item.kind) {
    case 'lift':
      return [item.sets, item.tempo, item.superset];
    case 'bouts':
      return item.bouts;
    case 'drill':
      return [item.sets, item.target];
  }
};

describe('laws', () => {
  test('an item that is written and read where it stands is the same item', () => {
    fc.assert(
      fc.property(anyItem, ([item]) => {
        expect(itemOf(shown(item), item)).toEqual(item);
      }),
    );
  });

  test('what a line says does not hang on what stood there before, and what it does not say stays', () => {
    fc.assert(
      fc.property(anyItem, ([item, before]) => {
        const read = itemOf(shown(item), before);
        expect(shown(read)).toBe(shown(item));
        expect(saidByLine(read)).toEqual(saidByLine(item));
        const { id, track, machineKind, condition, priority, source } = before;
        expect(read).toMatchObject({ id, track, machineKind, condition, priority, source });
      }),
    );
  });

  test('a line on an empty cell makes an item that is written the same way', () => {
    fc.assert(
      fc.property(anyItem, ([item]) => {
        expect(shown(itemOf(shown(item)))).toBe(shown(item));
      }),
    );
  });

  test('whatever is typed is read, or refused at a place inside the cell', () => {
    const piece = fc.constantFrom(
      'Back squat',
      'Long hang',
      'pedalling',
      ' ',
      '4',
      '×',
      '6',
      '@',
      '80 %',
      'RPE 7',
      ',',
      'rest 1:00',
      '7 s on',
      '3 s off',
      '−10 %',
      'w ',
      'A: ',
      '<b>',
      '\u0000',
      '/side',
      '30 min',
    );
    fc.assert(
      fc.property(
        fc.array(fc.oneof(piece, fc.string({ maxLength: 3, unit: anyCharacter })), { maxLength: 10 }),
        (pieces) => {
          const line = pieces.join(' ');
          const reading = read(line);
          if (reading.kind === 'item')
            expect(shown(itemOf(shown(reading.item), reading.item))).toBe(shown(reading.item));
          else
            for (const { from, to, says: sentence } of reading.problems) {
              expect(from).toBeGreaterThanOrEqual(0);
              expect(to).toBeLessThanOrEqual(Math.max(1, line.length));
              expect(sentence.length).toBeGreaterThan(10);
            }
        },
      ),
    );
  });
});

test.each([
  ['back squat 4x6@80%, rest 150', 'Back squat 4 × 6 @ 80 %, rest 2:30'],
  ['BACK SQUAT: 3 × 10 @ RPE 7', 'Back squat 3 × 10 @ RPE 7, rest 2:00'],
  ['Back squat – 5 × 5 @ 2 RIR, rest 3 min', 'Back squat 5 × 5 @ 2 RIR, rest 3:00'],
  ['Back squat top 6 @ 80 % then 2 × 8 −10 %, rest 2:00', 'Back squat top 6 @ 80 % then 2 × 8 −10 %, rest 2:00'],
  ['Back squat 6 @ 80 %, 2 × 8 @ 72 %', 'Back squat top 6 @ 80 % then 2 × 8 −10 %, rest 2:00'],
  ['Back squat 3 × 5 @ 100 kg', 'Back squat 3 × 5 @ 100 kg, rest 2:00'],
  ['Back squat 3–4 × 6–8 @ 2 RIR', 'Back squat 3–4 × 6–8 @ 2 RIR, rest 2:00'],
  ['back squat 6, 6, 6+', 'Back squat 6, 6, 6+, rest 2:00'],
  ['back squat 2x6, 6+', 'Back squat 6, 6, 6+, rest 2:00'],
  ['back squat 6, 6, 6+ @ 80%', 'Back squat 6, 6, 6+ @ 80 %, rest 2:00'],
  ['back squat 6 @ 80%, 6, 6+', 'Back squat 6, 6, 6+ @ 80 %, rest 2:00'],
  ['back squat 8, 6, 4 @ RPE 8', 'Back squat 8, 6, 4 @ RPE 8, rest 2:00'],
  ['back squat 2 × 8, 3 × 5 @ 70 %', 'Back squat 2 × 8 @ 70 %, 3 × 5, rest 2:00'],
  ['back squat 6, 6, 6+ @ 100 kg', 'Back squat 100 kg × 6, 6, 6+, rest 2:00'],
  ['back squat 4x6+', 'Back squat 4 × 6+, rest 2:00'],
  ['back squat 3 × 10, tempo 3-1-1', 'Back squat 3 × 10, tempo 3-1-1, rest 2:00'],
  ['a: back squat 3 × 10, rest 90', 'A: Back squat 3 × 10, rest 1:30'],
  ['Back squat B2: 3 × 10, rest 90', 'B2: Back squat 3 × 10, rest 1:30'],
  [
    'A1: Back squat top 6–8 @ 80 % then 2–3 × 8 −10 %, tempo 4-0-1, rest 2:00',
    'A1: Back squat top 6–8 @ 80 % then 2–3 × 8 −10 %, tempo 4-0-1, rest 2:00',
  ],
  ['single leg squat 3 × 8', 'Single-leg squat 3 × 8/side, rest 2:00'],
  ['Pedalling 4 × 4 min @ 90 % HRR, 3 min easy', 'Pedalling 4 × 4 min @ 90 % HRR, 3 min easy'],
  ['pedalling 30 min @ 130 W', 'Pedalling 30 min @ 130 W'],
  [
    'pedalling 2 min @ 70% VO2max, 2 min easy THEN 2x2 min @ 80 % VO2max',
    'Pedalling 2 min @ 70 % VO2max, 2 min easy then 2 × 2 min @ 80 % VO2max',
  ],
  ['long hang 3 × 30 s', 'Long hang 3 × 30 s'],
  ['long hang 3 × 20-30 s, rest 60', 'Long hang 3 × 20–30 s, rest 1:00'],
  ['long hang 3 × 8–12', 'Long hang 3 × 8–12'],
  ['long hang 2 × 90 s, rest 1:30', 'Long hang 2 × 90 s, rest 1:30'],
  ['long hang 3 x 6 x 7 s on 3 s off @ 40% CF', 'Long hang 3 × 6 × 7 s on, 3 s off @ 40 % critical force'],
  [
    'long hang 5 × 8 × 7 s/3 s @ 100 % CF, rest 150',
    'Long hang 5 × 8 × 7 s on, 3 s off @ 100 % critical force, rest 2:30',
  ],
  ['long hang 5x8x7s/3s', 'Long hang 5 × 8 × 7 s on, 3 s off'],
  ['long hang 3 × 5 s @ 80 % grip, rest 60', 'Long hang 3 × 5 s @ 80 % greatest grip, rest 1:00'],
])('%s stands as %s', (typed, written) => {
  expect(shown(itemOf(typed))).toBe(written);
});

test.each([
  ['', /No exercise is named/],
  ['4 × 6 @ 80 %', /No exercise is named/],
  ['back sqat 4 × 6', /“back sqat” is no exercise/],
  ['Back squat', /stops too early/],
  ['Back squat 4 × 6 @ 80', /say what 80 is/],
  ['Back squat 4 × 6 @ 75–80 %', /one load/],
  ['Back squat 225 × 5 @ RPE 8', /kg or lb/],
  ['Back squat 6, 6, 3 @ 110 kg', /measured from the first/],
  ['Back squat w 2–3 × 5, 4 × 6', /warm-up says one number/],
  ['A: Long hang 3 × 30 s', /Supersets are of lifts/],
  ['Long hang 3–4 × 8–12', /one number of sets/],
  ['Long hang 3 × 8+', /does not go on/],
  ['Long hang 3 × 6 × 5–7 s on, 3 s off', /pulses say one number/],
  ['Long hang 3 × 10, tempo 3-1-1', /a tempo is of lifts/],
  ['A: Back sqat 3 × 10', /“Back sqat” is no exercise/],
  ['Back squat 3 × 8/side', /has no sides/],
  ['Back squat 30 min @ 130 W', /done in sets/],
  ['Pedalling 3 × 10 @ 80 %', /done in bouts/],
  ['Long hang 3 × 6 × 7 s on @ 40 % grip', /how long the rest between/],
  ['Long hang 3 × 6 × 7 s/3 @ 40 % grip', /rest after the stroke/],
  ['Back squat 6 @ 70 % then 2 × 3 @ 80 %', /heaviest set first/],
  ['Back squat w 5 @ 50 %', /no warm-up/],
  ['Long hang 3 × 5 @ 80 %', /No machine loads long hang/],
])('“%s” is refused in a sentence', (typed, sentence) => {
  expect(says(typed)).toMatch(sentence);
});

test('a problem stands where it was typed, behind the name', () => {
  expect(read('A: Back squat 4 × 6 & 3')).toMatchObject({ kind: 'problems', problems: [{ from: 20, to: 21 }] });
  expect(read('Back squat 4 × 6 & 3')).toMatchObject({ kind: 'problems', problems: [{ from: 17, to: 18 }] });
});

test('a percentage says where a lift starts that goes on from its last load, and the load each time elsewhere', () => {
  const started = liftOf('Back squat 4 × 6');
  expect(started.basis).toEqual({ kind: 'from last', start: 'effort', rule: { add: { kg: '2.5', lb: '5' } } });
  expect(liftOf('Back squat 4 × 6 @ 78 %', started).basis).toEqual({ ...started.basis, start: 0.78 });
  expect(liftOf('Back squat 4 × 6 @ 78 %').basis).toEqual({ kind: 'fraction', of: 0.78 });
});

test('a new target takes the reserve and the band with it, unless the band was set apart', () => {
  const before = { ...liftOf('Back squat 4 × 6 @ 78 %'), reserve: 2, shouldFeel: [7, 8] as const };
  expect(liftOf('Back squat 5 × 5 @ 80 %', before)).toMatchObject({ reserve: 2, shouldFeel: [7, 8] });
  expect(liftOf('Back squat 5 × 5 @ RPE 9', before)).toMatchObject({ reserve: null, shouldFeel: [9, 9] });
  const apart = { ...liftOf('Back squat 3 × 8 @ RPE 7'), shouldFeel: [5, 6] as const };
  expect(liftOf('Back squat 3 × 8 @ RPE 8', apart).shouldFeel).toEqual([5, 6]);
});

test('warm-ups are read from the line and stand beside it', () => {
  const item = liftOf('Back squat w 5 @ 40 %, w 3 @ 60 %, 4 × 6 @ 80 %');
  expect(item.warmUps).toEqual([
    { of: 0.5, repetitions: 5 },
    { of: 0.75, repetitions: 3 },
  ]);
  expect(liftOf('Back squat 5 × 5 @ 80 %', item).warmUps).toEqual(item.warmUps);
});

test('rests that differ stay while the line does not change them', () => {
  const item = {
    ...liftOf('Back squat 2 × 6 @ 80 %'),
    sets: [
      { repetitions: 6, rest: 150 },
      { repetitions: 6, rest: 60 },
    ],
  };
  expect(liftOf('Back squat 2 × 6 @ 82 %, rest 2:30', item).sets).toEqual(item.sets);
  expect(liftOf('Back squat 2 × 6 @ 82 %, rest 3:00', item).sets.map(({ rest }) => rest)).toEqual([180, 180]);
});

test('a drill that names no rest has none', () => {
  const item = itemOf('Long hang 3 × 30 s, rest 1:00');
  const without = itemOf('Long hang 3 × 30 s', item) as DrillItem;
  expect(without.sets.map(({ rest }) => rest)).toEqual([0, 0, 0]);
});

test('another exercise is another item on a track of its own; what does not hang on it stays', () => {
  const squat = {
    ...liftOf('Back squat 4 × 6 @ 80 %'),
    id: idOf<'item'>('squat'),
    priority: 2,
    source: 'common practice',
  };
  expect(liftOf('Deadlift 4 × 6 @ 80 %', squat)).toMatchObject({
    id: 'deadlift-new',
    track: 'Deadlift track',
    priority: 2,
    source: '',
  });
});

test('half a minute is a bout on what is ridden, and a hold elsewhere', () => {
  expect(itemOf('Pedalling 8 × 30 s @ RPE 9, 15 s rest')).toMatchObject({ kind: 'bouts', bouts: { length: 8 } });
  expect(itemOf('Long hang 8 × 30 s @ RPE 9, 15 s rest')).toMatchObject({ kind: 'drill', shouldFeel: [9, 9] });
});

test('names are found by other spellings, the longest first, and completed from their beginning', () => {
  expect(exerciseOfLine('pull down 3 × 10', EXERCISES)?.exercise.name).toBe('Pull-down');
  expect(exerciseOfLine('back squats', EXERCISES)?.exercise.name ?? 'none').toMatch(/Back squat|none/);
  expect(exerciseOfLine('front squat 3 × 5', EXERCISES)?.exercise.name).toBe('Front squat');
  expect(exercisesFor('back', EXERCISES)[0]?.name).toBe('Back squat');
  expect(exercisesFor('squat', EXERCISES).map(({ name }) => name)).toContain('Back squat');
  expect(exercisesFor('', EXERCISES)).toEqual([]);
});
