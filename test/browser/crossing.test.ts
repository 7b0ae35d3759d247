import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Browser, Page } from 'playwright-core';
import { startBrowser } from './find-browser.ts';
import { barriers, openPage, startHouse, type House, type WatchedPage } from './harness.ts';

let browser: Browser;
let house: House;
let watched: WatchedPage;
let page: Page;

beforeAll(async () => {
  browser = await startBrowser();
  house = await startHouse('--scenario');
  watched = await openPage(browser, { viewport: { width: 1440, height: 1000 } });
  page = watched.page;
  await page.goto(house.address);
  await page.getByRole('link', { name: 'Ines Okafor-Lund' }).first().click();
  await page.getByRole('link', { name: 'Crossing', exact: true }).click();
});

afterAll(async () => {
  await browser.close();
  await house.stop();
});

const term = async (name: string): Promise<number> => {
  const label = await page.getByRole('button', { name: new RegExp(`^${name} `) }).getAttribute('aria-label');
  return Number(/(\d+) kg/.exec(label ?? '')?.[1]);
};

test('the sum stands in the open and adds up', async () => {
  const [bar, added, target] = [await term('Bar part'), await term('Added back'), await term('Target')];
  expect(bar).toBeGreaterThan(0);
  expect(added).toBeGreaterThan(0);
  // Each of the three is rounded to whole kilograms.
  expect(Math.abs(bar + added - target)).toBeLessThanOrEqual(1);
});

test('a term opens its working, which leads to the formulas', async () => {
  await page.getByRole('button', { name: /^Target/ }).press('Enter');
  const dialog = page.getByRole('dialog');
  expect(await dialog.getByRole('link').count()).toBeGreaterThan(2);
  expect(await dialog.innerText()).toContain('bar');
  await page.keyboard.press('Escape');
  await expect.poll(() => dialog.count()).toBe(0);
});

test('the figure says its loads in words, and the same load at every level in flight', async () => {
  const flight =
    (await page
      .getByRole('img', { name: /^In 0 g/ })
      .locator('title')
      .textContent()) ?? '';
  const loads = [...flight.matchAll(/(?:shoulders|hips|knees|feet) (\d+) kg/g)].map(([, load]) => load);
  expect(loads).toHaveLength(4);
  expect(new Set(loads).size).toBe(1);
});

test('another lift has an address of its own', async () => {
  await page.getByRole('link', { name: 'Deadlift' }).click();
  await expect.poll(() => page.getByRole('heading', { level: 2 }).first().innerText()).toContain('Deadlift');
  expect(page.url()).toContain('?exercise=deadlift');
  await page.reload();
  await expect.poll(() => page.getByRole('heading', { level: 2 }).first().innerText()).toContain('Deadlift');
});

test('a policy is signed with a reason, with the keyboard alone', async () => {
  const whole = page.getByRole('radio', { name: /^Whole/ });
  await whole.focus();
  await page.keyboard.press('Space');
  await page.getByRole('button', { name: 'Sign', exact: true }).press('Enter');
  const dialog = page.getByRole('dialog');
  await dialog.getByLabel('Who signs').selectOption({ label: 'Maud Arkwright' });
  const sign = dialog.getByRole('button', { name: 'Sign', exact: true });
  expect(await sign.isDisabled()).toBe(true);
  await dialog.getByLabel('Why').fill('hip bone density; no discomfort so far');
  await sign.press('Enter');
  await expect.poll(() => dialog.count()).toBe(0);
  await expect.poll(() => page.locator('label', { has: whole }).innerText()).toContain('signed');
});

test('nothing bars anybody from the page, and nothing went wrong on it', async () => {
  expect(await barriers(page)).toEqual([]);
  expect(watched.complaints()).toEqual([]);
});

test('on a narrow screen nothing is cut off', async () => {
  await page.setViewportSize({ width: 390, height: 844 });
  expect(await page.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(390);
});
