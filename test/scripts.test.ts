import { describe, expect, test } from 'vitest';
import { isInstalled } from '../scripts/ensure-installed.mjs';
import { countTests } from '../scripts/parts.mjs';
import { isNodeRecentEnough } from '../scripts/require-node.mjs';

test.each([
  { version: '18.20.4', enough: false },
  { version: '20.18.3', enough: false },
  { version: '20.19.0', enough: true },
  { version: '20.20.2', enough: true },
  { version: '21.7.3', enough: false },
  { version: '22.11.0', enough: false },
  { version: '22.12.0', enough: true },
  { version: '24.0.0', enough: true },
])('Node $version is recent enough: $enough', ({ version, enough }) => {
  expect(isNodeRecentEnough(version)).toBe(enough);
});

describe('packages are installed', () => {
  const wanted = {
    '': {},
    'node_modules/a': { version: '1.0.0', integrity: 'one' },
    'node_modules/b': { version: '2.0.0', integrity: 'two', optional: true },
  };
  const { 'node_modules/a': a, 'node_modules/b': b } = wanted;

  test.each([
    { when: 'all are there', present: { 'node_modules/a': a, 'node_modules/b': b }, installed: true },
    { when: 'only an optional one is missing', present: { 'node_modules/a': a }, installed: true },
    { when: 'nothing was ever installed', present: {}, installed: false },
    {
      when: 'one is of another version',
      present: { 'node_modules/a': { ...a, version: '1.0.1' } },
      installed: false,
    },
    {
      when: 'an optional one has other content',
      present: { 'node_modules/a': a, 'node_modules/b': { ...b, integrity: 'three' } },
      installed: false,
    },
  ])('$when: $installed', ({ present, installed }) => {
    expect(isInstalled(wanted, present)).toBe(installed);
  });
});

describe('tests are counted', () => {
  const report = { numPassedTests: 5, numFailedTests: 0, numPendingTests: 1, numTodoTests: 1, testResults: [] };
  const unreadable = { status: 'failed', assertionResults: [] };
  const broken = { status: 'failed', assertionResults: [{ status: 'failed' }, { status: 'passed' }] };

  test('as the runner counts them', () => {
    expect(countTests(report, 0)).toEqual({ passed: 5, failed: 0, skipped: 2 });
  });

  test('a file that cannot be read in is one failure, a failed test is not counted twice', () => {
    const both = { ...report, numFailedTests: 1, testResults: [unreadable, broken] };
    expect(countTests(both, 1)).toEqual({ passed: 5, failed: 2, skipped: 2 });
  });

  test('a runner that ends badly with no failed test, or writes nothing, is one failure', () => {
    expect(countTests(report, 1).failed).toBe(1);
    expect(countTests(null, 1)).toEqual({ passed: 0, failed: 1, skipped: 0 });
  });
});
