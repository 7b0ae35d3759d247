import fc from 'fast-check';
import { expect, test } from 'vitest';
import { addDays, weekdayOf, type Day } from '#units/day.ts';
import { liftsOf, totalMinutes, type Card } from '#domain/card.ts';
import { SET_ASIDE, type FactBody } from '#domain/fact.ts';
import { instant } from '#domain/identity.ts';
import type { Road } from '#domain/road.ts';
import { derive } from '#planning/derive.ts';
import { issueDocuments } from '#planning/issue.ts';
import { decided, inventedRoad, LANDING, LAUNCH, PERSON, tested } from '#planning/invented-road.setup.ts';
import { SIGNER } from './rehearsal/rehearsal.ts';
import { THREE_DAYS } from './rehearsal/three-days.ts';

/* What is entered of a person's days takes effect on the road. Launch is a Monday, so weeks in flight begin on Mondays too. */

/** A Monday in general preparation. */
const MONDAY = addDays(LAUNCH, -364);
const WEEK = 7;

const bodies = (...more: readonly FactBody[]): readonly FactBody[] => [
  ...['back-squat', 'deadlift', 'bench-press', 'heel-raise'].map((lift) => tested(addDays(LAUNCH, -400), lift)),
  { kind: 'catalogued', entry: { kind: 'programme', version: THREE_DAYS } },
  ...[-730, 0].map((days) =>
    decided({ kind: 'follow', person: PERSON, programme: THREE_DAYS.id, from: { from: 'launch', days } }),
  ),
  { kind: 'carried', person: PERSON, day: addDays(LAUNCH, -20), load: { text: '100', unit: 'kg' } },
  ...more,
];

const roadOf = (facts: readonly FactBody[], today: Day, days: number): Road =>
  derive(inventedRoad(...bodies(...facts)).known, today, addDays(today, days - 1));

const cardsOf = (road: Road): readonly Card[] =>
  road.cards.map((card) => (card.state === 'issued' ? card.record.document.card : card.card));

const week = (...facts: readonly FactBody[]) => {
  const road = roadOf(facts, MONDAY, WEEK);
  return { road, laid: cardsOf(road).map(({ title, day }) => [title, weekdayOf(day)]) };
};

const available = (minutes: readonly number[], from = addDays(LAUNCH, -730)): FactBody => ({
  kind: 'available',
  person: PERSON,
  from,
  until: null,
  minutes,
});

type SetAsideBody = Extract<FactBody, { readonly kind: 'set aside' }>;

const setAside = (what: SetAsideBody['what'], from: Day, until = from, minutes = 0): FactBody => ({
  kind: 'set aside',
  person: PERSON,
  from,
  until,
  what,
  minutes,
  text: '',
});

test('nothing entered: the days of the programme', () => {
  expect(week().laid).toEqual([
    ['First day', 0],
    ['Second day', 2],
    ['Third day', 4],
  ]);
});

test('two blocks of two hours hold the week: two single hours stand on one card', () => {
  const { road, laid } = week(available([0, 120, 0, 120, 0, 0, 0]));
  expect(laid).toEqual([
    ['First day', 1],
    ['Second day and third day', 3],
  ]);
  const both = cardsOf(road)[1] as Card;
  expect(both.blockMinutes).toBe(120);
  expect(totalMinutes(both)).toBeLessThanOrEqual(120);
  const phase = THREE_DAYS.phases.find(({ name }) => name === 'general preparation');
  const meant = phase?.sessions.slice(1).flatMap(({ items }) => items.map(({ id }) => id)) ?? [];
  expect([...both.items, ...both.leftOut].map(({ item }) => item).toSorted()).toEqual(meant.toSorted());
  expect(road.unlaid).toEqual([]);
});

test('what the week has no time for is said, and the newest entry of a week stands', () => {
  const { road, laid } = week(available([60, 60, 60, 60, 60, 60, 60]), available([0, 60, 0, 60, 0, 0, 0], MONDAY));
  expect(laid).toEqual([
    ['First day', 1],
    ['Second day', 3],
  ]);
  expect(road.unlaid.map(({ says }) => says)).toEqual(['Third day has no place in the week of 2028-03-06.']);
});

test('a block is cut to what its day has, and what has no room is left out with its minutes', () => {
  const { road } = week(setAside('operations', MONDAY, MONDAY, 15));
  const [first] = cardsOf(road);
  expect([first?.title, first?.day, first?.blockMinutes]).toEqual(['First day', MONDAY, 15]);
  expect(totalMinutes(first as Card)).toBeLessThanOrEqual(15);
  expect(first?.leftOut.some(({ says }) => says.startsWith('left out: the block has 15 minutes'))).toBe(true);
});

test('a day with less time than any item takes has a card with nothing on it, which cannot be issued', () => {
  const { road } = week(setAside('operations', MONDAY, MONDAY, 4));
  expect(cardsOf(road)[0]?.items).toEqual([]);
  expect(road.gaps.map(({ says }) => says)).toContain('Nothing is left of this session.');
});

test('travel moves a session inside its week; rest and blackout let it pass', () => {
  expect(week(setAside('travel', addDays(MONDAY, 2))).laid).toEqual([
    ['First day', 0],
    ['Second day', 3],
    ['Third day', 4],
  ]);
  for (const what of ['rest', 'blackout'] as const) {
    const { road, laid } = week(setAside(what, addDays(MONDAY, 2)));
    expect(laid).toEqual([
      ['First day', 0],
      ['Third day', 4],
    ]);
    expect(road.unlaid).toEqual([]);
  }
  const away = week(setAside('travel', MONDAY, addDays(MONDAY, 6)));
  expect(away.laid).toEqual([]);
  expect(away.road.unlaid).toHaveLength(3);
});

test('the two days before one that is set aside for tests are light', () => {
  const { road } = week(setAside('test', addDays(MONDAY, 4), addDays(MONDAY, 4), 0));
  const [first, second, third] = cardsOf(road);
  expect([first, second, third].map((card) => [card?.title, card?.deload])).toEqual([
    ['First day', false],
    ['Second day', true],
    ['Third day', false],
  ]);
  for (const item of second?.items ?? []) {
    expect(item.shouldFeel[1]).toBeLessThanOrEqual(6);
    expect(item.says).toContain('light: tests on L−360');
  }
});

test('on landing day nobody trains, unless it is entered what is left of it', () => {
  const days = (...more: readonly FactBody[]) =>
    cardsOf(roadOf(more, LANDING.latest, 7)).map(({ day }) => day - LANDING.latest);
  expect(days()).toEqual([2, 4]);
  expect(days(setAside('blackout', LANDING.latest, LANDING.latest, 30))).toEqual([0, 2, 4]);
  expect(days({ kind: 'policies set', policies: { blackoutDaysFromLanding: 3 } })).toEqual([4]);
});

const held = (from: Day, until: Day | null = null): FactBody => ({
  kind: 'road holds',
  person: PERSON,
  from,
  until,
  text: 'no seat yet',
});

test('while the road holds the phase stays and its weeks go on counting; launch goes on by itself', () => {
  const phaseAt = (facts: readonly FactBody[], day: Day) => {
    const card = cardsOf(roadOf(facts, addDays(day, -WEEK), WEEK)).at(-1);
    return [card?.phase, card?.week];
  };
  const specific = addDays(LAUNCH, -56);
  expect(phaseAt([], specific)[0]).toBe('flight-specific preparation');
  const [phase, weeks] = phaseAt([held(addDays(LAUNCH, -300))], specific);
  const [, before] = phaseAt([held(addDays(LAUNCH, -300))], addDays(specific, -WEEK));
  expect([phase, weeks]).toEqual(['general preparation', Number(before) + 1]);
  expect(phaseAt([held(addDays(LAUNCH, -300), addDays(LAUNCH, -90))], specific)[0]).toBe('flight-specific preparation');
  expect(phaseAt([held(addDays(LAUNCH, -300))], addDays(LAUNCH, 13))[0]).toBe('first flight weeks');
});

/** A Monday in main flight, with days of the week on Monday, Thursday and Saturday. */
const IN_FLIGHT = addDays(LAUNCH, 70);
const [SECOND_DAY, THIRD_DAY] = [addDays(IN_FLIGHT, 3), addDays(IN_FLIGHT, 5)];

const walk = (day: Day): FactBody => ({ kind: 'space walk', person: PERSON, day, text: '' });
const look = (day: Day, passed = true): FactBody => ({
  kind: 'looked at',
  person: PERSON,
  day,
  what: 'hands and shoulders',
  passed,
  observedBy: 'the crew medical officer',
});

const cardOn = (facts: readonly FactBody[], day: Day, today = IN_FLIGHT): Card | undefined =>
  cardsOf(roadOf(facts, today, 28)).find((card) => card.day === day);
const leftOut = (card: Card | undefined) => card?.leftOut.map(({ exerciseName, says }) => `${exerciseName}: ${says}`);
const names = (card: Card | undefined) => card?.items.map(({ exerciseName }) => exerciseName) ?? [];

test('before a space walk hands rest: no pulling, no heavy hinge, and the day says why', () => {
  expect(names(cardOn([], SECOND_DAY))).toEqual(['Deadlift', 'Bent-over row']);
  const card = cardOn([walk(addDays(SECOND_DAY, 3))], SECOND_DAY);
  expect(card?.items).toEqual([]);
  expect(leftOut(card)).toEqual([
    'Deadlift: left out: hands rest before the space walk of flight day 77',
    'Bent-over row: left out: hands rest before the space walk of flight day 77',
  ]);
  expect(names(cardOn([walk(addDays(SECOND_DAY, 4))], SECOND_DAY))).toEqual(['Deadlift', 'Bent-over row']);
  expect(names(cardOn([walk(addDays(THIRD_DAY, 2))], THIRD_DAY))).toContain('Back squat');
});

const heaviest = (card: Card | undefined, exercise: string) =>
  Math.max(
    0,
    ...liftsOf(card ?? { items: [] })
      .filter((item) => item.exercise === exercise)
      .flatMap((item) => item.sets.map((set) => set.load.increments)),
  );

test('the day before a space walk is light', () => {
  const [light, asMeant] = [cardOn([walk(addDays(THIRD_DAY, 1))], THIRD_DAY), cardOn([], THIRD_DAY)];
  expect([light?.deload, asMeant?.deload]).toEqual([true, false]);
  for (const item of light?.items ?? []) {
    expect(item.shouldFeel[1]).toBeLessThanOrEqual(6);
    expect(item.says).toContain('light: a space walk tomorrow');
  }
  expect(heaviest(light, 'back-squat')).toBeGreaterThan(0);
  expect(heaviest(light, 'back-squat')).toBeLessThanOrEqual(0.8 * heaviest(asMeant, 'back-squat'));
});

test('on the day of a space walk nobody trains: its session goes to the next free day', () => {
  const road = roadOf([walk(THIRD_DAY)], IN_FLIGHT, WEEK);
  expect(cardsOf(road).map(({ title, day }) => [title, day - IN_FLIGHT])).toEqual([
    ['First day', 0],
    ['Second day', 3],
    ['Third day', 6],
  ]);
});

test('after a space walk grip and pressing stay out until somebody has looked and found all sound', () => {
  const facts = [walk(addDays(THIRD_DAY, -1))];
  const pressed = 'Shoulder press';
  const says = `${pressed}: left out: hands and shoulders are to be looked at after the space walk of flight day 75`;
  expect(names(cardOn([], THIRD_DAY))).toContain(pressed);
  expect(leftOut(cardOn(facts, THIRD_DAY))).toContain(says);
  expect(leftOut(cardOn([...facts, look(THIRD_DAY, false)], THIRD_DAY))).toContain(says);
  expect(names(cardOn([...facts, look(THIRD_DAY, false), look(THIRD_DAY)], THIRD_DAY))).toContain(pressed);
  // A look from before the walk says nothing of it.
  expect(leftOut(cardOn([...facts, look(addDays(THIRD_DAY, -2))], THIRD_DAY))).toContain(says);
  // Cards that are only expected take it that somebody looks; the same day, once it can be issued, waits.
  const later = addDays(THIRD_DAY, 2 * WEEK);
  expect(names(cardOn(facts, later))).toContain(pressed);
  expect(leftOut(cardOn(facts, later, addDays(later, -WEEK)))).toContain(says);
});

test('nothing is new in the days before a space walk: what was never tested nor on a card waits', () => {
  const first = addDays(LAUNCH, 5);
  const facts = [walk(addDays(first, 2))];
  expect(leftOut(cardOn(facts, first, LAUNCH))).toEqual([
    'Shoulder press: left out: nothing new before the space walk of flight day 8',
  ]);
  const before = tested(addDays(LAUNCH, -40), 'shoulder-press');
  expect(names(cardOn([...facts, before], first, LAUNCH))).toContain('Shoulder press');
  // A fortnight on it has stood on cards of the weeks before.
  expect(leftOut(cardOn([walk(addDays(first, 16))], addDays(first, 14), LAUNCH))).toEqual([]);
});

test('a space walk that a slip has left on the ground changes nothing', () => {
  expect(cardOn([walk(addDays(LAUNCH, -1))], THIRD_DAY)).toEqual(cardOn([], THIRD_DAY));
});

const issuedOn = (day: Day, facts: readonly FactBody[]): FactBody => {
  const { known } = inventedRoad(...bodies(...facts));
  const road = derive(known, day, day);
  const tracks = cardsOf(road).flatMap((card) => card.items.map(({ track }) => [track, 'as planned'] as const));
  const issuing = issueDocuments(known, road, [day], {
    signer: SIGNER,
    signsFor: null,
    issuedAt: instant('2027-03-01T10:00:00.000Z'),
    newId: () => 'issued',
    program: 'a test',
    reasons: Object.fromEntries(tracks),
  });
  const document = issuing.kind === 'issued' ? issuing.documents[0] : undefined;
  if (!document) throw new Error(issuing.kind === 'refused' ? issuing.refusals.join(' ') : 'Nothing was issued.');
  return decided({ kind: 'issue', person: PERSON, card: document, raises: document.raises });
};

test('an issued card stays on its day, and its session is not laid a second time when the days change', () => {
  const before = [available([0, 60, 60, 60, 0, 0, 0])];
  const issued = issuedOn(addDays(MONDAY, 1), before);
  const road = roadOf([...before, issued, available([60, 0, 60, 0, 60, 0, 0], MONDAY)], MONDAY, WEEK);
  expect(cardsOf(road).map(({ title, day }) => [title, day - MONDAY])).toEqual([
    ['First day', 1],
    ['Second day', 2],
    ['Third day', 4],
  ]);
});

const anyDays = fc.integer({ min: 0, max: 60 });
const anyFact: fc.Arbitrary<FactBody> = fc.oneof(
  fc
    .tuple(fc.array(fc.constantFrom(0, 20, 45, 60, 120, 150), { minLength: 7, maxLength: 7 }), anyDays)
    .map(([minutes, from]) => available(minutes, addDays(IN_FLIGHT, from - 30))),
  fc
    .tuple(fc.constantFrom(...SET_ASIDE), anyDays, fc.nat(9), fc.constantFrom(0, 0, 30, 75))
    .map(([what, from, days, minutes]) =>
      setAside(what, addDays(IN_FLIGHT, from), addDays(IN_FLIGHT, from + days), minutes),
    ),
  anyDays.map((day) => walk(addDays(IN_FLIGHT, day))),
  fc.tuple(anyDays, fc.boolean()).map(([day, passed]) => look(addDays(IN_FLIGHT, day), passed)),
);

/** Minutes of a day by what was entered, read in another way: day by day from the last entry. */
const minutesOf = (facts: readonly FactBody[], day: Day): number =>
  Math.min(
    ...facts.flatMap((fact) =>
      fact.kind === 'set aside' && fact.from <= day && day <= fact.until ? [fact.minutes] : [],
    ),
    ...facts.flatMap((fact) => (fact.kind === 'space walk' && fact.day === day ? [0] : [])),
    facts
      .flatMap((fact) => (fact.kind === 'available' && fact.from <= day ? [fact.minutes[weekdayOf(day)] ?? 0] : []))
      .at(-1) ?? Infinity,
    Infinity,
  );

const GRIPPING = new Set(['grip', 'carry', 'horizontal pull', 'vertical pull']);

test('whatever is entered: no card on a day without time, none longer than its day, no grip in the days before a space walk', () => {
  fc.assert(
    fc.property(fc.array(anyFact, { minLength: 1, maxLength: 6 }), (facts) => {
      const { known } = inventedRoad(...bodies(...facts));
      const road = derive(known, IN_FLIGHT, addDays(IN_FLIGHT, 60));
      const walks = facts.flatMap((fact) => (fact.kind === 'space walk' ? [fact.day] : []));
      for (const card of cardsOf(road)) {
        const minutes = minutesOf(facts, card.day);
        expect(minutes).toBeGreaterThan(0);
        expect(totalMinutes(card)).toBeLessThanOrEqual(minutes + 1e-9);
        if (!walks.some((day) => day > card.day && day - card.day <= 3)) continue;
        for (const item of card.items) {
          const exercise = known.house.exercises.get(item.exercise);
          expect(GRIPPING.has(exercise?.pattern ?? '')).toBe(false);
          if (exercise?.pattern === 'hip hinge' && item.kind === 'lift') expect(item.basis).not.toBe('fraction');
        }
      }
    }),
    { numRuns: 60 },
  );
});
