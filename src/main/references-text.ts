import type { Check } from '#science/check.ts';
import type { Chapter } from '#science/chapter.ts';
import type { AnyFormula, EntryRecord, Source } from '#science/formula.ts';
import type { AnyMethod } from '#science/method.ts';
import type { AnyTable, Cell } from '#science/sourced-table.ts';
import { ALL_CHECKS, ALL_FORMULAS, ALL_METHODS, ALL_SOURCES, ALL_TABLES, PARTS } from '#science/textbook.ts';

/** docs/references.md: every formula, method and table with its sources and checks, from the records of the Evidence page. */
export const referencesText = (): string =>
  [
    '# References',
    '',
    'Made by `npm run docs` from the records of the formulas: do not edit. The page *Evidence* shows the same with its checks recomputed.',
    '',
    `${ALL_FORMULAS.length} formulas, ${ALL_METHODS.length} methods, ${ALL_TABLES.length} tables, ${ALL_CHECKS.length} checks, ${ALL_SOURCES.length} sources.`,
    '',
    ...PARTS.flatMap(({ heading, says, chapters }) => [
      `## ${heading}`,
      '',
      says,
      '',
      ...chapters.flatMap(chapterLines),
    ]),
    '## Sources',
    '',
    ...ALL_SOURCES.map((source) => `- ${sourceText(source)}`),
    '',
  ].join('\n');

const chapterLines = ({
  heading,
  says,
  formulas = [],
  methods = [],
  tables = [],
  checks,
}: Chapter): readonly string[] => {
  const others = checks.filter(({ kind }) => kind === 'series');
  return [
    `### ${heading}`,
    '',
    says,
    '',
    ...formulas.flatMap(formulaLines),
    ...methods.flatMap(methodLines),
    ...tables.flatMap(tableLines),
    ...(others.length > 0 ? [`Further checks of this chapter: ${others.length}, against ${against(others)}.`, ''] : []),
  ];
};

const formulaLines = (formula: AnyFormula): readonly string[] => {
  const { record } = formula;
  const own = ALL_CHECKS.filter((check) => check.kind === 'formula' && check.formula === formula);
  return [
    `#### ${record.title}`,
    '',
    `\`${record.output.symbol} = ${record.equation}\` (${record.output.unit}); \`${record.id}\`, revision ${record.revision}.`,
    '',
    ...(record.conditions ?? []).map(({ says }) => `- Refused otherwise: ${says}`),
    ...(record.standardError
      ? [`- Standard error: ${record.standardError.value} ${record.standardError.unit}, ${record.standardError.of}`]
      : []),
    ...recordLines(record),
    `- Checks: ${own.length}, against ${against(own)}.`,
    '',
  ];
};

const methodLines = (method: AnyMethod): readonly string[] => {
  const { record } = method;
  const own = ALL_CHECKS.filter((check) => check.kind === 'method' && check.method === method);
  return [
    `#### ${record.title}`,
    '',
    ...record.equations.map((equation) => `- \`${equation}\``),
    `- Takes: ${record.inputs.map(({ name, unit }) => `${name} (${unit})`).join(', ')}.`,
    `- Gives: ${record.outputs.map(({ name, unit }) => `${name} (${unit})`).join(', ')}; \`${record.id}\`, revision ${record.revision}.`,
    ...record.refuses.map((sentence) => `- Refuses: ${sentence}`),
    ...recordLines(record),
    `- Checks: ${own.length}, against ${against(own)}.`,
    '',
  ];
};

const tableLines = ({ record, columns, shown }: AnyTable): readonly string[] => [
  `#### ${record.title}`,
  '',
  tableRow(columns.map(({ name, unit }) => (unit === '' ? name : `${name} (${unit})`))),
  tableRow(columns.map(() => '---')),
  ...shown.map(tableRow),
  '',
  `- \`${record.id}\`, revision ${record.revision}.`,
  ...recordLines(record),
  '',
];

const tableRow = (cells: readonly Cell[]): string =>
  `| ${cells.map((cell) => String(cell ?? '–').replaceAll('|', '\\|')).join(' | ')} |`;

const recordLines = ({ source, restsOn = [], doesNotKnow }: EntryRecord): readonly string[] => [
  `- Source: ${sourceText(source)}`,
  ...restsOn.map((other) => `- Rests on: ${sourceText(other)}`),
  `- Does not know: ${doesNotKnow}`,
];

const against = (checks: readonly Check[]): string =>
  [...new Set(checks.map((check) => check.source.text.replace(/\.$/, '')))].join('; ');

const sourceText = ({ text, status, doi, note }: Source): string =>
  `${text.replace(/\.$/, '')}${doi ? `, doi ${doi}` : ''}. *${status}*${note ? `: ${note}` : ''}`;
