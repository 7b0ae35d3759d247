import type { Fact } from '#domain/fact.ts';
import type { Instant } from '#domain/identity.ts';
import type { LogKind } from './about.ts';
import { backUp, type BackupReport } from './backup.ts';
import type { Engine } from './engine.ts';
import { enterDrafts } from './enter-drafts.ts';
import { inTurn } from './in-turn.ts';
import { checkIntegrity, type IntegrityReport } from './integrity.ts';
import { problemOfFault } from './problems.ts';
import { rowOfFact } from './row-of-fact.ts';
import { addCorrections, noCorrections } from './supersession.ts';
import type { Built, Transacted } from './transaction.ts';

export interface LogStore {
  /** Every fact in order of sequence. A snapshot: what was handed out before never changes. */
  readonly facts: () => readonly Fact[];
  /** Made with the database and never changed. */
  readonly databaseId: string;
  readonly about: { readonly kind: LogKind };
  /**
   * One transaction under the log's lock. `build` sees the log as it stands and the moment at which everything will be
   * recorded; all of its drafts are written, or none.
   */
  readonly transact: <Result>(
    build: (log: readonly Fact[], now: Instant) => Built<Result>,
  ) => Promise<Transacted<Result>>;
  /** Writes a verified copy under a new name. */
  readonly backUpTo: (path: string) => Promise<BackupReport>;
  /** Reads everything once more from the disk and compares. */
  readonly checkIntegrity: () => Promise<IntegrityReport>;
  /** Waits for what is under way, then lets go of the file. */
  readonly close: () => Promise<void>;
}

export interface OpenLog {
  readonly engine: Engine;
  readonly databaseId: string;
  readonly kind: LogKind;
  readonly facts: readonly Fact[];
  readonly clock: () => Instant;
  /** How the place is called in sentences: a path, or "memory". */
  readonly place: string;
}

/** Rows in one statement: SQLite takes 32,766 values in one, a row has eleven. */
const ROWS_AT_ONCE = 500;

export const logStoreOn = (open: OpenLog): LogStore => {
  const { engine, place } = open;
  const take = inTurn();
  let log = open.facts;
  const corrections = noCorrections();
  addCorrections(corrections, log);

  const write = async <Result>(facts: readonly Fact[], result: Result): Promise<Transacted<Result>> => {
    try {
      await insert(engine, facts);
    } catch (error) {
      return { kind: 'not written', problem: problemOfFault(place, engine.faultOf(error)) };
    }
    log = [...log, ...facts];
    addCorrections(corrections, facts);
    return { kind: 'committed', facts, result };
  };

  return {
    facts: () => log,
    databaseId: open.databaseId,
    about: { kind: open.kind },
    transact: (build) =>
      take(async () => {
        const now = open.clock();
        const built = build(log, now);
        if (built.kind === 'refused') return built;
        const entered = enterDrafts(log, corrections, built.drafts, now);
        return entered.kind === 'refused' ? entered : write(entered.facts, built.result);
      }),
    backUpTo: (path) => take(() => backUp(engine, log, path)),
    checkIntegrity: () => take(() => checkIntegrity(engine, log, place)),
    close: () => take(() => engine.close()),
  };
};

const insert = async ({ kysely }: Engine, facts: readonly Fact[]): Promise<void> => {
  if (facts.length === 0) return;
  await kysely.transaction().execute(async (transaction) => {
    for (let from = 0; from < facts.length; from += ROWS_AT_ONCE)
      await transaction
        .insertInto('log')
        .values(facts.slice(from, from + ROWS_AT_ONCE).map(rowOfFact))
        .execute();
  });
};
