import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Browser, Page } from 'playwright-core';
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

/** Opens somebody's sheet with the keyboard on its first exercise of the next session. */
const openSheet = async (page: Page, person: string): Promise<void> => {
  await page.goto(`${house.origin}/people/${person}`);
  await page.getByRole('grid').first().waitFor();
  await page.locator('[data-place][tabindex="0"]').focus();
};

const focused = (page: Page) => page.locator('[data-place]:focus');

/** Opens somebody's sheet with the keyboard on the next session of a lift that can still be written. */
const openAtLift = async (page: Page, person: string, lift: string): Promise<void> => {
  await page.goto(`${house.origin}/people/${person}?lift=${lift}`);
  await focused(page).waitFor();
  for (let issued = 0; issued < 6; issued += 1) {
    if ((await focused(page).innerText()).includes('can be issued')) return;
    await page.keyboard.press('Control+ArrowRight');
  }
  throw new Error('No session of this lift can still be written.');
};

test('a session on the ground is written in shorthand, seen beside the line and signed, by keyboard alone', async () => {
  const { page, complaints } = watched;
  await openAtLift(page, 'wen-li-abara', 'back-squat');
  await page.keyboard.press('e');
  const line = page.getByRole('textbox', { name: /^Back squat, / });
  await line.waitFor();
  expect(await line.inputValue()).toMatch(/^\d × \d+ @ .+, rest \d:\d\d$/);
  await page.keyboard.press('Control+A');
  await page.keyboard.type('3 x 5 @ 80');
  await page.getByText('say what 80 is').waitFor();
  expect(await barriers(page)).toEqual([]);
  expect(await page.getByRole('button', { name: 'Sign', exact: true }).isDisabled()).toBe(true);
  await page.keyboard.type(' %, rest 3:00');
  await page
    .locator('#line-outcome')
    .getByText(/^3×5 \d+\.\d kg$/)
    .waitFor();
  await expect.poll(() => page.getByRole('button', { name: 'Sign', exact: true }).isEnabled()).toBe(true);
  await page.keyboard.press('Enter');
  await expect.poll(() => focused(page).innerText()).toContain('3×5');
  expect(complaints()).toEqual([]);
});

test('a digit on a cell begins to write it; Escape leaves everything as it was and gives the cell back', async () => {
  const { page, complaints } = watched;
  await openAtLift(page, 'wen-li-abara', 'deadlift');
  const before = await focused(page).innerText();
  await page.keyboard.press('5');
  const line = page.getByRole('textbox', { name: /^Deadlift, / });
  expect(await line.inputValue()).toBe('5');
  await page.keyboard.type(' × 3 @ RPE 7');
  await page.getByText('5×3 start at').waitFor();
  await page.keyboard.press('Escape');
  await expect.poll(() => focused(page).innerText()).toBe(before);
  expect(complaints()).toEqual([]);
});

test('an issued card is not to be written, and says so', async () => {
  const { page } = watched;
  await openSheet(page, 'ines-okafor-lund');
  await page.keyboard.press('e');
  await page.getByText('This card is issued and stands as it was signed.').waitFor();
  expect(await page.getByRole('textbox', { name: /^Back squat/ }).count()).toBe(0);
});

test('a lift is left out of one session with a reason', async () => {
  const { page, complaints } = watched;
  await openAtLift(page, 'wen-li-abara', 'bench-press');
  await page.keyboard.press('x');
  const dialog = page.getByRole('dialog', { name: 'Bench press: leave out' });
  await dialog.getByLabel('Reason').fill('no bench free');
  await dialog.getByRole('button', { name: 'Leave it out' }).click();
  await expect.poll(() => focused(page).or(page.locator('td[tabindex="0"]')).first().innerText()).toContain('left out');
  expect(complaints()).toEqual([]);
});

test('where somebody trains is recorded, and their sheet is made for that gym', async () => {
  const { page, complaints } = watched;
  await page.goto(`${house.origin}/people/adaeze-brandt/record`);
  await page.getByRole('button', { name: 'training site' }).click();
  const dialog = page.getByRole('dialog');
  await dialog.getByRole('button', { name: 'Record', exact: true }).click();
  await dialog.getByText('Nothing is chosen.').waitFor();
  await dialog.getByLabel('Trains at').selectOption({ label: 'Lindqvist Hall' });
  await dialog.getByRole('button', { name: 'Record', exact: true }).click();
  await dialog.waitFor({ state: 'detached' });
  await page.getByText('trains at Lindqvist Hall from 2027-03-01 on').waitFor();
  await openSheet(page, 'adaeze-brandt');
  await page.keyboard.press('Enter');
  await page.getByRole('dialog').getByRole('link', { name: 'the whole card' }).click();
  await page.getByText('Lindqvist').first().waitFor();
  expect(complaints()).toEqual([]);
});

test('the Desk asks for a squat gate; judged with who watched, the next one comes first', async () => {
  const { page, complaints } = watched;
  await page.goto(house.origin);
  const line = page.getByRole('listitem').filter({ hasText: 'Anselm Fitzroy' }).filter({ hasText: 'clearance gate' });
  await line.getByRole('link', { name: 'Judge it' }).click();
  const dialog = page.getByRole('dialog');
  await dialog.getByText('the physician allows loaded training').waitFor();
  expect(await barriers(page)).toEqual([]);
  await dialog.getByRole('button', { name: 'Record', exact: true }).click();
  await dialog.getByText('Nothing is typed.').waitFor();
  await dialog.getByLabel('Who watched').fill('Maud Arkwright');
  await dialog.getByRole('button', { name: 'Record', exact: true }).click();
  await dialog.waitFor({ state: 'detached' });
  await page.getByText('clearance gate passed, seen in person by Maud Arkwright').waitFor();
  await page.goto(`${house.origin}/people/anselm-fitzroy`);
  await page.getByText('Back squat: left out: the first squat gate comes first.').first().waitFor();
  expect(complaints()).toEqual([]);
});
