import { expect, test } from 'vitest';
import { problemsOfLine } from './written-line.ts';

test.each([
  '4 × 6 @ 80 %, rest 2:30',
  '3 × 8 @ 2 RIR',
  '30 min @ 130 W',
  '4 × 4 min @ 90 % HRR, 3 min easy',
  '10 min @ 60 % HRR then 4 × 30 s @ RPE 9, 2 min easy',
  '5 × 8 × 7 s/3 s @ 100 % CF, rest 2:30',
  '3 × 30 s @ 40 % CF',
])('"%s" can be read', (line) => {
  expect(problemsOfLine(line)).toEqual([]);
});

test.each(['five by three', '4 × 6 @ 345', '', 'left out'])('"%s" cannot, with why', (line) => {
  expect(problemsOfLine(line).every(({ says }) => says !== '')).toBe(true);
  expect(problemsOfLine(line).length).toBeGreaterThan(0);
});
