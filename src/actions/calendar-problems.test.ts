import { expect, test } from 'vitest';
import { addDays } from '#units/day.ts';
import type { FactId } from '#domain/identity.ts';
import { recordFacts, type Recorded } from './record-facts.ts';
import type { Answer } from './answer.ts';
import { LAUNCH, PERSON, startedHouse, type StartedHouse } from './started-house.fixture.ts';

const record = (
  { workplace, signer }: StartedHouse,
  body: object,
  { sure = false, supersedes = null as FactId | null } = {},
) => recordFacts(workplace, signer, [{ body: { person: PERSON, ...body }, supersedes, reason: 'moved', sure }]);

const fieldsOf = (answer: Answer<Recorded>): readonly (string | null)[] =>
  answer.kind === 'refused' ? answer.problems.map(({ field }) => field) : [];

const DAY = addDays(LAUNCH, 40);
const week = (...minutes: readonly number[]) => ({ kind: 'available', from: LAUNCH, until: null, minutes });
const aside = (more: object = {}) => ({
  kind: 'set aside',
  from: DAY,
  until: addDays(DAY, 3),
  what: 'travel',
  minutes: 0,
  text: '',
  ...more,
});
const walk = (day = DAY) => ({ kind: 'space walk', day, text: '' });
const hold = (from = DAY, until: number | null = null) => ({ kind: 'road holds', from, until, text: '' });

test.each([
  week(90, 90, 90, 90, 90, 0, 0),
  week(0, 0, 0, 0, 0, 0, 0),
  aside(),
  aside({ minutes: 45, what: 'blackout' }),
  hold(),
])('%o is recorded', async (body) => {
  expect(fieldsOf(await record(await startedHouse(), body))).toEqual([]);
});

test.each([
  { body: week(90, 90, 90), field: 'entries.0.minutes' },
  { body: week(90, 90, 90, 90, 90, 90, 1441), field: 'entries.0.minutes.6' },
  { body: aside({ until: addDays(DAY, -1) }), field: 'entries.0.until' },
  { body: aside({ from: addDays(DAY, 40_000), until: addDays(DAY, 40_001) }), field: 'entries.0.from' },
  { body: hold(DAY, addDays(DAY, -1)), field: 'entries.0.until' },
  { body: walk(addDays(LAUNCH, -1)), field: 'entries.0.day' },
  { body: walk(addDays(LAUNCH, 170)), field: 'entries.0.day' },
])('what cannot be is refused at $field, whatever is said of it', async ({ body, field }) => {
  expect(fieldsOf(await record(await startedHouse(), body, { sure: true }))).toEqual([field]);
});

test.each([
  { body: week(2, 2.5, 2, 2, 2, 0, 0), field: 'entries.0.minutes.0' },
  { body: week(90, 900, 90, 90, 90, 0, 0), field: 'entries.0.minutes.1' },
  { body: aside({ minutes: 600 }), field: 'entries.0.minutes' },
  { body: aside({ until: addDays(DAY, 200) }), field: 'entries.0.until' },
  { body: walk(), field: 'entries.0.day' },
])('what is unlikely is asked about at $field, and taken where it is right', async ({ body, field }) => {
  const house = await startedHouse();
  expect(fieldsOf(await record(house, body))).toEqual([field]);
  expect((await record(house, body, { sure: true })).kind).toBe('done');
});

test('a space walk is moved by the one that takes its place; a second one on the same day is refused', async () => {
  const house = await startedHouse();
  const first = await record(house, walk(), { sure: true });
  const id = first.kind === 'done' ? (first.facts[0]?.id ?? null) : null;
  expect(fieldsOf(await record(house, walk(), { sure: true }))).toEqual(['entries.0.day']);
  expect((await record(house, walk(addDays(DAY, 5)), { sure: true, supersedes: id })).kind).toBe('done');
  expect((await record(house, walk(), { sure: true })).kind).toBe('done');
});

test('two holds of the road do not lie on one another', async () => {
  const house = await startedHouse();
  await record(house, hold(DAY, addDays(DAY, 10)));
  expect(fieldsOf(await record(house, hold(addDays(DAY, 10))))).toEqual(['entries.0.from']);
  expect((await record(house, hold(addDays(DAY, 11)))).kind).toBe('done');
});
