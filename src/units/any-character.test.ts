import fc from 'fast-check';
import { expect, test } from 'vitest';
import { anyCharacter } from './any-character.setup.ts';

test('every character but the surrogates is drawn, from the first to the last, and told back', () => {
  const isDrawn = (text: string): boolean => anyCharacter.canShrinkWithoutContext(text);
  expect(['\u0000', 'a', '\ud7ff', '\ue000', '😀', '\u{10ffff}'].filter((text) => !isDrawn(text))).toEqual([]);
  expect(['', 'ab', '\ud800', '\udfff'].filter(isDrawn)).toEqual([]);
});

test('what is drawn is one character, and whole', () => {
  fc.assert(
    fc.property(anyCharacter, (character) => {
      expect([...character]).toHaveLength(1);
      expect(character).not.toMatch(/\p{Cs}/u);
    }),
  );
});

test('names that trip programs up are among the texts made of it', () => {
  const drawn = new Set(fc.sample(fc.string({ unit: anyCharacter }), 2000));
  expect(['__proto__', 'toString', 'constructor'].filter((name) => drawn.has(name)).length).toBeGreaterThan(0);
});
