import type { Day } from '#units/day.ts';
import {
  isDeloadWeek,
  placeInProgramme,
  type Deload,
  type PlaceInProgramme,
  type ProgrammeSession,
  type ProgrammeVersion,
} from '#domain/programme.ts';
import { programmeOn, type PlanContext } from './plan-context.ts';

/** The session that a programme holds for a person on a day. */
export interface FoundSession extends PlaceInProgramme {
  readonly programme: ProgrammeVersion;
  readonly session: ProgrammeSession;
  /** What an easier week takes off, in an easier week. */
  readonly deload: Deload | null;
}

export const sessionOn = (context: PlanContext, on: Day): FoundSession | null => {
  const { mission } = context.known;
  const programme = programmeOn(context, on);
  if (!mission || !programme) return null;
  const at = placeInProgramme(programme, mission, on);
  const session = at?.phase.sessions.find((each) => each.weekday === at.weekday);
  if (!at || !session) return null;
  return { programme, ...at, session, deload: isDeloadWeek(at.phase, at.week) ? at.phase.deload : null };
};
