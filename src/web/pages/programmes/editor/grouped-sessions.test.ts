import { expect, test } from 'vitest';
import type { ComparedSession } from '#contract/windows/comparison-window.ts';
import { day } from '#units/day.ts';
import { groupedSessions, missionDaysInWords } from './grouped-sessions.ts';

const session = (on: number, is: string): ComparedSession => ({
  day: day(on),
  missionDay: `flight day ${on}`,
  title: 'Heavy day',
  wasTitle: null,
  kind: 'changed',
  state: on > 14 ? 'expected' : 'planned',
  lines: [{ exerciseName: 'Back squat', was: '4×6 270 lb', is, load: 'raised', leftOut: null }],
  reordered: false,
  minutes: { was: 79, is: 84, block: 90 },
  newGaps: [],
  goneGaps: [],
});

test('the same change week after week is told once, with its days', () => {
  const groups = groupedSessions([session(4, '5×5 275 lb'), session(11, '5×5 275 lb'), session(18, '4×5 245 lb')]);
  expect(groups.map(({ days }) => days.map((each) => each.day))).toEqual([[4, 11], [18]]);
});

test('no session is lost or told twice', () => {
  const sessions = [3, 1, 2, 20, 21].map((on) => session(on, on % 2 ? 'a' : 'b'));
  const told = groupedSessions(sessions).flatMap(({ days }) => days.map((each) => each.day));
  expect(told.toSorted((a, b) => a - b)).toEqual([1, 2, 3, 20, 21]);
});

test.each([
  [['flight day 4'], 'flight day 4'],
  [['flight day 4', 'flight day 11', 'flight day 18'], 'flight day 4, 11 and 18'],
  [['L−2', 'flight day 4'], 'L−2 and flight day 4'],
  [['L−9', 'L−2'], 'L−9 and 2'],
])('%j is said as %s', (days, says) => {
  expect(missionDaysInWords(days)).toBe(says);
});
