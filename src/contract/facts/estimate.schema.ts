import type { CapacityKey, Estimate } from '#domain/estimate.ts';
import type { ExerciseId, FactId } from '#domain/identity.ts';
import type { z } from 'zod';
import { record } from './record.schema.ts';
import { choice, listUpTo } from './lists.schema.ts';
import { calendarDay, finite, wholeFrom } from './numbers.schema.ts';
import { identity, name } from './texts.schema.ts';

const key = record({
  exercise: identity<ExerciseId>(),
  gravity: choice(['0 g', '1 g']),
  machine: name,
}) satisfies z.ZodType<CapacityKey>;

export const estimate = record({
  key,
  day: calendarDay,
  median: finite,
  logSd: finite,
  of: wholeFrom(1, 1000),
  newest: calendarDay,
  observations: wholeFrom(0, 1_000_000),
  basis: choice(['known', 'carried over from 1 g', 'from another machine', 'by ratio']),
  facts: listUpTo(10_000, identity<FactId>()),
}) satisfies z.ZodType<Estimate>;
