import type { Problem } from '#contract/problem.ts';
import type { Instant } from '#domain/identity.ts';
import { randomUUID } from 'node:crypto';
import { readAbout, writeAbout, type LogKind } from './about.ts';
import type { Engine } from './engine.ts';
import { logStoreOn, type LogStore } from './log-store.ts';
import { migrate, migrationState } from './migrate.ts';
import { MIGRATIONS, type DatedMigration } from './migrations/migration-list.ts';
import { damaged, diskFull, locked, newerVersion, notWritable, otherKind, problemOfFault } from './problems.ts';
import { readLog, showDamages } from './read-log.ts';

/** Why a log could not be opened; nothing was changed in the file. */
export interface NotOpened {
  readonly kind: 'damaged' | 'newer version' | 'not writable' | 'locked' | 'disk full' | 'not ours' | 'other kind';
  readonly problem: Problem;
}

export type OpenResult = { readonly kind: 'opened'; readonly store: LogStore } | NotOpened;

export interface Opening {
  readonly about: LogKind;
  readonly clock: () => Instant;
  /** How the place is called in sentences. */
  readonly place: string;
  readonly migrations?: readonly DatedMigration[];
  /** Runs before tables that hold facts are changed. */
  readonly beforeMigration?: (engine: Engine, next: string) => Promise<void>;
}

/** Brings a database up to date, verifies all that it holds, and gives the log on it. Closes the database on failure. */
export const openLog = async (engine: Engine, opening: Opening): Promise<OpenResult> => {
  const result = await tryToOpen(engine, opening).catch((error: unknown) => notOpened(engine, opening.place, error));
  if (result.kind !== 'opened') await engine.close();
  return result;
};

const tryToOpen = async (engine: Engine, opening: Opening): Promise<OpenResult> => {
  const { place, migrations = MIGRATIONS } = opening;
  const state = await migrationState(engine, migrations);
  if (state.kind === 'newer') return { kind: 'newer version', problem: newerVersion(place, state.unknown) };
  const next = migrations[state.done];
  if (next && state.done > 0) await opening.beforeMigration?.(engine, next.name);
  if (next) await migrate(engine, migrations);
  const about =
    (await readAbout(engine)) ??
    (await writeAbout(engine, { databaseId: randomUUID(), kind: opening.about }, opening.clock()));
  if (about.kind !== opening.about) return { kind: 'other kind', problem: otherKind(place, about.kind) };
  const reading = await readLog(engine);
  if (reading.kind === 'damaged')
    return { kind: 'damaged', problem: damaged(place, `Wrong: ${showDamages(reading.damages)}.`) };
  const { facts } = reading;
  const { clock } = opening;
  const store = logStoreOn({ engine, ...about, facts, clock, place });
  return { kind: 'opened', store };
};

/** What a failure of the database while opening means to a person. */
export const notOpened = ({ faultOf }: Pick<Engine, 'faultOf'>, place: string, error: unknown): NotOpened => {
  const fault = faultOf(error);
  switch (fault.kind) {
    case 'full':
      return { kind: 'disk full', problem: diskFull(place) };
    case 'locked':
      return { kind: 'locked', problem: locked(place) };
    case 'read-only':
    case 'cannot be opened':
      return { kind: 'not writable', problem: notWritable(place, fault.says) };
    case 'of another program':
      return { kind: 'not ours', problem: problemOfFault(place, fault) };
    case 'damaged':
      return { kind: 'damaged', problem: problemOfFault(place, fault) };
    case 'superseded twice':
    case 'constraint':
    case 'unknown':
      return { kind: 'damaged', problem: damaged(place, `The database says: ${fault.says}.`) };
  }
};
