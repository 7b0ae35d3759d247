import { spawn, type ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import axe, { type AxeResults } from 'axe-core';
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';

const SERVE = fileURLToPath(new URL('../../dist/main/serve.js', import.meta.url));

/** A started program with a data folder of its own. */
export interface House {
  /** What it printed: the address that lets the first page in, once. */
  readonly address: string;
  readonly origin: string;
  readonly folder: string;
  readonly stop: () => Promise<void>;
}

const firstAddress = (child: ChildProcess): Promise<string> =>
  new Promise((resolve, reject) => {
    let printed = '';
    const take = (text: unknown): void => {
      printed += String(text);
      const [address] = /https?:\/\/\S+(?=\s)/.exec(printed) ?? [];
      if (address) resolve(address);
    };
    child.stdout?.on('data', take);
    child.stderr?.on('data', take);
    child.on('error', reject);
    child.on('exit', (code) =>
      reject(new Error(`The program ended with ${code} before it printed an address:\n${printed}`)),
    );
  });

/** Starts the built program on a free port, with a fresh data folder, and waits for its address. */
export const startHouse = async (...given: readonly string[]): Promise<House> => {
  const folder = mkdtempSync(join(tmpdir(), 'ballast-house-'));
  const child = spawn(process.execPath, [SERVE, '--data', folder, '--port', '0', '--no-open', ...given], {
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  const stop = async (): Promise<void> => {
    if (child.exitCode === null && child.signalCode === null) {
      const ended = once(child, 'exit');
      child.kill('SIGTERM');
      await ended;
    }
    rmSync(folder, { recursive: true, force: true });
  };
  try {
    const address = await firstAddress(child);
    return { address, origin: new URL(address).origin, folder, stop };
  } catch (reason) {
    await stop();
    throw reason;
  }
};

/** A page that remembers what went wrong on it: errors, refused requests, breaches of the content policy. */
export interface WatchedPage {
  readonly page: Page;
  readonly complaints: () => readonly string[];
}

export const openPage = async (browser: Browser, look: BrowserContextOptions = {}): Promise<WatchedPage> => {
  const context = await browser.newContext(look);
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('requestfailed', (request) => {
    const reason = request.failure()?.errorText ?? 'no reason given';
    // A page that is left behind drops what it was still asking for.
    if (reason !== 'net::ERR_ABORTED') complaints.push(`${request.url()}: ${reason}`);
  });
  return { page, complaints: () => complaints };
};

/** What bars somebody from using the page as it now is: axe-core's serious and critical findings, each as a sentence. */
export const barriers = async (page: Page): Promise<readonly string[]> => {
  await page.evaluate(axe.source);
  const { violations } = await page.evaluate<AxeResults>('axe.run()');
  return violations
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .flatMap(({ id, help, nodes }) => nodes.map((node) => `${id}: ${help} (${node.target.join(' ')})`));
};
