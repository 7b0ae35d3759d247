import type { Fact, FactBody } from '#domain/fact.ts';
import { showMissionDay } from '#domain/mission-day.ts';
import type { Problem } from '#contract/problem.ts';
import { cardOf } from './presence-problems.ts';
import type { CheckedEntry } from './entry.ts';
import { pieceProblems } from './piece-problems.ts';

/** A result belongs to a card and to its sets; one card has one result, which may be corrected. */
export const resultProblems = ({ body, supersedes }: CheckedEntry, current: readonly Fact[]): readonly Problem[] => {
  if (body.kind !== 'trained') return [];
  const issued = cardOf(current, body.card);
  if (!issued) return [];
  const sets = new Set<string>(issued.card.sets.map((set) => set.id));
  const strangers = body.sets.flatMap(({ set }, place) => (sets.has(set) ? [] : [notOfThisCard(place)]));
  const seen = new Set<string>();
  const twice = body.sets.flatMap(({ set }, place) => {
    const again = seen.has(set);
    seen.add(set);
    return again ? [setTwice(place)] : [];
  });
  return [...strangers, ...twice, ...pieceProblems(body, issued.card.card), ...alreadyThere(body, supersedes, current)];
};

const alreadyThere = (
  body: Extract<FactBody, { readonly kind: 'trained' }>,
  supersedes: CheckedEntry['supersedes'],
  current: readonly Fact[],
): readonly Problem[] => {
  const there = current.find((fact) => fact.kind === 'trained' && fact.card === body.card && fact.id !== supersedes);
  if (!there) return [];
  const card = cardOf(current, body.card)?.card;
  const when = card ? showMissionDay({ launch: card.mission.launch, landing: null }, card.card.day) : 'that day';
  return [
    {
      what: `The result of ${when} is recorded already.`,
      why: 'Two results of one card would count one session twice.',
      whatToDo: 'Correct the one that is there.',
      field: 'card',
    },
  ];
};

const notOfThisCard = (place: number): Problem => ({
  what: `Set ${place + 1} is not on this card.`,
  why: 'Results are kept by the sets that were issued.',
  whatToDo: 'Open the card and type the result there.',
  field: `sets.${place}.set`,
});

const setTwice = (place: number): Problem => ({
  what: `Set ${place + 1} is a set that stands above already.`,
  why: 'Each set of a card was done once.',
  whatToDo: 'Leave one of the two out.',
  field: `sets.${place}.set`,
});
