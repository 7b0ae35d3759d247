import { spelling } from '../layout/spelling.ts';

/** "Ruiz, Ana" as "Ana Ruiz"; blanks made single. */
export const plainName = (text: string): string => {
  const single = text.replace(/\s+/g, ' ').trim();
  const [family = '', given = '', ...more] = single.split(',').map((part) => part.trim());
  return more.length === 0 && family !== '' && given !== '' ? `${given} ${family}` : single;
};

/** A name as compared with others. */
export const nameKey = (name: string): string => spelling(name);

/** Letters to change, add, drop or swap to make one text of the other (optimal string alignment). */
const lettersApart = (one: string, other: string): number => {
  let before: number[] = [];
  let above = Array.from({ length: other.length + 1 }, (_, column) => column);
  for (let row = 1; row <= one.length; row += 1) {
    const here = [row];
    for (let column = 1; column <= other.length; column += 1) {
      const same = one[row - 1] === other[column - 1] ? 0 : 1;
      const swapped = one[row - 1] === other[column - 2] && one[row - 2] === other[column - 1];
      const change = (above[column - 1] ?? 0) + same;
      const swap = swapped ? (before[column - 2] ?? Infinity) + 1 : Infinity;
      here.push(Math.min((above[column] ?? 0) + 1, (here[column - 1] ?? 0) + 1, change, swap));
    }
    before = above;
    above = here;
  }
  return above.at(-1) ?? 0;
};

const LONG_NAME = 8;
const SHORT_NAME = 4;

/** How many slips of the pen a name of this length may have and still be the same name. */
const slipsIn = (length: number): number => (length >= LONG_NAME ? 2 : length >= SHORT_NAME ? 1 : 0);

const isInitialOf = (short: string, long: string): boolean => short.length === 1 && long.startsWith(short);

/** Every word of the shorter name stands in the longer one, as a whole or as an initial. */
const isShorterForm = (shorter: readonly string[], longer: readonly string[]): boolean => {
  const words = [...longer];
  return shorter.every((word) => {
    const at = words.findIndex((one) => one === word || isInitialOf(word, one) || isInitialOf(one, word));
    if (at >= 0) words.splice(at, 1);
    return at >= 0;
  });
};

const digitsOf = (key: string): string => key.replace(/\D+/g, ' ').trim();

/** Whether two different keys may be one person: a slip of the pen, another order, an initial, a part of the name. */
export const mayBeTheSame = (one: string, other: string): boolean => {
  // Names that are numbers, such as "crew 01" and "crew 02", are told apart by the number.
  if (digitsOf(one) !== digitsOf(other)) return false;
  const [first, second] = [one.split(' '), other.split(' ')];
  const [shorter, longer] = first.length <= second.length ? [first, second] : [second, first];
  if (isShorterForm(shorter, longer)) return true;
  const slips = slipsIn(Math.min(one.length, other.length));
  return Math.abs(one.length - other.length) <= slips && lettersApart(one, other) <= slips;
};
