import type { Day } from '#units/day.ts';
import { isDeloadWeek, type Deload, type PlaceInProgramme, type ProgrammeSession } from '#domain/programme.ts';
import type { ProgrammeVersion } from '#domain/programme.ts';
import type { PlanContext } from './plan-context.ts';
import { roomOn } from './time/day-room.ts';
import { laidWeekOf } from './time/laid-week.ts';
import { whyLight, withLight } from './time/light-day.ts';

/** The session that a programme holds for a person on a day, inside the time that the day has. */
export interface FoundSession extends PlaceInProgramme {
  readonly programme: ProgrammeVersion;
  readonly session: ProgrammeSession;
  /** What an easier week or a light day takes off. */
  readonly deload: Deload | null;
}

export const sessionOn = (context: PlanContext, on: Day): FoundSession | null => {
  const laid = laidWeekOf(context, on)?.days.get(on);
  if (!laid) return null;
  const { place, sessions } = laid;
  const session = together(sessions);
  const { minutes } = roomOn(context, on);
  if (!session || minutes === 0) return null;
  return {
    ...place,
    session: { ...session, blockMinutes: Math.min(session.blockMinutes, minutes ?? Infinity) },
    deload: deloadOn(context, place, on),
  };
};

export const deloadOn = (context: PlanContext, { phase, week }: PlaceInProgramme, on: Day): Deload | null => {
  const easier = isDeloadWeek(phase, week) ? phase.deload : null;
  return whyLight(context, on) === null ? easier : withLight(easier);
};

/** Sessions that are laid together are one: the items of both, and the minutes of both blocks. */
const together = ([first, ...others]: readonly ProgrammeSession[]): ProgrammeSession | null =>
  first === undefined
    ? null
    : others.reduce(
        (both, each) => ({
          ...both,
          title: `${both.title} and ${each.title.toLowerCase()}`,
          blockMinutes: both.blockMinutes + each.blockMinutes,
          items: [...both.items, ...each.items],
        }),
        first,
      );
