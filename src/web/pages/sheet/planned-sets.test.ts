import { expect, test } from 'vitest';
import type { Effort } from '#domain/effort.ts';
import type { Fact } from '#domain/fact.ts';
import { idOf, instant } from '#domain/identity.ts';
import { day } from '#units/day.ts';
import { doneAsPlanned, startOfDraft } from './planned-sets.ts';
import type { PlannedSet } from './results-draft.ts';

const trained = (...efforts: readonly (Effort | null)[]): Fact<'trained'> => ({
  id: idOf('result'),
  sequence: 7 as Fact['sequence'],
  recordedAt: instant('2027-03-01T08:00:00.000Z'),
  recordedBy: idOf('signer'),
  audience: ['physician'],
  supersedes: null,
  reason: null,
  digest: idOf('digest'),
  kind: 'trained',
  person: idOf('person'),
  day: day(20_000),
  card: idOf('card'),
  sets: efforts.map((effort, place) => ({
    set: idOf(`set ${place}`),
    repetitions: 6,
    load: { text: '270.0', unit: 'lb' },
    effort,
    side: null,
  })),
  pieces: [],
  sessionRpe: 7,
  minutes: null,
});

test('a result that stands comes back as it was typed', () => {
  const draft = startOfDraft(trained({ kind: 'repetitions in reserve', value: 2 }), null);
  expect(draft).toMatchObject({
    effortAs: 'repetitions in reserve',
    sets: { 'set 0': { repetitions: '6', load: '270.0', effort: '2' } },
    sessionRpe: '7',
    minutes: '',
  });
});

test('efforts typed in two ways come back as RPE, missing ones stay empty', () => {
  const draft = startOfDraft(
    trained({ kind: 'repetitions in reserve', value: 2 }, { kind: 'RPE', value: 7.5 }, null),
    null,
  );
  expect(draft.effortAs).toBe('RPE');
  expect(Object.values(draft.sets).map(({ effort }) => effort)).toEqual(['8', '7.5', '']);
});

test('without a result the form is empty and the note is about the item it was opened at', () => {
  expect(startOfDraft(null, 'squat item')).toMatchObject({ sets: {}, effortAs: 'RPE', noteOn: 'squat item' });
});

test('bouts that stand come back as they were typed', () => {
  const piece = {
    item: idOf<'item'>('run item'),
    done: 3,
    minutes: 28,
    watts: null,
    speed: 11.2,
    harness: { text: '118.0', unit: 'lb' as const },
    heartRate: null,
    effort: { kind: 'RPE' as const, value: 8 },
  };
  expect(startOfDraft({ ...trained(), pieces: [piece] }, null).pieces).toEqual({
    'run item': { done: '3', minutes: '28', watts: '', speed: '11.2', harness: '118.0', heartRate: '', effort: '8' },
  });
});

test('as planned fills in how much was done, and leaves what was measured to be typed', () => {
  const draft = startOfDraft(null, null);
  const run = {
    item: idOf<'item'>('run item'),
    name: 'Run',
    kind: 'bouts',
    planned: '',
    of: 4,
    asks: [],
    unit: 'lb',
  } as const;
  expect(doneAsPlanned(draft, [], [run]).pieces).toMatchObject({
    'run item': { done: '4', heartRate: '', effort: '' },
  });
});

test('what the card left open is not filled in as planned', () => {
  const set = (id: string, asks: string): PlannedSet => ({
    id: idOf(id),
    name: 'Back squat',
    item: idOf('squat item'),
    place: 0,
    side: null,
    repetitions: 6,
    asks,
    isOpen: asks !== '6',
    load: '270',
    unit: 'lb',
  });
  const draft = doneAsPlanned(startOfDraft(null, null), [set('plain', '6'), set('range', '6–8')]);
  expect(draft.sets).toEqual({
    plain: { repetitions: '6', load: '270', effort: '' },
    range: { repetitions: '', load: '270', effort: '' },
  });
});
