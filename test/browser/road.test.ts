import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Browser, Page } from 'playwright-core';
import { startBrowser } from './find-browser.ts';
import { barriers, openPage, startHouse, type House, type WatchedPage } from './harness.ts';

let browser: Browser;
let house: House;
let watched: WatchedPage;
let page: Page;

beforeAll(async () => {
  [browser, house] = await Promise.all([startBrowser(), startHouse('--scenario', '--today', '2027-03-01')]);
  watched = await openPage(browser, { viewport: { width: 1440, height: 1000 } });
  page = watched.page;
  await page.goto(house.address);
  await page.getByRole('combobox', { name: 'Who signs' }).selectOption({ label: 'Maud Arkwright' });
  await page.getByRole('link', { name: 'Wen-li Abara' }).first().click();
  await page.getByRole('link', { name: 'Road', exact: true }).click();
});

afterAll(async () => {
  await browser.close();
  await house.stop();
});

const phaseRow = (name: string) => page.getByRole('row', { name: new RegExp(`^${name}`) });

test('the road shows phases with their days and what nobody planned, with the way to it', async () => {
  expect(await phaseRow('taper').innerText()).toContain('L−14 to L−8');
  expect(await phaseRow('taper').innerText()).toContain('22 May 2027');
});

test('a week is read out with the arrow keys alone', async () => {
  const ruler = page.getByRole('slider', { name: 'Read a week' });
  await ruler.focus();
  await page.keyboard.press('ArrowRight');
  const reading = page.getByText(/^Week of 8 March 2027, L−89 to L−83: flight-specific preparation\./);
  expect(await reading.innerText()).toMatch(/Dose: squat \d[\d.]* of at least 8 sets;/);
  await page.keyboard.press('End');
  expect(await ruler.getAttribute('aria-valuetext')).toMatch(/no programme/);
});

test('what takes days is entered and drawn, and said where it leaves too little time', async () => {
  const record = async (what: string, fields: Readonly<Record<string, string>>): Promise<void> => {
    await page.goto(`${house.origin}/people/wen-li-abara/record?record=${encodeURIComponent(what)}`);
    const form = page.getByRole('dialog');
    await form.waitFor();
    for (const [label, value] of Object.entries(fields)) await form.getByLabel(label, { exact: true }).fill(value);
    await form.getByRole('button', { name: 'Record', exact: true }).click();
    await form.waitFor({ state: 'detached' });
  };
  await record('days set aside', { 'First day': '2027-04-05', 'Last day': '2027-04-11' });
  await record('road hold', { From: '2027-03-15', Until: '2027-03-31' });
  await page.getByRole('link', { name: 'Road', exact: true }).click();
  await page
    .getByText(/The road holds from 15 March 2027 to 31 March 2027: flight-specific preparation goes on/)
    .waitFor();
  await page.getByText(/No single hour a week where practice asks for four, .*: the week of 5 April 2027\./).waitFor();
  await page.getByText(/have no place in the week of 5 April 2027\./).waitFor();
  await page.getByRole('img', { name: /^Squat: up to \d[\d.]* sets a week; floor 8, \d+ weeks under it$/ }).waitFor();
  await page.goto(`${house.origin}/people/ines-okafor-lund/road`);
  await page.getByText('◇ day 47').waitFor();
  await page.goto(`${house.origin}/people/wen-li-abara/road`);
  await page.getByRole('slider', { name: 'Read a week' }).waitFor();
  expect(watched.complaints()).toEqual([]);
});

test('nothing bars anybody from the page, wide and narrow', async () => {
  expect(await barriers(page)).toEqual([]);
  await page.setViewportSize({ width: 390, height: 844 });
  expect(await page.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(390);
  // A table that has become too wide is within reach of the keyboard once it is drawn again.
  await expect.poll(() => barriers(page)).toEqual([]);
  await page.setViewportSize({ width: 1440, height: 1000 });
});

test('it prints on one sheet', async () => {
  const printed = await page.pdf({ preferCSSPageSize: true });
  expect(printed.toString('latin1').match(/\/Type\s*\/Page\b/g)).toHaveLength(1);
});

test('a launch that slips by three weeks takes the phases along, and what was signed for a day stays and is listed', async () => {
  await page.goto(`${house.origin}/people/wen-li-abara/record?record=training%20site`);
  const stay = page.getByRole('dialog');
  await stay.getByLabel('Trains at').selectOption({ label: 'Brae House' });
  await stay.getByLabel('From').fill('2027-05-24');
  await stay.getByRole('button', { name: 'Record', exact: true }).click();
  await stay.waitFor({ state: 'detached' });
  await page.goto(`${house.origin}/people/wen-li-abara/record?record=mission%20dates`);
  const dates = page.getByRole('dialog');
  await dates.getByLabel('Launch').fill('2027-06-26');
  await dates.getByRole('button', { name: 'Record', exact: true }).click();
  await dates.waitFor({ state: 'detached' });
  await page.getByRole('link', { name: 'Road', exact: true }).click();
  await page.getByText('Launch moved by 21 days, from 5 June 2027 to 26 June 2027.').waitFor();
  expect(await phaseRow('taper').innerText()).toContain('12 June 2027');
  const moved = page.getByRole('row', { name: /trains at Brae House/ });
  expect(await moved.innerText()).toMatch(/taper \(L−12\)[\s\S]*flight-specific preparation \(L−33\)/);
  expect(watched.complaints()).toEqual([]);
});
