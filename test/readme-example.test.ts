import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { barLoad, fraction, kilograms } from '#units/quantity.ts';
import { staticShare } from '#science/body/static-share.ts';
import { bodyWeightShare } from '#science/body/work-share.ts';
import { bodyWeightAdded, machineTarget } from '#science/crossing/crossing.ts';
import { WORKED } from './rehearsal/worked.ts';

const README = readFileSync(new URL('../README.md', import.meta.url), 'utf8');

/** A row of the README's first table: its share and its load. */
const printed = (beginning: string): { readonly share: number; readonly load: number } => {
  const row = README.split('\n').find((line) => line.startsWith(`| ${beginning}`)) ?? '';
  const [, , share, load] = row.split('|').map((cell) => Number.parseFloat(cell));
  return { share: share ?? Number.NaN, load: load ?? Number.NaN };
};

// The crossing only multiplies and adds, so pounds go through it as well as kilograms.
const loadOf = (share: number): number =>
  machineTarget(barLoad(300), bodyWeightAdded(fraction(1), fraction(share), kilograms(200)));

test.each([
  { policy: 'work-matched', share: bodyWeightShare('back squat, parallel', 'male').work },
  { policy: 'joint-matched', share: staticShare('above both knees', 'male') },
  { policy: 'whole', share: 1 },
])('the README says what the model gives for the $policy policy', ({ policy, share }) => {
  // Shares are printed to four decimals, loads to one.
  expect(Math.abs(printed(policy).share - share)).toBeLessThanOrEqual(0.00005);
  expect(Math.abs(printed(policy).load - loadOf(share))).toBeLessThanOrEqual(0.05);
});

test.each(WORKED)('the README shows the worked road on flight day $flightDay', (worked) => {
  const row = README.split('\n').find((line) => new RegExp(`^\\| ${worked.flightDay} +\\|`).test(line)) ?? '';
  const [, , steps, load, fraction] = row.split('|');
  expect(steps?.split(',').map(Number)).toEqual([worked.effort, worked.share]);
  expect(Number.parseFloat(load ?? '')).toBe(worked.load);
  expect(Number.parseFloat(fraction ?? '')).toBe(Math.round(worked.trueFraction * 100));
});
