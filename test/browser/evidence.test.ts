import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Browser, Page } from 'playwright-core';
import { ALL_CHAPTERS, ALL_CHECKS, ALL_RECORDS, PARTS } from '#science/textbook.ts';
import { outlineOf } from '#web/pages/evidence/outline.ts';
import { startBrowser } from './find-browser.ts';
import { barriers, openPage, startHouse, type House, type WatchedPage } from './harness.ts';

let browser: Browser;
let house: House;
let watched: WatchedPage;
let page: Page;

const search = () => page.getByLabel('Find a title, symbol, author, id or figure');
// By the element: what a page of this length hides from view is not worked out anew at every look.
const articles = () => page.locator('article');
const entry = (id: string) => page.locator(`[id="${id}"]`);

beforeAll(async () => {
  browser = await startBrowser();
  house = await startHouse('--scenario');
  watched = await openPage(browser);
  page = watched.page;
  await page.goto(house.address);
  await page.getByRole('link', { name: 'Evidence' }).first().click();
});

afterAll(async () => {
  await browser.close();
  await house.stop();
});

/** What lands on the clipboard when somebody copies the equation of an entry. */
const COPY_FIRST_EQUATION = `(() => {
  const equation = document.getElementById('repetition-multiplier/wathan').querySelector('math');
  document.getSelection().selectAllChildren(equation.parentElement);
  const event = new ClipboardEvent('copy', { bubbles: true, cancelable: true, clipboardData: new DataTransfer() });
  equation.dispatchEvent(event);
  return event.clipboardData.getData('text/plain');
})()`;

const NAMESPACE = "document.querySelector('article math mfrac').namespaceURI";

const HIDDEN_TABLES =
  "[...document.querySelectorAll('article table')].filter((table) => table.getClientRects().length === 0).length";

/** Milliseconds that the browser spent on the checks alone, slice by slice, and the longest slice. */
const timeOfChecks = (): Promise<{ readonly sum: number; readonly longest: number }> =>
  page.evaluate(() => {
    const slices = performance.getEntriesByName('evidence: checks').map(({ duration }) => duration);
    return { sum: slices.reduce((sum, each) => sum + each, 0), longest: Math.max(...slices) };
  });

test('every check is computed in the browser, and holds', async () => {
  const verdict = page.getByRole('status').filter({ hasText: 'checks against what was printed' });
  await expect.poll(() => verdict.innerText(), { timeout: 30_000 }).toContain('just now');
  expect(await verdict.innerText()).toContain(`all ${ALL_CHECKS.length} hold`);
  expect(await page.getByText('does not hold', { exact: true }).count()).toBe(0);
  const { sum, longest } = await timeOfChecks();
  process.stdout.write(
    `${ALL_CHECKS.length} checks took the browser ${sum.toFixed(0)} ms, ${longest.toFixed(0)} ms at a time at most.\n`,
  );
});

test('the contents name every chapter, and every entry is drawn', async () => {
  const lines = page.getByRole('navigation', { name: 'Contents' }).getByRole('link');
  const named = await lines.allInnerTexts();
  for (const { heading } of ALL_CHAPTERS) expect(named.some((line) => line.includes(heading))).toBe(true);
  await expect.poll(() => articles().count(), { timeout: 30_000 }).toBe(ALL_RECORDS.length);
});

test('a line of the contents leads to its chapter, by the keyboard too', async () => {
  const anchor = outlineOf(PARTS).at(-1)?.chapters.at(-1)?.anchor ?? '';
  await page.locator(`nav a[href="#${anchor}"]`).focus();
  await page.keyboard.press('Enter');
  const heading = page.locator(`[id="${anchor}-heading"]`);
  await expect.poll(async () => (await heading.boundingBox())?.y ?? Infinity).toBeLessThan(300);
});

test('an entry is found by the words of its paper, and nothing else is left', async () => {
  await search().fill('wathan maximum');
  await expect.poll(() => articles().count()).toBeLessThan(40);
  expect(await articles().count()).toBeGreaterThan(0);
  for (const text of await articles().allTextContents()) expect(text.toLowerCase()).toContain('wathan');
  await search().fill('no such word anywhere');
  await expect.poll(() => articles().count()).toBe(0);
  await page.getByRole('button', { name: 'Show all' }).click();
  await expect.poll(() => articles().count(), { timeout: 30_000 }).toBe(ALL_RECORDS.length);
});

test('an entry has an address of its own, and its equation is set and can be copied', async () => {
  await page.goto(`${house.origin}/evidence#repetition-multiplier/wathan`);
  await page.reload();
  const wathan = entry('repetition-multiplier/wathan');
  await expect.poll(async () => (await wathan.boundingBox())?.y ?? Infinity).toBeLessThan(400);
  const equation = wathan.locator('math').first();
  expect(await equation.getAttribute('alttext')).toBe('f = 100 / (48.8 + 53.8 e^(−0.075 n))');
  expect(await equation.locator('mfrac').count()).toBe(1);
  expect(await page.evaluate<string>(NAMESPACE)).toBe('http://www.w3.org/1998/Math/MathML');
  const copied = await page.evaluate<string>(COPY_FIRST_EQUATION);
  expect(copied).toBe('f = 100 / (48.8 + 53.8 e^(−0.075 n))');
});

test('an entry names the screens that use it, and says where there are none', async () => {
  const screens = entry('repetition-multiplier/wathan').getByRole('link', { name: 'Capacity' });
  expect(await screens.getAttribute('href')).toMatch(/^\/people\/.+\/capacity$/);
  expect(await entry('repetition-multiplier/lander').textContent()).toContain('On no screen yet.');
});

test('a formula that is tried gives a value, flags what is not valid, and refuses what cannot be', async () => {
  const wathan = entry('repetition-multiplier/wathan');
  await wathan.getByText('Type values and see what comes out').click();
  const repetitions = wathan.getByRole('textbox');
  const outcome = wathan.getByRole('status');
  await repetitions.fill('10');
  expect(await outcome.innerText()).toContain('1.34747');
  await repetitions.fill('20');
  expect(await outcome.innerText()).toMatch(/Flagged\. Repetitions to failure 20 .*is outside 1 to 12/);
  await repetitions.fill('0');
  expect(await outcome.innerText()).toMatch(/Refused\. Repetitions to failure must lie in 1 to 50/);
  await repetitions.fill('ten');
  expect(await outcome.innerText()).toContain('which is no number');
});

test('a plot is drawn when it comes into sight, with the units of its axes', async () => {
  await page.goto(`${house.origin}/evidence#bone/standard-score`);
  await page.reload();
  const plot = entry('bone/standard-score').getByRole('img');
  await expect.poll(() => plot.count(), { timeout: 10_000 }).toBe(1);
  expect(await plot.textContent()).toContain('g/cm²');
  expect(await plot.getAttribute('aria-label')).toContain('Score of a density');
});

test('nothing bars anybody from the page, light or dark, and nothing went wrong on it', async () => {
  // All entries are drawn alike: a few of each kind stand for the rest.
  await search().fill('precision scans');
  await expect.poll(() => articles().count()).toBeLessThan(20);
  expect(await barriers(page)).toEqual([]);
  await page.emulateMedia({ colorScheme: 'dark' });
  expect(await barriers(page)).toEqual([]);
  await page.emulateMedia({ colorScheme: null });
  await search().fill('');
  expect(watched.complaints()).toEqual([]);
});

test('the printed book holds every chapter, entry, check and plot, whatever was seen before', async () => {
  await page.goto(`${house.origin}/evidence`);
  await page.emulateMedia({ media: 'print' });
  const chapters = page.locator('section[id^="chapter-"]');
  await expect.poll(() => chapters.count(), { timeout: 30_000 }).toBe(ALL_CHAPTERS.length);
  expect(await articles().count()).toBe(ALL_RECORDS.length);
  const plots = ALL_RECORDS.filter(({ plot }) => plot).length;
  await expect.poll(() => page.locator('figure svg').count(), { timeout: 30_000 }).toBe(plots);
  const hidden = await page.evaluate<number>(HIDDEN_TABLES);
  expect(hidden).toBe(0);
  await page.emulateMedia({ media: null });
});
