import { anyFactBody } from '#contract/facts/any-fact.setup.ts';
import { currentFacts, endOfLog, expectedDigest } from '#domain/log.ts';
import fc from 'fast-check';
import { createHash } from 'node:crypto';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import type { LogStore } from './log-store.ts';
import { MIGRATIONS } from './migrations/migration-list.ts';
import { postgresPlaces, sqlitePlaces, type Place, type PlaceMaker } from './places.setup.ts';
import { NOW, correcting, draft, enter, mustEnter, mustOpen, noting, signing, weighing } from './test-log.setup.ts';

/** The second fact with another content, and with the digest that belongs to it. */
const withContent = (content: string): string =>
  `update log set content = '${content}', digest = '${createHash('sha256').update(content).digest('hex')}' where sequence = 2`;

/** What a log must do wherever it is kept. */
describe.each([
  { on: 'SQLite', placesOn: sqlitePlaces },
  { on: 'PostgreSQL', placesOn: postgresPlaces },
])('a log on $on', ({ placesOn }) => {
  let maker: PlaceMaker;
  let place: Place;
  let store: LogStore;
  beforeAll(() => {
    maker = placesOn();
  });
  beforeEach(async () => {
    place = await maker.make();
    store = await mustOpen(place.open());
  });
  afterAll(() => maker.cleanUp());

  const reopened = async (): Promise<LogStore> => {
    await store.close();
    store = await mustOpen(place.open());
    return store;
  };

  test('a new log is empty and has an identity that stays', async () => {
    const { databaseId } = store;
    expect(store.facts()).toEqual([]);
    expect(databaseId).toMatch(/^[0-9a-f-]{36}$/);
    expect((await reopened()).databaseId).toBe(databaseId);
    expect(store.about).toEqual({ kind: 'own' });
  });

  test('facts get their places, their moment, their audience and their digest', async () => {
    const facts = await mustEnter(store, draft('a', signing), draft('b', weighing(61)));
    expect(facts.map(({ sequence }) => sequence)).toEqual([1, 2]);
    expect(facts.map(({ recordedAt }) => recordedAt)).toEqual([NOW, NOW]);
    expect(facts[1]?.audience).toEqual(['person and specialist', 'physician']);
    expect(facts.map(expectedDigest)).toEqual(facts.map(({ digest }) => digest));
    expect(store.facts()).toEqual(facts);
    expect((await mustEnter(store, draft('c', weighing(62))))[0]?.sequence).toBe(3);
  });

  test('whatever a fact says, it says the same when the log is opened again', async () => {
    let made = 0;
    await fc.assert(
      fc.asyncProperty(fc.array(anyFactBody, { minLength: 1, maxLength: 4 }), async (bodies) => {
        const drafts = bodies
          .filter(({ kind }) => kind !== 'retracted')
          .map((body) => draft(`drawn-${(made += 1)}`, body));
        await mustEnter(store, ...drafts);
      }),
    );
    const before = store.facts();
    expect((await reopened()).facts()).toEqual(before);
    expect(before.length).toBeGreaterThan(100);
  });

  test.each(['it’s "quoted"; drop table log; --', 'two\nlines\r\n\ttab', '🏋🏽‍♀️ ÅØ 太空 עברית', '\uffff\u0001'])(
    'a note keeps its text: %j',
    async (text) => {
      await mustEnter(store, draft('a', noting(text)));
      expect((await reopened()).facts()).toMatchObject([{ text }]);
    },
  );

  test('more facts than fit one statement are one transaction', async () => {
    const drafts = Array.from({ length: 1203 }, (_, place) => draft(`f-${place}`, noting(`note ${place}`)));
    await mustEnter(store, ...drafts);
    expect((await reopened()).facts().map(({ sequence }) => sequence)).toEqual(drafts.map((_, place) => place + 1));
  });

  test('a negative zero is the zero that the file can hold', async () => {
    await mustEnter(store, draft('a', { ...weighing(61), day: -0 } as ReturnType<typeof weighing>));
    const [inMemory] = store.facts();
    expect([inMemory]).toStrictEqual((await reopened()).facts());
  });

  test('nothing is written where one draft of many does not fit, and everything wrong is said', async () => {
    const result = await enter(
      store,
      draft('a', signing),
      draft('b', noting('')),
      correcting('c', 'nobody', weighing(61)),
      draft('a', weighing(62)),
      draft('d', { kind: 'retracted' }),
    );
    expect(result).toMatchObject({
      kind: 'refused',
      problems: [
        { field: 'drafts.1.text' },
        { field: 'drafts.2.supersedes' },
        { field: 'drafts.3.id' },
        { field: 'drafts.4.supersedes' },
      ],
    });
    expect(store.facts()).toEqual([]);
    expect((await reopened()).facts()).toEqual([]);
  });

  test('a transaction may refuse, or write nothing', async () => {
    const problems = [{ what: 'No.', why: 'It is late.', whatToDo: 'Come back.', field: null }];
    expect(await store.transact(() => ({ kind: 'refused', problems }))).toEqual({ kind: 'refused', problems });
    expect(await store.transact(() => ({ kind: 'drafts', drafts: [], result: 7 }))).toEqual({
      kind: 'committed',
      facts: [],
      result: 7,
    });
  });

  test('a transaction that breaks writes nothing and does not hold up the next', async () => {
    const broken = store.transact(() => {
      throw new TypeError('a mistake in the program');
    });
    await expect(broken).rejects.toThrow('a mistake in the program');
    await mustEnter(store, draft('a', signing));
    expect(store.facts()).toHaveLength(1);
  });

  test('transactions started together run one after the other, each seeing the last', async () => {
    const seen = await Promise.all(
      Array.from({ length: 20 }, (_, place) =>
        store.transact((log) => ({
          kind: 'drafts',
          drafts: [draft(`f-${place}`, noting(`saw ${log.length}`))],
          result: endOfLog(log),
        })),
      ),
    );
    expect(seen.map((result) => (result.kind === 'committed' ? result.result : null))).toEqual(
      Array.from({ length: 20 }, (_, place) => place),
    );
  });

  test('what was handed out before does not grow', async () => {
    await mustEnter(store, draft('a', signing));
    const before = store.facts();
    await mustEnter(store, draft('b', weighing(61)));
    expect(before).toHaveLength(1);
  });

  test('the second corrector is told of the first, by name and day', async () => {
    await mustEnter(store, draft('s', signing), draft('a', weighing(16)));
    await mustEnter(store, correcting('b', 'a', weighing(61), 'digits swapped'));
    expect(await enter(store, correcting('c', 'a', weighing(62)))).toEqual({
      kind: 'refused',
      problems: [
        {
          what: 'This fact was already corrected by Ingrid Solberg on 2027-03-01.',
          why: 'Fact 3 stands in its place: "digits swapped".',
          whatToDo: 'Look at fact 3; if that is wrong too, correct that one.',
          field: 'drafts.0.supersedes',
        },
      ],
    });
    await mustEnter(store, correcting('d', 'b', { kind: 'retracted' }, 'not her'));
    expect(currentFacts(store.facts(), endOfLog(store.facts())).map(({ id }) => id)).toEqual(['s']);
  });

  test('of two who correct at once one is told, and within one transaction too', async () => {
    await mustEnter(store, draft('a', weighing(16)));
    const both = await Promise.all([
      enter(store, correcting('b', 'a', weighing(61))),
      enter(store, correcting('c', 'a', weighing(62))),
    ]);
    expect(both.map(({ kind }) => kind)).toEqual(['committed', 'refused']);
    await mustEnter(store, draft('x', weighing(16)));
    const together = await enter(store, correcting('y', 'x', weighing(61)), correcting('z', 'x', weighing(62)));
    expect(together).toMatchObject({ kind: 'refused', problems: [{ field: 'drafts.1.supersedes' }] });
  });

  test('a correction says why', async () => {
    await mustEnter(store, draft('a', weighing(16)));
    const result = await enter(store, correcting('b', 'a', weighing(61), null));
    expect(result).toMatchObject({ kind: 'refused', problems: [{ field: 'drafts.0.reason' }] });
  });

  test.each([
    "update log set reason = 'better' where sequence = 1",
    'delete from log where sequence = 1',
    'delete from log',
    "update about set kind = 'scenario'",
    'delete from about',
  ])('the tables refuse "%s"', async (statement) => {
    await mustEnter(store, draft('a', signing));
    await store.close();
    await expect(place.meddle(statement)).rejects.toThrow('what is written here is never changed');
    store = await mustOpen(place.open());
    expect(store.facts()).toHaveLength(1);
  });

  test.each([1, 3, -1])('the table refuses a fact at place %i after the first', async (sequence) => {
    await mustEnter(store, draft('a', signing));
    await store.close();
    const statement = `insert into log select ${sequence}, 'z', kind, person_id, audience, supersedes, reason,
      recorded_at, recorded_by, content, digest from log where sequence = 1`;
    await expect(place.meddle(statement)).rejects.toThrow('a fact takes the next place in the log');
    store = await mustOpen(place.open());
  });

  test('the table itself refuses a second correction of the same fact', async () => {
    await mustEnter(store, draft('a', weighing(16)));
    await mustEnter(store, correcting('b', 'a', weighing(61)));
    await store.close();
    const statement = `insert into log select 3, 'c', kind, person_id, audience, supersedes, reason, recorded_at,
      recorded_by, content, digest from log where sequence = 2`;
    await expect(place.meddle(statement)).rejects.toThrow(/unique.*supersedes/i);
    store = await mustOpen(place.open());
  });

  test.each([
    { what: 'a content', statement: `update log set content = replace(content, '61', '62') where sequence = 2` },
    { what: 'a content that is no JSON', statement: withContent('x') },
    { what: 'a content that is no record', statement: withContent('7') },
    { what: 'a content that does not fit', statement: withContent('{"kind":"guessed"}') },
    { what: 'a kind', statement: `update log set kind = 'lifted' where sequence = 2` },
    { what: 'a person', statement: `update log set person_id = 'somebody' where sequence = 2` },
    { what: 'an audience', statement: `update log set audience = '["management"]' where sequence = 2` },
    { what: 'a reason', statement: `update log set reason = 'better' where sequence = 2` },
    { what: 'a moment', statement: `update log set recorded_at = '2027-03-02T10:00:00.000Z' where sequence = 2` },
    { what: 'a signer', statement: `update log set recorded_by = 'tomas' where sequence = 2` },
    { what: 'a digest', statement: `update log set digest = '${'0'.repeat(64)}' where sequence = 2` },
    { what: 'an identity', statement: `update log set id = 'other' where sequence = 2` },
    { what: 'a missing fact', statement: `delete from log where sequence = 2` },
  ])('$what changed behind its back is found, with its place', async ({ statement }) => {
    await mustEnter(store, draft('a', signing), draft('b', weighing(61)), draft('c', weighing(62)));
    await store.close();
    await place.meddleUnguarded(statement);
    const result = await place.open();
    expect(result).toMatchObject({
      kind: 'damaged',
      problem: { why: expect.stringContaining('fact 2 (') as string },
    });
    expect(JSON.stringify(result)).not.toContain('fact 1 (');
    expect(JSON.stringify(result)).not.toContain('fact 3 (');
  });

  test('a sound log is called sound', async () => {
    await mustEnter(store, draft('a', signing), draft('b', weighing(61)));
    expect(await store.checkIntegrity()).toEqual({ kind: 'sound', facts: 2 });
  });

  test('a log of a later version is refused, by the names of its steps', async () => {
    await store.close();
    const later = { name: '2031-01-01-later', up: () => Promise.resolve() };
    await (await mustOpen(place.open({ migrations: [...MIGRATIONS, later] }))).close();
    expect(await place.open()).toMatchObject({
      kind: 'newer version',
      problem: { why: expect.stringContaining('2031-01-01-later') as string },
    });
  });

  test('a step that breaks leaves the tables as they were', async () => {
    await mustEnter(store, draft('a', signing));
    await store.close();
    const breaking = {
      name: '2031-01-01-breaks',
      up: async (db: Parameters<(typeof MIGRATIONS)[number]['up']>[0]) => {
        await db.schema.createTable('half').addColumn('one', 'integer').execute();
        throw new Error('the step broke');
      },
    };
    const result = await place.open({ migrations: [...MIGRATIONS, breaking] });
    expect(result).toMatchObject({
      kind: 'damaged',
      problem: { why: expect.stringContaining('the step broke') as string },
    });
    store = await mustOpen(place.open());
    expect(store.facts()).toHaveLength(1);
    await store.close();
    await expect(place.meddle('select * from half')).rejects.toThrow(/half/);
  });

  test('the invented scenario and real people never share a log', async () => {
    await store.close();
    expect(await place.open({ about: 'scenario' })).toMatchObject({ kind: 'other kind' });
  });
});
