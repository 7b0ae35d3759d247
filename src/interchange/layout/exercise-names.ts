import type { Exercise } from '#domain/catalogue.ts';
import type { ExerciseId } from '#domain/identity.ts';
import { inOneWord, spelling, tellingWords } from './spelling.ts';

/** Finds the exercise that a text names, or null: nothing is guessed from a part of a name. */
export type ExerciseFinder = (text: string) => ExerciseId | null;

/** Three ways to be the same name, from strict to tolerant; a way counts only where it leads to one exercise. */
const WAYS = [spelling, inOneWord, tellingWords] as const;

const indexBy = (
  exercises: readonly Exercise[],
  way: (text: string) => string,
): ReadonlyMap<string, ExerciseId | null> => {
  const index = new Map<string, ExerciseId | null>();
  for (const { id, name, alsoKnownAs } of exercises)
    for (const key of new Set([name, ...alsoKnownAs].map(way)))
      index.set(key, index.has(key) && index.get(key) !== id ? null : id);
  return index;
};

export const exerciseFinder = (exercises: readonly Exercise[]): ExerciseFinder => {
  const indices = WAYS.map((way) => ({ way, index: indexBy(exercises, way) }));
  return (text) => {
    if (spelling(text) === '') return null;
    for (const { way, index } of indices) {
      const found = index.get(way(text));
      if (found) return found;
    }
    return null;
  };
};

/** Exercises whose names share a word with the text come first: what a person would look for in a list. */
export const likelyFirst = (exercises: readonly Exercise[], text: string): readonly Exercise[] => {
  const words = new Set(tellingWords(text).split(' '));
  const shared = ({ name, alsoKnownAs }: Exercise): number =>
    Math.max(
      ...[name, ...alsoKnownAs].map(
        (one) =>
          tellingWords(one)
            .split(' ')
            .filter((word) => words.has(word)).length,
      ),
    );
  return exercises.toSorted((one, other) => shared(other) - shared(one) || one.name.localeCompare(other.name, 'en'));
};

/** Held in the hands, one weight in each: the number may be one of them or both. */
export const isHeldInEachHand = (text: string): boolean =>
  /\b(dumb ?bells?|dbs?|kettle ?bells?|kbs?)\b/.test(spelling(text));
