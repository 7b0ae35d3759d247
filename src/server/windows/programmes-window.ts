import { isoOfDay } from '#units/day.ts';
import { dayOfAnchor, showMissionDay, type Anchor } from '#domain/mission-day.ts';
import type { Known } from '#domain/known.ts';
import type { ProgrammeVersion } from '#domain/programme.ts';
import type { ProgrammesWindow } from '#contract/windows/programmes-window.ts';
import type { Snapshot } from '#actions/snapshot.ts';
import { dayLabelOf, followedBy, isOurs, peopleInOrder } from './person-head.ts';

export const programmesWindow = (snapshot: Snapshot): ProgrammesWindow => {
  const people = peopleInOrder(snapshot);
  return {
    versions: [...snapshot.house.programmes.values()].map((version) => ({
      version,
      followers: people.flatMap((known) => {
        const followed = followedBy(known).find((each) => each.version.id === version.id);
        return followed ? [{ id: known.person, name: known.name, from: showAnchor(followed.anchor, known) }] : [];
      }),
      canFollow: people
        .filter((known) => known.mission && isOurs(known) && !followsAlready(known, version))
        .map((known) => ({ id: known.person, name: known.name, dayLabel: dayLabelOf(known, snapshot.today) })),
    })),
    exercises: [...snapshot.house.exercises.values()],
  };
};

const followsAlready = (known: Known, { id }: ProgrammeVersion): boolean =>
  followedBy(known).some(({ version }) => version.id === id);

const showAnchor = (anchor: Anchor, { mission }: Known): string => {
  const day = dayOfAnchor(anchor, mission);
  if (day === null) return 'a landing that is not known yet';
  return mission ? `${showMissionDay(mission, day)}, ${isoOfDay(day)}` : isoOfDay(day);
};
