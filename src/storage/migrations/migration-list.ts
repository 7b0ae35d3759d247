import type { Kysely } from 'kysely';
import * as log from './2026-11-25-log.ts';

export type DialectName = 'sqlite' | 'postgres';

/** A dated step of the tables. Frozen once it was released: it imports nothing of ours and is never edited. */
export interface DatedMigration {
  readonly name: string;
  // oxlint-disable-next-line typescript/no-explicit-any -- a migration stands between two shapes of the tables
  readonly up: (db: Kysely<any>, dialect: DialectName) => Promise<void>;
}

/** In order of their names, which is the order in which they run. */
export const MIGRATIONS: readonly DatedMigration[] = [{ name: '2026-11-25-log', up: log.up }];
