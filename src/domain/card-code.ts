import type { Digest } from './identity.ts';

/** No I, L, O or U: nothing on a card may be read as something else. Crockford's base 32 (2002). */
const SYMBOLS = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';
const BASE = SYMBOLS.length;
const PAYLOAD_LENGTH = 7;
const BITS_PER_SYMBOL = 5;

/** Short code of a card: the first 35 bits of its digest and one check character, shown 4-4. */
export const cardCode = (digest: Digest): string => {
  const bits = BigInt(`0x${digest.slice(0, 9)}`) >> 1n;
  const payload = Array.from({ length: PAYLOAD_LENGTH }, (_, place) =>
    symbolAt(Number((bits >> BigInt(BITS_PER_SYMBOL * (PAYLOAD_LENGTH - 1 - place))) & 31n)),
  ).join('');
  const code = payload + symbolAt(checkValue(payload));
  return `${code.slice(0, 4)}-${code.slice(4)}`;
};

export type CardCodeReading =
  | { readonly kind: 'code'; readonly code: string }
  | { readonly kind: 'wrong length'; readonly says: string }
  | { readonly kind: 'unknown character'; readonly says: string }
  | { readonly kind: 'check fails'; readonly says: string };

/** Reads a typed code: case, spaces, hyphens and the usual confusions (O for 0, I or L for 1) do not matter. */
export const readCardCode = (typed: string): CardCodeReading => {
  const plain = typed.toUpperCase().replace(/[\s-]/g, '').replace(/O/g, '0').replace(/[IL]/g, '1');
  if (plain.length !== PAYLOAD_LENGTH + 1)
    return {
      kind: 'wrong length',
      says: `A card code has 8 characters, such as K7QF-2M9X; "${typed}" has ${plain.length}.`,
    };
  const unknown = [...plain].find((symbol) => !SYMBOLS.includes(symbol));
  if (unknown !== undefined)
    return {
      kind: 'unknown character',
      says: `"${unknown}" is in no card code. Read the code once more from the card.`,
    };
  if (symbolAt(checkValue(plain.slice(0, PAYLOAD_LENGTH))) !== plain[PAYLOAD_LENGTH])
    return {
      kind: 'check fails',
      says: `"${typed}" has a mistyped or swapped character. Read the code once more from the card.`,
    };
  return { kind: 'code', code: `${plain.slice(0, 4)}-${plain.slice(4)}` };
};

/** Luhn's algorithm modulo N: catches every single wrong character and nearly every swap of neighbours. */
const checkValue = (payload: string): number => {
  const sum = [...payload].reverse().reduce((total, symbol, place) => {
    const value = SYMBOLS.indexOf(symbol) * (place % 2 === 0 ? 2 : 1);
    return total + Math.floor(value / BASE) + (value % BASE);
  }, 0);
  return (BASE - (sum % BASE)) % BASE;
};

const symbolAt = (value: number): string => SYMBOLS[value] as string;
