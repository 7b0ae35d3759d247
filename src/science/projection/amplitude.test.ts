import { expect, test } from 'vitest';
import { amplitudeOfStudies } from './amplitude.ts';
import { oxygenUptakeCourse } from './course.ts';
import { OXYGEN_UPTAKE_CHANGES, type PublishedChange } from './quantities.table.ts';

const study = OXYGEN_UPTAKE_CHANGES.rows[0] as PublishedChange;
const of = (change: Partial<PublishedChange>, withinSd = 0.1) =>
  amplitudeOfStudies([{ ...study, ...change }], oxygenUptakeCourse, withinSd);

test.each([
  [{ people: 0 }, /1 to 100000 people/],
  [{ people: Number.NaN }, /1 to 100000 people/],
  [{ change: -1 }, /change must lie in/],
  [{ change: Number.NaN }, /change must lie in/],
  [{ day: Number.NaN }, /day from 0 to 10000/],
])('a study that cannot be gives a sentence and no number: %o', (change, says) => {
  const found = of(change);
  expect(found.kind === 'none' ? found.reason : '').toMatch(says);
});

test.each([[{ people: 1 }], [{ people: 100_000 }], [{ day: 10_000 }], [{ change: -0.99 }], [{ change: 1 }]])(
  'the ends of what is possible are taken: %o',
  (change) => {
    expect(of(change).kind).toBe('estimate');
  },
);

test.each([
  [{ people: 100_001 }, /1 to 100000 people; one has 100001/],
  [{ day: -1 }, /day from 0 to 10000; one lies on -1/],
  [{ day: 10_001 }, /day from 0 to 10000/],
  [{ change: 1.01 }, /change must lie in/],
])('and nothing beyond them: %o', (change, says) => {
  const found = of(change);
  expect(found.kind === 'none' ? found.reason : '').toMatch(says);
});

test.each([
  [-0.01, 'none'],
  [0, 'estimate'],
  [1, 'estimate'],
  [1.01, 'none'],
])('a spread of %d: %s', (withinSd, kind) => {
  expect(of({}, withinSd).kind).toBe(kind);
});

test('nor does a spread that cannot be', () => {
  expect(of({}, Number.NaN).kind).toBe('none');
  expect(of({}).kind).toBe('estimate');
});
