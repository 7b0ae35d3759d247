import { DatabaseSync } from '@photostructure/sqlite';
import { sql } from 'kysely';
import {
  existsSync,
  mkdtempSync,
  readFileSync,
  readdirSync,
  rmSync,
  statSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { MIGRATIONS } from './migrations/migration-list.ts';
import { openLogStore } from './open-log-store.ts';
import { sqlitePlace } from './places.setup.ts';
import { openSqlite } from './sqlite-engine.ts';
import { draft, enter, mustEnter, mustOpen, noting, signing, testClock, weighing } from './test-log.setup.ts';
import { verifyCopy } from './verify-copy.ts';

let folder = '';
let path = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'ballast-'));
  path = join(folder, 'kept', 'ballast.sqlite');
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const open = (file = path) => openLogStore({ file: { path: file }, clock: testClock, about: 'own' });
const modeOf = (file: string): string => (statSync(file).mode & 0o777).toString(8);

test('folder, file and journal are for the owner alone', async () => {
  const store = await mustOpen(open());
  await mustEnter(store, draft('a', signing));
  expect(modeOf(join(folder, 'kept'))).toBe('700');
  expect(readdirSync(join(folder, 'kept')).map((name) => modeOf(join(folder, 'kept', name)))).toEqual(['600', '600']);
  await store.close();
});

test('a closed log is one file, and the next one may open it at once', async () => {
  for (const id of ['a', 'b', 'c']) {
    const store = await mustOpen(open());
    await mustEnter(store, draft(id, noting(id)));
    await store.close();
    expect(readdirSync(join(folder, 'kept'))).toEqual(['ballast.sqlite']);
  }
});

test('whoever finds rights of others on the file takes them away', async () => {
  await (await mustOpen(open())).close();
  writeFileSync(join(folder, 'wide.sqlite'), '', { mode: 0o644 });
  await (await mustOpen(open(join(folder, 'wide.sqlite')))).close();
  expect(modeOf(join(folder, 'wide.sqlite'))).toBe('600');
});

test('an open log is opened by nobody else, before and after its first fact, and stays whole', async () => {
  const store = await mustOpen(open());
  expect(await open()).toMatchObject({ kind: 'locked' });
  await mustEnter(store, draft('a', signing));
  expect(await open()).toMatchObject({ kind: 'locked', problem: { what: `${path} is in use.` } });
  await mustEnter(store, draft('b', weighing(61)));
  expect(await store.checkIntegrity()).toEqual({ kind: 'sound', facts: 2 });
  await store.close();
  const again = await mustOpen(open());
  expect(await open()).toMatchObject({ kind: 'locked' });
  await again.close();
});

test.each(['file/ballast.sqlite', 'file/deeper/ballast.sqlite'])(
  '%s under a regular file is not writable',
  async (name) => {
    writeFileSync(join(folder, 'file'), '');
    expect(await open(join(folder, name))).toMatchObject({
      kind: 'not writable',
      problem: {
        what: `${join(folder, name)} cannot be written.`,
        why: expect.stringContaining('is a file, not a folder') as string,
      },
    });
  },
);

test('a folder in the place of the file is not writable', async () => {
  expect(await open(folder)).toMatchObject({ kind: 'not writable' });
});

test.each(['delete', 'wal'])(
  'a file of another program (journal: %s) is refused and left as it is',
  async (journal) => {
    const other = join(folder, 'other.sqlite');
    const database = new DatabaseSync(other);
    database.exec(`pragma journal_mode = ${journal}; create table log (sequence integer); insert into log values (1)`);
    database.close();
    const before = readFileSync(other);
    expect(await open(other)).toMatchObject({ kind: 'not ours', problem: { why: 'Another program made it.' } });
    expect(readFileSync(other).equals(before)).toBe(true);
  },
);

test('a file of another program can be written by that program afterwards', async () => {
  const other = join(folder, 'other.sqlite');
  const database = new DatabaseSync(other);
  database.exec('create table notes (one integer)');
  expect(await open(other)).toMatchObject({ kind: 'not ours' });
  database.exec('insert into notes values (1)');
  expect(database.prepare('select one from notes').all()).toEqual([{ one: 1 }]);
  database.close();
});

test('a file that is no database is damaged', async () => {
  const file = join(folder, 'text.sqlite');
  writeFileSync(file, 'Dear diary, '.repeat(1000));
  expect(await open(file)).toMatchObject({ kind: 'damaged' });
  expect(readFileSync(file, 'utf8')).toContain('Dear diary');
});

const filled = async (): Promise<void> => {
  const store = await mustOpen(open());
  await mustEnter(store, ...Array.from({ length: 400 }, (_, place) => draft(`f-${place}`, noting(`note ${place}`))));
  await store.close();
};

test.each([0.25, 0.5, 0.9])('a file cut off at %d of its length is damaged', async (share) => {
  await filled();
  truncateSync(path, Math.floor(statSync(path).size * share));
  expect(await open()).toMatchObject({ kind: 'damaged' });
});

test('a byte turned over inside a fact is found, and the fact is named', async () => {
  await filled();
  const bytes = readFileSync(path);
  const at = bytes.indexOf('note 217"');
  bytes[at] = 'N'.charCodeAt(0);
  writeFileSync(path, bytes);
  expect(await open()).toMatchObject({
    kind: 'damaged',
    problem: { why: expect.stringContaining('fact 218 (') as string },
  });
});

test('a file whose making was interrupted before anything was in it is a new one', async () => {
  writeFileSync(join(folder, 'empty.sqlite'), '');
  const store = await mustOpen(open(join(folder, 'empty.sqlite')));
  expect(store.facts()).toEqual([]);
  await store.close();
});

test('a file whose making was interrupted before it said whose it is, is finished', async () => {
  await (await mustOpen(open())).close();
  await sqlitePlace(path).meddle('drop trigger about_refuses_delete', 'delete from about');
  const store = await mustOpen(open());
  expect(store.about).toEqual({ kind: 'own' });
  await store.close();
});

test('a replacement cannot slip past the guards while the log is open', async () => {
  const store = await mustOpen(open());
  await mustEnter(store, draft('a', signing));
  await store.close();
  const engine = openSqlite({ location: path, use: 'alone' });
  const replacing = sql`insert or replace into log select 2, id, kind, person_id, audience, supersedes, reason,
    recorded_at, recorded_by, content, digest from log`;
  await expect(replacing.execute(engine.kysely)).rejects.toThrow('what is written here is never changed');
  await engine.close();
});

test('a log in memory works and leaves nothing', async () => {
  const store = await mustOpen(openLogStore({ file: 'memory', clock: testClock, about: 'scenario' }));
  await mustEnter(store, draft('a', signing));
  expect(await store.checkIntegrity()).toEqual({ kind: 'sound', facts: 1 });
  await store.close();
  expect(readdirSync(folder)).toEqual([]);
});

test('a closed log takes nothing more and says so', async () => {
  const store = await mustOpen(open());
  await store.close();
  expect(await enter(store, draft('a', signing))).toMatchObject({ kind: 'not written' });
  expect(store.facts()).toEqual([]);
});

test('before tables with facts are changed, the file is copied', async () => {
  const store = await mustOpen(open());
  await mustEnter(store, draft('a', signing));
  await store.close();
  const later = { name: '2031-01-01-later', up: () => Promise.resolve() };
  await (await mustOpen(sqlitePlace(path).open({ migrations: [...MIGRATIONS, later] }))).close();
  const copy = `${path}.before-2031-01-01-later`;
  expect(existsSync(copy)).toBe(true);
  expect(await verifyCopy(copy)).toMatchObject({ kind: 'sound', about: 'own', facts: [{ id: 'a' }] });
  expect(modeOf(copy)).toBe('600');
});
