import { addDays, type Day } from '#units/day.ts';
import type { Fact } from '#domain/fact.ts';
import type { Mission } from '#domain/known.ts';
import { showMissionDay } from '#domain/mission-day.ts';
import type { PhaseName } from '#domain/programme.ts';
import type { Road } from '#domain/road.ts';
import { datesOverTime, datesWhen } from './mission-dates.ts';
import type { PlanContext } from './plan-context.ts';
import { heldOn } from './road-spans.ts';
import { sideOf, type RoadSide } from './time/side-of.ts';

/** Where a day lies on a road. */
export interface PlaceOnRoad {
  readonly missionDay: string;
  readonly side: RoadSide;
  readonly phase: PhaseName | null;
}

/** A signed day that now lies elsewhere than when it was signed, because the mission's dates moved. */
export interface MovedDecision {
  readonly fact: Fact;
  readonly which: 'first day' | 'last day' | 'day';
  readonly day: Day;
  readonly was: PlaceOnRoad;
  readonly now: PlaceOnRoad;
}

/** Dated facts stay where they are when a launch slips: what is still to come or still stands, and now lies elsewhere. */
export const movedDecisions = (
  context: PlanContext,
  road: Road,
  log: readonly Fact[],
  today: Day,
): readonly MovedDecision[] => {
  const { mission, person } = context.known;
  if (!mission) return [];
  const over = datesOverTime(log, person);
  return context.known.facts.flatMap((fact) =>
    daysStillAhead(context, road, fact, today).flatMap(({ which, day }) => {
      // The dates that the signer had before them.
      const signed = datesWhen(over, fact.sequence);
      if (!signed) return [];
      const [was, now] = [placeOn(context, signed, day), placeOn(context, mission, day)];
      return was.phase === now.phase && was.side === now.side ? [] : [{ fact, which, day, was, now }];
    }),
  );
};

/** With the programmes that are followed now: only the dates differ. */
const placeOn = (context: PlanContext, mission: Mission, day: Day): PlaceOnRoad => {
  const then = { ...context, known: { ...context.known, mission } };
  return {
    missionDay: showMissionDay(mission, day),
    side: sideOf(then, day),
    phase: heldOn(then, day)?.phase.name ?? null,
  };
};

interface SignedDay {
  readonly which: MovedDecision['which'];
  readonly day: Day;
}

/** The days that a fact names, where it is not over and done with. */
const daysStillAhead = (context: PlanContext, road: Road, fact: Fact, today: Day): readonly SignedDay[] => {
  if (fact.kind === 'stays' || fact.kind === 'set aside' || fact.kind === 'road holds')
    return spanDays(fact.from, fact.until, today);
  if (fact.kind === 'space walk') return fact.day >= today ? [{ which: 'day', day: fact.day }] : [];
  if (fact.kind === 'restricted')
    return isLifted(context, fact, today) ? [] : [{ which: 'first day', day: fact.restriction.from }];
  return fact.kind === 'decided' ? daysOfDecision(context, road, fact, today) : [];
};

const isLifted = ({ restrictions }: PlanContext, { id }: Fact, today: Day): boolean =>
  restrictions.some((each) => each.fact.id === id && each.liftedOn !== null && each.liftedOn <= today);

const daysOfDecision = (
  { decisions }: PlanContext,
  road: Road,
  { id, decision }: Fact<'decided'>,
  today: Day,
): readonly SignedDay[] => {
  switch (decision.kind) {
    case 'adjust': {
      const isOver =
        decisions.some((each) => each.decision.kind === 'end adjustment' && each.decision.adjustment === id) ||
        // A back-off happens on its day and is done.
        (decision.change.kind === 'back off' && decision.from < today);
      return isOver ? [] : spanDays(decision.from, decision.until, today);
    }
    case 're-make':
      return decision.day >= today ? [{ which: 'day', day: decision.day }] : [];
    case 'raise':
    case 're-base':
    case 'fix body mass':
    case 'limit shoulders':
      return decision.from >= today ? [{ which: 'day', day: decision.from }] : [];
    case 'follow':
      return 'on' in decision.from && decision.from.on >= today ? [{ which: 'first day', day: decision.from.on }] : [];
    case 'issue':
      return isStillToBeDone(road, decision.card.id, today) ? [{ which: 'day', day: decision.card.card.day }] : [];
    case 'end adjustment':
    case 'replace body weight':
    case 'decline':
    case 'recall':
      return [];
  }
};

const isStillToBeDone = (road: Road, card: string, today: Day): boolean =>
  road.cards.some(
    (each) =>
      each.state === 'issued' &&
      each.record.document.id === card &&
      each.day >= today &&
      each.record.outcome === 'none' &&
      (each.record.delivery === 'issued' || each.record.delivery === 'received'),
  );

const spanDays = (from: Day, until: Day | null, today: Day): readonly SignedDay[] => {
  if (until === null) return [{ which: 'first day', day: from }];
  if (until < today) return [];
  return until < addDays(from, 1)
    ? [{ which: 'day', day: from }]
    : [
        { which: 'first day', day: from },
        { which: 'last day', day: until },
      ];
};
