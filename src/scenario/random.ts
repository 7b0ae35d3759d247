/** A source of chance: each call gives a number from 0 up to, not including, 1. */
export type Random = () => number;

const TWO_TO_32 = 2 ** 32;

type State = [number, number, number, number];

const rotateLeft = (word: number, by: number): number => ((word << by) | (word >>> (32 - by))) >>> 0;

/** One word of xoshiro128** (Blackman and Vigna 2018, version 1.1, public domain); moves the state on. */
export const nextWord = (state: State): number => {
  const word = Math.imul(rotateLeft(Math.imul(state[1], 5) >>> 0, 7), 9) >>> 0;
  const shifted = state[1] << 9;
  state[2] ^= state[0];
  state[3] ^= state[1];
  state[1] ^= state[2];
  state[0] ^= state[3];
  state[2] ^= shifted;
  state[3] = rotateLeft(state[3] >>> 0, 11);
  return word;
};

/** FNV-1a, 32 bits, over the code units of a text. */
const hashOf = (text: string): number =>
  [...text].reduce((hash, symbol) => Math.imul(hash ^ (symbol.codePointAt(0) ?? 0), 0x01000193), 0x811c9dc5) >>> 0;

/** Spreads a hash over the four words of a state (splitmix32). */
const stateOf = (hash: number): State => {
  const word = (place: number): number => {
    let mixed = (hash + Math.imul(place, 0x9e3779b9)) | 0;
    mixed = Math.imul(mixed ^ (mixed >>> 16), 0x21f0aaad);
    mixed = Math.imul(mixed ^ (mixed >>> 15), 0x735a2d97);
    return (mixed ^ (mixed >>> 15)) >>> 0;
  };
  return [word(1), word(2), word(3), word(4)];
};

/** Chance with a seed and a name: what one part draws never moves what another part draws. */
export const randomStream = (seed: number, name: string): Random => {
  const state = stateOf(hashOf(`${seed} ${name}`));
  return () => nextWord(state) / TWO_TO_32;
};

/** A draw from the normal distribution with mean 0 and standard deviation 1 (Box and Muller 1958). */
export const normal = (random: Random): number =>
  Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());

/** An identity drawn from a stream: 32 hexadecimal digits in groups of 8, 4, 4, 4 and 12. */
export const drawnIdentity = (random: Random): string => {
  const digits = Array.from({ length: 32 }, () => Math.floor(random() * 16).toString(16)).join('');
  return [digits.slice(0, 8), digits.slice(8, 12), digits.slice(12, 16), digits.slice(16, 20), digits.slice(20)].join(
    '-',
  );
};
