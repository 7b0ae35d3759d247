import type { Sheet, SheetRow } from '#contract/bring-in.ts';
import type { ExerciseFinder } from './exercise-names.ts';
import { headersIn, type Header } from './header-texts.ts';

export interface FoundHeader {
  readonly row: SheetRow;
  readonly headers: readonly Header[];
}

const ROWS_LOOKED_AT = 40;
const FEWEST_KNOWN = 2;
const SUBJECTS = new Set(['name', 'given name', 'family name', 'mission']);

/** How many columns a header row would give; none where nothing says whom or what the rows are about. */
const score = (headers: readonly Header[]): number => {
  if (!headers.some(({ meaning }) => SUBJECTS.has(meaning.is))) return 0;
  const known = headers.filter(({ meaning }) => meaning.is !== 'left out').length;
  return known >= FEWEST_KNOWN ? known : 0;
};

/** The header row: of the first rows that with most columns whose names are known. Null where there is none. */
export const findHeader = (sheet: Sheet, find: ExerciseFinder): FoundHeader | null => {
  const candidates = sheet.rows.slice(0, ROWS_LOOKED_AT).map((row) => ({ row, headers: headersIn(sheet, row, find) }));
  const best = candidates.reduce<FoundHeader | null>(
    (first, next) => (score(next.headers) > (first ? score(first.headers) : 0) ? next : first),
    null,
  );
  return best;
};

/** The header row that somebody chose by hand. */
export const chosenHeader = (sheet: Sheet, number: number, find: ExerciseFinder): FoundHeader | null => {
  const row = sheet.rows.find((one) => one.number === number);
  return row ? { row, headers: headersIn(sheet, row, find) } : null;
};
