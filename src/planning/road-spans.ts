import { addDays, type Day } from '#units/day.ts';
import type { SiteId } from '#domain/identity.ts';
import { ofKind } from '#domain/known.ts';
import type { ProgrammePhase, ProgrammeVersion } from '#domain/programme.ts';
import { isInFlight, siteOn } from './machine-on.ts';
import type { PlanContext } from './plan-context.ts';
import { placeOnRoad } from './time/place-on-road.ts';
import { sideOf, type RoadSide } from './time/side-of.ts';

/** First and last day, both with it. */
export interface DaySpan {
  readonly first: Day;
  readonly last: Day;
}

/** Days of one phase, or days that no programme holds. */
export type PhaseSpan = DaySpan & {
  readonly side: RoadSide;
  readonly held: { readonly programme: ProgrammeVersion; readonly phase: ProgrammePhase } | null;
};

/** Days at one site; `isSaid` where somebody entered it, and not only assumed for want of an entry. */
export type StaySpan = DaySpan & { readonly site: SiteId | null; readonly isSaid: boolean };

/** The phase that holds a day, with its programme, or null. */
export const heldOn = (context: PlanContext, on: Day): PhaseSpan['held'] => {
  const place = placeOnRoad(context, on);
  return place && { programme: place.programme, phase: place.phase };
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
