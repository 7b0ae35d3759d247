import type { Check } from '#science/check.ts';
import type { Chapter } from '#science/chapter.ts';
import { checkedAs, type AnyFormula, type EntryRecord, type FormulaInput, type Source } from '#science/formula.ts';
import type { AnyMethod } from '#science/method.ts';
import type { AnyTable, Cell } from '#science/sourced-table.ts';
import { ALL_CHECKS, ALL_FORMULAS, ALL_METHODS, ALL_SOURCES, ALL_TABLES, PARTS } from '#science/textbook.ts';
import { byAuthor } from '#web/pages/evidence/by-author.ts';
import { shortSource } from '#web/pages/evidence/checks/check-groups.ts';
import { wholeEquation } from '#web/pages/evidence/equation/whole-equation.ts';

/** docs/references.md: every formula, method and table with its sources and checks, from the records of the Evidence page. */
export const referencesText = (): string =>
  [
    '# References',
    '',
    'Made by `npm run docs` from the records of the formulas: do not edit. The page *Evidence* shows the same with equations set, curves drawn, every check recomputed and every input to be tried.',
    '',
    `${ALL_FORMULAS.length} formulas, ${ALL_METHODS.length} methods and ${ALL_TABLES.length} tables, held by ${ALL_CHECKS.length} checks; ${ALL_SOURCES.length} sources, in full at the end under the numbers in brackets.`,
    '',
    'How far a source was checked: *seen*, read in a public copy; *from memory*, still to be opened; *common practice* of the trade, without a paper; *our own design*. An input outside its possible range is refused; outside its valid range, named here where it is narrower, the result is computed and flagged.',
    '',
    ...contents(),
    '',
    ...PARTS.flatMap(({ heading, says, chapters }, part) => [
      `## ${part + 1} ${heading}`,
      '',
      says,
      '',
      ...chapters.flatMap((chapter, place) => chapterLines(`${part + 1}.${place + 1}`, chapter)),
    ]),
    '## Sources',
    '',
    ...SOURCES.map((source, place) => `${place + 1}. ${sourceText(source)}`),
    '',
  ].join('\n');

const contents = (): readonly string[] =>
  PARTS.map(
    ({ heading, chapters }, part) =>
      `- ${part + 1} ${heading}: ${chapters.map((chapter, place) => `${part + 1}.${place + 1} ${chapter.heading}`).join('; ')}`,
  );

const chapterLines = (number: string, chapter: Chapter): readonly string[] => {
  const { heading, says, formulas = [], methods = [], tables = [], checks } = chapter;
  const others = checks.filter(({ kind }) => kind === 'series');
  return [
    `### ${number} ${heading}`,
    '',
    says,
    '',
    ...formulas.flatMap(formulaLines),
    ...methods.flatMap(methodLines),
    ...tables.flatMap(tableLines),
    ...(others.length > 0 ? [`Checks of more than one entry: ${counted(others)}.`, ''] : []),
  ];
};

const formulaLines = (formula: AnyFormula): readonly string[] => {
  const { record } = formula;
  const { id, revision, title, equation, inputs, output, conditions = [], standardError } = record;
  return [
    `#### ${title}`,
    '',
    `\`${wholeEquation(output.symbol, equation)}\`${inUnit(output.unit)}; \`${id}\`, revision ${revision}.`,
    '',
    ...(inputs.length > 0 ? [`- Takes: ${inputs.map(inputText).join('; ')}.`] : []),
    ...conditions.map(({ says }) => `- Refused otherwise: ${says}`),
    ...(standardError
      ? [`- Standard error: ${standardError.value}${ofUnit(standardError.unit)}, ${standardError.of}`]
      : []),
    ...recordLines(record),
    ...checkLine(ALL_CHECKS.filter((check) => check.kind === 'formula' && check.formula === formula)),
    '',
  ];
};

const methodLines = (method: AnyMethod): readonly string[] => {
  const { record } = method;
  const { id, revision, title, equations, inputs, outputs, refuses } = record;
  return [
    `#### ${title}`,
    '',
    `\`${id}\`, revision ${revision}:`,
    '',
    ...equations.map((equation, place) => `${place + 1}. \`${equation}\``),
    '',
    `- Takes: ${inputs.map(inputText).join('; ')}.`,
    `- Gives: ${outputs.map(({ name, symbol, unit }) => `${name} \`${symbol}\`${inUnit(unit)}`).join('; ')}.`,
    ...refuses.map((sentence) => `- Refuses: ${sentence}`),
    ...recordLines(record),
    ...checkLine(ALL_CHECKS.filter((check) => check.kind === 'method' && check.method === method)),
    '',
  ];
};

const tableLines = ({ record, columns, shown }: AnyTable): readonly string[] => [
  `#### ${record.title}`,
  '',
  tableRow(columns.map(({ name, unit }) => `${name}${inUnit(unit)}`)),
  tableRow(columns.map(() => '---')),
  ...shown.map(tableRow),
  '',
  `- \`${record.id}\`, revision ${record.revision}.`,
  ...recordLines(record),
  '',
];

const tableRow = (cells: readonly Cell[]): string =>
  `| ${cells.map((cell) => String(cell ?? '–').replaceAll('|', '\\|')).join(' | ')} |`;

/** "load `w` (kg), valid from 1 to 500". */
const inputText = ({ name, symbol, unit, possible, valid }: FormulaInput): string => {
  const isNarrower = valid[0] !== possible[0] || valid[1] !== possible[1];
  return `${name} \`${symbol}\`${inUnit(unit)}${isNarrower ? `, valid from ${valid[0]} to ${valid[1]}` : ''}`;
};

const ofUnit = (unit: string): string => (unit === '' || unit === '1' ? '' : ` ${unit}`);

const inUnit = (unit: string): string => (unit === '' || unit === '1' ? '' : ` (${unit})`);

const recordLines = (record: EntryRecord): readonly string[] => {
  const { source, restsOn = [], doesNotKnow } = record;
  return [
    `- Source: ${shortText(source)}, *${checkedAs(record)}*.`,
    ...(restsOn.length > 0 ? [`- Rests on: ${restsOn.map(shortText).join('; ')}.`] : []),
    `- Does not know: ${doesNotKnow}`,
  ];
};

const checkLine = (checks: readonly Check[]): readonly string[] =>
  checks.length > 0 ? [`- Checks: ${counted(checks)}.`] : [];

/** "12, against Brzycki M. (1993) [7]". */
const counted = (checks: readonly Check[]): string =>
  `${checks.length}, against ${[...new Set(checks.map((check) => shortText(check.source)))].join('; ')}`;

const SOURCES = byAuthor(ALL_SOURCES);
const NUMBERS: ReadonlyMap<string, number> = new Map(SOURCES.map(({ text }, place) => [text, place + 1]));

/** A source as it is called in the text, with its number in the list. */
const shortText = ({ text }: Source): string => `${shortSource(text).replace(/\.$/, '')} [${NUMBERS.get(text) ?? '–'}]`;

const sourceText = ({ text, status, doi, note }: Source): string =>
  `${text.replace(/\.$/, '')}${doi ? `, doi ${doi}` : ''}. *${status}*${note ? `: ${note}` : ''}`;
