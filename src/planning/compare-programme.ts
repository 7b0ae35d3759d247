import { addDays, type Day } from '#units/day.ts';
import type { Decision } from '#domain/decision.ts';
import type { PersonId, ProgrammeId } from '#domain/identity.ts';
import type { House, Known } from '#domain/known.ts';
import { daysOfPhase, type ProgrammeVersion } from '#domain/programme.ts';
import type { Road } from '#domain/road.ts';
import { asIfDecided } from './as-if.ts';
import { compareSessions, type PlannedRoadCard, type SessionChange } from './compare-sessions.ts';
import { derive } from './derive.ts';
import { planContext, programmeOn } from './plan-context.ts';

/** Four weeks: the horizon and as much again of what is only expected. */
export const COMPARED_DAYS = 28;

/** What following another version would change for one person, before anybody signs it. */
export interface PersonComparison {
  readonly person: PersonId;
  /** From when they would follow it. */
  readonly from: Day;
  readonly sessions: readonly SessionChange[];
  /** Cards ahead that are issued: they stand as they were signed. */
  readonly issuedAhead: number;
}

/** The house with a version in it that nobody has taken up. */
export const houseWith = (house: House, version: ProgrammeVersion): House => ({
  ...house,
  programmes: new Map([...house.programmes, [version.id, version]]),
});

/** The days of a road over which its programme is looked for: three years. */
const FARTHEST = 1100;

/** The first day from one on, on which a person follows some version of a programme; null where they never do. */
export const firstDayOn = (known: Known, programme: ProgrammeId, from: Day): Day | null => {
  const context = planContext(known);
  for (let on = from; on <= addDays(from, FARTHEST); on = addDays(on, 1))
    if (programmeOn(context, on)?.programme === programme) return on;
  return null;
};

/** Has every phase of a version ended for a person before a day? */
export const isOverBy = ({ mission }: Known, version: ProgrammeVersion, from: Day): boolean =>
  mission !== null &&
  version.phases.every((phase) => {
    const days = daysOfPhase(phase, mission);
    return days === null || (days.last !== null && days.last < from);
  });

/** The decision that puts a person on a version from a day; it moves with the launch, as everything that is followed. */
export const followingFrom = (known: Known, version: ProgrammeVersion['id'], from: Day): Decision => ({
  kind: 'follow',
  person: known.person,
  programme: version,
  from: known.mission ? { from: 'launch', days: from - known.mission.launch } : { on: from },
});

/** Derives a person's next days as if they followed the version, and holds them against the days as they are planned now. */
export const comparePerson = (
  known: Known,
  now: Road,
  { version, house }: { readonly version: ProgrammeVersion; readonly house: House },
  from: Day,
): PersonComparison => {
  const until = addDays(now.today, COMPARED_DAYS - 1);
  const ahead = now.cards.filter(({ day }) => day >= now.today && day <= until);
  const issuedAhead = ahead.filter(
    (card) => card.state === 'issued' && card.record.delivery !== 'recalled' && card.record.delivery !== 'superseded',
  ).length;
  const stays = { person: known.person, from, sessions: [], issuedAhead };
  if (from > until) return stays;
  const looked = derive(asIfDecided({ ...known, house }, followingFrom(known, version.id, from)), now.today, until);
  return { ...stays, sessions: compareSessions(planned(ahead), planned(looked.cards)) };
};

const planned = (cards: Road['cards']): readonly PlannedRoadCard[] => cards.filter((card) => card.state !== 'issued');

/** How much of what kind changes, over as many people as are handed in. */
export interface ChangeCounts {
  readonly sessionsChanged: number;
  readonly sessionsNew: number;
  readonly sessionsGone: number;
  readonly itemsAdded: number;
  readonly itemsLeftOut: number;
  readonly loadsRaised: number;
  readonly loadsLowered: number;
  /** True minutes, overhead included, over all sessions that change. */
  readonly minutes: number;
  readonly newGaps: number;
}

export const changeCounts = (sessions: readonly SessionChange[]): ChangeCounts => {
  const lines = sessions.flatMap((session) => session.lines);
  const count = <Thing>(things: readonly Thing[], is: (thing: Thing) => boolean): number => things.filter(is).length;
  return {
    sessionsChanged: count(sessions, ({ kind }) => kind === 'changed'),
    sessionsNew: count(sessions, ({ kind }) => kind === 'new'),
    sessionsGone: count(sessions, ({ kind }) => kind === 'gone'),
    itemsAdded: count(lines, ({ was }) => was === null),
    itemsLeftOut: count(lines, ({ is }) => is === null),
    loadsRaised: count(lines, ({ load }) => load === 'raised'),
    loadsLowered: count(lines, ({ load }) => load === 'lowered'),
    minutes: Math.round(sessions.reduce((sum, { minutes }) => sum + minutes.is - minutes.was, 0)),
    newGaps: sessions.reduce((sum, { newGaps }) => sum + newGaps.length, 0),
  };
};
