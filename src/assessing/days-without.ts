import type { Day } from '#units/day.ts';
import type { ExerciseId } from '#domain/identity.ts';
import { ofKind, type Known } from '#domain/known.ts';
import { issuedCards } from './card-evidence.ts';

/**
 * Days on which it is known that a lift has been left out for longer than the policy says: every card of that time was
 * called off or missed. A card that was not heard of ends the count: no data is not no training.
 */
export const daysWithoutLift = (known: Known, exercise: ExerciseId): readonly Day[] => {
  const most = known.house.policies.daysWithoutLiftThatWidens;
  const found: Day[] = [];
  let since: Day | null = null;
  for (const { day, left } of sessionsOf(known, exercise)) {
    if (!left) since = null;
    else if (since === null) since = day;
    else if (day - since > most) {
      found.push(day);
      since = day;
    }
  }
  return found;
};

/** Sessions of a lift in order: was it left out, as far as anybody said so? */
const sessionsOf = (known: Known, exercise: ExerciseId) => {
  const left = new Set(
    [...ofKind(known, 'called off'), ...ofKind(known, 'missed')].flatMap((fact) =>
      fact.card === null ? [] : [fact.card],
    ),
  );
  return [...issuedCards(known).values()]
    .filter((document) => document.card.items.some((item) => item.exercise === exercise))
    .map((document) => ({ day: document.card.day, left: left.has(document.id) }))
    .toSorted((a, b) => a.day - b.day);
};
