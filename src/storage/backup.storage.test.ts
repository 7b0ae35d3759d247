import { existsSync, mkdtempSync, readFileSync, readdirSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import type { LogKind } from './about.ts';
import type { LogStore } from './log-store.ts';
import { openLogStore } from './open-log-store.ts';
import { sqlitePlace } from './places.setup.ts';
import { restoreFrom } from './restore.ts';
import { draft, mustEnter, mustOpen, noting, signing, testClock, weighing } from './test-log.setup.ts';
import { verifyCopy } from './verify-copy.ts';

let folder = '';
let target = '';
let backup = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'ballast-'));
  target = join(folder, 'ballast.sqlite');
  backup = join(folder, 'backup.sqlite');
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const open = (path: string, about: LogKind = 'own') => openLogStore({ file: { path }, clock: testClock, about });
const restore = (more: { readonly about?: LogKind; readonly target?: string } = {}) =>
  restoreFrom({ backup, target, about: 'own', now: testClock(), ...more });

/** A log of two facts, backed up, to which a third came afterwards. */
const backedUp = async (): Promise<LogStore> => {
  const store = await mustOpen(open(target));
  await mustEnter(store, draft('a', signing), draft('b', weighing(61)));
  expect(await store.backUpTo(backup)).toMatchObject({ kind: 'written', path: backup, facts: 2 });
  await mustEnter(store, draft('c', weighing(62)));
  return store;
};

const idsIn = async (path: string): Promise<readonly string[]> => {
  const store = await mustOpen(open(path));
  await store.close();
  return store.facts().map(({ id }) => id);
};

test('a backup is a whole log of its own, for the owner alone, and nothing else is left', async () => {
  const store = await backedUp();
  await store.close();
  expect(statSync(backup).mode & 0o777).toBe(0o600);
  expect(readdirSync(folder)).toEqual(['backup.sqlite', 'ballast.sqlite']);
  expect(await verifyCopy(backup)).toMatchObject({ kind: 'sound', about: 'own', facts: [{ id: 'a' }, { id: 'b' }] });
  const copy = await mustOpen(open(backup));
  expect(copy.databaseId).toBe(store.databaseId);
  await copy.close();
});

test('the log goes on being written after a backup, and is still locked', async () => {
  const store = await backedUp();
  expect(await open(target)).toMatchObject({ kind: 'locked' });
  await mustEnter(store, draft('d', weighing(63)));
  expect(await store.checkIntegrity()).toEqual({ kind: 'sound', facts: 4 });
  await store.close();
});

test('a backup never replaces a file', async () => {
  writeFileSync(backup, 'mine');
  const store = await mustOpen(open(target));
  expect(await store.backUpTo(backup)).toMatchObject({ kind: 'refused', problem: { whatToDo: 'Choose a new name.' } });
  expect(readFileSync(backup, 'utf8')).toBe('mine');
  await store.close();
});

test.each(['missing/backup.sqlite', 'ballast.sqlite/backup.sqlite'])('no backup can be written to %s', async (name) => {
  const store = await mustOpen(open(target));
  expect(await store.backUpTo(join(folder, name))).toMatchObject({ kind: 'refused' });
  await store.close();
});

test('restoring brings the backup back and keeps what stood there', async () => {
  await (await backedUp()).close();
  const report = await restore();
  const kept = `${target}.replaced-2027-03-01T10-00-00-000Z`;
  expect(report).toEqual({ kind: 'restored', facts: 2, kept });
  expect(await idsIn(target)).toEqual(['a', 'b']);
  expect(await idsIn(kept)).toEqual(['a', 'b', 'c']);
  expect(readdirSync(folder)).toHaveLength(3);
});

test('restoring to an empty place keeps nothing', async () => {
  await (await backedUp()).close();
  const elsewhere = join(folder, 'new', 'ballast.sqlite');
  expect(await restore({ target: elsewhere })).toEqual({ kind: 'restored', facts: 2, kept: null });
  expect(await idsIn(elsewhere)).toEqual(['a', 'b']);
});

test('a log that is open is not replaced', async () => {
  const store = await backedUp();
  expect(await restore()).toMatchObject({ kind: 'refused', problem: { what: `${target} is in use.` } });
  expect(await store.checkIntegrity()).toEqual({ kind: 'sound', facts: 3 });
  await store.close();
  expect(await idsIn(target)).toEqual(['a', 'b', 'c']);
});

test('a damaged log is replaced, and kept with its journal', async () => {
  await (await backedUp()).close();
  writeFileSync(target, 'Dear diary, '.repeat(1000));
  writeFileSync(`${target}-wal`, 'journal');
  expect(await restore()).toMatchObject({ kind: 'restored' });
  expect(await idsIn(target)).toEqual(['a', 'b']);
  const kept = `${target}.replaced-2027-03-01T10-00-00-000Z`;
  expect(readFileSync(kept, 'utf8')).toContain('Dear diary');
});

const untouched = async (): Promise<void> => {
  expect(readdirSync(folder).filter((name) => name.startsWith('ballast'))).toEqual(['ballast.sqlite']);
  expect(await idsIn(target)).toEqual(['a', 'b', 'c']);
};

test('a backup that was changed is refused before anything moves', async () => {
  await (await backedUp()).close();
  await sqlitePlace(backup).meddleUnguarded("update log set content = replace(content, '61', '62')");
  expect(await restore()).toMatchObject({
    kind: 'refused',
    problem: { why: expect.stringContaining('fact 2 (') as string },
  });
  await untouched();
});

test('a backup that is cut off, no database, of another program or not there is refused', async () => {
  await (await backedUp()).close();
  const whole = readFileSync(backup);
  for (const content of [whole.subarray(0, whole.length / 2), Buffer.from('Dear diary, '.repeat(999)), null]) {
    if (content === null) rmSync(backup);
    else writeFileSync(backup, content);
    expect(await restore()).toMatchObject({ kind: 'refused' });
    await untouched();
  }
  await sqlitePlace(backup).meddle('create table notes (one integer)');
  expect(await restore()).toMatchObject({ kind: 'refused' });
  await untouched();
});

test('a backup of the scenario does not become real people', async () => {
  await (await backedUp()).close();
  rmSync(backup);
  const scenario = await mustOpen(open(join(folder, 'scenario.sqlite'), 'scenario'));
  await mustEnter(scenario, draft('x', noting('invented')));
  await scenario.backUpTo(backup);
  await scenario.close();
  expect(await restore()).toMatchObject({
    kind: 'refused',
    problem: { what: `${backup} holds the invented scenario.` },
  });
  await untouched();
});

test('a log restored from itself is the same log', async () => {
  await (await backedUp()).close();
  backup = target;
  expect(await restore()).toMatchObject({ kind: 'restored', facts: 3 });
  expect(await idsIn(target)).toEqual(['a', 'b', 'c']);
  expect(existsSync(`${target}.unfinished`)).toBe(false);
});
