import type { Known } from '#domain/known.ts';
import { showMissionDay } from '#domain/mission-day.ts';
import type { Road } from '#domain/road.ts';
import { reportedOf } from '#following/reported.ts';
import type { Snapshot } from '#actions/snapshot.ts';
import type { DeskPerson, DeskWindow } from '#contract/windows/desk-window.ts';
import { deskLines, inOrderOfNeed } from './desk-lines.ts';
import { loadTrend, mainLift } from './load-trend.ts';
import { isOurs, peopleInOrder, personLine } from './person-head.ts';
import { cardOf } from './sheet-cell.ts';
import { restrictionsOf } from './sheet-strips.ts';

export const deskWindow = (snapshot: Snapshot): DeskWindow => {
  const people = peopleInOrder(snapshot).flatMap((known) => {
    const road = snapshot.road(known.person);
    return road ? [{ known, road }] : [];
  });
  return {
    today: snapshot.today,
    lifts: { squat: mainLift(snapshot.house, 'squat'), deadlift: mainLift(snapshot.house, 'hip hinge') },
    lines: inOrderOfNeed(people.flatMap(({ known, road }) => deskLines(known, road))),
    people: people.map(({ known, road }) => deskPerson(snapshot, known, road)),
  };
};

const deskPerson = (snapshot: Snapshot, known: Known, road: Road): DeskPerson => ({
  ...personLine(known, snapshot.today),
  nextEvent: nextEvent(snapshot, known, road),
  squat: loadTrend(known, road, 'squat'),
  deadlift: loadTrend(known, road, 'hip hinge'),
  reported: reportedOf(road),
  restrictions: restrictionsOf(known).filter(({ liftedOn }) => liftedOn === null).length,
  team: isOurs(known) ? 'ours' : 'another team',
});

const nextEvent = ({ today }: Snapshot, { mission }: Known, road: Road): string | null => {
  if (!mission) return null;
  const isFirst = !road.cards.some((card) => card.state === 'issued' && card.day < today);
  const next = road.cards.find(({ day }) => day >= today);
  const events = [
    ...(mission.launch > today ? [{ day: mission.launch, says: `launch, ${inDays(mission.launch - today)}` }] : []),
    ...(next
      ? [
          {
            day: next.day,
            says: `${isFirst ? 'first card' : cardOf(next).title.toLowerCase()}, ${showMissionDay(mission, next.day)}`,
          },
        ]
      : []),
    ...(mission.landing && mission.landing.latest >= today
      ? [{ day: mission.landing.earliest, says: `landing, ${inDays(Math.max(0, mission.landing.earliest - today))}` }]
      : []),
  ];
  return events.toSorted((a, b) => a.day - b.day)[0]?.says ?? null;
};

const inDays = (days: number): string => (days === 0 ? 'today' : days === 1 ? 'tomorrow' : `in ${days} days`);
