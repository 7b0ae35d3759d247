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

test('nor does a spread that cannot be', () => {
  expect(of({}, Number.NaN).kind).toBe('none');
  expect(of({}).kind).toBe('estimate');
});
