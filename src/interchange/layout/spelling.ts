/** Words that say nothing of which exercise or column it is. */
const FILLER = new Set([
  'the',
  'of',
  'a',
  'an',
  'in',
  'with',
  'barbell',
  'bb',
  'weight',
  'load',
  'lift',
  'test',
  'tested',
  'result',
  'best',
  'max',
  'maximum',
  'pr',
  'pb',
]);

/** A text as compared: without case, accents, punctuation and double blanks. */
export const spelling = (text: string): string =>
  text
    .normalize('NFKD')
    .replace(/\p{M}+/gu, '')
    .toLowerCase()
    .replace(/ß/g, 'ss')
    .replace(/[^\p{L}\p{N}♀♂#]+/gu, ' ')
    .trim();

const singular = (word: string): string => (word.length > 3 && /[^s]s$/.test(word) ? word.slice(0, -1) : word);

/** The words of a text that tell one exercise from another, in one order and number: "squats, back" is "back squat". */
export const tellingWords = (text: string): string => {
  const words = spelling(text).split(' ').map(singular);
  const telling = words.filter((word) => !FILLER.has(word));
  return (telling.length > 0 ? telling : words).toSorted().join(' ');
};

/** The same written in one word: "dead lift" is "deadlift". */
export const inOneWord = (text: string): string => spelling(text).split(' ').map(singular).join('');
