import { spawn, type ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { mkdirSync, mkdtempSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach, beforeEach, expect, test } from 'vitest';

const SERVE = fileURLToPath(new URL('../../dist/main/serve.js', import.meta.url));

let folder = '';
const running: ChildProcess[] = [];
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'ballast-start-'));
});
afterEach(async () => {
  for (const child of running.splice(0)) {
    if (child.exitCode !== null || child.signalCode !== null) continue;
    const ended = once(child, 'exit');
    child.kill('SIGTERM');
    await ended;
  }
  rmSync(folder, { recursive: true, force: true });
});

interface Started {
  readonly printed: string;
  /** Null: it runs. */
  readonly code: number | null;
}

/** Starts the program and waits until it has printed an address or ended. */
const start = (...given: readonly string[]): Promise<Started> =>
  new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [SERVE, '--no-open', ...given], { stdio: ['ignore', 'pipe', 'pipe'] });
    running.push(child);
    let printed = '';
    const take = (text: unknown): void => {
      printed += String(text);
      if (printed.includes(' is at http')) resolve({ printed, code: null });
    };
    child.stdout.on('data', take);
    child.stderr.on('data', take);
    child.on('error', reject);
    child.on('close', (code) => resolve({ printed, code }));
  });

const portOf = (printed: string): string => new URL(/http\S+/.exec(printed)?.[0] ?? '').port;

/** One sentence or a few, no stack. */
const oneLine = (printed: string): boolean => printed.trim().split('\n').length === 1 && !printed.includes('    at ');

test('a second start opens the program that runs, by a file that only its owner can read', async () => {
  const first = await start('--empty', '--data', folder, '--port', '0');
  const second = await start('--data', folder, '--port', '0');
  expect(second.code).toBe(0);
  expect(second.printed).toContain('running already');
  expect(portOf(second.printed)).toBe(portOf(first.printed));
  expect(statSync(join(folder, 'running.json')).mode & 0o777).toBe(0o600);
});

test('a port that is taken, a folder under a file and a damaged file are each told in one line', async () => {
  const first = await start('--empty', '--data', join(folder, 'first'), '--port', '0');
  writeFileSync(join(folder, 'file'), '');
  mkdirSync(join(folder, 'damaged'));
  writeFileSync(join(folder, 'damaged', 'ballast.sqlite'), 'no database at all'.repeat(1000));
  const refused = [
    await start('--data', join(folder, 'second'), '--port', portOf(first.printed)),
    await start('--data', join(folder, 'file', 'inside'), '--port', '0'),
    await start('--empty', '--data', join(folder, 'damaged'), '--port', '0'),
    await start('--scenario', '--empty'),
  ];
  expect(refused.map(({ code }) => code)).toEqual([1, 1, 1, 1]);
  expect(refused.map(({ printed }) => oneLine(printed))).toEqual([true, true, true, true]);
  expect(refused.map(({ printed }) => printed)).toEqual([
    expect.stringMatching(/^Port \d+ is taken by another program/),
    expect.stringMatching(/^The data folder .* cannot be used/),
    expect.stringMatching(/ballast\.sqlite is (damaged|no|not)/),
    expect.stringMatching(/^Either --scenario or --empty, not both\./),
  ]);
});

test('a file that a killed program left behind stops nobody', async () => {
  writeFileSync(join(folder, 'running.json'), JSON.stringify({ port: 9, secret: 'of a program that is gone' }));
  const { code, printed } = await start('--empty', '--data', folder, '--port', '0');
  expect({ code, printed }).toMatchObject({ code: null });
});
