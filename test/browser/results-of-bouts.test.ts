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
  await page.getByLabel('Who signs').first().selectOption({ label: 'Maud Arkwright' });
  await page.goto(`${house.origin}/people/kerttu-saarela`);
  await page.getByRole('grid').first().waitFor();
});

afterAll(async () => {
  await browser.close();
  await house.stop();
});

const dialog = () => page.getByRole('dialog');
const cycling = () => dialog().getByRole('group', { name: /^Cycling/ });

/** The newest session with intervals that nobody has heard of. */
const openSession = async (): Promise<void> => {
  await page
    .locator('th[data-place]', { hasText: /intervals[\s\S]*not heard/ })
    .last()
    .focus();
  await page.keyboard.press('Enter');
  await dialog().waitFor();
};

const type = async (label: RegExp, text: string): Promise<void> => {
  await cycling().getByLabel(label).focus();
  await page.keyboard.press('ControlOrMeta+a');
  await page.keyboard.type(text);
};

test('what is wrong with bouts is said at its own field, all at once, before anything is sent', async () => {
  await openSession();
  await dialog().getByRole('button', { name: 'Type results in' }).focus();
  await page.keyboard.press('Enter');
  await type(/^Minutes/, 'half an hour');
  await type(/^Heart rate/, '17');
  await type(/^RPE/, '11');
  await page.keyboard.press('Enter');
  await expect
    .poll(() =>
      cycling()
        .getByText(/is no number from/)
        .count(),
    )
    .toBe(3);
  expect(await cycling().getByText('how much was done?').count()).toBe(1);
  expect(await barriers(page)).toEqual([]);
});

test('what nobody can have done is refused by the program at the field where it was typed', async () => {
  await type(/^Minutes/, '31,5');
  await type(/^Heart rate/, '163');
  await type(/^RPE/, '8');
  await type(/^Bouts done/, '99');
  await page.keyboard.press('Enter');
  await expect
    .poll(() =>
      cycling()
        .getByText(/^99 done of \d+ cannot be\.$/)
        .count(),
    )
    .toBe(1);
});

test('what was done stands over the plan in the cell', async () => {
  await type(/^Bouts done/, '4');
  await page.keyboard.press('Enter');
  await page.getByText('Results recorded.').waitFor();
  await page.keyboard.press('Escape');
  await dialog().waitFor({ state: 'detached' });
  const cell = page.getByRole('gridcell', { name: /^Cycling.*done 4 of \d+ · 31\.5 min · 163\/min · 8/ });
  await expect.poll(() => cell.count()).toBe(1);
});

test('a result that stands comes back as it was typed, and is corrected with a reason', async () => {
  await page.getByRole('gridcell', { name: /^Cycling.*done 4 of \d+ · 31\.5 min/ }).focus();
  await page.keyboard.press('Enter');
  await dialog().getByRole('button', { name: 'Correct the results' }).focus();
  await page.keyboard.press('Enter');
  await expect
    .poll(() =>
      cycling()
        .getByLabel(/^Minutes/)
        .inputValue(),
    )
    .toBe('31.5');
  await type(/^Bouts done/, '3');
  await dialog().getByLabel('Why the earlier result is corrected').focus();
  await page.keyboard.type('misheard');
  await page.keyboard.press('Enter');
  await page.getByText('Results recorded.').waitFor();
  await page.keyboard.press('Escape');
  await page.getByRole('gridcell', { name: /^Cycling.*done 3 of \d+ · 31\.5 min · 163\/min · 8/ }).waitFor();
  // The refusal above was asked for.
  expect(watched.complaints().filter((complaint) => !complaint.includes('422'))).toEqual([]);
});
