import { expect, test } from 'vitest';
import { addDays } from '#units/day.ts';
import { idOf, instant } from '#domain/identity.ts';
import { isLiftItem } from '#domain/programme.ts';
import { issueDays } from '#actions/issue-days.ts';
import { snapshotReader } from '#actions/snapshot.ts';
import { LAUNCH, PERSON, startedHouse } from '#actions/started-house.fixture.ts';
import { ROUTES } from '#contract/routes.ts';
import type { ComparisonWindow } from '#contract/windows/comparison-window.ts';
import { SET_PROGRAMME } from '#shipped/set-programme.ts';
import { makeApp } from './app.ts';

const ORIGIN = 'http://127.0.0.1:4790';
const HOST = { host: '127.0.0.1:4790' };

const served = async () => {
  const house = await startedHouse();
  let secrets = 0;
  const { workplace } = house;
  const app = makeApp({
    clock: () => instant('2031-05-03T09:00:00.000Z'),
    newSecret: () => `secret-${(secrets += 1)}`,
    startSecret: 'of the second start',
    origin: () => ORIGIN,
    cookieName: 'ballast-test',
    existing: () => ['own'],
    open: () =>
      Promise.resolve({
        kind: 'open',
        house: {
          workplace,
          snapshot: snapshotReader(workplace.store.facts, workplace.today),
          backUp: () => Promise.reject(new Error('There is no folder.')),
        },
      }),
    page: () => '',
    asset: () => null,
    complain: () => undefined,
  });
  await app.openHouse('own');
  const entered = await app.request(app.newAddress(), { headers: HOST });
  const cookie = (entered.headers.get('set-cookie') ?? '').split(';')[0] ?? '';
  const post = async (path: string, body: object): Promise<{ readonly status: number; readonly body: unknown }> => {
    const answer = await app.request(ORIGIN + path, {
      method: 'POST',
      body: JSON.stringify(body),
      headers: { ...HOST, origin: ORIGIN, 'content-type': 'application/json', cookie },
    });
    return { status: answer.status, body: await answer.json() };
  };
  return { ...house, post };
};

const DRAFT = {
  programme: SET_PROGRAMME.programme,
  name: SET_PROGRAMME.name,
  follows: SET_PROGRAMME.id,
  phases: SET_PROGRAMME.phases.map((phase) => ({
    ...phase,
    sessions: phase.sessions.map((session) => ({
      ...session,
      items: session.items.map((item) =>
        isLiftItem(item) && item.track === 'squat heavy' ? { ...item, sets: item.sets.slice(1) } : item,
      ),
    })),
  })),
};

test('a draft is held against what is planned, person by person; issued cards stand as they were signed', async () => {
  const { post, workplace, signer, snapshot } = await served();
  const firstHeavy = addDays(LAUNCH, 3);
  const issued = await issueDays(workplace, {
    person: PERSON,
    signer,
    days: [firstHeavy],
    basis: snapshot().upTo,
    reasons: {},
  });
  expect(issued.kind).toBe('done');
  const before = snapshot().upTo;
  const { status, body } = await post(ROUTES.compareProgramme, { ...DRAFT, from: LAUNCH, people: null });
  const window = body as ComparisonWindow;
  expect([status, window.number, window.newer, window.basis]).toEqual([200, 2, null, before]);
  expect(window.difference.map(({ says }) => says)).toContain('Heavy day: back squat 4 × 6 @ 78 % → 3 × 6 @ 78 %.');
  const [person] = window.people;
  expect(person).toMatchObject({ name: 'Birte Okonkwo', issuedAhead: 1, fromLabel: 'flight day 1' });
  expect(person?.sessions.every(({ day, title }) => day > firstHeavy && title === 'Heavy day')).toBe(true);
  expect(person?.sessions[0]?.lines[0]).toMatchObject({ exerciseName: 'Back squat', load: 'as it was' });
  expect(snapshot().upTo).toBe(before);
});

test('a draft is refused with every problem at the place where it was typed', async () => {
  const { post, signer, snapshot } = await served();
  const [phase] = DRAFT.phases;
  const hostile = {
    ...DRAFT,
    phases: [{ ...phase, sessions: [{ title: '', weekday: 9 }] }],
    from: LAUNCH,
    people: null,
  };
  const answer = await post(ROUTES.compareProgramme, hostile);
  expect(answer.status).toBe(422);
  const fields = (answer.body as { refused: { field: string }[] }).refused.map(({ field }) => field);
  expect(fields).toEqual(expect.arrayContaining(['phases.0.sessions.0.title', 'phases.0.sessions.0.weekday']));
  const taken = await post(ROUTES.takeUpProgramme, {
    ...DRAFT,
    phases: [],
    signer,
    basis: snapshot().upTo,
    follow: [],
  });
  expect(taken).toMatchObject({ status: 422, body: { refused: [{ field: 'phases' }] } });
});

test('a version is taken up and followed in one request', async () => {
  const { post, signer, snapshot } = await served();
  const request = { ...DRAFT, signer, basis: snapshot().upTo, follow: [{ person: PERSON, from: LAUNCH }] };
  const answer = await post(ROUTES.takeUpProgramme, request);
  expect(answer).toMatchObject({ status: 200, body: { number: 2, following: 1 } });
  const again = await post(ROUTES.takeUpProgramme, request);
  expect(again.status).toBe(409);
  const other = await post(ROUTES.takeUpProgramme, { ...request, signer: idOf('nobody') });
  expect(other.status).not.toBe(200);
});
