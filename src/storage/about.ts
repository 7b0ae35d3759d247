import type { Engine } from './engine.ts';
import type { AboutRow } from './log-table.ts';

/** Whose people a file holds. The invented and the real never share one. */
export type LogKind = 'scenario' | 'own';

export interface About {
  readonly databaseId: string;
  readonly kind: LogKind;
}

/** What a database says of itself, or null where it was not finished when it was made. */
export const readAbout = async ({ kysely }: Engine): Promise<About | null> => {
  const row = await kysely.selectFrom('about').selectAll().executeTakeFirst();
  return row ? { databaseId: row.database_id, kind: row.kind === 'scenario' ? 'scenario' : 'own' } : null;
};

export const writeAbout = async ({ kysely }: Engine, about: About, madeAt: string): Promise<About> => {
  const row: AboutRow = { place: 1, database_id: about.databaseId, kind: about.kind, made_at: madeAt };
  await kysely.insertInto('about').values(row).execute();
  return about;
};
