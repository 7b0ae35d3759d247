import type { Day } from '#units/day.ts';
import type { Fact } from '#domain/fact.ts';
import { placeInPhase, placeInProgramme, type PlaceInProgramme, type ProgrammeVersion } from '#domain/programme.ts';
import { programmeOn, type PlanContext } from '../plan-context.ts';
import { holdsDay } from './calendar.ts';
import { sideOf } from './side-of.ts';

/** Where a day lies in the programme that is followed on it. */
export interface PlaceOnRoad extends PlaceInProgramme {
  readonly programme: ProgrammeVersion;
}

/** The phase of a day, with week and weekday: by the mission's dates, or the one that was in force when the road was held. */
export const placeOnRoad = (context: PlanContext, on: Day): PlaceOnRoad | null => {
  const hold = holdOn(context, on);
  return (hold && heldPlace(context, hold, on)) ?? placeByDates(context, on);
};

/** A hold keeps nobody on the ground who flies, nor in flight who has landed: it ends there by itself. */
const holdOn = (context: PlanContext, on: Day): Fact<'road holds'> | null =>
  context.calendar.holds.findLast((hold) => holdsDay(hold, on) && sideOf(context, hold.from) === sideOf(context, on)) ??
  null;

const placeByDates = (context: PlanContext, on: Day): PlaceOnRoad | null => {
  const { mission } = context.known;
  const programme = mission && programmeOn(context, on);
  const place = programme && placeInProgramme(programme, mission, on);
  return place ? { programme, ...place } : null;
};

/** Weeks go on counting while the road holds; a new version of the programme is taken over with its own phase. */
const heldPlace = (context: PlanContext, hold: Fact<'road holds'>, on: Day): PlaceOnRoad | null => {
  const { mission } = context.known;
  const began = placeByDates(context, hold.from);
  if (!mission || !began) return null;
  const now = programmeOn(context, on);
  const phase = now?.phases.find(({ name }) => name === began.phase.name);
  const place = placeInPhase(phase ?? began.phase, mission, on);
  return place && { programme: now && phase ? now : began.programme, ...place };
};
