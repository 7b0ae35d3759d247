import type { Fact } from '#domain/fact.ts';
import type { Engine } from './engine.ts';
import type { LogRow } from './log-table.ts';
import { factOfRow } from './row-of-fact.ts';

/** A place in the log where something is wrong. */
export interface Damage {
  readonly sequence: number;
  readonly says: string;
}

export type LogReading =
  | { readonly kind: 'log'; readonly facts: readonly Fact[] }
  | { readonly kind: 'damaged'; readonly damages: readonly Damage[] };

/** Reads the whole log and verifies every fact of it. */
export const readLog = async ({ kysely }: Engine): Promise<LogReading> => {
  const rows = await kysely.selectFrom('log').selectAll().orderBy('sequence').execute();
  const readings = rows.map((row) => ({ sequence: row.sequence, reading: factOfRow(row) }));
  const damages = [
    ...missingPlaces(rows),
    ...readings.flatMap(({ sequence, reading }) =>
      reading.kind === 'damaged' ? [{ sequence, says: reading.says }] : [],
    ),
  ];
  if (damages.length > 0) return { kind: 'damaged', damages: damages.sort((a, b) => a.sequence - b.sequence) };
  return { kind: 'log', facts: readings.flatMap(({ reading }) => (reading.kind === 'fact' ? [reading.fact] : [])) };
};

const missingPlaces = (rows: readonly LogRow[]): readonly Damage[] => {
  const there = new Set(rows.map(({ sequence }) => sequence));
  const last = rows.at(-1)?.sequence ?? 0;
  return Array.from({ length: last }, (_, place) => place + 1)
    .filter((sequence) => !there.has(sequence))
    .map((sequence) => ({ sequence, says: 'it is missing' }));
};

const MOST_NAMED = 10;

/** "fact 12 (its digest belongs to other content), fact 15 (it is missing)": the first ten. */
export const showDamages = (damages: readonly Damage[]): string => {
  const named = damages.slice(0, MOST_NAMED).map(({ sequence, says }) => `fact ${sequence} (${says})`);
  const more = damages.length - named.length;
  return named.join(', ') + (more > 0 ? ` and ${more} more` : '');
};
