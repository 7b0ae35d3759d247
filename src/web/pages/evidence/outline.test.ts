import { expect, test } from 'vitest';
import { ALL_CHECKS, ALL_RECORDS, PARTS } from '#science/textbook.ts';
import { checksOf, outlineOf, recordOf } from './outline.ts';
import { pageStyles } from './page-styles.ts';

const OUTLINE = outlineOf(PARTS);
const chapters = OUTLINE.flatMap((part) => part.chapters);
const entries = chapters.flatMap((chapter) => chapter.entries);

test('every entry and every check of the textbook stands in it once', () => {
  expect(entries.map((entry) => recordOf(entry).id).toSorted()).toEqual(ALL_RECORDS.map(({ id }) => id).toSorted());
  const checks = [...entries.flatMap(checksOf), ...chapters.flatMap(({ further }) => further)];
  expect(new Set(checks)).toEqual(new Set(ALL_CHECKS));
  expect(checks.length).toBe(ALL_CHECKS.length);
});

test('anchors and numbers are each there once', () => {
  const anchors = [...OUTLINE, ...chapters].map(({ anchor }) => anchor);
  expect(new Set(anchors).size).toBe(anchors.length);
});

test('every chapter has a running head with its number, and quotes in it are escaped', () => {
  const styles = pageStyles(OUTLINE);
  for (const { anchor, number } of chapters) {
    expect(styles).toContain(`#${anchor} { page: ${anchor}; }`);
    expect(styles).toContain(`content: "${number} `);
  }
  const [part] = outlineOf([{ heading: 'A "b" \\', says: '', chapters: [{ heading: 'c', says: '', checks: [] }] }]);
  expect(pageStyles(part ? [part] : [])).toContain(String.raw`content: "1 A \"b\" \\"`);
});
