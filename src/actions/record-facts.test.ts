import { expect, test } from 'vitest';
import { addDays } from '#units/day.ts';
import { idOf, type FactId } from '#domain/identity.ts';
import { recordFacts, type Recorded } from './record-facts.ts';
import type { Answer } from './answer.ts';
import { retractFact } from './retract-fact.ts';
import { LAUNCH, OTHER, PERSON, startedHouse, type StartedHouse } from './started-house.fixture.ts';

const squat = (more: object = {}) => ({
  kind: 'lifted',
  person: PERSON,
  day: addDays(LAUNCH, -10),
  exercise: 'back-squat',
  machine: 'ground-free-bar',
  load: { text: '100', unit: 'kg' },
  repetitions: 5,
  effort: null,
  side: null,
  ...more,
});

const record = (
  { workplace, signer }: StartedHouse,
  body: object,
  supersedes: FactId | null = null,
  reason = 'mistyped',
) => recordFacts(workplace, signer, [{ body, supersedes, reason }]);

const fieldsOf = (answer: Answer<Recorded>): readonly (string | null)[] =>
  answer.kind === 'refused' ? answer.problems.map(({ field }) => field) : [];

test.each([
  { body: squat({ exercise: 'hop' }), field: 'entries.0.exercise' },
  { body: squat({ machine: 'wall' }), field: 'entries.0.machine' },
  { body: squat({ person: 'nobody' }), field: 'entries.0.person' },
  { body: squat({ day: addDays(LAUNCH, 1) }), field: 'entries.0.day' },
  { body: squat({ load: { text: 'NaN', unit: 'kg' } }), field: 'entries.0.load.text' },
  { body: { kind: 'retracted' }, field: 'entries.0.kind' },
  { body: { kind: 'read', person: PERSON, note: 'none' }, field: 'entries.0.note' },
  {
    body: { kind: 'missed', person: PERSON, day: addDays(LAUNCH, -3), card: 'none' },
    field: 'entries.0.card',
  },
])('an entry is refused at $field, and nothing is written', async ({ body, field }) => {
  const house = await startedHouse();
  const before = house.snapshot().upTo;
  expect(fieldsOf(await record(house, body))).toContain(field);
  expect(house.snapshot().upTo).toBe(before);
});

test('all problems of all entries come at once', async () => {
  const house = await startedHouse();
  const answer = await recordFacts(house.workplace, house.signer, [
    { body: squat({ exercise: 'hop', machine: 'wall' }), supersedes: null, reason: null },
    { body: squat({ person: 'nobody' }), supersedes: null, reason: null },
  ]);
  expect(fieldsOf(answer)).toEqual(['entries.0.exercise', 'entries.0.machine', 'entries.1.person']);
});

test('a correction is of the same kind and person, has a reason, and is made once', async () => {
  const house = await startedHouse();
  const first = await record(house, squat());
  const id = first.kind === 'done' ? (first.facts[0]?.id ?? null) : null;
  expect(fieldsOf(await record(house, squat({ person: OTHER }), id))).toEqual(['entries.0.supersedes']);
  expect(fieldsOf(await record(house, squat(), id, ' '))).toEqual(['entries.0.reason']);
  expect((await record(house, squat({ repetitions: 4 }), id)).kind).toBe('done');
  expect(fieldsOf(await record(house, squat({ repetitions: 3 }), id))).toEqual(['entries.0.supersedes']);
});

test('a test that is taken back stays in the log and counts no more', async () => {
  const house = await startedHouse();
  const first = await record(house, squat());
  const fact: FactId = first.kind === 'done' && first.facts[0] ? first.facts[0].id : idOf('none');
  const { workplace, signer } = house;
  expect((await retractFact(workplace, { signer, fact, reason: '' })).kind).toBe('refused');
  expect((await retractFact(workplace, { signer, fact, reason: 'of somebody else' })).kind).toBe('done');
  expect(workplace.store.facts().some(({ id }) => id === fact)).toBe(true);
  expect(
    house
      .snapshot()
      .known(PERSON)
      ?.facts.some(({ id }) => id === fact),
  ).toBe(false);
});

test('a machine that would count its loads otherwise is refused: it is another machine', async () => {
  const house = await startedHouse();
  const machine = house.snapshot().house.machines.get(idOf('resistive-machine'));
  const again = (change: object) =>
    record(house, { kind: 'catalogued', entry: { kind: 'machine', machine: { ...machine, ...change } } });
  expect(fieldsOf(await again({ increment: '2' }))).toEqual(['entries.0.entry.machine.increment']);
  expect((await again({ name: 'Resistive machine, aft' })).kind).toBe('done');
});
