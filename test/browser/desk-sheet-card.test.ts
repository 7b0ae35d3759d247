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
  await expect.poll(() => cards.count()).toBe(chosen);
  await expect.poll(() => cards.first().innerText()).toContain('Issued 1 March 2027 by Maud Arkwright');
  expect(await cards.first().innerText()).not.toContain('Not signed');
  expect(await barriers(page)).toEqual([]);
  expect(complaints()).toEqual([]);
});

const toFirstRow = async (page: Page): Promise<void> => {
  const rows = await page.locator('[data-place]').count();
  const focus = page.locator(':focus');
  for (let row = 0; row < rows; row += 1) {
    if ((await focus.getAttribute('data-place'))?.startsWith('0:') === true) return;
    await page.keyboard.press('ArrowUp');
  }
};

test('arrows move through the sheet, Enter opens a cell with its working, Escape closes it', async () => {
  const { page, complaints } = watched;
  await page.goto(`${house.origin}/people/ines-okafor-lund`);
  const grid = page.getByRole('region', { name: 'Sheet of Ines Okafor-Lund' });
  await grid.waitFor();
  const inGrid = grid.locator('[tabindex="0"]');
  expect(await inGrid.count()).toBe(1);
  await inGrid.focus();
  await toFirstRow(page);
  await page.keyboard.press('Home');
  await page.keyboard.press('ArrowRight');
  expect(await page.locator(':focus').getAttribute('data-place')).toBe('0:1');
  await page.keyboard.press('Enter');
  const panel = page.getByRole('dialog');
  await panel.waitFor();
  expect(await barriers(page)).toEqual([]);
  await page.keyboard.press('Escape');
  await panel.waitFor({ state: 'detached' });
  expect(complaints()).toEqual([]);
});

/** Puts the cursor of the sheet on the session of a mission day, block by block with the arrows, and opens it. */
const openSession = async (page: Page, missionDay: string): Promise<void> => {
  const head = page.locator('th[data-place]', { hasText: new RegExp(`${missionDay}(?!\\d)`) });
  const focus = page.locator(':focus');
  await page.locator('[data-place][tabindex="0"]').focus();
  await page.keyboard.press('Control+Home');
  const rows = await page.getByRole('grid').getByRole('row').count();
  for (let row = 0; row < rows; row += 1) {
    const columns = await page.locator('th[data-place]').and(focus).count();
    for (let column = 0; column < 12 * columns; column += 1) {
      if ((await head.and(focus).count()) > 0) break;
      await page.keyboard.press('ArrowRight');
    }
    if ((await head.and(focus).count()) > 0) break;
    await page.keyboard.press('Home');
    await page.keyboard.press('ArrowDown');
  }
  await page.keyboard.press('Enter');
  await page.getByRole('dialog').waitFor();
};

test('results are typed in, and corrected with a reason, with the keyboard alone', async () => {
  const { page, complaints } = watched;
  await page.goto(`${house.origin}/people/ines-okafor-lund`);
  await page.getByRole('grid').first().waitFor();
  await openSession(page, 'flight day 22');
  await tabTo(page, 'button', 'Type results in');
  await page.keyboard.press('Enter');
  await tabTo(page, 'button', 'All as planned');
  await page.keyboard.press('Enter');
  await tabTo(page, 'textbox', 'Back squat, set 1, effort');
  await page.keyboard.type('11');
  await tabTo(page, 'button', 'Record results');
  await page.keyboard.press('Enter');
  await page.getByText('is no number from 1 to 10').waitFor();
  expect(await barriers(page)).toEqual([]);

  await tabTo(page, 'textbox', 'Back squat, set 1, effort');
  await page.keyboard.press('Control+A');
  await page.keyboard.type('7,5');
  await tabTo(page, 'button', 'Record results');
  await page.keyboard.press('Enter');
  await page.getByText('Results recorded.').waitFor();

  await tabTo(page, 'button', 'Correct the results');
  await page.keyboard.press('Enter');
  await tabTo(page, 'textbox', 'Why the earlier result is corrected');
  await page.keyboard.type('misheard over voice');
  await tabTo(page, 'textbox', 'Back squat, set 2, repetitions');
  await page.keyboard.press('Control+A');
  await page.keyboard.type('5');
  await tabTo(page, 'button', 'Record results');
  await page.keyboard.press('Enter');
  await page.getByText('Results recorded.').waitFor();
  await page.keyboard.press('Escape');
  await page.getByRole('dialog').waitFor({ state: 'detached' });
  await page.getByRole('gridcell', { name: /Back squat, Sun 28 Feb, .*done 8 5 8 8 · 7\.5/ }).waitFor();
  expect(complaints()).toEqual([]);
});

test('a lift is held and backed off from its cell, each with a reason', async () => {
  const { page, complaints } = watched;
  await page.goto(`${house.origin}/people/tomas-varga`);
  await page.getByRole('grid').first().waitFor();
  for (const { key, button } of [
    { key: 'h', button: 'Sign the hold' },
    { key: 'b', button: 'Sign 10 % less' },
  ]) {
    await page.locator('td[data-place]', { hasText: /×/ }).last().focus();
    await page.keyboard.press(key);
    await page.getByRole('textbox', { name: 'Reason' }).waitFor();
    await page.keyboard.type('left shoulder');
    await tabTo(page, 'button', button);
    await page.keyboard.press('Enter');
    await page.getByRole('dialog').waitFor({ state: 'detached' });
  }
  await page.getByRole('term').filter({ hasText: 'Held or backed off' }).waitFor();
  expect(complaints()).toEqual([]);
});

test('a note is opened on the Desk and is read from then on; a proposal is declined with a reason', async () => {
  const { page, complaints } = watched;
  await page.goto(house.origin);
  await page.getByRole('list', { name: /worst first/ }).waitFor();
  const notes = page.getByRole('button', { name: /^Open the note/ });
  const before = await notes.count();
  expect(before).toBeGreaterThan(0);
  await tabTo(page, 'button', /^Open the note/);
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { level: 1, name: /^Card of/ }).waitFor();
  await page.goto(house.origin);
  await page.getByRole('list', { name: /worst first/ }).waitFor();
  expect(await notes.count()).toBe(before - 1);

  // Several proposals of one person are folded into one line: they open with the keyboard.
  const folded = page.getByText(/proposals wait for an answer/).first();
  const proposals = page.getByRole('button', { name: 'Decline' });
  const shown = await proposals.count();
  await page
    .locator('summary', { hasText: /proposals wait for an answer/ })
    .first()
    .focus();
  await page.keyboard.press('Enter');
  await expect.poll(() => proposals.count()).toBeGreaterThan(shown);
  const inAll = Number(/^(\d+) proposals/.exec((await folded.innerText()).trim())?.[1]);
  expect(await proposals.count()).toBe(shown + inAll);
  expect(await barriers(page)).toEqual([]);
  const open = await proposals.count();
  await tabTo(page, 'button', 'Decline');
  await page.keyboard.press('Enter');
  await page.getByRole('textbox', { name: 'Reason' }).waitFor();
  await page.keyboard.type('not this week');
  await tabTo(page, 'button', 'Leave it open');
  await page.keyboard.press('Shift+Tab');
  await page.keyboard.press('Enter');
  await page.getByRole('dialog').waitFor({ state: 'detached' });
  await expect.poll(() => proposals.count()).toBe(open - 1);
  expect(complaints()).toEqual([]);
});

test('after a space walk the Desk asks for a look, and grip and pressing go on once it is recorded', async () => {
  const { page, complaints } = watched;
  await page.goto(`${house.origin}/people/rafael-nwosu/record?record=space%20walk`);
  const walk = page.getByRole('dialog');
  await walk.getByLabel('Day').fill('2027-02-28');
  await walk.getByRole('button', { name: 'Record', exact: true }).click();
  await walk.waitFor({ state: 'detached' });
  await page.goto(house.origin);
  await page.getByText('After the space walk of flight day 117 grip and pressing wait').waitFor();
  await tabTo(page, 'button', 'Record a look');
  await page.keyboard.press('Enter');
  await page.getByRole('textbox', { name: 'Who looked' }).waitFor();
  expect(await barriers(page)).toEqual([]);
  await page.keyboard.type('the crew medical officer');
  await tabTo(page, 'button', 'Record the look');
  await page.keyboard.press('Enter');
  await page.getByRole('dialog').waitFor({ state: 'detached' });
  await expect.poll(() => page.getByText('grip and pressing wait').count()).toBe(0);
  expect(complaints()).toEqual([]);
});

test('the Desk says what the road asks for, each with the way to where it is done', async () => {
  const { page, complaints } = watched;
  await page.goto(house.origin);
  await page.getByText(/Tests are due until L−92/).waitFor();
  await tabTo(page, 'link', 'Type in');
  await page.keyboard.press('Enter');
  await page.getByRole('dialog', { name: /^Record test/ }).waitFor();
  expect(complaints()).toEqual([]);
});
