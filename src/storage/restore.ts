import type { Problem } from '#contract/problem.ts';
import type { Instant } from '#domain/identity.ts';
import { existsSync, renameSync } from 'node:fs';
import { dirname } from 'node:path';
import type { LogKind } from './about.ts';
import { copyDatabase, discard, syncFolder } from './backup.ts';
import { messageOf } from './engine.ts';
import { preparePrivateFolder } from './private-folder.ts';
import { locked, notWritable, otherKind } from './problems.ts';
import { openSqlite, sqliteFaultOf } from './sqlite-engine.ts';
import { verifyCopy } from './verify-copy.ts';

export interface Restoring {
  readonly backup: string;
  /** The data file that is replaced. */
  readonly target: string;
  /** What the data file holds by its name: a backup of the other kind is refused. */
  readonly about: LogKind;
  readonly now: Instant;
}

export type RestoreReport =
  /** `kept` is where the replaced file stands now; null where there was none. */
  | { readonly kind: 'restored'; readonly facts: number; readonly kept: string | null }
  | { readonly kind: 'refused'; readonly problem: Problem };

/** Puts a backup in the place of a data file that nobody has open. Everything is verified before anything moves. */
export const restoreFrom = async ({ backup, target, about, now }: Restoring): Promise<RestoreReport> => {
  const verified = await verifyCopy(backup);
  if (verified.kind === 'refused') return verified;
  if (verified.about !== about) return { kind: 'refused', problem: otherKind(backup, verified.about) };
  const unfinished = `${target}.unfinished`;
  try {
    await bringBeside(backup, unfinished);
    const copied = await verifyCopy(unfinished);
    if (copied.kind === 'refused') return copied;
    if (existsSync(target) && !(await letGoOf(target))) return { kind: 'refused', problem: locked(target) };
    const kept = existsSync(target) ? keepAside(target, now) : null;
    renameSync(unfinished, target);
    syncFolder(dirname(target));
    return { kind: 'restored', facts: copied.facts.length, kept };
  } catch (error) {
    return { kind: 'refused', problem: notWritable(target, messageOf(error)) };
  } finally {
    discard(unfinished);
  }
};

/** A copy through the database: a backup that was copied by hand may have its newest facts in a journal. */
const bringBeside = async (backup: string, unfinished: string): Promise<void> => {
  const folder = preparePrivateFolder(dirname(unfinished));
  if (folder.kind === 'not writable') throw new Error(folder.says);
  const engine = openSqlite({ location: backup, use: 'to read only' });
  try {
    await copyDatabase(engine, unfinished);
  } finally {
    await engine.close();
  }
};

/** Takes the file for ourselves and lets it go, which also brings its journal into it. False where another has it. */
const letGoOf = async (target: string): Promise<boolean> => {
  try {
    await openSqlite({ location: target, use: 'alone' }).close();
    return true;
  } catch (error) {
    return sqliteFaultOf(error).kind !== 'locked';
  }
};

/** A damaged file may have left a journal; it must not be read into the restored one, and may be needed with the old. */
const keepAside = (target: string, now: Instant): string => {
  const kept = `${target}.replaced-${now.replace(/[:.]/g, '-')}`;
  for (const journal of ['', '-wal', '-shm'])
    if (existsSync(target + journal)) renameSync(target + journal, kept + journal);
  return kept;
};
