import fc from 'fast-check';
import highs from 'highs';
import { expect, test } from 'vitest';
import { chooseWithin, type Claim } from './leave-out.ts';

interface Item extends Claim {
  readonly name: string;
  readonly minutes: number;
}

const item = (name: string, priority: number, minutes: number): Item => ({ name, priority, minutes });
const SHARED = 10;
const sum = (items: readonly Item[]): number => items.reduce((total, { minutes }) => total + minutes, 0);
/** Set-up is shared; a session of nothing needs none. */
const minutesOf = (items: readonly Item[]): number => (items.length === 0 ? 0 : SHARED + sum(items));
const names = (items: readonly Item[]): readonly string[] => items.map(({ name }) => name);

test('everything stays where it fits', () => {
  const items = [item('squat', 1, 20), item('row', 2, 15)];
  expect(chooseWithin(items, 45, minutesOf)).toEqual({ kept: items, left: [] });
});

test('the least important goes first, and only as much as must', () => {
  const items = [item('squat', 1, 25), item('deadlift', 2, 25), item('row', 4, 20), item('curl', 5, 5)];
  // 85 minutes asked, 70 there: without the row it fits, so the curl, less important but short, may stay.
  expect(names(chooseWithin(items, 70, minutesOf).kept)).toEqual(['squat', 'deadlift', 'curl']);
});

test('of equals the one that stands earlier in the programme is kept', () => {
  const items = [item('row', 2, 20), item('press', 2, 20), item('squat', 1, 25)];
  expect(names(chooseWithin(items, 60, minutesOf).kept)).toEqual(['row', 'squat']);
});

test('of choices that keep as many of the first priority, the one that leaves room for the second', () => {
  const items = [item('long', 1, 40), item('short', 1, 20), item('second', 2, 20)];
  expect(names(chooseWithin(items, 55, minutesOf).kept)).toEqual(['short', 'second']);
});

test('the most important item stays even where the block is too short for it', () => {
  const items = [item('squat', 1, 60), item('deadlift', 2, 50)];
  expect(names(chooseWithin(items, 30, minutesOf).kept)).toEqual(['squat']);
});

const sessions = (most: number) =>
  fc
    .array(fc.record({ priority: fc.integer({ min: 1, max: 4 }), minutes: fc.integer({ min: 1, max: 30 }) }), {
      minLength: 1,
      maxLength: most,
    })
    .map((list) => list.map(({ priority, minutes }, place) => item(`${place}`, priority, minutes)));

/** How many of each priority, 1 to 4, as one number that compares like the list. */
const worth = (items: readonly Item[]): number =>
  [1, 2, 3, 4].reduce((total, priority) => total * 100 + items.filter((each) => each.priority === priority).length, 0);

test('no other choice keeps more of the important, nor as much and earlier in the programme (every choice tried)', () => {
  fc.assert(
    fc.property(sessions(9), fc.integer({ min: 40, max: 150 }), (items, block) => {
      const { kept, left } = chooseWithin(items, block, minutesOf);
      expect([...kept, ...left].toSorted((a, b) => items.indexOf(a) - items.indexOf(b))).toEqual(items);
      const order = items.toSorted((a, b) => a.priority - b.priority || items.indexOf(a) - items.indexOf(b));
      const mask = (some: readonly Item[]): string => order.map((each) => (some.includes(each) ? '1' : '0')).join('');
      const choices = Array.from({ length: 2 ** items.length }, (_, bits) =>
        items.filter((_, place) => (bits >> place) % 2 === 1),
      ).filter((some) => minutesOf(some) <= block);
      const best = choices.toSorted((a, b) => worth(b) - worth(a) || mask(b).localeCompare(mask(a)))[0] ?? [];
      expect(names(kept)).toEqual(names(best));
    }),
  );
});

const solver = await highs();

/** The same question as a linear program in whole numbers: the worth of each priority outweighs all after it. */
const worthByHighs = (items: readonly Item[], block: number): number => {
  const weight = (priority: number): number => (items.length + 1) ** (4 - priority);
  const terms = (of: (each: Item) => number): string => items.map((each, place) => `+ ${of(each)} x${place}`).join(' ');
  const model = `Maximize\n obj: ${terms(({ priority }) => weight(priority))}\nSubject To\n c: ${terms(({ minutes }) => minutes)} <= ${block - SHARED}\nBinary\n ${items.map((_, place) => `x${place}`).join(' ')}\nEnd`;
  const solution = solver.solve(model);
  const isKept = (place: number): boolean =>
    Math.round((solution.Columns[`x${place}`] as { Primal: number }).Primal) === 1;
  return worth(items.filter((_, place) => isKept(place)));
};

test('on sessions too large to try out it keeps what HiGHS proves to be the most', () => {
  fc.assert(
    fc.property(sessions(18), fc.integer({ min: 50, max: 250 }), (items, block) => {
      expect(worth(chooseWithin(items, block, minutesOf).kept)).toBe(worthByHighs(items, block));
    }),
    { numRuns: 60 },
  );
});
