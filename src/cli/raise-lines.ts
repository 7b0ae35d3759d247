import type { Known } from '#domain/known.ts';
import { planIssue } from '#planning/issue.ts';
import { shownLoad } from '#interchange/plain-text/shown-load.ts';
import type { Snapshot } from '#actions/snapshot.ts';

/** What a signature under the next sessions would raise, and what stands against it. */
export const raiseLines = (snapshot: Snapshot, known: Known, sessions: number): readonly string[] => {
  const road = snapshot.road(known.person);
  if (!road) return [];
  const days = road.cards.flatMap((card) => (card.state === 'planned' ? [card.day] : [])).slice(0, sessions);
  const { cards, raises, refusals } = planIssue(known, road, days);
  return [
    `${known.name}: ${cards.map(({ card }) => `${card.missionDay} ${card.title}`).join(', ') || 'no session to issue'}.`,
    ...raises.map(
      ({ exerciseName, from, to, unit, increment, cause, needsReason, cautions }) =>
        `  ${exerciseName}: ${from === null ? '' : `${shownLoad(from, increment)} to `}${shownLoad(to, increment)} ${unit}, ${cause}${needsReason ? ' (needs a reason)' : ''}${cautions.map((caution) => `; ${caution}`).join('')}`,
    ),
    ...refusals.map((says) => `  Cannot be issued: ${says}`),
  ];
};
