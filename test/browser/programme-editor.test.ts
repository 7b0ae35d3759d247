import { afterAll, beforeAll, beforeEach, expect, test } from 'vitest';
import type { Browser, Page } from 'playwright-core';
import { startBrowser } from './find-browser.ts';
import { barriers, openPage, startHouse, type House, type WatchedPage } from './harness.ts';

let browser: Browser;
let house: House;
let watched: WatchedPage;

beforeAll(async () => {
  [browser, house] = await Promise.all([startBrowser(), startHouse('--scenario', '--today', '2027-03-01')]);
  watched = await openPage(browser, {
    viewport: { width: 1440, height: 1000 },
    permissions: ['clipboard-read', 'clipboard-write'],
  });
  await watched.page.goto(house.address);
  await watched.page.getByRole('combobox', { name: 'Who signs' }).selectOption({ label: 'Maud Arkwright' });
});

afterAll(async () => {
  await browser.close();
  await house.stop();
});

/** A draft of a programme of its own, with nothing in it: what is typed does not hang on what ships. */
const openNew = async (page: Page): Promise<void> => {
  await page.goto(`${house.origin}/programmes/new/edit`);
  await page.getByRole('grid').waitFor();
};

beforeEach(async () => {
  await watched.page.evaluate('localStorage.clear()');
  await openNew(watched.page);
});

const cell = (page: Page, row: number, column: number) => page.locator(`[data-place="${row}:${column}"]`);
/** What stands in a cell; numbers and units are held together there by spaces that do not break. */
const textIn = async (page: Page, row: number, column: number): Promise<string> =>
  (await cell(page, row, column).innerText()).replaceAll('\u00A0', ' ');
const focusOn = (page: Page, row: number, column: number) => cell(page, row, column).click();
const focused = (page: Page): Promise<string | null> => page.locator('[data-place]:focus').getAttribute('data-place');

/** Types a line into the cell under the keyboard; Enter goes on to the next one. */
const typeLine = async (page: Page, line: string): Promise<void> => {
  await page.keyboard.type(line);
  await page.keyboard.press('Enter');
};

/** What a browser does when somebody pastes: the text of another program arrives with the event. Runs in the page. */
const paste = (page: Page, text: string): Promise<unknown> =>
  page.evaluate(`(() => {
    const clipboardData = new DataTransfer();
    clipboardData.setData('text/plain', ${JSON.stringify(text)});
    const event = new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true });
    document.activeElement.dispatchEvent(event);
  })()`);

test('a line is typed, its name completed, what it comes to told under it, and it is read into the house’s spelling', async () => {
  const { page, complaints } = watched;
  await focusOn(page, 2, 0);
  await page.keyboard.type('back sq');
  await page.getByRole('option', { name: 'Back squat' }).waitFor();
  expect(await barriers(page)).toEqual([]);
  await page.keyboard.press('Tab');
  await page.keyboard.type('4x6 @ 80');
  await page.getByText('say what 80 is').waitFor();
  await page.keyboard.type('%, rest 150');
  await page.getByText('on the free bar').waitFor();
  await page.keyboard.press('Enter');
  await expect.poll(() => textIn(page, 2, 0)).toContain('Back squat 4 × 6 @ 80 %, rest 2:30');
  expect(await textIn(page, 0, 0)).toBe('Day 1');
  expect(await textIn(page, 1, 0)).toBe('60');
  expect(complaints()).toEqual([]);
});

test('a block of a spreadsheet is pasted; what cannot be read stands where it was pasted, and one undo takes all of it back', async () => {
  const { page, complaints } = watched;
  await focusOn(page, 0, 0);
  await paste(
    page,
    'Heavy day\t\tLight day\r\n90\t\t60\r\nBack squat 4x6@80%\t\tSplit squat 3 x 8/side\r\nDedlift 3 × 5\t\tBiceps curl 3 × 12 @ RPE 7\r\n',
  );
  await expect.poll(() => textIn(page, 2, 2)).toContain('Split squat 3 × 8/side, rest 2:00');
  expect(await textIn(page, 0, 2)).toBe('Light day');
  expect(await textIn(page, 1, 0)).toBe('90');
  expect(await textIn(page, 3, 0)).toContain('Dedlift 3 × 5');
  await focusOn(page, 3, 0);
  await page.getByRole('alert').getByText('“Dedlift” is no exercise').first().waitFor();
  expect(await page.getByRole('button', { name: 'Compare the next 28 days' }).isDisabled()).toBe(true);
  await page.keyboard.press('Control+z');
  await expect.poll(() => textIn(page, 2, 0)).toBe('');
  await page.keyboard.press('Control+y');
  await expect.poll(() => textIn(page, 2, 0)).toContain('Back squat');
  expect(complaints()).toEqual([]);
});

test('by keyboard alone: ranges are copied, filled, moved and cleared', async () => {
  const { page, complaints } = watched;
  expect(await focused(page)).toBe('2:0');
  await typeLine(page, 'Back squat 4 × 6 @ 80 %');
  await typeLine(page, 'Deadlift 3 × 5 @ 80 %');
  await page.keyboard.press('ArrowUp');
  await page.keyboard.press('Shift+ArrowUp');
  await page.keyboard.press('Control+c');
  await page.getByText('Copied 2 × 1.').waitFor();
  await page.keyboard.press('ArrowUp');
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('Control+v');
  await expect.poll(() => textIn(page, 3, 1)).toContain('Deadlift 3 × 5');
  await page.keyboard.press('Shift+ArrowRight');
  await page.keyboard.press('Control+r');
  await expect.poll(() => textIn(page, 2, 2)).toContain('Back squat 4 × 6');
  await page.keyboard.press('ArrowLeft');
  await page.keyboard.press('Alt+ArrowDown');
  await expect.poll(() => textIn(page, 2, 1)).toContain('Deadlift');
  await page.keyboard.press('Delete');
  await page.getByText('Cleared 1 × 1.').waitFor();
  expect(await textIn(page, 3, 1)).toBe('');
  expect(await textIn(page, 2, 0)).toContain('Back squat');
  expect(complaints()).toEqual([]);
});

test('what the line does not say is changed beside it, and a reload loses nothing', async () => {
  const { page, complaints } = watched;
  await focusOn(page, 2, 0);
  await typeLine(page, 'Back squat 4 × 6 @ 80 %');
  await page.keyboard.press('ArrowUp');
  const panel = page.getByRole('region', { name: 'What the line does not say' });
  await panel.getByLabel('Load', { exact: true }).selectOption({ label: 'a fraction at first, then from last' });
  await panel.getByLabel('Warm-ups').fill('60 % × 6, hard');
  await panel.getByText('It must be such as 60 % × 6').waitFor();
  await panel.getByLabel('Warm-ups').fill('60 % × 6, 80 % × 4');
  await panel.getByLabel('For', { exact: true }).selectOption('space-walk crew');
  await page.getByLabel('Name').fill('Another flight');
  expect(await barriers(page)).toEqual([]);
  await page.reload();
  await page.getByRole('grid').waitFor();
  await expect.poll(() => textIn(page, 2, 0)).toContain('w 2 · from last · space-walk crew');
  expect(await page.getByLabel('Name').inputValue()).toBe('Another flight');
  expect(complaints()).toEqual([]);
});

test('what somebody types is text: markup, a thousand characters and a page of cells do no harm', async () => {
  const { page, complaints } = watched;
  const hostile = '<img src=x onerror="document.title=1">';
  await focusOn(page, 2, 0);
  await typeLine(page, hostile);
  await typeLine(page, 'Back squat '.repeat(90));
  await focusOn(page, 0, 6);
  await paste(page, `${hostile}\t${hostile}\n`.repeat(140));
  await page.getByText('lay outside the week').waitFor();
  await expect.poll(() => textIn(page, 2, 0)).toContain(hostile);
  expect(await page.locator('td img').count()).toBe(0);
  await page.getByLabel('Name').fill(hostile);
  await page.reload();
  await page.getByRole('grid').waitFor();
  expect(await page.getByLabel('Name').inputValue()).toBe(hostile);
  await page.evaluate(`localStorage.setItem('programme draft new', '{"format":1,"draft":{"name":1}}')`);
  await page.reload();
  await page.getByRole('grid').waitFor();
  expect(await page.getByLabel('Name').inputValue()).toBe('');
  expect(complaints()).toEqual([]);
});

test('a change is seen for everybody before it is taken up, and with the signature they follow it', async () => {
  const { page, complaints } = watched;
  await page.goto(`${house.origin}/programmes`);
  const flight = page.getByRole('article').filter({ hasText: 'Ines Okafor-Lund' }).first();
  const name = ((await flight.getByRole('heading', { level: 2 }).innerText()).split(' version')[0] ?? '').trim();
  await flight.getByRole('link', { name: 'Write the next version' }).click();
  await page.getByRole('button', { name: 'main flight' }).click();
  const squat = page
    .locator('td[data-place]')
    .filter({ hasText: /^Back squat/ })
    .first();
  await squat.click();
  await page.keyboard.press('Enter');
  await page.keyboard.press('Control+A');
  await typeLine(page, 'Back squat 5 × 5 @ 70 %, rest 2:00');
  await page.getByRole('region', { name: 'What is otherwise' }).getByText('→ 5 × 5 @ 70 %').waitFor();
  await page.getByRole('button', { name: 'Compare the next 28 days' }).click();
  const ahead = page.getByRole('region', { name: 'What it changes for people' });
  await ahead.getByRole('link', { name: 'Ines Okafor-Lund' }).waitFor();
  await ahead
    .getByText(/sessions change/)
    .first()
    .waitFor();
  expect(await barriers(page)).toEqual([]);
  await ahead.getByLabel(/Tomas Varga/).uncheck();
  await ahead.getByRole('button', { name: /^Take up version 2/ }).click();
  const taken = page.getByRole('article', { name: `${name}, version 2` });
  await taken.getByRole('link', { name: 'Ines Okafor-Lund' }).waitFor();
  expect(await taken.getByRole('link', { name: 'Tomas Varga' }).count()).toBe(0);
  await taken.getByText('→ 5 × 5 @ 70 %').waitFor();
  await page
    .locator('summary')
    .filter({ hasText: `${name}, version 1` })
    .filter({ hasText: 'Tomas Varga' })
    .waitFor();
  expect(complaints()).toEqual([]);
});

test('a programme of its own is refused with everything that stands against it, then taken up with nobody on it', async () => {
  const { page, complaints } = watched;
  await page.getByLabel('Name').fill('Short and light');
  await focusOn(page, 2, 1);
  await typeLine(page, 'Back squat 4 × 6 @ 60 %');
  await focusOn(page, 1, 1);
  await typeLine(page, '4');
  await page.getByRole('button', { name: 'Compare the next 28 days' }).click();
  await page.getByText('Nothing fits into the 4 minutes of Day 2.').waitFor();
  await focusOn(page, 1, 1);
  await typeLine(page, '60');
  await page.getByRole('button', { name: 'Compare the next 28 days' }).click();
  await page.getByRole('button', { name: 'Take up version 1, nobody follows it yet' }).click();
  const taken = page.getByRole('article', { name: 'Short and light, version 1' });
  await taken.getByText('Nobody follows it yet.').waitFor();
  expect(complaints().filter((complaint) => !complaint.includes('422'))).toEqual([]);
});
