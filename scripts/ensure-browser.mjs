import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { tsImport } from 'tsx/esm/api';
import { note } from './project.mjs';

/** @typedef {typeof import('../test/browser/find-browser.ts')} Finder */

const isRoot = process.getuid?.() === 0;

/** Debian's own browser, where this process may install it. @returns {boolean} whether it was tried */
const installFromDebian = () => {
  if (!isRoot || !existsSync('/etc/debian_version')) return false;
  note('No browser was found: installing Chromium from Debian …');
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  for (const given of [['update'], ['install', '--yes', '--no-install-recommends', 'chromium']])
    spawnSync('apt-get', given, { env, stdio: ['ignore', 'ignore', 2] });
  return true;
};

/** Finds a browser that starts and closes it again. @returns {Promise<{ name: string | null, why: string }>} */
const lookForBrowser = async () => {
  const finder = /** @type {Finder} */ (await tsImport('../test/browser/find-browser.ts', import.meta.url));
  const found = await finder.findBrowser();
  if (found.kind === 'none') return { name: null, why: [finder.NO_BROWSER, ...found.tried].join('\n  ') };
  await found.browser.close();
  return { name: found.name, why: '' };
};

/**
 * A browser for the tests: the one that is named or there, else one from Debian. A missing browser is a failure, never
 * a skip.
 */
export const ensureBrowser = async () => {
  const found = await lookForBrowser();
  const mayInstall = found.name === null && !process.env.BALLAST_BROWSER;
  return mayInstall && installFromDebian() ? lookForBrowser() : found;
};
