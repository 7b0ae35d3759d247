import { expect, test } from 'vitest';
import type { Effort } from '#domain/effort.ts';
import type { Fact } from '#domain/fact.ts';
import { idOf, instant } from '#domain/identity.ts';
import { day } from '#units/day.ts';
import { startOfDraft } from './planned-sets.ts';

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
