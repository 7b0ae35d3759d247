import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Browser, Page } from 'playwright-core';
import { startBrowser } from './find-browser.ts';
import { barriers, openPage, startHouse, type House, type WatchedPage } from './harness.ts';

let browser: Browser;
let house: House;
let watched: WatchedPage;
let page: Page;

const PERSON = 'Adaeze Brandt';

beforeAll(async () => {
  browser = await startBrowser();
  house = await startHouse('--scenario');
  watched = await openPage(browser, { viewport: { width: 1280, height: 900 } });
  page = watched.page;
  await page.goto(house.address);
  await page.getByRole('link', { name: PERSON }).first().click();
  await page.getByRole('link', { name: 'Record', exact: true }).click();
});

afterAll(async () => {
  await browser.close();
  await house.stop();
});

const dialog = () => page.getByRole('dialog');
const newest = () => page.getByRole('table').getByRole('row').nth(1);

test('a test without its numbers is refused at every place at once, and then recorded with the keyboard alone', async () => {
  await page.getByRole('button', { name: 'test', exact: true }).focus();
  await page.keyboard.press('Enter');
  await dialog().getByLabel('Who signs').selectOption({ label: 'Maud Arkwright' });
  await dialog().getByRole('button', { name: 'Record', exact: true }).focus();
  await page.keyboard.press('Enter');
  await expect.poll(() => dialog().getByText('Nothing is chosen.').count()).toBe(1);
  expect(await dialog().getByText('Nothing is typed.').count()).toBe(2);
  await dialog().getByLabel('Exercise').selectOption({ label: 'Back squat' });
  await dialog().getByLabel('Load').focus();
  await page.keyboard.type('92,5');
  await dialog().getByLabel('Repetitions', { exact: true }).focus();
  await page.keyboard.type('5');
  await page.keyboard.press('Enter');
  await expect.poll(() => dialog().count()).toBe(0);
  await expect.poll(() => newest().innerText()).toContain('Back squat 92.5 kg × 5');
});

test('a correction needs a reason, and the old entry stays visible with it', async () => {
  await newest()
    .getByRole('button', { name: /^Correct/ })
    .click();
  await dialog().getByLabel('Repetitions', { exact: true }).fill('4');
  await dialog().getByRole('button', { name: 'Correct', exact: true }).click();
  await expect.poll(() => dialog().getByText('The correction has no reason.').count()).toBe(1);
  await dialog().getByLabel('Why is it corrected').fill('the last one was not deep enough');
  await dialog().getByRole('button', { name: 'Correct', exact: true }).click();
  await expect.poll(() => newest().innerText()).toContain('Back squat 92.5 kg × 4');
  const old = page.getByRole('row').filter({ has: page.locator('del', { hasText: 'Back squat 92.5 kg × 5' }) });
  expect(await old.innerText()).toContain('the last one was not deep enough');
});

test('what is taken back stays visible, struck through', async () => {
  await newest()
    .getByRole('button', { name: /^Take back/ })
    .click();
  await dialog().getByLabel('Why is it taken back').fill('it was somebody else');
  await dialog().getByRole('button', { name: 'Take back' }).click();
  await expect.poll(() => dialog().count()).toBe(0);
  const gone = page.getByRole('row').filter({ has: page.locator('del', { hasText: 'Back squat 92.5 kg × 4' }) });
  await expect.poll(() => gone.innerText()).toContain('it was somebody else');
});

test('a load that cannot be is refused by the program, at its field', async () => {
  await page.getByRole('button', { name: 'body mass', exact: true }).click();
  await dialog().getByLabel('Body mass').fill('-70');
  await dialog().getByRole('button', { name: 'Record', exact: true }).click();
  await expect.poll(() => dialog().getByText('a decimal number such as 102.5, above 0').count()).toBe(1);
  await page.keyboard.press('Escape');
  await expect.poll(() => dialog().count()).toBe(0);
});

test('a restriction told by telephone binds, and its lifting is recorded', async () => {
  await page.getByRole('button', { name: 'restriction', exact: true }).click();
  await dialog().getByLabel('Site').selectOption('shoulder');
  await dialog().getByLabel('Side').selectOption('left');
  await dialog().getByLabel('Told by').fill('Bram Oyelaran');
  await dialog().getByRole('button', { name: 'Record', exact: true }).click();
  const restrictions = page.getByRole('region', { name: 'Restrictions' });
  await expect.poll(() => restrictions.innerText()).toContain('everything that loads the left shoulder: forbidden');
  expect(await restrictions.innerText()).toContain('not confirmed');
  await restrictions.getByRole('button', { name: /^Lifted/ }).click();
  await dialog().getByLabel('Told by').fill('Bram Oyelaran');
  await dialog().getByRole('button', { name: 'Record', exact: true }).click();
  await expect.poll(() => restrictions.innerText()).toContain('(lifted)');
});

test('nothing bars anybody from the page, and nothing went wrong on it', async () => {
  expect(await barriers(page)).toEqual([]);
  // The refusal above was asked for.
  expect(watched.complaints().filter((complaint) => !complaint.includes('422'))).toEqual([]);
});
