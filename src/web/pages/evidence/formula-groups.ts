import type { Check, FormulaCheck, SeriesCheck } from '#science/check.ts';
import type { AnyFormula } from '#science/formula.ts';

export interface FormulaEntry {
  readonly formula: AnyFormula;
  readonly checks: readonly FormulaCheck[];
}

export interface FormulaGroup {
  readonly id: string;
  readonly title: string;
  readonly entries: readonly FormulaEntry[];
}

/** Formulas by the first part of their path, in the order in which they are given. */
export const formulaGroups = (formulas: readonly AnyFormula[], checks: readonly Check[]): readonly FormulaGroup[] => {
  const groups = new Map<string, FormulaEntry[]>();
  for (const formula of formulas) {
    const group = formula.record.id.split('/')[0] ?? formula.record.id;
    const entries = groups.get(group) ?? [];
    entries.push({ formula, checks: checks.filter((check) => isOf(check, formula)) });
    groups.set(group, entries);
  }
  return [...groups].map(([id, entries]) => ({ id, title: titleOf(id), entries }));
};

export const seriesChecks = (checks: readonly Check[]): readonly SeriesCheck[] =>
  checks.filter((check) => check.kind === 'series');

/** Groups whose formulas, or the papers they rest on, hold every word that is looked for. */
export const foundIn = (groups: readonly FormulaGroup[], sought: string): readonly FormulaGroup[] => {
  const words = sought.toLowerCase().split(/\s+/).filter(Boolean);
  if (words.length === 0) return groups;
  return groups
    .map((group) => ({
      ...group,
      entries: group.entries.filter((entry) => {
        const text = `${group.title} ${textOf(entry)}`;
        return words.every((word) => text.includes(word));
      }),
    }))
    .filter((group) => group.entries.length > 0);
};

const isOf = (check: Check, formula: AnyFormula): check is FormulaCheck =>
  check.kind === 'formula' && check.formula.record.id === formula.record.id;

const textOf = ({ formula: { record } }: FormulaEntry): string =>
  [
    record.id,
    record.title,
    record.equation,
    record.doesNotKnow,
    ...[record.source, ...(record.restsOn ?? [])].flatMap((source) => [source.text, source.status, source.note ?? '']),
    ...record.inputs.map((input) => `${input.name} ${input.symbol}`),
  ]
    .join(' ')
    .toLowerCase();

/** "one-rep-max" → "One rep max". */
const titleOf = (id: string): string => {
  const words = TITLES[id] ?? id.replaceAll('-', ' ');
  return words.charAt(0).toUpperCase() + words.slice(1);
};

const TITLES: Readonly<Record<string, string>> = {
  'one-rep-max': 'One-repetition maximum of a set',
  'repetition-multiplier': 'Multipliers of repetitions',
  'repetition-maximum': 'Repetition maximum and ratio',
  'repetition-fraction': 'Fraction of the maximum that repetitions allow',
  effort: 'Effort and repetitions in reserve',
  estimate: 'How sure one set is',
  regression: 'Published regressions',
  body: 'Body segments and postures',
  share: 'Share of body weight that a lift moves',
  'body-weight-share': 'Share of body weight that a lift moves',
  'static-share': 'Share of body weight above a level, standing',
  'axial-load': 'Load at a level of the body',
  'percent-of-system': 'Two readings of a percentage',
  calibration: 'Calibration of a machine',
  crossing: 'The crossing between 1 g and 0 g',
  filter: 'Capacity over time',
};
