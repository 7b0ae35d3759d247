import { expect, test } from 'vitest';
import { addDays } from '#units/day.ts';
import { entered } from '#units/entered.ts';
import { liftsOf, workIncrements, type CardLift } from '#domain/card.ts';
import { digestOf } from '#domain/digest.ts';
import { idOf } from '#domain/identity.ts';
import { issueDays } from './issue-days.ts';
import { recordFacts } from './record-facts.ts';
import { retractFact } from './retract-fact.ts';
import { enter, LAUNCH, OTHER, PERSON, startedHouse, type StartedHouse } from './started-house.fixture.ts';

const FIRST_DAY = addDays(LAUNCH, 3);

const issueFirst = ({ workplace, signer, snapshot }: StartedHouse, basis = snapshot().upTo) =>
  issueDays(workplace, { person: PERSON, signer, days: [FIRST_DAY], basis, reasons: {} });

const issued = async (house: StartedHouse) => {
  const answer = await issueFirst(house);
  if (answer.kind !== 'done') throw new Error(answer.problems.map(({ what }) => what).join(' '));
  const [document] = answer.result.documents;
  if (!document) throw new Error('No card was issued.');
  return document;
};

test('issuing writes one self-contained document with its digest, signed by name', async () => {
  const house = await startedHouse();
  const document = await issued(house);
  const { digest, ...content } = document;
  expect(digestOf(content)).toBe(digest);
  expect(document.issuedBy.name).toBe('Hanne Visser');
  expect(document.raises.length).toBeGreaterThan(0);
  expect(document.raises.every(({ from }) => from === null)).toBe(true);
  const standing = house
    .snapshot()
    .road(PERSON)
    ?.cards.find(({ day }) => day === FIRST_DAY);
  expect(standing).toMatchObject({ state: 'issued', record: { delivery: 'issued' } });
});

test('what was recorded about the person since the signer looked refuses the signature; what is about others does not', async () => {
  const house = await startedHouse();
  const seen = house.snapshot().upTo;
  const mass = (person: typeof PERSON) => ({
    kind: 'measured' as const,
    person,
    day: addDays(LAUNCH, -3),
    what: 'body mass' as const,
    value: entered('72', 'kg'),
  });
  await enter(house.workplace, house.signer, [mass(OTHER)]);
  await enter(house.workplace, house.signer, [mass(PERSON)]);
  const stale = await issueFirst(house, seen);
  expect(stale).toMatchObject({ kind: 'refused', because: 'moved on' });
  const before = house.snapshot().upTo;
  await enter(house.workplace, house.signer, [mass(OTHER)]);
  expect((await issueFirst(house, before)).kind).toBe('done');
});

test('a restriction recalls the issued card in the transaction that records it', async () => {
  const house = await startedHouse();
  const document = await issued(house);
  const answer = await recordFacts(house.workplace, house.signer, [
    {
      body: {
        kind: 'restricted',
        person: PERSON,
        restriction: {
          scope: { kind: 'exercise', exercise: 'back-squat' },
          limit: { kind: 'forbidden' },
          toldBy: 'the flight physician',
          toldOn: addDays(LAUNCH, -2),
          confirmed: false,
          from: addDays(LAUNCH, -2),
          reviewOn: null,
        },
        medicalReason: null,
      },
      supersedes: null,
      reason: null,
    },
  ]);
  if (answer.kind !== 'done') throw new Error(answer.problems.map(({ what }) => what).join(' '));
  expect(answer.result.recalled).toBe(1);
  expect(answer.facts.map(({ kind }) => kind)).toEqual(['restricted', 'decided']);
  expect(answer.facts[1]).toMatchObject({ decision: { kind: 'recall', card: document.id } });
  const cards = house.snapshot().road(PERSON)?.cards ?? [];
  expect(cards.find((card) => card.state === 'issued')).toMatchObject({ record: { delivery: 'recalled' } });
  const replacement = cards.find((card) => card.state === 'planned' && card.day === FIRST_DAY);
  expect(
    replacement?.state === 'planned' && liftsOf(replacement.card).some(({ exercise }) => exercise === 'back-squat'),
  ).toBe(false);
});

test('taking back the lifting of a restriction lets it bind again, issued cards included', async () => {
  const house = await startedHouse();
  const { workplace, signer } = house;
  const told = { toldBy: 'the flight physician', toldOn: addDays(LAUNCH, -3) };
  const restricted = await recordFacts(workplace, signer, [
    {
      body: {
        kind: 'restricted',
        person: PERSON,
        restriction: {
          ...told,
          scope: { kind: 'site', site: 'low back', side: null },
          limit: { kind: 'forbidden' },
          confirmed: true,
          from: addDays(LAUNCH, -3),
          reviewOn: null,
        },
        medicalReason: null,
      },
      supersedes: null,
      reason: null,
    },
  ]);
  const restriction = restricted.kind === 'done' ? restricted.facts[0]?.id : undefined;
  if (restriction === undefined) throw new Error('The restriction was refused.');
  await enter(workplace, signer, [
    { kind: 'restriction lifted', person: PERSON, restriction, toldBy: told.toldBy, on: addDays(LAUNCH, -2) },
  ]);
  const lifting = workplace.store.facts().at(-1)?.id ?? restriction;
  const document = await issued(house);
  const answer = await retractFact(workplace, { signer, fact: lifting, reason: 'of somebody else' });
  expect(answer.kind === 'done' && answer.facts.map(({ kind }) => kind)).toEqual(['retracted', 'decided']);
  expect(answer.kind === 'done' && answer.facts[1]).toMatchObject({ decision: { kind: 'recall', card: document.id } });
});

test('taking back a called-off session brings its card under the restriction that came meanwhile', async () => {
  const house = await startedHouse();
  const { workplace, signer } = house;
  const document = await issued(house);
  const { day } = document.card;
  await enter(workplace, signer, [
    { kind: 'called off', person: PERSON, day, card: document.id, cause: 'operations', text: 'docking' },
  ]);
  const calledOff = workplace.store.facts().at(-1)?.id;
  const limit = {
    scope: { kind: 'all' as const },
    limit: { kind: 'forbidden' as const },
    toldBy: 'the flight physician',
    toldOn: addDays(LAUNCH, -2),
    confirmed: true,
    from: addDays(LAUNCH, -2),
    reviewOn: null,
  };
  await enter(workplace, signer, [{ kind: 'restricted', person: PERSON, restriction: limit, medicalReason: null }]);
  if (calledOff === undefined) throw new Error('Nothing was recorded.');
  const answer = await retractFact(workplace, { signer, fact: calledOff, reason: 'the docking moved' });
  expect(answer.kind === 'done' && answer.facts[1]).toMatchObject({ decision: { kind: 'recall', card: document.id } });
});

test('good results raise nothing that stands signed: the issued card keeps its loads and the raise waits', async () => {
  const house = await startedHouse();
  const days = [addDays(LAUNCH, 3), addDays(LAUNCH, 5), addDays(LAUNCH, 7), addDays(LAUNCH, 10)];
  const answer = await issueDays(house.workplace, {
    person: PERSON,
    signer: house.signer,
    days,
    basis: house.snapshot().upTo,
    reasons: {},
  });
  if (answer.kind !== 'done') throw new Error(answer.problems.map(({ what }) => what).join(' '));
  const documents = answer.result.documents;
  for (const document of documents.slice(0, 3)) {
    house.setToday(document.card.day);
    await enter(house.workplace, house.signer, [
      {
        kind: 'trained',
        person: PERSON,
        day: document.card.day,
        card: document.id,
        sets: document.sets.flatMap(({ id, item, place }) => {
          const planned = liftsOf(document.card).find((each) => each.item === item);
          const set = planned?.sets[place];
          return planned && set
            ? [
                {
                  set: id,
                  repetitions: set.repetitions,
                  load: entered(String(set.load.increments * Number(planned.increment)), planned.unit),
                  effort: { kind: 'RPE' as const, value: 6 },
                  side: set.side,
                },
              ]
            : [];
        }),
        pieces: [],
        sessionRpe: 5,
        minutes: 70,
      },
    ]);
  }
  house.setToday(addDays(LAUNCH, 8));
  const cards = house.snapshot().road(PERSON)?.cards ?? [];
  const standing = cards.find((card) => card.day === days[3]);
  const squat = (items: readonly CardLift[]) => items.find(({ exercise }) => exercise === 'back-squat');
  const before = squat(documents[3] ? liftsOf(documents[3].card) : []);
  const now = standing?.state === 'issued' ? squat(liftsOf(standing.record.document.card)) : undefined;
  expect(before && now && workIncrements(now)).toBe(before && workIncrements(before));
  const raised = cards
    .flatMap((card) => (card.state === 'planned' ? liftsOf(card.card) : []))
    .filter(({ raise }) => raise);
  expect(raised.length).toBeGreaterThan(0);
  expect(
    house.workplace.store.facts().filter((fact) => fact.kind === 'decided' && fact.decision.kind === 'raise'),
  ).toEqual([]);
});

test('a day that cannot be issued refuses all of them', async () => {
  const house = await startedHouse();
  const { upTo } = house.snapshot();
  const answer = await issueDays(house.workplace, {
    person: PERSON,
    signer: house.signer,
    // Nothing is planned on launch day.
    days: [FIRST_DAY, LAUNCH],
    basis: upTo,
    reasons: {},
  });
  expect(answer).toMatchObject({ kind: 'refused', because: 'request' });
  expect(house.snapshot().upTo).toBe(upTo);
  const stranger = await issueDays(house.workplace, {
    person: PERSON,
    signer: idOf('nobody'),
    days: [FIRST_DAY],
    basis: upTo,
    reasons: {},
  });
  expect(stranger).toMatchObject({ kind: 'refused', problems: [{ field: 'signer' }] });
});
