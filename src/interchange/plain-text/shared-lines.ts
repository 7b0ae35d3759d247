import type { CardItem } from '#domain/card.ts';
import type { IssuedCard } from '#domain/issued-card.ts';
import { plainAscii, shortAscii } from './plain-ascii.ts';

/** What is said of exercises in a week, so that no sentence stands twice. */
export interface Said {
  /** Sentences that hold of an exercise whenever it comes, with the names: they stand before the sessions. */
  readonly always: ReadonlyMap<string, readonly string[]>;
  /** Others that stand more than once, each with its letter. */
  readonly letters: ReadonlyMap<string, string>;
}

const LETTERS = 'abcdefghijklmnopqrstuvwxyz';

export const saidIn = (documents: readonly IssuedCard[], isKept: (says: string) => boolean): Said => {
  const items = documents.flatMap(({ card }) => card.items);
  const always = alwaysSaid(items, isKept);
  const counts = new Map<string, number>();
  for (const item of items)
    for (const text of new Set(item.says))
      if (isKept(text) && !isAlways(always, item, text)) counts.set(text, (counts.get(text) ?? 0) + 1);
  const again = [...counts].filter(([, count]) => count > 1).slice(0, LETTERS.length);
  return { always, letters: new Map(again.map(([text], place) => [text, LETTERS.charAt(place)])) };
};

const alwaysSaid = (items: readonly CardItem[], isKept: (says: string) => boolean): Said['always'] => {
  const found = new Map<string, string[]>();
  for (const name of new Set(items.map(({ exerciseName }) => exerciseName))) {
    const [first, ...others] = items.filter(({ exerciseName }) => exerciseName === name);
    if (others.length === 0) continue;
    for (const says of new Set(first?.says))
      if (isKept(says) && others.every((other) => other.says.includes(says)))
        found.set(says, [...(found.get(says) ?? []), name]);
  }
  return found;
};

const isAlways = (always: Said['always'], { exerciseName }: CardItem, says: string): boolean =>
  always.get(says)?.includes(exerciseName) === true;

/** Is it said before the sessions already, or by a letter? */
export const isSaidOnce = ({ always, letters }: Said, item: CardItem, says: string): boolean =>
  letters.has(says) || isAlways(always, item, says);

/** "Cycling, Treadmill run: ...", "(a) No resting heart rate is known: effort leads." */
export const saidLines = ({ always, letters }: Said): readonly string[] => [
  ...[...always].map(([says, names]) => `${names.map(plainAscii).join(', ')}: ${shortAscii(says)}`),
  ...[...letters].map(([text, letter]) => `(${letter}) ${shortAscii(text)}`),
];

/** " (a)(b)", behind the line of an exercise. */
export const marksOf = (item: CardItem, { always, letters }: Said): string => {
  const marks = item.says
    .filter((says) => !isAlways(always, item, says))
    .flatMap((says) => letters.get(says) ?? [])
    .map((letter) => `(${letter})`);
  return marks.length === 0 ? '' : ` ${marks.join('')}`;
};

/** What to do when a machine is down, once for all sessions that say the same of themselves. */
export const machineDownLines = (documents: readonly IssuedCard[]): readonly string[] => {
  const daysOf = new Map<string, string[]>();
  for (const { card } of documents) {
    const says = shortAscii(card.machineDown.replaceAll(card.title.toLowerCase(), 'session'));
    if (says !== '') daysOf.set(says, [...(daysOf.get(says) ?? []), shortAscii(card.missionDay)]);
  }
  const [first, ...others] = [...daysOf].toSorted(([, one], [, other]) => one.length - other.length);
  if (!first) return [];
  const isAll = first[1].length === documents.length;
  const [second] = others;
  const areTwo = others.length === 1 && first[1].length + (second?.[1].length ?? 0) === documents.length;
  return [
    `Machine down${isAll ? '' : `, ${listOfDays(first[1])}`}: ${first[0]}`,
    ...others.map(([says, days]) => `Machine down, ${areTwo ? 'other days' : listOfDays(days)}: ${says}`),
  ];
};

/** "FD 113, 116". */
const listOfDays = (days: readonly string[]): string =>
  days.map((day, place) => (place > 0 ? day.replace(/^FD /, '') : day)).join(', ');
