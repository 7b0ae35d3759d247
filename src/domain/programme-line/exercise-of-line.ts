import type { Exercise } from '../catalogue.ts';

/** An exercise at the beginning of a line, with where the rest of the line begins. */
export interface NamedExercise {
  readonly exercise: Exercise;
  readonly end: number;
}

/** The exercise whose name, or other spelling, stands first in a line; of several the longest: "front squat" before "squat". */
export const exerciseOfLine = (line: string, exercises: readonly Exercise[]): NamedExercise | null => {
  let found: NamedExercise | null = null;
  for (const exercise of exercises)
    for (const name of [exercise.name, ...exercise.alsoKnownAs]) {
      const end = endOfName(line, name);
      if (end !== null && (found === null || end > found.end)) found = { exercise, end };
    }
  return found;
};

/** Case, hyphens and the number of spaces do not matter: "pull-down" and "Pull down" are one name. */
const endOfName = (line: string, name: string): number | null => {
  const words = name.split(/[\s-]+/).filter((word) => word !== '');
  let end = line.length - line.trimStart().length;
  for (const [place, word] of words.entries()) {
    const gap = /^[\s-]*/.exec(line.slice(end))?.[0].length ?? 0;
    if (place > 0) end += gap;
    if (line.slice(end, end + word.length).toLowerCase() !== word.toLowerCase()) return null;
    end += word.length;
  }
  return /^[\p{L}\p{N}]/u.test(line.slice(end)) ? null : end;
};

/** What stands before the first number of a line: the name, or as much of it as is typed. */
export const nameOfLine = (line: string): string => (/^\D*/.exec(line)?.[0] ?? '').trim();

const MOST_OFFERED = 8;

/** Exercises whose name goes on from what is typed, those that begin with it first. */
export const exercisesFor = (typed: string, exercises: readonly Exercise[]): readonly Exercise[] => {
  const sought = plain(typed);
  if (sought === '') return [];
  return exercises
    .map((exercise) => ({ exercise, rank: rankOf(sought, exercise) }))
    .filter(({ rank }) => rank < NOT_AT_ALL)
    .toSorted((a, b) => a.rank - b.rank || a.exercise.name.localeCompare(b.exercise.name, 'en'))
    .slice(0, MOST_OFFERED)
    .map(({ exercise }) => exercise);
};

const NOT_AT_ALL = 4;

const rankOf = (sought: string, { name, alsoKnownAs }: Exercise): number => {
  const own = plain(name);
  if (own.startsWith(sought)) return 0;
  if (own.includes(` ${sought}`)) return 1;
  if (alsoKnownAs.some((other) => plain(other).startsWith(sought))) return 2;
  return own.includes(sought) ? 3 : NOT_AT_ALL;
};

const plain = (text: string): string =>
  text
    .toLowerCase()
    .replaceAll(/[\s-]+/g, ' ')
    .trim();
