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
  await openForm('endurance test');
  await dialog().getByLabel('Who signs').selectOption({ label: 'Maud Arkwright' });
  await page.keyboard.press('Escape');
});

afterAll(async () => {
  await browser.close();
  await house.stop();
});

const dialog = () => page.getByRole('dialog');
const entries = () => page.getByRole('table').first();
const row = (says: string | RegExp) => entries().getByRole('row').filter({ hasText: says }).first();

/** By keyboard, as somebody does who types all morning. */
const openForm = async (what: string): Promise<void> => {
  await page.getByRole('button', { name: what, exact: true }).focus();
  await page.keyboard.press('Enter');
  await dialog().waitFor();
};

const type = async (label: string, text: string): Promise<void> => {
  await dialog().getByLabel(label, { exact: true }).focus();
  await page.keyboard.press('ControlOrMeta+a');
  await page.keyboard.type(text);
};

/** Tabs on from field to field. */
const typeOn = async (...texts: readonly string[]): Promise<void> => {
  for (const text of texts) {
    await page.keyboard.press('Tab');
    await page.keyboard.type(text);
  }
};

const confirmed = async (): Promise<void> => {
  await page.keyboard.press('Enter');
  await expect.poll(() => dialog().count()).toBe(0);
};

const refusedWith = async (text: string | RegExp): Promise<void> => {
  await page.keyboard.press('Enter');
  await expect.poll(() => dialog().getByText(text).count()).toBeGreaterThan(0);
};

test('what is no number is said at every field at once, and nothing is written', async () => {
  const before = await entries().getByRole('row').count();
  await openForm('endurance test');
  await type('Greatest oxygen uptake', '<script>alert(1)</script>');
  await type('Greatest heart rate', '1e3');
  await type('Stage 1, W', '=1+1');
  await refusedWith('“<script>alert(1)</script>” is no number.');
  expect(
    await dialog()
      .getByText(/is no number\./)
      .count(),
  ).toBe(3);
  expect(await entries().getByRole('row').count()).toBe(before);
  await page.keyboard.press('Escape');
});

test('what cannot be is refused by the program in its own row, each stage by itself', async () => {
  await openForm('endurance test');
  await type('Greatest oxygen uptake', '3,4');
  await type('Stage 1, W', '650');
  await typeOn('128');
  await type('Stage 2, W', '150');
  await refusedWith('650 W cannot be.');
  expect(await dialog().getByText('3.4 mL/(kg min) cannot be.').count()).toBe(1);
  expect(await dialog().getByText('The stage has neither a heart rate nor an oxygen uptake.').count()).toBe(1);
  const wrong = await dialog()
    .locator('input[aria-invalid="true"]')
    .evaluateAll((inputs) => inputs.length);
  expect(wrong).toBe(3);
  await page.keyboard.press('Escape');
});

test('a test of endurance with several stages is typed and recorded by keyboard alone', async () => {
  await openForm('endurance test');
  await type('Greatest oxygen uptake', '46,2');
  await type('Greatest heart rate', '188');
  await typeOn('52');
  await typeOn('100', '118', '21');
  await typeOn('150', '141', '28.5');
  await confirmed();
  await expect
    .poll(() => row('cycle stage 150 W').innerText())
    .toContain('cycle stage 150 W, 141 1/min, 28.5 mL/(kg min)');
  expect(await row('cycle stage 100 W').innerText()).toContain('118 1/min');
  expect(await row('greatest oxygen uptake').innerText()).toContain('46.2 mL/(kg min), measured');
  expect(await row('resting heart rate').innerText()).toContain('52');
});

test('a correction shows the one test that it corrects', async () => {
  await row('cycle stage 150 W')
    .getByRole('button', { name: /^Correct/ })
    .click();
  expect(await dialog().getByLabel('Stage 1, W').inputValue()).toBe('150');
  expect(await dialog().getByLabel('Greatest oxygen uptake').count()).toBe(0);
  await dialog().getByLabel('Stage 1, heart rate, /min').fill('143');
  await dialog().getByLabel('Why is it corrected').fill('read off again');
  await dialog().getByRole('button', { name: 'Correct', exact: true }).click();
  await expect.poll(() => dialog().count()).toBe(0);
  await expect.poll(() => row('cycle stage 150 W, 143').innerText()).toContain('28.5');
});

test('a grip that is off by the factor of two units is asked about, and taken where it is right', async () => {
  await openForm('hands, jumps, heel raises');
  await dialog().getByLabel('Day').fill('2027-02-01');
  await type('Greatest grip, left', '46');
  await typeOn('45');
  await confirmed();
  await openForm('hands, jumps, heel raises');
  await type('Greatest grip, left', '101,4');
  await refusedWith('That is what mixing up pounds and kilograms gives.');
  await dialog().getByLabel('What was asked about is right as typed').focus();
  await page.keyboard.press('Space');
  await dialog().getByRole('button', { name: 'Record', exact: true }).focus();
  await confirmed();
  await expect.poll(() => row('greatest grip, left, 101.4 kg').count()).toBe(1);
});

test('weekly minutes and days set aside are recorded; hours typed for minutes are asked about', async () => {
  await openForm('weekly minutes');
  await page.keyboard.type('2');
  await typeOn('1.5', '2');
  await refusedWith('They read like hours.');
  await type('Monday, day 1', '120');
  await typeOn('90', '120', '', '90');
  await confirmed();
  await expect.poll(() => row('has 120, 90, 120, 0, 90, 0, 0 minutes').count()).toBe(1);
  await openForm('days set aside');
  await dialog().getByLabel('First day').fill('2027-03-08');
  await dialog().getByLabel('Last day').fill('2027-03-05');
  await type('Minutes left on each day', '30');
  await refusedWith('two days, the earlier one first');
  await dialog().getByLabel('Last day').fill('2027-03-12');
  await type('In a few words', 'to the other site');
  await confirmed();
  await expect
    .poll(() => row('to the other site').innerText())
    .toContain('travel from 2027-03-08 to 2027-03-12: 30 minutes a day left');
});

const prepares = async (yes: boolean): Promise<void> => {
  await openForm('mission dates');
  await dialog()
    .getByLabel(/^Prepares for space walks/)
    .setChecked(yes);
  await dialog().getByRole('button', { name: 'Record', exact: true }).click();
  await expect.poll(() => dialog().count()).toBe(0);
};

test('a space walk lies in the flight, is questioned for somebody not preparing for it, and moves by correction', async () => {
  await prepares(false);
  await openForm('space walk');
  await dialog().getByLabel('Day').fill('2027-03-02');
  await type('In a few words', 'antenna');
  await refusedWith('The space walk does not lie in the flight.');
  const [, from = ''] = /Give a day from ([\d-]+)/.exec(await dialog().innerText()) ?? [];
  await dialog().getByLabel('Day').fill(from);
  await dialog().getByLabel('In a few words').focus();
  await refusedWith('This person is not recorded as preparing for space walks.');
  await expect.poll(() => dialog().getByText('The space walk does not lie in the flight.').count()).toBe(0);
  await page.keyboard.press('Escape');
  await prepares(true);
  await openForm('space walk');
  await dialog().getByLabel('Day').fill(from);
  await type('In a few words', 'antenna');
  await confirmed();
  await row('space walk: antenna')
    .getByRole('button', { name: /^Correct/ })
    .click();
  const later = new Date(Date.parse(from) + 5 * 86_400_000).toISOString().slice(0, 10);
  await dialog().getByLabel('Day').fill(later);
  await dialog().getByLabel('Why is it corrected').fill('docking first');
  await dialog().getByRole('button', { name: 'Correct', exact: true }).click();
  await expect.poll(() => dialog().count()).toBe(0);
  await expect.poll(() => entries().locator('del', { hasText: 'space walk: antenna' }).count()).toBe(1);
});

test('a hold of the road is recorded, a second on the same days refused', async () => {
  await openForm('road hold');
  await type('Why, in a few words', 'launch may slip');
  await confirmed();
  await expect.poll(() => row('the road holds').innerText()).toContain('launch may slip');
  await openForm('road hold');
  await type('Why, in a few words', 'once more');
  await refusedWith('The road holds already on some of these days.');
});

test('nothing bars anybody from the forms, and nothing went wrong on the page', async () => {
  expect(await barriers(page)).toEqual([]);
  await page.keyboard.press('Escape');
  await openForm('endurance test');
  expect(await barriers(page)).toEqual([]);
  // The refusals above were asked for.
  expect(watched.complaints().filter((complaint) => !complaint.includes('422'))).toEqual([]);
});
