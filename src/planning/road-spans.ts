import { addDays, type Day } from '#units/day.ts';
import type { SiteId } from '#domain/identity.ts';
import { ofKind } from '#domain/known.ts';
import { placeInProgramme, type ProgrammePhase, type ProgrammeVersion } from '#domain/programme.ts';
import { isInFlight, siteOn } from './machine-on.ts';
import { programmeOn, type PlanContext } from './plan-context.ts';

/** First and last day, both with it. */
export interface DaySpan {
  readonly first: Day;
  readonly last: Day;
}

export type RoadSide = 'before launch' | 'in flight' | 'after landing';

/** Days of one phase, or days that no programme holds. */
export type PhaseSpan = DaySpan & {
  readonly side: RoadSide;
  readonly held: { readonly programme: ProgrammeVersion; readonly phase: ProgrammePhase } | null;
};

/** Days at one site; `isSaid` where somebody entered it, and not only assumed for want of an entry. */
export type StaySpan = DaySpan & { readonly site: SiteId | null; readonly isSaid: boolean };

export const sideOf = ({ known }: PlanContext, on: Day): RoadSide => {
  if (isInFlight(known, on)) return 'in flight';
  return known.mission === null || on < known.mission.launch ? 'before launch' : 'after landing';
};

/** The phase that holds a day, with its programme, or null. */
export const heldOn = (context: PlanContext, on: Day): PhaseSpan['held'] => {
  const programme = programmeOn(context, on);
  const place = programme && context.known.mission && placeInProgramme(programme, context.known.mission, on);
  return place ? { programme, phase: place.phase } : null;
};

/** Every day of a road is in one of these and in no other: phases, and what lies between them. */
export const phaseSpans = (context: PlanContext, { first, last }: DaySpan): readonly PhaseSpan[] =>
  runsOf(
    { first, last },
    (on) => ({ side: sideOf(context, on), held: heldOn(context, on) }),
    (a, b) => a.side === b.side && a.held?.phase === b.held?.phase && a.held?.programme.id === b.held?.programme.id,
  );

/** What nobody planned is past before a day and a gap from it on: cut there into two. */
export const cutUnheld = (span: PhaseSpan, today: Day): readonly PhaseSpan[] =>
  span.held !== null || today <= span.first || today > span.last
    ? [span]
    : [
        { ...span, last: addDays(today, -1) },
        { ...span, first: today },
      ];

export const staySpans = (context: PlanContext, { first, last }: DaySpan): readonly StaySpan[] =>
  runsOf(
    { first, last },
    (on) => ({ site: siteOn(context.known, on), isSaid: isSaidWhere(context, on) }),
    (a, b) => a.site === b.site && a.isSaid === b.isSaid,
  );

const isSaidWhere = ({ known }: PlanContext, on: Day): boolean =>
  isInFlight(known, on) ||
  ofKind(known, 'stays').some(({ from, until }) => from <= on && (until === null || on <= until));

/** Neighbouring days that are alike, as spans. */
const runsOf = <What extends object>(
  { first, last }: DaySpan,
  whatOn: (on: Day) => What,
  isAlike: (a: What, b: What) => boolean,
): readonly (DaySpan & What)[] => {
  const runs: (DaySpan & What)[] = [];
  for (let on = first; on <= last; on = addDays(on, 1)) {
    const what = whatOn(on);
    const run = runs.at(-1);
    if (run && isAlike(run, what)) runs[runs.length - 1] = { ...run, last: on };
    else runs.push({ ...what, first: on, last: on });
  }
  return runs;
};
