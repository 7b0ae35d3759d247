import { expect, test } from 'vitest';
import { isoDay } from '#units/day.ts';
import { readServeOptions } from './serve-options.ts';

test('nothing given: the first page asks, on the usual port', () => {
  expect(readServeOptions([])).toEqual({
    kind: 'options',
    options: { which: null, folder: null, port: 4790, mayOpenBrowser: true, today: null },
  });
});

test.each([
  { given: ['--scenario'], expected: { which: 'scenario' } },
  { given: ['--empty', '--no-open'], expected: { which: 'own', mayOpenBrowser: false } },
  { given: ['--port', '0', '--data', 'kept'], expected: { port: 0, folder: 'kept' } },
  { given: ['--today', '2031-05-03'], expected: { today: isoDay('2031-05-03') } },
])('$given is understood', ({ given, expected }) => {
  expect(readServeOptions(given)).toMatchObject({ kind: 'options', options: expected });
});

test.each([
  { given: ['--scenario', '--empty'] },
  { given: ['--port', '80 80'] },
  { given: ['--port', '65536'] },
  { given: ['--port=-1'] },
  { given: ['--today', '2031-02-31'] },
  { given: ['--colour'] },
  { given: ['scenario'] },
])('$given is refused with the usage', ({ given }) => {
  const reading = readServeOptions(given);
  expect(reading.kind === 'wrong' && reading.says).toMatch(/Usage: npm start/);
});
