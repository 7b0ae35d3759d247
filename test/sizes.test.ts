import { expect, test } from 'vitest';
import {
  LONGEST_FILE,
  LONGEST_FUNCTION,
  MOST_FILES_UNDER,
  fileSizeComplaints,
  functionSizeComplaints,
  linesAtShare,
} from './architecture/sizes.ts';
import { isTest, sourcesIn } from './architecture/source.ts';

const everything = sourcesIn(['src', 'test', 'bench', 'scripts'], /\.(tsx?|mjs|css)$/);
const programs = everything.filter(({ path }) => !path.endsWith('.css'));
const ship = programs.filter((source) => source.path.startsWith('src/') && !isTest(source));

test(`no file has over ${LONGEST_FILE} lines`, () => {
  expect(everything.flatMap(fileSizeComplaints)).toEqual([]);
});

test(`nine source files in ten have under ${MOST_FILES_UNDER} lines`, () => {
  expect(linesAtShare(ship, 0.9)).toBeLessThan(MOST_FILES_UNDER);
});

test(`no function outside tests has over ${LONGEST_FUNCTION} lines`, () => {
  expect(programs.filter((source) => !isTest(source)).flatMap(functionSizeComplaints)).toEqual([]);
});

const lines = (count: number): string => '1;\n'.repeat(count);

test('a file and a function one line too long are told in a sentence', () => {
  expect(fileSizeComplaints({ path: 'src/a/b.ts', text: lines(LONGEST_FILE) })).toEqual([]);
  expect(fileSizeComplaints({ path: 'src/a/b.table.ts', text: lines(LONGEST_FILE + 1) })).toEqual([]);
  expect(fileSizeComplaints({ path: 'src/a/b.ts', text: lines(LONGEST_FILE + 1) })).toEqual([
    'src/a/b.ts has 401 lines; no file has over 400: take a concept out of it.',
  ]);
  const body = (count: number): string => `\nexport const f = () => {\n${lines(count)}};\n`;
  expect(functionSizeComplaints({ path: 'src/a/b.ts', text: body(LONGEST_FUNCTION - 2) })).toEqual([]);
  expect(functionSizeComplaints({ path: 'src/a/b.ts', text: body(LONGEST_FUNCTION - 1) })).toEqual([
    'src/a/b.ts:2 holds a function of 61 lines; none has over 60: take a step out of it and name it.',
  ]);
});

test('nine in ten is counted over files in order of length', () => {
  const files = [1, 2, 3, 4, 5, 6, 7, 8, 9, 100].map((count) => ({ path: `src/a/${count}.ts`, text: lines(count) }));
  expect(linesAtShare(files, 0.9)).toBe(9);
});
