import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Browser, Page } from 'playwright-core';
import { ALL_CHECKS, ALL_FORMULAS } from '#science/textbook.ts';
import { startBrowser } from './find-browser.ts';
import { barriers, openPage, startHouse, type House, type WatchedPage } from './harness.ts';

let browser: Browser;
let house: House;
let watched: WatchedPage;
let page: Page;

beforeAll(async () => {
  browser = await startBrowser();
  house = await startHouse('--scenario');
  watched = await openPage(browser);
  page = watched.page;
  await page.goto(house.address);
  await page.getByRole('link', { name: 'Evidence' }).first().click();
});

afterAll(async () => {
  await browser.close();
  await house.stop();
});

test('every check is computed in the browser, and holds', async () => {
  await expect.poll(() => page.getByRole('status').first().innerText(), { timeout: 30_000 }).toContain('just now');
  const says = await page.getByRole('status').first().innerText();
  expect(says).toContain(`all ${ALL_CHECKS.length} hold`);
  expect(await page.getByRole('article').count()).toBe(ALL_FORMULAS.length);
});

test('a formula is found by the words of its paper, and nothing else is left', async () => {
  await page.getByLabel('Find a formula, symbol or author').fill('wathan maximum');
  await expect.poll(() => page.getByRole('article').count()).toBeLessThan(ALL_FORMULAS.length);
  for (const article of await page.getByRole('article').all())
    expect((await article.innerText()).toLowerCase()).toContain('wathan');
  await page.getByLabel('Find a formula, symbol or author').fill('no such word anywhere');
  expect(await page.getByRole('article').count()).toBe(0);
  await page.getByRole('button', { name: 'Show all' }).click();
  expect(await page.getByRole('article').count()).toBe(ALL_FORMULAS.length);
});

test('a formula has an address of its own', async () => {
  await page.goto(`${house.origin}/evidence#one-rep-max/wathan`);
  await page.reload();
  const wathan = page.locator('[id="one-rep-max/wathan"]');
  await expect.poll(async () => (await wathan.boundingBox())?.y ?? Infinity).toBeLessThan(400);
});

test('nothing bars anybody from the page, and nothing went wrong on it', async () => {
  // All formulas are drawn alike: a dozen of them stand for the rest.
  await page.getByLabel('Find a formula, symbol or author').fill('wathan');
  expect(await barriers(page)).toEqual([]);
  expect(watched.complaints()).toEqual([]);
});
