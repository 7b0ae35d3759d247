import { isoOfDay, type Day } from '#units/day.ts';
import { kilogramsOf } from '#units/entered.ts';
import { STANDARD_GRAVITY } from '#units/gravity.ts';
import { kilogramsPer } from '#units/mass.ts';
import { calibrationFactor } from '#assessing/bar-equivalent.ts';
import { handOn } from '#assessing/hands.ts';
import type { Card, CardBouts, CardDrill, CardItem, CardLift, HarnessPull } from '#domain/card.ts';
import { MACHINE_KINDS, type Exercise } from '#domain/catalogue.ts';
import { loadsLifts } from '#domain/programme-line/new-item.ts';
import type { Decision } from '#domain/decision.ts';
import type { FactId } from '#domain/identity.ts';
import type { IssuedCard } from '#domain/issued-card.ts';
import type { Known } from '#domain/known.ts';
import { ofKind } from '#domain/known.ts';
import { isWithinScope, type Restriction } from '#domain/restriction.ts';
import { cardRecords, stands } from './card-records.ts';
import { loadSays, LOWEST_STRAIN } from './effort-cap.ts';
import { isHandWork } from './hand-work.ts';
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
  item.kind === 'lift'
    ? isLiftAgainst(context, restriction, card, item)
    : isPieceAgainst(context, restriction, card, item);

/** In bouts and drills a limit caps effort, what a harness pulls and what a hand holds. */
const isPieceAgainst = (
  context: PlanContext,
  { scope, limit }: Restriction,
  card: Card,
  item: CardBouts | CardDrill,
): boolean => {
  const exercise = context.known.house.exercises.get(item.exercise);
  if (!exercise || !isWithinScope(scope, exercise)) return false;
  switch (limit.kind) {
    case 'forbidden':
      return true;
    case 'no straining':
      return isHarderThan(item, LOWEST_STRAIN) || !item.says.some((says) => says.includes('no straining'));
    case 'RPE at most':
      return isHarderThan(item, limit.rpe);
    case 'load at most':
      return item.kind === 'bouts'
        ? item.harness !== null && pullOf(context, item, item.harness, card.day) > kilogramsOf(limit.load) + ROUNDING
        : hardestGrip(item) > kilogramsOf(limit.load) * STANDARD_GRAVITY + ROUNDING ||
            (isByFeel(context, exercise, item) && !item.says.includes(loadSays(limit)));
    case 'fraction at most':
      return (
        item.kind === 'bouts' || isByFeel(context, exercise, item) || isOverGrip(context, item, limit.of, card.day)
      );
  }
};

/** Loads and forces are sums of binary fractions. */
const ROUNDING = 1e-6;

/** A target that somebody is to reach says nothing of how hard it will be: under a cap of effort none may stand. */
const isHarderThan = (item: CardBouts | CardDrill, rpe: number): boolean =>
  item.shouldFeel[1] > rpe ||
  (item.kind === 'bouts'
    ? item.bouts.some(
        (bout) => bout.rpe[1] > rpe || !(bout.heartRate === null && bout.watts === null && bout.speed === null),
      )
    : item.sets.some(({ force }) => force !== null));

/** Does whoever is there choose how hard: the load of what loads lifts, or the force of a hand that was set none? */
const isByFeel = (context: PlanContext, exercise: Exercise, item: CardDrill): boolean =>
  isUnderLoad(context, item) || (isHandWork(exercise) && item.sets.some(({ force }) => force === null));

/** A drill on what loads lifts. */
const isUnderLoad = ({ known }: PlanContext, { means }: CardDrill): boolean =>
  MACHINE_KINDS.some((kind) => kind === means && loadsLifts(kind)) ||
  [...known.house.machines.values()].some(({ name, kind }) => name === means && loadsLifts(kind));

const hardestGrip = ({ sets }: CardDrill): number => Math.max(0, ...sets.map(({ force }) => force ?? 0));

/** Over the part of the last grip before launch that the physician allows; an untested hand has none. */
const isOverGrip = ({ known }: PlanContext, { sets }: CardDrill, of: number, on: Day): boolean => {
  const launch = known.mission?.launch ?? on;
  return sets.some(({ side, force }) => {
    if (force === null || side === null) return false;
    const before = handOn(known, 'greatest grip', side, launch < on ? launch : on);
    return force > of * (before?.value ?? 0) + ROUNDING;
  });
};

/** Kilograms that a harness pulls when it is set so. */
const pullOf = ({ known }: PlanContext, { machine }: CardBouts, harness: HarnessPull, on: Day): number =>
  harness.increments * Number(harness.increment) * kilogramsPer(harness.unit) * calibrationFactor(known, machine, on);

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
        (item.rule !== null && item.rule.rpeAtMost > limit.rpe) ||
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
