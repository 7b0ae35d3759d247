import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { oneAtATime } from './one-at-a-time.mjs';
import { ROOT, giveUp, inProject, note, readJson } from './project.mjs';

/**
 * @typedef {{ version?: string, integrity?: string, dev?: boolean, optional?: boolean, devOptional?: boolean }} Locked
 * @typedef {Record<string, Locked>} LockedPackages
 */

/** @param {string} path @returns {LockedPackages} */
const packagesIn = (path) =>
  existsSync(path) ? /** @type {{ packages: LockedPackages }} */ (readJson(path)).packages : {};

/**
 * Whether what npm recorded at the end of its last install is what the lock file asks for. npm writes its record
 * last, so an install that was cut short does not pass. Optional packages may be absent (another platform's
 * binaries), but not of another version.
 * @param {LockedPackages} wanted @param {LockedPackages} present
 */
export const isInstalled = (wanted, present) =>
  Object.entries(wanted).every(([path, lock]) => {
    if (path === '') return true;
    const found = present[path];
    if (!found) return lock.optional === true;
    return found.version === lock.version && found.integrity === lock.integrity;
  });

/** npm by the path it gives to the scripts it runs, else by name. @param {readonly string[]} given */
const runNpm = (given) => {
  const npm = process.env.npm_execpath;
  const stdio = /** @type {const} */ (['ignore', 2, 2]);
  return npm?.endsWith('.js')
    ? spawnSync(process.execPath, [npm, ...given], { cwd: ROOT, stdio: [...stdio] })
    : spawnSync('npm', given, { cwd: ROOT, stdio: [...stdio], shell: process.platform === 'win32' });
};

const isEverythingInstalled = () =>
  isInstalled(packagesIn(inProject('package-lock.json')), packagesIn(inProject('node_modules', '.package-lock.json')));

const install = () => {
  if (isEverythingInstalled()) return;
  note('Installing packages (some ten seconds on a usual connection) …');
  const { status, error } = runNpm(['ci', '--include=dev', '--include=optional', '--loglevel=error']);
  if (error) giveUp(`npm could not be started (${error.message}): install npm, which comes with Node, and try again.`);
  if (status !== 0)
    giveUp(
      'The packages could not be installed, for the reason npm gives above: mend that and give the command again.',
    );
};

/** Installs the packages of the lock file where they are not there already. */
export const ensureInstalled = async () => {
  if (!isEverythingInstalled()) await oneAtATime(install);
};
