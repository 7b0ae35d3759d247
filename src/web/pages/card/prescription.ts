import { showSets, showTempo } from '#domain/asked-sets.ts';
import type { CardLift, CardSet } from '#domain/card.ts';
import { showRule } from '#domain/show-rule.ts';
import { showIncrements } from '../../parts/loads.ts';

const SECONDS_PER_MINUTE = 60;

/** "2:30". */
const clock = (seconds: number): string =>
  `${Math.floor(seconds / SECONDS_PER_MINUTE)}:${String(Math.round(seconds % SECONDS_PER_MINUTE)).padStart(2, '0')}`;

export const span = ([low, high]: readonly [number, number]): string => (low === high ? `${low}` : `${low} to ${high}`);

const setsText = (sets: readonly CardSet[]): string => {
  const isEach = new Set(sets.map(({ side }) => side)).size === 2;
  // Both sides do the same: one of them tells it.
  const told = isEach ? sets.filter(({ side }) => side === sets[0]?.side) : sets;
  return isEach ? `${showSets(told)} each side` : showSets(told);
};

const restText = (sets: readonly CardSet[], isShared: boolean): string => {
  const rests = [...new Set(sets.map(({ rest }) => rest))].filter((rest) => rest > 0);
  return rests.length === 0 ? '' : `, rest ${rests.map(clock).join(' or ')}${isShared ? ' after the round' : ''}`;
};

/** "In turn with 2, a set of each." */
const inTurnText = ({ superset }: CardLift): string =>
  superset === null ? '' : ` ${superset.letter}: in turn with ${superset.inTurnWith.join(' and ')}, a set of each.`;

/** "4 × 6, rest 2:30. Should feel 6 to 7.", "3–4 × 6–8, 3 s down, 1 held, 1 up, rest 2:30 after the round. A: in turn with 2, a set of each." */
export const prescription = (item: CardLift): string => {
  const work = item.sets.filter(({ kind }) => kind === 'work');
  const tempo = item.tempo === null ? '' : `, ${showTempo(item.tempo)}`;
  return `${setsText(work)}${tempo}${restText(work, item.superset !== null)}.${inTurnText(item)} Should feel ${span(item.shouldFeel)}.`;
};

/** The signed rule as it is read at arm's length; null where none was signed. */
export const ruleText = (item: CardLift): string | null => {
  const says = showRule(item, (increments) => showIncrements(increments, item.increment));
  return says && `${says}.`;
};

/** Sentences of the card that the prescription does not say already. */
export const otherSentences = (item: { readonly says: readonly string[] }): readonly string[] =>
  item.says.filter((says) => !says.startsWith('should feel'));
