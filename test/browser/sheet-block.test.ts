import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Browser, Locator, Page } from 'playwright-core';
import { startBrowser } from './find-browser.ts';
import { barriers, openPage, startHouse, type House, type WatchedPage } from './harness.ts';

let browser: Browser;
let house: House;
let watched: WatchedPage;

beforeAll(async () => {
  [browser, house] = await Promise.all([startBrowser(), startHouse('--scenario', '--today', '2027-03-01')]);
  watched = await openPage(browser, { viewport: { width: 1500, height: 950 } });
  await watched.page.goto(house.address);
  await watched.page.getByRole('combobox', { name: 'Who signs' }).selectOption({ label: 'Maud Arkwright' });
});

afterAll(async () => {
  await browser.close();
  await house.stop();
});

/** Opens somebody's sheet with the keyboard on the next session of a lift. */
const openSheet = async (page: Page, person: string, lift = 'back-squat'): Promise<void> => {
  await page.goto(`${house.origin}/people/${person}?lift=${lift}`);
  await page.locator('[data-place]:focus').waitFor();
};

const focused = (page: Page) => page.locator('[data-place]:focus');
const press = async (page: Page, ...keys: readonly string[]): Promise<void> => {
  for (const key of keys) await page.keyboard.press(key);
};
const cellAt = (page: Page, place: string) => page.locator(`[data-place="${place}"]`);
/** The place under the keyboard, as row and column. */
const placeOf = async (page: Page): Promise<readonly [number, number]> => {
  const [row = NaN, column = NaN] = ((await focused(page).getAttribute('data-place')) ?? '').split(':').map(Number);
  return [row, column];
};

/** On to the next session of the row that can still be written. */
const toOpenSession = async (page: Page): Promise<void> => {
  for (let issued = 0; issued < 6; issued += 1) {
    if ((await focused(page).innerText()).includes('can be issued')) return;
    await page.keyboard.press('Control+ArrowRight');
  }
  throw new Error('No session of this lift can still be written.');
};

/** Signs what a dialog shows: the keyboard stands on its reason, Enter is enough. */
const sign = async (dialog: Locator, reason = ''): Promise<void> => {
  await dialog.locator('input:focus').fill(reason);
  await dialog.page().keyboard.press('Enter');
  await dialog.waitFor({ state: 'detached' });
};

/** A clipboard event at the keyboard, as a browser fires it; written out, for it runs in the page. */
const clipboardEvent = (kind: 'copy' | 'paste', text: string): string => `(() => {
  const clipboardData = new DataTransfer();
  clipboardData.setData('text/plain', ${JSON.stringify(text)});
  const event = new ClipboardEvent('${kind}', { clipboardData, bubbles: true, cancelable: true });
  document.activeElement.dispatchEvent(event);
  return clipboardData.getData('text/plain');
})()`;

/** What a browser does when somebody pastes: the text of another program arrives with the event. */
const paste = (page: Page, text: string): Promise<string> => page.evaluate<string>(clipboardEvent('paste', text));

/** What a browser would put on the clipboard now. */
const copied = (page: Page): Promise<string> => page.evaluate<string>(clipboardEvent('copy', ''));

test('a range is copied as lines and filled to the right under one signature, and taken back under another', async () => {
  const { page, complaints } = watched;
  await openSheet(page, 'adaeze-brandt');
  await toOpenSession(page);
  const start = await placeOf(page);
  await press(page, 'e');
  await page.getByRole('textbox', { name: /^Back squat, / }).waitFor();
  await press(page, 'Control+A');
  await page.keyboard.type('3 × 5 @ 70 %, rest 3:00');
  await page.locator('#line-outcome').getByText(/^3×5 /).waitFor();
  await expect.poll(() => page.getByRole('button', { name: 'Sign', exact: true }).isEnabled()).toBe(true);
  await press(page, 'Enter');
  await expect.poll(() => focused(page).innerText()).toContain('3×5');
  await press(page, 'Control+Shift+ArrowRight');
  const [row, column] = await placeOf(page);
  const planned = await focused(page).innerText();
  expect(await page.locator('[aria-selected="true"]').count()).toBe(column - start[1] + 1);
  expect(await copied(page)).toMatch(/^3 × 5 @ 70 %, rest 3:00\t\d × 8 @ .+\n$/);
  await press(page, 'Control+R');
  const dialog = page.getByRole('dialog', { name: 'Fill right' });
  await dialog.getByText('3 × 5 @ 70 %, rest 3:00').waitFor();
  await dialog.getByText(/\d+ of \d+ min/).waitFor();
  expect(await barriers(page)).toEqual([]);
  await sign(dialog);
  await expect.poll(() => cellAt(page, `${row}:${column}`).innerText()).toContain('3×5');
  expect(await cellAt(page, `${start[0]}:${start[1]}`).innerText()).toContain('3×5');
  await press(page, 'Control+Z');
  const back = page.getByRole('dialog', { name: 'Take back what was written' });
  await back.getByText('as the programme has it').waitFor();
  await sign(back);
  await expect.poll(() => cellAt(page, `${row}:${column}`).innerText()).toBe(planned);
  await press(page, 'Control+Y');
  const again = page.getByRole('dialog', { name: 'Write it again' });
  await again.getByText('3 × 5 @ 70 %, rest 3:00').waitFor();
  await press(page, 'Escape');
  await again.waitFor({ state: 'detached' });
  await expect.poll(() => placeOf(page)).toEqual([row, column]);
  expect(complaints()).toEqual([]);
});

test('a good block from a spreadsheet is looked at whole, then written; less weight says what it takes at the bar', async () => {
  const { page, complaints } = watched;
  await openSheet(page, 'kerttu-saarela');
  await toOpenSession(page);
  const [row, column] = await placeOf(page);
  await paste(page, '"3 × 10 @ 240 lb"\r\n3x10@250lb\r\n');
  const dialog = page.getByRole('dialog', { name: 'Paste' });
  // The light squat stands at 250 lb in use: less on the machine is more than that less at the bar.
  await dialog.getByText(/^from 250, −\d+\.\d\s% at the bar$/).waitFor();
  await dialog.getByText(/3×12 255 →/).waitFor();
  expect(await barriers(page)).toEqual([]);
  await sign(dialog, 'a lighter week');
  await expect.poll(() => focused(page).innerText()).toContain('3×10 240');
  expect(await cellAt(page, `${row + 1}:${column}`).innerText()).toContain('3×10 250');
  expect(complaints()).toEqual([]);
});

test('a bad block tells every problem at its cell, and nothing is written', async () => {
  const { page, complaints } = watched;
  await page.goto(`${house.origin}/people/ines-okafor-lund`);
  await focused(page).waitFor();
  expect(await focused(page).innerText()).toContain('Cycling, Mon 1 Mar');
  await press(page, 'ArrowUp');
  const [row, column] = await placeOf(page);
  const next = cellAt(page, `${row}:${column + 1}`);
  const before = await next.innerText();
  // Nobody runs today, the card of today is issued, and far to the right the block is at its end.
  await paste(page, `4 × 4 min\theavy${'\t'.repeat(99)}far away\n4 × 4 min @ RPE 8`);
  const dialog = page.getByRole('dialog', { name: 'Paste' });
  const problems = dialog.getByRole('alert').getByRole('listitem');
  await problems.filter({ hasText: 'stands on an issued card' }).waitFor();
  await problems.filter({ hasText: 'cannot be read: “heavy”' }).waitFor();
  await problems.filter({ hasText: 'Treadmill run, Mon 1 Mar, is not in this session' }).waitFor();
  await problems.filter({ hasText: 'One cell lies outside the block' }).waitFor();
  expect(await dialog.getByRole('button', { name: /^Sign/ }).count()).toBe(0);
  expect(await barriers(page)).toEqual([]);
  await press(page, 'Escape');
  await dialog.waitFor({ state: 'detached' });
  expect(await next.innerText()).toBe(before);
  expect(complaints()).toEqual([]);
});

test('arrows go on from block to block, a range stays in its own, and Home and End are ends of a row', async () => {
  const { page, complaints } = watched;
  await page.goto(`${house.origin}/people/ines-okafor-lund`);
  await focused(page).waitFor();
  const blocks = page.getByRole('grid');
  const blockOfFocus = blocks.filter({ has: page.locator(':focus') });
  const titles = await Promise.all((await blocks.all()).map((block) => block.getAttribute('aria-label')));
  expect(titles.slice(0, 3)).toEqual(['Run intervals and hands', 'Easy day', 'Heavy day']);
  const rows = await blocks.first().getByRole('row').count();
  await press(page, ...Array.from({ length: rows }, () => 'Shift+ArrowDown'));
  expect(await blockOfFocus.getAttribute('aria-label')).toBe(titles[0]);
  const [bottom, column] = await placeOf(page);
  expect(bottom).toBe(rows - 1);
  await press(page, 'ArrowDown');
  expect(await focused(page).innerText()).toContain('Tue 2 Mar');
  expect(await blockOfFocus.getAttribute('aria-label')).toBe(titles[1]);
  await press(page, 'ArrowUp');
  expect(await placeOf(page)).toEqual([bottom, column]);
  await press(page, 'Control+ArrowDown', 'Home');
  expect((await placeOf(page))[1]).toBe(0);
  await press(page, 'End');
  expect(await focused(page).innerText()).toContain('Tue 16 Mar');
  await press(page, 'Control+End');
  expect(await blockOfFocus.getAttribute('aria-label')).toBe(titles.at(-1));
  await press(page, 'Control+Home');
  expect(await placeOf(page)).toEqual([0, 0]);
  expect(complaints()).toEqual([]);
});

/** By how much blocks are wider than their frames; written out, for it runs in the page. */
const WIDER_THAN_SHOWN = `[...document.querySelectorAll('section > div:has(> [role=grid])')]
  .map((frame) => frame.scrollWidth - frame.clientWidth)
  .filter((over) => over > 0)`;

test('a sheet is read without scrolling far: two sessions at once, no block wider than the page, little in all', async () => {
  const { page } = watched;
  await page.setViewportSize({ width: 1360, height: 900 });
  await page.goto(`${house.origin}/people/ines-okafor-lund`);
  await focused(page).waitFor();
  const frames = page.getByRole('grid');
  expect(await page.evaluate<number[]>(WIDER_THAN_SHOWN)).toEqual([]);
  const second = await frames.nth(1).boundingBox();
  expect((second?.y ?? Infinity) + (second?.height ?? Infinity)).toBeLessThan(900);
  expect(await page.evaluate<number>('document.documentElement.scrollHeight')).toBeLessThan(2000);
  await page.setViewportSize({ width: 390, height: 844 });
  expect(await page.evaluate<number>('document.documentElement.scrollWidth')).toBe(390);
  await page.setViewportSize({ width: 1500, height: 950 });
});

test('what comes no more is folded away, and opens for a lift that stands in it alone', async () => {
  const { page, complaints } = watched;
  await openSheet(page, 'ines-okafor-lund', 'treadmill-walk');
  expect(await focused(page).innerText()).toContain('Treadmill walk');
  const blocks = page.getByRole('grid');
  const all = await blocks.count();
  await page.getByRole('button', { name: 'Fold away what comes no more' }).press('Enter');
  expect(await blocks.count()).toBe(all - 3);
  await page.locator('[data-place][tabindex="0"]').focus();
  expect(await focused(page).innerText()).toContain('Mon 1 Mar');
  await page.getByRole('button', { name: 'Show what comes no more' }).press('Enter');
  expect(await blocks.count()).toBe(all);
  expect(complaints()).toEqual([]);
});

test('a range is left out with one reason, and goes back to the programme', async () => {
  const { page, complaints } = watched;
  await openSheet(page, 'wen-li-abara', 'deadlift');
  await toOpenSession(page);
  const [row, column] = await placeOf(page);
  const planned = await focused(page).innerText();
  await press(page, 'Shift+ArrowDown', 'x');
  const dialog = page.getByRole('dialog', { name: 'Leave out' });
  await dialog.getByText('leave out').first().waitFor();
  await sign(dialog, 'a late flight the night before');
  await expect.poll(() => cellAt(page, `${row}:${column}`).innerText()).toContain('left out');
  expect(await cellAt(page, `${row + 1}:${column}`).innerText()).toContain('left out');
  await press(page, 'Shift+ArrowUp', 'Delete');
  const back = page.getByRole('dialog', { name: 'Back to the programme' });
  await back.getByText('as the programme has it').first().waitFor();
  await sign(back);
  await expect.poll(() => cellAt(page, `${row}:${column}`).innerText()).toBe(planned);
  expect(complaints()).toEqual([]);
});

test('a week is copied into the next, to the sessions that match', async () => {
  const { page, complaints } = watched;
  await openSheet(page, 'adaeze-brandt', 'deadlift');
  await toOpenSession(page);
  const written = await placeOf(page);
  await press(page, 'e');
  await page.getByRole('textbox', { name: /^Deadlift, / }).waitFor();
  await press(page, 'Control+A');
  await page.keyboard.type('2 × 4 @ 65 %');
  await page.locator('#line-outcome').getByText(/^2×4 /).waitFor();
  await expect.poll(() => page.getByRole('button', { name: 'Sign', exact: true }).isEnabled()).toBe(true);
  await press(page, 'Enter');
  await expect.poll(() => focused(page).innerText()).toContain('2×4');
  await press(page, 'w');
  const dialog = page.getByRole('dialog', { name: 'Copy this week into the next' });
  await dialog.getByText('2 × 4 @ 65 %').waitFor();
  await dialog.getByText(/more cells? says? so already/).waitFor();
  await sign(dialog);
  await press(page, 'Control+ArrowRight');
  await expect.poll(() => focused(page).innerText()).toContain('2×4');
  expect(await placeOf(page)).not.toEqual(written);
  expect(complaints()).toEqual([]);
});

test('a mouse draws a range; a click on one cell still opens it', async () => {
  const { page } = watched;
  await openSheet(page, 'wen-li-abara');
  const [row, column] = await placeOf(page);
  await cellAt(page, `${row}:${column}`).hover();
  await page.mouse.down();
  await cellAt(page, `${row + 1}:${column + 1}`).hover();
  await page.mouse.up();
  expect(await page.locator('[aria-selected="true"]').count()).toBe(4);
  expect(await page.getByRole('dialog').count()).toBe(0);
  expect(await placeOf(page)).toEqual([row + 1, column + 1]);
  await cellAt(page, `${row}:${column}`).click();
  await page.getByRole('dialog', { name: /^Back squat, / }).waitFor();
  await press(page, 'Escape');
});

test('one lift of all people is found by its name, walked through and written by keyboard', async () => {
  const { page, complaints } = watched;
  await page.goto(house.origin);
  await page.getByRole('link', { name: 'Squat', exact: true }).waitFor();
  await press(page, '/');
  await page.keyboard.type('back squat');
  await page.getByRole('option', { name: /^Back squat all people/ }).click();
  await page.getByRole('grid', { name: 'Back squat, all people' }).waitFor();
  expect(await barriers(page)).toEqual([]);
  await page.locator('[data-person="0"]:focus').waitFor();
  await press(page, 'ArrowDown', 'ArrowDown');
  const oona = page.locator('[data-person]:focus');
  expect(await oona.innerText()).toContain('Oona Whitlock');
  await press(page, 'e');
  await page.getByRole('textbox', { name: /^Oona Whitlock, back squat/ }).waitFor();
  await press(page, 'Control+A');
  await page.keyboard.type('3 × 6 @ 130 lb');
  await page.getByText(/from 170, −\d+\.\d\s% at the bar/).waitFor();
  await press(page, 'Enter');
  await expect.poll(() => oona.innerText()).toContain('3×6 130 lb');
  await press(page, 'Enter');
  await page.getByRole('heading', { name: 'Oona Whitlock' }).waitFor();
  await expect.poll(() => focused(page).innerText()).toContain('3×6 130');
  expect(complaints()).toEqual([]);
});

test('ten people are gone through by keyboard: one key to the next, one each to issue, hold and back off', async () => {
  const { page, complaints } = watched;
  await page.goto(`${house.origin}/people/ines-okafor-lund`);
  const seen = new Set<string>();
  for (let person = 0; person < 10; person += 1) {
    await page.locator('[data-place]:focus').or(page.getByText('follows no programme yet')).first().waitFor();
    const name = await page.getByRole('heading', { level: 1 }).innerText();
    seen.add(name);
    if ((await focused(page).count()) > 0) {
      for (const [key, title] of [
        ['i', `Issue cards to ${name}`],
        ['h', /: hold$/],
        ['b', /: back off 10 %$/],
      ] as const) {
        await press(page, key);
        const dialog = page.getByRole('dialog', { name: title });
        await dialog.waitFor();
        await press(page, 'Escape');
        await dialog.waitFor({ state: 'detached' });
      }
    }
    await press(page, 'n');
    await page.getByRole('heading', { level: 1, name, exact: true }).waitFor({ state: 'detached' });
  }
  expect(seen.size).toBe(10);
  expect(complaints()).toEqual([]);
});

test('a sheet prints sixteen rows to a page, or more; a lift of all people on one', async () => {
  const { page } = watched;
  const pagesOf = async (): Promise<number> => {
    const printed = await page.pdf({ preferCSSPageSize: true });
    return printed.toString('latin1').match(/\/Type\s*\/Page\b/g)?.length ?? 0;
  };
  await page.goto(`${house.origin}/people/kerttu-saarela`);
  await page.getByRole('grid').first().waitFor();
  const rows = await page.getByRole('grid').getByRole('rowheader').getByRole('link').count();
  expect(rows).toBeGreaterThanOrEqual(16);
  expect(await pagesOf()).toBeLessThanOrEqual(Math.ceil(rows / 16));
  await page.goto(`${house.origin}/lift/back-squat`);
  await page.getByRole('grid').first().waitFor();
  expect(await pagesOf()).toBe(1);
});
