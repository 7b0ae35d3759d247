import { isoOfDay, type Day } from '#units/day.ts';
import { kilogramsOf } from '#units/entered.ts';
import { kilogramsPer } from '#units/mass.ts';
import type { Card, CardBouts, CardDrill, CardItem, CardLift, HarnessPull } from '#domain/card.ts';
import type { Decision } from '#domain/decision.ts';
import type { FactId } from '#domain/identity.ts';
import type { IssuedCard } from '#domain/issued-card.ts';
import type { Known } from '#domain/known.ts';
import { ofKind } from '#domain/known.ts';
import { isWithinScope, type Restriction } from '#domain/restriction.ts';
import { cardRecords, stands } from './card-records.ts';
import { limitIncrements, limitsOn } from './limits.ts';
import { machineSteps, planContext, type PlanContext } from './plan-context.ts';

/**
 * Recalls that a restriction asks for, of cards already issued: each that has any set against its limit, without a
 * result and not called off, whose day lies on or after its first day; or whose day has passed unheard while it may
 * still be trained from. `known` must hold the restriction already.
 */
export const recallsUnder = (known: Known, because: FactId, today: Day): readonly Decision[] => {
  const fact = ofKind(known, 'restricted').find((each) => each.id === because);
  if (!fact) return [];
  const context = planContext(known);
  const { from } = fact.restriction;
  const mayBeTrained = ({ card, validUntil }: IssuedCard): boolean =>
    card.day >= from || (card.day < today && validUntil >= today && validUntil >= from);
  return cardRecords(known, today)
    .filter((record) => stands(record) && mayBeTrained(record.document))
    .filter((record) => record.outcome === 'none' || record.outcome === 'not heard')
    .flatMap(({ document }): readonly Decision[] => {
      const against = document.card.items.filter((item) => isAgainst(context, fact.restriction, document.card, item));
      if (against.length === 0) return [];
      return [
        {
          kind: 'recall',
          person: known.person,
          card: document.id,
          because,
          says: recallSentence(document.card, against),
        },
      ];
    });
};

/** Would this item, as issued, go against the restriction? */
export const isAgainst = (context: PlanContext, restriction: Restriction, card: Card, item: CardItem): boolean =>
  item.kind === 'lift' ? isLiftAgainst(context, restriction, card, item) : isPieceAgainst(context, restriction, item);

/** No load of a machine stands in bouts and drills but the harness: effort is what a limit caps there. */
const isPieceAgainst = (
  { known }: PlanContext,
  { scope, limit }: Restriction,
  item: CardBouts | CardDrill,
): boolean => {
  const exercise = known.house.exercises.get(item.exercise);
  if (!exercise || !isWithinScope(scope, exercise)) return false;
  switch (limit.kind) {
    case 'forbidden':
      return true;
    case 'no straining':
      return !item.says.some((says) => says.includes('no straining'));
    case 'RPE at most':
      return item.shouldFeel[1] > limit.rpe;
    case 'load at most':
      return item.kind === 'bouts' && item.harness !== null && pullOf(item.harness) > kilogramsOf(limit.load);
    case 'fraction at most':
      return false;
  }
};

/** Kilograms that a harness is set to. */
const pullOf = ({ increments, increment, unit }: HarnessPull): number =>
  increments * Number(increment) * kilogramsPer(unit);

const isLiftAgainst = (context: PlanContext, restriction: Restriction, card: Card, item: CardLift): boolean => {
  const exercise = context.known.house.exercises.get(item.exercise);
  const machine = context.known.house.machines.get(item.machine);
  if (!exercise || !machine || !isWithinScope(restriction.scope, exercise)) return false;
  const { limit } = restriction;
  switch (limit.kind) {
    case 'forbidden':
      return true;
    case 'no straining':
      return !item.says.some((says) => says.includes('no straining'));
    case 'RPE at most':
      return (
        item.shouldFeel[1] > limit.rpe ||
        item.sets.some((set) => set.load.kind === 'start at' && set.load.rpe[1] > limit.rpe)
      );
    case 'load at most':
    case 'fraction at most': {
      const on = Math.max(card.day, restriction.from) as Day;
      const steps = machineSteps(context.known, machine, exercise, on);
      const most = limitsOn(context, exercise, machine, steps, on)
        .filter((each) => each.kind === 'restriction')
        .reduce((least, each) => Math.min(least, limitIncrements(each, steps)), Infinity);
      const neverOver = item.rule?.neverOver ?? 0;
      const saysSo = item.limits.some((each) => each.kind === 'restriction' && each.increments <= most);
      const isOpen = !saysSo && item.sets.some((set) => set.load.kind === 'start at');
      return isOpen || neverOver > most || item.sets.some((set) => set.load.increments > most);
    }
  }
};

const recallSentence = (card: Card, against: readonly CardItem[]): string =>
  `${card.missionDay} (${isoOfDay(card.day)}), ${card.title}: do not use this card; leave out ${against.map((item) => item.exerciseName.toLowerCase()).join(', ')} and wait for a new one`;
