import { expect, test } from 'vitest';
import type { Fact, Sequence } from '#domain/fact.ts';
import { idOf, instant } from '#domain/identity.ts';
import { enterInLog } from '#domain/log.ts';
import { isoDay } from '#units/day.ts';
import { shippedFacts } from '#shipped/shipped-house.ts';
import { exerciseFinder } from '../layout/exercise-names.ts';
import { bringInContext } from './context.ts';

const LOG: readonly Fact[] = shippedFacts().map((body, place) =>
  enterInLog(
    { id: idOf(`fact-${place}`), body, recordedBy: idOf('signer-1'), supersedes: null, reason: null },
    (place + 1) as Sequence,
    instant('2027-02-01T08:00:00.000Z'),
  ),
);

test('a column of jump heights or of seconds on one leg is no column of loads', () => {
  const { exercises } = bringInContext(LOG, LOG.length as Sequence, {
    today: isoDay('2027-03-01'),
    ownEstimate: () => null,
    oneRepMax: () => null,
  });
  const find = exerciseFinder(exercises);
  expect(['CMJ', 'vertical jump', 'Squat jump', 'single-leg stand'].map(find)).toEqual([null, null, null, null]);
  expect(['front squat', 'goblet squat', 'chin ups'].map(find)).toEqual(['front-squat', 'goblet-squat', 'chin-up']);
});
