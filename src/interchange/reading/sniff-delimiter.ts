export type Delimiter = ',' | ';' | '\t';

export const DELIMITER_NAMES: Readonly<Record<Delimiter, string>> = { ',': 'commas', ';': 'semicolons', '\t': 'tabs' };

/** In this order where two fit equally: a tab or a semicolon is seldom part of a value, a comma often is. */
const CANDIDATES: readonly Delimiter[] = ['\t', ';', ','];
const LINES_LOOKED_AT = 100;

/** The first lines of a text; a line break inside quotes ends none. */
const firstLines = (text: string): readonly string[] => {
  const lines: string[] = [];
  let start = 0;
  let inQuotes = false;
  for (let at = 0; at <= text.length && lines.length < LINES_LOOKED_AT; at += 1) {
    const character = text[at];
    if (character === '"') inQuotes = !inQuotes;
    const ends = character === undefined || (!inQuotes && (character === '\n' || character === '\r'));
    if (!ends) continue;
    lines.push(text.slice(start, at));
    start = at + 1;
  }
  return lines.filter((line) => line.trim() !== '');
};

const fieldCount = (line: string, delimiter: Delimiter): number => {
  let count = 1;
  let inQuotes = false;
  for (const character of line) {
    if (character === '"') inQuotes = !inQuotes;
    else if (character === delimiter && !inQuotes) count += 1;
  }
  return count;
};

/** How many lines agree on the commonest number of fields above one, and that number. */
const agreement = (
  lines: readonly string[],
  delimiter: Delimiter,
): { readonly lines: number; readonly fields: number } => {
  const tally = new Map<number, number>();
  for (const line of lines) {
    const fields = fieldCount(line, delimiter);
    if (fields > 1) tally.set(fields, (tally.get(fields) ?? 0) + 1);
  }
  return [...tally].reduce(
    (best, [fields, count]) =>
      count > best.lines || (count === best.lines && fields > best.fields) ? { lines: count, fields } : best,
    { lines: 0, fields: 1 },
  );
};

/**
 * What separates the values: that on which most lines agree. In "Name;Squat" over "Ana;102,5" lines agree on
 * semicolons from the header down, on commas only below it. A text without any is one column, read as by commas.
 */
export const sniffDelimiter = (text: string): Delimiter => {
  const lines = firstLines(text);
  const scored = CANDIDATES.map((delimiter) => ({ delimiter, ...agreement(lines, delimiter) }));
  const best = scored.reduce((first, next) =>
    next.lines > first.lines || (next.lines === first.lines && next.fields > first.fields) ? next : first,
  );
  return best.lines === 0 ? ',' : best.delimiter;
};
