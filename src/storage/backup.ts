import type { Problem } from '#contract/problem.ts';
import type { Fact } from '#domain/fact.ts';
import { closeSync, existsSync, fsyncSync, openSync, renameSync, rmSync, statSync } from 'node:fs';
import { dirname } from 'node:path';
import { messageOf, type Engine } from './engine.ts';
import { preparePrivateFile } from './private-folder.ts';
import { verifyCopy } from './verify-copy.ts';

export type BackupReport =
  | { readonly kind: 'written'; readonly path: string; readonly bytes: number; readonly facts: number }
  | { readonly kind: 'refused'; readonly problem: Problem };

/** Writes a copy of the log under a new name: compact, verified, and on the disk before it takes the name. */
export const backUp = async (engine: Engine, log: readonly Fact[], path: string): Promise<BackupReport> => {
  if (existsSync(path))
    return refused(`There is a file ${path} already.`, 'A backup never replaces another file.', 'Choose a new name.');
  const unfinished = `${path}.unfinished`;
  try {
    await copyDatabase(engine, unfinished);
    const verified = await verifyCopy(unfinished);
    if (verified.kind !== 'sound') return refused(`No backup was written to ${path}.`, verified.problem.why, TRY_ANEW);
    if (verified.facts.at(-1)?.digest !== log.at(-1)?.digest || verified.facts.length !== log.length)
      return refused(`No backup was written to ${path}.`, 'The copy does not hold what the log holds.', TRY_ANEW);
    renameSync(unfinished, path);
    syncFolder(dirname(path));
    return { kind: 'written', path, bytes: statSync(path).size, facts: log.length };
  } catch (error) {
    return refused(
      `No backup was written to ${path}.`,
      `The system says: ${messageOf(error)}.`,
      'Choose another folder.',
    );
  } finally {
    discard(unfinished);
  }
};

/** A compact copy of the whole database on the disk, for the owner alone. Throws where there is a file of that name. */
export const copyDatabase = async (engine: Engine, path: string): Promise<void> => {
  if (!engine.copyInto) throw new Error('this database makes its copies by its own tools');
  rmSync(path, { force: true });
  const prepared = preparePrivateFile(path);
  if (prepared.kind === 'not writable') throw new Error(prepared.says);
  await engine.copyInto(path);
  syncFile(path);
};

/** Removes what was begun; where nothing could be begun there is nothing to remove. */
export const discard = (path: string): void => {
  try {
    rmSync(path, { force: true });
  } catch {
    return;
  }
};

const TRY_ANEW = 'Check the disk, then try again.';

const refused = (what: string, why: string, whatToDo: string): BackupReport => ({
  kind: 'refused',
  problem: { what, why, whatToDo, field: null },
});

/** Brings a file's content to the disk. */
export const syncFile = (path: string): void => {
  const open = openSync(path, 'r+');
  try {
    fsyncSync(open);
  } finally {
    closeSync(open);
  }
};

/** Brings a name to the disk. Not every system can open a folder for it; there the name is written with its file. */
export const syncFolder = (path: string): void => {
  try {
    const open = openSync(path, 'r');
    try {
      fsyncSync(open);
    } finally {
      closeSync(open);
    }
  } catch {
    return;
  }
};
