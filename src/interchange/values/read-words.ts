import type { Effort, Side } from '#domain/effort.ts';
import type { MassUnit } from '#units/mass.ts';

const normal = (text: string): string => text.normalize('NFKC').trim().toLowerCase().replace(/\.$/, '');

const oneOf =
  <Kind>(words: readonly (readonly [Kind, RegExp])[]) =>
  (text: string): Kind | null =>
    words.find(([, pattern]) => pattern.test(normal(text)))?.[0] ?? null;

/** The unit a word stands for, or null where nobody knows it. */
export const readUnit = oneOf<MassUnit>([
  ['kg', /^(kgs?|kilos?|kilograms?|kilogrammes?)$/],
  ['lb', /^(lbs?|pounds?|#)$/],
]);

export const readSide = oneOf<Side | 'both'>([
  ['left', /^(l|left|lt|left (leg|arm|side|hand)|l (leg|arm))$/],
  ['right', /^(r|right|rt|right (leg|arm|side|hand)|r (leg|arm))$/],
  ['both', /^(b|both|bilateral|l ?[+&/] ?r|both sides|two|2)$/],
]);

export const readSex = oneOf<'female' | 'male'>([
  ['female', /^(f|fem|female|w|woman|women|girl|♀)$/],
  ['male', /^(m|male|man|men|boy|♂)$/],
]);

export const readRole = oneOf<'prime' | 'backup'>([
  ['prime', /^(p|prime|primary|prime crew|main|first)$/],
  ['backup', /^(b|backup|back-up|back up|backup crew|reserve|second)$/],
]);

export const readTeam = oneOf<'ours' | 'another team'>([
  ['ours', /^(ours|own|our|our team|us|home)$/],
  ['another team', /^(another team|other|another|other team|theirs|partner|guest|not ours)$/],
]);

/** "8", "RPE 8", "@8", "2 RIR", "2 in reserve": what a cell of effort says, or null where it is no such thing. */
export const readEffort = (text: string, column: Effort['kind']): Effort | null => {
  const plain = normal(text).replace(',', '.');
  const [, rating] = /^(?:rpe|@)\s*(\d{1,2}(?:\.\d{1,2})?)$/.exec(plain) ?? [];
  const [, reserve] = /^(\d{1,2}(?:\.\d{1,2})?)\s*(?:rir|in reserve|reps? in reserve|left)$/.exec(plain) ?? [];
  if (rating !== undefined) return { kind: 'RPE', value: Number(rating) };
  if (reserve !== undefined) return { kind: 'repetitions in reserve', value: Number(reserve) };
  return /^\d{1,2}(\.\d{1,2})?$/.test(plain) ? { kind: column, value: Number(plain) } : null;
};
