import type { Tempo } from './prescription.ts';

/** How many repetitions a set asks for. */
export interface AskedRepetitions {
  /** Of a range the least. */
  readonly repetitions: number;
  /** Of a range the most: what lies between is left to the day. */
  readonly most?: number;
  /** As many more as go well. */
  readonly orMore?: true;
}

export interface AskedSet extends AskedRepetitions {
  /** Of a range of sets one of the last: it may be left out. */
  readonly optional?: true;
}

export const mostOf = ({ repetitions, most }: AskedRepetitions): number => most ?? repetitions;

export const isOpenCount = ({ most, orMore }: AskedRepetitions): boolean => most !== undefined || orMore === true;

export const isAskedAlike = (a: AskedRepetitions, b: AskedRepetitions): boolean =>
  a.repetitions === b.repetitions && a.most === b.most && a.orMore === b.orMore;

export const showRange = (least: number, most: number | undefined): string =>
  most === undefined ? `${least}` : `${least}–${most}`;

/** "6", "6–8", "6+". */
export const showRepetitions = ({ repetitions, most, orMore }: AskedRepetitions): string =>
  `${showRange(repetitions, most)}${orMore ? '+' : ''}`;

/** "4"; "3–4" where the last may be left out. */
export const showCount = (sets: readonly Pick<AskedSet, 'optional'>[], sides = 1): string => {
  const all = sets.length / sides;
  const least = sets.filter(({ optional }) => !optional).length / sides;
  return least === all ? `${all}` : `${least}–${all}`;
};

/** "4 × 6", "3–4 × 6–8", "6, 5, 4+" where repetitions differ. */
export const showSets = (sets: readonly AskedSet[], sides = 1): string => {
  const [first] = sets;
  return first && sets.every((set) => isAskedAlike(set, first))
    ? `${showCount(sets, sides)} × ${showRepetitions(first)}`
    : sets.map((set) => `${showRepetitions(set)}${set.optional ? ' if it goes well' : ''}`).join(', ');
};

/** What every set has to reach where repetitions are a range: "8", "the most"; null where none is. */
export const mostInAll = (sets: readonly AskedRepetitions[]): string | null => {
  if (sets.every(({ most }) => most === undefined)) return null;
  const [most, ...others] = new Set(sets.map(mostOf));
  return most === undefined || others.length > 0 ? 'the most' : `${most}`;
};

/** "3 s down, 1 held, 1 up". */
export const showTempo = ([down, held, up]: Tempo): string => `${down} s down, ${held} held, ${up} up`;

/** No repetition takes less than a second, however it is written (our own bound). */
const QUICKEST = 1;

export const secondsOfTempo = (tempo: Tempo): number =>
  Math.max(
    QUICKEST,
    tempo.reduce((sum, count) => sum + count, 0),
  );
