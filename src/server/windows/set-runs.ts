import type { CardItem, CardSet } from '#domain/card.ts';
import { shownLoad } from '#interchange/plain-text/shown-load.ts';

/** "4×6 270", "3×10 start at 85", "2×12 90 each side": neighbours that are alike are counted. */
export const showWorkSets = (item: CardItem, unit: 'with unit' | 'bare' = 'bare'): string => {
  const work = item.sets.filter((set) => set.kind === 'work');
  const runs: { readonly text: string; count: number; readonly sides: Set<string> }[] = [];
  for (const set of work) {
    const text = `${set.repetitions} ${showSetLoad(item, set)}${unit === 'bare' ? '' : ` ${item.unit}`}`;
    const last = runs.at(-1);
    const run = last?.text === text ? last : { text, count: 0, sides: new Set<string>() };
    if (run !== last) runs.push(run);
    run.count += 1;
    if (set.side) run.sides.add(set.side);
  }
  return runs
    .map(({ text, count, sides }) => (sides.size === 2 ? `${count / 2}×${text} each side` : `${count}×${text}`))
    .join(', ');
};

export const showSetLoad = ({ increment }: CardItem, { load }: CardSet): string =>
  `${load.kind === 'start at' ? 'start at ' : ''}${shownLoad(load.increments, increment)}`;
