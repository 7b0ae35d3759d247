import { PGlite } from '@electric-sql/pglite';
import { DatabaseSync } from '@photostructure/sqlite';
import { Kysely } from 'kysely';
import { PGliteDialect } from 'kysely-pglite-dialect';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { LogKind } from './about.ts';
import { messageOf, propertyOf, type Engine, type FaultKind } from './engine.ts';
import type { Tables } from './log-table.ts';
import type { DatedMigration } from './migrations/migration-list.ts';
import { openLog, type OpenResult } from './open-log.ts';
import { openLogStore } from './open-log-store.ts';
import { testClock } from './test-log.setup.ts';

/** A place where a log can be kept, opened again, and meddled with behind its back while nobody has it open. */
export interface Place {
  readonly open: (how?: {
    readonly about?: LogKind;
    readonly migrations?: readonly DatedMigration[];
  }) => Promise<OpenResult>;
  /** Runs statements as another program would. */
  readonly meddle: (...statements: readonly string[]) => Promise<void>;
  /** The same with the guards of the tables taken away. */
  readonly meddleUnguarded: (...statements: readonly string[]) => Promise<void>;
}

export interface PlaceMaker {
  readonly name: string;
  readonly make: () => Promise<Place>;
  readonly cleanUp: () => Promise<void>;
}

export const sqlitePlaces = (): PlaceMaker => {
  const folder = mkdtempSync(join(tmpdir(), 'ballast-'));
  let made = 0;
  return {
    name: 'SQLite',
    make: () => Promise.resolve(sqlitePlace(join(folder, `${(made += 1)}.sqlite`))),
    cleanUp: () => Promise.resolve(rmSync(folder, { recursive: true, force: true })),
  };
};

export const sqlitePlace = (path: string): Place => {
  const run = (statements: readonly string[]): Promise<void> => {
    const database = new DatabaseSync(path);
    try {
      for (const statement of statements) database.exec(statement);
      return Promise.resolve();
    } catch (error) {
      return Promise.reject(error instanceof Error ? error : new Error(String(error)));
    } finally {
      database.close();
    }
  };
  return {
    open: ({ about = 'own', ...how } = {}) => openLogStore({ file: { path }, clock: testClock, about }, how),
    meddle: (...statements) => run(statements),
    meddleUnguarded: (...statements) => run([...SQLITE_GUARDS.map((guard) => `drop trigger ${guard}`), ...statements]),
  };
};

const SQLITE_GUARDS = ['log_refuses_update', 'log_refuses_delete', 'log_grows_at_its_end'];

export const postgresPlaces = (): PlaceMaker => {
  const server = new PGlite();
  return {
    name: 'PostgreSQL',
    make: async () => {
      await server.exec('drop schema public cascade; create schema public');
      return postgresPlace(server);
    },
    cleanUp: () => server.close(),
  };
};

const postgresPlace = (server: PGlite): Place => ({
  open: ({ about = 'own', ...how } = {}) =>
    openLog(postgresEngine(server), { clock: testClock, about, place: 'the PostgreSQL database', ...how }),
  meddle: async (...statements) => {
    for (const statement of statements) await server.exec(statement);
  },
  meddleUnguarded: async (...statements) => {
    for (const statement of ['alter table log disable trigger all', ...statements]) await server.exec(statement);
  },
});

/** SQLSTATE codes, PostgreSQL manual, appendix A. */
const STATES: Readonly<Record<string, FaultKind>> = { '23505': 'constraint', '53100': 'full', '25006': 'read-only' };

const postgresFault = (error: unknown): FaultKind =>
  propertyOf(error, 'code') === '23505' && propertyOf(error, 'constraint') === 'log_supersedes_key'
    ? 'superseded twice'
    : (STATES[String(propertyOf(error, 'code'))] ?? 'unknown');

/** The server stays with the test; an engine is one visit to it. */
const postgresEngine = (server: PGlite): Engine => ({
  dialect: 'postgres',
  kysely: new Kysely<Tables>({ dialect: new PGliteDialect(server) }),
  faultOf: (error) => ({ kind: postgresFault(error), says: messageOf(error) }),
  structureFaults: () => Promise.resolve([]),
  copyInto: null,
  close: () => Promise.resolve(),
});
