import type { Instant } from '#domain/identity.ts';
import { dirname } from 'node:path';
import type { LogKind } from './about.ts';
import { copyDatabase } from './backup.ts';
import type { Engine } from './engine.ts';
import type { DatedMigration } from './migrations/migration-list.ts';
import { notOpened, openLog, type OpenResult } from './open-log.ts';
import { preparePrivateFile, preparePrivateFolder } from './private-folder.ts';
import { notWritable } from './problems.ts';
import { openSqlite, sqliteFaultOf } from './sqlite-engine.ts';

export interface LogFile {
  readonly file: { readonly path: string } | 'memory';
  readonly clock: () => Instant;
  /** Set when the file is made; afterwards it must agree. */
  readonly about: LogKind;
}

/** What only trials set: a disk with so many pages, steps of the tables that are not released. */
export interface TrialConditions {
  readonly mostPages?: number;
  readonly migrations?: readonly DatedMigration[];
}

/** Opens the log in a file, and makes the file where there is none. Every failure is one of the kinds of `OpenResult`. */
export const openLogStore = async (
  { file, clock, about }: LogFile,
  { mostPages, migrations }: TrialConditions = {},
): Promise<OpenResult> => {
  const path = file === 'memory' ? null : file.path;
  const place = path ?? 'memory';
  const prepared = path === null ? READY : prepareFile(path);
  if (prepared.kind === 'not writable') return { kind: 'not writable', problem: notWritable(place, prepared.says) };
  const engine = tryEngine(path ?? ':memory:', mostPages);
  if (engine.kind === 'fault') return notOpened({ faultOf: sqliteFaultOf }, place, engine.error);
  return openLog(engine.engine, {
    about,
    clock,
    place,
    ...(migrations && { migrations }),
    ...(path !== null && {
      beforeMigration: (open: Engine, next: string) => copyDatabase(open, `${path}.before-${next}`),
    }),
  });
};

const READY = { kind: 'ready' } as const;

const prepareFile = (path: string) => {
  const folder = preparePrivateFolder(dirname(path));
  return folder.kind === 'ready' ? preparePrivateFile(path) : folder;
};

type Tried = { readonly kind: 'engine'; readonly engine: Engine } | { readonly kind: 'fault'; readonly error: unknown };

const tryEngine = (location: string, mostPages: number | undefined): Tried => {
  try {
    const limit = mostPages === undefined ? {} : { mostPages };
    return { kind: 'engine', engine: openSqlite({ location, use: 'alone', ...limit }) };
  } catch (error) {
    return { kind: 'fault', error };
  }
};
