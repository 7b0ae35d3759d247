import { expect, test } from 'vitest';
import { idOf } from '#domain/identity.ts';
import { day } from '#units/day.ts';
import {
  readResults,
  type PieceDraft,
  type PlannedPiece,
  type PlannedSet,
  type ResultsDraft,
  type ResultsOf,
} from './results-draft.ts';

const set = (id: string, place: number): PlannedSet => ({
  id: idOf(id),
  name: 'Back squat',
  item: idOf('squat item'),
  place,
  side: null,
  repetitions: 6,
  asks: '6',
  isOpen: false,
  load: '270',
  unit: 'lb',
});

const of: ResultsOf = {
  person: idOf('person'),
  day: day(20_000),
  card: idOf('card'),
  sets: [set('first', 0), set('second', 1)],
  pieces: [],
};

const nothing: ResultsDraft = {
  sets: {},
  pieces: {},
  effortAs: 'RPE',
  hurts: [],
  note: '',
  noteOn: '',
  sessionRpe: '',
  minutes: '',
};

test('sets with repetitions are recorded as typed, the others were not done', () => {
  const reading = readResults(of, {
    ...nothing,
    sets: {
      first: { repetitions: '6', load: '', effort: '7,5' },
      second: { repetitions: '', load: '270', effort: '' },
    },
    sessionRpe: '7',
    minutes: '84',
  });
  expect(reading).toEqual({
    kind: 'bodies',
    trained: {
      kind: 'trained',
      person: 'person',
      day: 20_000,
      card: 'card',
      sets: [
        {
          set: 'first',
          repetitions: 6,
          load: { text: '270', unit: 'lb' },
          effort: { kind: 'RPE', value: 7.5 },
          side: null,
        },
      ],
      pieces: [],
      sessionRpe: 7,
      minutes: 84,
    },
    beside: [],
  });
});

test('effort that was not typed stays missing', () => {
  const reading = readResults(of, { ...nothing, sets: { first: { repetitions: '0', load: '265', effort: '' } } });
  expect(reading).toMatchObject({ trained: { sets: [{ repetitions: 0, load: { text: '265' }, effort: null }] } });
});

test('everything that is wrong is said at once, each at its field', () => {
  const reading = readResults(of, {
    ...nothing,
    sets: {
      first: { repetitions: '5.5', load: 'heavy', effort: '11' },
      second: { repetitions: 'six', load: '', effort: '' },
    },
    hurts: [{ site: '', side: '', score: '3', when: 'during', item: '' }],
    sessionRpe: 'NaN',
    minutes: '-1',
  });
  expect(reading.kind === 'problems' ? reading.problems.map(({ field }) => field) : []).toEqual([
    'set first repetitions',
    'set first effort',
    'set first load',
    'set second repetitions',
    'hurt 0',
    'sessionRpe',
    'minutes',
  ]);
});

test('a note and discomfort can be recorded without sets', () => {
  const reading = readResults(of, {
    ...nothing,
    note: ' strap slipped ',
    noteOn: 'squat item',
    hurts: [{ site: 'shoulder', side: 'left', score: '3', when: 'next morning', item: 'squat item' }],
  });
  expect(reading).toMatchObject({
    trained: null,
    beside: [
      { kind: 'hurt', site: 'shoulder', side: 'left', score: 3, when: 'next morning', item: 'squat item' },
      { kind: 'noted', text: 'strap slipped', item: 'squat item' },
    ],
  });
});

test('nothing typed is nothing to record', () => {
  expect(readResults(of, nothing)).toMatchObject({ kind: 'problems', problems: [{ field: 'sets' }] });
});

const run: PlannedPiece = {
  item: idOf('run item'),
  name: 'Treadmill run',
  kind: 'bouts',
  planned: '4 × 4 min',
  of: 4,
  asks: ['done', 'minutes', 'speed', 'harness', 'heartRate', 'effort'],
  unit: 'lb',
};
const EMPTY: PieceDraft = { done: '', minutes: '', watts: '', speed: '', harness: '', heartRate: '', effort: '' };
const withRun: ResultsOf = { ...of, pieces: [run] };
const typedRun = (more: Partial<PieceDraft>): ResultsDraft => ({
  ...nothing,
  pieces: { 'run item': { ...EMPTY, ...more } },
});

test('what was done of bouts is recorded as typed, the rest stays missing', () => {
  const typed = { done: '4', minutes: '35,5', speed: '11.2', harness: '118', heartRate: '171', effort: '8' };
  expect(readResults(withRun, typedRun(typed))).toMatchObject({
    trained: {
      sets: [],
      pieces: [
        {
          item: 'run item',
          done: 4,
          minutes: 35.5,
          watts: null,
          speed: 11.2,
          harness: { text: '118', unit: 'lb' },
          heartRate: 171,
          effort: { kind: 'RPE', value: 8 },
        },
      ],
    },
  });
});

test('nothing done is a result too, nothing typed is none', () => {
  expect(readResults(withRun, typedRun({ done: '0' }))).toMatchObject({ trained: { pieces: [{ done: 0 }] } });
  expect(readResults(withRun, typedRun({}))).toMatchObject({ kind: 'problems', problems: [{ field: 'sets' }] });
});

test('everything that is wrong with bouts is said at its own field, and that what was done is missing', () => {
  const typed = { minutes: '-3', speed: '1e3', harness: 'a lot', heartRate: '17', effort: '0' };
  const reading = readResults(withRun, typedRun(typed));
  expect(reading.kind === 'problems' ? reading.problems.map(({ field }) => field) : []).toEqual(
    ['done', 'minutes', 'speed', 'harness', 'heartRate', 'effort'].map((field) => `piece run item ${field}`),
  );
});
