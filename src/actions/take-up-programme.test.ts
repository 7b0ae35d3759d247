import { expect, test } from 'vitest';
import { addDays } from '#units/day.ts';
import { idOf } from '#domain/identity.ts';
import { isLiftItem, type ProgrammePhase, type ProgrammeItem } from '#domain/programme.ts';
import { SET_PROGRAMME } from '#shipped/set-programme.ts';
import type { ProgrammeDraft } from './programme-draft.ts';
import { LAUNCH, OTHER, PERSON, startedHouse } from './started-house.fixture.ts';
import { takeUpProgramme, type TakingUp } from './take-up-programme.ts';

/** The shipped programme with one thing done to each of its items. */
const edited = (edit: (item: ProgrammeItem) => ProgrammeItem): readonly ProgrammePhase[] =>
  SET_PROGRAMME.phases.map((phase) => ({
    ...phase,
    sessions: phase.sessions.map((session) => ({ ...session, items: session.items.map(edit) })),
  }));

const oneSetMore = (item: ProgrammeItem): ProgrammeItem =>
  isLiftItem(item) ? { ...item, sets: [...item.sets, ...item.sets.slice(-1)] } : item;

const DRAFT: ProgrammeDraft = {
  programme: SET_PROGRAMME.programme,
  name: SET_PROGRAMME.name,
  follows: SET_PROGRAMME.id,
  phases: edited(oneSetMore),
};

const house = async () => {
  const started = await startedHouse();
  const { workplace, signer, snapshot } = started;
  const take = (asked: Partial<TakingUp> = {}) =>
    takeUpProgramme(workplace, { signer, draft: DRAFT, follow: [], basis: snapshot().upTo, ...asked });
  const fieldsOf = async (asked: Partial<TakingUp>) => {
    const answer = await take(asked);
    return answer.kind === 'refused' ? answer.problems.map(({ field }) => field) : 'done';
  };
  return { ...started, take, fieldsOf };
};

test('a draft becomes the next version, and whom the signer chose follows it, in one transaction', async () => {
  const { take, snapshot } = await house();
  const before = snapshot().upTo;
  const answer = await take({
    follow: [
      { person: PERSON, from: LAUNCH },
      { person: OTHER, from: addDays(LAUNCH, 3) },
    ],
  });
  expect(answer).toMatchObject({ kind: 'done', result: { number: 2, following: 2 } });
  const { house: after, road } = snapshot();
  expect(snapshot().upTo).toBe(before + 3);
  const [version] = [...after.programmes.values()].filter(({ number, name }) => number === 2 && name === DRAFT.name);
  expect(version).toMatchObject({ follows: SET_PROGRAMME.id, phases: DRAFT.phases });
  expect(road(PERSON)?.cards.every((card) => card.state !== 'issued' && card.card.programme.number === 2)).toBe(true);
  expect(road(PERSON)?.cards.length).toBeGreaterThan(0);
});

test('everything that is wrong is refused at once, and nothing is written', async () => {
  const { fieldsOf, snapshot } = await house();
  const before = snapshot().upTo;
  const [phase] = DRAFT.phases as readonly [ProgrammePhase];
  const [session] = phase.sessions;
  const [item] = session?.items ?? [];
  if (!session || !item) throw new Error('The shipped programme begins with an item.');
  const wrong: ProgrammePhase = {
    ...phase,
    sessions: [
      {
        ...session,
        blockMinutes: 3,
        items: [item, { ...item, exercise: idOf('juggling') }, { ...item, id: idOf('x'), machineKind: 'cycle' }],
      },
    ],
  };
  const fields = await fieldsOf({
    draft: { ...DRAFT, phases: [wrong, wrong] },
    follow: [
      { person: idOf('nobody'), from: LAUNCH },
      { person: PERSON, from: addDays(LAUNCH, -9) },
      { person: PERSON, from: LAUNCH },
    ],
  });
  expect(fields).toEqual(
    expect.arrayContaining([
      'phases.1.name',
      'phases.1.span',
      'phases.1.sessions.0',
      'phases.0.sessions.0.items.1',
      'phases.0.sessions.0.items.1.exercise',
      'phases.0.sessions.0.items.2.machineKind',
      'phases.0.sessions.0.blockMinutes',
      'follow.0.person',
      'follow.1.from',
      'follow.2.person',
    ]),
  );
  expect(snapshot().upTo).toBe(before);
});

test('a draft that changes nothing, of a version that is not there, or under a name that is taken is refused', async () => {
  const { fieldsOf } = await house();
  expect(await fieldsOf({ draft: { ...DRAFT, phases: SET_PROGRAMME.phases } })).toEqual(['phases']);
  expect(await fieldsOf({ draft: { ...DRAFT, follows: idOf('gone') } })).toEqual(['follows']);
  expect(await fieldsOf({ draft: { ...DRAFT, follows: null } })).toEqual(['name']);
  const own = { ...DRAFT, programme: idOf<'programme'>('own'), follows: null };
  expect(await fieldsOf({ draft: own })).toEqual(['name']);
  expect(await fieldsOf({ draft: { ...own, name: 'Of its own' } })).toBe('done');
});

test('what was seen is what is signed: an entry about the house or about somebody chosen comes in between', async () => {
  const { fieldsOf, snapshot, take } = await house();
  const basis = snapshot().upTo;
  await take();
  expect(
    await fieldsOf({ basis, draft: { ...DRAFT, phases: edited((item) => oneSetMore(oneSetMore(item))) } }),
  ).toEqual(['basis']);
});

test('nobody takes a programme up who may not sign', async () => {
  const { fieldsOf } = await house();
  expect(await fieldsOf({ signer: idOf('nobody') })).toEqual(['signer']);
});
