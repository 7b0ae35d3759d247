import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Browser } from 'playwright-core';
import { startBrowser } from './find-browser.ts';
import { barriers, openPage, startHouse, type House, type WatchedPage } from './harness.ts';

let browser: Browser;
let house: House;
let watched: WatchedPage;

beforeAll(async () => {
  [browser, house] = await Promise.all([startBrowser(), startHouse('--scenario', '--today', '2027-03-01')]);
  watched = await openPage(browser);
  await watched.page.goto(house.address);
  await watched.page.getByRole('combobox', { name: 'Who signs' }).selectOption({ label: 'Maud Arkwright' });
});

afterAll(async () => {
  await browser.close();
  await house.stop();
});

/** 2027-03-01, counted from 1970-01-01. */
const MONDAY = 20_878;

test('a session is made anew for a hotel in under a minute, by keyboard alone, and goes out as a text', async () => {
  const { page, complaints } = watched;
  await page.goto(`${house.origin}/people/wen-li-abara/re-make/${MONDAY}`);
  const minutes = page.getByRole('textbox', { name: 'Minutes' });
  await minutes.waitFor();
  await minutes.focus();
  await page.keyboard.press('Control+A');
  await page.keyboard.type('0');
  await page.getByText('There are no sessions of less than 1').waitFor();
  expect(await page.getByRole('button', { name: 'Sign and issue' }).isDisabled()).toBe(true);
  await page.keyboard.press('Control+A');
  await page.keyboard.type('35');
  await page.getByText('of 35 minutes').waitFor();
  for (const [gear, isHere] of [
    ['free bar', false],
    ['resistive machine', false],
    ['dumbbells', true],
  ] as const) {
    const box = page.getByRole('checkbox', { name: gear });
    await box.focus();
    if ((await box.isChecked()) !== isHere) await page.keyboard.press('Space');
  }
  await page.getByText(/instead of back squat: .* with dumbbells/).waitFor();
  expect(await barriers(page)).toEqual([]);
  await page.getByRole('textbox', { name: 'Reason' }).focus();
  await page.keyboard.press('Enter');
  await page.getByText('Signed and issued').waitFor();
  const text = await page.locator('pre').innerText();
  expect(text).toMatch(/Card [0-9A-Z]{4}-[0-9A-Z]{4}$/);
  expect(text.length).toBeLessThanOrEqual(3 * 153);
  expect(complaints()).toEqual([]);
});

test('what hurts at five or more is left out, at seven or more nothing can be signed', async () => {
  const { page } = watched;
  await page.goto(`${house.origin}/people/wen-li-abara/re-make/${MONDAY + 2}`);
  await page.getByRole('button', { name: 'Something hurts' }).press('Enter');
  await page.getByRole('combobox', { name: 'Where it hurts' }).selectOption('low back');
  await page.getByRole('textbox', { name: 'How much, 0 to 10' }).fill('5');
  await page.getByText('it hurts at the low back (5 of 10)').first().waitFor();
  await page.getByRole('textbox', { name: 'How much, 0 to 10' }).fill('8');
  await page.getByText('No session: it hurts at the low back (8 of 10)').waitFor();
  expect(await page.getByRole('button', { name: 'Sign and issue' }).isDisabled()).toBe(true);
});
