import { showCount, showRepetitions } from '#domain/asked-sets.ts';
import type { CardLift, CardSet } from '#domain/card.ts';
import { shownLoad } from '#interchange/plain-text/shown-load.ts';

interface Run {
  readonly text: string;
  readonly sets: CardSet[];
}

/**
 * "4×6 270", "3–4×6–8 270", "1×6+ 270", "3×10 start at 85", "2×12 90 each side", "left 3×8 185, right 3×8 180": neighbours
 * that are alike are counted.
 */
export const showWorkSets = (item: CardLift, unit: 'with unit' | 'bare' = 'bare'): string => {
  const work = item.sets.filter((set) => set.kind === 'work');
  const runs = (side: CardSet['side']): string =>
    showRuns(
      item,
      work.filter((set) => set.side === side),
      unit,
    );
  const [left, right] = [runs('left'), runs('right')];
  if (left === '' && right === '') return runs(null);
  if (left === right) return `${left} each side`;
  return [left && `left ${left}`, right && `right ${right}`].filter((text) => text !== '').join(', ');
};

const showRuns = (item: CardLift, sets: readonly CardSet[], unit: 'with unit' | 'bare'): string => {
  const runs: Run[] = [];
  for (const set of sets) {
    const text = `${showRepetitions(set)} ${showSetLoad(item, set)}${unit === 'bare' ? '' : ` ${item.unit}`}`;
    const last = runs.at(-1);
    if (last?.text === text) last.sets.push(set);
    else runs.push({ text, sets: [set] });
  }
  return runs.map(({ text, sets: alike }) => `${showCount(alike)}×${text}`).join(', ');
};

export const showSetLoad = ({ increment }: CardLift, { load }: CardSet): string =>
  `${load.kind === 'start at' ? 'start at ' : ''}${shownLoad(load.increments, increment)}`;
