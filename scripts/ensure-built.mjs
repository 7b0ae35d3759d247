import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, readdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { oneAtATime } from './one-at-a-time.mjs';
import { ROOT, giveUp, inProject, note } from './project.mjs';

/** What is built, and where each part stands under dist. */
const PARTS = /** @type {const} */ (['web', 'main']);
const STAMP = inProject('dist', 'built-from');

/** Everything that decides what a build holds. */
const SOURCES = ['src', 'vite.config.ts', 'package.json', 'package-lock.json'];

/** @param {string} path @returns {string[]} the files at or below a path, in a fixed order */
const filesAt = (path) =>
  readdirSync(path, { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile() && !/\.(test|bench)\.tsx?$/.test(entry.name))
    .map((entry) => join(entry.parentPath, entry.name))
    .sort();

const digestOfSources = () => {
  const digest = createHash('sha256').update(process.versions.node.split('.')[0] ?? '');
  for (const source of SOURCES.map((name) => inProject(name)))
    for (const file of source === inProject('src') ? filesAt(source) : [source])
      digest.update(relative(ROOT, file)).update('\0').update(readFileSync(file)).update('\0');
  return digest.digest('hex');
};

const digestOfBuild = () =>
  PARTS.every((part) => existsSync(inProject('dist', part))) && existsSync(STAMP) ? readFileSync(STAMP, 'utf8') : '';

/** @param {string} folder */
const buildInto = async (folder) => {
  const { build } = await import('vite');
  const configFile = inProject('vite.config.ts');
  const shared = /** @type {const} */ ({ configFile, logLevel: 'warn', mode: 'production' });
  await Promise.all([
    build({ ...shared, build: { outDir: join(folder, 'web'), emptyOutDir: true } }),
    build({ ...shared, build: { outDir: join(folder, 'main'), emptyOutDir: true, ssr: true } }),
  ]);
};

/**
 * Puts a finished build in the place of the last one. The stamp is written last: a build that was cut short is made
 * again.
 * @param {string} folder @param {string} digest
 */
const putInPlace = (folder, digest) => {
  rmSync(STAMP, { force: true });
  for (const part of PARTS) {
    rmSync(inProject('dist', part), { recursive: true, force: true });
    renameSync(join(folder, part), inProject('dist', part));
  }
  writeFileSync(STAMP, digest);
  rmSync(folder, { recursive: true });
};

const isBuilt = () => digestOfSources() === digestOfBuild();

const buildAll = async () => {
  if (isBuilt()) return;
  note('Building …');
  const digest = digestOfSources();
  const folder = inProject('dist', 'being-built');
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  try {
    await buildInto(folder);
    putInPlace(folder, digest);
  } catch (reason) {
    giveUp(`The build failed: ${reason instanceof Error ? reason.message : String(reason)}`);
  }
};

/** Builds the pages and the programs where their sources have changed since the last build. */
export const ensureBuilt = async () => {
  if (!isBuilt()) await oneAtATime(buildAll);
};
