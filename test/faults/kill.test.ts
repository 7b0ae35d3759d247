import type { Fact } from '#domain/fact.ts';
import { instant } from '#domain/identity.ts';
import { openLogStore } from '#storage/open-log-store.ts';
import fc from 'fast-check';
import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { createInterface } from 'node:readline';
import { build } from 'vite';
import { afterEach, beforeAll, beforeEach, expect, test } from 'vitest';

const KILLS = process.env['BALLAST_TRIALS'] === '1' ? 1000 : 20;
/** After so many kills a new file is begun, so that making a file is interrupted too. */
const KILLS_PER_FILE = 5;

/** When a process dies: so many lines after it began to open the file, and so many milliseconds later. */
const anyDeath = fc.record({
  afterLines: fc.integer({ min: 1, max: 9 }),
  milliseconds: fc.double({ min: 0, max: 15, noNaN: true }),
});
type Death = typeof anyDeath extends fc.Arbitrary<infer Value> ? Value : never;

const ROOT = join(import.meta.dirname, '..', '..');
const WRITER = join(ROOT, 'dist', 'faults', 'append-until-killed.js');

/** The writer as plain JavaScript, so that a thousand of them are not translated a thousand times. */
beforeAll(async () => {
  await build({
    root: ROOT,
    configFile: false,
    publicDir: false,
    logLevel: 'error',
    build: {
      ssr: join(import.meta.dirname, 'append-until-killed.ts'),
      outDir: dirname(WRITER),
      target: 'node20',
      minify: false,
      rolldownOptions: { output: { entryFileNames: '[name].js' } },
    },
  });
});

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'ballast-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

interface Confirmed {
  readonly sequence: number;
  readonly digest: string;
}

/** Runs a process that writes to a log without end, kills it, and tells what it had confirmed. */
const writeUntilKilled = (path: string, firstTick: number, death: Death): Promise<readonly Confirmed[]> =>
  new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [WRITER, path, String(firstTick)]);
    const lines: string[] = [];
    const complaints: string[] = [];
    createInterface(child.stdout).on('line', (line) => {
      lines.push(line);
      if (lines.length === death.afterLines) setTimeout(() => child.kill('SIGKILL'), death.milliseconds);
    });
    child.stderr.on('data', (text) => complaints.push(String(text)));
    child.on('error', reject);
    child.on('close', (_code, signal) =>
      signal === 'SIGKILL' ? resolve(lines.flatMap(confirmedBy)) : reject(new Error(complaints.join(''))),
    );
  });

const confirmedBy = (line: string): readonly Confirmed[] => {
  const [word, sequence, digest] = line.split(' ');
  return word === 'confirmed' && digest !== undefined ? [{ sequence: Number(sequence), digest }] : [];
};

/** Every batch: what its first fact says of its length, and how many facts there are up to the next batch. */
const batchesIn = (facts: readonly Fact[]): readonly { readonly said: number; readonly found: number }[] => {
  const begins = facts.flatMap((fact, place) =>
    fact.kind === 'noted' ? [{ place, said: Number(fact.text.replace('a batch of ', '')) }] : [],
  );
  return begins.map(({ place, said }, which) => ({
    said,
    found: (begins[which + 1]?.place ?? facts.length) - place,
  }));
};

/** What stands in the log after a death. */
const readAfterDeath = async (path: string): Promise<readonly Fact[]> => {
  const opening = await openLogStore({
    file: { path },
    clock: () => instant('2027-03-02T00:00:00.000Z'),
    about: 'own',
  });
  if (opening.kind !== 'opened') throw new Error(opening.problem.what);
  const facts = opening.store.facts();
  expect(await opening.store.checkIntegrity()).toEqual({ kind: 'sound', facts: facts.length });
  await opening.store.close();
  return facts;
};

test(`nothing that was confirmed is lost, and nothing is half there, after ${KILLS} deaths at any moment`, async () => {
  const seen = { confirmed: 0, unconfirmed: 0 };
  let before: readonly Fact[] = [];
  for (const [place, death] of fc.sample(anyDeath, KILLS).entries()) {
    if (place % KILLS_PER_FILE === 0) before = [];
    const path = join(folder, `${Math.floor(place / KILLS_PER_FILE)}.sqlite`);
    const confirmed = await writeUntilKilled(path, place * 1000, death);
    const facts = await readAfterDeath(path);

    expect(facts.slice(0, before.length)).toEqual(before);
    for (const { sequence, digest } of confirmed) expect(facts[sequence - 1]?.digest).toBe(digest);
    for (const { said, found } of batchesIn(facts)) expect(found).toBe(said);
    const unconfirmed = batchesIn(facts.slice(confirmed.at(-1)?.sequence ?? before.length));
    expect(unconfirmed.length).toBeLessThanOrEqual(1);

    seen.confirmed += confirmed.length;
    seen.unconfirmed += unconfirmed.length;
    before = facts;
  }
  expect(seen.confirmed).toBeGreaterThan(KILLS);
});

test('a log that another process writes is locked; when that process dies it is open to the next at once', async () => {
  const path = join(folder, 'ballast.sqlite');
  const open = () => openLogStore({ file: { path }, clock: () => instant('2027-03-02T00:00:00.000Z'), about: 'own' });
  const child = spawn(process.execPath, [WRITER, path, '0']);
  await new Promise(
    (resolve) => void createInterface(child.stdout).on('line', (line) => confirmedBy(line).map(resolve)),
  );
  expect(await open()).toMatchObject({ kind: 'locked', problem: { what: `${path} is in use.` } });

  const gone = new Promise((resolve) => void child.on('close', resolve));
  child.kill('SIGKILL');
  await gone;
  const opening = await open();
  expect(opening.kind).toBe('opened');
  if (opening.kind === 'opened') await opening.store.close();
});
