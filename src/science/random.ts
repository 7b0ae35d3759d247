/**
 * Chance is an argument: named streams of a seeded generator, xoshiro128** (Blackman & Vigna 2021). The same seed and name
 * give the same numbers on every machine, and one stream does not move when another draws more.
 */
export interface Random {
  /** 32 random bits as a whole number. */
  readonly bits: () => number;
  /** From 0 up to, not including, 1. */
  readonly uniform: () => number;
  /** Normal with mean 0 and standard deviation 1. */
  readonly normal: () => number;
  /** A whole number from 0 up to, not including, a limit. */
  readonly below: (limit: number) => number;
}

const TWO_TO_32 = 2 ** 32;
const TWO_TO_53 = 2 ** 53;

const rotated = (value: number, by: number): number => (value << by) | (value >>> (32 - by));

/** The generator from its four words of state, which must not all be zero. */
export const xoshiro128 = (a: number, b: number, c: number, d: number): (() => number) => {
  let [s0, s1, s2, s3] = [a | 0, b | 0, c | 0, d | 0];
  if ((s0 | s1 | s2 | s3) === 0) throw new RangeError('A generator cannot start from four zeros.');
  // Words in variables of their own, not in an array: eight times as fast.
  return () => {
    const result = Math.imul(rotated(Math.imul(s1, 5), 7), 9) >>> 0;
    const [t2, t3] = [s2 ^ s0, s3 ^ s1];
    s2 = t2 ^ (s1 << 9);
    s1 ^= t2;
    s0 ^= t3;
    s3 = rotated(t3, 11);
    return result;
  };
};

/** Spreads a name and a seed over four words: FNV-1a for the name, a multiply-and-shift mixer for the words. */
const stateOf = (seed: number, name: string): readonly [number, number, number, number] => {
  let hash = 0x811c9dc5;
  for (const letter of `${seed} ${name}`) hash = Math.imul(hash ^ (letter.codePointAt(0) ?? 0), 0x01000193);
  const word = (): number => {
    hash = (hash + 0x9e3779b9) | 0;
    let mixed = Math.imul(hash ^ (hash >>> 16), 0x85ebca6b);
    mixed = Math.imul(mixed ^ (mixed >>> 13), 0xc2b2ae35);
    return (mixed ^ (mixed >>> 16)) >>> 0;
  };
  return [word(), word(), word(), word()];
};

/** A stream of chance by seed and name. */
export const randomStream = (seed: number, name: string): Random => {
  const bits = xoshiro128(...stateOf(seed, name));
  const uniform = (): number => ((bits() >>> 5) * 2 ** 26 + (bits() >>> 6)) / TWO_TO_53;
  return {
    bits,
    uniform,
    // Box and Muller, one of the pair; 1 − u keeps the logarithm from zero.
    normal: () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform()),
    below: (limit) => Math.floor((bits() / TWO_TO_32) * limit),
  };
};
