import type { Kysely } from 'kysely';
import type { Tables } from './log-table.ts';
import type { DialectName } from './migrations/migration-list.ts';

/** What went wrong in a database, whichever it is. */
export type FaultKind =
  | 'superseded twice'
  | 'constraint'
  | 'full'
  | 'read-only'
  | 'locked'
  | 'cannot be opened'
  | 'of another program'
  | 'damaged'
  | 'unknown';

export interface Fault {
  readonly kind: FaultKind;
  /** The database's own words. */
  readonly says: string;
}

/** One open database: what differs between SQLite and PostgreSQL stands here, everything else is the same code. */
export interface Engine {
  readonly dialect: DialectName;
  readonly kysely: Kysely<Tables>;
  readonly faultOf: (error: unknown) => Fault;
  /** What the database finds wrong with its own structure; empty where it is sound or cannot tell. */
  readonly structureFaults: () => Promise<readonly string[]>;
  /** Writes a compact copy into an empty file, or null where the database makes its copies elsewhere. */
  readonly copyInto: ((path: string) => Promise<void>) | null;
  readonly close: () => Promise<void>;
}

export const messageOf = (error: unknown): string => (error instanceof Error ? error.message : String(error));

/** A property of an error that may be there, such as the code a driver adds. */
export const propertyOf = (error: unknown, name: string): unknown =>
  typeof error === 'object' && error !== null ? (error as Readonly<Record<string, unknown>>)[name] : undefined;
