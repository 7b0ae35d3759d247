import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Browser, Page } from 'playwright-core';
import { startBrowser } from './find-browser.ts';
import { barriers, openPage, startHouse, type House, type WatchedPage } from './harness.ts';

let browser: Browser;
let house: House;
let watched: WatchedPage;
let page: Page;

/** One person a row; a date that reads two ways; one load that is none. */
const SHEET = [
  'Tests of the week;;;;',
  'Name;Sex;Test date;Body weight (kg);Back squat 5RM (kg)',
  'Maren Holt;F;03/02/2026;61,4;92,5',
  'Iwo Falk;M;04/02/2026;84,2;14o',
  '',
].join('\r\n');

const file = (text: string) => ({ name: 'spring.csv', mimeType: 'text/csv', buffer: Buffer.from(text, 'utf8') });

beforeAll(async () => {
  browser = await startBrowser();
  house = await startHouse('--empty');
  watched = await openPage(browser, { viewport: { width: 1280, height: 1000 } });
  page = watched.page;
  await page.goto(house.address);
  await page.getByLabel('Your name').fill('Ada Brenner');
  await page.getByRole('button', { name: 'Start' }).click();
  await page.getByRole('link', { name: 'In and out' }).click();
});

afterAll(async () => {
  await browser.close();
  await house.stop();
});

const take = () => page.getByRole('button', { name: /^Take in/ });

/** Gives each open question its first answer, until none is open. */
const answerAll = async (): Promise<void> => {
  const open = page.locator('fieldset[data-answer="open"]');
  for (let left = await open.count(); left > 0; left = await open.count()) {
    const asks = await open.first().locator('legend').innerText();
    await open.first().getByRole('radio').first().click();
    await expect.poll(() => page.locator('fieldset[data-answer="given"] legend').allInnerTexts()).toContain(asks);
  }
};

test('what a file does not say is asked, and what is wrong is said at its place, all at once', async () => {
  await page.getByLabel(/^Choose a CSV or XLSX file/).setInputFiles(file(SHEET));
  await expect.poll(() => page.getByRole('heading', { name: 'spring.csv' }).count()).toBe(1);
  await expect.poll(() => page.locator('fieldset[data-answer="open"]').count()).toBeGreaterThan(0);
  expect(await take().isDisabled()).toBe(true);
  const problem = page.getByRole('row').filter({ hasText: '“14o” is not a number' });
  await expect.poll(() => problem.count()).toBe(1);
  expect(await problem.innerText()).toContain('row 4, column E “Back squat 5RM (kg)”');
});

test('a column is taken for something else by hand', async () => {
  const column = page.getByLabel(/^Column D Body weight/);
  await column.selectOption('left out');
  await expect.poll(() => page.getByRole('row').filter({ has: column }).innerText()).toContain('hand');
  await column.selectOption('body mass');
});

test('the mended file is taken in as a whole', async () => {
  await page.getByRole('button', { name: 'Leave it' }).click();
  await page.getByLabel(/^Choose a CSV or XLSX file/).setInputFiles(file(SHEET.replace('14o', '140')));
  await expect.poll(() => page.getByRole('heading', { name: 'spring.csv' }).count()).toBe(1);
  await expect.poll(() => page.locator('fieldset[data-answer="open"]').count()).toBeGreaterThan(0);
  await answerAll();
  await expect.poll(() => take().isEnabled()).toBe(true);
  const planned = Number(/(\d+) facts/.exec(await take().innerText())?.[1]);
  expect(planned).toBeGreaterThanOrEqual(6);
  await take().click();
  await expect.poll(() => page.getByText(`${planned} facts recorded`).count()).toBe(1);
});

test('what was taken in stands in the record of each person', async () => {
  await page.getByRole('link', { name: 'Desk' }).first().click();
  await page.getByRole('link', { name: 'Iwo Falk' }).first().click();
  await page.getByRole('link', { name: 'Record', exact: true }).click();
  await expect.poll(() => page.getByRole('table').innerText()).toContain('140 kg × 5');
});

test('a backup is written, and says what it holds', async () => {
  await page.getByRole('link', { name: 'In and out' }).click();
  await page.getByRole('button', { name: 'Write a backup' }).click();
  await expect.poll(() => page.getByText(/^Written: /).innerText()).toContain(house.folder);
});

test('an export says for whom it is and what it reveals before it is saved', async () => {
  await page.getByRole('radio', { name: 'management' }).check();
  await expect.poll(() => page.getByText('there is nothing to export').count()).toBe(1);
  await page.getByRole('radio', { name: 'physician' }).check();
  await expect.poll(() => page.getByText(/It reveals \d+ facts about 2 people/).count()).toBe(1);
  const [saved] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('link', { name: 'Save the export for physician' }).click(),
  ]);
  expect(saved.suggestedFilename()).toMatch(/^ballast-export-physician-.*\.json$/);
});

test('somebody brought in is put on a mission and on the programme, by hand', async () => {
  await page.getByRole('link', { name: 'Desk' }).first().click();
  await page.getByRole('link', { name: 'Iwo Falk' }).first().click();
  await page.getByRole('link', { name: 'Record', exact: true }).click();
  await page.getByRole('button', { name: 'mission dates' }).click();
  const dialog = page.getByRole('dialog');
  await dialog.getByLabel('Name', { exact: true }).fill('Skerry 30');
  await dialog.getByRole('button', { name: 'Record', exact: true }).click();
  await expect.poll(() => dialog.getByText('No day is given.').count()).toBe(1);
  await dialog.getByLabel('Launch').fill('2030-05-01');
  await dialog.getByRole('button', { name: 'Record', exact: true }).click();
  await expect.poll(() => dialog.count()).toBe(0);
  await expect.poll(() => page.getByText(/^Skerry 30 · L−/).count()).toBe(1);
  await page.getByRole('link', { name: 'Programmes' }).click();
  const programme = page.getByRole('article', { name: /^The whole road/ });
  const falk = await programme.getByRole('option', { name: /^Iwo Falk/ }).getAttribute('value');
  await programme.getByLabel('Follow it').selectOption(falk);
  await programme.getByRole('button', { name: 'Follow', exact: true }).click();
  await expect.poll(() => page.getByText(/^Iwo Falk follows it from \d{4}-\d{2}-\d{2}/).count()).toBe(1);
});

test('a deputy is named with dates', async () => {
  await page.getByRole('link', { name: 'Settings' }).click();
  await page.getByRole('button', { name: 'Add a signer or deputy' }).click();
  const dialog = page.getByRole('dialog');
  await dialog.getByLabel('Name').fill('Per Lindgaard');
  await dialog.getByLabel('Signs for').selectOption({ label: 'Ada Brenner' });
  await dialog.getByLabel('From').fill('2030-05-01');
  await dialog.getByLabel('Until').fill('2030-04-01');
  await dialog.getByRole('button', { name: 'Record', exact: true }).click();
  await expect.poll(() => dialog.getByText('The last day is before the first.').count()).toBe(1);
  await dialog.getByLabel('Until').fill('2030-06-01');
  await dialog.getByRole('button', { name: 'Record', exact: true }).click();
  await expect.poll(() => page.getByRole('row', { name: /^Per Lindgaard/ }).innerText()).toContain('1 June 2030');
});

test('nothing bars anybody from the page, and nothing went wrong on it', async () => {
  expect(await barriers(page)).toEqual([]);
  // The refusal of the deputy's dates was asked for.
  expect(watched.complaints().filter((complaint) => !complaint.includes('422'))).toEqual([]);
});
