import { checkedAs, type FormulaInput, type Source } from '#science/formula.ts';
import { checksOf, recordOf, type Entry, type OutlineChapter, type OutlinePart } from './outline.ts';

/** The search: every word that is typed must stand somewhere in the entry, its chapter or its papers. */

export const wordsOf = (sought: string): readonly string[] => plain(sought).split(/\s+/).filter(Boolean);

/** Parts with the chapters and entries that hold every word; all of them where no word is given. */
export const foundIn = (parts: readonly OutlinePart[], words: readonly string[]): readonly OutlinePart[] => {
  if (words.length === 0) return parts;
  return parts
    .map((part) => ({
      ...part,
      chapters: part.chapters.map((chapter) => foundInChapter(part, chapter, words)).filter(isWorthShowing),
    }))
    .filter(({ chapters }) => chapters.length > 0);
};

const foundInChapter = (part: OutlinePart, chapter: OutlineChapter, words: readonly string[]): OutlineChapter => {
  const around = plain(`${part.heading} ${chapter.heading}`);
  const holds = (text: string): boolean => words.every((word) => text.includes(word) || around.includes(word));
  return {
    ...chapter,
    entries: chapter.entries.filter((entry) => holds(textOf(entry))),
    further: chapter.further.filter(({ title, source }) => holds(plain(`${title} ${sourceText(source)}`))),
  };
};

const isWorthShowing = ({ entries, further }: OutlineChapter): boolean => entries.length + further.length > 0;

export const foundSources = (sources: readonly Source[], words: readonly string[]): readonly Source[] =>
  sources.filter((source) => {
    const text = plain(sourceText(source));
    return words.every((word) => text.includes(word));
  });

export const countOf = (parts: readonly OutlinePart[]): number =>
  parts.flatMap(({ chapters }) => chapters.flatMap(({ entries }) => entries)).length;

/** Lower case without accents, subscripts as they are read: "Müller" is found by "muller", `n_eff` by "neff". */
const plain = (text: string): string =>
  text.normalize('NFKD').replaceAll(/\p{M}/gu, '').replaceAll('−', '-').toLowerCase();

const kept = new WeakMap<object, string>();

/** All that an entry says, ready to be searched. */
const textOf = (entry: Entry): string => {
  const record = recordOf(entry);
  const known = kept.get(record);
  if (known !== undefined) return known;
  const said = plain([...recordTexts(entry), ...ownTexts(entry)].join(' '));
  // A symbol is found with and without the mark of its subscript.
  const text = `${said} ${said.replaceAll(/(?<=\S)_(?=\S)/g, '')}`;
  kept.set(record, text);
  return text;
};

const recordTexts = (entry: Entry): readonly string[] => {
  const { id, title, source, restsOn = [], doesNotKnow, plot } = recordOf(entry);
  const checks = checksOf(entry).map(
    (check) => `${check.kind === 'formula' ? '' : check.title} ${sourceText(check.source)}`,
  );
  const curves = plot ? [plot.says, plot.x.name, plot.y.name] : [];
  return [
    entry.kind,
    id,
    title,
    doesNotKnow,
    checkedAs(recordOf(entry)),
    ...[source, ...restsOn].map(sourceText),
    ...curves,
    ...new Set(checks),
  ];
};

const ownTexts = (entry: Entry): readonly string[] => {
  switch (entry.kind) {
    case 'formula': {
      const { equation, inputs, output, conditions = [], standardError } = entry.formula.record;
      const says = conditions.map((condition) => condition.says);
      return [equation, ...quantityTexts([...inputs, output]), ...says, standardError?.of ?? ''];
    }
    case 'method': {
      const { equations, inputs, outputs, refuses } = entry.method.record;
      return [...equations, ...quantityTexts([...inputs, ...outputs]), ...refuses];
    }
    case 'table': {
      const { columns, shown } = entry.table;
      return [...columns.map(({ name, unit }) => `${name} ${unit}`), ...shown.flat().map((cell) => String(cell ?? ''))];
    }
  }
};

const quantityTexts = (quantities: readonly Pick<FormulaInput, 'name' | 'symbol' | 'unit'>[]): readonly string[] =>
  quantities.map(({ name, symbol, unit }) => `${name} ${symbol} ${unit}`);

const sourceText = ({ text, status, doi = '', note = '' }: Source): string => `${text} ${status} ${doi} ${note}`;
