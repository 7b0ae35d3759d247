import type { Problem } from '#contract/problem.ts';

/** The fields of a form, as refusals call them, with the words over them. */
export type Labels = Readonly<Record<string, string>>;

/**
 * Brings a refusal to the field in which it was typed: "entries.0.entry.exercise.cues.2" is the third line of the field
 * "entry.exercise.cues". Where the refusal begins with the log's own name of the field, the field's label stands instead.
 */
export const atItsField = (problem: Problem, labels: Labels): Problem => {
  const path = problem.field?.replace(/^(entries\.)?\d+\./, '').replace(/^body\./, '') ?? null;
  if (path === null) return problem;
  const field = Object.keys(labels)
    .filter((name) => path === name || path.startsWith(`${name}.`))
    .reduce((longest, name) => (name.length > longest.length ? name : longest), '');
  if (field === '') return { ...problem, field: path };
  const said = shownPath(path);
  const label = `${labels[field] ?? ''}${placeIn(path.slice(field.length + 1))}`;
  return {
    ...problem,
    field,
    what: problem.what.startsWith(said) ? `${label}${problem.what.slice(said.length)}` : problem.what,
  };
};

/** Lines are counted from one, as people count. */
const placeIn = (rest: string): string => {
  const [place] = rest.split('.');
  return place !== undefined && /^\d+$/.test(place) ? `, line ${Number(place) + 1}` : '';
};

/** A path as the log's schema writes it into its refusals: "sets 3, load, text". */
const shownPath = (path: string): string =>
  path
    .split('.')
    .map((part) => (/^\d+$/.test(part) ? ` ${Number(part) + 1}` : `, ${part}`))
    .join('')
    .replace(/^,? /, '');
