import type { Exercise } from '#domain/catalogue.ts';

export interface Looked {
  readonly text: string;
  /** A kind of machine or loose kind; empty: any. */
  readonly kind: string;
}

/** Exercises that hold every word that was typed, in name, spellings, pattern or body part, and are done on a kind. */
export const foundExercises = <Setting extends { readonly exercise: Exercise }>(
  settings: readonly Setting[],
  { text, kind }: Looked,
): readonly Setting[] => {
  const words = plain(text).split(/\s+/).filter(Boolean);
  return settings.filter(({ exercise }) => {
    const { name, alsoKnownAs, pattern, bodyPart, machineKinds } = exercise;
    const said = plain([name, ...alsoKnownAs, pattern, bodyPart].join(' '));
    return words.every((word) => said.includes(word)) && (kind === '' || machineKinds.some((each) => each === kind));
  });
};

const plain = (text: string): string =>
  text
    .normalize('NFKD')
    .replaceAll(/\p{M}+/gu, '')
    .toLowerCase();
