import type { Source, SourceStatus } from './formula.ts';

/**
 * A paper with how far it was checked: *seen* means that the abstract, table or full text was read in a public copy;
 * *from memory* means that it is still to be opened. Titles are from memory throughout, or in our own words where a
 * note says so; place, volume and pages are what was checked.
 */
export const cited = (status: SourceStatus, text: string, more: Pick<Source, 'doi' | 'note'> = {}): Source => ({
  text,
  status,
  ...more,
});

/** A source in a cell of a table: authors and year where it is a paper. */
export const authorsAndYear = ({ text }: Source): string => /^.*?\(\d{4}\)/.exec(text)?.[0] ?? text;
