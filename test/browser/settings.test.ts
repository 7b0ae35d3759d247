import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Browser, Locator, Page } from 'playwright-core';
import { startBrowser } from './find-browser.ts';
import { barriers, openPage, startHouse, type House, type WatchedPage } from './harness.ts';

let browser: Browser;
let house: House;
let watched: WatchedPage;
let page: Page;

beforeAll(async () => {
  [browser, house] = await Promise.all([startBrowser(), startHouse('--scenario', '--today', '2027-03-01')]);
  watched = await openPage(browser, { viewport: { width: 1280, height: 900 } });
  page = watched.page;
  await page.goto(house.address);
  await page.getByRole('combobox', { name: 'Who signs' }).selectOption({ label: 'Maud Arkwright' });
  await page.getByRole('link', { name: 'Settings', exact: true }).click();
  await page.getByRole('region', { name: 'Signers' }).waitFor();
});

afterAll(async () => {
  await browser.close();
  await house.stop();
});

const dialog = (): Locator => page.getByRole('dialog');
const press = async (name: string, within: Locator | Page = page): Promise<void> => {
  await within.getByRole('button', { name, exact: true }).focus();
  await page.keyboard.press('Enter');
};
const retype = async (label: string, text: string): Promise<void> => {
  await dialog().getByLabel(label, { exact: true }).focus();
  await page.keyboard.press('Control+A');
  await page.keyboard.press('Delete');
  await page.keyboard.type(text);
};
const closed = () => expect.poll(() => dialog().count()).toBe(0);
const machineRow = (name: string): Locator =>
  page.getByRole('region', { name: 'Sites and machines' }).getByRole('row').filter({ hasText: name });
const exercise = (id: string): Locator => page.locator(`details#${id}`);

/** Unfolds an exercise with the keyboard; it stays unfolded. */
const unfold = async (id: string): Promise<void> => {
  await exercise(id).locator('> summary').focus();
  await page.keyboard.press('Enter');
  await exercise(id).getByText('how it came to stand').waitFor();
};

test('an exercise is found by a spelling, and refused with every problem at its field, by keyboard alone', async () => {
  await page.getByLabel('Look for').focus();
  await page.keyboard.type('rdl');
  await expect
    .poll(() => page.locator('details[id] > summary b').allInnerTexts())
    .toEqual(['Romanian deadlift', 'Single-leg Romanian deadlift']);
  await unfold('romanian-deadlift');
  await press('Change Romanian deadlift');
  await dialog().waitFor();
  // The keyboard is in the first field.
  await page.keyboard.press('Control+A');
  await page.keyboard.press('Delete');
  await retype('One repetition', 'slow');
  await retype('Ratio', '');
  await page.keyboard.press('Enter');
  await expect.poll(() => dialog().getByText('4 things are to be put right', { exact: false }).count()).toBe(1);
  expect(await dialog().getByText('Nothing is typed.').count()).toBe(2);
  expect(await dialog().getByText('“slow” is no number.').count()).toBe(1);
  expect(await dialog().getByText('No reason is typed.').count()).toBe(1);
});

test('what was typed is not lost by Escape without a question', async () => {
  await page.keyboard.press('Escape');
  await dialog().getByText('What was typed is not signed', { exact: false }).waitFor();
  await page.keyboard.press('Enter');
  await expect.poll(() => dialog().getByText('What was typed is not signed', { exact: false }).count()).toBe(0);
  expect(await dialog().getByLabel('One repetition').inputValue()).toBe('slow');
});

test('what the program alone can know is refused at its field too, and then the change is signed', async () => {
  await retype('Name', 'Deadlift');
  await retype('One repetition', '300');
  await retype('Ratio', '0.7');
  await retype('Why it changes', 'our own tests lie lower');
  await page.keyboard.press('Enter');
  await expect.poll(() => dialog().getByText('One repetition is 300.').count()).toBe(1);
  await retype('One repetition', '4,5');
  await page.keyboard.press('Enter');
  await expect.poll(() => dialog().getByText('“Deadlift” is Deadlift already.').count()).toBe(1);
  await retype('Name', 'Romanian deadlift');
  await page.keyboard.press('Enter');
  await closed();
  const entry = exercise('romanian-deadlift');
  await expect.poll(() => entry.innerText()).toContain('0.7 × Deadlift');
  expect(await entry.innerText()).toContain('4.5 s');
  expect(await entry.innerText()).toMatch(/capacity, seconds a repetition because our own tests lie lower/);
});

test('an exercise loses what a programme needs only after the warning is ticked; issued cards stand', async () => {
  await page.getByLabel('Look for').fill('');
  await unfold('back-squat');
  expect(await exercise('back-squat').innerText()).toMatch(/, version \d+ .*: resistive machine.*; followed by \d+/);
  await press('Change Back squat');
  expect(await dialog().getByText('They stand as they were issued', { exact: false }).count()).toBe(1);
  await dialog().getByRole('checkbox', { name: 'resistive machine', exact: true }).focus();
  await page.keyboard.press('Space');
  await dialog().getByText('with the resistive machine: left out of every card', { exact: false }).waitFor();
  await retype('Why it changes', 'the machine aboard is for other lifts');
  await page.keyboard.press('Enter');
  await expect.poll(() => dialog().getByText('The warnings are not ticked.').count()).toBe(1);
  await dialog().getByRole('checkbox', { name: 'I have seen this', exact: false }).focus();
  await page.keyboard.press('Space');
  expect(await barriers(page)).toEqual([]);
  await press('Change', dialog());
  await closed();
  const line = exercise('back-squat').locator('> summary');
  await expect.poll(() => line.innerText()).not.toContain('resistive machine');
  await press('Change Back squat');
  await dialog().getByRole('checkbox', { name: 'resistive machine', exact: true }).focus();
  await page.keyboard.press('Space');
  await retype('Why it changes', 'it was a mistake');
  await page.keyboard.press('Enter');
  await closed();
  await expect.poll(() => line.innerText()).toContain('resistive machine');
});

test('an exercise is copied to a new one, with a substitute and its coverage', async () => {
  await press('Copy to a new one: Back squat');
  expect(await dialog().getByLabel('Name', { exact: true }).inputValue()).toBe('');
  await page.keyboard.type('Safety-bar squat');
  await press('Add a substitute', dialog());
  const row = dialog()
    .getByRole('group', { name: /^Substitute/ })
    .last();
  await row.getByLabel('exercise').selectOption({ label: 'Front squat' });
  await row.getByLabel('strength').focus();
  await page.keyboard.type('1.4');
  await page.keyboard.press('Enter');
  await expect.poll(() => row.getByText('Coverage of strength is 1.4.').count()).toBe(1);
  await page.keyboard.press('Control+A');
  await page.keyboard.type('0.8');
  await page.keyboard.press('Enter');
  await expect.poll(() => dialog().getByText('This one stands above already.').count()).toBe(1);
  await press('Leave out Front squat', dialog().getByRole('group', { name: 'Substitute 1', exact: true }));
  await press('Enter', dialog());
  await closed();
  await unfold('safety-bar-squat');
  expect(await exercise('safety-bar-squat').innerText()).toContain('Copied from back squat');
  expect(await exercise('safety-bar-squat').innerText()).toContain('no programme');
});

test('a machine goes out of service with its reason, and back; its sheet says so meanwhile', async () => {
  await press('Resistive machine out of service');
  await retype('Reason', '');
  await dialog().getByLabel('Until, with that day').fill('2027-02-20');
  await press('Take out of service', dialog());
  await expect.poll(() => dialog().getByText('Nothing is typed.').count()).toBe(1);
  await retype('Reason', 'worn cable');
  await page.keyboard.press('Enter');
  await expect.poll(() => dialog().getByText('2027-02-20 is before 2027-03-01.').count()).toBe(1);
  await dialog().getByLabel('Until, with that day').fill('2027-03-10');
  await dialog().getByText('issue anew for', { exact: false }).waitFor();
  await press('Take out of service', dialog());
  await closed();
  const row = machineRow('delivers 1.04');
  await expect.poll(() => row.innerText()).toContain('out of service from 1 March 2027 to 10 March 2027: worn cable');
  await press('Resistive machine back in service');
  await dialog().getByLabel('First day in service again').fill('2027-03-01');
  await press('Back in service', dialog());
  await closed();
  await expect.poll(() => row.innerText()).toMatch(/\bin service\b/);
  expect(await row.innerText()).not.toContain('worn cable');
  await row.locator('summary').click();
  await expect.poll(() => row.innerText()).toContain('service because out of service: worn cable');
});

test('a site and a machine at it are entered; what counts the loads can be typed once only', async () => {
  await press('New site');
  await page.keyboard.type('brae house');
  await page.keyboard.press('Enter');
  await expect.poll(() => dialog().getByText('brae house is a site already.').count()).toBe(1);
  await retype('Name', 'Holm Yard');
  await page.keyboard.press('Enter');
  await closed();
  await press('New machine');
  await page.keyboard.type('Heavy bar');
  await dialog().getByLabel('Site').selectOption({ label: 'Holm Yard, on the ground' });
  await retype('One step', '2.5');
  await retype('Least', '21');
  await retype('Ceiling', '15');
  for (const label of ['Set-up', 'Stow', 'Change of exercise', 'Change of load']) await retype(label, '2');
  await page.keyboard.press('Enter');
  await expect.poll(() => dialog().getByText('21 kg is no whole number of steps of 2.5 kg.').count()).toBe(1);
  expect(await dialog().getByText('The most, 15 kg, is not above the least, 21 kg.').count()).toBe(1);
  await retype('Least', '20');
  await retype('Ceiling', '300');
  await page.keyboard.press('Enter');
  await closed();
  await expect.poll(() => machineRow('Heavy bar').innerText()).toContain('300 kg');
  await press('Change Heavy bar');
  expect(await dialog().getByLabel('One step').count()).toBe(0);
  expect(await dialog().getByText('These stay', { exact: false }).count()).toBe(1);
  await page.keyboard.press('Escape');
  await closed();
});

test('a calibration is worked out from what was set and what came, and taken back with a reason', async () => {
  await press('Calibrate Ground unit of the resistive machine');
  await retype('Set', '200');
  await retype('Delivered', '60');
  await page.keyboard.press('Enter');
  await expect.poll(() => dialog().getByText('Delivered over set is not between 0.5 and 2.').count()).toBe(1);
  await retype('Delivered', '206');
  expect(await dialog().getByLabel('Delivered over set').inputValue()).toBe('1.03');
  await page.keyboard.press('Enter');
  await closed();
  const row = machineRow('Ground unit');
  await expect.poll(() => row.innerText()).toContain('delivers 1.03 of what is set');
  await row.locator('summary').focus();
  await page.keyboard.press('Enter');
  await press('Take back the calibration of 1 March 2027', row);
  await press('Take back', dialog());
  await expect.poll(() => dialog().getByText('No reason is typed.').count()).toBe(1);
  await retype('Why is it taken back', 'it was the other machine');
  await page.keyboard.press('Enter');
  await closed();
  await expect.poll(() => row.innerText()).not.toContain('1.03');
});

test('a policy stays in its bounds, is set with a reason, and goes back to what was shipped', async () => {
  const row = page.getByRole('row').filter({ has: page.getByRole('rowheader', { name: 'Discomfort that stops' }) });
  await press('Set Discomfort that stops');
  await page.keyboard.press('Control+A');
  await page.keyboard.type('6');
  await retype('Why it changes', 'what the physician here asks for');
  await page.keyboard.press('Enter');
  await expect.poll(() => dialog().getByText('6 lies outside the bounds.').count()).toBe(1);
  await retype('Discomfort that stops', '4.5');
  await page.keyboard.press('Enter');
  await closed();
  await expect.poll(() => row.innerText()).toContain('as shipped: 5');
  expect(await row.innerText()).toContain('set by Maud Arkwright');
  expect(await row.innerText()).toContain('because what the physician here asks for');
  await press('Set Discomfort that stops');
  await press('as shipped', dialog());
  await retype('Why it changes', 'back to practice');
  await page.keyboard.press('Enter');
  await closed();
  await expect.poll(() => row.innerText()).not.toContain('as shipped');
});

test('a deputy signs between two days, and no more once it is ended', async () => {
  const row = page.getByRole('row').filter({ has: page.getByRole('rowheader', { name: 'Jorun Vik' }) });
  await press('Add a signer or deputy');
  await page.keyboard.type('Jorun Vik');
  await page.keyboard.press('Enter');
  await expect.poll(() => dialog().getByText('Nothing is chosen.').count()).toBe(1);
  expect(await dialog().getByText('No day is given.').count()).toBe(1);
  await dialog().getByLabel('Signs for').selectOption({ label: 'Maud Arkwright' });
  expect(await dialog().getByLabel('From').inputValue()).toBe('2027-03-01');
  await dialog().getByLabel('Until, with that day').fill('2027-02-01');
  await press('Record', dialog());
  await expect.poll(() => dialog().getByText('The last day is before the first.').count()).toBe(1);
  await dialog().getByLabel('Until, with that day').fill('2027-04-01');
  await press('Record', dialog());
  await closed();
  await expect.poll(() => row.innerText()).toContain('1 April 2027');
  const signs = page.getByRole('combobox', { name: 'Who signs' });
  await expect.poll(() => signs.innerText()).toContain('Jorun Vik');
  await press('End the time of Jorun Vik');
  await dialog().getByLabel('Last day of signing').fill('2027-02-28');
  await retype('Why it changes', 'she is back early');
  await page.keyboard.press('Enter');
  await expect.poll(() => dialog().getByText('The last day is before the first.').count()).toBe(1);
  await dialog().getByLabel('Last day of signing').fill('2027-03-01');
  await press('End it', dialog());
  await closed();
  await expect.poll(() => row.innerText()).toContain('1 March 2027');
});

test('how a person sets a machine is recorded beside their other entries', async () => {
  await page.goto(`${house.origin}/people/wen-li-abara/record?record=machine+settings`);
  await dialog().waitFor();
  await dialog().getByLabel('Machine').selectOption({ label: 'Resistive machine (0 g)' });
  await dialog().getByLabel('Exercise').selectOption({ label: 'Heel raise' });
  await press('Record', dialog());
  await expect.poll(() => dialog().getByText('No setting has a value.').count()).toBe(1);
  const [first] = await dialog().getByRole('group').all();
  if (!first) throw new Error('A heel raise has no setting.');
  await first.getByLabel('Value').focus();
  await page.keyboard.type('4');
  await first.getByLabel('Side').selectOption('left');
  await press('Record', dialog());
  await closed();
  await expect
    .poll(() => page.getByRole('table').last().innerText())
    .toMatch(/Heel raise on Resistive machine: .+ left 4/);
});

test('nothing bars anybody from the page, and nothing went wrong on it', async () => {
  await page.goto(`${house.origin}/settings#deadlift`);
  await exercise('deadlift').getByText('how it came to stand').waitFor();
  expect(await barriers(page)).toEqual([]);
  // The refusals above were asked for.
  expect(watched.complaints().filter((complaint) => !complaint.includes('422'))).toEqual([]);
});
