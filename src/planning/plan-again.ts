import type { Day } from '#units/day.ts';
import { factsOfKind } from '#domain/log.ts';
import type { Known } from '#domain/known.ts';
import type { Card } from '#domain/card.ts';
import type { Road } from '#domain/road.ts';
import { derive } from './derive.ts';
import type { Reckonings } from './workings.ts';

/** The card that a day would get now, had it not been issued; its working rows come with it. */
export const planAgain = (
  known: Known,
  road: Road,
  day: Day,
): ({ readonly card: Card; readonly gaps: readonly string[] } & Reckonings) | null => {
  const issued = factsOfKind(known.facts, 'decided').filter(
    ({ decision }) => decision.kind === 'issue' && decision.card.card.day === day,
  );
  const without = { ...known, facts: known.facts.filter((fact) => !issued.some((each) => each.id === fact.id)) };
  const again = derive(without, road.today, day);
  const found = again.cards.find((each) => each.day === day);
  return found && found.state !== 'issued'
    ? { card: found.card, gaps: found.gaps, rows: again.rows, pieces: again.pieces }
    : null;
};
