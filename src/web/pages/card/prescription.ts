import type { CardLift, CardSet } from '#domain/card.ts';
import { showRule } from '#domain/show-rule.ts';
import { showIncrements } from '../../parts/loads.ts';

const SECONDS_PER_MINUTE = 60;

/** "2:30". */
const clock = (seconds: number): string =>
  `${Math.floor(seconds / SECONDS_PER_MINUTE)}:${String(Math.round(seconds % SECONDS_PER_MINUTE)).padStart(2, '0')}`;

const span = ([low, high]: readonly [number, number]): string => (low === high ? `${low}` : `${low} to ${high}`);

const setsText = (sets: readonly CardSet[]): string => {
  const sides = new Set(sets.map(({ side }) => side));
  const isEach = sides.has('left') && sides.has('right');
  const count = isEach ? sets.length / 2 : sets.length;
  const repetitions = [...new Set(sets.map((set) => set.repetitions))];
  const text =
    repetitions.length === 1 ? `${count} × ${repetitions[0] ?? 0}` : sets.map((set) => set.repetitions).join(', ');
  return isEach ? `${text} each side` : text;
};

const restText = (sets: readonly CardSet[]): string => {
  const rests = [...new Set(sets.map(({ rest }) => rest))].filter((rest) => rest > 0);
  return rests.length === 0 ? '' : `, rest ${rests.map(clock).join(' or ')}`;
};

/** "4 × 6, rest 2:30. Should feel 6 to 7." */
export const prescription = (item: CardLift): string => {
  const work = item.sets.filter(({ kind }) => kind === 'work');
  return `${setsText(work)}${restText(work)}. Should feel ${span(item.shouldFeel)}.`;
};

/** The signed rule as it is read at arm's length; null where none was signed. */
export const ruleText = (item: CardLift): string | null => {
  const says = showRule(item, (increments) => showIncrements(increments, item.increment));
  return says && `${says}.`;
};

/** Sentences of the card that the prescription does not say already. */
export const otherSentences = (item: { readonly says: readonly string[] }): readonly string[] =>
  item.says.filter((says) => !says.startsWith('should feel'));
