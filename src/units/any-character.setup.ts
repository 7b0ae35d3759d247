import fc from 'fast-check';

/** First of the surrogates, which are no characters, and how many there are. */
const SURROGATES = 0xd800;
const HOW_MANY = 0x800;
const LAST = 0x10ffff;

const characterAt = (place: number): string => String.fromCodePoint(place < SURROGATES ? place : place + HOW_MANY);

const placeOf = (value: unknown): number => {
  const [character, ...others] = typeof value === 'string' ? [...value] : [];
  if (character === undefined || others.length > 0) throw new TypeError('This is not one character.');
  const code = character.codePointAt(0) ?? 0;
  if (code >= SURROGATES && code < SURROGATES + HOW_MANY) throw new TypeError('Half a pair is not a character.');
  return code < SURROGATES ? code : code - HOW_MANY;
};

/**
 * Any character of Unicode, as `unit` of `fc.string`: what its 'binary' draws, reckoned where 'binary' first lists all
 * 1,112,064 of them, which takes half a second.
 */
export const anyCharacter: fc.Arbitrary<string> = fc
  .integer({ min: 0, max: LAST - HOW_MANY })
  .map(characterAt, placeOf);
