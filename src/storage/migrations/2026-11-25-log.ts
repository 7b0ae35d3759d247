import { sql, type Kysely } from 'kysely';

// oxlint-disable-next-line typescript/no-explicit-any -- a migration stands between two shapes of the tables
export const up = async (db: Kysely<any>, dialect: 'sqlite' | 'postgres'): Promise<void> => {
  await db.schema
    .createTable('log')
    .addColumn('sequence', 'integer', (column) => column.primaryKey())
    .addColumn('id', 'text', (column) => column.notNull().unique())
    .addColumn('kind', 'text', (column) => column.notNull())
    .addColumn('person_id', 'text')
    .addColumn('audience', 'text', (column) => column.notNull())
    .addColumn('supersedes', 'text', (column) => column.unique().references('log.id'))
    .addColumn('reason', 'text')
    .addColumn('recorded_at', 'text', (column) => column.notNull())
    .addColumn('recorded_by', 'text', (column) => column.notNull())
    .addColumn('content', 'text', (column) => column.notNull())
    .addColumn('digest', 'text', (column) => column.notNull())
    .execute();
  await db.schema
    .createTable('about')
    .addColumn('place', 'integer', (column) => column.primaryKey().check(sql`place = 1`))
    .addColumn('database_id', 'text', (column) => column.notNull())
    .addColumn('kind', 'text', (column) => column.notNull().check(sql`kind in ('scenario', 'own')`))
    .addColumn('made_at', 'text', (column) => column.notNull())
    .execute();
  for (const statement of dialect === 'sqlite' ? SQLITE_TRIGGERS : POSTGRES_TRIGGERS)
    await sql.raw(statement).execute(db);
};

const TABLES = ['log', 'about'] as const;

const SQLITE_TRIGGERS = [
  ...TABLES.flatMap((table) =>
    ['update', 'delete'].map(
      (change) => `create trigger ${table}_refuses_${change} before ${change} on ${table}
        begin select raise(abort, 'what is written here is never changed'); end`,
    ),
  ),
  `create trigger log_grows_at_its_end before insert on log
     when new.sequence <> (select coalesce(max(sequence), 0) + 1 from log)
     begin select raise(abort, 'a fact takes the next place in the log'); end`,
];

const POSTGRES_TRIGGERS = [
  `create function refuse_change() returns trigger language plpgsql as
     $$ begin raise exception 'what is written here is never changed'; end $$`,
  ...TABLES.map(
    (table) => `create trigger ${table}_refuses_change before update or delete or truncate on ${table}
      for each statement execute function refuse_change()`,
  ),
  `create function grow_at_end() returns trigger language plpgsql as
     $$ begin
       if new.sequence <> (select coalesce(max(sequence), 0) + 1 from log) then
         raise exception 'a fact takes the next place in the log';
       end if;
       return new;
     end $$`,
  `create trigger log_grows_at_its_end before insert on log for each row execute function grow_at_end()`,
];
