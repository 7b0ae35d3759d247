import { expect, test } from 'vitest';
import { day } from '#units/day.ts';
import { byAge, saidTogether, whenOf } from './strip-text.ts';

const TODAY = day(100);
const LAST = day(112);

const span = (from: number, to: number, shape: 'bar' | 'mark' = 'bar', says = `${from}`) => ({
  from: day(from),
  to: day(to),
  says,
  tone: 'plain' as const,
  shape,
});

test.each([
  { at: span(90, 120), when: '' },
  { at: span(90, 104), when: 'until Wed 15 Apr' },
  { at: span(104, 120), when: 'from Wed 15 Apr' },
  { at: span(104, 106), when: 'from Wed 15 Apr until Fri 17 Apr' },
  { at: span(80, 90), when: 'until Wed 1 Apr' },
  { at: span(98, 98, 'mark'), when: 'on Thu 9 Apr' },
])('days $at.from to $at.to are "$when"', ({ at, when }) => {
  expect(whenOf(at, TODAY, LAST)).toBe(when);
});

test('what holds over the same days is one breath, what is past comes last', () => {
  const spans = [span(80, 90, 'bar', 'gone'), span(95, 110, 'bar', 'a'), span(95, 110, 'bar', 'b'), span(103, 105)];
  expect(saidTogether(spans, TODAY).map(({ says }) => says)).toEqual(['a; b', '103', 'gone']);
});

test('a mark of the last week still counts as now; a bar that has ended does not', () => {
  const { now, earlier } = byAge([span(95, 99), span(93, 93, 'mark'), span(92, 92, 'mark'), span(100, 100)], TODAY);
  expect(now.map(({ from }) => from)).toEqual([93, 100]);
  expect(earlier.map(({ from }) => from)).toEqual([95, 92]);
});
