import type { Problem } from '#contract/problem.ts';
import type { Fact } from '#domain/fact.ts';
import { existsSync } from 'node:fs';
import { readAbout, type LogKind } from './about.ts';
import type { Engine } from './engine.ts';
import { migrationState } from './migrate.ts';
import { MIGRATIONS } from './migrations/migration-list.ts';
import { damaged, newerVersion, problemOfFault } from './problems.ts';
import { readLog, showDamages } from './read-log.ts';
import { openSqlite, sqliteFaultOf } from './sqlite-engine.ts';

export type CopyReport =
  | { readonly kind: 'sound'; readonly about: LogKind; readonly facts: readonly Fact[] }
  | { readonly kind: 'refused'; readonly problem: Problem };

/** Reads a copy that nobody has open: is it ours, of a version that we know, sound, and every digest right? */
export const verifyCopy = async (path: string): Promise<CopyReport> => {
  if (!existsSync(path))
    return refused({
      what: `There is no file ${path}.`,
      why: 'Nothing stands under that name.',
      whatToDo: 'Name the backup that you mean.',
      field: null,
    });
  let engine: Engine | null = null;
  try {
    engine = openSqlite({ location: path, use: 'to read only' });
    return await look(engine, path);
  } catch (error) {
    const fault = sqliteFaultOf(error);
    return refused(
      fault.kind === 'of another program' || fault.kind === 'locked'
        ? problemOfFault(path, fault)
        : damaged(path, `It cannot be read: ${fault.says}.`),
    );
  } finally {
    await engine?.close();
  }
};

const look = async (engine: Engine, path: string): Promise<CopyReport> => {
  const structure = await engine.structureFaults();
  if (structure.length > 0) return refused(damaged(path, `The database says: ${structure.slice(0, 3).join('; ')}.`));
  const state = await migrationState(engine, MIGRATIONS);
  if (state.kind === 'newer') return refused(newerVersion(path, state.unknown));
  const about = await readAbout(engine);
  if (!about) return refused(damaged(path, 'It does not say what it holds.'));
  const reading = await readLog(engine);
  if (reading.kind === 'damaged') return refused(damaged(path, `Wrong: ${showDamages(reading.damages)}.`));
  return { kind: 'sound', about: about.kind, facts: reading.facts };
};

const refused = (problem: Problem): CopyReport => ({ kind: 'refused', problem });
