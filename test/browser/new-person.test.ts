import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Browser, Locator } from 'playwright-core';
import { startBrowser } from './find-browser.ts';
import { barriers, openPage, startHouse, type House, type WatchedPage } from './harness.ts';

let browser: Browser;
let house: House;
let watched: WatchedPage;

beforeAll(async () => {
  [browser, house] = await Promise.all([startBrowser(), startHouse('--today', '2029-05-07')]);
  watched = await openPage(browser, { viewport: { width: 1280, height: 900 } });
});

afterAll(async () => {
  await browser.close();
  await house.stop();
});

/** What a specialist types and presses who has never seen the program, from the first page to a signed first week. */
test('from nothing to a whole road and a signed first week, with two tests', async () => {
  const { page, complaints } = watched;
  const dialog = (): Locator => page.getByRole('dialog');
  const record = async (): Promise<void> => {
    await dialog().getByRole('button', { name: 'Record', exact: true }).click();
    await expect.poll(() => dialog().count()).toBe(0);
  };
  await page.goto(house.address);
  await page.getByLabel('Your name, as it stands under a card').fill('Hanne Visser');
  await page.getByRole('button', { name: 'Start empty' }).click();
  await page.getByRole('link', { name: 'In and out' }).click();
  await page.getByRole('button', { name: 'Introduce a person' }).click();
  await dialog().getByLabel('Name').fill('Birte Økonkwo');
  await dialog().getByLabel('Sex').selectOption('female');
  await dialog().getByLabel('Birth date').fill('1994-02-11');
  await record();
  await page.getByRole('button', { name: 'body mass', exact: true }).click();
  await dialog().getByLabel('Body mass').fill('71.5');
  await record();
  for (const [exercise, load] of [
    ['Back squat', '100'],
    ['Deadlift', '112.5'],
  ] as const) {
    await page.getByRole('button', { name: 'test', exact: true }).click();
    await dialog().getByLabel('Exercise').selectOption({ label: exercise });
    await dialog().getByLabel('Load').fill(load);
    await dialog().getByLabel('Repetitions', { exact: true }).fill('5');
    await record();
  }
  await page.getByRole('button', { name: 'mission dates', exact: true }).click();
  await dialog().getByLabel('Name').fill('Tern 4');
  await dialog().getByLabel('Launch').fill('2031-05-05');
  await dialog().getByLabel('Landing, earliest').fill('2031-10-20');
  await record();
  await page.getByRole('link', { name: 'Programmes' }).click();
  const follow = page.getByLabel('Follow it').first();
  await follow.selectOption({ index: 1 });
  await page.getByRole('button', { name: 'Follow', exact: true }).first().click();
  await page.getByText(/Birte Økonkwo follows it from/).waitFor();
  await page.getByRole('link', { name: 'Desk' }).click();
  await page.getByRole('link', { name: 'Birte Økonkwo' }).first().click();
  await page.getByRole('grid').first().waitFor();
  await page.getByRole('link', { name: 'Road', exact: true }).click();
  for (const phase of ['general preparation', 'flight-specific preparation', 'main flight', 'third return stage'])
    await page.getByText(phase).first().waitFor();
  await page.getByRole('link', { name: 'Sheet', exact: true }).click();
  await page.getByRole('grid').first().waitFor();
  await page.keyboard.press('i');
  const issue = page.getByRole('dialog', { name: 'Issue cards to Birte Økonkwo' });
  await issue.getByRole('button', { name: /^Sign and issue/ }).click();
  await issue.getByRole('link', { name: /print/i }).click();
  const cards = page.getByRole('article');
  await expect.poll(() => cards.count()).toBeGreaterThanOrEqual(4);
  expect(await cards.first().innerText()).toContain('Back squat');
  expect(complaints()).toEqual([]);
  expect(await barriers(page)).toEqual([]);
});
