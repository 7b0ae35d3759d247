import { addDays, type Day } from '#units/day.ts';
import type { CardItem } from '#domain/card.ts';
import type { PersonId } from '#domain/identity.ts';
import type { Known } from '#domain/known.ts';
import { showMissionDay } from '#domain/mission-day.ts';
import type { ProgrammeVersion } from '#domain/programme.ts';
import { programmeDifference } from '#domain/programme-difference.ts';
import { showPiece } from '#domain/show-piece.ts';
import { versionOfDraft, type ProgrammeDraft } from '#actions/programme-draft.ts';
import type { Snapshot } from '#actions/snapshot.ts';
import {
  changeCounts,
  COMPARED_DAYS,
  comparePerson,
  firstDayOn,
  houseWith,
  isOverBy,
  type PersonComparison,
} from '#planning/compare-programme.ts';
import type { LineChange, SessionChange } from '#planning/compare-sessions.ts';
import type {
  ComparedLine,
  ComparedPerson,
  ComparedSession,
  ComparisonWindow,
} from '#contract/windows/comparison-window.ts';
import { dayLabelOf, isOurs, peopleInOrder } from './person-head.ts';
import { showWorkSets } from './set-runs.ts';

export interface ComparisonAsked {
  readonly draft: ProgrammeDraft;
  readonly from: Day;
  readonly people: readonly PersonId[] | null;
}

/** What a draft would change for each person in the next days. */
export const comparisonWindow = (snapshot: Snapshot, asked: ComparisonAsked): ComparisonWindow => {
  const { house, today, upTo } = snapshot;
  const version = versionOfDraft(house, asked.draft);
  const before = asked.draft.follows === null ? null : (house.programmes.get(asked.draft.follows) ?? null);
  const compared = whoWouldFollow(snapshot, asked, version).flatMap(({ known, from }) => {
    const road = snapshot.road(known.person);
    const looked = { version, house: houseWith(house, version) };
    return road ? [{ known, comparison: comparePerson(known, road, looked, from) }] : [];
  });
  const changed = compared.filter(({ comparison }) => comparison.sessions.length > 0);
  const unchanged = compared.filter(({ comparison }) => comparison.sessions.length === 0);
  return {
    basis: upTo,
    today,
    until: addDays(today, COMPARED_DAYS - 1),
    number: version.number,
    newer: before && newerThan(before, version),
    difference: programmeDifference(before ?? { name: version.name, phases: [] }, version, house.exercises),
    people: changed.map(({ known, comparison }) => comparedPerson(known, comparison, today)),
    unchanged: unchanged.map(({ known, comparison }) => who(known, comparison)),
    totals: changeCounts(changed.flatMap(({ comparison }) => comparison.sessions)),
  };
};

/** The newest version that stands, where it is another than the one the draft was made from. */
const newerThan = (before: ProgrammeVersion, { number }: ProgrammeVersion): number | null =>
  number - 1 > before.number ? number - 1 : null;

const whoWouldFollow = (
  snapshot: Snapshot,
  { draft, from, people }: ComparisonAsked,
  version: ProgrammeVersion,
): readonly { readonly known: Known; readonly from: Day }[] => {
  const start = Math.max(from, snapshot.today) as Day;
  return peopleInOrder(snapshot).flatMap((known) => {
    if (!isOurs(known) || !known.mission || (people && !people.includes(known.person))) return [];
    const first = firstDayOn(known, draft.programme, start);
    if (first === null && people === null) return [];
    const day = first ?? start;
    return isOverBy(known, version, day) ? [] : [{ known, from: day }];
  });
};

const who = (known: Known, { person, from }: PersonComparison) => ({
  id: person,
  name: known.name,
  from,
  fromLabel: known.mission ? showMissionDay(known.mission, from) : '',
});

const comparedPerson = (known: Known, comparison: PersonComparison, today: Day): ComparedPerson => ({
  ...who(known, comparison),
  dayLabel: dayLabelOf(known, today),
  issuedAhead: comparison.issuedAhead,
  counts: changeCounts(comparison.sessions),
  sessions: comparison.sessions.map((session) => comparedSession(known, session)),
});

const comparedSession = (known: Known, session: SessionChange): ComparedSession => {
  const { day, kind, was, is, reordered, minutes, newGaps, goneGaps } = session;
  const shown = is ?? was;
  return {
    day,
    missionDay: known.mission ? showMissionDay(known.mission, day) : '',
    title: shown?.card.title ?? '',
    wasTitle: was && is && was.card.title !== is.card.title ? was.card.title : null,
    kind,
    state: shown?.state ?? 'expected',
    lines: session.lines.map(comparedLine),
    reordered,
    minutes: { was: Math.round(minutes.was), is: Math.round(minutes.is), block: shown?.card.blockMinutes ?? 0 },
    newGaps,
    goneGaps,
  };
};

const comparedLine = ({ exerciseName, was, is, load, leftOut }: LineChange): ComparedLine => ({
  exerciseName,
  was: was && showItem(was),
  is: is && showItem(is),
  load,
  leftOut,
});

const showItem = (item: CardItem): string => (item.kind === 'lift' ? showWorkSets(item, 'with unit') : showPiece(item));
