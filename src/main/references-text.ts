import { ALL_CHECKS } from '#science/checks.ts';
import type { AnyFormula, Check, Source } from '#science/formula.ts';
import { ALL_FORMULAS, CHAPTERS } from '#science/formulas.ts';

/** docs/references.md: every formula with its sources and checks, made from the same records as the Evidence page. */
export const referencesText = (): string =>
  [
    '# References',
    '',
    'Made by `npm run docs` from the records of the formulas: do not edit. The page *Evidence* shows the same with its checks recomputed.',
    '',
    `${ALL_FORMULAS.length} formulas, ${ALL_CHECKS.length} checks, ${sources().length} sources.`,
    '',
    ...CHAPTERS.flatMap(({ heading, says, formulas }) => [
      `## ${heading}`,
      '',
      says,
      '',
      ...formulas.flatMap(formulaLines),
    ]),
    '## Sources',
    '',
    ...sources().map((source) => `- ${sourceText(source)}`),
    '',
  ].join('\n');

const formulaLines = (formula: AnyFormula): readonly string[] => {
  const { record } = formula;
  const checks = ALL_CHECKS.filter((check) => check.kind === 'formula' && check.formula === formula);
  return [
    `### ${record.title}`,
    '',
    `\`${record.output.symbol} = ${record.equation}\` (${record.output.unit}); \`${record.id}\`, revision ${record.revision}.`,
    '',
    `- Source: ${sourceText(record.source)}`,
    ...(record.restsOn ?? []).map((source) => `- Rests on: ${sourceText(source)}`),
    `- Does not know: ${record.doesNotKnow}`,
    checks.length > 0
      ? `- Checks: ${checks.length}, against ${against(checks)}.`
      : '- Checked as a cell of a reckoning.',
    '',
  ];
};

const against = (checks: readonly Check[]): string =>
  [...new Set(checks.map((check) => check.source.text.replace(/\.$/, '')))].join('; ');

const sourceText = ({ text, status, doi, note }: Source): string =>
  `${text.replace(/\.$/, '')}${doi ? `, doi ${doi}` : ''}. *${status}*${note ? `: ${note}` : ''}`;

const sources = (): readonly Source[] => {
  const all = [
    ...ALL_FORMULAS.flatMap(({ record }) => [record.source, ...(record.restsOn ?? [])]),
    ...ALL_CHECKS.map((check) => check.source),
  ];
  return [...new Map(all.map((source) => [source.text, source] as const)).values()].toSorted((a, b) =>
    a.text < b.text ? -1 : 1,
  );
};
