import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cardCode, readCardCode } from './card-code.ts';
import { digestOf } from './digest.ts';
import type { Digest } from './identity.ts';

const SYMBOLS = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';
const anyCode = fc.string({ maxLength: 20 }).map((text) => cardCode(digestOf(text)));
const anyPlace = fc.constantFrom(0, 1, 2, 3, 5, 6, 7, 8);
const code = (text: string) => ({ kind: 'code', code: text });

const withSymbol = (text: string, place: number, symbol: string): string =>
  text.slice(0, place) + symbol + text.slice(place + 1);

test.each([
  // 35 bits of nought: seven zeros, whose sum is 0 and needs 0.
  { digest: '0'.repeat(64), expected: '0000-0000' },
  // Seven times 31; doubled 31 is 62, of digits 1 and 30 in base 32, again 31: the sum 217 needs 7 to be 224 = 7 × 32.
  { digest: 'f'.repeat(64), expected: 'ZZZZ-ZZZ7' },
  // 00001 00010 00011 00100 00101 00110 00111 and one bit more, in fours: 1 to 7. Doubled 2 + 6 + 10 + 14, single
  // 2 + 4 + 6: the sum 44 needs 20 to be 64.
  { digest: '08864298e'.padEnd(64, '0'), expected: '1234-567M' },
])('the code $expected is computed by hand', ({ digest, expected }) => {
  expect(cardCode(digest as Digest)).toBe(expected);
});

test('a code is read back, however it is typed', () => {
  fc.assert(
    fc.property(anyCode, (text) => {
      const plain = text.replace('-', '');
      for (const typed of [
        text,
        plain,
        text.toLowerCase(),
        ` ${plain} `,
        plain.split('').join(' '),
        plain.replace(/(..)/g, '$1-'),
      ])
        expect(readCardCode(typed)).toEqual(code(text));
    }),
  );
});

test('the usual confusions are understood: O for 0, I and L for 1, in either case', () => {
  fc.assert(
    fc.property(anyCode, (text) => {
      for (const [symbol, typed] of [
        ['0', 'O'],
        ['0', 'o'],
        ['1', 'I'],
        ['1', 'i'],
        ['1', 'L'],
        ['1', 'l'],
      ] as const)
        expect(readCardCode(text.replaceAll(symbol, typed))).toEqual(code(text));
    }),
  );
});

test('every single wrong character is caught, at every place', () => {
  fc.assert(
    fc.property(anyCode, anyPlace, (text, place) => {
      for (const symbol of SYMBOLS) {
        const expected = symbol === text[place] ? 'code' : 'check fails';
        expect(readCardCode(withSymbol(text, place, symbol)).kind).toBe(expected);
      }
    }),
  );
});

test('swapped neighbours are caught, but for 0 and Z', () => {
  fc.assert(
    fc.property(anyCode, fc.constantFrom(0, 1, 2, 5, 6, 7), (text, place) => {
      const [left = '', right = ''] = [text[place], text[place + 1]];
      const swapped = withSymbol(withSymbol(text, place, right), place + 1, left);
      const isBlind = left === right || `${left}${right}` === '0Z' || `${left}${right}` === 'Z0';
      expect(readCardCode(swapped).kind).toBe(isBlind ? 'code' : 'check fails');
    }),
  );
});

test.each([
  { typed: '', kind: 'wrong length' },
  { typed: 'K7QF-2M9', kind: 'wrong length' },
  { typed: 'K7QF-2M9XX', kind: 'wrong length' },
  { typed: 'K7QF-2M9U', kind: 'unknown character' },
  { typed: 'K7QF-2M9é', kind: 'unknown character' },
  { typed: 'K7QF-2M9?', kind: 'unknown character' },
] as const)('"$typed" is refused: $kind', ({ typed, kind }) => {
  const reading = readCardCode(typed);
  expect(reading.kind).toBe(kind);
  expect('says' in reading && reading.says.length).toBeGreaterThan(20);
});

test('a code shows nothing that could be taken for something else', () => {
  fc.assert(
    fc.property(anyCode, (text) => {
      expect(text).toMatch(/^[0-9A-HJKMNP-TV-Z]{4}-[0-9A-HJKMNP-TV-Z]{4}$/);
    }),
  );
});
