import { expect, test } from 'vitest';
import { instant } from '#domain/identity.ts';
import { snapshotReader } from '#actions/snapshot.ts';
import { LAUNCH, OTHER, PERSON, startedHouse } from '#actions/started-house.fixture.ts';
import { addDays } from '#units/day.ts';
import { ROUTES } from '#contract/routes.ts';
import { makeApp, type App } from './app.ts';
import { SECOND_START, SECRET_HEADER } from './routes/second-start.ts';

const ORIGIN = 'http://127.0.0.1:4790';
const HOST = { host: '127.0.0.1:4790' };

const startedApp = async () => {
  const house = await startedHouse();
  let secrets = 0;
  const told: string[] = [];
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
          workplace: house.workplace,
          snapshot: snapshotReader(house.workplace.store.facts, house.workplace.today),
          backUp: () => Promise.reject(new Error('Birte Okonkwo weighs 71.5 kg')),
        },
      }),
    page: () => '<html><script nonce="__NONCE__"></script></html>',
    asset: (path) => (path === '/assets/a.js' ? { bytes: new Uint8Array([49]), type: 'text/javascript' } : null),
    complain: (says) => void told.push(says),
  });
  await app.openHouse('own');
  return { ...house, app, told };
};

const enterBy = async (app: App): Promise<string> => {
  const answer = await app.request(app.newAddress(), { headers: HOST });
  return (answer.headers.get('set-cookie') ?? '').split(';')[0] ?? '';
};

const get = (app: App, path: string, headers: Record<string, string>) =>
  app.request(ORIGIN + path, { headers: { ...HOST, ...headers } });

const post = (app: App, path: string, body: object, headers: Record<string, string>) =>
  app.request(ORIGIN + path, {
    method: 'POST',
    body: JSON.stringify(body),
    headers: { ...HOST, origin: ORIGIN, 'content-type': 'application/json', ...headers },
  });

test('a token is swapped once for a cookie that scripts cannot read, and leaves the address', async () => {
  const { app } = await startedApp();
  const address = app.newAddress();
  const first = await app.request(address, { headers: HOST });
  expect([first.status, first.headers.get('location')]).toEqual([303, '/']);
  expect(first.headers.get('set-cookie')).toMatch(/^ballast-test=.+; Path=\/; HttpOnly; SameSite=Strict$/);
  const second = await app.request(address, { headers: HOST });
  expect(second.headers.get('set-cookie')).toBeNull();
  expect(app.refusals()).toEqual({ 'spent token': 1 });
});

test('without the key neither a page nor a window is given', async () => {
  const { app } = await startedApp();
  expect((await get(app, '/', {})).status).toBe(401);
  const desk = await get(app, ROUTES.desk, { cookie: 'ballast-test=guessed' });
  expect([desk.status, await desk.text()]).toEqual([401, expect.stringContaining('no key')]);
  expect(app.refusals()).toEqual({ 'no key': 2 });
});

test('another host name and another origin are refused and counted, the key notwithstanding', async () => {
  const { app, signer } = await startedApp();
  const cookie = await enterBy(app);
  const body = { signer, entries: [] };
  const otherHost = await app.request(`http://rebound.example${ROUTES.desk}`, {
    headers: { host: 'rebound.example', cookie },
  });
  const otherOrigin = await post(app, ROUTES.facts, body, { cookie, origin: 'http://elsewhere.example' });
  const noOrigin = await app.request(ORIGIN + ROUTES.facts, {
    method: 'POST',
    body: '{}',
    headers: { ...HOST, cookie },
  });
  const crossSite = await get(app, ROUTES.exportAll, { cookie, 'sec-fetch-site': 'cross-site' });
  expect([otherHost, otherOrigin, noOrigin, crossSite].map(({ status }) => status)).toEqual([421, 403, 403, 403]);
  expect(app.refusals()).toEqual({ 'wrong host': 1, 'other origin': 3 });
});

test('every page has a policy with a nonce of its own', async () => {
  const { app } = await startedApp();
  const cookie = await enterBy(app);
  const pages = [await get(app, '/', { cookie }), await get(app, '/people/x', { cookie })];
  const nonces = await Promise.all(
    pages.map(async (page) => {
      const nonce = /nonce="([^"]+)"/.exec(await page.text())?.[1] ?? '';
      const policy = page.headers.get('content-security-policy') ?? '';
      expect(policy).toContain("default-src 'none'");
      expect(policy).toContain(`script-src 'self' 'nonce-${nonce}'`);
      expect(policy).not.toContain('unsafe');
      return nonce;
    }),
  );
  expect(new Set(nonces).size).toBe(2);
  expect((await get(app, ROUTES.desk, { cookie })).headers.get('content-security-policy')).toContain("'none'");
});

test('a fault is told without its message, which may quote what somebody typed', async () => {
  const { app, told, signer } = await startedApp();
  const cookie = await enterBy(app);
  const answer = await post(app, ROUTES.backup, { signer }, { cookie });
  expect(answer.status).toBe(500);
  expect(`${await answer.text()} ${told.join(' ')}`).not.toMatch(/Okonkwo|71\.5/);
  expect(told).toHaveLength(1);
});

test('a request that is too large is refused', async () => {
  const { app } = await startedApp();
  const cookie = await enterBy(app);
  const answer = await post(app, ROUTES.facts, { much: 'x'.repeat(2_000_000) }, { cookie });
  expect(answer.status).toBe(413);
  expect(app.refusals()).toEqual({ 'too large': 1 });
});

test('a second start gets an address only with the secret of the first', async () => {
  const { app } = await startedApp();
  const wrong = await post(app, SECOND_START, {}, { [SECRET_HEADER]: 'guessed' });
  expect(wrong.status).toBe(403);
  const right = await post(app, SECOND_START, {}, { [SECRET_HEADER]: 'of the second start' });
  const { address } = (await right.json()) as { readonly address: string };
  expect((await app.request(address, { headers: HOST })).headers.get('set-cookie')).toContain('ballast-test=');
});

test('every window of a person answers, and a week is previewed, issued and read back', async () => {
  const { app, signer } = await startedApp();
  const cookie = await enterBy(app);
  const paths = [
    ROUTES.start,
    ROUTES.house,
    ROUTES.desk,
    ROUTES.programmes,
    ROUTES.sheet(PERSON),
    ROUTES.capacity(PERSON),
    `${ROUTES.crossing(PERSON)}?exercise=back-squat`,
    ROUTES.record(PERSON),
    ROUTES.plannedCard(PERSON, addDays(LAUNCH, 3)),
    `${ROUTES.exportReveals}?audience=team`,
    `${ROUTES.exportAll}?audience=physician`,
  ];
  for (const path of paths)
    expect({ path, status: (await get(app, path, { cookie })).status }).toEqual({ path, status: 200 });
  const days = [addDays(LAUNCH, 3), addDays(LAUNCH, 5), addDays(LAUNCH, 7)];
  const preview = await post(app, ROUTES.issuePreview(PERSON), { days }, { cookie });
  const { upTo, raises } = (await preview.json()) as { readonly upTo: number; readonly raises: readonly unknown[] };
  expect(raises.length).toBeGreaterThan(0);
  const issuing = await post(app, ROUTES.issue(PERSON), { signer, days, basis: upTo, reasons: {} }, { cookie });
  const { cards } = (await issuing.json()) as { readonly cards: readonly string[] };
  expect(cards).toHaveLength(3);
  const again = await post(app, ROUTES.issue(PERSON), { signer, days, basis: upTo, reasons: {} }, { cookie });
  expect(again.status).toBe(409);
  const card = await get(app, ROUTES.card(cards[0] ?? ''), { cookie });
  const { code } = (await card.json()) as { readonly code: string };
  expect((await get(app, ROUTES.card(code.toLowerCase()), { cookie })).status).toBe(200);
  const week = await get(app, ROUTES.weekText(PERSON, addDays(LAUNCH, 3)), { cookie });
  const { text } = (await week.json()) as { readonly text: string };
  expect(text).toContain(`Code ${code}`);
});

test('an address that names nobody, and a body that is none, are refused in words', async () => {
  const { app } = await startedApp();
  const cookie = await enterBy(app);
  for (const [answer, status] of [
    [await get(app, ROUTES.sheet('nobody'), { cookie }), 404],
    [await get(app, '/api/nowhere', { cookie }), 404],
    [await get(app, ROUTES.card('0000-0000'), { cookie }), 404],
    [await post(app, ROUTES.facts, { signer: 7 }, { cookie }), 422],
  ] as const) {
    expect(answer.status).toBe(status);
    const { refused } = (await answer.json()) as { readonly refused: readonly { readonly what: string }[] };
    expect(refused[0]?.what).toMatch(/\.$/);
  }
});

test('a table is read, looked through and brought in, once', async () => {
  const { app, signer, snapshot } = await startedApp();
  const cookie = await enterBy(app);
  const table = 'Name,Date,Exercise,Machine,Load (kg),Reps,RIR\nSami Lindgren,2031-04-15,Back squat,Free bar,120,5,0\n';
  const read = await app.request(ORIGIN + ROUTES.bringInRead, {
    method: 'POST',
    body: table,
    headers: { ...HOST, origin: ORIGIN, cookie, 'x-file-name': encodeURIComponent('Prüfung.csv') },
  });
  const { ticket, reading } = (await read.json()) as {
    readonly ticket: string;
    readonly reading: { fileName: string };
  };
  expect(reading.fileName).toBe('Prüfung.csv');
  const asked = { ticket, matching: null, answers: {} };
  const plan = await post(app, ROUTES.bringInPlan, asked, { cookie });
  expect(await plan.json()).toMatchObject({ ready: true, preview: { totals: { tests: 1 } } });
  const take = await post(app, ROUTES.bringInTake, { ...asked, signer }, { cookie });
  expect(await take.json()).toEqual({ recorded: 1 });
  expect(snapshot().log.at(-1)).toMatchObject({ kind: 'lifted', person: OTHER, repetitions: 5 });
  expect((await post(app, ROUTES.bringInTake, { ...asked, signer }, { cookie })).status).toBe(422);
});
