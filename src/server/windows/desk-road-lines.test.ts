import { expect, test } from 'vitest';
import { addDays, type Day } from '#units/day.ts';
import type { FactBody } from '#domain/fact.ts';
import { idOf } from '#domain/identity.ts';
import { derive } from '#planning/derive.ts';
import { LIFTS_ONLY } from '#planning/dose/counted-programme.setup.ts';
import { issueDocuments } from '#planning/issue.ts';
import { decided, inventedRoad, LAUNCH, PERSON, tested } from '#planning/invented-road.setup.ts';
import { instant } from '#domain/identity.ts';
import { roadLines } from './desk-road-lines.ts';

/** A Monday in general preparation; the programme lifts on Mondays. */
const MONDAY = addDays(LAUNCH, -364);
const HORIZON = 28;

const FOLLOWS: readonly FactBody[] = [
  { kind: 'catalogued', entry: { kind: 'programme', version: LIFTS_ONLY } },
  ...[-730, 0].map((days) =>
    decided({ kind: 'follow', person: PERSON, programme: LIFTS_ONLY.id, from: { from: 'launch', days } }),
  ),
  ...['back-squat', 'deadlift'].map((lift) => tested(addDays(LAUNCH, -366), lift)),
];

const said = (today: Day, ...more: readonly FactBody[]): Readonly<Record<string, string>> => {
  const { known } = inventedRoad(...FOLLOWS, ...more);
  const lines = roadLines(known, derive(known, today, addDays(today, HORIZON)));
  return Object.fromEntries(lines.map(({ kind, says }) => [kind, says]));
};

test('cards to issue say how far ahead cards reach', () => {
  expect(said(MONDAY)['cards to issue']).toBe('No card ahead is issued; 2 sessions up to L−357 can be: issue.');
});

const issuedOn = (day: Day): FactBody => {
  const { known } = inventedRoad(...FOLLOWS);
  const road = derive(known, MONDAY, addDays(MONDAY, HORIZON));
  const issuing = issueDocuments(known, road, [day], {
    signer: { id: idOf('maud'), name: 'Maud', role: 'specialist', signsFor: null, from: null, until: null },
    signsFor: null,
    issuedAt: instant('2027-03-01T10:00:00.000Z'),
    newId: () => `issued ${day}`,
    program: 'a test',
    reasons: {},
  });
  const document = issuing.kind === 'issued' ? issuing.documents[0] : undefined;
  if (!document) throw new Error(issuing.kind === 'refused' ? issuing.refusals.join(' ') : 'Nothing was issued.');
  return decided({ kind: 'issue', person: PERSON, card: document, raises: document.raises });
};

test('a card that is issued covers days; where its day is taken since, somebody must call it off', () => {
  const card = issuedOn(MONDAY);
  expect(said(MONDAY, card)['cards to issue']).toBe(
    'Only today’s card is issued; 1 session up to L−357 can be: issue.',
  );
  const taken: FactBody = {
    kind: 'set aside',
    person: PERSON,
    from: MONDAY,
    until: MONDAY,
    what: 'test',
    minutes: 0,
    text: '',
  };
  expect(said(MONDAY, card, taken)['card on a day set aside']).toBe(
    'A card is issued for L−364, which is taken by tests: call it off.',
  );
  expect(said(MONDAY, card)['card on a day set aside']).toBeUndefined();
});

test('tests are asked for while they are due, and no more once they are typed in', () => {
  const due = addDays(LAUNCH, -294);
  expect(said(due)['tests due']).toMatch(/^Tests are due until L−\d+: test and type in\.$/);
  const lifts = ['back-squat', 'deadlift', 'single-leg-heel-raise', 'bent-over-row'];
  expect(said(due, ...lifts.map((lift) => tested(due, lift)))['tests due']).toBeUndefined();
});

test('a restriction asks for its review a week before, and binds on after it', () => {
  const restricted = (reviewOn: Day | null): FactBody => ({
    kind: 'restricted',
    person: PERSON,
    medicalReason: null,
    restriction: {
      scope: { kind: 'exercise', exercise: idOf('back-squat') },
      limit: { kind: 'forbidden' },
      toldBy: 'Dr. A. Lowe',
      toldOn: addDays(MONDAY, -30),
      confirmed: true,
      from: addDays(MONDAY, -30),
      reviewOn,
    },
  });
  const review = (reviewOn: Day | null) => said(MONDAY, restricted(reviewOn))['restriction to review'];
  expect(review(addDays(MONDAY, 7))).toMatch(/its review is due on L−357\. It binds on; ask the physician\.$/);
  expect(review(addDays(MONDAY, -2))).toMatch(/its review was due on L−366\./);
  expect(review(addDays(MONDAY, 8))).toBeUndefined();
  expect(review(null)).toBeUndefined();
});

test('after a space walk hands are to be looked at, again where they were not sound', () => {
  const today = addDays(LAUNCH, 30);
  const walk: FactBody = { kind: 'space walk', person: PERSON, day: addDays(today, -1), text: '' };
  const look = (passed: boolean): FactBody => ({
    kind: 'looked at',
    person: PERSON,
    day: today,
    what: 'hands and shoulders',
    passed,
    observedBy: 'Maud',
  });
  const hands = (...more: readonly FactBody[]) => said(today, walk, ...more)['hands to be looked at'];
  expect(hands()).toBe(
    'After the space walk of flight day 30 grip and pressing wait; nobody has looked at hands and shoulders yet: have them looked at.',
  );
  expect(hands(look(false))).toBe(
    'After the space walk of flight day 30 grip and pressing wait; not sound on flight day 31; look again.',
  );
  expect(hands(look(true))).toBeUndefined();
});

test('who has less time than practice asks for, or a session without a place, is outside the windows', () => {
  const none: FactBody = {
    kind: 'available',
    person: PERSON,
    from: MONDAY,
    until: addDays(MONDAY, 6),
    minutes: [0, 0, 0, 0, 0, 0, 0],
  };
  expect(said(MONDAY, none)['outside the windows']).toBe(
    'No single hour a week where practice asks for four, or for two blocks of two: the week of 2028-03-06. And 1 more on the road. Find time.',
  );
  expect(said(MONDAY)['outside the windows']).toBeUndefined();
});
