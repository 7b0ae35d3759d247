import { expect, test } from 'vitest';
import { isoDay } from '#units/day.ts';
import type { BodySite } from '#domain/catalogue.ts';
import type { Draft, Fact, Sequence } from '#domain/fact.ts';
import { idOf, instant } from '#domain/identity.ts';
import { enterInLog } from '#domain/log.ts';
import { DEFAULT_POLICIES } from '#domain/policies.ts';
import { backSquat } from '#shipped/exercises/lower-body.ts';
import { painBand, painOf } from './pain.ts';

const ITEM = idOf<'item'>('squat');

const hurt = (
  score: number,
  more: { site?: BodySite; item?: string; when?: 'during' | 'next morning' } = {},
): Fact<'hurt'> => {
  const draft: Draft = {
    id: idOf(`hurt ${score} ${JSON.stringify(more)}`),
    body: {
      kind: 'hurt',
      person: idOf('p'),
      day: isoDay('2027-03-01'),
      card: null,
      item: more.item === undefined ? null : idOf(more.item),
      site: more.site ?? 'shoulder',
      side: null,
      score,
      when: more.when ?? 'during',
    },
    recordedBy: idOf('s'),
    supersedes: null,
    reason: null,
  };
  return enterInLog(draft, 1 as Sequence, instant('2027-03-01T08:00:00.000Z')) as Fact<'hurt'>;
};

const bandOf = (...hurts: readonly Fact<'hurt'>[]) => painOf(hurts, ITEM, backSquat, DEFAULT_POLICIES).band;

// Common practice: 0 to 2 go on, 3 to 4 hold the load, 5 to 6 stop that exercise, 7 or more stop the session.
test.each([
  [0, 'go on'],
  [2, 'go on'],
  [3, 'hold'],
  [4, 'hold'],
  [5, 'stop'],
  [6, 'stop'],
  [7, 'end the session'],
  [10, 'end the session'],
] as const)('discomfort of %i: %s', (score, band) => {
  expect(painBand(score, DEFAULT_POLICIES)).toBe(band);
  expect(bandOf(hurt(score))).toBe(band);
});

// Rising two points by next morning counts as the next band.
test.each([
  [0, 1, 'go on'],
  [0, 2, 'hold'],
  [1, 3, 'stop'],
  [2, 3, 'hold'],
  [3, 5, 'end the session'],
  [5, 7, 'end the session'],
  [4, 2, 'hold'],
  [6, 0, 'stop'],
] as const)('%i during, %i next morning: %s', (during, morning, band) => {
  expect(bandOf(hurt(during), hurt(morning, { when: 'next morning' }))).toBe(band);
});

test('nothing told is nothing felt', () => {
  expect(painOf([], ITEM, backSquat, DEFAULT_POLICIES)).toEqual({ score: 0, band: 'go on', facts: [] });
});

test('the worst of several counts', () => {
  expect(bandOf(hurt(1), hurt(5), hurt(3, { site: 'knee' }))).toBe('stop');
});

test('a site that the lift does not load is not felt in it, unless its own item was named', () => {
  expect(bandOf(hurt(8, { site: 'wrist' }))).toBe('go on');
  expect(bandOf(hurt(8, { site: 'wrist', item: 'squat' }))).toBe('end the session');
});

test('what was told of another item is not felt in this one', () => {
  expect(bandOf(hurt(8, { item: 'deadlift' }))).toBe('go on');
});

test('of no card at all, the site alone decides', () => {
  expect(painOf([hurt(4)], null, backSquat, DEFAULT_POLICIES).band).toBe('hold');
  expect(painOf([hurt(8, { site: 'wrist' })], null, backSquat, DEFAULT_POLICIES).band).toBe('go on');
  expect(painOf([hurt(4, { item: 'squat' })], null, backSquat, DEFAULT_POLICIES).band).toBe('go on');
});
