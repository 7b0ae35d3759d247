import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Browser, Page } from 'playwright-core';
import { startBrowser } from './find-browser.ts';
import { barriers, openPage, startHouse, type House, type WatchedPage } from './harness.ts';

let browser: Browser;
let house: House;
/** One browser is let in once: the address that was printed works a single time. */
let watched: WatchedPage;

beforeAll(async () => {
  [browser, house] = await Promise.all([startBrowser(), startHouse('--today', '2027-03-01')]);
  watched = await openPage(browser);
});

afterAll(async () => {
  await browser.close();
  await house.stop();
});

/** Walks with Tab to the element that a role and name describe, as somebody without a mouse would. */
const tabTo = async (page: Page, role: Parameters<Page['getByRole']>[0], name: string | RegExp): Promise<void> => {
  const wanted = page.getByRole(role, { name }).first();
  await wanted.waitFor();
  const most = await page.locator('a, button, input, select, [tabindex]').count();
  for (let steps = 0; steps <= most; steps += 1) {
    if ((await wanted.and(page.locator(':focus')).count()) > 0) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`Tab never reached the ${role} ${String(name)}.`);
};

/** Chooses in the browser's own list by typing the beginning of the name. */
const chooseSigner = async (page: Page): Promise<void> => {
  await page.keyboard.type('Maud');
  await page.keyboard.press('Enter');
};

test('with the keyboard alone: open the scenario, go to a sheet, issue its cards and print the week', async () => {
  const { page, complaints } = watched;
  await page.goto(house.address);

  await tabTo(page, 'button', 'Open the invented scenario');
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { level: 1, name: 'Monday 1 March' }).waitFor();
  expect(await barriers(page)).toEqual([]);

  await tabTo(page, 'combobox', 'Who signs');
  await chooseSigner(page);

  await page.locator('main').focus();
  await page.keyboard.press('/');
  await page.keyboard.type('Okafor');
  await page.getByRole('option', { name: /Ines Okafor-Lund/ }).waitFor();
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { level: 1, name: 'Ines Okafor-Lund' }).waitFor();
  expect(await barriers(page)).toEqual([]);

  await page.keyboard.press('i');
  const dialog = page.getByRole('dialog', { name: 'Issue cards to Ines Okafor-Lund' });
  await dialog.getByText('It defers to the physician').waitFor();
  expect(await barriers(page)).toEqual([]);
  const chosen = await dialog.getByRole('checkbox', { checked: true }).count();
  expect(chosen).toBeGreaterThan(0);
  await tabTo(page, 'button', 'Sign and issue');
  await page.keyboard.press('Enter');
  await tabTo(page, 'link', 'Print week');
  await page.keyboard.press('Enter');

  await page.getByRole('heading', { level: 1, name: /^Cards of Ines Okafor-Lund/ }).waitFor();
  const cards = page.getByRole('article');
  await cards.first().waitFor();
  expect(await cards.count()).toBe(chosen);
  await expect.poll(() => cards.first().innerText()).toContain('Issued 1 March 2027 by Maud Arkwright');
  expect(await cards.first().innerText()).not.toContain('Not signed');
  expect(await barriers(page)).toEqual([]);
  expect(complaints()).toEqual([]);
});

test('arrows move through the sheet, Enter opens a cell with its working, Escape closes it', async () => {
  const { page, complaints } = watched;
  await page.goto(`${house.origin}/people/ines-okafor-lund`);
  const grid = page.getByRole('grid', { name: 'Sheet of Ines Okafor-Lund' });
  await grid.waitFor();
  const inGrid = grid.locator('[tabindex="0"]');
  expect(await inGrid.count()).toBe(1);
  await inGrid.focus();
  await page.keyboard.press('Home');
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('ArrowUp');
  expect(await page.locator(':focus').getAttribute('data-place')).toBe('0:1');
  await page.keyboard.press('Enter');
  const panel = page.getByRole('dialog');
  await panel.waitFor();
  expect(await barriers(page)).toEqual([]);
  await page.keyboard.press('Escape');
  await panel.waitFor({ state: 'detached' });
  expect(complaints()).toEqual([]);
});
