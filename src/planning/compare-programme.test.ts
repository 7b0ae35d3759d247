import fc from 'fast-check';
import { expect, test } from 'vitest';
import { addDays, type Day } from '#units/day.ts';
import { isLiftItem, takeUp, type LiftItem, type ProgrammeItem, type ProgrammeVersion } from '#domain/programme.ts';
import { changeCounts, comparePerson, firstDayOn, houseWith } from './compare-programme.ts';
import { compareSessions, type PlannedRoadCard } from './compare-sessions.ts';
import { derive } from './derive.ts';
import { FLIGHT_PROGRAMME, inventedRoad, LAUNCH, PREPARATION_PROGRAMME, tested } from './invented-road.setup.ts';

const { known } = inventedRoad(
  ...['back-squat', 'deadlift', 'heel-raise', 'bench-press'].map((lift) => tested(addDays(LAUNCH, -40), lift)),
);
const TODAY = addDays(LAUNCH, 3);

type Edit = (item: LiftItem) => ProgrammeItem | null;

const edited = (version: ProgrammeVersion, edit: Edit): ProgrammeVersion => {
  const { id, ...content } = version;
  return takeUp({
    ...content,
    number: version.number + 1,
    follows: id,
    phases: version.phases.map((phase) => ({
      ...phase,
      sessions: phase.sessions.map((session) => ({
        ...session,
        items: session.items.flatMap((item) => (isLiftItem(item) ? (edit(item) ?? []) : item)),
      })),
    })),
  });
};

const compare = (edit: Edit, today: Day = TODAY, version = FLIGHT_PROGRAMME, from: Day = today) => {
  const next = edited(version, edit);
  const now = derive(known, today, addDays(today, 28));
  return comparePerson(known, now, { version: next, house: houseWith(known.house, next) }, from);
};

const isHeavySquat = ({ track }: LiftItem): boolean => track === 'squat heavy';

test('a version that asks for the same changes nothing for anybody', () => {
  expect(compare((item) => ({ ...item, source: 'another source', priority: item.priority })).sessions).toEqual([]);
});

test('one set more on one track: the sessions of that track and no others, the load as it was', () => {
  const { sessions } = compare((item) =>
    isHeavySquat(item) ? { ...item, sets: [...item.sets, ...item.sets.slice(-1)] } : item,
  );
  const heavyDays = derive(known, TODAY, addDays(TODAY, 27))
    .cards.flatMap((card) => (card.state === 'issued' ? [] : [card]))
    .filter(({ card }) => card.items.some(({ track }) => track === 'squat heavy'))
    .map(({ day }) => day);
  expect(heavyDays.length).toBeGreaterThan(2);
  expect(sessions.map(({ day }) => day)).toEqual(heavyDays);
  for (const { lines, minutes, kind } of sessions) {
    expect([kind, lines.filter(({ exerciseName }) => exerciseName === 'Back squat').map(({ load }) => load)]).toEqual([
      'changed',
      ['as it was'],
    ]);
    expect(minutes.is).toBeGreaterThan(minutes.was);
  }
});

test('a lift taken out is gone from its sessions; a heavier start is a raise, a lighter one is none', () => {
  const without = changeCounts(compare((item) => (isHeavySquat(item) ? null : item)).sessions);
  expect(without.itemsLeftOut).toBeGreaterThan(2);
  expect(without.loadsRaised + without.loadsLowered + without.itemsAdded).toBe(0);
  const startAt =
    (part: number): Edit =>
    (item) => {
      if (!isHeavySquat(item)) return item;
      return item.basis.kind === 'from last'
        ? { ...item, basis: { ...item.basis, start: part } }
        : { ...item, basis: { kind: 'fraction', of: part } };
    };
  const heavier = changeCounts(compare(startAt(0.95)).sessions);
  expect([heavier.loadsRaised > 0, heavier.loadsLowered]).toEqual([true, 0]);
  const lighter = changeCounts(compare(startAt(0.3)).sessions);
  expect([lighter.loadsRaised, lighter.loadsLowered > 0]).toEqual([0, true]);
});

test('nothing before the day on which it is followed changes', () => {
  const from = addDays(TODAY, 10);
  const { sessions } = compare((item) => (isHeavySquat(item) ? null : item), TODAY, FLIGHT_PROGRAMME, from);
  expect(sessions.length).toBeGreaterThan(0);
  expect(sessions.every(({ day }) => day >= from)).toBe(true);
  expect(
    compare((item) => (isHeavySquat(item) ? null : item), TODAY, FLIGHT_PROGRAMME, addDays(TODAY, 28)).sessions,
  ).toEqual([]);
});

test('who follows a programme later takes a new version up on that day', () => {
  const before = addDays(LAUNCH, -20);
  expect(firstDayOn(known, FLIGHT_PROGRAMME.programme, before)).toBe(LAUNCH);
  expect(firstDayOn(known, PREPARATION_PROGRAMME.programme, before)).toBe(before);
  expect(firstDayOn(known, PREPARATION_PROGRAMME.programme, LAUNCH)).toBeNull();
  const { sessions } = compare(() => null, before, FLIGHT_PROGRAMME, LAUNCH);
  // Endurance and drills stay: only a day of nothing but lifts is gone with them.
  expect(sessions.some(({ kind }) => kind === 'gone')).toBe(true);
  expect(sessions.every(({ day, kind }) => day >= LAUNCH && kind !== 'new')).toBe(true);
});

const plannedOf = (edit: Edit): readonly PlannedRoadCard[] => {
  const next = edited(FLIGHT_PROGRAMME, edit);
  const house = houseWith(known.house, next);
  const looked = derive(
    { ...known, house, facts: known.facts.map((fact) => followInstead(fact, next)) },
    TODAY,
    addDays(TODAY, 27),
  );
  return looked.cards.flatMap((card) => (card.state === 'issued' ? [] : [card]));
};

const followInstead = (fact: (typeof known.facts)[number], { id }: ProgrammeVersion): typeof fact =>
  fact.kind === 'decided' && fact.decision.kind === 'follow' && fact.decision.programme === FLIGHT_PROGRAMME.id
    ? { ...fact, decision: { ...fact.decision, programme: id } }
    : fact;

const TRACKS = [
  ...new Set(
    FLIGHT_PROGRAMME.phases.flatMap(({ sessions }) => sessions.flatMap(({ items }) => items.map(({ track }) => track))),
  ),
];

const EDITS: readonly Edit[] = [
  () => null,
  (item) => ({ ...item, sets: item.sets.slice(1) }),
  (item) => ({ ...item, basis: { kind: 'fraction', of: 0.4 } }),
];

test('held against each other the other way round, what is new is gone and what is raised is lowered', () => {
  const was = plannedOf((item) => item);
  fc.assert(
    fc.property(fc.subarray(TRACKS, { minLength: 1 }), fc.constantFrom(...EDITS), (tracks, edit) => {
      const is = plannedOf((item) => (tracks.includes(item.track) && item.sets.length > 1 ? edit(item) : item));
      const [there, back] = [changeCounts(compareSessions(was, is)), changeCounts(compareSessions(is, was))];
      expect(back).toEqual({
        ...there,
        sessionsNew: there.sessionsGone,
        sessionsGone: there.sessionsNew,
        itemsAdded: there.itemsLeftOut,
        itemsLeftOut: there.itemsAdded,
        loadsRaised: there.loadsLowered,
        loadsLowered: there.loadsRaised,
        minutes: back.minutes,
        newGaps: back.newGaps,
      });
      expect(Math.abs(back.minutes + there.minutes)).toBeLessThanOrEqual(1);
    }),
    { numRuns: 12 },
  );
});
