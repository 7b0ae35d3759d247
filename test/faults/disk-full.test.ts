import type { Draft } from '#domain/fact.ts';
import { idOf, instant } from '#domain/identity.ts';
import type { LogStore } from '#storage/log-store.ts';
import { openLogStore, type TrialConditions } from '#storage/open-log-store.ts';
import { isoDay } from '#units/day.ts';
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';

const TRIALS = process.env['BALLAST_TRIALS'] === '1';

let folder = '';
let path = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'ballast-'));
  path = join(folder, 'ballast.sqlite');
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const clock = () => instant('2027-03-01T10:00:00.000Z');
const open = (file: string, conditions: TrialConditions = {}) =>
  openLogStore({ file: { path: file }, clock, about: 'own' }, conditions);

const mustOpen = async (file: string, conditions: TrialConditions = {}): Promise<LogStore> => {
  const opening = await open(file, conditions);
  if (opening.kind !== 'opened') throw new Error(JSON.stringify(opening));
  return opening.store;
};

const notes = (batch: string, length: number): readonly Draft[] =>
  Array.from({ length }, (_, place) => ({
    id: idOf<'fact'>(`${batch}-${place}`),
    body: {
      kind: 'noted',
      person: idOf<'person'>('marit-lund'),
      day: isoDay('2027-03-01'),
      card: null,
      item: null,
      text: `note ${place} of ${batch}, with enough words to take some room on the disk`,
    },
    recordedBy: idOf<'signer'>('ingrid'),
    supersedes: null,
    reason: null,
  }));

const enter = (store: LogStore, batch: string, length: number) =>
  store.transact(() => ({ kind: 'drafts', drafts: notes(batch, length), result: null }));

const FULL = { what: expect.stringContaining('Nothing was written') as string, why: 'The disk is full.' };

/** Enters batches until one is not written, and tells how many were. */
const fill = async (store: LogStore): Promise<number> => {
  for (let batch = 0; ; batch += 1) {
    const result = await enter(store, `batch-${batch}`, 40);
    if (result.kind === 'committed') continue;
    expect(result).toMatchObject({ kind: 'not written', problem: FULL });
    return batch;
  }
};

test('a full disk takes nothing more, says so, and loses nothing', async () => {
  const store = await mustOpen(path, { mostPages: 100 });
  const written = await fill(store);
  expect(written).toBeGreaterThan(2);
  expect(store.facts()).toHaveLength(written * 40);
  expect(await store.checkIntegrity()).toEqual({ kind: 'sound', facts: written * 40 });
  expect(await enter(store, 'once more', 40)).toMatchObject({ kind: 'not written', problem: FULL });
  await store.close();

  const again = await mustOpen(path);
  expect(again.facts()).toEqual(store.facts());
  expect(await enter(again, 'with room', 40)).toMatchObject({ kind: 'committed' });
  await again.close();
});

test('with room for one fact but not for two hundred, the one is taken', async () => {
  const store = await mustOpen(path, { mostPages: 40 });
  expect(await enter(store, 'import', 1000)).toMatchObject({ kind: 'not written', problem: FULL });
  expect(await enter(store, 'one', 1)).toMatchObject({ kind: 'committed', facts: [{ sequence: 1 }] });
  expect(await store.checkIntegrity()).toEqual({ kind: 'sound', facts: 1 });
  await store.close();
});

const PAGES_OF_AN_IMPORT = 60;

test('wherever in making or filling a file the disk is full, it holds all of an import or nothing', async () => {
  const outcomes = { 'not opened': 0, 'not written': 0, written: 0 };
  for (let mostPages = 1; mostPages <= PAGES_OF_AN_IMPORT; mostPages += 1) {
    const file = join(folder, `${mostPages}.sqlite`);
    const opening = await open(file, { mostPages });
    expect(['opened', 'disk full']).toContain(opening.kind);
    const result = opening.kind === 'opened' ? await enter(opening.store, 'import', 200) : null;
    if (opening.kind === 'opened') await opening.store.close();
    expect(['committed', 'not written', undefined]).toContain(result?.kind);

    const after = await mustOpen(file);
    expect(after.facts()).toHaveLength(result?.kind === 'committed' ? 200 : 0);
    await after.close();
    outcomes[result === null ? 'not opened' : result.kind === 'committed' ? 'written' : 'not written'] += 1;
  }
  expect(Object.values(outcomes).every((count) => count > 0)).toBe(true);
});

const WRITER = join(import.meta.dirname, 'append-until-killed.ts');

/** Runs the endless writer in a shell that has taken something from it; it ends when the disk fails. */
const writeUntilRefused = (shell: readonly string[], commands: string, file: string) => {
  const [command, ...before] = [...shell, 'sh', '-c', commands, process.execPath, WRITER, file];
  const { stdout, stderr } = spawnSync(command, before, { encoding: 'utf8' });
  return { confirmed: stdout.split('\n').filter((line) => line.startsWith('confirmed')), stderr };
};

const mustHold = async (file: string, confirmed: readonly string[]): Promise<void> => {
  expect(confirmed.length).toBeGreaterThan(0);
  const store = await mustOpen(file);
  const [, sequence, digest] = confirmed.at(-1)?.split(' ') ?? [];
  expect(store.facts()[Number(sequence) - 1]?.digest).toBe(digest);
  expect(await store.checkIntegrity()).toMatchObject({ kind: 'sound' });
  await store.close();
};

test.each([300, 500, 900])(
  'a disk that fails in the middle of a write at %i kB loses nothing confirmed',
  async (most) => {
    // The shell counts in blocks of 512 bytes.
    const commands = `ulimit -f ${most * 2}; exec "$0" --import tsx "$1" "$2" 0`;
    const { confirmed, stderr } = writeUntilRefused([], commands, path);
    expect(stderr).toContain('not written');
    await mustHold(path, confirmed);
  },
);

test.runIf(TRIALS)('a real disk of one megabyte fills up and loses nothing confirmed', async () => {
  const disk = join(folder, 'disk');
  mkdirSync(disk);
  // A name space of its own: the disk is there for these commands alone, and no rights of the system are needed.
  const commands = `mount -t tmpfs -o size=1m tmpfs ${disk} &&
    { "$0" --import tsx "$1" ${disk}/ballast.sqlite 0; cp ${disk}/* ${folder}; }`;
  const { confirmed, stderr } = writeUntilRefused(['unshare', '--map-root-user', '--mount'], commands, path);
  expect(stderr).toContain('The disk is full.');
  await mustHold(path, confirmed);
});
