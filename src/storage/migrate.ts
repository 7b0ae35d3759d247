import { Migrator, sql } from 'kysely';
import type { Engine } from './engine.ts';
import type { DatedMigration } from './migrations/migration-list.ts';

export type MigrationState =
  /** `done` of them have run before; the rest wait. */
  | { readonly kind: 'known'; readonly done: number }
  /** A later version of the program was here. */
  | { readonly kind: 'newer'; readonly unknown: readonly string[] };

/** How far the tables of a database have come, measured by the steps that this program knows. */
export const migrationState = async (engine: Engine, known: readonly DatedMigration[]): Promise<MigrationState> => {
  const done = (await isMigrationTableThere(engine)) ? await namesOfDone(engine) : [];
  const unknown = done.filter((name) => !known.some((migration) => migration.name === name));
  return unknown.length > 0 ? { kind: 'newer', unknown } : { kind: 'known', done: done.length };
};

/** Runs the steps that wait, all in one transaction. */
export const migrate = async ({ kysely, dialect }: Engine, known: readonly DatedMigration[]): Promise<void> => {
  const steps = known.map(({ name, up }) => [name, { up: (db: Parameters<typeof up>[0]) => up(db, dialect) }] as const);
  const migrator = new Migrator({
    db: kysely,
    provider: { getMigrations: () => Promise.resolve(Object.fromEntries(steps)) },
  });
  const { error } = await migrator.migrateToLatest();
  if (error !== undefined) throw error;
};

const namesOfDone = async ({ kysely }: Engine): Promise<readonly string[]> => {
  const rows = await kysely.selectFrom('kysely_migration').select('name').orderBy('name').execute();
  return rows.map(({ name }) => name);
};

const isMigrationTableThere = async ({ kysely, dialect }: Engine): Promise<boolean> => {
  const { rows } =
    dialect === 'sqlite'
      ? await sql`select 1 from sqlite_master where type = 'table' and name = 'kysely_migration'`.execute(kysely)
      : await sql`select 1 from information_schema.tables where table_name = 'kysely_migration'`.execute(kysely);
  return rows.length > 0;
};
