import { DatabaseSync, type DatabaseSyncInstance } from '@photostructure/sqlite';
import { Kysely, SqliteAdapter, SqliteDialect, type DialectAdapter, type SqliteDatabase } from 'kysely';
import { messageOf, propertyOf, type Engine, type Fault, type FaultKind } from './engine.ts';
import type { Tables } from './log-table.ts';

/** "BALS": tells our files from other programs' SQLite files. */
const APPLICATION_ID = 0x42414c53;

/** How long an opening waits for a process that is just closing the file [ms]. */
const PATIENCE = 1000;

export interface SqliteOptions {
  readonly location: string;
  readonly use: 'alone' | 'to read only';
  /** The most pages the file may have: a disk that is full, for trials. */
  readonly mostPages?: number;
}

/** Thrown where a file belongs to another program; nothing was written to it. */
class OfAnotherProgram extends Error {}

/** The only place that knows the driver. Throws where the file cannot be opened; `sqliteFaultOf` says why. */
export const openSqlite = ({ location, use, mostPages }: SqliteOptions): Engine => {
  const database = new DatabaseSync(location, {
    timeout: PATIENCE,
    enableForeignKeyConstraints: true,
    defensive: true,
    readOnly: use === 'to read only',
  });
  try {
    database.exec(use === 'alone' ? KEEP_LOCKS : UNTRUSTED);
    const kind = fileKind(database);
    if (kind === 'of another program') throw new OfAnotherProgram('another program made this file');
    if (mostPages !== undefined) database.exec(`pragma max_page_count = ${mostPages}`);
    if (use === 'alone') database.exec(WRITE_ALONE);
    if (use === 'alone' && kind === 'empty') database.exec(`pragma application_id = ${APPLICATION_ID}`);
  } catch (error) {
    closeAfter(database, GIVE_UP_LOCKS);
    throw error;
  }
  return engineOf(database);
};

/** What stands in a file cannot make us call functions that we did not mean. */
const UNTRUSTED = 'pragma trusted_schema = off;';

/**
 * The file is locked for this process alone, by the operating system: the lock is gone when the process is, however it
 * ended, and no file with a process number can go stale. While it is open nothing else in this process may open and
 * close the file by other means: POSIX would take the lock away.
 */
const KEEP_LOCKS = `${UNTRUSTED} pragma locking_mode = exclusive;`;

/** Recursive triggers let the refusal of deletion see a REPLACE too. */
const WRITE_ALONE = `
  pragma journal_mode = wal;
  pragma synchronous = full;
  pragma recursive_triggers = on;
  begin exclusive;
  commit;
`;

/** A file without tables is one that is being made. Only reads. */
const fileKind = (database: DatabaseSyncInstance): 'empty' | 'ours' | 'of another program' => {
  const tables = propertyOf(database.prepare('select count(*) as tables from sqlite_master').get(), 'tables');
  if (tables === 0) return 'empty';
  const id = propertyOf(database.prepare('pragma application_id').get(), 'application_id');
  return id === APPLICATION_ID ? 'ours' : 'of another program';
};

const engineOf = (database: DatabaseSyncInstance): Engine => ({
  dialect: 'sqlite',
  kysely: new Kysely<Tables>({ dialect: new TransactionalSqlite({ database: asKyselyExpects(database) }) }),
  faultOf: sqliteFaultOf,
  structureFaults: () =>
    Promise.resolve(
      database
        .prepare('pragma integrity_check')
        .all()
        .map((row: unknown) => String(propertyOf(row, 'integrity_check')))
        .filter((line) => line !== 'ok'),
    ),
  copyInto: (path) => Promise.resolve(void database.prepare('vacuum into ?').run(path)),
  close: () => Promise.resolve(closeAfter(database, LEAVE_WRITE_AHEAD_LOG)),
});

const GIVE_UP_LOCKS = 'pragma locking_mode = normal; select count(*) from sqlite_master';
const LEAVE_WRITE_AHEAD_LOG = `pragma journal_mode = delete; ${GIVE_UP_LOCKS}`;

/**
 * The driver keeps a closed file open until the last statement on it was collected as garbage, so closing alone would
 * not give up the lock. Leaving the write-ahead log does, and leaves one file without a journal beside it.
 */
const closeAfter = (database: DatabaseSyncInstance, lastWords: string): void => {
  try {
    database.exec(lastWords);
  } catch {
    // A full or broken disk: the journal stays and is read at the next opening; the lock goes with the process.
  }
  database.close();
};

/** Kysely takes SQLite for a database whose tables cannot be changed in a transaction; they can. */
class TransactionalSqlite extends SqliteDialect {
  override createAdapter(): DialectAdapter {
    return new TransactionalAdapter();
  }
}

class TransactionalAdapter extends SqliteAdapter {
  override get supportsTransactionalDdl(): boolean {
    return true;
  }
}

const asKyselyExpects = (database: DatabaseSyncInstance): SqliteDatabase => ({
  close: () => database.close(),
  prepare: (text) => {
    // A full disk ends a transaction by itself; to roll back once more would hide the reason.
    if (text === 'rollback' && !database.isTransaction) return NOTHING_TO_DO;
    const statement = database.prepare(text);
    return {
      reader: statement.columns().length > 0,
      all: (parameters): unknown[] => statement.all(...parameters),
      run: (parameters) => statement.run(...parameters),
      iterate: (parameters) => statement.iterate(...parameters),
    };
  },
});

const NOTHING_TO_DO = {
  reader: false,
  all: () => [],
  run: () => ({ changes: 0, lastInsertRowid: 0 }),
  iterate: () => [].values(),
};

/** Primary result codes of SQLite, sqlite.org/rescode.html. */
const FAULTS: Readonly<Record<number, FaultKind>> = {
  5: 'locked',
  6: 'locked',
  8: 'read-only',
  11: 'damaged',
  13: 'full',
  14: 'cannot be opened',
  19: 'constraint',
  26: 'damaged',
};

export const sqliteFaultOf = (error: unknown): Fault => ({ kind: faultKind(error), says: messageOf(error) });

const faultKind = (error: unknown): FaultKind => {
  if (error instanceof OfAnotherProgram) return 'of another program';
  const code = propertyOf(error, 'errcode');
  if (typeof code !== 'number') return 'unknown';
  if (code === UNIQUE_VIOLATION && messageOf(error).includes('log.supersedes')) return 'superseded twice';
  return FAULTS[code & 0xff] ?? 'unknown';
};

const UNIQUE_VIOLATION = 2067;
