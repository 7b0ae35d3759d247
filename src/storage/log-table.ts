/**
 * No column of these tables is ever updated. UNIQUE (supersedes) tells the second corrector of the first. What `content`
 * says is repeated in columns for the database's own rules and for whoever looks into it; both are compared when read.
 */
export interface LogRow {
  readonly sequence: number;
  readonly id: string;
  readonly kind: string;
  readonly person_id: string | null;
  /** JSON list of audiences. */
  readonly audience: string;
  readonly supersedes: string | null;
  readonly reason: string | null;
  readonly recorded_at: string;
  readonly recorded_by: string;
  /** Canonical JSON (RFC 8785) of everything but the digest: the very text whose SHA-256 the digest is. */
  readonly content: string;
  readonly digest: string;
}

/** One row, written when the database is made. */
export interface AboutRow {
  readonly place: number;
  readonly database_id: string;
  readonly kind: string;
  readonly made_at: string;
}

export interface Tables {
  log: LogRow;
  about: AboutRow;
  /** Kysely's own list of what was migrated. */
  kysely_migration: { readonly name: string; readonly timestamp: string };
}
